// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table.h"
#include "formats/text/table_unicode.h"
#include "support/command_output.h"
#include "support/temp_folder.h"
#include "table_samples.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace ullage::test {
namespace {

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

/// Pipes that are not escaped.
long bare_pipes(const std::string& line) {
    long count = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (line[i] == '\\') ++i;
        else if (line[i] == '|') ++count;
    }
    return count;
}

class TableHtml : public testing::Test {
protected:
    TableHtml() { EXPECT_TRUE(write_table(hostile_table(), TableFormat::html, path_).ok()); }
    std::string xpath(const std::string& expression) const {
        std::string text = run_command("xmllint --xpath \"" + expression + "\" '" + path_ + "'").text;
        while (!text.empty() && text.back() == '\n') text.pop_back();
        return text;
    }
    static std::string cell(int row, int column) {
        return "//*[local-name()='tbody']/*[" + std::to_string(row) + "]/*[" + std::to_string(column) + "]";
    }
    TempFolder folder_;
    std::string path_ = folder_ / "table.html";
};

TEST_F(TableHtml, is_well_formed_xml) {
    const CommandOutput check = run_command("xmllint --noout '" + path_ + "'");
    EXPECT_EQ(check.exit_code, 0) << check.text;
    EXPECT_EQ(check.text, "");
}

TEST_F(TableHtml, cells_read_back_with_value_and_interval) {
    EXPECT_EQ(xpath("string(" + cell(1, 3) + ")"), "937 ± 19");
    EXPECT_EQ(xpath("string(" + cell(1, 3) + "/@data-number)"), "937.4321234567");
    EXPECT_EQ(xpath("string(" + cell(1, 3) + "/*[@class='interval'])"), "± 19");
    EXPECT_EQ(xpath("string(" + cell(1, 3) + "/@class)"), "number");
    EXPECT_EQ(xpath("string(" + cell(3, 4) + ")"), "86.1 to 94.9 3");
    EXPECT_EQ(xpath("string(" + cell(4, 3) + "/text()[1])"), "not known ");
    EXPECT_EQ(xpath("string(" + cell(1, 5) + ")"), "0.71 EUR/kWh");
}

TEST_F(TableHtml, texts_come_back_as_they_were_and_are_never_elements) {
    EXPECT_EQ(xpath("string(" + cell(2, 1) + ")"), hostile_markup);
    EXPECT_EQ(xpath("string(" + cell(3, 1) + ")"), hostile_pipes);
    EXPECT_EQ(xpath("string(" + cell(5, 1) + ")"), hostile_letters);
    EXPECT_EQ(xpath("count(//*[local-name()='script'])"), "1");
    EXPECT_EQ(xpath("count(//*[local-name()='b'])"), "0");
}

TEST_F(TableHtml, states_language_charset_method_and_needs_no_network) {
    EXPECT_EQ(xpath("string(/*/@lang)"), "en");
    EXPECT_EQ(xpath("string(//*[local-name()='meta']/@charset)"), "utf-8");
    EXPECT_EQ(xpath("count(//*[@id='method']//*[local-name()='h3'])"), "2");
    EXPECT_EQ(xpath("count(//@src) + count(//*[local-name()='link'])"), "0");
    EXPECT_NE(xpath("string(//*[local-name()='style'])").find("prefers-color-scheme: dark"), std::string::npos);
}

TEST_F(TableHtml, every_note_mark_leads_to_its_note) {
    EXPECT_EQ(xpath("count(//*[local-name()='sup']/*[local-name()='a'][not(substring(@href, 2) = //@id)])"), "0");
    EXPECT_EQ(xpath("count(//*[@class='notes'])"), "8");
}

TEST(TableMarkdown, every_row_has_the_same_number_of_cells) {
    const auto lines = lines_of(table_text(hostile_table(), TableFormat::markdown));
    ASSERT_GT(lines.size(), 8u);
    for (std::size_t i = 2; i < 9; ++i) EXPECT_EQ(bare_pipes(lines[i]), 7) << lines[i];
    EXPECT_EQ(lines[3], "| --- | ---: | ---: | ---: | ---: | --- |");
}

TEST(TableMarkdown, markup_in_texts_is_escaped) {
    const std::string text = table_text(hostile_table(), TableFormat::markdown);
    EXPECT_NE(text.find("a\\|b \\*c\\* \\`d\\` \\[e\\](f) \\\\"), std::string::npos);
    EXPECT_NE(text.find("&lt;script&gt;"), std::string::npos);
    EXPECT_EQ(text.find("<script"), std::string::npos);
    EXPECT_NE(text.find("- \\# no heading \\| &lt;b&gt;"), std::string::npos);
    EXPECT_NE(text.find("- 1\\. no list"), std::string::npos);
    EXPECT_NE(text.find("**How &amp; why.**"), std::string::npos);
    EXPECT_NE(text.find("# Hostile &amp; &lt;odd&gt; \\[units\\]"), std::string::npos);
}

TEST(TableMarkdown, figures_are_rounded_to_what_the_uncertainty_supports) {
    const std::string text = table_text(hostile_table(), TableFormat::markdown);
    EXPECT_NE(text.find("| 937 ± 19 | 78.1 ± 1.6 | 0.71 EUR/kWh |"), std::string::npos);
    EXPECT_NE(text.find("at least 1578 <sup>2</sup>"), std::string::npos);
    EXPECT_NE(text.find("<sup>1</sup> projected: assumes an accurate gauge \\| from 80 to 20 %"), std::string::npos);
}

TEST(TablePlain, columns_stand_in_line_for_wide_letters_too) {
    Table table;
    table.columns = {{"a", "unit", "", TableColumn::Content::text, 0}, {"b", "load", "W", TableColumn::Content::number, 0}};
    const auto load = [](double w) { return known("b", "W", w, std::nullopt, Kind::measured); };
    table.rows = {{std::string("\xE9\x9B\xBB\xE9\x9B\xBB"), load(5)}, {std::string("abcdef"), load(120)}};
    EXPECT_EQ(table_text(table, TableFormat::text), "        load\n"
                                                    "unit     (W)\n"
                                                    "------  ----\n"
                                                    "\xE9\x9B\xBB\xE9\x9B\xBB       5\n"
                                                    "abcdef   120\n");
}

TEST(TablePlain, a_unit_that_all_cells_share_stands_in_the_head) {
    Table table;
    table.columns = {{"price", "price", "", TableColumn::Content::number, 2}};
    const auto price = [](double each, const char* unit) { return known("price", unit, each, std::nullopt, Kind::measured); };
    table.rows = {{price(554.17, "EUR/kWh")}, {not_known("price", "", "no price stated")}, {price(499, "EUR/kWh")}};
    EXPECT_EQ(table_text(table, TableFormat::markdown).substr(0, 40), "| price (EUR/kWh) |\n| ---: |\n| 554.17 |\n");
    table.rows.push_back({price(3, "CHF/kWh")});
    EXPECT_EQ(table_text(table, TableFormat::markdown).substr(0, 37), "| price |\n| ---: |\n| 554.17 EUR/kWh |");
}

TEST(TablePlain, kinds_and_reasons_are_notes_below) {
    const std::string text = table_text(hostile_table(), TableFormat::text);
    EXPECT_NE(text.find("596 ± 20 [1]"), std::string::npos);
    EXPECT_NE(text.find("\n[1] projected: assumes an accurate gauge | from 80 to 20 %\n"), std::string::npos);
    EXPECT_NE(text.find("not known: no register noted"), std::string::npos);
    EXPECT_NE(text.find("How & why: Divided"), std::string::npos);
}

TEST(TablePlain, a_text_can_neither_break_a_line_nor_command_the_terminal) {
    Table wide = hostile_table();
    wide.text_width = 0;
    const std::string text = table_text(wide, TableFormat::text);
    EXPECT_NE(text.find("first second, \"quoted\" third"), std::string::npos);
    EXPECT_EQ(text.find('\x1B'), std::string::npos);
    EXPECT_EQ(text.find('\r'), std::string::npos);
}

TEST(TablePlain, a_table_keeps_within_its_width_by_breaking_sentences_and_then_itself) {
    Table table = hostile_table();
    table.answer = {"Every unit of this table was made up, and what it says attacks the forms in which it may be written, one after the other."};
    const std::string narrow = table_text(table, TableFormat::text);
    for (const std::string& line : lines_of(narrow)) EXPECT_LE(display_width(line), 100u) << line;
    EXPECT_LT(narrow.find("attacks"), narrow.find("delivered")) << "the answer stands above the table";
    table.text_width = 60;
    const std::string parts = table_text(table, TableFormat::text);
    long heads = 0;
    for (const std::string& line : lines_of(parts)) heads += line.starts_with("unit") ? 1 : 0;
    EXPECT_GT(heads, 1) << "each part begins with the first column\n" << parts;
    table.text_width = 0;
    std::size_t widest = 0;
    for (const std::string& line : lines_of(table_text(table, TableFormat::text))) widest = std::max(widest, display_width(line));
    EXPECT_GT(widest, 100u);
}

TEST(TablePlain, one_energy_of_ten_kilowatt_hours_puts_its_column_into_that_unit) {
    Table table;
    table.columns = {{"delivered_wh", "delivered", "Wh", TableColumn::Content::quantity, 0}};
    table.rows = {{known("delivered_wh", "Wh", 10592, 1236, Kind::measured)}, {known("delivered_wh", "Wh", 4314, std::nullopt, Kind::measured)}};
    EXPECT_EQ(table_text(table, TableFormat::markdown), "| delivered (kWh) |\n| ---: |\n| 10.6 ± 1.2 |\n| 4.314 |\n");
    table.columns[0].as_noted = true;
    EXPECT_EQ(table_text(table, TableFormat::markdown).substr(0, 18), "| delivered (Wh) |") << "a register is read as it was noted";
}

TEST_F(TableHtml, brings_its_numbers_in_full_as_a_file_within_the_page) {
    const std::string link = xpath("string(//*[local-name()='a'][@download='table.csv']/@href)");
    const std::string head = "data:text/csv;charset=utf-8,";
    ASSERT_TRUE(link.starts_with(head)) << link;
    std::string csv;
    for (std::size_t at = head.size(); at < link.size(); ++at) {
        if (link[at] != '%') {
            csv += link[at];
            continue;
        }
        csv += static_cast<char>(std::stoi(link.substr(at + 1, 2), nullptr, 16));
        at += 2;
    }
    EXPECT_EQ(csv, table_text(hostile_table(), TableFormat::csv));
    EXPECT_EQ(run_command("tidy -q -e '" + path_ + "'").text, "");
}

TEST_F(TableHtml, only_a_table_of_many_columns_is_printed_in_small_letters) {
    Table table = hostile_table();
    EXPECT_EQ(table_text(table, TableFormat::html).find("class=\"many\""), std::string::npos);
    while (table.columns.size() < 16) {
        table.columns.push_back({"more", "more", {}, TableColumn::Content::text, 0});
        for (auto& row : table.rows) row.emplace_back(std::string("text"));
    }
    EXPECT_NE(table_text(table, TableFormat::html).find("class=\"many\""), std::string::npos);
}

} // namespace
} // namespace ullage::test
