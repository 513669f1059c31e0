// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/table_printed.h"

#include "exchange/table_unicode.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

int note_number(std::vector<std::string>& notes, std::string note) {
    const auto known = std::ranges::find(notes, note);
    if (known != notes.end()) return static_cast<int>(known - notes.begin()) + 1;
    notes.push_back(std::move(note));
    return static_cast<int>(notes.size());
}

/// What has to be said below the table: how far a value is known when it is not measured, and the reason given.
std::string note_of(const Quantity& quantity) {
    const std::string reason = one_line(quantity.reason);
    if (quantity.kind == Kind::measured) return reason;
    const std::string kind(kind_text(quantity.kind));
    return reason.empty() ? kind : kind + ": " + reason;
}

PrintedCell printed_quantity(const TableColumn& column, Quantity quantity, std::vector<std::string>& notes) {
    PrintedCell cell;
    quantity.value = finite(quantity.value);
    quantity.lower = finite(quantity.lower);
    quantity.upper = finite(quantity.upper);
    // A stated number is what it is; only a result or a gap has something to explain.
    const bool plain = column.content == TableColumn::Content::number && quantity.value && quantity.kind == Kind::measured;
    const std::string note = plain ? std::string() : note_of(quantity);
    if (!note.empty()) cell.note = note_number(notes, note);
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

/// The column with the unit that all its cells share, where it has none of its own.
TableColumn with_common_unit(const Table& table, std::size_t at) {
    TableColumn column = table.columns[at];
    if (!has_own_units(column)) return column;
    std::string common;
    for (const auto& row : table.rows) {
        const auto* quantity = std::get_if<Quantity>(&cell_at(row, at));
        if (!quantity || quantity->unit.empty() || quantity->unit == common) continue;
        if (!common.empty()) return column;
        common = quantity->unit;
    }
    column.unit = common;
    return column;
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

const TableCell& cell_at(const std::vector<TableCell>& row, std::size_t column) {
    static const TableCell empty = std::string();
    return column < row.size() ? row[column] : empty;
}

std::optional<double> finite(const std::optional<double>& number) {
    return number && std::isfinite(*number) ? number : std::nullopt;
}

bool has_own_units(const TableColumn& column) {
    return column.content != TableColumn::Content::text && column.unit.empty();
}

PrintedTable printed_table(const Table& table) {
    PrintedTable printed;
    std::vector<TableColumn> columns;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        columns.push_back(with_common_unit(table, c));
        printed.heads.push_back(column_head(columns.back()));
        printed.right.push_back(columns.back().content != TableColumn::Content::text);
    }
    for (const auto& row : table.rows) {
        auto& cells = printed.rows.emplace_back();
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            const TableCell& cell = cell_at(row, c);
            if (const auto* quantity = std::get_if<Quantity>(&cell))
                cells.push_back(printed_quantity(columns[c], *quantity, printed.notes));
            else
                cells.push_back({one_line(std::get<std::string>(cell)), {}, 0, {}});
        }
    }
    return printed;
}

} // namespace ullage
