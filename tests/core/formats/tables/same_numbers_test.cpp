// SPDX-License-Identifier: GPL-3.0-or-later
// Each form of each table is read back and held against the table: values, limits, kinds, reasons and texts.
#include "formats/tables/table_clipboard.h"
#include "formats/tables/table_printed.h"
#include "formats/text/table_unicode.h"
#include "latex_reader.h"
#include "printed_check.h"
#include "read_back.h"
#include "sample_tables.h"
#include "support/temp_folder.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>
#include <sstream>

namespace ullage::test {
namespace {

/// What a form keeps besides numbers.
struct Keeps {
    bool units = true, reasons = true, kinds_of_numbers = false;
    bool one_line_texts = false; ///< breaks of lines become blanks
    bool carriage_returns = true;
    bool full_doubles = true; ///< else 16 digits, which is within 4 units in the last place

    [[nodiscard]] std::string expected_text(const std::string& text) const {
        if (one_line_texts) return one_line(text);
        return carriage_returns ? clean_text(text) : all_replaced(clean_text(text), "\r\n", "\n");
    }
};

void expect_number(const std::optional<double>& read, std::optional<double> number, bool full, const std::string& where) {
    if (number && !std::isfinite(*number)) number.reset();
    ASSERT_EQ(read.has_value(), number.has_value()) << where;
    if (!number) return;
    if (full) {
        EXPECT_EQ(*read, *number) << where;
    } else {
        EXPECT_DOUBLE_EQ(*read, *number) << where;
    }
}

void expect_same(const Table& table, const std::vector<ReadRow>& rows, const Keeps& keeps) {
    ASSERT_EQ(rows.size(), table.rows.size());
    for (std::size_t r = 0; r < rows.size(); ++r) {
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            const TableColumn& column = table.columns[c];
            const ReadCell& read = rows[r].at(column.key);
            const std::string where = column.key + " of row " + std::to_string(r);
            const auto* quantity = std::get_if<Quantity>(&table.rows[r][c]);
            if (!quantity) {
                const std::string text = std::get<Message>(table.rows[r][c]);
                if (column.content == TableColumn::Content::text) {
                    EXPECT_EQ(clean_text(read.text), keeps.expected_text(text)) << where;
                } else {
                    EXPECT_FALSE(read.value || read.lower || read.upper) << where;
                }
                continue;
            }
            const bool interval = column.content == TableColumn::Content::quantity;
            expect_number(read.value, quantity->value, keeps.full_doubles, where);
            expect_number(read.lower, interval ? quantity->lower : std::nullopt, keeps.full_doubles, where);
            expect_number(read.upper, interval ? quantity->upper : std::nullopt, keeps.full_doubles, where);
            const Quantity& expected = *quantity;
            EXPECT_EQ(read.kind, interval || keeps.kinds_of_numbers ? kind_text(expected.kind) : "") << where;
            EXPECT_EQ(read.reason, keeps.reasons && (interval || keeps.kinds_of_numbers) ? expected.reason : "") << where;
            EXPECT_EQ(read.unit, keeps.units && (column.unit.empty() || keeps.kinds_of_numbers) ? expected.unit : "") << where;
        }
    }
}

TEST(SameNumbers, in_csv) {
    for (const Table& table : every_table()) {
        SCOPED_TRACE(table.title);
        expect_same(table, read_csv(table, table_text(table, TableFormat::csv)), {});
    }
}

TEST(SameNumbers, in_json) {
    for (const Table& table : every_table()) {
        SCOPED_TRACE(table.title);
        expect_same(table, read_json(table, table_text(table, TableFormat::json)), {.kinds_of_numbers = true});
    }
}

TEST(SameNumbers, in_html_as_attributes_of_the_cells) {
    for (const Table& table : every_table()) {
        SCOPED_TRACE(table.title);
        expect_same(table, read_html(table, table_text(table, TableFormat::html)), {.units = false, .reasons = false, .one_line_texts = true});
    }
}

TEST(SameNumbers, in_xlsx_to_16_digits) {
    const TempFolder folder;
    for (const Table& table : every_table()) {
        SCOPED_TRACE(table.title);
        ASSERT_TRUE(write_table(table, TableFormat::xlsx, folder / "t.xlsx").ok());
        expect_same(table, read_xlsx(table, folder / "t.xlsx"), {.carriage_returns = false, .full_doubles = false});
    }
}

TEST(SameNumbers, in_both_forms_of_the_clipboard) {
    for (const Table& table : every_table()) {
        SCOPED_TRACE(table.title);
        const ClipboardTable clip = clipboard_table(table);
        const Keeps keeps{.one_line_texts = true};
        std::vector<std::vector<std::string>> records;
        std::istringstream lines(clip.text);
        for (std::string line; std::getline(lines, line);) {
            auto& fields = records.emplace_back();
            std::size_t begin = 0;
            for (std::size_t tab; (tab = line.find('\t', begin)) != std::string::npos; begin = tab + 1)
                fields.push_back(line.substr(begin, tab - begin));
            fields.push_back(line.substr(begin));
            for (std::string& field : fields)
                if (field.size() > 1 && field.front() == '"') field = all_replaced(field.substr(1, field.size() - 2), "\"\"", "\"");
        }
        records.erase(records.begin());
        expect_same(table, rows_of_records(table, csv_heads(table), records), keeps);
        records.clear();
        for (const auto& row : html_rows(clip.html)) {
            auto& fields = records.emplace_back();
            for (const Element& cell : row) fields.push_back(text_of(cell.inner));
        }
        records.erase(records.begin());
        expect_same(table, rows_of_records(table, csv_heads(table), records), keeps);
    }
}

/// A printed cell, its mark taken off.
struct Printed {
    std::string text;
    int mark = 0;
};

void expect_same_rounded(const Table& table, const std::vector<std::vector<Printed>>& rows, const std::vector<std::string>& notes) {
    ASSERT_EQ(rows.size(), table.rows.size());
    const std::vector<ShownColumn> shown = shown_columns(table);
    for (std::size_t r = 0; r < rows.size(); ++r) {
        ASSERT_EQ(rows[r].size(), table.columns.size());
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            SCOPED_TRACE(table.columns[c].key + " of row " + std::to_string(r));
            if (const auto* quantity = std::get_if<Quantity>(&table.rows[r][c])) {
                expect_printed(rows[r][c].text, in_shown_column(*quantity, shown[c]));
                expect_noted(rows[r][c].mark, notes, table.columns[c], *quantity);
            } else {
                EXPECT_EQ(rows[r][c].text, one_line(std::get<Message>(table.rows[r][c]).text()));
            }
        }
    }
}

std::vector<std::string> lines_between(const std::string& text, const std::string& from, const std::string& to) {
    const std::size_t begin = text.find(from) + from.size();
    std::istringstream block(text.substr(begin, text.find(to, begin) - begin));
    std::vector<std::string> lines;
    for (std::string line; std::getline(block, line);)
        if (!line.empty()) lines.push_back(line);
    return lines;
}

/// Parts between separators that no backslash stands before.
std::vector<std::string> split_unescaped(const std::string& line, char separator) {
    std::vector<std::string> parts(1);
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (line[i] == separator) {
            parts.emplace_back();
            continue;
        }
        parts.back() += line[i];
        if (line[i] == '\\' && i + 1 < line.size()) parts.back() += line[++i];
    }
    return parts;
}

/// Places of the columns whose keys stand in "unit, delivered_wh".
std::vector<std::size_t> columns_named(const Table& table, const std::string& keys) {
    std::vector<std::size_t> columns;
    std::string key;
    for (std::istringstream parts(keys); std::getline(parts, key, ',');) {
        if (key.starts_with(' ')) key.erase(0, 1);
        const auto at = std::ranges::find(table.columns, key, &TableColumn::key);
        EXPECT_NE(at, table.columns.end()) << key;
        if (at != table.columns.end()) columns.push_back(static_cast<std::size_t>(at - table.columns.begin()));
    }
    return columns;
}

TEST(SameNumbers, rounded_as_their_interval_allows_in_latex) {
    for (const Table& table : every_table()) {
        SCOPED_TRACE(table.title);
        const std::string text = table_text(table, TableFormat::latex);
        std::vector<std::vector<Printed>> rows(table.rows.size(), std::vector<Printed>(table.columns.size()));
        std::set<std::string> keys_seen;
        const std::string begin_keys = "\n% columns: ", end_table = "\\end{longtable}\n";
        for (std::size_t at = text.find(begin_keys); at != std::string::npos; at = text.find(begin_keys, at + 1)) {
            const std::string part = text.substr(at + 1, text.find(end_table, at) + end_table.size() - at - 1);
            const std::vector<std::size_t> columns =
                columns_named(table, part.substr(begin_keys.size() - 1, part.find('\n') - begin_keys.size() + 1));
            for (const std::size_t c : columns) keys_seen.insert(table.columns[c].key);
            std::size_t r = 0;
            for (const std::string& line : lines_between(part, "\\endfoot\n", "\\end{longtable}")) {
                ASSERT_EQ(line.substr(line.size() - 3), " \\\\") << line;
                ASSERT_LT(r, rows.size());
                std::vector<std::string> cells = split_unescaped(line.substr(0, line.size() - 3), '&');
                ASSERT_EQ(cells.size(), columns.size()) << line;
                for (std::size_t i = 0; i < cells.size(); ++i) {
                    std::string& cell = cells[i];
                    if (!cell.empty() && cell.front() == ' ' && i > 0) cell.erase(0, 1);
                    if (!cell.empty() && cell.back() == ' ' && i + 1 < cells.size()) cell.pop_back();
                    LatexReader reader(cell);
                    const std::string plain = reader.plain();
                    rows[r][columns[i]] = {plain, reader.marks().empty() ? 0 : std::stoi(reader.marks().front())};
                }
                ++r;
            }
            EXPECT_EQ(r, table.rows.size());
        }
        for (const TableColumn& column : table.columns) EXPECT_TRUE(keys_seen.contains(column.key)) << column.key;
        std::vector<std::string> notes;
        for (const std::string& line : lines_between(text, "\\end{longtable}\n", "\\par\\endgroup"))
            if (const std::string begin = "\\par\\noindent\\textsuperscript{"; line.starts_with(begin))
                notes.push_back(LatexReader(line.substr(line.find('~') + 1)).plain());
        expect_same_rounded(table, rows, notes);
    }
}

std::string markdown_plain(std::string text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) out += text[i] == '\\' && i + 1 < text.size() ? text[++i] : text[i];
    return xml_decoded(out);
}

TEST(SameNumbers, rounded_as_their_interval_allows_in_markdown) {
    for (const Table& table : every_table()) {
        SCOPED_TRACE(table.title);
        const std::string text = table_text(table, TableFormat::markdown);
        std::vector<std::vector<Printed>> rows;
        std::vector<std::string> notes;
        std::istringstream lines(text);
        for (std::string line; std::getline(lines, line);) {
            if (line.starts_with("<sup>"))
                notes.push_back(markdown_plain(line.substr(line.find("</sup> ") + 7, line.size() - line.find("</sup> ") - 9)));
            if (!line.starts_with("| ")) continue;
            auto& row = rows.emplace_back();
            auto parts = split_unescaped(line, '|');
            for (std::size_t p = 1; p + 1 < parts.size(); ++p) {
                std::string cell = parts[p].substr(1, parts[p].size() - 2);
                const std::size_t mark = cell.find(" <sup>");
                row.push_back({markdown_plain(cell.substr(0, mark)), mark == std::string::npos ? 0 : std::stoi(cell.substr(mark + 6))});
            }
        }
        ASSERT_GE(rows.size(), 2u);
        rows.erase(rows.begin(), rows.begin() + 2); // head and rule
        expect_same_rounded(table, rows, notes);
    }
}

TEST(SameNumbers, rounded_as_their_interval_allows_in_the_text_of_html) {
    for (const Table& table : every_table()) {
        SCOPED_TRACE(table.title);
        const std::string html = table_text(table, TableFormat::html);
        std::vector<std::vector<Printed>> rows;
        for (const auto& cells : html_rows(html)) {
            auto& row = rows.emplace_back();
            for (const Element& cell : cells) {
                const std::size_t mark = cell.inner.find(" <sup>");
                row.push_back({text_of(cell.inner.substr(0, mark)), mark == std::string::npos ? 0 : std::stoi(text_of(cell.inner.substr(mark)))});
            }
        }
        std::vector<std::string> notes;
        for (const Element& paragraph : elements(html, {"p"}))
            if (const auto kind = paragraph.attributes.find("class"); kind != paragraph.attributes.end() && kind->second == "notes")
                notes.push_back(text_of(paragraph.inner.substr(paragraph.inner.find("</sup> ") + 7)));
        rows.erase(rows.begin());
        expect_same_rounded(table, rows, notes);
    }
}

} // namespace
} // namespace ullage::test
