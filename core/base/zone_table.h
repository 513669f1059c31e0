// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"

#include <optional>
#include <string_view>

namespace ullage::zone_table {

/// The one door to the zone library: nothing here throws, and nothing asks for the machine's own zone but
/// name_of_machine_zone(). Seconds are counted from 1970-01-01T00:00, in UTC or in local time.

/// True for "UTC" and its other names in the IANA database; these need no database.
[[nodiscard]] bool is_utc(std::string_view zone) noexcept;

/// True when `zone` is UTC or in the database.
[[nodiscard]] bool is_known(std::string_view zone) noexcept;

/// Local minus UTC in seconds at an instant; absent for an unknown zone.
[[nodiscard]] std::optional<long> offset_at_utc(std::int64_t utc_seconds, std::string_view zone) noexcept;

/// The offsets that a local time can have: one, none (skipped), or two (doubled; `first` is the earlier
/// instant's).
struct LocalOffsets {
    enum class Sort { unique, skipped, doubled } sort = Sort::unique;
    long first = 0;  ///< offset before the change
    long second = 0; ///< offset after the change
};
[[nodiscard]] std::optional<LocalOffsets> offsets_at_local(std::int64_t local_seconds, std::string_view zone) noexcept;

/// The machine's zone as an IANA name: the environment's TZ when it is one, else the system's setting; empty
/// if none.
[[nodiscard]] std::string name_of_machine_zone() noexcept;

} // namespace ullage::zone_table
