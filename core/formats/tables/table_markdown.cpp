// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/inside/table_formats.h"
#include "formats/tables/table_printed.h"
#include "formats/text/table_unicode.h"

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
        case '\\':
        case '`':
        case '*':
        case '_':
        case '[':
        case ']':
        case '|':
        case '#':
        case '~':
        case '!':
        case '$':
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
    if (digits < out.size() &&
        ((digits == 0 && (out[0] == '-' || out[0] == '+' || out[0] == '=')) || (digits > 0 && (out[digits] == '.' || out[digits] == ')'))))
        out.insert(digits, "\\");
    return out;
}

} // namespace

void markdown_table(const StreamedTable& table, TextPieces& out) {
    RowPrinter printer(table);
    if (!table.title.empty()) out.text() += "# " + escaped(table.title.text()) + "\n\n";
    for (const Message& sentence : table.answer) out.text() += escaped_line(sentence.text()) + "\n\n";
    std::string rule = "|";
    out.text() += '|';
    for (std::size_t c = 0; c < printer.heads().size(); ++c) {
        out.text() += ' ' + escaped(printer.heads()[c]) + " |";
        rule += printer.right()[c] ? " ---: |" : " --- |";
    }
    out.text() += '\n' + rule + '\n';
    const bool whole = table.each_row([&](const TableRow& row) {
        std::string& line = out.text();
        line += '|';
        for (const PrintedCell& cell : printer.print(row)) {
            line += ' ' + escaped(cell.text());
            if (cell.note != 0) line += fmt::format(" <sup>{}</sup>", cell.note);
            line += " |";
        }
        line += '\n';
        return out.pass_on();
    });
    if (!whole) return;
    std::string& foot = out.text();
    if (!printer.notes().empty()) foot += '\n';
    for (std::size_t n = 0; n < printer.notes().size(); ++n) foot += fmt::format("<sup>{}</sup> {}  \n", n + 1, escaped(printer.notes()[n]));
    if (!table.remarks.empty()) foot += '\n';
    for (const Message& remark : table.remarks) foot += "- " + escaped_line(remark.text()) + '\n';
    if (!table.method.empty()) foot += "\n## " + escaped(say(phrase("tables", "Method")).text()) + '\n';
    for (const auto& [heading, text] : table.method) foot += "\n**" + escaped(heading.text()) + ".** " + escaped(text.text()) + '\n';
}

} // namespace ullage
