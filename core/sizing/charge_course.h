// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/sized_unit.h"
#include "sizing/stand_alone_rules.h"

#include <optional>
#include <vector>

namespace ullage {

/// The state of charge at a full hour, % of what the unit can give; the interval is that of the unit's days of autonomy.
struct CoursePoint {
    double hour = 0; ///< since midnight before the first day
    double with_pv_percent = 0, with_pv_lower_percent = 0, with_pv_upper_percent = 0;
    double without_pv_percent = 0, without_pv_lower_percent = 0, without_pv_upper_percent = 0;
};

/// Days of a course that are shown at least and at most; it is followed for as long as it takes.
inline constexpr int least_shown_days = 3, most_shown_days = 14;

/// The state of charge of one unit, or of several alike side by side, hour by hour, followed until it repeats from day to day.
struct ChargeCourse {
    int units = 1;
    std::vector<CoursePoint> points; ///< at every full hour, the first at 0; as many days as show the first empty hour and the first repeated
                                     ///< day, least_shown_days to most_shown_days
    std::optional<double> empty_without_pv_h;    ///< when it first falls empty; absent: it never does
    std::optional<double> empty_with_pv_h;       ///< likewise: no later day differs from those that were followed
    std::optional<double> lower_empty_with_pv_h; ///< the same at the lower end of its days of autonomy
    int alike_from_day = 1;                      ///< with PV: from this day on, the first is 1, each day is like the one before it
    // Of each day from then on, with PV:
    double unserved_wh = 0; ///< taken by the list while the unit was empty, at the socket
    double surplus_wh = 0;  ///< PV that found the unit full, at the battery
    double clipped_wh = 0;  ///< PV above the power limit of the PV input, at the battery
};

/// Energy that an array brings between two hours of the clock of one day, as a share of the day's: a half sine over `daylight_h` hours about
/// noon, whose integral is (cos πa − cos πb)/2 for a and b counted in lengths of the day from sunrise (the usual clear-sky shape; common practice, no
/// source). 0 <= from <= to <= 24.
[[nodiscard]] double daylight_share(double from_h, double to_h, double daylight_h);

/// From full at midnight, choices.units side by side. Use as laid out by DayOfUse, with the own draw for every hour of output on and the standby draw
/// for the rest; PV as daylight_share of `array_daily_wh` (DailyNeeds::array), at most the limit of the PV inputs (claimed W), and ×
/// inverter_efficiency for what it is worth at the socket. Within an hour use and PV are balanced.
///
/// Every day has the same use and sun, so that the content at midnight falls by the same amount each day until it meets empty or full within a day,
/// and repeats from then on: stretches of days without either are passed over at once, and the course is followed to its repetition however far
/// that lies. Absent where the unit has no basis or the list takes nothing. Preconditions: as size_unit.
[[nodiscard]] std::optional<ChargeCourse> charge_course(const LoadTotals& totals, const SizedUnit& unit, const SizingChoices& choices,
                                                        double array_daily_wh);

} // namespace ullage
