// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/load_list.h"
#include "unit/common_load.h"

#include <optional>
#include <vector>

namespace ullage {

/// What one line of a load list takes, all its alike appliances together.
struct ApplianceTotals {
    double running_w = 0; ///< while all of them are on
    double mean_w = 0;    ///< while all of them are in use
    double daily_wh = 0;  ///< mean while in use × hours per day
    double night_wh = 0;  ///< of this, at night
};

/// Length of a night where the list does not ask for another, h (common practice, no source).
inline constexpr double usual_night_h = 12;

/// What a load list asks of a unit. Sums of plain facts: they carry no interval.
///
/// When each appliance is in use is not known beyond day and night, so they are taken to be in use together as far as they can: something is in
/// use for the longest use by day and the longest use by night. Were they used one after another, it would be `hours_on_most`. An appliance
/// that is always connected keeps the unit's output on all day.
struct LoadTotals {
    std::vector<ApplianceTotals> appliances; ///< in the order of the list
    double daily_wh = 0;
    double mean_w = 0;        ///< over the 24 hours of a day
    double hours_on = 0;      ///< of a day, while the unit's output has to be on
    double hours_on_most = 0; ///< the same if no two appliances were in use together
    double running_w = 0;     ///< all appliances on at once
    double peak_w = 0;        ///< running_w and besides the largest surcharge of a start: one appliance starts while all others run
    double night_wh = 0;
    bool always_connected = false; ///< one of them is
    double night_h = 0;            ///< length of the night that fits the list: usual_night_h as far as the uses by day and by night leave it
    double night_hours_on = 0;     ///< of hours_on, by night; the day has the rest
    // Absent for a list that takes nothing.
    std::optional<double> mean_on_w;   ///< daily energy / hours_on
    std::optional<double> duty;        ///< mean_on_w / running_w, 0 to 1: the load factor while the output is on
    std::optional<double> night_share; ///< 0 to 1; the day has the rest
};

/// Errors: none. Precondition: check(list) is good. A list without appliances takes nothing. Sources: daily energy = Σ number × power × hours, as in
/// the published load lists that tests/published/load_lists_test.cpp names; load factor = mean / highest demand (IEC 60050-691:1973,
/// 691-10-02, from memory); the rule of the peak is common practice, no source.
[[nodiscard]] LoadTotals load_totals(const LoadList& list);

/// The list as a load that units can be compared at: its running power, on for its duty of the time that the output is on, so that its mean is
/// mean_on_w. All appliances are taken to switch together, which makes the most of losses that grow with the square of power. Absent for a list
/// that takes nothing.
[[nodiscard]] std::optional<CommonLoad> common_load_of(const LoadList& list);

} // namespace ullage
