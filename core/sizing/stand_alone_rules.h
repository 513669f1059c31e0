// SPDX-License-Identifier: GPL-3.0-or-later
// The published rules for stand-alone systems. Formulas after IEEE Std 1013-2019, 6.1 to 6.3 (battery) and IEEE Std 1562-2021, 9.1 (array), as a
// third party quotes them; the standards themselves were not read.
#pragma once

#include "sizing/sizing_choices.h"

#include <optional>
#include <vector>

namespace ullage {

/// The battery that the rule asks for: nameplate energy, as a cross-check of what tested units do.
struct BatteryByRule {
    double unadjusted_wh = 0;     ///< autonomy days × what a day spends / inverter efficiency
    double by_depth_wh = 0;       ///< unadjusted / deepest discharge
    double by_end_of_life_wh = 0; ///< unadjusted / share left at the end of life
    bool depth_governs = true;    ///< the larger of the two counts; they are not multiplied
    double nameplate_wh = 0;      ///< the larger × temperature factor × margin
};

/// `daily_wh`: what a day spends at the socket, list and own draw. IEEE 1562 limits its battery part to lead-acid; for lithium the deepest discharge
/// is the user's own figure. Preconditions: check(choices) is good, daily_wh >= 0.
[[nodiscard]] BatteryByRule battery_by_rule(double daily_wh, const SizingChoices& choices);

/// The PV array for a load.
struct PvArray {
    double daily_need_wh = 0;            ///< at the battery: what a day spends / inverter efficiency
    double by_rule_w = 0;                ///< array_to_load × need / (peak-sun hours × derating), W at standard test conditions
    double array_w = 0;                  ///< the one that is there, else by_rule_w
    double daily_wh = 0;                 ///< what array_w brings to the battery: array_w × peak-sun hours × derating
    std::optional<double> array_to_load; ///< daily_wh / need; absent for a load of 0
};

/// `daily_wh` as there. A:L = array Wp × peak-sun hours × system efficiency / daily load; 1.1–1.2 in the worst month for ordinary loads and good
/// sun, 1.3–1.4 or more for critical loads or poor sun. Preconditions as battery_by_rule.
[[nodiscard]] PvArray pv_array(double daily_wh, const SizingChoices& choices);

/// One month of the array.
struct PvMonth {
    int month = 1;        ///< 1 to 12
    double sun_hours = 0; ///< h a day
    double daily_wh = 0;  ///< to the battery
    double margin_wh = 0; ///< daily_wh − need; below 0: the load is not met
    std::optional<double> array_to_load;
};

/// The months whose sun is stated, January first.
[[nodiscard]] std::vector<PvMonth> pv_months(const PvArray& array, const SizingChoices& choices);

} // namespace ullage
