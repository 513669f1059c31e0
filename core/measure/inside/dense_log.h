// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room measure.
#pragma once

#include "measure/inside/log_energy.h"
#include "measure/run_scan.h"

#include <optional>
#include <vector>

namespace ullage {

/// The energy of a log at its own samples, and what a track takes over from it.
struct DenseLog {
    LogCurve energy_wh, square_w2h;  ///< corrected by what is stated of its meter
    RegisterTrack track;             ///< register corrections, segments, what is missing, and LogUse; without its points where power was integrated
    std::vector<PowerGap> open_gaps; ///< of integrated power, within the run: nothing is counted in them
};

/// The log of the run's own meter. Absent where it does not tell, see log_track(). Precondition: record.trace, and a first moment in the scan.
[[nodiscard]] std::optional<DenseLog> dense_log(const RunRecord& record, const RunScan& scan, const MeasureOptions& options);

/// Says of the gaps that stayed open what may be missing: up to two minutes are ShortGaps, longer ones make the energy `at least`.
void note_open_gaps(const RunRecord& record, const MeasureOptions& options, DenseLog& dense);

/// Where a run ends as far as its log goes: latest_ms while it is running.
[[nodiscard]] UtcMs log_end_of(const RunRecord& record, const RunScan& scan);

} // namespace ullage
