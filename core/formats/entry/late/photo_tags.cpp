// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/entry/inside/photo_tags.h"
#include "base/number.h"

#include <exiv2/exiv2.hpp>

#include <exception>
#include <string>

namespace ullage {

namespace {

/// The text of a tag without blanks around it; empty where there is none. Fields are ASCII, padded with blanks or NUL.
std::string tag_text(const Exiv2::ExifData& exif, const char* key) {
    const auto found = exif.findKey(Exiv2::ExifKey(key));
    if (found == exif.end()) return {};
    const std::string text = found->toString();
    return std::string(trimmed(std::string_view(text).substr(0, text.find('\0'))));
}

/// "2027:05:14 18:00:12" to "2027-05-14T18:00:12"; empty where it has another form.
std::string iso_of(std::string text) {
    constexpr std::size_t length = 19;
    if (text.size() != length || text[4] != ':' || text[7] != ':' || text[10] != ' ') return {};
    text[4] = text[7] = '-';
    text[10] = 'T';
    return text;
}

bool all_digits(std::string_view text) { return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos; }

std::optional<PhotoMoment> moment_in(const Exiv2::ExifData& exif, std::string_view zone) {
    std::string text = iso_of(tag_text(exif, "Exif.Photo.DateTimeOriginal"));
    if (text.empty()) return std::nullopt;
    if (const std::string fraction = tag_text(exif, "Exif.Photo.SubSecTimeOriginal"); all_digits(fraction)) text += "." + fraction;
    const std::string offset = tag_text(exif, "Exif.Photo.OffsetTimeOriginal");
    if (!offset.empty())
        // An ill-formed offset is treated like a missing one: cameras that know none write blanks in several forms.
        if (const auto stated = parse_iso8601(text + offset, "UTC"); stated) return PhotoMoment{stated.value(), false};
    if (const auto local = parse_iso8601(text, zone)) return PhotoMoment{local.value(), true};
    return std::nullopt;
}

std::optional<PhotoMoment> moment_of_tags(std::string_view bytes, std::string_view zone) {
    try {
        Exiv2::LogMsg::setLevel(Exiv2::LogMsg::mute);
        const auto image = Exiv2::ImageFactory::open(reinterpret_cast<const Exiv2::byte*>(bytes.data()), static_cast<long>(bytes.size()));
        image->readMetadata();
        return moment_in(image->exifData(), zone);
    } catch (const std::exception&) {
        // The library throws at whatever it cannot read; the photo is kept all the same.
        return std::nullopt;
    }
}

const LateEntry tags_entry(photo_tags, &moment_of_tags);

} // namespace

} // namespace ullage
