// SPDX-License-Identifier: GPL-3.0-or-later
// Long tables: their rows are made while they are written, and none is kept. What a format holds back is counted in rows and bytes, not measured.
#include "formats/tables/inside/distinct_rows.h"
#include "read_back.h"
#include "sample_tables.h"
#include "support/temp_folder.h"

#include <algorithm>
#include <array>

namespace ullage::test {
namespace {

constexpr std::array text_formats{TableFormat::text, TableFormat::csv,  TableFormat::markdown,
                                  TableFormat::html, TableFormat::json, TableFormat::latex};

/// A table of so many rows that counts how often they are gone through and how far.
struct CountedTable {
    StreamedTable table;
    std::size_t passes = 0, made_in_pass = 0;

    explicit CountedTable(std::size_t rows) {
        table.title = "long";
        table.columns = {{"name", "name", "", TableColumn::Content::text, 0, true},
                         {"energy", "energy", "", TableColumn::Content::quantity, 0},
                         {"power", "power", "W", TableColumn::Content::number, 1}};
        table.row_count = rows;
        table.each_row = [this, rows](const RowTaker& take) {
            ++passes;
            made_in_pass = 0;
            TableRow row(3);
            for (std::size_t r = 0; r < rows; ++r) {
                row[0] = "row " + std::to_string(r);
                row[1] = known("energy", "Wh", static_cast<double>(r), 1.0, Kind::projected, "one reason");
                row[2] = known("power", "W", 0.5, std::nullopt, Kind::measured);
                ++made_in_pass;
                if (!take(row)) return false;
            }
            return true;
        };
    }
};

TEST(TableStream, a_text_is_given_away_while_its_rows_are_made) {
    for (const TableFormat format : text_formats) {
        SCOPED_TRACE(int(format));
        CountedTable counted(20'000);
        std::size_t given = 0, largest = 0;
        std::vector<std::pair<std::size_t, std::size_t>> course; // rows made in the last pass, bytes given away by then
        ASSERT_TRUE(table_text(counted.table, format, [&](std::string_view piece) {
            largest = std::max(largest, piece.size());
            course.emplace_back(counted.made_in_pass, given += piece.size());
            return true;
        }));
        EXPECT_LT(largest, 100'000u);
        EXPECT_LE(counted.passes, 3u);
        // What the head and the foot take is little beside so many rows: the text comes in step with them.
        for (const auto& [rows, bytes] : course)
            EXPECT_NEAR(static_cast<double>(bytes) / static_cast<double>(given), static_cast<double>(rows) / 20'000, 0.15);
    }
}

TEST(TableStream, once_no_more_is_taken_no_more_rows_are_made) {
    for (const TableFormat format : text_formats) {
        SCOPED_TRACE(int(format));
        CountedTable counted(20'000);
        int pieces = 0;
        EXPECT_FALSE(table_text(counted.table, format, [&](std::string_view) { return ++pieces < 2; }));
        EXPECT_EQ(pieces, 2) << "who has had enough is not asked again";
        EXPECT_LT(counted.made_in_pass, 10'000u);
    }
}

TEST(TableStream, a_table_is_the_same_with_its_rows_made_as_with_its_rows_kept) {
    const AnalysedScenario& scenario = analysed_scenario();
    for (const RunTable which : {RunTable::readings, RunTable::intervals}) {
        const StreamedTable streamed = table_of_run(which, scenario.records[0], scenario.analyses[0]);
        const Table kept = collected(streamed);
        EXPECT_EQ(kept.rows.size(), streamed.row_count);
        const StreamedTable holding = Table(kept);
        for (const TableFormat format : text_formats) {
            EXPECT_EQ(table_text(streamed, format), table_text(kept, format));
            EXPECT_EQ(table_text(holding, format), table_text(kept, format));
        }
        const StreamedTable of_all =
            table_of_runs(which, {&scenario.records[0], &scenario.records[1]}, {&scenario.analyses[0], &scenario.analyses[1]});
        EXPECT_EQ(collected(of_all).rows.size(), of_all.row_count);
    }
}

TEST(TableStream, json_is_laid_out_as_one_object) {
    for (const Table& table : every_table()) {
        Table plain = table;
        const std::string text = table_text(plain, TableFormat::json);
        EXPECT_EQ(text, nlohmann::ordered_json::parse(text).dump(2) + '\n');
        plain.rows.clear();
        const std::string empty = table_text(plain, TableFormat::json);
        EXPECT_EQ(empty, nlohmann::ordered_json::parse(empty).dump(2) + '\n');
    }
}

TEST(TableStream, a_long_workbook_is_written_row_by_row_with_the_same_cells) {
    const TempFolder folder;
    CountedTable counted(12'000);
    ASSERT_TRUE(write_table(counted.table, TableFormat::xlsx, folder / "t.xlsx").ok());
    EXPECT_EQ(counted.passes, 1u);
    const std::string sheet = xlsx_member(folder / "t.xlsx", "xl/worksheets/sheet1.xml");
    EXPECT_NE(sheet.find("t=\"inlineStr\""), std::string::npos) << "a text that is not in a list of all texts";
    EXPECT_NE(xlsx_member(folder / "t.xlsx", "xl/charts/chart1.xml").find("$2:$B$12001"), std::string::npos);
    const Table table = collected(counted.table);
    const auto rows = read_xlsx(table, folder / "t.xlsx");
    ASSERT_EQ(rows.size(), 12'000u);
    for (const std::size_t r : {std::size_t{0}, std::size_t{6000}, std::size_t{11'999}}) {
        EXPECT_EQ(rows[r].at("name").text, "row " + std::to_string(r));
        EXPECT_EQ(rows[r].at("energy").value, static_cast<double>(r));
        EXPECT_EQ(rows[r].at("energy").upper, static_cast<double>(r) + 1);
        EXPECT_EQ(rows[r].at("energy").reason, "one reason");
        EXPECT_EQ(rows[r].at("power").value, 0.5);
    }
    EXPECT_EQ(xlsx_cells(folder / "t.xlsx", 1).at("A1").value, "name");
}

TEST(TableStream, rows_are_told_apart_by_texts_and_values_and_where_each_ends) {
    Table table;
    table.columns = {{"a", "a", "", TableColumn::Content::text, 0},
                     {"b", "b", "W", TableColumn::Content::number, 1},
                     {"c", "c", "", TableColumn::Content::text, 0}};
    const auto number = [](double value) { return known("b", "W", value, std::nullopt, Kind::measured); };
    table.rows = {{std::string("ab"), number(1), std::string("c")},
                  {std::string("a"), number(1), std::string("bc")},
                  {std::string("ab"), number(2), std::string("c")}};
    EXPECT_TRUE(tell_rows_apart(table, {0, 1, 2}));
    EXPECT_TRUE(tell_rows_apart(table, {0, 1}));
    EXPECT_FALSE(tell_rows_apart(table, {1}));
    EXPECT_FALSE(tell_rows_apart(table, {0}));
    EXPECT_FALSE(tell_rows_apart(table, {}));
    table.rows.push_back(table.rows.front());
    EXPECT_FALSE(tell_rows_apart(table, {0, 1, 2}));
}

} // namespace
} // namespace ullage::test
