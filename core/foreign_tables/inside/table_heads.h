// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room foreign_tables.
#pragma once

#include "foreign_tables/inside/table_plan.h"

#include <string>
#include <vector>

namespace ullage {

/// Whether a row is the head of a table: words that name columns, and no number. `first`: none was found above it.
[[nodiscard]] bool is_table_head(const TableSheet& sheet, std::size_t row, bool first);
/// The titles of the head in this row, with the line of units below it where there is one; `data` becomes the first row below.
[[nodiscard]] std::vector<std::string> head_titles(const TableSheet& sheet, std::size_t row, std::size_t& data);
/// Takes what the rows before `end` state, such as `Unit: …`; `rated_text` becomes the rated energy as it stands there.
void read_preface(const TableSheet& sheet, std::size_t end, TableReading& reading, std::string& rated_text);
/// Roles of the columns of a section and its blocks, side by side.
void resolve_columns(const TableSheet& sheet, const TableAnswers& answers, const std::vector<std::string>& titles, TableSection& section,
                     TableReading& reading);

} // namespace ullage
