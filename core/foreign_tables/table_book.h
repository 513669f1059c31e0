// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

// Tables that other programs wrote, as grids of cells.

// What a table may be at most. The bounds keep a damaged or hostile file from using up memory; a longer table of readings is the log of a meter.
inline constexpr std::size_t most_table_rows = 200'000;
inline constexpr std::size_t most_table_columns = 1'000;
inline constexpr std::size_t most_table_cells = 4'000'000; ///< of all sheets together
inline constexpr std::size_t most_table_sheets = 500;
inline constexpr std::size_t most_unpacked_bytes = 256'000'000; ///< of all parts of a workbook that are read

/// One cell. Blanks at its ends are taken off.
struct GridCell {
    std::string text;
    /// The text was made here from a number that the file stores: point as decimal sign, no grouping; days as 2027-05-14, moments as
    /// 2027-05-14 18:00:00, times of day and durations as 18:00:00, percent as `69 %`.
    bool typed = false;

    bool operator==(const GridCell&) const = default;
};

/// One table. rows[i] is row i + 1 as its program counts them; rows may be of unlike length.
struct TableSheet {
    std::string name; ///< empty for a text
    std::vector<std::vector<GridCell>> rows;
    long formulas_without_value = 0;

    [[nodiscard]] std::size_t width() const;                                     ///< of the longest row
    [[nodiscard]] const GridCell& at(std::size_t row, std::size_t column) const; ///< an empty cell where there is none
};

/// All tables of one file or one paste.
struct TableBook {
    Message form; ///< "XLSX workbook", "ODS workbook", "web page", "text, UTF-8, columns end at a semicolon"
    std::vector<TableSheet> sheets;
};

/// Reads tables out of bytes, known by what they hold: a workbook (XLSX by ECMA-376 Part 1, ODS by OpenDocument 1.3; values as stored, dates by their
/// number format, formulas by the value kept with them), tables of HTML, else text: UTF-8, UTF-16 or Windows-1252, its columns ended by tabs,
/// semicolons, bars, commas or several blanks. `delimiter` 0: detected. `where` names the bytes in errors. Errors (bad_input), each one line: a
/// password, damage, an unknown kind of file, no cell, more than the limits above.
[[nodiscard]] Result<TableBook> read_table_book(std::string_view bytes, const std::string& where, char delimiter = 0);

} // namespace ullage
