// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/near_moment.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double named_within_h = 6 * 24; ///< a week later the name of the day would mean two

} // namespace

std::string weekday_text(UtcMs time_ms, std::string_view zone) {
    static const char* const names[] = {"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
    return names[std::clamp(to_local(time_ms, zone).weekday, 0, 6)];
}

std::string near_moment_text(UtcMs time_ms, UtcMs as_of_ms, std::string_view zone) {
    const std::string clock = clock_text(time_ms, zone), day = day_text(time_ms, zone);
    if (std::abs(hours_between(as_of_ms, time_ms)) >= named_within_h) return day + ' ' + clock;
    return day == day_text(as_of_ms, zone) ? clock : weekday_text(time_ms, zone) + ' ' + clock;
}

} // namespace ullage
