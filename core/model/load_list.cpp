// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/load_list.h"

#include "base/number.h"
#include "model/limits.h"

#include <cmath>

namespace ullage {

namespace {

Error wrong(const Appliance& appliance, const Message& field, const Message& what, const Message& remedy) {
    return {Failure::bad_input, what, appliance.name.empty() ? field : say_joined({appliance.name, field}, ", "), remedy};
}

/// Whether a number lies above `low` (or at it, where that is wanted) and at most at `high`; NaN does not.
bool lies_within(double value, double low, double high, bool low_too = false) {
    return std::isfinite(value) && (low_too ? value >= low : value > low) && value <= high;
}

constexpr double most_w = 1e9, most_wh = 1e12, most_h = 1e6; ///< beyond, sums of lists are no use to anybody
constexpr double rounding = 1e-9;                            ///< relative, for limits that are quotients

} // namespace

double mean_in_use_w(const Appliance& appliance) {
    if (appliance.measured) return appliance.measured->energy_wh / appliance.measured->hours;
    return appliance.power_w.value_or(0) * appliance.duty;
}

double running_w(const Appliance& appliance) { return appliance.power_w ? *appliance.power_w : mean_in_use_w(appliance); }

Result<void> check(const Appliance& appliance) {
    if (appliance.name.empty())
        return wrong(appliance, say(phrase("model", "name")), say(phrase("model", "the appliance has no name")),
                     say(phrase("model", "give it a name")));
    if (auto good = check_text(say(phrase("model", "name of an appliance")), appliance.name, longest_name); !good) return good;
    if (appliance.power_w && !lies_within(*appliance.power_w, 0, most_w))
        return wrong(appliance, say(phrase("model", "power")),
                     say(phrase("model", "the power while on is not above 0 W and at most %1 W"), say_digits(exact_text(most_w))),
                     say(phrase("model", "give what it takes while it is on, or leave it empty")));
    if (!lies_within(appliance.duty, 0, 1))
        return wrong(appliance, say(phrase("model", "duty")), say(phrase("model", "the duty is not above 0 and at most 1")),
                     say(phrase("model", "give the share of the time that it is on while in use")));
    if (appliance.measured &&
        (!lies_within(appliance.measured->energy_wh, 0, most_wh) || !lies_within(appliance.measured->hours, least_positive, most_h)))
        return wrong(appliance, say(phrase("model", "measured use")),
                     say(phrase("model", "the measured energy or its hours are not above 0, or beyond %1 Wh or %2 h"),
                         say_digits(exact_text(most_wh)), say_digits(exact_text(most_h))),
                     say(phrase("model", "give both, such as 500 Wh over 24 h")));
    if (!appliance.power_w && !appliance.measured)
        return wrong(appliance, say(phrase("model", "power")), say(phrase("model", "neither its power nor a measurement is given")),
                     say(phrase("model", "give its power while on, or what it took over some hours")));
    if (appliance.power_w && mean_in_use_w(appliance) > *appliance.power_w * (1 + rounding))
        return wrong(appliance, say(phrase("model", "measured use")),
                     say(phrase("model", "the mean measured, %1 W, is above the power while on, %2 W"), say_number(mean_in_use_w(appliance), 1),
                         say_digits(exact_text(*appliance.power_w))),
                     say(phrase("model", "correct one of the two")));
    if (!lies_within(appliance.hours_per_day, 0, 24))
        return wrong(appliance, say(phrase("model", "hours per day")), say(phrase("model", "the hours per day are not above 0 and at most 24")),
                     say(phrase("model", "give for how long it is in use")));
    if (!lies_within(appliance.night_hours, 0, appliance.hours_per_day, true))
        return wrong(appliance, say(phrase("model", "hours at night")), say(phrase("model", "the hours at night are not 0 to the hours per day")),
                     say(phrase("model", "give how many of its hours lie at night")));
    if (appliance.start_peak_w &&
        (!lies_within(*appliance.start_peak_w, 0, most_w) || *appliance.start_peak_w < running_w(appliance) * (1 - rounding)))
        return wrong(appliance, say(phrase("model", "start")),
                     say(phrase("model", "the peak while it starts is below its power while on, or above %1 W"), say_digits(exact_text(most_w))),
                     say(phrase("model", "give the highest power of its start, or leave it empty")));
    if (appliance.count < 1 || appliance.count > most_alike)
        return wrong(appliance, say(phrase("model", "how many")), say(phrase("model", "the number of them is not 1 to %1"), say_number(most_alike)),
                     say(phrase("model", "give how many are alike")));
    return {};
}

Result<void> check(const LoadList& list) {
    if (list.name.empty())
        return Error{Failure::bad_input, say(phrase("model", "the load list has no name")), say(phrase("model", "name")),
                     say(phrase("model", "give it a name"))};
    if (auto good = check_text(say(phrase("model", "name")), list.name, longest_name); !good) return good;
    if (auto good = check_text(say(phrase("model", "remark")), list.remark, longest_remark); !good) return good;
    if (auto good = check_count(say(phrase("model", "load list")), phrases("model", "there are %n appliances", "there is %n appliance"),
                                list.appliances.size(), most_appliances);
        !good)
        return good;
    for (const Appliance& appliance : list.appliances)
        if (auto sound = check(appliance); !sound) return sound;
    return {};
}

} // namespace ullage
