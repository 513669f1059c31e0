// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/export_dialog.h"

#include <QStringList>

#include <string>
#include <vector>

namespace ullage {

class Document;

/// The readings of a run as a table: those chosen, all where none is. Without rows where the run is unknown.
[[nodiscard]] Table chosen_readings(const Document& document, const RunId& run_uuid, const std::vector<ReadingId>& reading_uuids);

/// What there is to export of readings: where `run_uuid` is known its readings and intervals with its charts, then the readings and the
/// intervals of all runs. `document` must outlive the subjects.
[[nodiscard]] std::vector<ExportSubject> readings_subjects(Document& document, const RunId& run_uuid);

} // namespace ullage
