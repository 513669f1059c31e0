// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/run_record.h"

#include <QString>

#include <vector>

namespace ullage {

class Document;

/// Opens the sample logbook at `path`. Where there is none yet it is made from the invented run sheets, the log of a meter, PV sheets
/// and load lists that come with the program, and the undo stack starts empty. Errors: as Document::create, open, import and importTrace.
Result<void> open_sample_logbook(Document& document, const QString& path);

/// The runs of those sheets without a logbook; a unit or meter is known by its name, a run by its sheet's. Errors: not_found where this build
/// holds none, those of read_run_sheet.
[[nodiscard]] Result<std::vector<RunRecord>> sample_runs();

} // namespace ullage
