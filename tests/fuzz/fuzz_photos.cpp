// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/entry/photo_time.h"
#include "fuzz/fuzz_target.h"
#include "fuzz/mutator.h"
#include "store/inside/photo_check.h"
#include "support/photo_bytes.h"

#include <fmt/format.h>

#include <string>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

std::vector<std::string> photos_to_spoil() {
    const std::string dated = exif_block("2027:05:14 18:00:12", "+02:00", "250");
    return {bare_jpeg(),
            bare_jpeg(4000, 3000, 500),
            jpeg_with_exif(bare_jpeg(640, 480, 100), dated),
            jpeg_with_exif(bare_jpeg(), exif_block("2027:03:28 02:30:00")),
            bare_png(),
            bare_png(640, 480, png_chunk("eXIf", dated)),
            bare_png(9000, 9000, png_chunk("tEXt", std::string("Comment\0gauge", 13)) + png_chunk("IDAT", std::string(300, 'x')))};
}

class PhotoFuzz final : public FuzzTarget {
public:
    PhotoFuzz(std::uint64_t seed, const fs::path& into) : photos_(photos_to_spoil(), seed), path_(into / "fuzz_photo") {}

    bool one() override {
        const std::string photo = photos_.next_bytes();
        write_bytes_to(path_, photo);
        ++inputs_;
        return check(photo) && read_time(photo);
    }

    [[nodiscard]] std::string tally() const override { return fmt::format("{} photos, {} of them taken, {} with a time", inputs_, taken_, timed_); }

private:
    bool check(const std::string& photo) {
        const Result<PhotoFormat> format = store::check_photo(photo, "photo");
        if (!format) return !format.error().what.empty() || broken("a photo is refused without a word");
        ++taken_;
        const bool jpeg = photo.starts_with("\xff\xd8\xff");
        if (!jpeg && !photo.starts_with("\x89PNG\r\n\x1a\n")) return broken("a photo is taken that is neither JPEG nor PNG");
        return (format.value() == PhotoFormat::jpeg) == jpeg || broken("a photo is taken for the other format");
    }

    bool read_time(const std::string& photo) {
        const std::string zone = photos_.pick(2) == 0 ? "UTC" : "Europe/Vienna";
        const std::optional<PhotoMoment> moment = photo_time(photo, zone);
        if (!moment) return true;
        ++timed_;
        const std::string text = format_iso8601(moment->time_ms, zone);
        const Result<UtcMs> again = parse_iso8601(text, zone);
        return (again && again.value() / 1000 == moment->time_ms / 1000) || broken("the time of a photo cannot be written: " + text);
    }

    Mutator photos_;
    fs::path path_;
    long inputs_ = 0, taken_ = 0, timed_ = 0;
};

} // namespace

std::unique_ptr<FuzzTarget> fuzz_photos(std::uint64_t seed, const fs::path& into) { return std::make_unique<PhotoFuzz>(seed, into); }

} // namespace ullage::test
