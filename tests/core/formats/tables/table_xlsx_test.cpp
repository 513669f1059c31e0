// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table.h"
#include "support/temp_folder.h"
#include "table_samples.h"
#include "xlsx_reader.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

namespace ullage::test {
namespace {

class TableXlsx : public testing::Test {
protected:
    std::string written(const Table& table) {
        const std::string path = folder_ / "table.xlsx";
        const Result<void> result = write_table(table, TableFormat::xlsx, path);
        EXPECT_TRUE(result.ok()) << (result.ok() ? "" : result.error().sentence());
        return path;
    }
    TempFolder folder_;
};

TEST_F(TableXlsx, every_number_reads_back_as_a_typed_cell) {
    const Table table = hostile_table();
    const auto cells = xlsx_data(written(table));
    // Columns: A unit, B rated, C to G delivered, H to L usable fraction, M price, N its unit, O remark.
    EXPECT_EQ(cells.at("C1").value, "delivered energy (Wh)");
    EXPECT_EQ(cells.at("D1").value, "delivered energy, lower");
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        const std::string row = std::to_string(r + 2);
        for (const auto& [column, letters] : {std::pair{2u, std::string("CDEF")}, std::pair{3u, std::string("HIJK")}}) {
            const auto& quantity = std::get<Quantity>(table.rows[r][column]);
            const auto expect_same = [&](char letter, const std::optional<double>& number) {
                const auto at = cells.find(letter + row);
                ASSERT_EQ(at != cells.end(), number.has_value()) << letter << row;
                if (!number) return;
                EXPECT_FALSE(at->second.is_text);
                EXPECT_DOUBLE_EQ(std::stod(at->second.value), *number) << letter << row;
            };
            expect_same(letters[0], quantity.value);
            expect_same(letters[1], quantity.lower);
            expect_same(letters[2], quantity.upper);
            EXPECT_EQ(cells.at(letters[3] + row).value, kind_text(quantity.kind));
        }
    }
    EXPECT_EQ(cells.at("N3").value, "CHF/kWh");
    EXPECT_EQ(cells.count("M4"), 0u);
}

TEST_F(TableXlsx, the_method_has_room_for_its_lines_and_a_wide_table_is_not_shrunk_to_one_page) {
    Table table = hostile_table();
    table.method = {{"Short", "one line"}, {"Long", std::string(450, 'x')}};
    const std::string path = written(table);
    const std::string method = xlsx_member(path, "xl/worksheets/sheet" + std::to_string(xlsx_method_sheet(path)) + ".xml");
    EXPECT_NE(method.find("ht=\"90\""), std::string::npos) << "450 characters in lines of 100, some shorter by words: six lines of 15 points";
    EXPECT_NE(method.find("fitToPage=\"1\""), std::string::npos);
    const std::string wide = xlsx_member(path, "xl/workbook.xml");
    EXPECT_NE(wide.find("$A:$A,"), std::string::npos) << "the first column stands on every page: " << wide;
    Table narrow;
    narrow.title = "narrow";
    narrow.columns = {{"unit", "unit", {}, TableColumn::Content::text, 0}};
    narrow.rows = {{std::string("one")}};
    EXPECT_NE(xlsx_member(written(narrow), "xl/worksheets/sheet1.xml").find("fitToPage=\"1\""), std::string::npos);
}

TEST_F(TableXlsx, the_head_is_as_high_as_its_longest_title_needs) {
    Table table;
    table.title = "heads";
    table.columns = {{"unit", "unit", {}, TableColumn::Content::text, 0}};
    EXPECT_NE(xlsx_member(written(table), "xl/worksheets/sheet1.xml").find("<row r=\"1\" spans=\"1:1\">"), std::string::npos);
    table.columns = {{"long", "a title of more words than one line holds", {}, TableColumn::Content::text, 0}};
    EXPECT_NE(xlsx_member(written(table), "xl/worksheets/sheet1.xml").find("ht=\"45\""), std::string::npos)
        << "17 bold letters a line: three lines of 15 points";
}

TEST_F(TableXlsx, no_text_becomes_a_formula) {
    const std::string path = written(hostile_table());
    for (const char* sheet : {"xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml", "xl/worksheets/sheet3.xml"})
        EXPECT_EQ(xlsx_member(path, sheet).find("<f>"), std::string::npos);
    const auto cells = xlsx_data(path);
    EXPECT_TRUE(cells.at("A2").is_text);
    EXPECT_EQ(cells.at("A2").value, hostile_formula);
    EXPECT_EQ(cells.at("A3").value, hostile_markup);
    EXPECT_EQ(cells.at("A6").value, hostile_letters);
    EXPECT_EQ(cells.at("G4").value, "=energy may be missing");
}

TEST_F(TableXlsx, every_part_is_well_formed_even_with_ill_formed_texts) {
    const std::string path = written(hostile_table());
    for (const char* part : {"xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml", "xl/worksheets/sheet3.xml", "xl/sharedStrings.xml",
                             "xl/charts/chart1.xml", "xl/workbook.xml", "xl/styles.xml"}) {
        const CommandOutput check = run_command("unzip -p '" + path + "' " + part + " | xmllint --noout -");
        EXPECT_EQ(check.exit_code, 0) << part << ": " << check.text;
    }
}

TEST_F(TableXlsx, the_method_stands_on_its_own_sheet) {
    const std::string path = written(hostile_table());
    EXPECT_NE(xlsx_member(path, "xl/workbook.xml").find("name=\"Method\""), std::string::npos);
    const auto cells = xlsx_cells(path, xlsx_method_sheet(path));
    EXPECT_EQ(cells.at("A2").value, "How & why");
    EXPECT_EQ(cells.at("B2").value, "Divided; see *JCGM 100:2008*, a < b.");
}

TEST_F(TableXlsx, the_chart_takes_value_lower_and_upper_from_the_cells) {
    const std::string chart = xlsx_member(written(hostile_table()), "xl/charts/chart1.xml");
    for (const char* range : {"!$C$2:$C$6", "!$D$2:$D$6", "!$E$2:$E$6", "!$A$2:$A$6"}) EXPECT_NE(chart.find(range), std::string::npos) << range;
    EXPECT_NE(chart.find("<c:hiLowLines>"), std::string::npos);
}

TEST_F(TableXlsx, the_chart_of_a_table_that_goes_over_several_pages_stands_on_a_page_of_its_own) {
    Table table = hostile_table();
    const std::string path = written(table);
    // Printing repeats column A of the table on each page, and with it the edge of what lies over it.
    EXPECT_NE(xlsx_member(path, "xl/workbook.xml").find("$A:$A"), std::string::npos);
    EXPECT_EQ(xlsx_data_xml(path).find("<drawing"), std::string::npos);
    EXPECT_NE(xlsx_member(path, "xl/workbook.xml").find("name=\"Chart\""), std::string::npos);
    EXPECT_NE(xlsx_member(path, "xl/worksheets/sheet4.xml").find("<drawing"), std::string::npos);

    table.columns.resize(3);
    for (auto& row : table.rows) row.resize(3);
    const std::string narrow = written(table);
    EXPECT_EQ(xlsx_member(narrow, "xl/workbook.xml").find("$A:$A"), std::string::npos);
    EXPECT_NE(xlsx_data_xml(narrow).find("<drawing"), std::string::npos);
}

TEST_F(TableXlsx, the_chart_names_only_markers_that_the_format_has) {
    // ECMA-376 part 1, simple type ST_MarkerStyle (from memory). A name besides these makes readers refuse the workbook.
    const std::vector<std::string> known{"circle", "dash", "diamond", "dot", "none", "picture", "plus", "square", "star", "triangle", "x", "auto"};
    const std::string chart = xlsx_member(written(hostile_table()), "xl/charts/chart1.xml");
    int markers = 0;
    for (std::size_t at = 0;; ++markers) {
        const std::string symbol = between(chart, "<c:symbol val=\"", "\"", at);
        if (at == std::string::npos) break;
        EXPECT_NE(std::find(known.begin(), known.end(), symbol), known.end()) << symbol;
    }
    EXPECT_EQ(markers, 3);
}

TEST_F(TableXlsx, numbers_that_are_not_finite_leave_their_cells_empty) {
    Table table;
    table.columns = {{"a", "a", "W", TableColumn::Content::quantity, 1}};
    table.rows = {{known("a", "W", std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(), Kind::measured)}};
    const std::string path = written(table);
    const auto cells = xlsx_data(path);
    EXPECT_EQ(cells.count("A2"), 0u);
    EXPECT_EQ(cells.count("B2"), 0u);
    EXPECT_EQ(run_command("unzip -l '" + path + "'").text.find("chart1.xml"), std::string::npos) << "nothing to draw";
}

TEST_F(TableXlsx, number_formats_fit_the_uncertainty) {
    // 937 ± 19 shows no decimals, 0.781 ± 0.016 three (JCGM 100:2008, 7.2.6: two digits in the uncertainty).
    const std::string path = written(hostile_table());
    const std::string styles = xlsx_member(path, "xl/styles.xml");
    EXPECT_NE(styles.find("formatCode=\"0.000\""), std::string::npos);
    EXPECT_NE(xlsx_data_xml(path).find("state=\"frozen\""), std::string::npos);
}

TEST_F(TableXlsx, the_first_sheet_is_for_readers_with_the_answer_each_figure_in_one_cell_and_the_notes) {
    Table table = hostile_table();
    table.answer = {"The first delivers most."};
    table.for_readers = {"unit", "usable_fraction", "rated_wh"};
    const auto cells = xlsx_cells(written(table), 1);
    EXPECT_EQ(cells.at("A1").value, table.title);
    EXPECT_EQ(cells.at("A2").value, table.answer[0]);
    EXPECT_EQ(cells.at("A4").value, "unit");
    EXPECT_EQ(cells.at("B4").value, "usable fraction (%)");
    EXPECT_EQ(cells.at("B5").value, "78.1 ± 1.6");
    EXPECT_EQ(cells.at("B7").value, "86.1 to 94.9 [2]");
    EXPECT_FALSE(cells.at("C5").is_text) << "a plain number stays one";
    EXPECT_EQ(cells.count("D4"), 0u) << "only the columns for readers";
    EXPECT_EQ(cells.at("A11").value, "[1] projected: assumes an accurate gauge | from 80 to 20 %");
    std::string all;
    for (const auto& [place, cell] : cells) all += cell.value + '\n';
    EXPECT_NE(all.find("# no heading | <b>"), std::string::npos) << "remarks stand below the table";
    EXPECT_EQ(all.find("energy may be missing"), std::string::npos) << "notes of columns that are not here are left out";
}

TEST_F(TableXlsx, a_title_that_no_sheet_may_have_is_replaced) {
    for (const std::string& title : {std::string("History"), std::string("method"), std::string("Chart"), std::string("[]:*?/\\"), std::string(),
                                     std::string(200, 'x'), std::string("'quoted'"), hostile_letters + hostile_letters + hostile_letters}) {
        Table table = hostile_table();
        table.title = title;
        const std::string path = written(table);
        EXPECT_EQ(xlsx_data(path).at("A2").value, hostile_formula) << title;
    }
}

TEST_F(TableXlsx, a_text_longer_than_a_cell_is_cut_at_a_character) {
    Table table = hostile_table();
    std::string text;
    while (text.size() < 100'000) text += "\xF0\x9F\x94\x8B";
    table.rows[0][0] = text;
    const std::string cell = xlsx_data(written(table)).at("A2").value;
    EXPECT_EQ(cell.size(), 32'767 / 2 * 4u); // each letter takes two of the 32,767 UTF-16 units and four bytes
}

} // namespace
} // namespace ullage::test
