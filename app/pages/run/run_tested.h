// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/energy_analysis.h"
#include "pages/parts/tested_outcome.h"

namespace ullage {

/// What the run tests: energy, time and power of a charge, the outcome of a sustained-output or peak-output run, else the usable fraction.
[[nodiscard]] TestedOutcome run_tested(const RunRecord& record, const EnergyAnalysis& energy);

} // namespace ullage
