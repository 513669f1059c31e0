// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "formats/json/quantity_json.h"
#include "pv/pv_check.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// What a PV sheet file states: the sheet (uuids empty), the name of the unit that it is meant for, and limits of the PV input that stand in the
/// file itself, which go before those of the unit.
struct PvSheetText {
    PvSheet sheet;
    std::string unit;
    PvLimits limits;
};

/// check_pv() of all that the sheet states.
[[nodiscard]] PvCheck check_pv(const PvSheetText& sheet);

/// A key of a PV sheet file, which is an option of the command too (`voc_v` there is `--voc-v`).
struct PvKey {
    std::string_view name;
    Phrase help;                                                            ///< what it is and its unit, for the command's help
    std::function<std::string(const PvSheetText&)> text;                    ///< empty: not stated
    std::function<Result<void>(PvSheetText&, std::string_view value)> read; ///< errors have no place in them
};

/// All keys, in the order in which they are written.
[[nodiscard]] const std::vector<PvKey>& pv_keys();

/// A PV sheet file: UTF-8 lines `key: value`; empty lines and lines that begin with `#` are passed over. Numbers take point or comma. Coefficients:
/// `-0.27 %/°C` or `-134 mV/°C`; a bare number is in %/°C. Errors, each with file and line: an unknown or doubled key, a value that cannot be read,
/// and those of check_pv_sheet().
[[nodiscard]] Result<PvSheetText> read_pv_sheet(std::string_view text, const std::string& where);

/// The same sheet as a file; read_pv_sheet() gives it back.
[[nodiscard]] std::string pv_sheet_text(const PvSheetText& sheet);

/// A coefficient as typed: number and `%/°C`, `%/C`, `%/K`, `%`, `mV/°C`, `mV/C` or `mV/K`; without a unit in %/°C.
[[nodiscard]] Result<PvCoefficient> parse_pv_coefficient(std::string_view text);

/// For a terminal: verdict, comparisons as a table, suggestion, conductors and fuses, assumptions, cautions.
[[nodiscard]] std::string pv_check_text(const PvSheetText& sheet, const PvCheck& check);

/// {program, version, format_version, sheet: {key: value…}, verdict, verdict_key, missing, headline, comparisons: [{key, title, value, worst, limit,
/// margin, unit, outcome, sentence}], voc_tolerance_percent, cold_voc_v, hot_vmp_v, hot_cell_c, standard_w, hot_w, conductor_a, reverse_a,
/// least_fuse_a, most_fuse_a, string_fuses, least_series, largest_series, largest_parallel, suggestion, assumptions, cautions}.
[[nodiscard]] std::string pv_check_json(const PvSheetText& sheet, const PvCheck& check);

} // namespace ullage
