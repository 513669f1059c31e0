// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

// Which columns of comparison_table() go out: what a person has chosen, by key and in order, or one of two ready sets.

/// A column that a comparison may have.
struct ColumnName {
    std::string key, title;
    bool own = false; ///< the tester's own affair, such as the price paid: in no ready set for readers
};

/// All of them, in the order of the table.
[[nodiscard]] std::vector<ColumnName> comparison_columns();

/// Names of the ready sets, as commands take them: "readers" and "spreadsheet".
inline constexpr std::string_view readers_set = "readers", spreadsheet_set = "spreadsheet";

/// The keys of a ready set; absent for any other name. For readers: unit, rated, delivered, usable, load, duration, no-load draw, gauge, price per
/// usable kWh. For a spreadsheet: every column.
[[nodiscard]] std::optional<std::vector<std::string>> ready_columns(std::string_view name);

/// What `wanted` comes to in `table`, each key once: a figure as tested stands for its like at one load where the table has that and `wanted` does
/// not name both, and the other way round; what the table does not have is left out, and so are columns of the spreadsheet set in which nothing
/// stands. Where rows are told apart by more than the unit, the run or logbook follows it unasked.
[[nodiscard]] std::vector<std::string> columns_for(const Table& table, const std::vector<std::string>& wanted);

/// "unit,rated_wh": keys as they are kept.
[[nodiscard]] std::string column_keys_text(const std::vector<std::string>& keys);
/// Reads that back; a part that is no key (lower-case letters, digits and `_`) or stands there twice is left out.
[[nodiscard]] std::vector<std::string> column_keys_from(std::string_view text);

} // namespace ullage
