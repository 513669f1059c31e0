// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"

#include <algorithm>

namespace ullage {
namespace {

using namespace test;

RunRecord sheet() {
    RunRecord record;
    record.unit = sample_unit();
    record.meter = sample_meter();
    record.run = sample_run(UnitId(""));
    for (int i = 0; i < 3; ++i) {
        Reading reading;
        reading.sequence = i + 1;
        reading.values = sample_values(1000 * (3 - i));
        reading.values.remark = std::to_string(i);
        record.readings.push_back(reading);
    }
    sort_by_time(record.readings);
    return record;
}

struct Import : testing::Test {
    FakeClock clock;
    Logbook logbook = take(Logbook::in_memory(clock));
};

TEST_F(Import, an_imported_record_is_read_back_equal_with_uuids_given) {
    const RunRecord added = take(logbook.import(sheet()));
    const RunRecord stored = take(logbook.run_record(added.run.uuid));
    EXPECT_EQ(stored.unit, added.unit);
    EXPECT_EQ(stored.meter, added.meter);
    EXPECT_EQ(stored.run, added.run);
    EXPECT_EQ(stored.readings, added.readings);
    EXPECT_EQ(stored.number, added.number);
    RunRecord expected = sheet();
    ASSERT_EQ(added.readings.size(), expected.readings.size());
    for (std::size_t i = 0; i < expected.readings.size(); ++i) {
        EXPECT_EQ(added.readings[i].values, expected.readings[i].values);
        EXPECT_EQ(added.readings[i].sequence, expected.readings[i].sequence);
        EXPECT_EQ(added.readings[i].uuid.text().size(), 36u);
    }
    EXPECT_EQ(added.run.extra, expected.run.extra);
    EXPECT_EQ(added.run.created_ms, clock.now_ms());
}

TEST_F(Import, a_known_unit_and_meter_are_used_as_they_stand_when_the_sheet_agrees) {
    const Unit unit = take(logbook.add(sample_unit()));
    const Meter meter = take(logbook.add(sample_meter()));
    RunRecord record = sheet();
    record.unit.peak_output_w.reset(); // left unstated
    record.unit.currency.clear();
    record.unit.remark = "another remark";
    record.meter->correction = 1;
    const RunRecord added = take(logbook.import(record));
    EXPECT_EQ(added.unit, unit);
    EXPECT_EQ(added.meter, meter);
    EXPECT_EQ(added.run.unit_uuid, unit.uuid);
    EXPECT_EQ(added.run.meter_uuid, meter.uuid);
    EXPECT_EQ(take(logbook.units()).size(), 1u);
    EXPECT_EQ(take(logbook.meters()).size(), 1u);
    EXPECT_EQ(take(logbook.import(record)).number, 2);
}

TEST_F(Import, a_conflicting_claim_is_refused_with_the_difference_and_nothing_is_added) {
    take(logbook.add(sample_unit()));
    take(logbook.add(sample_meter()));
    RunRecord record = sheet();
    record.unit.rated_energy_wh = 1200;
    record.unit.mass_kg = 12;
    const auto refused = logbook.import(record);
    ASSERT_EQ(failure_of(refused), Failure::refused);
    EXPECT_EQ(refused.error().where, "unit Lantern 900");
    EXPECT_EQ(refused.error().what, "the rated energy is 1200 Wh here, but 1000.25 Wh in the logbook");

    record = sheet();
    record.meter->span_wh = 1000;
    EXPECT_EQ(failure_of(logbook.import(record)), Failure::refused);
    record = sheet();
    record.unit.currency = "CHF";
    EXPECT_EQ(failure_of(logbook.import(record)), Failure::refused);
    EXPECT_TRUE(take(logbook.runs()).empty());
}

TEST_F(Import, a_claim_that_the_logbook_does_not_state_is_not_lost_silently) {
    Unit unit = sample_unit();
    unit.price.reset();
    take(logbook.add(unit));
    const auto refused = logbook.import(sheet());
    ASSERT_EQ(failure_of(refused), Failure::refused);
    EXPECT_EQ(refused.error().what, "the price is 799.9 here, but not stated in the logbook");
}

TEST_F(Import, a_refusal_late_in_the_record_undoes_the_unit_and_meter_added_before) {
    const RunRecord first = take(logbook.import(sheet()));
    RunRecord record = sheet();
    record.unit.name = "Another";
    record.meter->name = "another meter";
    record.readings.back().uuid = first.readings.back().uuid;
    EXPECT_EQ(failure_of(logbook.import(record)), Failure::refused);
    EXPECT_EQ(take(logbook.units()).size(), 1u);
    EXPECT_EQ(take(logbook.meters()).size(), 1u);
    EXPECT_EQ(take(logbook.runs()).size(), 1u);
}

TEST_F(Import, runs_brought_in_together_come_in_all_or_none) {
    RunRecord second = sheet();
    second.readings.back().values.time_ms += 5000;
    RunRecord contradicting = second;
    contradicting.unit.rated_energy_wh = 5;
    const std::vector<RunRecord> refused{sheet(), contradicting};
    EXPECT_EQ(failure_of(logbook.import_together(refused)), Failure::refused);
    EXPECT_TRUE(take(logbook.units()).empty());
    EXPECT_TRUE(take(logbook.meters()).empty());
    EXPECT_TRUE(take(logbook.runs()).empty());
    // What the index of imports knew of the refused ones is forgotten with them.
    EXPECT_EQ(take(logbook.number_of(sheet())), std::nullopt);
    const std::vector<RunRecord> good{sheet(), second};
    const std::vector<ImportedRun> imported = take(logbook.import_together(good));
    ASSERT_EQ(imported.size(), 2u);
    EXPECT_EQ(imported[0].unit_uuid, imported[1].unit_uuid);
    EXPECT_EQ(take(logbook.run_records()).size(), 2u);
    EXPECT_EQ(take(logbook.number_of(second)), imported[1].number);
}

TEST_F(Import, the_same_run_is_not_imported_twice) {
    const RunRecord first = take(logbook.import(sheet()));
    EXPECT_EQ(failure_of(logbook.import(first)), Failure::refused);
    EXPECT_EQ(take(logbook.runs()).size(), 1u);
}

TEST_F(Import, units_of_one_name_by_two_makers_are_two_units) {
    take(logbook.import(sheet()));
    RunRecord record = sheet();
    record.unit.maker = "Copse & Daughters";
    record.unit.rated_energy_wh = 5;
    take(logbook.import(record));
    EXPECT_EQ(take(logbook.units()).size(), 2u);
}

TEST_F(Import, a_record_without_a_meter_and_without_readings_is_taken) {
    RunRecord record = sheet();
    record.meter.reset();
    record.readings.clear();
    const RunRecord added = take(logbook.import(record));
    EXPECT_FALSE(take(logbook.run_record(added.run.uuid)).meter);
}

} // namespace
} // namespace ullage
