// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/inside/forecast_load.h"
#include "forecast/inside/forecast_trend.h"
#include "forecast/inside/weighted_quantile.h"
#include "measure/options.h"
#include "model/run_record.h"
#include "unit/between_runs.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What is known of a run for its cut-off.
struct CutOffSetup {
    const RunRecord& record;
    const UnitFit& unit_fit;
    const FutureLoads& loads;
    const TrendSetup& trend;  ///< `points` empty without gauge readings
    bool has_register = true; ///< else time stands for energy, see forecast.h
    double seen_on_h = 0;     ///< hours from TrendSetup::end to the last reading of any kind: the output was on then
    MeasureOptions options;
};

/// Why the gauge cannot tell yet what is left; empty when it can.
[[nodiscard]] Message no_trend(const TrendSetup& trend);

/// left_by_trend with the no-load draws that are usual; without a register time stands for energy.
[[nodiscard]] std::vector<LeftWeight> lefts_by_trend(const CutOffSetup& setup);

/// What is left by the unit's earlier drains alone, a normal.
struct FitLeft {
    double wh = 0, u_wh = 0;
    OwnDraw draw;
    bool limit_assumed = false; ///< a meter's limit is not stated
};

/// Absent without drains that tell, or where the run has no register or did not start full. See forecast_run for the method.
[[nodiscard]] std::optional<FitLeft> by_earlier_drains(const CutOffSetup& setup);
/// The normal as weights on a grid.
[[nodiscard]] std::vector<LeftWeight> around(const FitLeft& fit);

/// Hours from TrendSetup::end until an amount is used on one path of the load.
struct HoursLeft {
    double hours = 0, path_weight = 0;
    std::size_t left = 0; ///< index into the amounts
};

/// For every amount and path, in order of hours; those before a moment at which the output was still on are left out. A cut-off over two years off
/// counts as two years.
[[nodiscard]] std::vector<HoursLeft> hours_of(const CutOffSetup& setup, const std::vector<LeftWeight>& lefts);
/// Median and middle share of the hours, each amount with the weight given. Absent where all weights are 0.
[[nodiscard]] std::optional<Spread> spread_by(const std::vector<HoursLeft>& all, double coverage, const std::function<double(std::size_t)>& weight);

/// A cut-off further off than a year is not forecast, h.
inline constexpr double longest_forecast_h = 24.0 * 366;

} // namespace ullage
