// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"
#include "base/result.h"

#include <string>
#include <variant>
#include <vector>

namespace ullage {

/// One column of an export. A quantity column becomes several in CSV: value, lower, upper, kind, reason.
struct TableColumn {
    std::string key;   ///< stable, e.g. "usable_fraction"
    std::string title; ///< for people, e.g. "usable fraction"
    std::string unit;  ///< "Wh", "W", "" for text
    enum class Content { text, number, quantity } content = Content::text;
    int decimals = 1;  ///< for people, where no uncertainty says how many
};

using TableCell = std::variant<std::string, Quantity>; ///< a number column holds a Quantity without interval

/// What every export format writes: the same numbers in each.
struct Table {
    std::string title;
    std::vector<TableColumn> columns;
    std::vector<std::vector<TableCell>> rows;
    std::vector<std::string> remarks; ///< below the table
    std::vector<std::pair<std::string, std::string>> method; ///< heading and text: how the figures came about
};

enum class TableFormat { text, csv, markdown, html, xlsx, json };

/// Format of a name such as "csv"; errors name the known ones.
[[nodiscard]] Result<TableFormat> table_format_from(std::string_view name);

/// UTF-8 text of the table; empty for xlsx, which is no text. Texts from users are escaped for the format; in CSV a text that a spreadsheet would
/// take for a formula (it begins with = + - @, tab or CR) gets an apostrophe in front.
[[nodiscard]] std::string table_text(const Table& table, TableFormat format);

/// Writes the table to a file, whole or not at all (temporary file and rename). Errors: io, disk_full, refused (not a regular file).
[[nodiscard]] Result<void> write_table(const Table& table, TableFormat format, const std::string& path);

} // namespace ullage
