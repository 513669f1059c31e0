// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/run_scan.h"

#include <optional>

namespace ullage {

/// Delivered energy at every noted moment of a run by the log of its meter, in place of the registers noted by hand. Absent where the run has no log
/// that tells: the log is of another meter than the run, does not reach over two noted moments, or has power alone beside registers noted by hand.
///
/// A register column goes through unwrap_register() like one noted by hand, and so do registers noted where the log says nothing (before it, after
/// it, in gaps of more than ten minutes), if a register noted by hand agrees with the log elsewhere, or the log goes on from the last that was noted
/// before it. A mark "meter zeroed" stands for the fall of the log's register next to it, up to three minutes after it or back to the reading before.
/// A log of power alone is integrated (log_energy.h); its gaps are never bridged: up to two minutes are ShortGaps, longer ones make the energy `at
/// least`, with the most that may have flowed at the highest power in words. Where the log of another meter of the run covers such a gap, or the time
/// before or after the log, that stands in (log_takeover.h).
///
/// The energy at a moment is interpolated between the samples around it. At the cut-off it is that of the end of the doubt of the moment, as nothing
/// flows after. LogUse::u_wh holds interpolation and doubt of the moment for each point. A noted moment up to two minutes outside the log counts as
/// its end; so does a later one where the log saw the power cease. Of a run still running, and of one
/// whose log stops before its end, the last sample of the log follows, without a reading.
[[nodiscard]] std::optional<RegisterTrack> log_track(const RunRecord& record, const RunScan& scan, const MeasureOptions& options);

/// What the log says beside the registers noted by hand: how many of these agree with it, and whether its integrated power agrees with its register
/// (or with the registers noted by hand, where the log has none). One or more sentences; empty without a log. Registers that do not fit are added to
/// `track` as register corrections.
[[nodiscard]] Message compare_with_log(const RunRecord& record, const MeasureOptions& options, RegisterTrack& track);

} // namespace ullage
