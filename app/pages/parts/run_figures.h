// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/forecast.h"
#include "pages/parts/strip_figure.h"
#include "run_analysis/run_analysis.h"

#include <optional>
#include <vector>

namespace ullage {

/// What only a running run has; parts that are not there are not shown.
struct OpenRunView {
    const RunForecast* forecast = nullptr;
    std::optional<StripFigure> due; ///< the next reading; takes the place of the usable fraction, which is only projected then
};

/// The strip of a run seen at `now_ms`: elapsed, gauge, delivered, mean load and load since the last reading, usable fraction, age of
/// the last reading (of an ended run: how it ended). Of a running run whose forecast is given: elapsed with the age of the last reading,
/// gauge, delivered with what the gauge implies beyond it, mean load and load since the last reading, the range of the cut-off with the account of
/// the gauge that it rests on, and the next reading due or else the usable fraction. Six cells always, so that they stand in full lines.
[[nodiscard]] std::vector<StripFigure> run_figures(const RunRecord& record, const RunAnalysis& analysis, UtcMs now_ms, const OpenRunView& open = {});

} // namespace ullage
