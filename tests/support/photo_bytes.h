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
    for (int shift = 8 * (count - 1); shift >= 0; shift -= 8) bytes += static_cast<char>(value >> shift & 0xff);
    return bytes;
}

/// A JPEG file as far as its frame header goes (ITU-T T.81, B.2.2), followed by `filler` bytes.
inline std::string bare_jpeg(int width = 8, int height = 8, std::size_t filler = 0) {
    using namespace std::string_literals;
    return "\xff\xd8\xff\xc0\x00\x0b\x08"s + big_endian(static_cast<std::uint32_t>(height), 2) + big_endian(static_cast<std::uint32_t>(width), 2) +
           "\x01\x01\x11\x00"s + std::string(filler, 'x') + "\xff\xd9"s;
}

/// A JPEG segment (ITU-T T.81, B.1.1.4): marker, length, parameters.
inline std::string jpeg_segment(char marker, const std::string& parameters) {
    return std::string("\xff") + marker + big_endian(static_cast<std::uint32_t>(parameters.size() + 2), 2) + parameters;
}

/// A grey JPEG of three components that a decoder takes (ITU-T T.81, B.2), whose frame has this marker, luminance sampled twice as finely each way,
/// and whose one scan holds the DC coefficients of the first `scanned` components. Nothing but the headers and a few bits: a decoder fills up the
/// rest.
inline std::string grey_jpeg(char frame_marker, int width, int height, int scanned = 3) {
    using namespace std::string_literals;
    const auto number = [](int value, int count) { return big_endian(static_cast<std::uint32_t>(value), count); };
    const bool progressive = frame_marker == '\xc2';
    std::string scan = number(scanned, 1);
    for (int component = 1; component <= scanned; ++component) scan += number(component, 1) + '\0';
    scan += progressive ? "\0\0\0"s : "\0\x3f\0"s;
    const std::string one_code = "\1"s + std::string(15, '\0') + '\0'; // the code 0, which says: no difference, or no coefficient left
    return "\xff\xd8"s + jpeg_segment('\xdb', '\0' + std::string(64, '\1')) +
           jpeg_segment(frame_marker, "\x08"s + number(height, 2) + number(width, 2) + "\x03\x01\x22\x00\x02\x11\x00\x03\x11\x00"s) +
           jpeg_segment('\xc4', "\x00"s + one_code + "\x10"s + one_code) + jpeg_segment('\xda', scan) + std::string(16, '\0') + "\xff\xd9"s;
}

inline std::string png_chunk(const std::string& type, const std::string& data) {
    boost::crc_32_type crc;
    crc.process_bytes((type + data).data(), type.size() + data.size());
    return big_endian(static_cast<std::uint32_t>(data.size()), 4) + type + data + big_endian(crc.checksum(), 4);
}

/// A PNG file without image data (ISO/IEC 15948:2004, 11.2.2), with these chunks after its header.
inline std::string bare_png(std::uint32_t width = 8, std::uint32_t height = 8, const std::string& chunks = {}) {
    using namespace std::string_literals;
    return "\x89PNG\r\n\x1a\n"s + png_chunk("IHDR", big_endian(width, 4) + big_endian(height, 4) + "\x08\x02\x00\x00\x00"s) + chunks +
           png_chunk("IEND", {});
}

/// What Exif 2.32 (CIPA DC-008-2019) stores, as a big-endian TIFF structure (4.5.2): the Exif IFD holds these texts where
/// they are not empty.
inline std::string exif_block(const std::string& date_time_original, const std::string& offset = {}, const std::string& fraction = {}) {
    using namespace std::string_literals;
    std::vector<std::pair<std::uint32_t, std::string>> texts;
    for (const auto& [tag, text] : {std::pair{0x9003u, date_time_original}, std::pair{0x9011u, offset}, std::pair{0x9291u, fraction}})
        if (!text.empty()) texts.emplace_back(tag, text + '\0');
    const std::string header = "MM\x00\x2a\x00\x00\x00\x08"s;
    // IFD0 with nothing but the place of the Exif IFD, which follows it.
    const std::string ifd0 = big_endian(1, 2) + big_endian(0x8769, 2) + big_endian(4, 2) + big_endian(1, 4) + big_endian(26, 4) + big_endian(0, 4);
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
