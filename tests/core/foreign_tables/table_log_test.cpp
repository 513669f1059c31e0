// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/table_log.h"

#include "run_analysis/run_analysis.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

constexpr UtcMs begin_ms = 1'710'317'600'000;

/// A drain of 1000 Wh at 120 W, its rows so many seconds apart.
ForeignRun rows_each(int seconds, std::size_t rows) {
    ForeignRun run;
    for (std::size_t i = 0; i < rows; ++i) {
        ReadingValues values;
        values.time_ms = begin_ms + static_cast<UtcMs>(i) * seconds * 1000;
        values.gauge_percent = 100 - static_cast<double>(100 * i / rows);
        values.register_wh = 120.0 * static_cast<double>(i) * seconds / 3600;
        values.meter_w = 120;
        values.display_w = 115;
        run.readings.push_back(values);
    }
    run.readings.back().mark = MarkKind::cut_off;
    run.readings[rows / 2].remark = "fan on";
    run.cut_off = true;
    return run;
}

TableFacts stated() {
    TableFacts facts;
    facts.unit.name = "Specimen";
    facts.unit.rated_energy_wh = 1100;
    facts.meter = Meter{{}, "Meter", 1.0, 1.0, std::nullopt, 1.0, {}};
    facts.end = RunEnd::cut_off_seen;
    facts.started_full = true;
    return facts;
}

TEST(TableLog, a_thousand_rows_close_together_are_a_devices_and_few_or_far_apart_are_a_persons) {
    EXPECT_TRUE(written_by_device(rows_each(30, 1000)));
    EXPECT_FALSE(written_by_device(rows_each(30, 999)));
    EXPECT_FALSE(written_by_device(rows_each(600, 1000))) << "years of notes in one table";
    ForeignRun two_meters = rows_each(30, 1000);
    two_meters.readings[5].second_register_wh = 1;
    EXPECT_FALSE(written_by_device(two_meters)) << "a log has one register";
}

TEST(TableLog, rows_become_samples_and_what_a_person_wrote_stays_a_reading) {
    ForeignRun rows = rows_each(30, 1000);
    rows.readings[10].time_ms = rows.readings[9].time_ms;
    const TableRun run = run_of_table(rows, stated(), true);
    EXPECT_EQ(run.log.size(), 999u);
    ASSERT_EQ(run.record.readings.size(), 4u) << "first, the second of one moment, the remark, the end";
    EXPECT_EQ(run.record.readings[2].values.remark, "fan on");
    EXPECT_EQ(run.record.readings[3].values.mark, MarkKind::cut_off);
    EXPECT_EQ(run.log[1].register_wh, rows.readings[1].register_wh);
    EXPECT_EQ(run.log[1].power_w, 120);
    EXPECT_EQ(run.log[1].gauge_percent, rows.readings[1].gauge_percent);
    EXPECT_EQ(run.log[1].output_w, 115) << "what the unit says of its power is not the meter's";
    EXPECT_TRUE(run_of_table(rows, stated(), false).log.empty());
}

TEST(TableLog, the_energy_is_that_of_the_same_rows_as_readings) {
    const TempFolder folder;
    const FakeClock clock;
    auto logbook = Logbook::create(folder / "l.ullage", clock);
    ASSERT_TRUE(logbook);
    const ForeignRun rows = rows_each(30, 1000);
    const std::vector<TableRun> runs{run_of_table(rows, stated(), true), run_of_table(rows, stated(), false)};
    const auto imported = import_table_runs(logbook.value(), runs, "table.csv");
    ASSERT_TRUE(imported) << imported.error().sentence();
    const auto records = logbook.value().run_records();
    ASSERT_TRUE(records);
    ASSERT_EQ(records.value().size(), 2u);
    const RunAnalysis by_log = analyse_run(records.value()[0]), by_readings = analyse_run(records.value()[1]);
    EXPECT_EQ(records.value()[0].readings.size(), 3u);
    EXPECT_EQ(logbook.value().traces(imported.value()[0].run_uuid).value().front().samples, 1000);
    EXPECT_TRUE(logbook.value().traces(imported.value()[1].run_uuid).value().empty());
    EXPECT_NEAR(*by_log.energy.delivered_wh.value, *by_readings.energy.delivered_wh.value, 0.2);
    EXPECT_EQ(by_log.energy.delivered_wh.kind, Kind::measured);
    EXPECT_TRUE(by_log.energy.gauge_log.has_value()) << "the gauge is judged from every row";
}

TEST(TableLog, all_runs_and_logs_of_a_table_come_in_or_none) {
    const TempFolder folder;
    const FakeClock clock;
    auto logbook = Logbook::create(folder / "l.ullage", clock);
    ASSERT_TRUE(logbook);
    ForeignRun rows = rows_each(30, 1000);
    TableRun bad = run_of_table(rows, stated(), true);
    bad.log[500].power_w = 1e300;
    const std::vector<TableRun> runs{run_of_table(rows, stated(), true), bad};
    EXPECT_FALSE(import_table_runs(logbook.value(), runs, "table.csv"));
    EXPECT_TRUE(logbook.value().run_records().value().empty());
    EXPECT_TRUE(logbook.value().units().value().empty());
}

} // namespace
} // namespace ullage::test
