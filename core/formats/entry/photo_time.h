// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/photo.h"

#include <optional>
#include <string_view>

namespace ullage {

/// The moment at which a JPEG or PNG photo was taken: Exif DateTimeOriginal with SubSecTimeOriginal, and
/// OffsetTimeOriginal where the camera wrote it (CIPA DC-008-2019, Exif 2.32, 4.6.5 and 4.6.6: tags 0x9003, 0x9291, 0x9011). Without
/// an offset the local time is read in the IANA zone `zone`, and the result says so. Absent where there is no such
/// time, it is blank or ill-formed, `zone` skips it or has it twice, the bytes cannot be understood, or the library
/// cannot be loaded (base/late_part.h): nothing in them does harm. Not thread-safe, and it silences the messages of the library that reads the tags.
[[nodiscard]] std::optional<PhotoMoment> photo_time(std::string_view bytes, std::string_view zone);

} // namespace ullage
