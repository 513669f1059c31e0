// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room measure.
#pragma once

#include "measure/energy_analysis.h"

namespace ullage {

/// Gives an analysis the gauge that a log of the unit holds: fills gauge_log and shown, adds to log_sentence, puts the steps of the gauge among the
/// points, adds its rises. Marks, readings and energy stay as they are. Nothing happens where the record has no such log.
///
/// A step is timed to the two samples around it. At it the gauge showed, on average, the mean of what it showed before and after, whatever it rounds:
/// a reading taken anywhere within a value is that, give or take half a step. So a step has no doubt of the gauge's own, only that of its moment:
/// half of what was delivered between the two samples (rectangular), and the clock of the log against that of the metered energy (not estimated: a
/// noted minute, as for a note). A leap over more than one and a half usual steps is no step: both its ends are readings.
///
/// Not used where more than half of the gauge readings noted by hand contradict it: then its clock, or the log, is the wrong one. Steps after the
/// cut-off do not count. Neither does a last leap to 0 % that takes less than half a percent of the energy: the unit went off.
void add_gauge_of_log(const RunRecord& record, const MeasureOptions& options, EnergyAnalysis& analysis);

/// The register along the readings of a record, as analyse_energy() takes it: by its log where that tells.
[[nodiscard]] RegisterTrack energy_track(const RunRecord& record, RunScan& scan, const MeasureOptions& options);

/// The paired points whose gauge differs from that of the point before.
[[nodiscard]] std::vector<std::size_t> gauge_changes_of(const std::vector<PairedPoint>& points);

} // namespace ullage
