// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/load_statistics.h"
#include "store/logbook.h"

#include <optional>

namespace ullage {

/// Load statistics of the traces of a run's own meter (where it has none, of the first other): from its first reading to its cut-off mark, else to
/// its last reading; of a run still running, or without readings, to the last sample. Samples further apart than ten mean intervals of their trace,
/// at least 60 s, are a gap. Absent where the run has no trace of power. Errors: those of Logbook::traces and read_samples.
[[nodiscard]] Result<std::optional<LoadStatistics>> load_of_run(const Logbook& logbook, const RunRecord& record);

} // namespace ullage
