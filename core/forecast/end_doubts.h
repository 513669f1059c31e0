// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "measure/options.h"
#include "model/run_record.h"
#include "unit/between_runs.h"

#include <vector>

namespace ullage {

/// What the readings of a run say against its end as it is about to be noted, a sentence each without an end that asks; empty where they bear it
/// out. `ended` is the run as it would stand, with its end; its noted moment is the mark "cut-off", else the last reading.
///
/// Only of drains that ended by cut-off; of them
///  - an end before, or where it was seen to happen after, the 95 % range in which the readings before it let the cut-off be expected (forecast_run
///    as of the last of them);
///  - an end later than a steady load allows for what the register took, by more than three standard uncertainties and by how late it may have been
///    noticed (steady_load_end); or earlier than it needs.
/// Source: the program's own; three standard uncertainties are common practice, no source.
[[nodiscard]] std::vector<Message> end_doubts(const RunRecord& ended, const UnitFit& unit_fit, const MeasureOptions& options = {});

} // namespace ullage
