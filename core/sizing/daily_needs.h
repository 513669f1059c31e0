// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/day_of_use.h"
#include "sizing/stand_alone_rules.h"

#include <optional>
#include <vector>

namespace ullage {

/// What a day asks of PV array and battery where so many units alike serve a list side by side (SizingChoices::units).
struct DailyNeeds {
    double load_wh = 0;          ///< what the list takes, at the socket
    double own_wh = 0;           ///< what the units spend besides: own draw while their output is on, standby draw for the rest, quadratic loss
    bool own_draw_known = false; ///< measured; else own_wh holds what is usual, or nothing, and array and battery are the least that is needed
    PvArray array;
    std::vector<PvMonth> months; ///< those whose sun is stated
    BatteryByRule battery;
};

/// By pv_array(), pv_months() and battery_by_rule(), each of load_wh + own_wh, so that array, months and days rest on one balance. The own draw runs
/// for every hour that the output is on. Without `content`: of the list alone. Preconditions: as size_unit; units >= 1.
[[nodiscard]] DailyNeeds daily_needs(const LoadTotals& totals, const Unit& unit, const std::optional<UnitContent>& content,
                                     const SizingChoices& choices);

} // namespace ullage
