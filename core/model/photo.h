// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "model/ids.h"

#include <cstdint>
#include <optional>
#include <string>

namespace ullage {

/// The kinds of picture that a logbook keeps. The numbers stand in files: never change one.
enum class PhotoFormat { jpeg = 1, png = 2 };

// What a logbook takes; the one place that states it.
inline constexpr std::int64_t photo_limit_bytes = 20'000'000;     ///< of one photo: 20 MB
inline constexpr std::int64_t photo_limit_pixels = 100'000'000;   ///< of one photo: 100 megapixels
inline constexpr std::int64_t photos_limit_bytes = 1'000'000'000; ///< of all photos of a logbook: 1 GB

/// When a photo was taken, as its camera wrote it.
struct PhotoMoment {
    UtcMs time_ms = 0;
    bool zone_assumed = false; ///< the camera gave no offset from UTC: its local time was read in the run's zone

    bool operator==(const PhotoMoment&) const = default;
};

/// What comes in with a photo. `bytes` is the file as it is; it is kept byte for byte.
struct NewPhoto {
    std::string file_name; ///< as the tester knows it, without folder
    std::string bytes;
    std::optional<PhotoMoment> taken;
};

/// Evidence for a reading, without its bytes, which are read one photo at a time.
struct Photo {
    PhotoId uuid;
    RunId run_uuid;
    std::optional<ReadingId> reading_uuid; ///< absent while it waits with the run's half-typed entry
    PhotoFormat format = PhotoFormat::jpeg;
    std::string file_name;
    std::int64_t size_bytes = 0;
    std::optional<PhotoMoment> taken;
    UtcMs added_ms = 0;
    int version = 1; ///< 1 as added; being tied to a reading, a withdrawal and a restoration each add one
    bool withdrawn = false;

    bool operator==(const Photo&) const = default;
};

} // namespace ullage
