// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/gauge_analysis.h"
#include "measure/energy_analysis.h"

namespace ullage {

/// Takes a gauge at fault out of a projected usable fraction (usable.h), which rests on an accurate one. With `e` the largest fault in points (of
/// `infeasible`, `stuck`, `jump` and `bent` findings that weigh as faults) and `d` the points that the gauge fell, the value becomes that of a fall
/// of d + e: a doubt lowers what is said and never raises it. The interval takes in falls of d - e and d + e; where no possible unit explains the
/// readings (`infeasible`), nothing is left to tell how deep the run went, so that it goes from what was delivered to the most that a battery of
/// this label holds (most_held_wh), and no value lies above that. A measured fraction, an `at least` and one without a fault stay as they are. Rises
/// of the gauge are in it already. Source: the program's own derivation; checked against simulated units.
void lower_by_gauge_faults(const RunRecord& record, const GaugeAnalysis& gauge, EnergyAnalysis& energy);

/// analyse_energy() with what the gauge's faults do to a projection: for whoever shows the fraction of a run and not its gauge. Judges the gauge only
/// of a run whose fraction is projected.
[[nodiscard]] EnergyAnalysis analyse_judged_energy(const RunRecord& record, const MeasureOptions& options = {});

} // namespace ullage
