// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "unit/between_runs_predict.h"
#include "unit/gauge_drift.h"
#include "unit/next_run.h"
#include "unit/unit_drift.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// All that the drains of one unit say together, as texts, files and pages show it.
struct UnitAnalysis {
    Unit unit;
    UnitFit fit;
    std::vector<LoadPrediction> predictions; ///< at round_loads
    std::optional<NextRun> next_run;
    Message next_run_sentence;
    Drift drift;            ///< of the energy: ageing
    GaugeDrift gauge_drift; ///< of the gauge, told apart from ageing
};

/// Loads to print predictions at: up to five of 10, 20, 50, 100, … W up to the unit's rated output (without one: twice the highest tested load,
/// 200 W at least), spread evenly. Ascending; empty for a rated output below 10 W.
[[nodiscard]] std::vector<double> round_loads(const UnitFit& fit, const Unit& unit);

/// "A drain near 310 W (about 3 h) would narrow this most, by a factor of 1.8."; says so where no drain would.
[[nodiscard]] Message next_run_sentence(const UnitFit& fit, const std::optional<NextRun>& next_run);

/// Puts together fit, predictions, next run, drift and gauge drift. `fit` is that of the unit's runs.
[[nodiscard]] UnitAnalysis analyse_unit(const Unit& unit, UnitFit fit);

/// One for each unit of `records` (runs of several units, in any order), in order of first appearance.
[[nodiscard]] std::vector<UnitAnalysis> analyse_units(const std::vector<RunRecord>& records, const MeasureOptions& options = {});

} // namespace ullage
