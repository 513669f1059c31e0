// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as people keep them (tests/corpus/tables, made by make_tables.py there), each held against its figures written out by hand.
#include "core/foreign_tables/understood.h"

namespace ullage::test {
namespace {

using Lines = std::vector<std::string>;
using Questions = std::vector<TableQuestion>;

TEST(PeopleTables, german_text_with_a_day_where_it_changes_and_a_line_of_totals) {
    const TableReading reading = understood("kitchen.csv");
    EXPECT_EQ(asked(reading), Questions());
    EXPECT_EQ(reading.refusal, std::nullopt);
    ASSERT_EQ(reading.runs.size(), 1u);
    EXPECT_EQ(reading_lines(reading.runs[0]),
              (Lines{"2025-05-14T18:00+02:00 100 % 12310 Wh `voll`", "2025-05-14T20:30+02:00 71 % 12625 Wh",
                     "2025-05-14T23:15+02:00 40 % 12970 Wh `K\u00FChlschrank l\u00E4uft`", "2025-05-15T00:45+02:00 22 % 13155 Wh",
                     "2025-05-15T02:10+02:00 5 % 13330 Wh", "2025-05-15T02:28+02:00 0 % 13365 Wh cut-off `abgeschaltet`"}));
    EXPECT_EQ(reading.runs[0].unit_name, "Osk 1200");
    EXPECT_EQ(reading.preface.at("rated_wh"), "1200");
    EXPECT_TRUE(reading.runs[0].cut_off);
    EXPECT_TRUE(reading.runs[0].full);
    ASSERT_EQ(reading.not_taken.size(), 1u);
    EXPECT_EQ(reading.not_taken[0].row, 12);
    EXPECT_EQ(reading.not_taken[0].reason, "`Summe` is a line of totals");
}

TEST(PeopleTables, a_workbook_with_two_runs_side_by_side) {
    const TableReading reading = understood("side-by-side.xlsx");
    EXPECT_EQ(asked(reading), Questions());
    ASSERT_EQ(reading.runs.size(), 2u);
    EXPECT_EQ(reading.runs[0].title, "Tarn 600, 60 W lamp");
    EXPECT_EQ(reading_lines(reading.runs[0]),
              (Lines{"2025-06-01T09:00+02:00 100 % 0 Wh `started, full`", "2025-06-01T11:30+02:00 74 % 145 Wh", "2025-06-01T14:30+02:00 41 % 320 Wh",
                     "2025-06-01T17:25+02:00 7 % 486 Wh", "2025-06-01T18:00+02:00 0 % 514 Wh cut-off `off`"}));
    EXPECT_EQ(reading.runs[1].title, "Tarn 600, 120 W heater");
    EXPECT_EQ(reading_lines(reading.runs[1]), (Lines{"2025-06-03T08:30+02:00 100 % 514 Wh", "2025-06-03T09:30+02:00 77 % 632 Wh",
                                                     "2025-06-03T11:00+02:00 43 % 806 Wh", "2025-06-03T12:35+02:00 6 % 985 Wh"}));
    EXPECT_FALSE(reading.runs[1].cut_off);
}

TEST(PeopleTables, runs_below_one_another_whose_times_count_from_the_start_in_their_title) {
    const TableReading reading = understood("weekend.ods");
    EXPECT_EQ(asked(reading), Questions());
    ASSERT_EQ(reading.runs.size(), 2u);
    EXPECT_EQ(reading_lines(reading.runs[0]),
              (Lines{"2025-07-03T10:00+02:00 100 % 0 Wh shown 210 W", "2025-07-03T12:30+02:00 69 % 431.5 Wh shown 205 W load changed",
                     "2025-07-03T15:15+02:00 33 % 905 Wh shown 190 W"}));
    EXPECT_EQ(reading.runs[1].title, "Run 2, 2025-07-04 08:00, fridge alone");
    EXPECT_EQ(reading_lines(reading.runs[1]),
              (Lines{"2025-07-04T08:00+02:00 100 % 905 Wh shown 62 W", "2025-07-04T22:00+02:00 35 % 1690 Wh shown 60 W",
                     "2025-07-05T10:10+02:00 0 % 2131 Wh cut-off `went off, display dark`"}));
}

TEST(PeopleTables, cells_of_a_page_with_the_month_first_and_units_in_the_cells) {
    const TableReading reading = understood("shared-page.html");
    EXPECT_EQ(asked(reading), Questions());
    ASSERT_EQ(reading.runs.size(), 1u);
    EXPECT_EQ(reading_lines(reading.runs[0]),
              (Lines{"2025-05-14T18:00+02:00 100 % 0 Wh", "2025-05-14T20:30+02:00 69 % 430 Wh `a little warm`",
                     "2025-05-14T23:55+02:00 31 % 880 Wh `~ 31 %`", "2025-05-15T00:40+02:00 22 % 970 Wh `still going`",
                     "2025-05-15T02:05+02:00 1120 Wh cut-off `?; shut down by itself`"}));
    ASSERT_EQ(reading.not_taken.size(), 1u);
    EXPECT_TRUE(reading.not_taken[0].in_part);
    EXPECT_EQ(reading.not_taken[0].reason, "the gauge `?` is no number; kept as a remark");
}

TEST(PeopleTables, rows_of_several_units_and_runs_mixed_with_a_meter_that_was_reset) {
    const TableReading reading = understood("garage.txt");
    EXPECT_EQ(asked(reading), Questions());
    ASSERT_EQ(reading.runs.size(), 3u);
    EXPECT_EQ(reading.runs[0].unit_name, "Brill 2000");
    EXPECT_EQ(reading_lines(reading.runs[0]),
              (Lines{"2025-06-05T07:00+02:00 100 % 118 Wh 205 W", "2025-06-05T09:30+02:00 76 % 632 Wh 206 W `door left open`",
                     "2025-06-05T11:00+02:00 60 % 4 Wh 204 W meter zeroed `meter reset`", "2025-06-05T16:20+02:00 8 % 1093 Wh 203 W",
                     "2025-06-05T17:01+02:00 0 % 1224 Wh cut-off `cut off`"}));
    EXPECT_EQ(reading.runs[1].unit_name, "Quay 500");
    EXPECT_EQ(reading_lines(reading.runs[1]), (Lines{"2025-06-05T09:40+02:00 98 % 0 Wh 51 W", "2025-06-05T17:05+02:00 19 % 371 Wh 50 W"}));
    EXPECT_EQ(reading.runs[2].title, "B");
    ASSERT_EQ(reading.not_taken.size(), 1u);
    EXPECT_EQ(reading.not_taken[0].reason, "the time `later` cannot be read");
}

TEST(PeopleTables, days_that_count_from_1904) {
    const TableReading reading = understood("from-1904.xlsx");
    ASSERT_EQ(reading.runs.size(), 1u);
    EXPECT_EQ(reading_lines(reading.runs[0]),
              (Lines{"2025-05-14T18:00+02:00 100 % 0 Wh", "2025-05-14T20:15+02:00 70 % 310 Wh", "2025-05-14T23:59+02:00 25 % 777 Wh"}));
}

TEST(PeopleTables, every_sheet_is_offered_by_name) {
    const Result<TableBook> book = read_table_book(table_bytes("side-by-side.xlsx"), "side-by-side.xlsx");
    ASSERT_TRUE(book.ok());
    ASSERT_EQ(book.value().sheets.size(), 2u);
    EXPECT_EQ(book.value().sheets[0].name, "Runs");
    EXPECT_EQ(book.value().sheets[1].name, "Prices");
}

TEST(PeopleTables, become_records_that_keep_what_nobody_said) {
    const TableReading reading = understood("side-by-side.xlsx");
    TableFacts facts;
    facts.unit.name = "Tarn 600";
    facts.zone = table_zone;
    const RunRecord record = record_of_table(reading.runs.at(1), facts);
    EXPECT_EQ(record.run.end, RunEnd::stopped_by_tester);
    ASSERT_EQ(record.run.extra.size(), 1u);
    EXPECT_EQ(record.run.extra[0].first, "ended_not_known");
    EXPECT_EQ(record.readings.size(), 4u);
    EXPECT_FALSE(record.meter.has_value());
    facts.end = RunEnd::cut_off_seen;
    EXPECT_TRUE(record_of_table(reading.runs.at(0), facts).run.extra.empty());
}

} // namespace
} // namespace ullage::test
