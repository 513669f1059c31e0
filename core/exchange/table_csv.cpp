// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "exchange/csv.h"
#include "exchange/table_formats.h"
#include "exchange/table_printed.h"
#include "exchange/table_unicode.h"

namespace ullage {

namespace {

using Content = TableColumn::Content;

std::string number_field(const std::optional<double>& number) {
    const auto known = finite(number);
    return known ? exact_text(*known) : std::string();
}

/// Spreadsheets run a field that begins like a formula; an apostrophe makes it a text again.
std::string text_field(std::string_view text) {
    std::string clean = clean_text(text);
    const bool formula = !clean.empty() && std::string_view("=+-@\t\r").find(clean.front()) != std::string_view::npos;
    return formula ? "'" + clean : clean;
}

/// Fields that a column takes, as suffixes of its key.
std::vector<std::string_view> suffixes(const TableColumn& column) {
    if (column.content == Content::text) return {""};
    std::vector<std::string_view> parts{""};
    if (has_own_units(column)) parts.push_back("_unit");
    if (column.content == Content::quantity) parts.insert(parts.end(), {"_lower", "_upper", "_kind", "_reason"});
    return parts;
}

std::string field_of(const TableCell& cell, std::string_view suffix) {
    const auto* quantity = std::get_if<Quantity>(&cell);
    if (!quantity) return suffix.empty() ? text_field(std::get<std::string>(cell)) : std::string();
    if (suffix == "_unit") return text_field(quantity->unit);
    if (suffix == "_lower") return number_field(quantity->lower);
    if (suffix == "_upper") return number_field(quantity->upper);
    if (suffix == "_kind") return std::string(kind_text(quantity->kind));
    if (suffix == "_reason") return text_field(quantity->reason);
    return number_field(quantity->value);
}

/// RFC 4180 ends lines with CRLF; append_csv_record writes LF as run sheets have it.
void append_line(std::string& out, const std::vector<std::string>& fields) {
    append_csv_record(out, fields);
    out.insert(out.size() - 1, "\r");
}

} // namespace

std::string csv_table(const Table& table) {
    std::string out;
    std::vector<std::string> fields;
    for (const TableColumn& column : table.columns)
        for (const std::string_view suffix : suffixes(column)) fields.push_back(column.key + std::string(suffix));
    append_line(out, fields);
    for (const auto& row : table.rows) {
        fields.clear();
        for (std::size_t c = 0; c < table.columns.size(); ++c)
            for (const std::string_view suffix : suffixes(table.columns[c]))
                fields.push_back(field_of(cell_at(row, c), suffix));
        append_line(out, fields);
    }
    return out;
}

} // namespace ullage
