// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/late_part.h"
#include "base/result.h"
#include "formats/tables/table.h"
#include "formats/text/text_pieces.h"

#include <string>

namespace ullage {

// One function for each format; callers outside this folder use table_text and write_table. Those that write `out` stop when it takes no more, and
// leave the rest of the text to its finish().

/// Aligned columns for a terminal, LF; heads and notes as in PrintedTable.
void plain_table(const StreamedTable& table, TextPieces& out);
/// RFC 4180, CRLF, a head line of keys. A quantity column gives KEY, KEY_lower, KEY_upper, KEY_kind, KEY_reason; a column
/// without a unit of its own, whose cells may differ in unit, gives KEY_unit after KEY. Absent numbers are empty fields.
void csv_table(const StreamedTable& table, TextPieces& out);
/// What csv_table() writes, described in JSON by the W3C Recommendation "Metadata Vocabulary for Tabular Data" (2015): dialect, and for
/// each field name, titles, datatype, unit and meaning; a primary key where the identifying columns tell all rows apart. `file_name`
/// is that of the CSV file beside it.
[[nodiscard]] std::string csv_metadata(const StreamedTable& table, const std::string& file_name);
/// A longtable for \input, with captions, notes and method; its head names the packages that it needs.
void latex_table(const StreamedTable& table, TextPieces& out);
/// Pipe table with the method below it.
void markdown_table(const StreamedTable& table, TextPieces& out);
/// One self-contained page, well-formed XML; sorting by an inline script, no network.
void html_table(const StreamedTable& table, TextPieces& out);
/// {"program", "version", "title", "columns": [{key, title, unit, content}], "rows": [{KEY: cell}], "remarks", "method"}; a cell
/// is a text, {value, lower, upper, unit, kind, reason}, or null where nothing belongs.
void json_table(const StreamedTable& table, TextPieces& out);
/// Makes a workbook at `path`: the table with typed numbers and a chart of the first quantity column that has numbers, and a
/// sheet "Method". Errors: io or disk_full with the library's words; refused when the table has more rows than a sheet.
inline constinit LateFunction<Result<void>(const StreamedTable& table, const std::string& path)> xlsx_table;

} // namespace ullage
