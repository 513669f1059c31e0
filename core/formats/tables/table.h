// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"
#include "base/result.h"
#include "formats/files/replacing.h"
#include "formats/text/text_lines.h"
#include "formats/text/text_pieces.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace ullage {

/// One column of an export. A quantity column becomes several in CSV: value, lower, upper, kind, reason.
struct TableColumn {
    std::string key;  ///< stable, e.g. "usable_fraction"
    Message title;    ///< for people, e.g. "usable fraction"
    std::string unit; ///< "Wh", "W", "" for text
    enum class Content { text, number, quantity } content = Content::text;
    int decimals = 1;        ///< for people, where no uncertainty says how many
    bool identifies = false; ///< with the other columns that do, tells each row from every other
    bool instant = false;    ///< texts are ISO 8601 instants with seconds and offset
    bool as_noted = false;   ///< people too read it in `unit`: what a display showed
};

using TableCell = std::variant<Message, Quantity>; ///< a number column holds a Quantity without interval

using TableRow = std::vector<TableCell>;

/// All of a table but its rows.
struct TableHead {
    Message title;
    std::vector<TableColumn> columns;
    std::vector<Message> remarks;                    ///< below the table
    std::vector<std::pair<Message, Message>> method; ///< heading and text: how the figures came about
    std::vector<Message> answer{};                   ///< above the table: what it says, in sentences
    std::vector<std::string> for_readers{};          ///< keys of the columns on the first sheet of a workbook; empty: all
    std::size_t text_width = terminal_width;         ///< that the plain text keeps within, in letters; 0: as wide as it comes
};

/// What every export format writes: the same numbers in each. Forms for people are in the language in use with its decimal sign; JSON is in English;
/// in CSV keys, kinds and numbers are the same in every language.
struct Table : TableHead {
    std::vector<TableRow> rows;
};

/// The table with only these rows, in this order. Precondition: each is a row of the table.
[[nodiscard]] Table with_rows(Table table, const std::vector<std::size_t>& rows);

/// Gets one row after the other, each for the time of the call; false when it wants no more.
using RowTaker = std::function<bool(const TableRow& row)>;

/// A table whose rows are made when they are asked for, one at a time, so that a long one is never in memory as a whole. Formats ask more than
/// once and get the same rows each time.
struct StreamedTable : TableHead {
    StreamedTable() = default;
    StreamedTable(const Table& table); ///< its rows, so `table` must outlive it
    StreamedTable(Table&& table);      ///< holds them

    std::size_t row_count = 0;
    std::function<bool(const RowTaker& take)> each_row = [](const RowTaker&) { return true; }; ///< false where the taker wanted no more
};

/// The table with its rows in memory.
[[nodiscard]] Table collected(const StreamedTable& table);

enum class TableFormat { text, csv, markdown, html, xlsx, json, latex };

/// Names of the formats: "text", "csv", "markdown", "html", "xlsx", "json", "latex".
[[nodiscard]] std::vector<std::string> table_format_names();
/// Format of such a name; errors name the known ones.
[[nodiscard]] Result<TableFormat> table_format_from(std::string_view name);
/// What the name of a file in this format ends in, without the dot: "md".
[[nodiscard]] std::string_view table_format_ending(TableFormat format);
/// The format of a file by its ending (with the dot, or empty), also "markdown" and "htm"; absent for any other.
[[nodiscard]] std::optional<TableFormat> table_format_of_ending(std::string_view ending);

/// UTF-8 text of the table; empty for xlsx, which is no text. Texts from users are escaped for the format; in CSV a text that a spreadsheet would
/// take for a formula gets an apostrophe in front (formats/text/spreadsheet_text.h).
[[nodiscard]] std::string table_text(const StreamedTable& table, TableFormat format);

/// The same text in pieces, as it is made. False when `take` could take no more.
[[nodiscard]] bool table_text(const StreamedTable& table, TableFormat format, const TextTaker& take);

/// Where the description of a CSV file stands: the file's path with "-metadata.json" (W3C Model for Tabular Data and Metadata on
/// the Web, 2015, 5.3).
[[nodiscard]] std::string csv_metadata_path(const std::string& csv_path);

/// Whether write_table() may write to this path, and beside it. Changes nothing. Errors: those of output_target().
[[nodiscard]] Result<void> check_table_target(TableFormat format, const std::string& path, const Replacing& replacing = {});

/// Writes the table to a file, whole or not at all (replace_file()), row by row as they are made. With CSV its description follows at
/// csv_metadata_path(), where it may take the place of a file of our own only unless forced; where it fails the table stands and the error says so.
/// Errors: those of replace_file().
[[nodiscard]] Result<void> write_table(const StreamedTable& table, TableFormat format, const std::string& path, const Replacing& replacing = {});

} // namespace ullage
