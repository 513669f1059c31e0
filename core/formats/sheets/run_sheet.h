// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/result.h"
#include "model/run_record.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// A run sheet is UTF-8 text: lines `# key: value`, then a header row, then one row for each reading.
///
/// Keys: unit, maker, model, rated_energy_wh, rated_output_w, peak_output_w, pv_max_v, pv_max_a, pv_max_w, pv_start_v, pv_short_circuit_a,
/// charge_time_h, price, paid_price, currency, mass_kg, warranty_years, serial_number, chemistry, purchased, cycles_before, gauge_step_percent, tags,
/// unit_remark, meter, meter_step_wh, meter_limit_percent, meter_load_part_percent, meter_span_wh, meter_correction, meter_points
/// (formats/text/meter_points_text.h), meter_class, meter_standard, meter_starting_current_a, meter_range_low_w, meter_range_high_w,
/// meter_certificate, meter_certificate_date, meter_laboratory, meter_valid_until, meter_remark; the same of a second meter, each after `second_`;
/// run, started_full, ended, end_noticed_within_min, time_zone, load, ambient_c, ambient_end_c, charge_source. Only `unit` is required. Values use
/// the escapes of formats/text/preface_text.h. Lines that begin with `#` and have no colon are comments: reported, not kept.
///
/// Columns, in any order: time (required), gauge_percent, register_wh, second_register_wh, meter_w, display_w, mark, remark.
/// Fields follow RFC 4180; an empty field says nothing; remarks are kept to the letter. A remark that begins
/// with `=` is therefore written as it is, and a spreadsheet may take it for a formula: tables for
/// spreadsheets come from formats/tables/table.h.

/// What reading a run sheet gave: the record (uuids empty) and what a person should be told.
struct SheetImport {
    RunRecord record;
    std::vector<Message> notices; ///< e.g. "line 7: key `vessel` is not known; kept with the run"
};

/// Reads one run sheet (UTF-8 with or without BOM, LF or CRLF; RFC 4180 fields). `source` names the file in
/// errors. Unknown keys are kept in Run::extra and reported; a wrong value, an unknown column or a row of the
/// wrong length is refused with line and column. Times without an offset are local times of the sheet's
/// `time_zone`; one that occurs twice is the earlier unless that lies before the row above, and reported.
/// Readings are put in order of time and numbered in order of the rows.
[[nodiscard]] Result<SheetImport> read_run_sheet(std::string_view text, const std::string& source);

/// Writes the sheet in its normal form (LF, point as decimal sign, times with offset, all keys that have a
/// value in fixed order, withdrawn readings left out). read_run_sheet returns an equal record, and writing
/// that again gives the same bytes. Precondition: texts are UTF-8 without NUL, unit and meter have names, the
/// zone exists, numbers are within what the reader accepts (model/limits.h; gauge 0 to 100, registers
/// and powers not negative).
[[nodiscard]] std::string write_run_sheet(const RunRecord& record);

} // namespace ullage
