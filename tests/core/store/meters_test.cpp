// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"
#include "store/inside/logbook_impl.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <limits>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

struct Meters : testing::Test {
    TempFolder folder;
    FakeClock clock;
    fs::path path = folder / "a.ullage";
    Logbook logbook = take(Logbook::create(path, clock));

    void reopen() {
        logbook = take(Logbook::in_memory(clock)); // closes the file
        logbook = take(Logbook::open(path, OpenMode::record, clock));
    }
    Meter other() {
        Meter meter = sample_meter();
        meter.name = "wall meter";
        return meter;
    }
};

TEST_F(Meters, a_change_adds_a_version_with_its_time_and_reason_and_keeps_the_earlier_ones) {
    const Meter first = take(logbook.add(sample_meter()));
    Meter second = first;
    second.certificate = {"K-2029/007", "2029-03-01", "Hillfoot Measures", ""};
    second.points = {{150, 1.004, 0.2, 2.0}};
    clock.advance_hours(2);
    take(logbook.update(second, "calibrated anew"));
    reopen();
    EXPECT_EQ(take(logbook.meters()), std::vector{second});
    const std::vector<MeterVersion> history = take(logbook.meter_history(first.uuid));
    ASSERT_EQ(history.size(), 2u);
    EXPECT_EQ(history[0].version, 1);
    EXPECT_EQ(history[0].meter, first);
    EXPECT_EQ(history[0].reason, "");
    EXPECT_EQ(history[1].version, 2);
    EXPECT_EQ(history[1].meter, second);
    EXPECT_EQ(history[1].reason, "calibrated anew");
    EXPECT_EQ(history[1].written_ms - history[0].written_ms, 2 * 3'600'000);
}

TEST_F(Meters, what_changes_nothing_adds_no_version) {
    const Meter meter = take(logbook.add(sample_meter()));
    take(logbook.update(meter, "looked at"));
    EXPECT_EQ(take(logbook.meter_history(meter.uuid)).size(), 1u);
    EXPECT_EQ(failure_of(logbook.meter_history(MeterId("x"))), Failure::not_found);
}

TEST_F(Meters, no_version_and_no_point_can_be_changed_or_removed_behind_the_program) {
    take(logbook.add(sample_meter()));
    logbook = take(Logbook::in_memory(clock));
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
    for (const char* change : {"UPDATE meter_versions SET correction = 2", "DELETE FROM meter_versions", "UPDATE meter_points SET correction = 2",
                               "DELETE FROM meter_points", "INSERT INTO meter_points VALUES (1, 1, 9, 5, 1, NULL, NULL)",
                               "INSERT INTO meter_versions SELECT meter_id, 7, name, step_wh, limit_percent, span_wh, correction, load_part_percent, "
                               "'', '', '', '', '', '', NULL, NULL, NULL, remark, 1, '' FROM meter_versions"})
        EXPECT_THROW(database.exec(change), SQLite::Exception) << change;
}

TEST_F(Meters, a_file_whose_meter_has_no_data_or_a_wrong_point_is_damaged) {
    take(logbook.add(sample_meter()));
    logbook = take(Logbook::in_memory(clock));
    for (const char* change :
         {"INSERT INTO meter_points VALUES (1, 1, 4, 5, 1, NULL, NULL)", "INSERT INTO meters (uuid, created_ms) VALUES ('u', 1)"}) {
        const fs::path spoiled = folder / "spoiled.ullage";
        fs::copy_file(path, spoiled, fs::copy_options::overwrite_existing);
        SQLite::Database(spoiled.string(), SQLite::OPEN_READWRITE).exec(change);
        EXPECT_EQ(failure_of(Logbook::open(spoiled, OpenMode::read_only, clock)), Failure::damaged) << change;
    }
}

TEST_F(Meters, a_run_with_two_meters_keeps_both_and_what_both_registers_said) {
    const Unit unit = take(logbook.add(sample_unit()));
    const Meter first = take(logbook.add(sample_meter())), second = take(logbook.add(other()));
    ullage::Run run = sample_run(unit.uuid, first.uuid);
    run.second_meter_uuid = second.uuid;
    run = take(logbook.add(run));
    take(logbook.record(run.uuid, sample_values()));
    reopen();
    const RunRecord record = take(logbook.run_record(run.uuid));
    EXPECT_EQ(record.run, run);
    EXPECT_EQ(record.meter, first);
    EXPECT_EQ(record.second_meter, second);
    EXPECT_EQ(record.readings.at(0).values, sample_values());
    EXPECT_EQ(failure_of(logbook.set_meter_withdrawn(second.uuid, true)), Failure::refused) << "a run names it";
    run.second_meter_uuid = MeterId("no meter");
    EXPECT_EQ(failure_of(logbook.update(run)), Failure::not_found);
}

TEST_F(Meters, a_record_with_two_meters_brings_both_in_and_finds_them_again) {
    RunRecord record;
    record.unit = sample_unit();
    record.meter = sample_meter();
    record.second_meter = other();
    Reading reading;
    reading.values = sample_values();
    record.readings = {reading};
    const RunRecord first = take(logbook.import(record));
    const RunRecord second = take(logbook.import(record));
    EXPECT_EQ(take(logbook.meters()).size(), 2u);
    EXPECT_EQ(second.run.second_meter_uuid, first.second_meter->uuid);
    record.second_meter->certificate.number = "another";
    EXPECT_EQ(failure_of(logbook.import(record)), Failure::refused) << "the logbook knows this meter otherwise";
    record.second_meter = record.meter;
    EXPECT_EQ(failure_of(logbook.import(record)), Failure::bad_input) << "one meter twice";
}

TEST_F(Meters, sets_of_columns_are_kept_until_they_are_cleared_and_an_empty_one_is_refused) {
    EXPECT_TRUE(take(logbook.column_sets()).empty());
    take(logbook.set_column_set("", "unit,rated_wh"));
    take(logbook.set_column_set("bench", "unit,meter"));
    take(logbook.set_column_set("bench", "unit"));
    EXPECT_EQ(take(logbook.column_sets()), (std::map<std::string, std::string>{{"", "unit,rated_wh"}, {"bench", "unit"}}));
    EXPECT_FALSE(logbook.set_column_set("bench", ""));
    EXPECT_FALSE(logbook.set_column_set(std::string(65, 'x'), "unit"));
    take(logbook.clear_column_set("bench"));
    take(logbook.clear_column_set("never there"));
    EXPECT_EQ(take(logbook.column_sets()).size(), 1u);
}

TEST_F(Meters, options_of_the_method_are_kept_until_they_are_cleared) {
    EXPECT_TRUE(take(logbook.method_settings()).empty());
    take(logbook.set_method_setting("repeatability_percent", 0.7));
    take(logbook.set_method_setting("most_of_label", 1.2));
    take(logbook.set_method_setting("repeatability_percent", 0.8));
    reopen();
    EXPECT_EQ(take(logbook.method_settings()), (std::map<std::string, double>{{"most_of_label", 1.2}, {"repeatability_percent", 0.8}}));
    take(logbook.clear_method_setting("most_of_label"));
    take(logbook.clear_method_setting("never set"));
    EXPECT_EQ(take(logbook.method_settings()).size(), 1u);
    EXPECT_EQ(failure_of(logbook.set_method_setting("", 1)), Failure::bad_input);
    EXPECT_EQ(failure_of(logbook.set_method_setting("x", std::numeric_limits<double>::quiet_NaN())), Failure::bad_input);
}

TEST_F(Meters, the_publishers_details_are_kept_and_what_is_emptied_is_gone) {
    EXPECT_EQ(take(logbook.publisher()), Publisher());
    take(logbook.set_publisher({"The Lantern", "Units on tour", "Tested on the road.", "CC BY 4.0"}));
    take(logbook.set_publisher({"The Lantern", "", "Tested on the road, in May.", "CC BY 4.0"}));
    reopen();
    EXPECT_EQ(take(logbook.publisher()), (Publisher{"The Lantern", "", "Tested on the road, in May.", "CC BY 4.0"}));
    EXPECT_EQ(failure_of(logbook.set_publisher({std::string(501, 'x'), "", "", ""})), Failure::bad_input);
}

} // namespace
} // namespace ullage
