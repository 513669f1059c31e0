// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/language.h"
#include "base/number.h"
#include "formats/tables/inside/table_flat.h"
#include "formats/tables/inside/table_formats.h"
#include "formats/text/csv.h"
#include "formats/text/spreadsheet_text.h"

namespace ullage {

namespace {

std::string field_text(const FlatCell& cell) {
    if (const auto* number = std::get_if<double>(&cell)) return exact_text(*number);
    const auto* text = std::get_if<std::string>(&cell);
    return text ? spreadsheet_text(*text) : std::string();
}

/// RFC 4180 ends lines with CRLF; append_csv_record writes LF as run sheets have it. A first field that begins with # stands in quotes,
/// since readers that go by the metadata's default take such a line for a comment.
/// Words for how far a value is known are a part of the format: programs tell by them.
std::string field_of(const TableHead& table, const TableRow& row, const FlatColumn& column) {
    if (column.part != Part::kind) return field_text(flat_cell(table, row, column));
    const SpeakingIn for_machines(english());
    return field_text(flat_cell(table, row, column));
}

void append_line(std::string& out, std::vector<std::string>& fields) {
    if (!fields.empty() && fields.front().starts_with('#')) {
        append_quoted_csv_field(out, fields.front());
        fields.erase(fields.begin());
        if (!fields.empty()) out += ',';
    }
    if (fields.empty()) out += '\n';
    else append_csv_record(out, fields);
    out.insert(out.size() - 1, "\r");
}

} // namespace

void csv_table(const StreamedTable& table, TextPieces& out) {
    const std::vector<FlatColumn> columns = flat_columns(table);
    std::vector<std::string> fields;
    for (const FlatColumn& column : columns) fields.push_back(column.key);
    append_line(out.text(), fields);
    table.each_row([&](const TableRow& row) {
        fields.clear();
        for (const FlatColumn& column : columns) fields.push_back(field_of(table, row, column));
        append_line(out.text(), fields);
        return out.pass_on();
    });
}

} // namespace ullage
