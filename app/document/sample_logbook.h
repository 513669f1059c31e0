// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/run_record.h"

#include <QString>

#include <vector>

namespace ullage {

class Clock;

/// Makes the sample logbook at `path`, where there is none yet, from the invented run sheets, the log of a meter, PV sheets and load lists that come
/// with the program. Whole or not at all; any thread. Errors: as Document::create, import, importTrace and saveCopy.
Result<void> make_sample_logbook(const QString& path, const Clock& clock);

/// The runs of those sheets without a logbook; a unit or meter is known by its name, a run by its sheet's. Errors: not_found where this build
/// holds none, those of read_run_sheet.
[[nodiscard]] Result<std::vector<RunRecord>> sample_runs();

} // namespace ullage
