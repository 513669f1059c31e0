// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/forecast.h"
#include "forecast/inside/forecast_load.h"
#include "forecast/inside/forecast_trend.h"
#include "forecast/inside/weighted_quantile.h"

#include <optional>
#include <string>

namespace ullage {

/// When a running drain will be cut off, or why that cannot be said; in hours from TrendSetup::end.
struct CutOffForecast {
    std::optional<Spread> hours;
    ForecastBasis basis = ForecastBasis::trend;
    std::string reason;
};

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

/// Weighs what may be left (left_by_trend; for earlier drains normal about the fit's balance) against what the load may do
/// (FutureLoads), gives the median and the quantiles of half the missing coverage at either side. See forecast_run for the
/// method.
[[nodiscard]] CutOffForecast forecast_cut_off(const CutOffSetup& setup);

} // namespace ullage
