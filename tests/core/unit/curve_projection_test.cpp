// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/curve_projection.h"

#include "comparison/comparison.h"
#include "core/unit/between_runs_samples.h"
#include "support/has_text.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage::test {
namespace {

GaugeCurve curve_of(const std::vector<double>& gauge_at_tenths) {
    GaugeCurve curve;
    curve.total_wh = 1000;
    curve.total_h = 10;
    for (std::size_t i = 0; i < gauge_at_tenths.size(); ++i)
        curve.points.push_back({gauge_at_tenths[i], 100.0 * static_cast<double>(i), 1.0 * static_cast<double>(i), 0});
    return curve;
}

TEST(CurveProjection, a_straight_curve_gives_the_depth_within_two_roundings) {
    const auto depth = depth_at_level(curve_of({100, 90, 80, 70, 60, 50, 40, 30, 20, 10, 0}), 45, 1, 12);
    ASSERT_TRUE(depth);
    EXPECT_NEAR(depth->value, 55, 1e-9);
    EXPECT_NEAR(depth->upper - depth->value, depth->value - depth->lower, 1e-9);
    EXPECT_GT(depth->upper - depth->value, 0.775); // a triangle of two roundings: 1 - sqrt(0.05) = 0.776
    EXPECT_LT(depth->upper - depth->value, 1.0);   // no two roundings make more
}

TEST(CurveProjection, where_the_gauge_sticks_the_depth_is_the_whole_stretch) {
    const auto depth = depth_at_level(curve_of({100, 90, 80, 70, 70, 70, 40, 30, 20, 10, 0}), 70, 1, 12);
    ASSERT_TRUE(depth);
    EXPECT_NEAR(depth->value, 40, 1e-9);
    EXPECT_LT(depth->lower, 30);
    EXPECT_GT(depth->upper, 50);
}

TEST(CurveProjection, a_curve_that_ends_above_the_level_gives_no_depth) {
    EXPECT_FALSE(depth_at_level(curve_of({100, 92, 84, 76, 68, 60, 52, 44, 36, 28, 20}), 12, 1, 12));
}

TEST(CurveProjection, a_level_at_which_the_gauge_was_last_read_may_last_to_the_cut_off) {
    GaugeCurve curve = curve_of({100, 90, 80, 70, 60, 50, 40, 30, 20, 12});
    curve.total_wh = 1000;
    const auto depth = depth_at_level(curve, 12, 1, 12);
    ASSERT_TRUE(depth);
    EXPECT_EQ(depth->upper, 100);
    EXPECT_LT(depth->lower, 90);
}

/// A full drain and two days later half a drain at another load; both by one meter.
struct HalfDrain {
    std::vector<RunRecord> records;
    double fraction = 0; ///< true, at the load of the half drain
};

HalfDrain half_drain(double bend_pt, double stop_at_percent, std::uint64_t seed) {
    std::vector<RunSetup> setups{specimen_drain(64), specimen_drain(100)};
    for (RunSetup& setup : setups) setup.gauge.bend_pt = bend_pt;
    setups[1].tester.end = RunEnd::stopped_by_tester;
    setups[1].tester.stop_at_percent = stop_at_percent;
    setups[1].repeatability_percent = 0;
    setups[0].repeatability_percent = 0;
    return {simulate_drains(setups, seed), specimen.delivered_wh(100) / 1050};
}

TEST(CurveProjection, half_a_drain_of_a_bent_gauge_is_told_through_the_curve_and_not_without) {
    for (const double bend_pt : {-12.0, 12.0}) {
        int covered = 0, told_alone = 0, told = 0;
        for (std::uint64_t seed = 1; seed <= 200; ++seed) {
            const HalfDrain half = half_drain(bend_pt, 50, seed);
            RunAnalysis analysis = analyse_run(half.records[1]);
            told_alone += covers(analysis.energy.usable_fraction, half.fraction) && *analysis.energy.usable_fraction.half_width() < 0.05;
            project_through_curve(half.records[1], fit_unit(half.records), analysis);
            covered += covers(analysis.energy.usable_fraction, half.fraction);
            told += analysis.energy.usable_fraction.half_width().value() < 0.05;
        }
        EXPECT_LT(told_alone, 10) << bend_pt;
        EXPECT_GE(covered, 186) << bend_pt;
        EXPECT_GE(told, 190) << bend_pt << ": an interval that covers by its width alone tells nothing";
    }
}

TEST(CurveProjection, the_words_name_the_run_and_what_was_assumed) {
    const HalfDrain half = half_drain(12, 50, 4);
    RunAnalysis analysis = analyse_run(half.records[1]);
    project_through_curve(half.records[1], fit_unit(half.records), analysis);
    const Quantity& fraction = analysis.energy.usable_fraction;
    EXPECT_EQ(fraction.kind, Kind::projected);
    EXPECT_EQ(analysis.curve_run_uuid, half.records[0].run.uuid);
    EXPECT_TRUE(contains(fraction.reason, "through the gauge curve of run 1 (drain ")) << fraction.reason;
    EXPECT_TRUE(contains(fraction.reason, "from 100 % to 50 %; stopped before the cut-off")) << fraction.reason;
    EXPECT_FALSE(contains(fraction.reason, "honest")) << fraction.reason;
    const auto listed = std::ranges::find(analysis.quantities, "usable_fraction", &Quantity::key);
    EXPECT_EQ(listed->value, fraction.value) << "the list of results says the same";
}

TEST(CurveProjection, a_run_alone_or_before_the_full_drain_keeps_its_own_projection) {
    HalfDrain half = half_drain(12, 50, 5);
    const Quantity own = analyse_run(half.records[1]).energy.usable_fraction;
    EXPECT_FALSE(fraction_through_curve(half.records[1], analyse_run(half.records[1]).energy, fit_unit({half.records[1]})));
    for (Reading& reading : half.records[0].readings) reading.values.time_ms += 365 * 24 * static_cast<UtcMs>(ms_per_hour);
    RunAnalysis analysis = analyse_run(half.records[1]);
    project_through_curve(half.records[1], fit_unit(half.records), analysis);
    EXPECT_EQ(analysis.energy.usable_fraction.value, own.value);
    EXPECT_TRUE(analysis.curve_run_uuid.empty());
}

TEST(CurveProjection, a_gauge_that_rose_on_the_way_is_not_raised_again_by_an_earlier_curve) {
    HalfDrain half = half_drain(0, 50, 6);
    Reading risen = half.records[1].readings.back();
    risen.uuid = ReadingId(risen.uuid.text() + "-risen");
    risen.sequence += 1;
    risen.values.time_ms += 60'000;
    risen.values.gauge_percent = 75; // by the level alone only a quarter of the depth would be behind it: twice as much to come
    half.records[1].readings.push_back(risen);
    RunAnalysis analysis = analyse_run(half.records[1]);
    const Quantity own = analysis.energy.usable_fraction;
    ASSERT_EQ(own.kind, Kind::projected) << own.reason;
    project_through_curve(half.records[1], fit_unit(half.records), analysis);
    const Quantity& fraction = analysis.energy.usable_fraction;
    ASSERT_FALSE(analysis.curve_run_uuid.empty());
    EXPECT_LE(*fraction.value, *own.value);
    EXPECT_LE(*fraction.lower, *own.lower);
    EXPECT_GE(*fraction.upper, *own.upper);
    EXPECT_TRUE(contains(fraction.reason, "the gauge rose by 25 points")) << fraction.reason;
}

TEST(CurveProjection, a_measured_fraction_is_left_alone) {
    const std::vector<RunRecord> records = simulate_loads({64, 70}, 2);
    EXPECT_FALSE(fraction_through_curve(records[1], analyse_run(records[1]).energy, fit_unit(records)));
}

TEST(CurveProjection, a_stop_below_the_end_of_the_curve_is_not_known_and_says_so) {
    std::vector<RunSetup> setups{specimen_drain(64), specimen_drain(64)};
    setups[0].gauge.ends_at_percent = 20;
    setups[1].tester.end = RunEnd::stopped_by_tester;
    setups[1].tester.stop_at_percent = 8;
    const std::vector<RunRecord> records = simulate_drains(setups, 3);
    const auto fraction = fraction_through_curve(records[1], analyse_run(records[1]).energy, fit_unit(records));
    ASSERT_TRUE(fraction);
    EXPECT_EQ(fraction->kind, Kind::not_known);
    EXPECT_TRUE(contains(fraction->reason, "ends above")) << fraction->reason;
}

TEST(CurveProjection, the_comparison_says_that_a_figure_rests_on_an_earlier_curve) {
    const HalfDrain half = half_drain(12, 50, 6);
    const Comparison comparison = compare_as_tested(half.records, CompareRows::every_drain);
    ASSERT_EQ(comparison.rows.size(), 2u);
    EXPECT_TRUE(comparison.rows[1].through_curve);
    EXPECT_TRUE(covers(comparison.rows[1].usable_fraction, half.fraction));
    EXPECT_TRUE(std::ranges::any_of(comparison.remarks, [](const std::string& remark) { return contains(remark, "gauge curve of an earlier run"); }));
    EXPECT_FALSE(std::ranges::any_of(comparison.remarks, [](const std::string& remark) { return contains(remark, "honest gauge"); }));
}

} // namespace
} // namespace ullage::test
