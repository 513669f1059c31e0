// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/formats/tables/sample_tables.h"
#include "core/formats/tables/xlsx_reader.h"
#include "formats/sheets/run_sheet.h"
#include "support/page_walk.h"
#include "support/record_builder.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <array>
#include <span>
#include <string_view>

namespace ullage::test {
namespace {

std::string text_in(const Table& table, std::size_t row, std::size_t column) { return std::get<Message>(table.rows.at(row).at(column)); }

TEST(ReadingsTable, times_have_seconds_and_offset_and_withdrawn_readings_are_left_out) {
    RecordBuilder builder;
    builder.at(0, 100, 0).at(1, 90, 100).at(2, 80, 200);
    builder.record().run.time_zone = "Europe/Berlin";
    builder.record().readings[1].withdrawn = true;
    builder.record().readings[2].values.time_ms += 7'500;
    const Table table = readings_table(builder.record(), analyse_run(builder.record()));
    ASSERT_EQ(table.rows.size(), 2u);
    EXPECT_EQ(text_in(table, 0, 0), "2027-05-11T04:00:00+02:00"); // 02:00Z in summer time
    EXPECT_EQ(text_in(table, 1, 0), "2027-05-11T06:00:07.500+02:00");
    EXPECT_TRUE(table.columns[0].instant && table.columns[0].identifies);
    EXPECT_FALSE(table.method.empty());
}

/// A drain of so many readings, and what is worked out of it.
struct LongRun {
    RecordBuilder builder;
    RunAnalysis analysis;

    explicit LongRun(int readings) {
        for (int r = 0; r < readings; ++r) builder.at(r / 60.0, 100 - 99.0 * r / readings, r);
        analysis = analyse_run(builder.record());
    }
    /// How often all of it is gone through, page by page, while `write` writes what it says.
    template <class Write>
    double walks_for(const Write& write) {
        const RunRecord& record = builder.record();
        const std::array places{std::as_bytes(std::span(record.readings)), std::as_bytes(std::span(analysis.energy.track.points)),
                                std::as_bytes(std::span(analysis.energy.points)), std::as_bytes(std::span(analysis.energy.intervals)),
                                std::as_bytes(std::span(analysis.gauge.errors))};
        const PageWalk walk(places);
        write(record, analysis, [](std::string_view) { return true; });
        EXPECT_GT(walk.moves(), 20);
        return static_cast<double>(walk.moves()) / static_cast<double>(walk.pages());
    }
};

TEST(ReadingsTable, a_long_run_is_gone_through_as_few_times_as_a_short_one) {
    LongRun few(1000), many(4000);
    const auto compare = [&](const std::string& what, const auto& write) {
        const double once = few.walks_for(write);
        EXPECT_LT(once, 20) << what;
        EXPECT_LT(many.walks_for(write), 1.3 * once) << what << ": to search it for each reading would be to go through it four times as often";
    };
    for (const RunTable which : {RunTable::readings, RunTable::intervals})
        for (const std::string& name : table_format_names()) {
            if (name == "xlsx") continue; // a file, from the same rows
            compare(name, [&](const RunRecord& record, const RunAnalysis& analysis, const TextTaker& take) {
                EXPECT_TRUE(table_text(table_of_run(which, record, analysis), table_format_from(name).value(), take));
            });
        }
    compare("sheet", [](const RunRecord& record, const RunAnalysis&, const TextTaker& take) { take(write_run_sheet(record)); });
}

TEST(ReadingsTable, powers_have_columns_of_their_own_only_where_they_were_noted) {
    RecordBuilder run;
    run.at(0, 100, 0).at(1, 90, 100);
    run.record().readings[1].values.display_w = 64;
    const Table table = readings_table(run.record(), analyse_run(run.record()));
    ASSERT_EQ(table.columns.size(), 9u);
    EXPECT_EQ(table.columns[8].key, "display_w");
    EXPECT_EQ(std::get<Quantity>(table.rows[1][8]).value, 64);
}

TEST(ReadingsTable, the_register_of_a_second_meter_has_a_column_of_its_own_only_where_it_was_read) {
    RecordBuilder one, two;
    one.at(0, 100, 0).at(1, 90, 100);
    two.at(0, 100, 0).at(1, 90, 100).at(2, 80, 200);
    two.record().readings[1].values.second_register_wh = 4321;
    EXPECT_EQ(readings_table(one.record(), analyse_run(one.record())).columns.size(), 8u);
    const Table table = readings_table(two.record(), analyse_run(two.record()));
    ASSERT_EQ(table.columns.size(), 9u);
    EXPECT_EQ(table.columns[8].key, "second_register_wh");
    EXPECT_EQ(text_in(table, 0, 8), "");
    EXPECT_EQ(std::get<Quantity>(table.rows[1][8]).value, 4321);
    const RunAnalysis analysis_one = analyse_run(one.record()), analysis_two = analyse_run(two.record());
    const Table both = collected(table_of_runs(RunTable::readings, {&one.record(), &two.record()}, {&analysis_one, &analysis_two}));
    EXPECT_EQ(both.columns.size(), 12u);
    EXPECT_EQ(std::get<Quantity>(both.rows[3][11]).value, 4321) << "beside the run that notes no second register";
}

TEST(TableOfRuns, every_row_says_which_run_it_is_of_and_remarks_do_too) {
    const AnalysedScenario& scenario = analysed_scenario();
    const Table table = scenario_table_of_runs(RunTable::readings);
    std::size_t row = 0;
    for (std::size_t r = 0; r < 3; ++r) {
        const Table one = readings_table(scenario.records[r], scenario.analyses[r]);
        for (const auto& cells : one.rows) {
            EXPECT_EQ(text_in(table, row, 0), scenario.records[r].unit.name);
            EXPECT_EQ(std::get<Quantity>(table.rows[row][2]).value, scenario.records[r].number);
            EXPECT_EQ(text_in(table, row, 3), std::get<Message>(cells[0]));
            ++row;
        }
    }
    EXPECT_EQ(row, table.rows.size());
    EXPECT_EQ(table.title, "Readings of 3 runs");
    for (const Message& remark : table.remarks) EXPECT_NE(remark.text().find(", run "), std::string::npos) << remark;
}

TEST(TableOfRuns, no_runs_give_the_columns_without_rows) {
    const StreamedTable table = table_of_runs(RunTable::intervals, {}, {});
    EXPECT_TRUE(collected(table).rows.empty());
    EXPECT_EQ(table.columns.size(), 12u);
    EXPECT_EQ(table_text(table, TableFormat::csv).find("unit,maker,run,from,to,hours"), 0u);
}

TEST(ReadingsXlsx, local_times_are_dates_beside_the_exact_text) {
    RecordBuilder builder;
    builder.at(0, 100, 0).at(6, 50, 500);
    builder.record().run.time_zone = "Europe/Berlin";
    const TempFolder folder;
    ASSERT_TRUE(write_table(readings_table(builder.record(), analyse_run(builder.record())), TableFormat::xlsx, folder / "t.xlsx").ok());
    const auto cells = xlsx_cells(folder / "t.xlsx", 1);
    EXPECT_EQ(cells.at("A2").value, "2027-05-11T04:00:00+02:00");
    EXPECT_EQ(cells.at("B1").value, "time, local");
    EXPECT_FALSE(cells.at("B2").is_text);
    // Serial dates count days from 1899-12-30 (ECMA-376 part 1, 18.17.4): 2027-05-11 is 46518, and 04:00 is a sixth of a day.
    EXPECT_NEAR(std::stod(cells.at("B2").value), 46518 + 4.0 / 24, 1e-9);
    EXPECT_NEAR(std::stod(cells.at("B3").value), 46518 + 10.0 / 24, 1e-9);
    EXPECT_NE(xlsx_member(folder / "t.xlsx", "xl/styles.xml").find("yyyy-mm-dd hh:mm:ss"), std::string::npos);
}

} // namespace
} // namespace ullage::test
