// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/inside/table_formats.h"
#include "formats/tables/table_printed.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

constexpr std::string_view gap = "  ";

std::string mark_of(const PrintedCell& cell) { return cell.note == 0 ? std::string() : fmt::format(" [{}]", cell.note); }

std::string padded(const std::string& text, std::size_t width, bool right) {
    const std::size_t own = display_width(text);
    const std::string fill(width > own ? width - own : 0, ' ');
    return right ? fill + text : text + fill;
}

/// Note marks stand in a strip of their own, so that they do not push numbers out of line.
struct Widths {
    std::size_t body = 0, mark = 0;
    [[nodiscard]] std::size_t whole() const { return body + mark; }
};

std::size_t widest_word(const std::string& head) {
    std::size_t widest = 0;
    for (const std::string& word : broken_head(head, 0)) widest = std::max(widest, display_width(word));
    return widest;
}

std::string without_trailing_spaces(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line + '\n';
}

void append_heads(std::string& out, const RowPrinter& printer, const std::vector<Widths>& widths) {
    std::vector<std::vector<std::string>> heads;
    std::size_t height = 0;
    for (std::size_t c = 0; c < printer.heads().size(); ++c) {
        heads.push_back(broken_head(printer.heads()[c], widths[c].whole()));
        height = std::max(height, heads.back().size());
    }
    for (std::size_t h = 0; h < height; ++h) {
        std::string line;
        for (std::size_t c = 0; c < heads.size(); ++c) {
            const std::size_t above = height - heads[c].size();
            const std::string word = h < above ? std::string() : heads[c][h - above];
            line += padded(padded(word, printer.right()[c] ? widths[c].body : 0, printer.right()[c]), widths[c].whole(), false);
            line += gap;
        }
        out += without_trailing_spaces(std::move(line));
    }
    std::string rule;
    for (const Widths& width : widths) rule += std::string(width.whole(), '-') + std::string(gap);
    out += without_trailing_spaces(std::move(rule));
}

std::vector<Widths> widths_of(const StreamedTable& table, RowPrinter& printer) {
    std::vector<Widths> widths(printer.heads().size());
    for (std::size_t c = 0; c < widths.size(); ++c) widths[c].body = widest_word(printer.heads()[c]);
    table.each_row([&](const TableRow& row) {
        const std::vector<PrintedCell>& cells = printer.print(row);
        for (std::size_t c = 0; c < widths.size(); ++c) {
            widths[c].body = std::max(widths[c].body, display_width(cells[c].text()));
            widths[c].mark = std::max(widths[c].mark, mark_of(cells[c]).size());
        }
        return true;
    });
    return widths;
}

} // namespace

void plain_table(const StreamedTable& table, TextPieces& out) {
    RowPrinter printer(table);
    const std::vector<Widths> widths = widths_of(table, printer);
    if (!table.title.empty()) out.text() += one_line(table.title) + "\n\n";
    append_heads(out.text(), printer, widths);
    const bool whole = table.each_row([&](const TableRow& row) {
        const std::vector<PrintedCell>& cells = printer.print(row);
        std::string line;
        for (std::size_t c = 0; c < widths.size(); ++c) {
            line += padded(cells[c].text(), widths[c].body, printer.right()[c]);
            line += padded(mark_of(cells[c]), widths[c].mark, false);
            line += gap;
        }
        out.text() += without_trailing_spaces(std::move(line));
        return out.pass_on();
    });
    if (!whole) return;
    std::string& foot = out.text();
    if (!printer.notes().empty()) foot += '\n';
    for (std::size_t n = 0; n < printer.notes().size(); ++n) foot += fmt::format("[{}] {}\n", n + 1, printer.notes()[n]);
    if (!table.remarks.empty()) foot += '\n';
    for (const std::string& remark : table.remarks) foot += one_line(remark) + '\n';
    if (!table.method.empty()) foot += '\n';
    for (const auto& [heading, text] : table.method) foot += one_line(heading) + ": " + one_line(text) + '\n';
}

} // namespace ullage
