// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/share_bounds.h"

#include "gauge/gauge_analysis.h"
#include "gauge/inside/lone_reading.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

GaugeAnalysis judged(RecordBuilder& run) { return analyse_gauge(run.record(), analyse_energy(run.record())); }

const Finding* told(const GaugeAnalysis& analysis, FindingKind kind) {
    const auto found = std::ranges::find(analysis.findings, kind, &Finding::kind);
    return found == analysis.findings.end() ? nullptr : &*found;
}

/// A unit of 1480 Wh under a steady 16.1 W: 34 % shown after 16 h with 258 Wh metered, off after 52 h with 837 Wh.
RecordBuilder gauge_that_fell_early() {
    RecordBuilder run;
    run.record().unit.rated_energy_wh = 1480;
    run.at(0, 100, 0).at(16, 34, 258).at(52, 0, 837, MarkKind::cut_off);
    return run;
}

TEST(ShareBounds, one_reading_between_start_and_cut_off_holds_a_gauge_against_what_came_out) {
    RecordBuilder run = gauge_that_fell_early();
    const GaugeAnalysis analysis = judged(run);
    ASSERT_EQ(analysis.share_bounds.size(), 1u);
    const ShareBound& bound = analysis.share_bounds.front();
    EXPECT_NEAR(bound.delivered_share, 0.308, 0.001);
    EXPECT_NEAR(bound.time_share, 0.308, 0.001);
    // 69.2 % were left: 68 to 72 % with half a step, and 2.2 points (less at this depth) for charge against energy.
    EXPECT_NEAR(bound.least_percent, 68.3, 0.6);
    EXPECT_NEAR(bound.most_percent, 71.9, 0.6);
    EXPECT_GE(*analysis.least_error_pt.value, 33);
    EXPECT_EQ(analysis.least_error_pt.kind, Kind::at_least);
    const Finding* off = told(analysis, FindingKind::outside_shares);
    ASSERT_NE(off, nullptr);
    EXPECT_EQ(off->weight, Weight::fault);
    EXPECT_NE(off->sentence.text().find("at least 34 points too little: 31 % of the energy and of the time"), std::string::npos) << off->sentence;
    EXPECT_EQ(analysis.verdict, "off by at least 34 pt");
}

TEST(ShareBounds, an_accurate_gauge_lies_between_the_shares_of_energy_and_time_whatever_the_draw) {
    for (const double draw_w : {0.0, 10.0, 60.0}) {
        RecordBuilder run; // 200 W for an hour, then 20 W for nine
        const double total = 380 + draw_w * 10;
        const auto shown = [&](double wh, double hours) { return 100 * (1 - (wh + draw_w * hours) / total); };
        run.record().unit.gauge_step_percent = 0.1;
        run.at(0, 100, 0).at(1, shown(200, 1), 200).at(5, shown(280, 5), 280).at(10, 0, 380, MarkKind::cut_off);
        for (const ShareBound& bound : judged(run).share_bounds) EXPECT_EQ(bound.off_pt, 0) << draw_w;
    }
}

TEST(ShareBounds, are_given_for_full_drains_alone) {
    RecordBuilder run = gauge_that_fell_early();
    run.record().run.end = RunEnd::stopped_by_tester;
    EXPECT_TRUE(judged(run).share_bounds.empty());
    run.record().run.end = RunEnd::cut_off_seen;
    run.record().run.started_full = false;
    EXPECT_TRUE(judged(run).share_bounds.empty());
}

TEST(ShareBounds, of_a_run_found_off_the_unknown_end_widens_the_share_of_time) {
    RecordBuilder seen = gauge_that_fell_early(), found = gauge_that_fell_early();
    found.record().run.end = RunEnd::found_off;
    found.record().run.end_noticed_within_min.reset();
    found.record().readings.back().values.mark.reset();
    // Off somewhere between 16 and 52 h: all of the time may have gone by then.
    EXPECT_LT(judged(found).share_bounds.front().least_percent, judged(seen).share_bounds.front().least_percent - 20);
}

TEST(LoneReading, a_slip_of_the_pen_is_doubted_in_place_of_the_gauge) {
    RecordBuilder run;
    for (int i = 0; i <= 10; ++i) run.at(i, i == 3 ? 17 : 101 - 10 * i - (i == 0 ? 1 : 0), 80 * i); // 71 at 3 h, written as 17
    const GaugeAnalysis analysis = judged(run);
    const Finding* doubt = told(analysis, FindingKind::lone_reading);
    ASSERT_NE(doubt, nullptr) << analysis.verdict;
    EXPECT_EQ(doubt->sentence, "17 % at 05:00 stands alone: mistyped for 71 %? Without it nothing speaks against the gauge.");
    EXPECT_EQ(doubt->weight, Weight::doubt);
    EXPECT_EQ(analysis.findings.size(), 1u);
    EXPECT_EQ(analysis.verdict, "one reading doubted (17 %)");
    EXPECT_LT(*analysis.least_error_pt.value, 1);
}

TEST(LoneReading, what_no_slip_explains_stays_a_fault) {
    RecordBuilder run = gauge_that_fell_early(); // 34 is no slip of 68 to 72
    EXPECT_EQ(told(judged(run), FindingKind::lone_reading), nullptr);
}

TEST(LoneReading, slips_are_digits_changed_over_left_out_or_written_twice) {
    EXPECT_EQ(slip_of_pen(17, 65, 75), 71);
    EXPECT_EQ(slip_of_pen(7, 65, 75), 70);
    EXPECT_EQ(slip_of_pen(10, 95, 100), 100);
    EXPECT_EQ(slip_of_pen(55, 3, 8), 5);
    EXPECT_FALSE(slip_of_pen(34, 68, 72));
    EXPECT_FALSE(slip_of_pen(71.5, 10, 20));
}

TEST(OwnDraw, of_a_full_drain_is_bounded_by_what_a_battery_of_the_label_holds) {
    RecordBuilder run = gauge_that_fell_early();
    const GaugeAnalysis analysis = judged(run);
    EXPECT_EQ(analysis.own_draw_w.kind, Kind::bracket);
    EXPECT_EQ(*analysis.own_draw_w.lower, 0);
    // (1.1 x 1480 - 837 less 1 %) / 52 h
    EXPECT_NEAR(*analysis.own_draw_w.upper, (1628 - 837 * 0.99) / 52, 0.02);
    EXPECT_NEAR(*analysis.own_energy_wh.lower, 837 * 0.99, 1);
    EXPECT_NEAR(*analysis.own_energy_wh.upper, 1628 * 1.01, 1);
    EXPECT_NE(analysis.losses.sentence.text().find("at most 15"), std::string::npos) << analysis.losses.sentence;
}

TEST(OwnDraw, of_a_steady_load_on_a_coarse_register_is_a_bracket_and_no_fit) {
    RecordBuilder run;
    run.record().meter->step_wh = 10;
    for (int i = 0; i <= 16; ++i) run.at(i, 100 - 6.25 * i, 10 * ((47 * i) / 10));
    EXPECT_EQ(judged(run).own_draw_w.kind, Kind::bracket);
}

TEST(HiddenReset, a_steady_load_clears_the_register_and_leaves_the_gauge_at_fault) {
    RecordBuilder run;
    run.record().unit.rated_energy_wh = 1480;
    // 16 W at every interval, while the gauge drops from 90 to 34 in one of them.
    const double gauge[] = {100, 96, 93, 90, 34, 31, 26, 22};
    for (int i = 0; i < 8; ++i) run.at(4 * i, gauge[i], 64.4 * i);
    run.record().run.end = RunEnd::stopped_by_tester;
    const GaugeAnalysis analysis = judged(run);
    EXPECT_EQ(told(analysis, FindingKind::hidden_reset), nullptr);
    EXPECT_NE(told(analysis, FindingKind::jump), nullptr) << analysis.verdict;
}

} // namespace
} // namespace ullage::test
