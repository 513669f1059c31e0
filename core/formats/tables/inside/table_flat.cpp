// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/inside/table_flat.h"

#include "formats/tables/table_printed.h"
#include "formats/text/table_unicode.h"

namespace ullage {

namespace {

using Content = TableColumn::Content;

FlatCell number_or_nothing(const std::optional<double>& number) {
    const auto known = finite(number);
    return known ? FlatCell(*known) : FlatCell();
}

FlatCell text_or_nothing(std::string text) { return text.empty() ? FlatCell() : FlatCell(std::move(text)); }

} // namespace

std::vector<FlatColumn> flat_columns(const TableHead& table) {
    std::vector<FlatColumn> columns;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        const TableColumn& column = table.columns[c];
        const std::string title = one_line(column.title.text());
        if (column.content == Content::text) {
            columns.push_back({c, Part::text, column.key, title});
            continue;
        }
        columns.push_back({c, Part::value, column.key, column_head(column)});
        if (has_own_units(column)) columns.push_back({c, Part::unit, column.key + "_unit", say(phrase("tables", "%1, unit"), title)});
        if (column.content == Content::number) continue;
        columns.push_back({c, Part::lower, column.key + "_lower", say(phrase("tables", "%1, lower"), title)});
        columns.push_back({c, Part::upper, column.key + "_upper", say(phrase("tables", "%1, upper"), title)});
        columns.push_back({c, Part::kind, column.key + "_kind", say(phrase("tables", "%1, kind"), title)});
        columns.push_back({c, Part::reason, column.key + "_reason", say(phrase("tables", "%1, reason"), title)});
    }
    return columns;
}

FlatCell flat_cell(const TableHead& table, const TableRow& row, const FlatColumn& column) {
    const TableCell& cell = cell_at(row, column.column);
    const auto* quantity = std::get_if<Quantity>(&cell);
    if (!quantity) return column.part == Part::text || column.part == Part::value ? text_or_nothing(std::get<Message>(cell)) : FlatCell();
    switch (column.part) {
    case Part::text: return text_or_nothing(quantity_text(*quantity, table.columns[column.column].decimals));
    case Part::value: return number_or_nothing(quantity->value);
    case Part::unit: return text_or_nothing(quantity->unit);
    case Part::lower: return number_or_nothing(quantity->lower);
    case Part::upper: return number_or_nothing(quantity->upper);
    case Part::kind: return say_kind(quantity->kind).text();
    case Part::reason: return text_or_nothing(quantity->reason);
    }
    return {};
}

bool is_number(Part part) { return part == Part::value || part == Part::lower || part == Part::upper; }

} // namespace ullage
