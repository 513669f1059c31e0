// SPDX-License-Identifier: GPL-3.0-or-later
// Photos written byte by byte, so that checks of them do not rest on the libraries that the program uses.
#pragma once

#include <boost/crc.hpp>

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::test {

inline std::string big_endian(std::uint32_t value, int count) {
    std::string bytes;
    for (int shift = 8 * (count - 1); shift >= 0; shift -= 8)
        bytes += static_cast<char>(value >> shift & 0xff);
    return bytes;
}

/// A JPEG file as far as its frame header goes (ITU-T T.81, B.2.2), followed by `filler` bytes.
inline std::string bare_jpeg(int width = 8, int height = 8, std::size_t filler = 0) {
    using namespace std::string_literals;
    return "\xff\xd8\xff\xc0\x00\x0b\x08"s + big_endian(static_cast<std::uint32_t>(height), 2) +
           big_endian(static_cast<std::uint32_t>(width), 2) + "\x01\x01\x11\x00"s + std::string(filler, 'x') + "\xff\xd9"s;
}

inline std::string png_chunk(const std::string& type, const std::string& data) {
    boost::crc_32_type crc;
    crc.process_bytes((type + data).data(), type.size() + data.size());
    return big_endian(static_cast<std::uint32_t>(data.size()), 4) + type + data + big_endian(crc.checksum(), 4);
}

/// A PNG file without image data (ISO/IEC 15948:2004, 11.2.2), with these chunks after its header.
inline std::string bare_png(std::uint32_t width = 8, std::uint32_t height = 8, const std::string& chunks = {}) {
    using namespace std::string_literals;
    return "\x89PNG\r\n\x1a\n"s +
           png_chunk("IHDR", big_endian(width, 4) + big_endian(height, 4) + "\x08\x02\x00\x00\x00"s) + chunks + png_chunk("IEND", {});
}

/// What Exif 2.32 (CIPA DC-008-2019) stores, as a big-endian TIFF structure (4.5.2): the Exif IFD holds these texts where
/// they are not empty.
inline std::string exif_block(const std::string& date_time_original, const std::string& offset = {},
                              const std::string& fraction = {}) {
    using namespace std::string_literals;
    std::vector<std::pair<std::uint32_t, std::string>> texts;
    for (const auto& [tag, text] : {std::pair{0x9003u, date_time_original}, std::pair{0x9011u, offset}, std::pair{0x9291u, fraction}})
        if (!text.empty()) texts.emplace_back(tag, text + '\0');
    const std::string header = "MM\x00\x2a\x00\x00\x00\x08"s;
    // IFD0 with nothing but the place of the Exif IFD, which follows it.
    const std::string ifd0 = big_endian(1, 2) + big_endian(0x8769, 2) + big_endian(4, 2) + big_endian(1, 4) + big_endian(26, 4) +
                             big_endian(0, 4);
    std::string entries = big_endian(static_cast<std::uint32_t>(texts.size()), 2), values;
    const std::size_t values_at = header.size() + ifd0.size() + 2 + 12 * texts.size() + 4;
    for (const auto& [tag, text] : texts) {
        const auto count = static_cast<std::uint32_t>(text.size());
        entries += big_endian(tag, 2) + big_endian(2, 2) + big_endian(count, 4);
        if (count <= 4) { // a short value stands in the entry itself
            entries += text + std::string(4 - count, '\0');
            continue;
        }
        entries += big_endian(static_cast<std::uint32_t>(values_at + values.size()), 4);
        values += text;
    }
    return header + ifd0 + entries + big_endian(0, 4) + values;
}

/// A JPEG with the block in an APP1 segment after its start (Exif 2.32, 4.7.2).
inline std::string jpeg_with_exif(const std::string& jpeg, const std::string& block) {
    using namespace std::string_literals;
    const std::string content = "Exif\0\0"s + block;
    return jpeg.substr(0, 2) + "\xff\xe1"s + big_endian(static_cast<std::uint32_t>(content.size() + 2), 2) + content + jpeg.substr(2);
}

} // namespace ullage::test
