// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/photo_check.h"

#include "base/number.h"
#include "model/jpeg_head.h"

#include <boost/crc.hpp>

#include <optional>
#include <string>

namespace ullage::store {

namespace {

struct Size {
    std::int64_t width = 0, height = 0;
};

std::int64_t byte_at(std::string_view bytes, std::size_t at) { return static_cast<unsigned char>(bytes[at]); }

std::int64_t big_endian(std::string_view bytes, std::size_t at, int count) {
    std::int64_t value = 0;
    for (int i = 0; i < count; ++i) value = value * 256 + byte_at(bytes, at + static_cast<std::size_t>(i));
    return value;
}

constexpr std::string_view jpeg_start = "\xff\xd8\xff";
constexpr std::string_view png_signature = "\x89PNG\r\n\x1a\n";

std::optional<Size> jpeg_size(std::string_view bytes) {
    const auto head = jpeg_head(bytes);
    return head ? std::optional(Size{head->width, head->height}) : std::nullopt;
}

/// From the IHDR chunk; nothing where it is cut off or its CRC does not fit.
std::optional<Size> png_size(std::string_view bytes) {
    constexpr std::size_t type_at = 12, data_at = 16, crc_at = 29;
    if (bytes.size() < crc_at + 4 || big_endian(bytes, 8, 4) != 13 || bytes.substr(type_at, 4) != "IHDR") return std::nullopt;
    boost::crc_32_type crc;
    crc.process_bytes(bytes.data() + type_at, crc_at - type_at);
    if (static_cast<std::int64_t>(crc.checksum()) != big_endian(bytes, crc_at, 4)) return std::nullopt;
    return Size{big_endian(bytes, data_at, 4), big_endian(bytes, data_at + 4, 4)};
}

/// Rounded up, so that nothing over a limit reads like the limit.
Message megabytes(std::int64_t bytes) { return say_measure(static_cast<double>((bytes + 99'999) / 100'000) / 10, 1, "MB"); }

} // namespace

Result<PhotoFormat> check_photo(std::string_view bytes, const std::string& file_name) {
    const auto refused = [&](const Message& what, const Message& remedy) { return Error{Failure::bad_input, what, file_name, remedy}; };
    if (bytes.empty()) return refused(say(phrase("store", "the photo is empty")), say(phrase("store", "choose another file")));
    const auto size_bytes = static_cast<std::int64_t>(bytes.size());
    if (size_bytes > photo_limit_bytes)
        return refused(
            say(phrase("store", "the photo has %1; a logbook takes photos of at most %2"), megabytes(size_bytes), megabytes(photo_limit_bytes)),
            say(phrase("store", "save it smaller, as JPEG for example")));
    const bool jpeg = bytes.starts_with(jpeg_start);
    if (!jpeg && !bytes.starts_with(png_signature))
        return refused(say(phrase("store", "this is neither a JPEG nor a PNG picture, whatever its name says")),
                       say(phrase("store", "save it as JPEG or PNG first")));
    const auto size = jpeg ? jpeg_size(bytes) : png_size(bytes);
    // A JPEG may leave its height to the end of the first scan (ITU-T T.81, B.2.5); no camera does.
    if (!size || size->width == 0 || size->height == 0)
        return refused(say(phrase("store", "the head of the picture is damaged or cut off")), say(phrase("store", "copy it from the camera again")));
    if (size->width > photo_limit_pixels / size->height)
        return refused(say(phrase("store", "the photo has %1 x %2 pixels; a logbook takes photos of at most %3 megapixels"), say_number(size->width),
                           say_number(size->height), say_number(photo_limit_pixels / 1'000'000)),
                       say(phrase("store", "save it smaller")));
    return jpeg ? PhotoFormat::jpeg : PhotoFormat::png;
}

} // namespace ullage::store
