// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table_clipboard.h"

#include "base/number.h"
#include "formats/tables/inside/table_flat.h"
#include "formats/text/html_text.h"
#include "formats/text/spreadsheet_text.h"
#include "formats/text/table_unicode.h"

#include <algorithm>

namespace ullage {

namespace {

std::string shown(const FlatCell& cell, char decimal_sign) {
    if (const auto* number = std::get_if<double>(&cell)) {
        std::string text = exact_text(*number);
        std::ranges::replace(text, '.', decimal_sign);
        return text;
    }
    const auto* text = std::get_if<std::string>(&cell);
    return text ? spreadsheet_text(one_line(*text)) : std::string();
}

/// A field that begins with a quote would be taken for a quoted one.
std::string tab_field(const std::string& text) {
    if (!text.starts_with('"')) return text;
    std::string out = "\"";
    for (const char c : text) out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + '"';
}

} // namespace

ClipboardTable clipboard_table(const StreamedTable& table, char decimal_sign) {
    const std::vector<FlatColumn> columns = flat_columns(table);
    ClipboardTable clip;
    clip.html = "<meta charset=\"utf-8\"/>\n<table>\n";
    const auto add_row = [&](std::string_view tag, auto field_of) {
        clip.html += "<tr>";
        for (std::size_t c = 0; c < columns.size(); ++c) {
            const std::string field = field_of(columns[c]);
            clip.text += (c == 0 ? "" : "\t") + tab_field(field);
            clip.html.append("<").append(tag).append(">").append(html_text(field)).append("</").append(tag).append(">");
        }
        clip.text += '\n';
        clip.html += "</tr>\n";
    };
    add_row("th", [](const FlatColumn& column) { return spreadsheet_text(column.title); });
    table.each_row([&](const TableRow& row) {
        add_row("td", [&](const FlatColumn& column) { return shown(flat_cell(table, row, column), decimal_sign); });
        return true;
    });
    clip.html += "</table>\n";
    return clip;
}

} // namespace ullage
