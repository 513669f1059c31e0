// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room trace: where header and data of a log lie.
#pragma once

#include "trace/trace_layout.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// The beginning of a log, split.
struct LayoutRows {
    char delimiter = ',';
    std::vector<std::string> preface;
    std::vector<std::string> header;            ///< empty where there is none
    std::vector<std::string> units_row;         ///< a second header row with nothing but units
    std::vector<std::vector<std::string>> data; ///< rows of the usual number of fields
    long first_data_line = 1;
    std::string header_line;
};

/// A line that says something about the log: it begins with # or //.
[[nodiscard]] bool is_comment(std::string_view line);

/// A cell that a row of data could hold: a number, with a unit or without, a moment, a date, a time of day, or nothing.
[[nodiscard]] bool is_data_cell(std::string_view cell);

/// The delimiter under which most cells can be read is taken: tab, semicolon, bar, comma, blanks, in this order where equal. Data begin with the
/// first row of the usual number of fields of which at least half can be read. Error: no such row.
[[nodiscard]] Result<LayoutRows> find_rows(const std::vector<std::string>& lines, std::optional<char> delimiter);

} // namespace ullage
