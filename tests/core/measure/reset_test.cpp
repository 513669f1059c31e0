// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/before_reset.h"
#include "measure/energy_analysis.h"
#include "measure/load_steps.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <optional>

namespace ullage {
namespace {

using test::RecordBuilder;

/// 90 W, read each hour from 250 Wh on; zeroed by somebody between 4 h and 5 h, when it shows 63 Wh.
RecordBuilder zeroed_within_an_hour(std::optional<MarkKind> mark) {
    RecordBuilder run;
    for (int h = 0; h <= 4; ++h) run.at(h, 100 - 9 * h, 250 + 90 * h);
    run.at(5, 55, 63, mark);
    for (int h = 6; h <= 8; ++h) run.at(h, 100 - 9 * h, 63 + 90 * (h - 5));
    return run;
}

TEST(Reset, what_a_meter_counted_since_it_was_zeroed_is_not_missing) {
    // In the hour of the reset 90 Wh flowed, of which the register says 63: 27 Wh went before it. At most 5 % more than the steady 90 W flowed:
    // 94.5 - 63 = 31.5 Wh. 360 Wh before, 63 + 3 x 90 after.
    for (const auto& mark : {std::optional<MarkKind>(), std::optional(MarkKind::meter_zeroed)}) {
        RecordBuilder run = zeroed_within_an_hour(mark);
        const EnergyAnalysis energy = analyse_energy(run.record());
        const RegisterTrack& track = energy.track;
        ASSERT_EQ(track.register_corrections.size(), 1u);
        // The usual load is over the hour and the minute of doubt of its ends: 90 W / (1 + 1/60) = 88.5 W.
        EXPECT_NEAR(track.register_corrections[0].missing_wh.value_or(0), 27, 2);
        ASSERT_TRUE(track.missing_most_wh);
        EXPECT_NEAR(*track.missing_most_wh, 31.5, 1e-9);
        EXPECT_NEAR(track.missing_estimate_wh, 27, 2);
        // One number: of the points, of the quantity, of the load over that hour.
        EXPECT_NEAR(track.total_wh(), 360 + 90 + 270, 2);
        EXPECT_DOUBLE_EQ(*energy.delivered_wh.value, track.total_wh());
        EXPECT_EQ(energy.delivered_wh.kind, Kind::bracket);
        EXPECT_NEAR(*energy.delivered_wh.lower, 693 - *energy.budget.half_width_wh, 1e-9);
        EXPECT_NEAR(*energy.delivered_wh.upper, 693 + 31.5 + *energy.budget.half_width_wh, 1e-9);
        EXPECT_NEAR(*energy.usable_fraction.value, track.total_wh() / 1000, 1e-12);
        for (const LoadStep& step : load_steps(track, RunEnd::cut_off_seen)) EXPECT_NEAR(step.mean_w, 90, 2);
    }
}

TEST(Reset, one_of_unknown_size_shows_no_load_over_its_time) {
    // 4 h of 7 h without register: what was lost there is more than a quarter of the rest, and bounds nothing.
    RecordBuilder run;
    run.at(0, 100, 250).at(1, 91, 340).at(2, 82, 430).at(6, 46, 20, MarkKind::meter_zeroed).at(7, 37, 110);
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_FALSE(energy.track.missing_most_wh);
    EXPECT_EQ(energy.delivered_wh.kind, Kind::at_least);
    EXPECT_DOUBLE_EQ(energy.track.total_wh(), 180 + 110);
    for (const LoadStep& step : load_steps(energy.track, RunEnd::cut_off_seen)) EXPECT_NEAR(step.mean_w, 90, 1e-9);
    for (const IntervalRow& row : energy.intervals) {
        EXPECT_NEAR(row.mean_w.value_or(90), 90, 1e-9);
    }
}

TEST(Reset, with_what_the_register_showed_before_it_nothing_is_missing) {
    // 637 Wh before the reset: 637 - 610 = 27 Wh, and 63 after it. Of the hour 27/90, 18 minutes, went before it.
    RecordBuilder run;
    for (int h = 0; h <= 4; ++h) run.at(h, 100 - 9 * h, 250 + 90 * h);
    ReadingValues after;
    after.time_ms = RecordBuilder::moment_ms(5);
    after.gauge_percent = 55;
    after.register_wh = 63;
    const auto readings = readings_of_reset(run.record(), after, 637);
    ASSERT_TRUE(readings);
    ASSERT_EQ(readings.value().size(), 3u);
    EXPECT_EQ(readings.value()[0].time_ms, RecordBuilder::moment_ms(4.3));
    EXPECT_EQ(readings.value()[1].mark, MarkKind::meter_zeroed);
    EXPECT_EQ(readings.value()[2], after);
    for (const ReadingValues& values : readings.value())
        run.at(hours_between(RecordBuilder::moment_ms(0), values.time_ms), values.gauge_percent, values.register_wh, values.mark);
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_FALSE(energy.track.energy_may_be_missing);
    EXPECT_NEAR(*energy.delivered_wh.value, 450, 1e-9);
    EXPECT_EQ(energy.delivered_wh.kind, Kind::measured);
    for (const LoadStep& step : load_steps(energy.track, RunEnd::cut_off_seen)) EXPECT_NEAR(step.mean_w, 90, 1e-3);
}

TEST(Reset, a_value_that_cannot_have_stood_before_it_is_refused_with_the_reason) {
    RecordBuilder run;
    run.at(0, 100, 250).at(1, 91, 340);
    ReadingValues after;
    after.time_ms = RecordBuilder::moment_ms(2);
    after.register_wh = 63;
    EXPECT_NE(readings_of_reset(run.record(), after, 300).error().sentence().find("less than the 340 Wh"), std::string::npos);
    EXPECT_NE(readings_of_reset(run.record(), after, 6370).error().sentence().find("more than this unit can be believed"), std::string::npos);
}

} // namespace
} // namespace ullage
