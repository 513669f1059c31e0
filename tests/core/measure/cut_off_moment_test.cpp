// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/energy_analysis.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

/// 64 W read every two hours to 8 h, then noted off at `noted_h` with `total_wh`.
RecordBuilder steady(double noted_h, double total_wh) {
    RecordBuilder run;
    run.record().run.end_noticed_within_min.reset();
    run.at(0, 100, 0).at(2, 88, 128).at(4, 76, 256).at(6, 64, 384).at(8, 52, 512).at(noted_h, 40, total_wh, MarkKind::cut_off);
    return run;
}

CutOffMoment moment_of(RecordBuilder& run) { return analyse_energy(run.record()).cut_off.value(); }

TEST(CutOffMoment, of_a_run_that_does_not_say_how_late_lies_within_five_minutes_before_the_note) {
    RecordBuilder run;
    run.record().run.end_noticed_within_min.reset();
    run.at(0, 100, 0).at(10, 0, 640, MarkKind::cut_off);
    const CutOffMoment moment = moment_of(run);
    EXPECT_EQ(moment.basis, CutOffBasis::noted);
    EXPECT_NEAR(moment.estimate_h, 10 - 2.5 / 60, 1e-6);
    EXPECT_NEAR(moment.lower_h, 10 - 4.875 / 60, 1e-6); // 95 % of an even five minutes
    EXPECT_NEAR(moment.u_h, 5.0 / 60 / std::sqrt(12.0), 1e-6);
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_EQ(energy.duration_h.kind, Kind::measured);
    EXPECT_NEAR(*energy.mean_load_w.value, 640 / moment.estimate_h, 1e-9);
}

TEST(CutOffMoment, noted_as_it_happened_is_the_note_itself) {
    RecordBuilder run = steady(10, 640);
    run.record().run.end_noticed_within_min = 0;
    EXPECT_DOUBLE_EQ(moment_of(run).estimate_h, 10);
    EXPECT_NEAR(moment_of(run).u_h, 1.0 / 60 / std::sqrt(3.0), 1e-9) << "the note goes to the minute";
}

TEST(CutOffMoment, a_stated_lateness_is_its_range) {
    RecordBuilder run;
    run.record().run.end_noticed_within_min = 30;
    run.at(0, 100, 0).at(10, 0, 640, MarkKind::cut_off);
    EXPECT_NEAR(moment_of(run).estimate_h, 9.75, 1e-6);
}

TEST(CutOffMoment, a_steady_load_tells_it_within_the_noted_range) {
    RecordBuilder run = steady(10.0, 638); // two Wh short of two hours at 64 W: some two minutes earlier
    const CutOffMoment moment = moment_of(run);
    EXPECT_EQ(moment.basis, CutOffBasis::steady_load);
    EXPECT_NEAR(moment.estimate_h, 10 - 2.0 / 60, 0.6 / 60);
    EXPECT_LT(moment.u_h, 1.2 / 60) << "an even five minutes have 1.44";
    EXPECT_LE(moment.upper_h, 10);
}

TEST(CutOffMoment, found_off_in_the_morning_under_a_steady_load_is_known_from_its_last_watt_hours) {
    RecordBuilder run = steady(19, 640);
    run.record().run.end = RunEnd::found_off;
    run.record().readings.back().values.mark.reset();
    const CutOffMoment moment = moment_of(run);
    EXPECT_EQ(moment.basis, CutOffBasis::steady_load);
    EXPECT_NEAR(moment.estimate_h, 10, 0.03);
    EXPECT_LT(moment.upper_h - moment.lower_h, 0.2);
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_NEAR(energy.points.back().hours, moment.estimate_h, 1e-9) << "no time counts after it";
    EXPECT_EQ(energy.duration_h.kind, Kind::bracket);
}

TEST(CutOffMoment, noted_far_later_than_the_load_says_it_is_a_bracket_that_holds_both) {
    RecordBuilder run = steady(11, 640); // an hour of 64 W is missing: the note came late, or the load went down
    const CutOffMoment moment = moment_of(run);
    EXPECT_EQ(moment.basis, CutOffBasis::bracket);
    EXPECT_LT(moment.lower_h, 10.0);
    EXPECT_DOUBLE_EQ(moment.upper_h, 11);
}

TEST(CutOffMoment, two_powers_noted_from_the_meter_confirm_a_single_interval) {
    RecordBuilder run;
    run.record().run.end = RunEnd::found_off;
    run.record().run.end_noticed_within_min.reset();
    run.at(0, 100, 0).at(8, 20, 512).at(19, {}, 640);
    EXPECT_EQ(moment_of(run).basis, CutOffBasis::bracket) << "one interval tells no steady load";
    run.record().readings[0].values.meter_w = 64;
    run.record().readings[1].values.meter_w = 63;
    EXPECT_EQ(moment_of(run).basis, CutOffBasis::steady_load);
    EXPECT_NEAR(moment_of(run).estimate_h, 10, 0.3);
}

TEST(CutOffMoment, a_run_that_the_tester_stopped_has_none) {
    RecordBuilder run = steady(10, 640);
    run.record().run.end = RunEnd::stopped_by_tester;
    EXPECT_FALSE(analyse_energy(run.record()).cut_off);
}

} // namespace
} // namespace ullage::test
