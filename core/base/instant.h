// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace ullage {

/// Milliseconds since 1970-01-01T00:00:00Z (no leap seconds): the only form in which time is stored.
using UtcMs = std::int64_t;

inline constexpr double ms_per_hour = 3'600'000.0;

/// Instants that can be written as a date: 1583-01-02T00:00Z (the first full year of the Gregorian calendar,
/// so that no zone's local year is 1582) to 9999-12-30T23:59:59.999Z.
inline constexpr UtcMs earliest_ms = -12'212'467'200'000;
inline constexpr UtcMs latest_ms = 253'402'214'399'999;

/// Hours from `from` to `to`.
[[nodiscard]] constexpr double hours_between(UtcMs from, UtcMs to) { return static_cast<double>(to - from) / ms_per_hour; }

/// Broken-down local time of a zone.
struct LocalTime {
    int year = 1970, month = 1, day = 1, hour = 0, minute = 0, second = 0, millisecond = 0;
    int weekday = 0;        ///< 0 Sunday .. 6 Saturday; ignored on input
    int offset_minutes = 0; ///< local minus UTC; ignored on input
};

/// True when `zone` is in the IANA time zone database of this machine.
[[nodiscard]] bool zone_exists(std::string_view zone);

/// The machine's own zone, "UTC" when it cannot be found.
[[nodiscard]] std::string machine_zone();

/// Local time of `time_ms` in an IANA zone; an unknown zone is read as UTC, an instant outside `earliest_ms`
/// to `latest_ms` as the nearer of these. The zone database tabulates summer time until the end of 2037 only.
[[nodiscard]] LocalTime to_local(UtcMs time_ms, std::string_view zone);

/// Which of the two instants a local time means when clocks are put back.
enum class Doubled { refuse, earlier, later };

/// The instant of a local time. Errors: unknown zone, no such date or time of day, outside `earliest_ms` to
/// `latest_ms`, a time skipped when clocks go forward, or (with Doubled::refuse) a time that occurs twice.
[[nodiscard]] Result<UtcMs> from_local(const LocalTime& local, std::string_view zone, Doubled doubled = Doubled::refuse);

/// Reads ISO 8601 calendar date and time: `2027-05-14T18:00`, seconds and a fraction optional (digits beyond
/// ms are cut off), space for `T` accepted, then `Z`, `+02:00`, `+0200`, `+02` or nothing, when `zone` and
/// `doubled` apply (ISO 8601-1:2019, 5.4.2). Errors: as from_local, and text of another form.
[[nodiscard]] Result<UtcMs> parse_iso8601(std::string_view text, std::string_view zone, Doubled doubled = Doubled::refuse);

/// ISO 8601 local time of `zone` with its offset; seconds and ms are written only where they are not zero
/// (`2027-05-14T18:00+02:00`, `2027-05-14T16:00Z` in UTC). UTC is written also where the zone is unknown or
/// its offset is no whole minute (local mean times before about 1900). parse_iso8601 returns the same
/// instant.
[[nodiscard]] std::string format_iso8601(UtcMs time_ms, std::string_view zone);

/// "14:36" local time.
[[nodiscard]] std::string clock_text(UtcMs time_ms, std::string_view zone);
/// "14 May", "14 May 2027" dates.
[[nodiscard]] Message say_day(UtcMs time_ms, std::string_view zone);
[[nodiscard]] Message say_date(UtcMs time_ms, std::string_view zone);
/// The same in the language in use.
[[nodiscard]] std::string day_text(UtcMs time_ms, std::string_view zone);
[[nodiscard]] std::string date_text(UtcMs time_ms, std::string_view zone);
/// "January" for 1 to "December" for 12.
[[nodiscard]] Message say_month(int month);

/// "14 h 36 min" for a duration in hours (rounded to the minute).
[[nodiscard]] std::string duration_text(double hours);

} // namespace ullage
