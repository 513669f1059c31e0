// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/jpeg_head.h"

#include <algorithm>

namespace ullage {

namespace {

std::int64_t byte_at(std::string_view bytes, std::size_t at) { return static_cast<unsigned char>(bytes[at]); }

std::int64_t two_bytes_at(std::string_view bytes, std::size_t at) { return byte_at(bytes, at) * 256 + byte_at(bytes, at + 1); }

/// The markers SOF0 to SOF15, without DHT, JPG and DAC, which stand among them (ITU-T T.81, table B.1).
bool starts_frame(std::int64_t marker) { return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc; }

bool is_progressive(std::int64_t frame_marker) {
    return frame_marker == 0xc2 || frame_marker == 0xc6 || frame_marker == 0xca || frame_marker == 0xce;
}

/// A frame header (B.2.2): marker, length, precision, height, width, and three bytes for each component.
struct Frame {
    std::int64_t marker = 0;
    std::string_view segment; ///< from the marker on

    [[nodiscard]] std::int64_t height() const { return two_bytes_at(segment, 5); }
    [[nodiscard]] std::int64_t width() const { return two_bytes_at(segment, 7); }
    /// As many as the segment has room for.
    [[nodiscard]] std::int64_t components() const { return std::min(byte_at(segment, 9), static_cast<std::int64_t>(segment.size() - 10) / 3); }
    [[nodiscard]] std::int64_t sampling_across(std::int64_t component) const {
        return byte_at(segment, static_cast<std::size_t>(11 + 3 * component)) >> 4;
    }
    [[nodiscard]] std::int64_t sampling_down(std::int64_t component) const {
        return byte_at(segment, static_cast<std::size_t>(11 + 3 * component)) & 15;
    }

    [[nodiscard]] std::int64_t coefficient_bytes() const {
        constexpr std::int64_t block_side = 8, bytes_of_block = 64 * 2;
        std::int64_t most_across = 1, most_down = 1, blocks_of_unit = 0;
        for (std::int64_t c = 0; c < components(); ++c) {
            most_across = std::max(most_across, sampling_across(c));
            most_down = std::max(most_down, sampling_down(c));
            blocks_of_unit += sampling_across(c) * sampling_down(c);
        }
        const auto units = [](std::int64_t pixels, std::int64_t sampling) { return (pixels + block_side * sampling - 1) / (block_side * sampling); };
        return units(width(), most_across) * units(height(), most_down) * blocks_of_unit * bytes_of_block;
    }
};

} // namespace

std::optional<JpegHead> jpeg_head(std::string_view bytes) {
    constexpr std::int64_t start_of_scan = 0xda, end_of_image = 0xd9;
    std::optional<Frame> frame;
    JpegHead head;
    const auto known = [&] { return frame ? std::optional(head) : std::nullopt; };
    for (std::size_t at = 2;;) {
        if (at + 4 > bytes.size() || byte_at(bytes, at) != 0xff) return known();
        const std::int64_t marker = byte_at(bytes, at + 1);
        if (marker == 0xff) { // a fill byte
            ++at;
            continue;
        }
        const auto length = static_cast<std::size_t>(two_bytes_at(bytes, at + 2));
        if (marker == end_of_image || length < 2 || at + 2 + length > bytes.size()) return known();
        if (marker == start_of_scan) {
            // B.2.3: the number of its components follows the length.
            const bool whole = frame && length > 2 && byte_at(bytes, at + 4) >= frame->components();
            if (frame && (is_progressive(frame->marker) || !whole)) head.coefficient_bytes = frame->coefficient_bytes();
            return known();
        }
        if (starts_frame(marker) && !frame) {
            if (length < 8) return std::nullopt;
            frame = Frame{marker, bytes.substr(at, 2 + length)};
            head.width = frame->width();
            head.height = frame->height();
        }
        at += 2 + length;
    }
}

} // namespace ullage
