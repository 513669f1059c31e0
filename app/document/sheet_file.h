// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "formats/sheets/run_sheet.h"
#include "model/load_list.h"
#include "model/pv_sheet.h"

#include <QString>

#include <string>
#include <vector>

namespace ullage {

class Document;

/// Reads a run sheet from a file; any thread. Files over 64 MB are refused: no run sheet is that long.
Result<SheetImport> read_sheet_file(const QString& path);

/// Whether a file looks like a run sheet: among its first lines is one that names a unit. A log of a meter has none.
[[nodiscard]] bool is_run_sheet_file(const QString& path);

/// Whether a file that is no sheet of ours may be a foreign table of readings, by its ending and its beginning: see may_be_foreign_table().
[[nodiscard]] bool is_foreign_table_file(const QString& path);

/// Whether a text with columns has one for the gauge, which no log of a meter has.
[[nodiscard]] bool names_gauge(const QString& path);

/// Reads a load list from a file (formats/sheets/load_list_file.h) and adds it. Errors besides: a list of that name is there already.
Result<LoadList> import_load_list_file(Document& document, const QString& path);

/// Whether a file begins as a load list does, and whether one is a PV sheet that can be read.
[[nodiscard]] bool is_load_list_file(const QString& path);
[[nodiscard]] bool is_pv_sheet_file(const QString& path);

/// A PV sheet that went into the logbook, and what of its file did not.
struct ImportedPvSheet {
    PvSheet sheet;
    std::vector<Message> notices;
};
/// Reads a PV sheet from a file (formats/sheets/pv_sheet_text.h) and adds it, with the unit of that name where the logbook has one. Limits of the PV
/// input belong to the unit: those of the file that the unit does not state are named in a notice.
Result<ImportedPvSheet> import_pv_sheet_file(Document& document, const QString& path);

/// Writes a run as a run sheet, whole or not at all; somebody was asked whether a file of this name may be replaced. Errors: those of
/// write_whole_file. Precondition: the run is in the document.
Result<void> export_sheet_file(const Document& document, const RunId& run_uuid, const QString& path);

/// "osk-1200-drain-2.csv": a file name for a run. Precondition: the run is in the document.
[[nodiscard]] QString sheet_file_name(const Document& document, const RunId& run_uuid);

} // namespace ullage
