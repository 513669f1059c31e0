// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/projection_doubt.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage {
namespace {

using test::RecordBuilder;

/// A stopped drain of 1000 Wh rated at 80 W, a reading each half hour for 6 h: 480 Wh.
RecordBuilder stopped(double (*gauge)(double hours)) {
    RecordBuilder run;
    run.record().run.end = RunEnd::stopped_by_tester;
    for (int i = 0; i <= 12; ++i) run.at(i * 0.5, std::round(gauge(i * 0.5)), 4000 + i * 40);
    return run;
}

TEST(ProjectionDoubt, a_gauge_without_a_fault_leaves_a_projection_as_it_is) {
    RecordBuilder run = stopped([](double h) { return 100 - 10 * h; });
    const Quantity plain = analyse_energy(run.record()).usable_fraction, judged = analyse_judged_energy(run.record()).usable_fraction;
    EXPECT_EQ(judged.value, plain.value);
    EXPECT_EQ(judged.lower, plain.lower);
    EXPECT_EQ(judged.reason, plain.reason);
}

TEST(ProjectionDoubt, a_gauge_that_stuck_lowers_the_projection_by_the_points_that_it_missed) {
    // True fall 10 points an hour; from 3 h to 5 h it stands at 70 % and shows 20 points too much from then on. 480 Wh for 40 points would be 1.20;
    // the 60 points that went are 0.80.
    RecordBuilder run = stopped([](double h) { return h < 3 ? 100 - 10 * h : h < 5 ? 70.0 : 120 - 10 * h; });
    const Quantity plain = analyse_energy(run.record()).usable_fraction, judged = analyse_judged_energy(run.record()).usable_fraction;
    EXPECT_NEAR(*plain.value, 1.2, 1e-9);
    EXPECT_EQ(judged.kind, Kind::projected) << "a doubt does not make a result vanish";
    EXPECT_LT(*judged.value, 0.9);
    EXPECT_LE(*judged.lower, 0.8);
    EXPECT_GE(*judged.upper, 0.8);
    EXPECT_EQ(judged.reason.text().find("assumes an accurate gauge"), std::string::npos) << judged.reason;
    EXPECT_NE(judged.reason.text().find("the gauge is at fault by about"), std::string::npos) << judged.reason;
    EXPECT_NE(judged.reason.text().find("stopped before the cut-off"), std::string::npos) << judged.reason;
}

TEST(ProjectionDoubt, a_gauge_held_at_full_lowers_the_projection_by_the_points_that_it_missed) {
    // True fall 10 points an hour; the first two hours show 100 %: 480 Wh for 40 points, where 60 went.
    RecordBuilder run = stopped([](double h) { return h < 2 ? 100.0 : 120 - 10 * h; });
    const Quantity plain = analyse_energy(run.record()).usable_fraction, judged = analyse_judged_energy(run.record()).usable_fraction;
    EXPECT_NEAR(*plain.value, 1.2, 1e-9);
    EXPECT_LT(*judged.value, 0.9);
    EXPECT_LE(*judged.lower, 0.8);
    EXPECT_GE(*judged.upper, 0.8);
}

TEST(ProjectionDoubt, readings_that_no_unit_explains_leave_delivered_energy_and_label_as_the_ends) {
    // 480 Wh out of a battery of 1000 Wh while the gauge fell by 20 points: 2.4 times the label.
    RecordBuilder run = stopped([](double h) { return 100 - 20 * h / 6; });
    const Quantity judged = analyse_judged_energy(run.record()).usable_fraction;
    EXPECT_NEAR(*judged.lower, 0.48, 0.006);
    EXPECT_LT(*judged.lower, 0.48);
    EXPECT_NEAR(*judged.upper, 1.1, 1e-9) << "the most that a battery of this label is taken to hold";
    EXPECT_LE(*judged.value, *judged.upper);
    EXPECT_NE(judged.reason.text().find("what the label holds"), std::string::npos) << judged.reason;
}

TEST(ProjectionDoubt, a_measured_fraction_rests_on_no_gauge) {
    RecordBuilder run = stopped([](double h) { return 100 - 20 * h / 6; });
    run.record().run.end = RunEnd::cut_off_seen;
    const Quantity plain = analyse_energy(run.record()).usable_fraction, judged = analyse_judged_energy(run.record()).usable_fraction;
    EXPECT_EQ(judged.kind, Kind::measured);
    EXPECT_EQ(judged.value, plain.value);
    EXPECT_EQ(judged.reason, plain.reason);
}

} // namespace
} // namespace ullage
