// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_run.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>
#include <string>

namespace ullage::test {
namespace {

RunSetup evening() {
    RunSetup setup;
    setup.unit.name = "Trial";
    setup.unit.rated_energy_wh = 1200;
    setup.physics = {.battery_wh = 1100, .p0_w = 15, .a = 1.09, .b_per_w = 1e-5};
    setup.load = LoadProfile::mixed(LoadProfile::constant(40), LoadProfile::cycling(60, 0, 0.5, 0.4));
    setup.meter->meter.step_wh = 1;
    setup.meter->meter.limit_percent = 1;
    setup.meter->meter.span_wh = 100'000;
    setup.meter->start_wh = 4312;
    setup.tester.interval_h = 0.5;
    return setup;
}

std::vector<ReadingValues> values_of(const SimulatedRun& run) {
    std::vector<ReadingValues> values;
    for (const Reading& reading : run.record.readings) values.push_back(reading.values);
    return values;
}

double register_of(const SimulatedRun& run, std::size_t place) { return run.record.readings.at(place).values.register_wh.value(); }

TEST(SimulatedRun, the_same_seed_gives_the_same_run) {
    RunSetup setup = evening();
    setup.repeatability_percent = 0.5;
    setup.gauge.noise_pt = 1;
    const SimulatedRun one = simulate_run(setup, 42);
    const SimulatedRun again = simulate_run(setup, 42);
    EXPECT_EQ(one.record.readings, again.record.readings);
    EXPECT_EQ(one.record.run, again.record.run);
    EXPECT_EQ(one.truth.gain_error_percent, again.truth.gain_error_percent);
    EXPECT_NE(values_of(one), values_of(simulate_run(setup, 43)));
}

TEST(SimulatedRun, the_record_follows_the_truth_within_gain_and_step) {
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        const SimulatedRun run = simulate_run(evening(), seed);
        ASSERT_EQ(run.truth.readings.size(), run.record.readings.size());
        EXPECT_LE(std::abs(run.truth.gain_error_percent), 1);
        for (std::size_t i = 0; i < run.record.readings.size(); ++i) {
            const ReadingTruth& truth = run.truth.readings[i];
            EXPECT_NEAR(register_of(run, i) - register_of(run, 0), truth.delivered_wh * (1 + run.truth.gain_error_percent / 100), 1);
            EXPECT_NEAR(run.record.readings[i].values.gauge_percent.value(), truth.gauge_percent, 0.5 + 1e-9);
            EXPECT_NEAR(truth.gauge_percent, truth.stored_percent, 1e-9); // this gauge is honest
        }
    }
}

TEST(SimulatedRun, its_truth_balances) {
    const SimulatedRun run = simulate_run(evening(), 9);
    const RunTruth& truth = run.truth;
    ASSERT_TRUE(truth.cut_off);
    EXPECT_NEAR(truth.delivered_wh, truth.deliverable_wh - truth.no_load_draw_w * truth.output_on_h - truth.curvature_per_w * truth.squared_w2h,
                1e-9);
    EXPECT_DOUBLE_EQ(truth.delivered_wh, truth.full_drain_wh);
    EXPECT_DOUBLE_EQ(truth.usable_fraction.value(), truth.delivered_wh / 1200);
    EXPECT_DOUBLE_EQ(truth.output_on_h, truth.cut_off_hours);
}

TEST(SimulatedRun, moments_are_whole_minutes_near_the_true_ones_and_never_go_back) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        RunSetup setup = evening();
        setup.tester.interval_h = 0.03; // hardly two minutes apart
        const SimulatedRun run = simulate_run(setup, seed);
        UtcMs before_ms = 0;
        for (std::size_t i = 0; i < run.record.readings.size(); ++i) {
            const UtcMs noted_ms = run.record.readings[i].values.time_ms;
            EXPECT_EQ(noted_ms % 60'000, 0);
            EXPECT_GE(noted_ms, before_ms);
            EXPECT_NEAR(hours_between(setup.start_ms, noted_ms), run.truth.readings[i].hours, 0.5 / 60 + 1e-9);
            EXPECT_EQ(run.record.readings[i].sequence, static_cast<long>(i) + 1);
            before_ms = noted_ms;
        }
    }
}

TEST(SimulatedRun, a_seen_cut_off_ends_with_its_mark) {
    const SimulatedRun run = simulate_run(evening(), 5);
    EXPECT_EQ(run.record.run.end, RunEnd::cut_off_seen);
    EXPECT_EQ(run.record.readings.back().values.mark, MarkKind::cut_off);
    EXPECT_EQ(run.record.readings.back().values.gauge_percent, 0);
}

TEST(SimulatedRun, found_off_ends_later_without_gauge_and_mark) {
    RunSetup setup = evening();
    setup.tester.end = RunEnd::found_off;
    setup.tester.found_after_h = 3;
    const SimulatedRun run = simulate_run(setup, 5);
    const ReadingValues& last = run.record.readings.back().values;
    EXPECT_FALSE(last.gauge_percent.has_value());
    EXPECT_FALSE(last.mark.has_value());
    EXPECT_EQ(last.meter_w, 0);
    EXPECT_NEAR(run.truth.readings.back().hours - run.truth.cut_off_hours, 3, 1e-9);
    EXPECT_DOUBLE_EQ(run.truth.output_on_h, run.truth.cut_off_hours);
    EXPECT_TRUE(run.truth.cut_off);
    for (std::size_t i = 0; i + 1 < run.truth.readings.size(); ++i) EXPECT_LT(run.truth.readings[i].hours, run.truth.cut_off_hours);
}

TEST(SimulatedRun, a_tester_may_stop_at_a_gauge_value_or_a_time) {
    RunSetup setup = evening();
    setup.tester.end = RunEnd::stopped_by_tester;
    setup.tester.stop_at_percent = 40;
    const SimulatedRun at_forty = simulate_run(setup, 5);
    EXPECT_EQ(at_forty.record.readings.back().values.gauge_percent, 40);
    EXPECT_FALSE(at_forty.truth.cut_off);
    EXPECT_LT(at_forty.truth.delivered_wh, at_forty.truth.full_drain_wh);
    setup.tester.stop_at_percent.reset();
    setup.tester.stop_after_h = 2.5;
    EXPECT_DOUBLE_EQ(simulate_run(setup, 5).truth.output_on_h, 2.5);
}

TEST(SimulatedRun, a_note_of_a_changed_load_is_taken_under_the_new_load) {
    RunSetup setup = evening();
    setup.load = LoadProfile::stepped({{1.25, 46}, {20, 238}});
    PlannedReading note;
    note.hours = 1.25;
    note.meter_w = true;
    note.mark = MarkKind::load_changed;
    setup.tester.plan = {note};
    const SimulatedRun run = simulate_run(setup, 8);
    ASSERT_EQ(run.record.readings.size(), 3U);
    EXPECT_EQ(run.record.readings[1].values.mark, MarkKind::load_changed);
    EXPECT_NEAR(run.record.readings[1].values.meter_w.value(), 238, 0.01 * 238 + 0.5);
}

TEST(SimulatedRun, a_gap_has_no_readings_and_parts_go_missing) {
    RunSetup setup = evening();
    setup.tester.gaps = {{3, 7}};
    setup.tester.without_gauge = 0.3;
    setup.tester.without_register = 0.3;
    const SimulatedRun run = simulate_run(setup, 8);
    int without_gauge = 0;
    int without_register = 0;
    for (std::size_t i = 0; i < run.record.readings.size(); ++i) {
        const double hours = run.truth.readings[i].hours;
        EXPECT_TRUE(hours < 3.01 || hours > 6.99) << hours;
        const ReadingValues& values = run.record.readings[i].values;
        EXPECT_TRUE(values.gauge_percent || values.register_wh);
        without_gauge += !values.gauge_percent;
        without_register += !values.register_wh;
    }
    EXPECT_GT(without_gauge, 0);
    EXPECT_GT(without_register, 0);
}

TEST(SimulatedRun, it_reads_more_often_near_the_end_when_asked_to) {
    RunSetup setup = evening();
    setup.tester.interval_h = 1;
    const std::size_t plain = simulate_run(setup, 8).record.readings.size();
    setup.tester.closing_below_percent = 20;
    setup.tester.closing_interval_h = 0.1;
    EXPECT_GT(simulate_run(setup, 8).record.readings.size(), plain + 10);
}

TEST(SimulatedRun, without_a_meter_there_are_no_registers) {
    RunSetup setup = evening();
    setup.meter.reset();
    const SimulatedRun run = simulate_run(setup, 8);
    EXPECT_FALSE(run.record.meter.has_value());
    EXPECT_FALSE(run.record.run.meter_uuid.has_value());
    for (const Reading& reading : run.record.readings) EXPECT_FALSE(reading.values.register_wh.has_value());
}

TEST(SimulatedRun, batteries_differ_from_run_to_run_by_the_repeatability) {
    RunSetup setup = evening();
    setup.repeatability_percent = 0.5;
    double squares = 0;
    constexpr int count = 1000;
    for (std::uint64_t seed = 1; seed <= count; ++seed) squares += std::pow(simulate_run(setup, seed).truth.physics.battery_wh / 1100 - 1, 2);
    // Four standard errors of a standard deviation.
    EXPECT_NEAR(100 * std::sqrt(squares / count), 0.5, 4 * 0.5 / std::sqrt(2.0 * count));
}

TEST(SimulatedRun, readings_of_one_run_have_identifiers_of_their_own) {
    const SimulatedRun run = simulate_run(evening(), 8);
    std::set<ReadingId> seen;
    for (const Reading& reading : run.record.readings) {
        EXPECT_EQ(reading.uuid.text().size(), 36U);
        EXPECT_EQ(reading.uuid.text()[14], '4');
        seen.insert(reading.uuid);
    }
    EXPECT_EQ(seen.size(), run.record.readings.size());
}

TEST(SimulatedRun, a_reset_with_a_mark_is_a_row_of_its_own_and_loses_nothing_when_read_before) {
    RunSetup setup = evening();
    setup.faults = {{.kind = FaultKind::reset_with_mark, .hours = 4.2, .remark = "zeroed"}};
    const SimulatedRun run = simulate_run(setup, 12);
    ASSERT_EQ(run.truth.faults.size(), 1U);
    const PlantedFault& fault = run.truth.faults[0];
    EXPECT_EQ(fault.after, fault.before + 1);
    EXPECT_EQ(fault.from_ms, fault.to_ms);
    EXPECT_EQ(run.record.readings[fault.after].values.mark, MarkKind::meter_zeroed);
    EXPECT_EQ(run.record.readings[fault.after].values.remark, "zeroed");
    EXPECT_EQ(register_of(run, fault.after), 0);
    EXPECT_GT(register_of(run, fault.before), 4312);
    EXPECT_DOUBLE_EQ(fault.unread_wh, 0);
}

TEST(SimulatedRun, a_reset_without_a_mark_hides_what_was_delivered_since_the_reading_before) {
    RunSetup setup = evening();
    setup.faults = {{.kind = FaultKind::reset_without_mark, .hours = 4.2}};
    const SimulatedRun run = simulate_run(setup, 12);
    ASSERT_EQ(run.truth.faults.size(), 1U);
    const PlantedFault& fault = run.truth.faults[0];
    EXPECT_LT(register_of(run, fault.after), register_of(run, fault.before));
    EXPECT_LT(run.truth.readings[fault.before].hours, fault.hours);
    EXPECT_GT(run.truth.readings[fault.after].hours, fault.hours);
    const double gain = 1 + run.truth.gain_error_percent / 100;
    const double whole_wh = run.truth.readings[fault.after].delivered_wh - run.truth.readings[fault.before].delivered_wh;
    EXPECT_NEAR(register_of(run, fault.after), (whole_wh - fault.unread_wh) * gain, 1);
    EXPECT_GT(fault.unread_wh, 0);
    for (const Reading& reading : run.record.readings) EXPECT_NE(reading.values.mark, MarkKind::meter_zeroed);
}

TEST(SimulatedRun, a_swapped_meter_goes_on_with_its_own_register_and_gain) {
    for (const FaultKind kind : {FaultKind::swap_with_mark, FaultKind::swap_without_mark}) {
        RunSetup setup = evening();
        MeterSetup other = *setup.meter;
        other.start_wh = 70'000;
        other.gain_error_percent = 5;
        setup.faults = {{.kind = kind, .hours = 4.2, .new_meter = other}};
        const SimulatedRun run = simulate_run(setup, 12);
        ASSERT_EQ(run.truth.faults.size(), 1U);
        const std::size_t after = run.truth.faults[0].after;
        const std::size_t last = run.record.readings.size() - 1;
        EXPECT_EQ(run.record.readings[after].values.mark == MarkKind::meter_swapped, kind == FaultKind::swap_with_mark);
        EXPECT_NEAR(register_of(run, last) - register_of(run, after),
                    1.05 * (run.truth.readings[last].delivered_wh - run.truth.readings[after].delivered_wh), 1);
        EXPECT_GE(register_of(run, after), 70'000);
    }
}

TEST(SimulatedRun, a_typing_error_spoils_one_register_value) {
    RunSetup setup = evening();
    const SimulatedRun clean = simulate_run(setup, 12);
    setup.faults = {{.kind = FaultKind::typing_error, .hours = 4.2}};
    const SimulatedRun run = simulate_run(setup, 12);
    ASSERT_EQ(run.truth.faults.size(), 1U);
    const PlantedFault& fault = run.truth.faults[0];
    EXPECT_EQ(register_of(run, fault.before), fault.noted_wh);
    EXPECT_GE(std::abs(fault.noted_wh - fault.right_wh), 20);
    EXPECT_NEAR(fault.right_wh - register_of(run, 0), run.truth.readings[fault.before].delivered_wh * (1 + run.truth.gain_error_percent / 100), 1);
    int differing = 0;
    for (std::size_t i = 0; i < run.record.readings.size(); ++i) {
        const double expected_wh = register_of(run, 0) + run.truth.readings[i].delivered_wh * (1 + run.truth.gain_error_percent / 100);
        differing += std::abs(register_of(run, i) - expected_wh) > 2;
    }
    EXPECT_EQ(differing, 1);
}

TEST(SimulatedRun, a_fault_outside_the_run_is_not_planted) {
    RunSetup setup = evening();
    setup.faults = {{.kind = FaultKind::reset_with_mark, .hours = 400}, {.kind = FaultKind::typing_error, .hours = 400}};
    const SimulatedRun run = simulate_run(setup, 12);
    EXPECT_TRUE(run.truth.faults.empty());
    for (const Reading& reading : run.record.readings) EXPECT_NE(reading.values.mark, MarkKind::meter_zeroed);
}

} // namespace
} // namespace ullage::test
