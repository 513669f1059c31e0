// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "forecast/forecast.h"
#include "forecast/inside/what_is_left.h"

#include <optional>

namespace ullage {

/// When a running drain will be cut off, or why that cannot be said; in hours from TrendSetup::end.
struct CutOffForecast {
    std::optional<Spread> hours;
    ForecastBasis basis = ForecastBasis::trend;
    Message reason;
    ForecastAccount account{};
};

/// Weighs what may be left (left_by_trend; for earlier drains normal about the fit's balance) against what the load may do
/// (FutureLoads), gives the median and the quantiles of half the missing coverage at either side. See forecast_run for the
/// method.
[[nodiscard]] CutOffForecast forecast_cut_off(const CutOffSetup& setup);

} // namespace ullage
