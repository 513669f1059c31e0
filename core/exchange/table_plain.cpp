// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/table_formats.h"
#include "exchange/table_printed.h"
#include "exchange/table_unicode.h"

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

void append_heads(std::string& out, const PrintedTable& printed, const std::vector<Widths>& widths) {
    std::vector<std::vector<std::string>> heads;
    std::size_t height = 0;
    for (std::size_t c = 0; c < printed.heads.size(); ++c) {
        heads.push_back(broken_head(printed.heads[c], widths[c].whole()));
        height = std::max(height, heads.back().size());
    }
    for (std::size_t h = 0; h < height; ++h) {
        std::string line;
        for (std::size_t c = 0; c < heads.size(); ++c) {
            const std::size_t above = height - heads[c].size();
            const std::string word = h < above ? std::string() : heads[c][h - above];
            line += padded(padded(word, printed.right[c] ? widths[c].body : 0, printed.right[c]), widths[c].whole(), false);
            line += gap;
        }
        out += without_trailing_spaces(std::move(line));
    }
    std::string rule;
    for (const Widths& width : widths) rule += std::string(width.whole(), '-') + std::string(gap);
    out += without_trailing_spaces(std::move(rule));
}

} // namespace

std::string plain_table(const Table& table) {
    const PrintedTable printed = printed_table(table);
    std::vector<Widths> widths(printed.heads.size());
    for (std::size_t c = 0; c < widths.size(); ++c) {
        for (const auto& row : printed.rows) {
            widths[c].body = std::max(widths[c].body, display_width(row[c].text()));
            widths[c].mark = std::max(widths[c].mark, mark_of(row[c]).size());
        }
        widths[c].body = std::max(widths[c].body, widest_word(printed.heads[c]));
    }
    std::string out;
    if (!table.title.empty()) out += one_line(table.title) + "\n\n";
    append_heads(out, printed, widths);
    for (const auto& row : printed.rows) {
        std::string line;
        for (std::size_t c = 0; c < widths.size(); ++c) {
            line += padded(row[c].text(), widths[c].body, printed.right[c]);
            line += padded(mark_of(row[c]), widths[c].mark, false);
            line += gap;
        }
        out += without_trailing_spaces(std::move(line));
    }
    if (!printed.notes.empty()) out += '\n';
    for (std::size_t n = 0; n < printed.notes.size(); ++n) out += fmt::format("[{}] {}\n", n + 1, printed.notes[n]);
    if (!table.remarks.empty()) out += '\n';
    for (const std::string& remark : table.remarks) out += one_line(remark) + '\n';
    if (!table.method.empty()) out += '\n';
    for (const auto& [heading, text] : table.method) out += one_line(heading) + ": " + one_line(text) + '\n';
    return out;
}

} // namespace ullage
