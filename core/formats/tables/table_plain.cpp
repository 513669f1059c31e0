// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/inside/table_formats.h"
#include "formats/tables/table_printed.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

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
    std::size_t least = 0; ///< of the body: its longest word, or a number
    [[nodiscard]] std::size_t whole() const { return body + mark; }
};

using PlainColumns = std::vector<std::size_t>;

constexpr std::size_t least_text_width = 14;    ///< a column of sentences is not made narrower than this
constexpr std::size_t most_rows_in_parts = 200; ///< a longer table stays in one part, however wide
constexpr std::size_t least_of_part = 2;        ///< columns of a part beside the first

std::size_t widest_word(const std::string& text) {
    std::size_t widest = 0;
    for (const std::string& word : broken_head(text, 0)) widest = std::max(widest, display_width(word));
    return widest;
}

std::string without_trailing_spaces(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line + '\n';
}

/// A table in plain text: its columns, as wide as they come out, and the line that it keeps within.
class PlainTable {
public:
    explicit PlainTable(const StreamedTable& table) : table_(table), printer_(table), widths_(printer_.heads().size()) {
        for (std::size_t c = 0; c < widths_.size(); ++c) widths_[c].body = widths_[c].least = widest_word(printer_.heads()[c]);
        table.each_row([this](const TableRow& row) {
            const std::vector<PrintedCell>& cells = printer_.print(row);
            for (std::size_t c = 0; c < widths_.size(); ++c) take_width(widths_[c], cells[c], printer_.right()[c]);
            return true;
        });
    }

    /// The columns in parts that keep within the line, each with the first column; sentences are broken into lines before that.
    [[nodiscard]] std::vector<PlainColumns> parts() {
        PlainColumns all;
        for (std::size_t c = 0; c < widths_.size(); ++c) all.push_back(c);
        if (table_.text_width == 0 || widths_.empty()) return {all};
        narrow(all);
        if (width_of(all) <= table_.text_width || table_.row_count > most_rows_in_parts) return {all};
        std::vector<PlainColumns> parts{{0}};
        for (std::size_t c = 1; c < widths_.size(); ++c) {
            PlainColumns& part = parts.back();
            part.push_back(c);
            if (width_of(part) <= table_.text_width || part.size() <= least_of_part) continue;
            part.pop_back();
            parts.push_back({0, c});
        }
        return parts;
    }

    /// False when the taker wanted no more.
    bool append(const PlainColumns& columns, TextPieces& out) {
        append_heads(columns, out.text());
        return table_.each_row([&](const TableRow& row) {
            append_row(columns, printer_.print(row), out.text());
            return out.pass_on();
        });
    }

    [[nodiscard]] const std::vector<std::string>& notes() const { return printer_.notes(); }

private:
    static void take_width(Widths& width, const PrintedCell& cell, bool right) {
        const std::string text = cell.text();
        width.body = std::max(width.body, display_width(text));
        width.least = std::max(width.least, right ? display_width(text) : widest_word(text));
        width.mark = std::max(width.mark, mark_of(cell).size());
    }

    [[nodiscard]] std::size_t width_of(const PlainColumns& columns) const {
        std::size_t width = columns.empty() ? 0 : gap.size() * (columns.size() - 1);
        for (const std::size_t c : columns) width += widths_[c].whole();
        return width;
    }

    /// Takes room from the widest column of sentences until the line is kept or none has any to give.
    void narrow(const PlainColumns& columns) {
        for (std::size_t width = width_of(columns); width > table_.text_width; --width) {
            Widths* widest = nullptr;
            for (const std::size_t c : columns) {
                const bool gives = !printer_.right()[c] && widths_[c].body > std::max(widths_[c].least, least_text_width);
                if (gives && (!widest || widths_[c].body > widest->body)) widest = &widths_[c];
            }
            if (!widest) return;
            --widest->body;
        }
    }

    void append_heads(const PlainColumns& columns, std::string& out) const {
        std::vector<std::vector<std::string>> heads;
        std::size_t height = 0;
        for (const std::size_t c : columns) {
            heads.push_back(broken_head(printer_.heads()[c], widths_[c].whole()));
            height = std::max(height, heads.back().size());
        }
        for (std::size_t h = 0; h < height; ++h) {
            std::string line;
            for (std::size_t i = 0; i < columns.size(); ++i) {
                const Widths& width = widths_[columns[i]];
                const bool right = printer_.right()[columns[i]];
                const std::size_t above = height - heads[i].size();
                const std::string word = h < above ? std::string() : heads[i][h - above];
                line += padded(padded(word, right ? width.body : 0, right), width.whole(), false);
                line += gap;
            }
            out += without_trailing_spaces(std::move(line));
        }
        std::string rule;
        for (const std::size_t c : columns) rule += std::string(widths_[c].whole(), '-') + std::string(gap);
        out += without_trailing_spaces(std::move(rule));
    }

    void append_row(const PlainColumns& columns, const std::vector<PrintedCell>& cells, std::string& out) const {
        std::vector<std::vector<std::string>> lines;
        std::size_t height = 1;
        for (const std::size_t c : columns) {
            const std::string text = cells[c].text();
            lines.push_back(display_width(text) <= widths_[c].body ? std::vector{text} : broken_head(text, widths_[c].body));
            height = std::max(height, lines.back().size());
        }
        for (std::size_t h = 0; h < height; ++h) {
            std::string line;
            for (std::size_t i = 0; i < columns.size(); ++i) {
                const std::size_t c = columns[i];
                line += padded(h < lines[i].size() ? lines[i][h] : std::string(), widths_[c].body, printer_.right()[c]);
                line += padded(h + 1 == lines[i].size() ? mark_of(cells[c]) : std::string(), widths_[c].mark, false);
                line += gap;
            }
            out += without_trailing_spaces(std::move(line));
        }
    }

    const StreamedTable& table_;
    RowPrinter printer_;
    std::vector<Widths> widths_;
};

/// A paragraph in lines of the table's width, those after the first set in by `indent`.
void append_paragraph(std::string& out, const std::string& text, std::size_t width, std::size_t indent = 0) {
    if (width == 0) {
        out += text + '\n';
        return;
    }
    std::string before;
    for (const std::string& line : broken_head(text, width - indent)) {
        out += before + line + '\n';
        before.assign(indent, ' ');
    }
}

} // namespace

void plain_table(const StreamedTable& table, TextPieces& out) {
    PlainTable plain(table);
    if (!table.title.empty()) out.text() += one_line(table.title.text()) + "\n\n";
    for (const Message& sentence : table.answer) append_paragraph(out.text(), one_line(sentence.text()), table.text_width);
    if (!table.answer.empty()) out.text() += '\n';
    bool first = true;
    for (const PlainColumns& part : plain.parts()) {
        if (!std::exchange(first, false)) out.text() += '\n';
        if (!plain.append(part, out)) return;
    }
    std::string& foot = out.text();
    const std::vector<std::string>& notes = plain.notes();
    if (!notes.empty()) foot += '\n';
    for (std::size_t n = 0; n < notes.size(); ++n) append_paragraph(foot, fmt::format("[{}] {}", n + 1, notes[n]), table.text_width, 4);
    if (!table.remarks.empty()) foot += '\n';
    for (const Message& remark : table.remarks) append_paragraph(foot, one_line(remark.text()), table.text_width);
    if (!table.method.empty()) foot += '\n';
    for (const auto& [heading, text] : table.method)
        append_paragraph(foot, one_line(say(phrase("tables", "%1: %2"), heading, text).text()), table.text_width, 2);
}

} // namespace ullage
