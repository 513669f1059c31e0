// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/energy_analysis.h"

namespace ullage {

class UsableView;

/// Shows what the run tests: energy, time and power of a charge, the outcome of a sustained-output or peak-output run, else the usable fraction.
void show_tested(UsableView& view, const RunRecord& record, const EnergyAnalysis& energy);

} // namespace ullage
