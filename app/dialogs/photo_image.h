// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/photo.h"

#include <QImage>
#include <QSize>

#include <atomic>
#include <cstdint>
#include <string>

namespace ullage {

inline constexpr int photo_memory_mb = 256;                    ///< most that one picture may take while it is decoded, with what its decoder keeps
inline constexpr std::int64_t photo_shown_pixels = 25'000'000; ///< a larger photo is halved until it has no more
inline constexpr std::int64_t photo_fitted_pixels = 4'000'000; ///< enough to fill a screen

/// A photo decoded to be looked at.
struct ShownPhoto {
    QImage image;           ///< null where it cannot be shown
    QImage fitted;          ///< the same with photo_fitted_pixels at most, to be scaled to a window at once
    QSize whole;            ///< of the photo itself, as it is shown; empty where the file does not say
    bool too_large = false; ///< nothing is wrong with it, but to decode its kind takes more than photo_memory_mb
};

/// The picture in these bytes, read as `format` and no other, turned as its camera was held. It is scaled down while it is decoded, to fit
/// `within` or, without it, to photo_shown_pixels or to what photo_memory_mb leaves beside what a progressive JPEG takes at any size; it is never
/// enlarged. Any thread. Where `cancelled` is set meanwhile, there is no picture.
[[nodiscard]] ShownPhoto photo_image(const std::string& bytes, PhotoFormat format, QSize within = {}, const std::atomic<bool>* cancelled = nullptr);

} // namespace ullage
