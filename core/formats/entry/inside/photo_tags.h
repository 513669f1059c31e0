// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/late_part.h"
#include "model/photo.h"

#include <optional>
#include <string_view>

namespace ullage {

/// photo_time() for bytes that begin as a JPEG or PNG does, by the library that reads the tags.
inline constinit LateFunction<std::optional<PhotoMoment>(std::string_view bytes, std::string_view zone)> photo_tags;

} // namespace ullage
