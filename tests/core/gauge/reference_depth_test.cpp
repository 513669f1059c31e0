// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/reference_depth.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

/// 80 W for 5 h, then 20 W for 10 h: 600 Wh in all. The gauge counts stored energy of a unit with P* = 10 W.
RecordBuilder two_loads() {
    RecordBuilder run;
    run.at(0, 100, 1000).at(2.5, 70, 1200).at(5, 40, 1400).at(10, 20, 1500).at(15, 0, 1600);
    return run;
}

std::vector<ReferenceDepth> depths_of(RecordBuilder& run, const std::optional<NoLoadDraw>& draw) {
    const auto depths = reference_depths(run.record(), analyse_energy(run.record()), draw);
    EXPECT_TRUE(depths.ok());
    return depths ? depths.value() : std::vector<ReferenceDepth>{};
}

TEST(ReferenceDepth, both_depths_and_errors_are_those_worked_out_by_hand) {
    RecordBuilder run = two_loads();
    const auto depths = depths_of(run, NoLoadDraw{10, 10, 10});
    ASSERT_EQ(depths.size(), 5u);
    EXPECT_NEAR(depths[2].delivered_percent.value, 100 * 400.0 / 600, 1e-9);
    EXPECT_NEAR(depths[2].stored_percent->value, 100 * 450.0 / 750, 1e-9);
    EXPECT_NEAR(depths[2].delivered_error_pt.value, 40 - 100 + 100 * 400.0 / 600, 1e-9);
    for (const ReferenceDepth& depth : depths) EXPECT_NEAR(depth.stored_error_pt->value, 0, 1e-9) << "an accurate gauge, at " << depth.hours << " h";
    EXPECT_NEAR(depths[4].stored_percent->value, 100, 1e-9);
}

TEST(ReferenceDepth, the_band_of_stored_depth_holds_what_the_limits_of_the_draw_give) {
    RecordBuilder run = two_loads();
    run.record().meter->step_wh = 1e-6; // so that the draw alone makes the band, but for the minute of the run time
    const ReferenceDepth depth = depths_of(run, NoLoadDraw{10, 5, 15})[2];
    EXPECT_NEAR(depth.stored_percent->upper, 100 * 425.0 / 675, 0.02);
    EXPECT_NEAR(depth.stored_percent->lower, 100 * 475.0 / 825, 0.02);
    EXPECT_NEAR(depth.delivered_percent.upper - depth.delivered_percent.lower, 0, 1e-3) << "the draw has no part in share delivered";
    // The error's band has the gauge step too: 0.475 of a point for a rectangle of half a point.
    EXPECT_NEAR(depth.delivered_error_pt.upper - depth.delivered_error_pt.value, 0.475, 1e-3);
}

TEST(ReferenceDepth, under_a_steady_load_both_are_the_same_whatever_the_draw) {
    RecordBuilder run;
    for (int i = 0; i <= 10; ++i) run.at(i, 100 - 10 * i, 1000 + 60 * i);
    for (const double draw_w : {0.0, 8.0, 300.0})
        for (const ReferenceDepth& depth : depths_of(run, NoLoadDraw{draw_w, draw_w, draw_w}))
            EXPECT_NEAR(depth.stored_percent->value, depth.delivered_percent.value, 1e-9);
}

TEST(ReferenceDepth, without_a_draw_there_is_no_stored_depth) {
    RecordBuilder run = two_loads();
    for (const ReferenceDepth& depth : depths_of(run, std::nullopt)) {
        EXPECT_FALSE(depth.stored_percent.has_value());
        EXPECT_FALSE(depth.stored_error_pt.has_value());
    }
}

TEST(ReferenceDepth, is_refused_for_a_run_without_cut_off_and_for_a_draw_outside_its_limits) {
    RecordBuilder run = two_loads();
    EXPECT_FALSE(reference_depths(run.record(), analyse_energy(run.record()), NoLoadDraw{10, 12, 15}).ok());
    run.record().run.end = RunEnd::stopped_by_tester;
    const auto refused = reference_depths(run.record(), analyse_energy(run.record()), std::nullopt);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().what.text().find("no complete drain"), std::string::npos);
}

TEST(ReferenceDepth, a_trip_at_a_try_to_start_the_empty_unit_again_takes_nothing_off_the_hours_before) {
    RecordBuilder run;
    run.at(0, 100, 1000).at(2.5, 70, 1200).at(5, 40, 1400).at(10, 20, 1500).at(15, 0, 1600, MarkKind::cut_off);
    const auto before = depths_of(run, NoLoadDraw{10, 8, 12});
    run.at(16, {}, 1600, MarkKind::output_tripped).at(18, {}, 1600, MarkKind::output_reset);
    const auto after = depths_of(run, NoLoadDraw{10, 8, 12});
    ASSERT_EQ(before.size(), after.size());
    for (std::size_t i = 0; i < before.size(); ++i) EXPECT_EQ(before[i].stored_percent.value().value, after[i].stored_percent.value().value) << i;
}

} // namespace
} // namespace ullage::test
