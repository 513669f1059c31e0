// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"

#include <limits>

namespace ullage {
namespace {

using namespace test;

/// A unit or meter with nothing stated but its name.
template <class Thing>
Thing named(const std::string& name, const decltype(Thing::uuid)& uuid = {}) {
    Thing thing;
    thing.uuid = uuid;
    thing.name = name;
    return thing;
}

struct Records : testing::Test {
    TempFolder folder;
    FakeClock clock;
    Logbook logbook = take(Logbook::create(folder / "a.ullage", clock));

    void reopen() {
        { const Logbook closed = std::move(logbook); }
        logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    }
};

TEST_F(Records, every_part_of_a_unit_survives_closing_the_file) {
    const Unit unit = take(logbook.add(sample_unit()));
    Unit expected = sample_unit();
    expected.uuid = unit.uuid;
    EXPECT_EQ(unit.uuid.text().size(), 36u);
    EXPECT_EQ(unit, expected);
    reopen();
    EXPECT_EQ(take(logbook.units()), std::vector{expected});
}

TEST_F(Records, every_part_of_a_meter_survives_closing_the_file) {
    Meter expected = sample_meter();
    expected.uuid = take(logbook.add(sample_meter())).uuid;
    reopen();
    EXPECT_EQ(take(logbook.meters()), std::vector{expected});
}

TEST_F(Records, every_part_of_a_run_and_its_extra_keys_in_order_survive_closing_the_file) {
    const Unit unit = take(logbook.add(sample_unit()));
    const Meter meter = take(logbook.add(sample_meter()));
    ullage::Run expected = sample_run(unit.uuid, meter.uuid);
    expected.uuid = take(logbook.add(expected)).uuid;
    expected.created_ms = clock.now_ms();
    reopen();
    EXPECT_EQ(take(logbook.runs()), std::vector{expected});
}

TEST_F(Records, absent_parts_stay_absent) {
    Unit unit;
    unit.name = "Bare";
    unit = take(logbook.add(unit));
    Meter meter;
    meter.name = "bare meter";
    meter = take(logbook.add(meter));
    ullage::Run run;
    run.unit_uuid = unit.uuid;
    run = take(logbook.add(run));
    ReadingValues values;
    values.time_ms = -1;
    take(logbook.record(run.uuid, values));
    reopen();
    EXPECT_EQ(take(logbook.units()), std::vector{unit});
    EXPECT_EQ(take(logbook.meters()), std::vector{meter});
    EXPECT_EQ(take(logbook.runs()), std::vector{run});
    EXPECT_EQ(take(logbook.readings(run.uuid)).at(0).values, values);
}

TEST_F(Records, an_update_changes_every_part_and_keeps_the_time_of_creation) {
    Unit unit = take(logbook.add(sample_unit()));
    Meter meter = take(logbook.add(sample_meter()));
    ullage::Run run = take(logbook.add(sample_run(unit.uuid, meter.uuid)));
    unit = named<Unit>("Other", unit.uuid);
    meter = named<Meter>("other", meter.uuid);
    ullage::Run changed;
    changed.uuid = run.uuid;
    changed.unit_uuid = unit.uuid;
    changed.extra = {{"only", "one"}};
    clock.advance_hours(1);
    take(logbook.update(unit));
    take(logbook.update(meter));
    take(logbook.update(changed));
    reopen();
    changed.created_ms = run.created_ms;
    EXPECT_EQ(take(logbook.units()), std::vector{unit});
    EXPECT_EQ(take(logbook.meters()), std::vector{meter});
    EXPECT_EQ(take(logbook.runs()), std::vector{changed});
}

TEST_F(Records, an_unknown_uuid_is_not_found_by_any_call) {
    EXPECT_EQ(failure_of(logbook.update(sample_unit())), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.update(sample_meter())), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.update(sample_run(UnitId("no unit")))), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.add(sample_run(UnitId("no unit")))), Failure::not_found);
    const Unit unit = take(logbook.add(sample_unit()));
    EXPECT_EQ(failure_of(logbook.add(sample_run(unit.uuid, MeterId("no meter")))), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.set_unit_withdrawn(UnitId("x"), true)), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.set_meter_withdrawn(MeterId("x"), true)), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.set_run_withdrawn(RunId("x"), true)), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.run_record(RunId("x"))), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.run_records(UnitId("x"))), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.record(RunId("x"), sample_values())), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.readings(RunId("x"))), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.amend(ReadingId("x"), sample_values(), "")), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.set_withdrawn(ReadingId("x"), true, "")), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.history(ReadingId("x"))), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.keep_draft(RunId("x"), "a")), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.draft(RunId("x"))), Failure::not_found);
}

TEST_F(Records, a_record_of_a_known_uuid_is_not_added_twice) {
    const Unit unit = take(logbook.add(sample_unit()));
    const Meter meter = take(logbook.add(sample_meter()));
    const ullage::Run run = take(logbook.add(sample_run(unit.uuid)));
    EXPECT_EQ(failure_of(logbook.add(unit)), Failure::refused);
    EXPECT_EQ(failure_of(logbook.add(meter)), Failure::refused);
    EXPECT_EQ(failure_of(logbook.add(run)), Failure::refused);
    EXPECT_EQ(take(logbook.units()).size(), 1u);
}

TEST_F(Records, a_number_that_is_not_finite_is_refused_with_the_name_of_its_field) {
    Unit unit = sample_unit();
    unit.mass_kg = std::numeric_limits<double>::quiet_NaN();
    const auto refused = logbook.add(unit);
    ASSERT_EQ(failure_of(refused), Failure::bad_input);
    EXPECT_EQ(refused.error().where, "mass");
    const ullage::Run run = take(logbook.add(sample_run(take(logbook.add(sample_unit())).uuid)));
    ReadingValues values = sample_values();
    values.register_wh = std::numeric_limits<double>::infinity();
    EXPECT_EQ(failure_of(logbook.record(run.uuid, values)), Failure::bad_input);
    EXPECT_TRUE(take(logbook.readings(run.uuid)).empty());
}

TEST_F(Records, a_unit_or_meter_without_a_name_is_refused) {
    EXPECT_EQ(failure_of(logbook.add(Unit{})), Failure::bad_input);
    EXPECT_EQ(failure_of(logbook.add(Meter{})), Failure::bad_input);
}

TEST_F(Records, units_and_meters_come_in_order_of_name_whatever_the_case) {
    for (const char* name : {"beta", "Gamma", "Alpha"}) {
        take(logbook.add(named<Unit>(name)));
        take(logbook.add(named<Meter>(name)));
    }
    std::vector<std::string> units, meters;
    for (const Unit& unit : take(logbook.units())) units.push_back(unit.name);
    for (const Meter& meter : take(logbook.meters())) meters.push_back(meter.name);
    EXPECT_EQ(units, (std::vector<std::string>{"Alpha", "beta", "Gamma"}));
    EXPECT_EQ(meters, units);
}

TEST_F(Records, a_withdrawn_unit_hides_its_runs_and_comes_back_with_them) {
    const Unit unit = take(logbook.add(sample_unit()));
    const ullage::Run run = take(logbook.add(sample_run(unit.uuid)));
    take(logbook.set_unit_withdrawn(unit.uuid, true));
    EXPECT_TRUE(take(logbook.units()).empty());
    EXPECT_TRUE(take(logbook.runs()).empty());
    EXPECT_TRUE(take(logbook.run_records()).empty());
    take(logbook.set_unit_withdrawn(unit.uuid, false));
    EXPECT_EQ(take(logbook.units()), std::vector{unit});
    EXPECT_EQ(take(logbook.runs()), std::vector{run});
}

TEST_F(Records, a_withdrawn_run_leaves_the_lists_can_still_be_read_and_comes_back) {
    const Unit unit = take(logbook.add(sample_unit()));
    const ullage::Run run = take(logbook.add(sample_run(unit.uuid)));
    take(logbook.set_run_withdrawn(run.uuid, true));
    EXPECT_TRUE(take(logbook.runs()).empty());
    EXPECT_EQ(take(logbook.run_record(run.uuid)).run, run);
    take(logbook.set_run_withdrawn(run.uuid, false));
    EXPECT_EQ(take(logbook.runs()), std::vector{run});
}

TEST_F(Records, a_meter_that_a_run_names_cannot_be_withdrawn) {
    const Unit unit = take(logbook.add(sample_unit()));
    const Meter meter = take(logbook.add(sample_meter()));
    ullage::Run run = take(logbook.add(sample_run(unit.uuid, meter.uuid)));
    const auto refused = logbook.set_meter_withdrawn(meter.uuid, true);
    ASSERT_EQ(failure_of(refused), Failure::refused);
    EXPECT_EQ(refused.error().what, "the meter is named by 1 run");
    run.meter_uuid.reset();
    take(logbook.update(run));
    take(logbook.set_meter_withdrawn(meter.uuid, true));
    EXPECT_TRUE(take(logbook.meters()).empty());
    take(logbook.set_meter_withdrawn(meter.uuid, false));
    EXPECT_EQ(take(logbook.meters()), std::vector{meter});
}

TEST_F(Records, runs_come_by_unit_then_by_their_first_reading_and_are_numbered_so) {
    const UtcMs t = clock.now_ms();
    const Unit later_name = take(logbook.add(named<Unit>("Zinnia")));
    const Unit unit = take(logbook.add(named<Unit>("aster")));
    const auto run_of = [&](const Unit& owner, const char* load) {
        ullage::Run run;
        run.unit_uuid = owner.uuid;
        run.load = load;
        clock.advance_hours(1);
        return take(logbook.add(run));
    };
    const ullage::Run z = run_of(later_name, "z1");
    const ullage::Run third = run_of(unit, "third"), second = run_of(unit, "second"), first = run_of(unit, "first");
    const ullage::Run unread = run_of(unit, "unread");
    take(logbook.record(third.uuid, sample_values(t - 100)));
    take(logbook.record(second.uuid, sample_values(t - 50)));
    take(logbook.record(second.uuid, sample_values(t - 200)));
    take(logbook.record(first.uuid, sample_values(t - 300)));
    const Reading taken_back = take(logbook.record(unread.uuid, sample_values(t - 400)));
    take(logbook.set_withdrawn(taken_back.uuid, true, ""));

    const auto listed = [&] {
        std::vector<std::string> loads;
        for (const RunRecord& record : take(logbook.run_records())) loads.push_back(record.run.load + " " + std::to_string(record.number));
        return loads;
    };
    EXPECT_EQ(listed(), (std::vector<std::string>{"first 1", "second 2", "third 3", "unread 4", "z1 1"}));
    std::vector<std::string> order;
    for (const ullage::Run& run : take(logbook.runs())) order.push_back(run.load);
    EXPECT_EQ(order, (std::vector<std::string>{"first", "second", "third", "unread", "z1"}));
    EXPECT_EQ(take(logbook.run_record(third.uuid)).number, 3);

    take(logbook.set_run_withdrawn(second.uuid, true));
    EXPECT_EQ(listed(), (std::vector<std::string>{"first 1", "third 2", "unread 3", "z1 1"}));
    EXPECT_EQ(take(logbook.run_record(second.uuid)).number, 2);
    EXPECT_EQ(take(logbook.run_records(later_name.uuid)).size(), 1u);
    EXPECT_EQ(take(logbook.run_records(later_name.uuid)).at(0).run, z);
}

TEST_F(Records, a_run_record_carries_unit_meter_and_readings_in_order_of_time) {
    const Unit unit = take(logbook.add(sample_unit()));
    const Meter meter = take(logbook.add(sample_meter()));
    const ullage::Run run = take(logbook.add(sample_run(unit.uuid, meter.uuid)));
    const Reading late = take(logbook.record(run.uuid, sample_values(2000)));
    const Reading early = take(logbook.record(run.uuid, sample_values(1000)));
    const Reading tie = take(logbook.record(run.uuid, sample_values(2000)));
    const Reading withdrawn = take(logbook.set_withdrawn(take(logbook.record(run.uuid, sample_values(1500))).uuid, true, ""));
    const RunRecord record = take(logbook.run_record(run.uuid));
    EXPECT_EQ(record.unit, unit);
    EXPECT_EQ(record.meter, meter);
    EXPECT_EQ(record.run, run);
    EXPECT_EQ(record.readings, (std::vector{early, withdrawn, late, tie}));
    EXPECT_EQ(take(logbook.run_records()).at(0).readings, record.readings);
    EXPECT_EQ(take(logbook.readings(run.uuid)), record.readings);
}

TEST_F(Records, a_draft_is_kept_replaced_and_forgotten) {
    const ullage::Run run = take(logbook.add(sample_run(take(logbook.add(sample_unit())).uuid)));
    EXPECT_EQ(take(logbook.draft(run.uuid)), "");
    take(logbook.keep_draft(run.uuid, "43"));
    take(logbook.keep_draft(run.uuid, "431 Wh; it smells"));
    reopen();
    EXPECT_EQ(take(logbook.draft(run.uuid)), "431 Wh; it smells");
    take(logbook.keep_draft(run.uuid, ""));
    EXPECT_EQ(take(logbook.draft(run.uuid)), "");
}

TEST(LogbookInMemory, it_keeps_records_and_can_be_saved_as_a_file) {
    const TempFolder folder;
    const FakeClock clock;
    Logbook logbook = take(Logbook::in_memory(clock));
    const Unit unit = take(logbook.add(sample_unit()));
    EXPECT_TRUE(logbook.path().empty());
    take(logbook.save_copy(folder / "kept.ullage"));
    EXPECT_EQ(take(take(Logbook::open(folder / "kept.ullage", OpenMode::record, clock)).units()), std::vector{unit});
}

} // namespace
} // namespace ullage
