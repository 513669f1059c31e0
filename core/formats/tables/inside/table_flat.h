// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace ullage {

// Spreadsheets hold one number or text in a cell. For them a column becomes several: a quantity column its value, unit where the cells
// have units of their own, lower and upper end of the interval, kind and reason; a number column value and perhaps unit.

/// Which part of a cell a flat column shows.
enum class Part { text, value, unit, lower, upper, kind, reason };

struct FlatColumn {
    std::size_t column = 0; ///< of the table
    Part part = Part::text;
    std::string key;   ///< "delivered_wh", "delivered_wh_lower"
    std::string title; ///< "delivered energy (Wh)", "delivered energy, lower"
};

/// Nothing, a finite number in full precision, or a text that is not empty.
using FlatCell = std::variant<std::monostate, double, std::string>;

[[nodiscard]] std::vector<FlatColumn> flat_columns(const TableHead& table);

/// One part of a cell of `row`. Numbers that are absent or not finite are nothing.
[[nodiscard]] FlatCell flat_cell(const TableHead& table, const TableRow& row, const FlatColumn& column);

/// True for value, lower and upper.
[[nodiscard]] bool is_number(Part part);

} // namespace ullage
