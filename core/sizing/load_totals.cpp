// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/load_totals.h"

#include <algorithm>

namespace ullage {

namespace {

constexpr double hours_of_day = 24;

ApplianceTotals totals_of(const Appliance& appliance) {
    const double count = appliance.count;
    ApplianceTotals totals;
    totals.running_w = count * running_w(appliance);
    totals.mean_w = count * mean_in_use_w(appliance);
    totals.daily_wh = totals.mean_w * appliance.hours_per_day;
    totals.night_wh = totals.mean_w * appliance.night_hours;
    return totals;
}

} // namespace

LoadTotals load_totals(const LoadList& list) {
    LoadTotals totals;
    double longest_by_day_h = 0, longest_by_night_h = 0, largest_surcharge_w = 0;
    for (const Appliance& appliance : list.appliances) {
        const ApplianceTotals& one = totals.appliances.emplace_back(totals_of(appliance));
        totals.daily_wh += one.daily_wh;
        totals.night_wh += one.night_wh;
        totals.running_w += one.running_w;
        totals.always_connected = totals.always_connected || appliance.always_connected;
        totals.hours_on_most += appliance.hours_per_day;
        longest_by_day_h = std::max(longest_by_day_h, appliance.hours_per_day - appliance.night_hours);
        longest_by_night_h = std::max(longest_by_night_h, appliance.night_hours);
        if (appliance.start_peak_w) largest_surcharge_w = std::max(largest_surcharge_w, *appliance.start_peak_w - running_w(appliance));
    }
    totals.hours_on_most = totals.always_connected ? hours_of_day : std::min(hours_of_day, totals.hours_on_most);
    totals.hours_on = totals.always_connected ? hours_of_day : std::min(totals.hours_on_most, longest_by_day_h + longest_by_night_h);
    const double longest_h = longest_by_day_h + longest_by_night_h;
    // Uses that overlap at dusk can exceed a day together: day and night then share it as the uses do.
    totals.night_h = longest_h > hours_of_day ? hours_of_day * longest_by_night_h / longest_h
                                              : std::clamp(usual_night_h, longest_by_night_h, hours_of_day - longest_by_day_h);
    totals.night_hours_on = totals.always_connected ? totals.night_h : std::min(longest_by_night_h, totals.night_h);
    totals.mean_w = totals.daily_wh / hours_of_day;
    totals.peak_w = totals.running_w + largest_surcharge_w;
    if (totals.daily_wh > 0) {
        totals.mean_on_w = totals.daily_wh / totals.hours_on;
        totals.duty = std::min(1.0, *totals.mean_on_w / totals.running_w);
        totals.night_share = totals.night_wh / totals.daily_wh;
    }
    return totals;
}

std::optional<CommonLoad> common_load_of(const LoadList& list) {
    const LoadTotals totals = load_totals(list);
    if (!totals.duty) return std::nullopt;
    return CommonLoad{totals.running_w, *totals.duty, list.name};
}

} // namespace ullage
