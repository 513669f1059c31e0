// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table_printed.h"

#include "formats/text/table_unicode.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

/// What has to be said below the table: how far a value is known when it is not measured, and the reason given.
std::string note_of(const Quantity& quantity) {
    const std::string reason = one_line(quantity.reason.text());
    if (quantity.kind == Kind::measured) return reason;
    return reason.empty() ? say_kind(quantity.kind) : say(phrase("tables", "%1: %2"), say_kind(quantity.kind), reason);
}

/// What the rows say of a column before it is printed.
struct SeenOfColumn {
    std::string common; ///< unit of all its cells so far
    bool mixed = false;
    double size_wh = 0; ///< largest of its energies
};

bool may_be_in_kwh(const TableColumn& column) { return column.content != TableColumn::Content::text && column.unit == "Wh" && !column.as_noted; }

void take_seen(SeenOfColumn& seen, const Quantity& quantity) {
    if (!quantity.unit.empty() && quantity.unit != seen.common) {
        seen.mixed = seen.mixed || !seen.common.empty();
        seen.common = quantity.unit;
    }
    for (const auto& number : {quantity.value, quantity.lower, quantity.upper})
        if (finite(number)) seen.size_wh = std::max(seen.size_wh, std::abs(*number));
}

} // namespace

std::string PrintedCell::text() const { return interval.empty() ? value : value + ' ' + interval; }

std::string column_head(const TableColumn& column) {
    const std::string title = one_line(column.title.text());
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
    static const TableCell empty = Message();
    return column < row.size() ? row[column] : empty;
}

std::optional<double> finite(const std::optional<double>& number) { return number && std::isfinite(*number) ? number : std::nullopt; }

bool has_own_units(const TableColumn& column) { return column.content != TableColumn::Content::text && column.unit.empty(); }

std::vector<ShownColumn> shown_columns(const StreamedTable& table) {
    std::vector<SeenOfColumn> seen(table.columns.size());
    std::vector<std::size_t> asked;
    for (std::size_t c = 0; c < seen.size(); ++c)
        if (has_own_units(table.columns[c]) || may_be_in_kwh(table.columns[c])) asked.push_back(c);
    if (!asked.empty())
        table.each_row([&](const TableRow& row) {
            for (const std::size_t c : asked)
                if (const auto* quantity = std::get_if<Quantity>(&cell_at(row, c))) take_seen(seen[c], *quantity);
            return true;
        });
    std::vector<ShownColumn> columns;
    for (std::size_t c = 0; c < seen.size(); ++c) {
        ShownColumn& shown = columns.emplace_back(ShownColumn{table.columns[c], {}, 0});
        if (shown.column.content == TableColumn::Content::text || seen[c].mixed) continue;
        if (has_own_units(shown.column)) shown.column.unit = seen[c].common;
        shown.from = shown.column.unit;
        if (shown.column.as_noted) continue;
        const ShownUnit unit = shown_unit(shown.column.key, shown.column.unit, seen[c].size_wh);
        shown.column.unit = unit.unit;
        shown.column.decimals -= unit.power;
        shown.power = unit.power;
    }
    return columns;
}

Quantity in_shown_column(const Quantity& quantity, const ShownColumn& shown) {
    return quantity.unit == shown.from || quantity.unit.empty() ? in_unit(quantity, {shown.column.unit, shown.power}) : quantity;
}

RowPrinter::RowPrinter(const StreamedTable& table) : columns_(shown_columns(table)), cells_(columns_.size()) {
    for (const ShownColumn& shown : columns_) {
        heads_.push_back(column_head(shown.column));
        right_.push_back(shown.column.content != TableColumn::Content::text);
    }
}

int RowPrinter::note_number(const std::string& note) {
    const auto [place, is_new] = note_numbers_.try_emplace(note, static_cast<int>(notes_.size()) + 1);
    if (is_new) notes_.push_back(note);
    return place->second;
}

PrintedCell RowPrinter::printed_quantity(std::size_t at, Quantity quantity) {
    const TableColumn& column = columns_[at].column;
    PrintedCell cell;
    quantity.value = finite(quantity.value);
    quantity.lower = finite(quantity.lower);
    quantity.upper = finite(quantity.upper);
    // A stated number is what it is; only a result or a gap has something to explain.
    const bool plain = column.content == TableColumn::Content::number && quantity.value && quantity.kind == Kind::measured;
    const std::string note = plain ? std::string() : note_of(quantity);
    if (!note.empty()) cell.note = note_number(note);
    if (quantity.kind != Kind::not_known) cell.sort_number = quantity.value ? quantity.value : quantity.lower ? quantity.lower : quantity.upper;
    QuantityParts parts = parts_as_they_are(in_shown_column(quantity, columns_[at]), column.decimals);
    cell.value = say_digits(std::move(parts.value));
    cell.interval = say_digits(std::move(parts.interval));
    if (!parts.unit.empty() && parts.unit != column.unit) (cell.interval.empty() ? cell.value : cell.interval) += ' ' + one_line(parts.unit);
    return cell;
}

const std::vector<PrintedCell>& RowPrinter::print(const TableRow& row) {
    for (std::size_t c = 0; c < columns_.size(); ++c) {
        const TableCell& cell = cell_at(row, c);
        if (const auto* quantity = std::get_if<Quantity>(&cell)) cells_[c] = printed_quantity(c, *quantity);
        else cells_[c] = {one_line(std::get<Message>(cell).text()), {}, 0, {}};
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
