// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "foreign_tables/table_reading.h"

#include <QString>

#include <functional>

class QTableWidget;
class QWidget;

namespace ullage {

/// The role as the window names it: "power of the load".
[[nodiscard]] QString table_role_words(TableRole role);

/// A table for the first rows of a foreign table, with the role of each column above its cells.
[[nodiscard]] QTableWidget* new_table_grid(QWidget* parent);
/// Shows them; `chosen` is told a column from 0 and the place of its role in table_roles().
void show_table_grid(QTableWidget& grid, const TableSheet& sheet, const TableReading& reading, const std::function<void(std::size_t, int)>& chosen);

/// A table for the rows that are not taken: row, what was done, why.
[[nodiscard]] QTableWidget* new_left_rows_table(QWidget* parent);
void show_left_rows(QTableWidget& table, const std::vector<RowNotTaken>& rows);

} // namespace ullage
