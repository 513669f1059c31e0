// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/photo.h"

#include <QString>

#include <string>

namespace ullage {

/// "14 May 2027 18:00:12" in the IANA zone `zone`.
[[nodiscard]] QString moment_with_seconds(UtcMs time_ms, const std::string& zone);
/// "14 May 2027 18:00:12", and where the camera gave no time zone that it was read in `zone`.
[[nodiscard]] QString photo_moment_words(const PhotoMoment& moment, const std::string& zone);
/// "display.jpg, 3.4 MB, taken 14 May 2027 18:00:12"; "no time in it" where the camera wrote none.
[[nodiscard]] QString photo_words(const Photo& photo, const std::string& zone);
/// "3.4 MB", "120 kB".
[[nodiscard]] QString photo_size_words(std::int64_t size_bytes);
/// "JPEG or PNG, at most 20 MB and 100 megapixels each": what a logbook takes.
[[nodiscard]] QString photo_limits_words();

} // namespace ullage
