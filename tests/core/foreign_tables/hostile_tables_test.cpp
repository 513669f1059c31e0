// SPDX-License-Identifier: GPL-3.0-or-later
// Files that cannot come in are refused in one line, within bounded time and memory.
#include "core/foreign_tables/packed.h"
#include "core/foreign_tables/understood.h"
#include "support/has_text.h"

#include <chrono>

namespace ullage::test {
namespace {

std::string refusal_of(std::string_view bytes) {
    const Result<TableBook> book = read_table_book(bytes, "table");
    EXPECT_FALSE(book.ok());
    if (book) return {};
    const std::string words = book.error().sentence();
    EXPECT_EQ(words.find('\n'), std::string::npos);
    return words;
}

std::string workbook_of(const std::string& sheet_xml) {
    return packed({{"xl/workbook.xml", "<workbook xmlns:r=\"r\"><sheets><sheet name=\"One\" r:id=\"a\"/></sheets></workbook>"},
                   {"xl/_rels/workbook.xml.rels", "<Relationships><Relationship Id=\"a\" Target=\"worksheets/sheet1.xml\"/></Relationships>"},
                   {"xl/worksheets/sheet1.xml", sheet_xml}});
}

TEST(HostileTables, passwords_and_damage_are_told_apart) {
    EXPECT_TRUE(contains(refusal_of(table_bytes("password.xlsx")), "the workbook has a password, or is of the old form .xls"));
    EXPECT_TRUE(contains(refusal_of(table_bytes("password.ods")), "the workbook has a password"));
    EXPECT_TRUE(contains(refusal_of(table_bytes("cut-short.xlsx")), "the workbook is damaged"));
    EXPECT_TRUE(contains(refusal_of(table_bytes("no-workbook.xlsx")), "this zip file is no workbook"));
    EXPECT_TRUE(
        contains(refusal_of(workbook_of("<worksheet><sheetData><row><c><v>1</v>")), "the workbook is damaged (its part xl/worksheets/sheet1.xml)"));
    EXPECT_TRUE(contains(refusal_of(""), "there is nothing in it"));
    EXPECT_TRUE(contains(refusal_of(std::string("a\0b,c\1\2\n", 8)), "neither a workbook nor a text"));
    EXPECT_TRUE(contains(refusal_of("<html><body>nothing</body></html>"), "it holds no table"));
}

TEST(HostileTables, a_workbook_that_unpacks_without_end_is_left_at_the_stated_limit) {
    std::string sheet = "<worksheet><sheetData>";
    for (std::size_t bytes = 0; bytes < most_unpacked_bytes; bytes += 8'000'000) sheet += "<x a=\"" + std::string(8'000'000, '0') + "\"/>";
    const std::string bytes = workbook_of(sheet + "</sheetData></worksheet>");
    EXPECT_LT(bytes.size(), 2'000'000u);
    EXPECT_TRUE(contains(refusal_of(bytes), "the workbook unpacks to more than 256 MB"));
}

TEST(HostileTables, entities_that_multiply_are_refused) {
    const std::string bytes =
        workbook_of("<!DOCTYPE w [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\"><!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;\">]>"
                    "<worksheet><sheetData><row><c t=\"str\"><v>&c;</v></c></row></sheetData></worksheet>");
    const Result<TableBook> book = read_table_book(bytes, "table");
    EXPECT_TRUE(!book || book.value().sheets[0].rows[0][0].text.size() < 100);
}

TEST(HostileTables, cells_repeated_to_the_edge_of_the_sheet_take_no_room) {
    const std::string bytes = packed(
        {{"content.xml",
          "<d><spreadsheet><table name=\"T\"><table-row><table-cell value-type=\"float\" value=\"1\"/>"
          "<table-cell number-columns-repeated=\"16383\"/></table-row>"
          "<table-row number-rows-repeated=\"1048575\"><table-cell number-columns-repeated=\"16384\"/></table-row></table></spreadsheet></d>"}});
    const Result<TableBook> book = read_table_book(bytes, "table");
    ASSERT_TRUE(book.ok()) << book.error().sentence();
    EXPECT_EQ(book.value().sheets[0].rows.size(), 1u);
    const std::string filled = packed({{"content.xml", "<d><spreadsheet><table name=\"T\"><table-row number-rows-repeated=\"1048576\">"
                                                       "<table-cell value-type=\"float\" value=\"1\"/></table-row></table></spreadsheet></d>"}});
    EXPECT_TRUE(contains(refusal_of(filled), "larger than 200000 rows"));
}

TEST(HostileTables, a_million_rows_are_told_to_be_a_log) {
    std::string text = "time,gauge %,Wh\n";
    for (int i = 0; i < 1'000'000; ++i) text += "2025-05-14 18:00,50," + std::to_string(i) + "\n";
    EXPECT_TRUE(contains(refusal_of(text), "the table is larger than 200000 rows"));
}

TEST(HostileTables, dates_that_cannot_be_are_named_with_their_row) {
    EXPECT_EQ(understood("before-1980.csv").refusal, "row 2: 1904-01-02T18:00+01:00 lies before 1980, so the clock or the date was never set");
    EXPECT_EQ(understood("future.csv").refusal, "row 3: 2072-05-14T20:00+01:00 lies in the future");
}

TEST(HostileTables, formulas_whose_value_was_never_kept_are_counted) {
    TableAnswers answers;
    answers.columns = {{1, TableRole::unused, {}}};
    const TableReading reading = understood("formulas.xlsx", answers);
    EXPECT_TRUE(contains(reading.notes.back(), "2 formulas have no value kept with them"));
    EXPECT_EQ(reading_lines(reading.runs.at(0)).back(), "2025-05-14T20:00+02:00 70 %");
}

TEST(HostileTables, a_page_with_bytes_that_are_no_letters_is_read_without_a_word_on_the_terminal) {
    testing::internal::CaptureStderr();
    const TableReading reading =
        understood_text("<meta charset=\"utf-8\"><table><tr><td>time</td><td>gauge %</td></tr><tr><td>2025-05-14 18:00</td><td>100\xF0\x28</td></tr>"
                        "<tr><td>2025-05-14 19:00</td><td>90</td></tr></table>");
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
    EXPECT_FALSE(reading.columns.empty());
    const TableReading western = understood_text("<table><tr><td>time</td><td>gauge %</td><td>note</td></tr><tr><td>2025-05-14 18:00</td><td>100</td>"
                                                 "<td>K\xFC"
                                                 "che</td></tr></table>");
    EXPECT_EQ(reading_lines(western.runs.at(0)).front(), "2025-05-14T18:00+02:00 100 % `K\u00FC"
                                                         "che`");
}

TEST(HostileTables, a_stray_quote_costs_no_more_than_its_cell) {
    const TableReading reading =
        understood_text("time,gauge %,note\n2025-05-14 18:00,100,\"open\n2025-05-14 20:00,70,3\" screw\n2025-05-14 21:00,60,\"a, \"\"b\"\"\"\n");
    ASSERT_EQ(reading.runs.size(), 1u);
    EXPECT_EQ(reading_lines(reading.runs[0]),
              (std::vector<std::string>{"2025-05-14T18:00+02:00 100 % `\"open`", "2025-05-14T20:00+02:00 70 % `3\" screw`",
                                        "2025-05-14T21:00+02:00 60 % `a, \"b\"`"}));
}

TEST(HostileTables, ten_thousand_rows_are_understood_at_once) {
    std::string text = "time;gauge %;Wh;note\n";
    for (int i = 0; i < 10'000; ++i)
        text += "14.05.2025 " + std::to_string(10 + i / 1000) + ":" + std::to_string(10 + i % 50) + ";" + std::to_string(100 - i / 101) + ";" +
                std::to_string(i) + ",5;n\n";
    const auto begin = std::chrono::steady_clock::now();
    const TableReading reading = understood_text(text);
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    ASSERT_EQ(reading.runs.size(), 1u);
    EXPECT_EQ(reading.runs[0].readings.size(), 10'000u);
    EXPECT_LT(seconds, 3) << "far slower than the 0.2 s that bench_tables watches";
}

} // namespace
} // namespace ullage::test
