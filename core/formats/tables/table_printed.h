// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace ullage {

/// One cell as people see it, one line, in the language in use with its decimal sign, not yet escaped for a format.
struct PrintedCell {
    std::string value;                 ///< "893", "0.86 to 0.95", "not known", text; empty where nothing belongs
    std::string interval;              ///< "± 17" or empty; formats show it in a lighter tone
    int note = 0;                      ///< number of the note below the table, 0 for none
    std::optional<double> sort_number; ///< as stored: value, else the lower or upper limit; absent for text and "not known"

    /// "893 ± 17".
    [[nodiscard]] std::string text() const;
};

/// A table as people see it: rounded to what the uncertainty supports, kinds and reasons as numbered notes.
struct PrintedTable {
    std::vector<std::string> heads; ///< "delivered energy (Wh)"
    std::vector<bool> right;        ///< columns of numbers stand to the right
    std::vector<std::vector<PrintedCell>> rows;
    std::vector<std::string> notes; ///< "projected: assumes …"; note 1 comes first; each text once
};

/// A column as people read it (shown_unit()), with its unit and the decimals in that unit.
struct ShownColumn {
    TableColumn column;
    std::string from; ///< unit of the stored numbers that the power belongs to
    int power = 0;    ///< of ten, by which they grow
};

/// The columns of a table as people read them: fractions in %, energies in kWh where one of the column is 10 kWh or more, and the unit that all cells
/// of a column share where it has none of its own. Goes through the rows once where they have a say in it.
[[nodiscard]] std::vector<ShownColumn> shown_columns(const StreamedTable& table);
/// A cell of such a column in the column's unit; one of another unit stays as it is.
[[nodiscard]] Quantity in_shown_column(const Quantity& quantity, const ShownColumn& shown);

/// Prints a table row by row. A unit that all cells of a column share stands in its head; a cell whose unit is not that of its column carries its
/// own. A row that is shorter than the columns is filled with empty cells; surplus cells are left out.
class RowPrinter {
public:
    /// Goes through the rows as shown_columns() does.
    explicit RowPrinter(const StreamedTable& table);

    [[nodiscard]] const std::vector<std::string>& heads() const { return heads_; }
    [[nodiscard]] const std::vector<bool>& right() const { return right_; }
    /// The row's cells, for the time until the next.
    [[nodiscard]] const std::vector<PrintedCell>& print(const TableRow& row);
    /// Of all rows printed so far; a row that is printed again adds none.
    [[nodiscard]] const std::vector<std::string>& notes() const { return notes_; }

private:
    [[nodiscard]] int note_number(const std::string& note);
    [[nodiscard]] PrintedCell printed_quantity(std::size_t column, Quantity quantity);

    std::vector<ShownColumn> columns_;
    std::vector<std::string> heads_;
    std::vector<bool> right_;
    std::vector<std::string> notes_;
    std::unordered_map<std::string, int> note_numbers_;
    std::vector<PrintedCell> cells_;
};

/// All of it in memory.
[[nodiscard]] PrintedTable printed_table(const StreamedTable& table);

/// "delivered energy (Wh)"; without unit or for a fraction (unit "1") the title alone.
[[nodiscard]] std::string column_head(const TableColumn& column);

/// A head broken at spaces into lines no wider than `width` on a terminal; a longer word stands alone.
[[nodiscard]] std::vector<std::string> broken_head(const std::string& head, std::size_t width);

/// The cell of a row and column; an empty text where the row is too short.
[[nodiscard]] const TableCell& cell_at(const TableRow& row, std::size_t column);

/// The number when it is there and finite.
[[nodiscard]] std::optional<double> finite(const std::optional<double>& number);

/// True when the cells of a column carry units of their own.
[[nodiscard]] bool has_own_units(const TableColumn& column);

} // namespace ullage
