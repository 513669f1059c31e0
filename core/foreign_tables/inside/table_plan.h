// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room foreign_tables: where the head of a table stands, and what its columns are.
#pragma once

#include "foreign_tables/inside/table_cells.h"
#include "foreign_tables/table_reading.h"

#include <optional>
#include <vector>

namespace ullage {

/// Columns of one run, or of several below one another; another block stands beside it.
struct TableBlock {
    std::size_t first = 0, end = 0; ///< columns, `end` not included
    std::string title;              ///< above its head
    std::vector<std::size_t> of(TableRole role, const std::vector<TableReading::Column>& columns) const;
    std::optional<std::size_t> shared_time, shared_date; ///< of the first block, where this one has none
};

/// Rows below one head.
struct TableSection {
    std::optional<std::size_t> head; ///< row of the head
    std::size_t data = 0, end = 0;   ///< rows, `end` not included
    std::vector<TableReading::Column> columns;
    std::vector<TableBlock> blocks;
};

struct TablePlan {
    std::vector<TableSection> sections;
    NumberWriting writing;
    DateOrder date_order = DateOrder::unknown;
    std::string rated_text{}; ///< a rated energy above the table, as it stands there: its decimal sign is that of the table
};

/// Finds heads and columns, puts what it says and asks into `reading`.
[[nodiscard]] TablePlan plan_table(const TableSheet& sheet, const TableAnswers& answers, TableReading& reading);

/// Takes the rows of all sections into runs.
void take_rows(const TableSheet& sheet, const TablePlan& plan, const TableAnswers& answers, const std::string& zone, UtcMs now_ms,
               TableReading& reading);

/// Decimal sign and order of dates, of all cells of the columns that hold such. First step of the rows: the columns are known.
void settle_table_writing(const TableSheet& sheet, const TableAnswers& answers, TablePlan& plan, TableReading& reading);

/// Adds a question unless the same thing is asked already.
void ask_once(TableReading& reading, TableQuestion about, const Message& words, std::vector<std::string> choices = {});
/// Adds a sentence unless it stands there.
void note_once(TableReading& reading, const Message& words);

/// "column 3 (`Energy`)".
[[nodiscard]] Message table_column_name(const std::vector<TableReading::Column>& columns, std::size_t column);

} // namespace ullage
