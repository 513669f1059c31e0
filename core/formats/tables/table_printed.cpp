// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table_printed.h"

#include "formats/text/table_unicode.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

/// What has to be said below the table: how far a value is known when it is not measured, and the reason given.
std::string note_of(const Quantity& quantity) {
    const std::string reason = one_line(quantity.reason);
    if (quantity.kind == Kind::measured) return reason;
    const std::string kind(kind_text(quantity.kind));
    return reason.empty() ? kind : kind + ": " + reason;
}

/// The columns, each with the unit that all its cells share where it has none of its own.
std::vector<TableColumn> with_common_units(const StreamedTable& table) {
    std::vector<TableColumn> columns = table.columns;
    std::vector<std::size_t> open; ///< whose cells agree so far
    for (std::size_t c = 0; c < columns.size(); ++c)
        if (has_own_units(columns[c])) open.push_back(c);
    if (open.empty()) return columns;
    table.each_row([&](const TableRow& row) {
        std::erase_if(open, [&](std::size_t c) {
            const auto* quantity = std::get_if<Quantity>(&cell_at(row, c));
            std::string& common = columns[c].unit;
            if (!quantity || quantity->unit.empty() || quantity->unit == common) return false;
            if (common.empty()) {
                common = quantity->unit;
                return false;
            }
            common.clear();
            return true;
        });
        return !open.empty();
    });
    return columns;
}

} // namespace

std::string PrintedCell::text() const { return interval.empty() ? value : value + ' ' + interval; }

std::string column_head(const TableColumn& column) {
    const std::string title = one_line(column.title);
    return column.unit.empty() || column.unit == "1" ? title : title + " (" + one_line(column.unit) + ")";
}

std::vector<std::string> broken_head(const std::string& head, std::size_t width) {
    std::vector<std::string> lines(1);
    std::size_t begin = 0;
    while (begin <= head.size()) {
        const std::size_t end = std::min(head.find(' ', begin), head.size());
        const std::string word = head.substr(begin, end - begin);
        std::string& last = lines.back();
        if (last.empty()) last = word;
        else if (display_width(last) + 1 + display_width(word) <= width) last += ' ' + word;
        else lines.push_back(word);
        begin = end + 1;
    }
    return lines;
}

const TableCell& cell_at(const TableRow& row, std::size_t column) {
    static const TableCell empty = std::string();
    return column < row.size() ? row[column] : empty;
}

std::optional<double> finite(const std::optional<double>& number) { return number && std::isfinite(*number) ? number : std::nullopt; }

bool has_own_units(const TableColumn& column) { return column.content != TableColumn::Content::text && column.unit.empty(); }

RowPrinter::RowPrinter(const StreamedTable& table) : columns_(with_common_units(table)), cells_(columns_.size()) {
    for (const TableColumn& column : columns_) {
        heads_.push_back(column_head(column));
        right_.push_back(column.content != TableColumn::Content::text);
    }
}

int RowPrinter::note_number(const std::string& note) {
    const auto [place, is_new] = note_numbers_.try_emplace(note, static_cast<int>(notes_.size()) + 1);
    if (is_new) notes_.push_back(note);
    return place->second;
}

PrintedCell RowPrinter::printed_quantity(const TableColumn& column, Quantity quantity) {
    PrintedCell cell;
    quantity.value = finite(quantity.value);
    quantity.lower = finite(quantity.lower);
    quantity.upper = finite(quantity.upper);
    // A stated number is what it is; only a result or a gap has something to explain.
    const bool plain = column.content == TableColumn::Content::number && quantity.value && quantity.kind == Kind::measured;
    const std::string note = plain ? std::string() : note_of(quantity);
    if (!note.empty()) cell.note = note_number(note);
    const std::string unit = quantity.unit == column.unit || quantity.unit == "1" ? std::string() : one_line(quantity.unit);
    quantity.unit.clear();
    cell.value = quantity_text(quantity, column.decimals);
    const auto sign = cell.value.find(" ± ");
    if (sign != std::string::npos) {
        cell.interval = cell.value.substr(sign + 1);
        cell.value.resize(sign);
    }
    if (quantity.kind != Kind::not_known) {
        cell.sort_number = quantity.value ? quantity.value : quantity.lower ? quantity.lower : quantity.upper;
        if (cell.sort_number && !unit.empty()) (cell.interval.empty() ? cell.value : cell.interval) += ' ' + unit;
    }
    return cell;
}

const std::vector<PrintedCell>& RowPrinter::print(const TableRow& row) {
    for (std::size_t c = 0; c < columns_.size(); ++c) {
        const TableCell& cell = cell_at(row, c);
        if (const auto* quantity = std::get_if<Quantity>(&cell)) cells_[c] = printed_quantity(columns_[c], *quantity);
        else cells_[c] = {one_line(std::get<std::string>(cell)), {}, 0, {}};
    }
    return cells_;
}

PrintedTable printed_table(const StreamedTable& table) {
    RowPrinter printer(table);
    PrintedTable printed;
    table.each_row([&](const TableRow& row) {
        printed.rows.push_back(printer.print(row));
        return true;
    });
    printed.heads = printer.heads();
    printed.right = printer.right();
    printed.notes = printer.notes();
    return printed;
}

} // namespace ullage
