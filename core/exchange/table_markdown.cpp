// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/table_formats.h"
#include "exchange/table_printed.h"
#include "exchange/table_unicode.h"

#include <fmt/format.h>

#include <cctype>

namespace ullage {

namespace {

/// Backslash before what Markdown would take for markup (CommonMark 2.4: every ASCII punctuation may be escaped); `<`, `>`
/// and `&` as entities, since some readers pass HTML through.
std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : one_line(text)) {
        switch (c) {
        case '&': out += "&amp;"; break;
        case '<': out += "&lt;"; break;
        case '>': out += "&gt;"; break;
        case '\\': case '`': case '*': case '_': case '[': case ']': case '|': case '#': case '~': case '!': case '$':
            out += '\\';
            out += c;
            break;
        default: out += c;
        }
    }
    return out;
}

/// escaped() for the beginning of a line, where `-`, `+`, `=` and `1.` would begin a list or a heading.
std::string escaped_line(std::string_view text) {
    std::string out = escaped(text);
    std::size_t digits = 0;
    while (digits < out.size() && std::isdigit(static_cast<unsigned char>(out[digits]))) ++digits;
    if (digits < out.size() && ((digits == 0 && (out[0] == '-' || out[0] == '+' || out[0] == '=')) ||
                                (digits > 0 && (out[digits] == '.' || out[digits] == ')'))))
        out.insert(digits, "\\");
    return out;
}

} // namespace

std::string markdown_table(const Table& table) {
    const PrintedTable printed = printed_table(table);
    std::string out;
    if (!table.title.empty()) out += "# " + escaped(table.title) + "\n\n";
    std::string rule = "|";
    out += '|';
    for (std::size_t c = 0; c < printed.heads.size(); ++c) {
        out += ' ' + escaped(printed.heads[c]) + " |";
        rule += printed.right[c] ? " ---: |" : " --- |";
    }
    out += '\n' + rule + '\n';
    for (const auto& row : printed.rows) {
        out += '|';
        for (const PrintedCell& cell : row) {
            out += ' ' + escaped(cell.text());
            if (cell.note != 0) out += fmt::format(" <sup>{}</sup>", cell.note);
            out += " |";
        }
        out += '\n';
    }
    if (!printed.notes.empty()) out += '\n';
    for (std::size_t n = 0; n < printed.notes.size(); ++n)
        out += fmt::format("<sup>{}</sup> {}  \n", n + 1, escaped(printed.notes[n]));
    if (!table.remarks.empty()) out += '\n';
    for (const std::string& remark : table.remarks) out += "- " + escaped_line(remark) + '\n';
    if (!table.method.empty()) out += "\n## Method\n";
    for (const auto& [heading, text] : table.method) out += "\n**" + escaped(heading) + ".** " + escaped(text) + '\n';
    return out;
}

} // namespace ullage
