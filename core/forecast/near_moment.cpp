// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/near_moment.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double named_within_h = 6 * 24; ///< a week later the name of the day would mean two

} // namespace

Message say_weekday(UtcMs time_ms, std::string_view zone) {
    static constexpr Phrase names[] = {phrase("forecast", "Sun"), phrase("forecast", "Mon"), phrase("forecast", "Tue"), phrase("forecast", "Wed"),
                                       phrase("forecast", "Thu"), phrase("forecast", "Fri"), phrase("forecast", "Sat")};
    return say(names[std::clamp(to_local(time_ms, zone).weekday, 0, 6)]);
}

std::string weekday_text(UtcMs time_ms, std::string_view zone) { return say_weekday(time_ms, zone); }

Message say_near_moment(UtcMs time_ms, UtcMs as_of_ms, std::string_view zone) {
    const Message clock = clock_text(time_ms, zone), day = say_day(time_ms, zone);
    if (std::abs(hours_between(as_of_ms, time_ms)) >= named_within_h) return say_joined({day, clock}, " ");
    return day == say_day(as_of_ms, zone) ? clock : say_joined({say_weekday(time_ms, zone), clock}, " ");
}

std::string near_moment_text(UtcMs time_ms, UtcMs as_of_ms, std::string_view zone) { return say_near_moment(time_ms, as_of_ms, zone); }

} // namespace ullage
