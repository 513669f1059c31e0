// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>

struct lxw_workbook;
struct lxw_worksheet;

namespace ullage {

/// Where a chart finds its numbers: columns of the sheet, counted from 0; rows 1 to last_row.
struct ChartSource {
    std::string sheet; ///< its name
    std::string title; ///< of the value axis
    std::optional<std::size_t> category;
    std::size_t value = 0, lower = 0, upper = 0;
    std::size_t last_row = 0;
    bool below_zero = false; ///< some number is negative, so the axis may not begin at 0
};

/// Adds a chart with its upper left corner in the first column of `row`: a point for each value and a bar from lower to upper. All
/// follow the cells, so they stay right when the sheet is sorted or corrected. (Error bars with limits from cells are
/// not to be had from the library; high-low lines are, and may be lopsided, which an interval may be too.)
void add_interval_chart(lxw_workbook* book, lxw_worksheet* sheet, const ChartSource& source, std::size_t row);

} // namespace ullage
