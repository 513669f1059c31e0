// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "forecast/forecast.h"
#include "forecast/inside/forecast_load.h"
#include "forecast/inside/forecast_trend.h"

#include <vector>

namespace ullage {

/// How the gauge of a run falls at present, at the load expected over its next step. `points` as in TrendSetup, of which only the
/// last fall of 8 points (or 8 steps) is used: a gauge that is bent is straight over so little. Each end of that fall is good to
/// half a step either way, and the speed to another 4 %. `has_register`: else time stands for energy. The record's readings,
/// or the log of its gauge, decide when the shown value appeared. Errors: no gauge reading, no fall yet, nothing taken.
[[nodiscard]] Result<GaugeSpeed> gauge_speed(const RunRecord& record, const EnergyAnalysis& energy, const std::vector<TrendPoint>& points,
                                             const FutureLoads& loads, bool has_register);

} // namespace ullage
