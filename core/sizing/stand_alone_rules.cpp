// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/stand_alone_rules.h"

#include <algorithm>

namespace ullage {

namespace {

std::optional<double> ratio(double energy_wh, double need_wh) { return need_wh > 0 ? std::optional(energy_wh / need_wh) : std::nullopt; }

} // namespace

BatteryByRule battery_by_rule(double daily_wh, const SizingChoices& choices) {
    BatteryByRule battery;
    battery.unadjusted_wh = choices.autonomy_days * daily_wh / choices.inverter_efficiency;
    battery.by_depth_wh = battery.unadjusted_wh / choices.most_depth;
    battery.by_end_of_life_wh = battery.unadjusted_wh / choices.end_of_life;
    battery.depth_governs = battery.by_depth_wh >= battery.by_end_of_life_wh;
    battery.nameplate_wh = std::max(battery.by_depth_wh, battery.by_end_of_life_wh) * choices.temperature_factor * choices.margin;
    return battery;
}

PvArray pv_array(double daily_wh, const SizingChoices& choices) {
    PvArray array;
    array.daily_need_wh = daily_wh / choices.inverter_efficiency;
    array.by_rule_w = choices.array_to_load * array.daily_need_wh / (choices.peak_sun_hours * choices.derating);
    array.array_w = choices.array_w.value_or(array.by_rule_w);
    array.daily_wh = array.array_w * choices.peak_sun_hours * choices.derating;
    array.array_to_load = ratio(array.daily_wh, array.daily_need_wh);
    return array;
}

std::vector<PvMonth> pv_months(const PvArray& array, const SizingChoices& choices) {
    std::vector<PvMonth> months;
    for (int month = 1; month <= months_of_year; ++month) {
        const std::optional<double>& sun_hours = choices.month_sun_hours[static_cast<std::size_t>(month - 1)];
        if (!sun_hours) continue;
        PvMonth& one = months.emplace_back();
        one.month = month;
        one.sun_hours = *sun_hours;
        one.daily_wh = array.array_w * *sun_hours * choices.derating;
        one.margin_wh = one.daily_wh - array.daily_need_wh;
        one.array_to_load = ratio(one.daily_wh, array.daily_need_wh);
    }
    return months;
}

} // namespace ullage
