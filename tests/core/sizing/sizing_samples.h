// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/sizing.h"
#include "unit/between_runs.h"

#include <string>
#include <utility>
#include <vector>

namespace ullage::test {

inline Appliance sized_appliance(std::string name, double power_w, double hours_per_day, double night_hours = 0, int count = 1) {
    Appliance made;
    made.name = std::move(name);
    made.power_w = power_w;
    made.hours_per_day = hours_per_day;
    made.night_hours = night_hours;
    made.count = count;
    return made;
}

inline Appliance cycling_refrigerator() {
    Appliance made = sized_appliance("refrigerator", 60, 24, 12);
    made.duty = 0.35;
    made.always_connected = true;
    return made;
}

inline LoadList sized_list(std::vector<Appliance> appliances) {
    LoadList list;
    list.name = "house";
    list.appliances = std::move(appliances);
    return list;
}

inline Unit sized_specimen() {
    Unit unit;
    unit.uuid = UnitId("unit");
    unit.name = "Specimen";
    unit.rated_energy_wh = 1000;
    unit.rated_output_w = 1000;
    unit.peak_output_w = 2000;
    return unit;
}

/// A fit without uncertainty: the unit of constructed: cells of 968 Wh, fixed draw 3.667307804 W and 0.052235239 lost per watt-hour.
inline UnitFit exact_fit() {
    UnitFit fit;
    UnitParameters parameters;
    parameters.e_star_wh = 968 / 1.052235239;
    parameters.p_star_w = 3.667307804 / 1.052235239;
    fit.parameters = parameters;
    fit.planning = parameters;
    fit.lowest_load_w = fit.lowest_power_w = 20;
    fit.highest_load_w = fit.highest_power_w = 400;
    return fit;
}

} // namespace ullage::test
