// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/gauge_analysis.h"

#include "judged_run.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

using test::find;
using test::judge;
using test::RecordBuilder;

/// A straight drain: 1000 Wh rated, 800 Wh delivered at 80 W in 10 h, a reading each half hour.
RecordBuilder drain(double (*gauge)(double hours)) {
    RecordBuilder run;
    for (int i = 0; i <= 20; ++i) run.at(i * 0.5, std::round(gauge(i * 0.5)), 4000 + i * 40);
    return run;
}

TEST(Findings, a_straight_gauge_is_left_in_peace) {
    RecordBuilder run = drain([](double h) { return 100 - 10 * h; });
    const GaugeAnalysis analysis = judge(run);
    EXPECT_TRUE(analysis.findings.empty()) << analysis.findings.front().sentence;
    EXPECT_EQ(analysis.verdict, "no fault found, within 1 pt");
}

TEST(Findings, a_gauge_that_stands_still_is_stuck_with_its_readings_and_size) {
    RecordBuilder run = drain([](double h) { return h < 3 ? 100 - 10 * h : std::min(70.0, 100 - 10 * h + (h < 5 ? 20 : 0)); });
    const GaugeAnalysis analysis = judge(run);
    const Finding* stuck = find(analysis, FindingKind::stuck);
    ASSERT_NE(stuck, nullptr);
    EXPECT_EQ(stuck->weight, Weight::fault);
    EXPECT_EQ(stuck->readings, (std::vector<ReadingId>{ReadingId("r7"), ReadingId("r8"), ReadingId("r9"), ReadingId("r10")}));
    EXPECT_NEAR(stuck->size, 15, 1e-9);
    EXPECT_EQ(stuck->sentence, "Gauge stuck at 70 % from 05:00 to 06:30 while 120 Wh were delivered (about 15 points).");
    EXPECT_GT(stuck->statistic, stuck->threshold);
    EXPECT_NE(find(analysis, FindingKind::jump), nullptr) << "it caught up in one step";
}

TEST(Findings, standing_still_at_the_start_of_a_full_run_is_held_at_full) {
    RecordBuilder run = drain([](double h) { return std::min(100.0, 100 - 10 * h + (h < 2 ? 20 : 0)); });
    const GaugeAnalysis analysis = judge(run);
    ASSERT_NE(find(analysis, FindingKind::held_at_full), nullptr);
    EXPECT_EQ(find(analysis, FindingKind::stuck), nullptr);
}

TEST(Findings, a_fall_beyond_energy_and_time_is_a_jump) {
    RecordBuilder run = drain([](double h) { return 100 - 9 * h - (h > 4 ? 10 : 0); });
    const GaugeAnalysis analysis = judge(run);
    const Finding* jump = find(analysis, FindingKind::jump);
    ASSERT_NE(jump, nullptr);
    EXPECT_EQ(jump->readings, (std::vector<ReadingId>{ReadingId("r9"), ReadingId("r10")}));
    EXPECT_NEAR(jump->size, 9, 1.1);
}

TEST(Findings, a_gauge_that_falls_overnight_without_load_is_no_jump) {
    // 38 W no-load draw: 8 idle hours take 304 Wh of the battery although nothing is delivered.
    RecordBuilder run;
    for (int i = 0; i <= 8; ++i) run.at(i * 0.5, std::round(100 - 5.0 * i), 4000 + i * 40);
    run.at(12, 30, 4320);
    for (int i = 1; i <= 6; ++i) run.at(12 + i * 0.5, std::round(30 - 5.0 * i), 4320 + i * 40);
    EXPECT_EQ(find(judge(run), FindingKind::jump), nullptr);
}

TEST(Findings, a_rise_of_two_steps_without_charge_is_a_rebound_one_step_is_none) {
    RecordBuilder one = drain([](double h) { return 100 - 10 * h + (h == 5 ? 6 : 0); });
    EXPECT_EQ(find(judge(one), FindingKind::rebound), nullptr);
    RecordBuilder two = drain([](double h) { return 100 - 10 * h + (h == 5 ? 8 : 0); });
    const GaugeAnalysis analysis = judge(two);
    ASSERT_NE(find(analysis, FindingKind::rebound), nullptr);
    EXPECT_DOUBLE_EQ(find(analysis, FindingKind::rebound)->size, 3);
}

TEST(Findings, a_cut_off_with_points_left_is_stopped_early_and_says_what_cannot_be_told) {
    RecordBuilder run = drain([](double h) { return 100 - 8.8 * h; });
    const GaugeAnalysis analysis = judge(run);
    const Finding* early = find(analysis, FindingKind::stopped_early);
    ASSERT_NE(early, nullptr);
    EXPECT_EQ(early->sentence, "Off at 12 % shown: the gauge ended early, or the unit stopped with energy left; this run cannot tell which.");
    EXPECT_EQ(analysis.verdict, "shuts off showing 12 %");
    run.record().run.end = RunEnd::stopped_by_tester;
    EXPECT_EQ(find(judge(run), FindingKind::stopped_early), nullptr) << "the tester stopped it, not the unit";
}

TEST(Findings, a_last_gauge_reading_long_before_the_cut_off_convicts_nobody) {
    RecordBuilder run;
    for (int i = 0; i <= 16; ++i) run.at(i * 0.5, 100 - 5 * i, 4000 + i * 40);
    run.at(10, {}, 4800);
    EXPECT_EQ(find(judge(run), FindingKind::stopped_early), nullptr);
}

TEST(Findings, energy_after_the_gauge_reached_the_bottom_is_a_hidden_reserve_in_a_bracket) {
    RecordBuilder run = drain([](double h) { return std::max(1.0, 100 - 12.5 * h); });
    const GaugeAnalysis analysis = judge(run);
    const Finding* reserve = find(analysis, FindingKind::hidden_reserve);
    ASSERT_NE(reserve, nullptr);
    EXPECT_EQ(reserve->sentence, "After the gauge had come down to 1 %, at least 160 Wh and at most 200 Wh more were delivered.");
    EXPECT_EQ(reserve->size_unit, "Wh");
}

TEST(Findings, delivered_energy_beyond_gauge_implied_is_said_with_both_readings_of_it) {
    RecordBuilder run = drain([](double h) { return 100 - 6 * h; });
    const GaugeAnalysis analysis = judge(run);
    const Finding* exceeds = find(analysis, FindingKind::delivered_exceeds_gauge_implied);
    ASSERT_NE(exceeds, nullptr);
    EXPECT_NE(exceeds->sentence.text().find("or the battery holds more than its label"), std::string::npos);
    run.record().meter->limit_percent.reset();
    EXPECT_EQ(find(judge(run), FindingKind::delivered_exceeds_gauge_implied), nullptr) << "no limit, no verdict";
}

TEST(Findings, of_three_readings_the_bound_is_the_answer_and_what_would_sharpen_it) {
    RecordBuilder run;
    run.at(0, 100, 4000).at(5, 50, 4400).at(10, 0, 4800);
    const GaugeAnalysis analysis = judge(run);
    EXPECT_TRUE(analysis.findings.empty());
    EXPECT_EQ(analysis.verdict, "no fault found, within 1 pt at 3 readings");
    EXPECT_EQ(*analysis.least_error_pt.value, 0);
    EXPECT_FALSE(analysis.sharpening.empty());
    EXPECT_FALSE(analysis.line.has_value());
    EXPECT_FALSE(analysis.line_reason.empty());
}

TEST(Findings, with_a_single_reading_there_is_nothing_to_hold_it_against) {
    RecordBuilder run;
    run.at(0, 100, 4000).at(10, {}, 4800);
    EXPECT_EQ(judge(run).verdict, "not judged: the gauge was read once");
}

TEST(GaugeError, is_measured_against_delivered_depth_for_a_full_drain_and_the_label_otherwise) {
    RecordBuilder run = drain([](double h) { return 100 - 10 * h + (h > 0 && h < 10 ? 5 : 0); });
    GaugeAnalysis full = judge(run);
    EXPECT_EQ(full.basis, ErrorBasis::delivered_depth);
    EXPECT_NEAR(full.errors[10].error_pt, 5, 1e-9);
    EXPECT_LT(full.errors[10].lower_pt, 5);
    run.record().run.end = RunEnd::stopped_by_tester;
    GaugeAnalysis part = judge(run);
    EXPECT_EQ(part.basis, ErrorBasis::rated_energy);
    // 400 Wh of 1000 Wh rated at 55 % shown: 55 - 60.
    EXPECT_NEAR(part.errors[10].error_pt, -5, 1e-9);
}

TEST(GaugeError, the_constructed_hump_of_the_test_methods_sheet_is_six_points) {
    // Reference sheet 04, 4.5 (constructed): at 430 of 860 Wh 50 % is left and the gauge shows 56 %.
    RecordBuilder run;
    run.at(0, 100, 1000).at(8.6, 56, 1430).at(17.2, 0, 1860);
    EXPECT_NEAR(judge(run).errors[1].error_pt, 6.0, 1e-9);
}

TEST(GaugeError, a_run_without_delivered_energy_has_none) {
    RecordBuilder run;
    run.record().run.kind = RunKind::no_load_drain;
    run.at(0, 100, 4000).at(5, 60, 4000).at(10, 20, 4000);
    EXPECT_TRUE(judge(run).errors.empty());
}

TEST(GaugeLine, a_straight_gauge_fits_and_a_bent_one_does_not) {
    RecordBuilder straight = drain([](double h) { return 100 - 10 * h; });
    const GaugeAnalysis fits = judge(straight);
    ASSERT_TRUE(fits.line.has_value());
    EXPECT_TRUE(fits.line->straight);
    EXPECT_NEAR(fits.line->fit.slope, 0.8, 0.005);
    RecordBuilder bent = drain([](double h) { return 100 - 10 * h + 0.5 * h * (10 - h); });
    const GaugeAnalysis fails = judge(bent);
    ASSERT_TRUE(fails.line.has_value());
    EXPECT_FALSE(fails.line->straight);
    EXPECT_LT(fails.line->p_value, 0.001);
}

} // namespace
} // namespace ullage
