// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "run_analysis/run_analysis.h"
#include "unit/between_runs.h"

#include <vector>

namespace ullage {

/// Both reference depths of a full drain as far as the unit is known: with the run's own no-load draw where its readings give
/// one (GaugeAnalysis::depths), else with that of `fit`, all drains of the unit together. Without either, shares delivered
/// alone; empty for a run that is no full drain.
[[nodiscard]] std::vector<ReferenceDepth> known_depths(const RunRecord& record, const RunAnalysis& analysis, const UnitFit& fit);

} // namespace ullage
