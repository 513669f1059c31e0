// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/gauge_drift.h"

#include "core/unit/between_runs_samples.h"
#include "support/has_text.h"
#include "unit/gauge_drift_words.h"
#include "unit/unit_analysis.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace ullage::test {
namespace {

/// A gauge read at each tenth of the depth by an exact register; `above` is what it shows above a straight one.
GaugeCurve tenths(const std::vector<double>& above) {
    GaugeCurve curve;
    curve.total_wh = 1000;
    curve.total_h = 10;
    for (int i = 0; i <= 10; ++i)
        curve.points.push_back({100.0 - 10 * i + (above.empty() ? 0.0 : above[static_cast<std::size_t>(i)]), 100.0 * i, 1.0 * i, 0});
    return curve;
}

TEST(CurveShift, differences_are_held_against_the_roundings_of_both_gauges) {
    const auto shift = compare_curves(tenths({}), tenths({0, 0, 0, 0, 2, 4, 2, 0, 0, 0, 0}), 0);
    ASSERT_TRUE(shift);
    // Each difference holds two roundings, variance 2/12; at the points nothing is shared between neighbours. 6 (4 + 16 + 4) = 144.
    EXPECT_NEAR(shift->chi_square, 144, 1e-9);
    EXPECT_NEAR(shift->degrees_of_freedom, 10, 1e-9);
    EXPECT_EQ(shift->common_depths, 10u);
    EXPECT_NEAR(shift->size_pt, 8.0 / 3, 1e-9);
    EXPECT_NEAR(shift->half_width_pt, 1.959964 * std::sqrt(1.0 / 6 / 3), 1e-5);
    EXPECT_NEAR(shift->depth_percent, 50, 1e-9);
    EXPECT_LT(shift->p_value, 1e-20);
}

TEST(CurveShift, equal_curves_do_not_differ_and_the_sign_tells_the_direction) {
    const auto same = compare_curves(tenths({}), tenths({}), 30);
    ASSERT_TRUE(same);
    EXPECT_EQ(same->size_pt, 0);
    EXPECT_EQ(same->p_value, 1);
    const std::vector<double> bump{0, 1, 2, 3, 4, 5, 4, 3, 2, 1, 0};
    EXPECT_GT(compare_curves(tenths({}), tenths(bump), 0)->size_pt, 4);
    EXPECT_LT(compare_curves(tenths(bump), tenths({}), 0)->size_pt, -4);
}

TEST(CurveShift, a_jump_between_two_readings_may_be_anywhere_between_them) {
    // One gauge, which jumps between 50 and 60 % of the depth. Read at 50 and 70 %, then at 40 and 60 %: lines between these readings lie 10 points
    // apart.
    const std::vector<double> above{0, 2, 4, 6, 8, 10, -8, -6, -4, -2, 0};
    GaugeCurve before = tenths(above), after = tenths(above);
    before.points.erase(before.points.begin() + 6);
    after.points.erase(after.points.begin() + 5);
    const auto shift = compare_curves(before, after, 0);
    ASSERT_TRUE(shift);
    EXPECT_LT(std::abs(shift->size_pt), 1);
}

TEST(CurveShift, too_few_common_depths_compare_nothing) {
    GaugeCurve few = tenths({});
    few.points.resize(4);
    EXPECT_FALSE(compare_curves(tenths({}), few, 0));
}

std::vector<RunRecord> over_a_year(int drains, std::uint64_t seed, const std::function<void(RunSetup&, double)>& change) {
    std::vector<RunSetup> setups;
    Random random(seed + 5);
    for (int i = 0; i < drains; ++i) {
        const double share = static_cast<double>(i) / (drains - 1);
        setups.push_back(specimen_drain(64 * random.uniform(0.92, 1.08)));
        setups.back().tester.jitter = 0.4;
        setups.back().start_ms += static_cast<UtcMs>(share * 365 * 24 * ms_per_hour);
        change(setups.back(), share);
    }
    return simulate_drains(setups, seed);
}

UnitAnalysis unit_of(const std::vector<RunRecord>& records) { return analyse_unit(specimen_claims(), fit_unit(records)); }

TEST(GaugeDrift, fewer_than_one_honest_gauge_in_a_hundred_is_convicted) {
    int convicted = 0;
    for (std::uint64_t seed = 1; seed <= 150; ++seed)
        for (const bool counts_charge : {false, true}) {
            const UnitAnalysis unit = unit_of(over_a_year(4, seed, [counts_charge](RunSetup& setup, double) {
                if (counts_charge) setup.gauge.counts = GaugeCounts::charge;
            }));
            const DriftVerdict verdict = unit.gauge_drift.verdict;
            ASSERT_NE(verdict, DriftVerdict::not_known);
            convicted += verdict == DriftVerdict::gauge_drifts || verdict == DriftVerdict::both_move;
        }
    EXPECT_LT(convicted, 3) << "of 300; the ensemble judges more than ten times as many";
}

TEST(GaugeDrift, a_curve_that_moves_by_twice_the_step_is_found_and_located) {
    int found = 0, located = 0, called_ageing = 0;
    double size_sum_pt = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const UnitAnalysis unit = unit_of(over_a_year(3, seed, [](RunSetup& setup, double share) { setup.gauge.bend_pt = -2 * share; }));
        const GaugeDrift& drift = unit.gauge_drift;
        if (drift.verdict != DriftVerdict::gauge_drifts && drift.verdict != DriftVerdict::both_move) continue;
        ++found;
        const CurveShift& curve = drift.comparisons[*drift.lead].curve;
        size_sum_pt += curve.size_pt;
        located += curve.depth_percent > 15 && curve.depth_percent < 85;
        called_ageing += drift.verdict == DriftVerdict::both_move;
    }
    EXPECT_GE(found, 190);
    EXPECT_GE(located, found * 95 / 100);
    EXPECT_LE(called_ageing, 8);
    EXPECT_NEAR(size_sum_pt / found, -2, 0.4); // the largest of several means lies a little beyond the truth
}

TEST(GaugeDrift, an_ageing_unit_with_an_honest_gauge_is_called_ageing) {
    int found = 0;
    std::string words;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const UnitAnalysis unit = unit_of(over_a_year(5, seed, [](RunSetup& setup, double share) { setup.physics.battery_wh *= 1 - 0.1 * share; }));
        found += unit.gauge_drift.verdict == DriftVerdict::energy_moves;
        if (unit.gauge_drift.verdict == DriftVerdict::energy_moves) words = unit.gauge_drift.sentence;
    }
    EXPECT_GE(found, 190);
    EXPECT_TRUE(contains(words, "E* falls (−")) << words;
    EXPECT_TRUE(contains(words, "curve is unmoved")) << words;
    EXPECT_TRUE(contains(words, "ageing, not the gauge")) << words;
}

TEST(GaugeDrift, both_are_told_when_both_move) {
    const UnitAnalysis unit = unit_of(over_a_year(5, 3, [](RunSetup& setup, double share) {
        setup.physics.battery_wh *= 1 - 0.15 * share;
        setup.gauge.bend_pt = 8 * share;
    }));
    EXPECT_EQ(unit.gauge_drift.verdict, DriftVerdict::both_move) << unit.gauge_drift.sentence;
    EXPECT_TRUE(contains(unit.gauge_drift.sentence, "the unit ages, and its gauge drifts")) << unit.gauge_drift.sentence;
}

TEST(GaugeDrift, the_same_gauge_under_the_same_changing_load_is_left_in_peace) {
    const LoadProfile load = LoadProfile::stepped({{2, 220}, {9, 25}}, true);
    int convicted = 0, judged = 0;
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        const UnitAnalysis unit = unit_of(over_a_year(3, seed, [&load](RunSetup& setup, double) { setup.load = load; }));
        if (unit.gauge_drift.verdict == DriftVerdict::not_known) continue;
        ++judged;
        convicted += unit.gauge_drift.verdict == DriftVerdict::gauge_drifts || unit.gauge_drift.verdict == DriftVerdict::both_move;
    }
    EXPECT_GT(judged, 100);
    EXPECT_LE(convicted, 1);
}

TEST(GaugeDrift, is_not_known_from_one_drain_nor_from_unlike_loads_and_says_why) {
    const UnitAnalysis one = unit_of(simulate_loads({64}, 1));
    EXPECT_EQ(one.gauge_drift.verdict, DriftVerdict::not_known);
    EXPECT_TRUE(contains(one.gauge_drift.sentence, "it takes two drains from full to cut-off")) << one.gauge_drift.sentence;
    EXPECT_EQ(one.gauge_drift.shift_pt.kind, Kind::not_known);
    const UnitAnalysis unlike = unit_of(simulate_loads({64, 200}, 1));
    EXPECT_TRUE(contains(unlike.gauge_drift.sentence, "no two of the 2 full drains had like loads")) << unlike.gauge_drift.sentence;
    std::vector<RunRecord> seldom = simulate_loads({64, 64}, 1);
    for (Reading& reading : seldom[1].readings)
        if (reading.sequence > 3) reading.values.gauge_percent.reset();
    const UnitAnalysis sparse = unit_of(seldom);
    EXPECT_TRUE(contains(sparse.gauge_drift.reason, "of run 2, its gauge was read at fewer than six depths")) << sparse.gauge_drift.reason;
}

TEST(GaugeDrift, energies_of_drains_at_other_loads_are_corrected_for_the_loads) {
    int alarms = 0, covered = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const UnitFit fit = fit_unit(simulate_loads({64, 76}, seed));
        const RatioChange energy = energy_change(fit.drains[0], fit.drains[1], fit, specimen_claims(), 0.01);
        const RatioChange per_point = wh_per_point_change(fit.drains[0], fit.drains[1], fit, specimen_claims(), 0.01);
        alarms += energy.significant || per_point.significant;
        covered += covers(energy.change_percent, 0);
    }
    EXPECT_LE(alarms, 8) << "of 300; uncorrected the heavier load alone would give 2 % more";
    EXPECT_GE(covered, 279);
}

TEST(GaugeDrift, a_gauge_read_less_far_delivers_no_more_per_point) {
    std::vector<RunRecord> records = simulate_loads({64, 64}, 1);
    for (Reading& reading : records[1].readings)
        if (reading.values.gauge_percent.value_or(100) < 20) reading.values.gauge_percent.reset();
    const UnitFit fit = fit_unit(records);
    ASSERT_TRUE(fit.drains[1].gauge_curve);
    EXPECT_GT(fit.drains[1].gauge_curve->points.back().gauge_percent, 19);
    const RatioChange change = wh_per_point_change(fit.drains[0], fit.drains[1], fit, specimen_claims(), 0.01);
    EXPECT_LT(std::abs(*change.change_percent.value), 3);
    EXPECT_FALSE(change.significant);
}

TEST(GaugeDrift, wh_per_point_falls_with_age_though_the_gauge_is_right) {
    const UnitAnalysis unit = unit_of(over_a_year(3, 8, [](RunSetup& setup, double share) { setup.physics.battery_wh *= 1 - 0.12 * share; }));
    const DrainComparison& last = unit.gauge_drift.comparisons.back();
    EXPECT_TRUE(last.wh_per_point.significant);
    EXPECT_NEAR(*last.wh_per_point.change_percent.value, -12, 3);
    EXPECT_FALSE(last.curve_moved);
    EXPECT_TRUE(contains(wh_per_point_sentence(unit.fit, last), "more than chance")) << wh_per_point_sentence(unit.fit, last);
}

TEST(GaugeDrift, two_meters_of_which_one_has_no_stated_limit_leave_the_energy_open) {
    std::vector<RunSetup> setups{specimen_drain(64), specimen_drain(64)};
    setups[1].meter->meter.uuid = MeterId("other");
    setups[1].meter->meter.limit_percent.reset();
    const UnitFit fit = fit_unit(simulate_drains(setups, 2));
    const RatioChange energy = energy_change(fit.drains[0], fit.drains[1], fit, specimen_claims(), 0.01);
    EXPECT_EQ(energy.change_percent.kind, Kind::not_known);
    const UnitAnalysis unit = analyse_unit(specimen_claims(), fit);
    EXPECT_EQ(unit.gauge_drift.verdict, DriftVerdict::nothing_moves) << "the gains cancel in the curves";
    EXPECT_TRUE(contains(unit.gauge_drift.sentence, "Whether E* moves is not known")) << unit.gauge_drift.sentence;
}

TEST(Drift, the_sentence_has_a_true_minus_sign) {
    const UnitAnalysis unit = unit_of(over_a_year(5, 4, [](RunSetup& setup, double share) { setup.physics.battery_wh *= 1 - 0.1 * share; }));
    EXPECT_TRUE(contains(unit.drift.sentence, ": −0.")) << unit.drift.sentence;
}

} // namespace
} // namespace ullage::test
