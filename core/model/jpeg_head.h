// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace ullage {

/// What the headers of a JPEG file say ahead of its first scan (ITU-T T.81, B.2).
struct JpegHead {
    std::int64_t width = 0, height = 0; ///< pixels, as stored
    /// What a decoder has to keep of the whole picture before it can give out the first pixel, whatever size is asked for: the coefficients of a
    /// progressive picture and of one whose components come in scans of their own, two bytes each (A.1.1 and A.2: whole blocks of 64, in
    /// proportion to the sampling factors). 0 for a picture in one scan, and where the first scan is not reached.
    std::int64_t coefficient_bytes = 0;
};

/// Nothing where no frame header is reached through whole segments.
[[nodiscard]] std::optional<JpegHead> jpeg_head(std::string_view bytes);

} // namespace ullage
