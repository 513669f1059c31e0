// SPDX-License-Identifier: GPL-3.0-or-later
// What a table leaves open is asked, and each answer settles it.
#include "core/foreign_tables/understood.h"

namespace ullage::test {
namespace {

using Lines = std::vector<std::string>;
using Questions = std::vector<TableQuestion>;

TEST(OpenTables, a_date_that_can_be_read_in_two_ways_is_asked_for) {
    EXPECT_EQ(asked(understood("open-order.csv")), Questions{TableQuestion::date_order});
    TableAnswers answers;
    answers.date_order = DateOrder::month_first;
    const TableReading reading = understood("open-order.csv", answers);
    EXPECT_EQ(asked(reading), Questions());
    EXPECT_EQ(reading_lines(reading.runs.at(0)).front(), "2025-05-06T18:00+02:00 100 % 0 Wh");
}

TEST(OpenTables, a_register_without_unit_is_asked_for) {
    EXPECT_EQ(asked(understood("open-unit.csv")), Questions{TableQuestion::register_unit});
    TableAnswers answers;
    answers.register_unit = "kWh";
    EXPECT_EQ(reading_lines(understood("open-unit.csv", answers).runs.at(0)).back(), "2025-05-14T20:00+02:00 70 % 12620 Wh");
    answers = {};
    answers.columns = {{2, TableRole::energy, "kWh"}};
    EXPECT_EQ(asked(understood("open-unit.csv", answers)), Questions());
}

TEST(OpenTables, figures_that_begin_anew_behind_an_empty_row_are_asked_for) {
    EXPECT_EQ(asked(understood("open-runs.csv")), Questions{TableQuestion::runs});
    TableAnswers answers;
    answers.gaps_part_runs = true;
    EXPECT_EQ(understood("open-runs.csv", answers).runs.size(), 2u);
    answers.gaps_part_runs = false;
    EXPECT_EQ(understood("open-runs.csv", answers).runs.size(), 1u);
}

TEST(OpenTables, the_start_of_times_that_count_is_asked_for) {
    EXPECT_EQ(asked(understood("open-start.csv")), Questions{TableQuestion::start});
    TableAnswers answers;
    answers.starts = {"2025-05-14 18:00"};
    EXPECT_EQ(reading_lines(understood("open-start.csv", answers).runs.at(0)),
              (Lines{"2025-05-14T18:00+02:00 100 % 0 Wh", "2025-05-14T19:30+02:00 80 % 200 Wh", "2025-05-14T21:00+02:00 60 % 410 Wh"}));
}

TEST(OpenTables, the_day_of_times_without_a_date_is_asked_for) {
    const std::string text = "time,gauge %\n22:00,100\n23:30,90\n00:30,80\n";
    EXPECT_EQ(asked(understood_text(text)), Questions{TableQuestion::start});
    TableAnswers answers;
    answers.starts = {"2025-05-14"};
    EXPECT_EQ(reading_lines(understood_text(text, answers).runs.at(0)).back(), "2025-05-15T00:30+02:00 80 %");
}

TEST(OpenTables, the_register_of_a_second_meter_is_told_from_the_first_by_its_head_or_by_an_answer) {
    const std::string rows = "2025-05-14 18:00,100,500,0.1\n2025-05-14 20:00,80,700,0.302\n";
    const Lines both{"2025-05-14T18:00+02:00 100 % 500 Wh second 100 Wh", "2025-05-14T20:00+02:00 80 % 700 Wh second 302 Wh"};
    const TableReading named = understood_text("time,gauge %,meter Wh,second meter kWh\n" + rows);
    EXPECT_EQ(asked(named), Questions());
    EXPECT_EQ(reading_lines(named.runs.at(0)), both);
    EXPECT_EQ(asked(understood_text("time,gauge %,plug Wh,bench meter kWh\n" + rows)), Questions{TableQuestion::columns}) << "never guessed";
    TableAnswers answers;
    answers.columns = {{3, TableRole::second_energy, {}}};
    EXPECT_EQ(reading_lines(understood_text("time,gauge %,plug Wh,bench meter kWh\n" + rows, answers).runs.at(0)), both);
}

TEST(OpenTables, two_columns_of_one_role_are_asked_for_and_naming_one_settles_it) {
    EXPECT_EQ(asked(understood("twice.csv")), Questions{TableQuestion::columns});
    TableAnswers answers;
    answers.columns = {{3, TableRole::energy, {}}};
    const TableReading reading = understood("twice.csv", answers);
    EXPECT_EQ(asked(reading), Questions());
    EXPECT_EQ(reading_lines(reading.runs.at(0)).front(), "2025-05-14T18:00+02:00 100 % 5000 Wh");
}

TEST(OpenTables, a_number_that_can_be_read_in_two_ways_is_asked_for) {
    const std::string text = "time;gauge %;Wh\n2025-05-14 18:00;100;1.234\n2025-05-14 20:00;70;1.534\n";
    EXPECT_EQ(asked(understood_text(text)), Questions{TableQuestion::decimal_sign});
    TableAnswers answers;
    answers.decimal = ',';
    EXPECT_EQ(reading_lines(understood_text(text, answers).runs.at(0)).front(), "2025-05-14T18:00+02:00 100 % 1234 Wh");
    answers.decimal = '.';
    EXPECT_EQ(reading_lines(understood_text(text, answers).runs.at(0)).front(), "2025-05-14T18:00+02:00 100 % 1.234 Wh");
}

TEST(OpenTables, a_gauge_between_0_and_1_is_asked_for) {
    const std::string text = "time,gauge,Wh\n2025-05-14 18:00,1,0\n2025-05-14 20:00,0.69,310\n2025-05-14 21:00,0.07,620\n";
    EXPECT_EQ(asked(understood_text(text)), Questions{TableQuestion::gauge_share});
    TableAnswers answers;
    answers.gauge_is_share = true;
    EXPECT_EQ(reading_lines(understood_text(text, answers).runs.at(0)).back(), "2025-05-14T21:00+02:00 7 % 620 Wh");
    answers.gauge_is_share = false;
    EXPECT_EQ(reading_lines(understood_text(text, answers).runs.at(0)).back(), "2025-05-14T21:00+02:00 0.07 % 620 Wh");
}

TEST(OpenTables, the_unit_of_times_that_count_is_asked_for) {
    const std::string text = "elapsed,gauge %\n0,100\n90,80\n";
    TableAnswers answers;
    answers.starts = {"2025-05-14 18:00"};
    EXPECT_EQ(asked(understood_text(text, answers)), Questions{TableQuestion::elapsed_unit});
    answers.elapsed_unit = "min";
    EXPECT_EQ(reading_lines(understood_text(text, answers).runs.at(0)).back(), "2025-05-14T19:30+02:00 80 %");
}

TEST(OpenTables, what_times_from_0_00_mean_is_asked_for) {
    const std::string text = "time,gauge %\n0:00,100\n2:30,80\n";
    TableAnswers answers;
    answers.starts = {"2025-05-14 18:00"};
    EXPECT_EQ(asked(understood_text(text, answers)), Questions{TableQuestion::clock_meaning});
    answers.times_are_elapsed = true;
    EXPECT_EQ(reading_lines(understood_text(text, answers).runs.at(0)).back(), "2025-05-14T20:30+02:00 80 %");
}

TEST(OpenTables, the_year_of_dates_without_one_is_asked_for) {
    const std::string text = "Mon 12 May\t\t\nat\tgauge %\tWh\n18:00\t100\t0\nTue 13 May\t\t\n6:15 am\t50\t510\n";
    EXPECT_EQ(asked(understood_text(text)), Questions{TableQuestion::year});
    TableAnswers answers;
    answers.year = 2025;
    EXPECT_EQ(reading_lines(understood_text(text, answers).runs.at(0)),
              (Lines{"2025-05-12T18:00+02:00 100 % 0 Wh", "2025-05-13T06:15+02:00 50 % 510 Wh"}));
}

TEST(OpenTables, a_table_without_heads_is_told_by_its_units_and_the_rest_is_asked_for) {
    const TableReading reading = understood_text("2025-05-14 18:00;100 %;0 Wh;begun\n2025-05-14 20:00;70 %;0.31 kWh;\n");
    EXPECT_EQ(asked(reading), Questions());
    EXPECT_EQ(reading_lines(reading.runs.at(0)), (Lines{"2025-05-14T18:00+02:00 100 % 0 Wh `begun`", "2025-05-14T20:00+02:00 70 % 310 Wh"}));
    const TableReading bare = understood_text("2025-05-14 18:00;100;0\n2025-05-14 20:00;70;310\n");
    EXPECT_EQ(asked(bare), Questions{TableQuestion::columns});
}

TEST(OpenTables, a_letter_is_no_table) { EXPECT_EQ(asked(understood("no-table.txt")), (Questions{TableQuestion::columns, TableQuestion::columns})); }

TEST(OpenTables, a_head_that_is_repeated_parts_no_run) {
    const TableReading reading = understood("two-heads.csv");
    EXPECT_EQ(asked(reading), Questions());
    ASSERT_EQ(reading.runs.size(), 1u);
    EXPECT_EQ(reading.runs[0].readings.size(), 3u);
    EXPECT_EQ(texts(reading.notes), std::vector<std::string>{"another head stands in row 4"});
}

TEST(OpenTables, answers_go_through_text_and_back) {
    TableAnswers answers;
    answers.columns = {{2, TableRole::energy, "kWh"}, {4, TableRole::unused, {}}};
    answers.date_order = DateOrder::month_first;
    answers.decimal = ',';
    answers.register_unit = "Wh";
    answers.elapsed_unit = "min";
    answers.gauge_is_share = true;
    answers.times_are_elapsed = false;
    answers.gaps_part_runs = true;
    EXPECT_EQ(table_answers_from(table_answers_text(answers)), answers);
    EXPECT_EQ(table_answers_from("nonsense column=x column=0:gauge column=1:what"), TableAnswers());
}

TEST(OpenTables, two_blocks_that_share_one_column_of_times) {
    const TableReading reading = understood_text("time,A gauge %,A Wh,B gauge %,B Wh\n2025-05-14 18:00,100,0,98,5\n2025-05-14 20:00,70,310,81,105\n");
    EXPECT_EQ(asked(reading), Questions());
    ASSERT_EQ(reading.runs.size(), 2u);
    EXPECT_EQ(reading_lines(reading.runs[1]), (Lines{"2025-05-14T18:00+02:00 98 % 5 Wh", "2025-05-14T20:00+02:00 81 % 105 Wh"}));
}

} // namespace
} // namespace ullage::test
