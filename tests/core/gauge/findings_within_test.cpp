// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/findings_within.h"

#include "core/gauge/simulated_drains.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

constexpr int planted_seeds = 300;

/// How many of the planted_seeds' runs under `load` with `gauge` get a finding of `kind`.
int hits(const LoadProfile& load, const GaugeLaw& gauge, FindingKind kind, double interval_h = 0.8) {
    int found = 0;
    for (int seed = 1; seed <= planted_seeds; ++seed) {
        RunSetup setup = drain_under(load, seed);
        setup.gauge = gauge;
        setup.tester.interval_h = interval_h;
        found += finding_of(findings_within(simulate_run(setup, static_cast<std::uint64_t>(seed)).record), kind) != nullptr;
    }
    return found;
}

void expect_honest_in_peace(GaugeCounts counts) {
    for (const auto& [name, load] : all_loads()) {
        int convicted = 0;
        std::string example;
        for (int seed = 1; seed <= planted_seeds; ++seed) {
            RunSetup setup = drain_under(load, seed);
            setup.gauge.counts = counts;
            if (name == "heavy") setup.tester.interval_h = 0.15;
            const auto findings = findings_within(simulate_run(setup, static_cast<std::uint64_t>(seed)).record);
            const auto guilty = std::ranges::find_if(findings, [](const Finding& f) { return f.weight != Weight::note; });
            if (guilty == findings.end()) continue;
            ++convicted;
            example = guilty->sentence + " " + guilty->evidence;
        }
        EXPECT_LT(convicted, planted_seeds / 100) << name << ": " << example;
    }
}

TEST(FindingsWithin, honest_gauges_are_left_in_peace) { expect_honest_in_peace(GaugeCounts::stored_energy); }
TEST(FindingsWithin, charge_counting_gauges_are_left_in_peace) { expect_honest_in_peace(GaugeCounts::charge); }

TEST(FindingsWithin, a_bend_of_twelve_points_is_found_under_every_load) {
    GaugeLaw bent;
    bent.bend_pt = 12;
    for (const auto& [name, load] : all_loads())
        EXPECT_GT(hits(load, bent, FindingKind::bent, name == "heavy" ? 0.15 : 0.8), planted_seeds * 95 / 100) << name;
}

TEST(FindingsWithin, a_gauge_blind_to_own_consumption_gets_its_hint_under_varying_loads) {
    GaugeLaw blind;
    blind.counts = GaugeCounts::delivered_energy;
    // Read each half hour: the interval of P* leaves out 0 by chance in 2.5 of 100 runs, so few may be lost to width.
    EXPECT_GT(hits(LoadProfile::stepped({{2, 220}, {9, 25}}, true), blind, FindingKind::omits_own_consumption, 0.5), planted_seeds * 95 / 100);
    EXPECT_GT(hits(LoadProfile::stepped({{3, 110}, {8, 0}}, true), blind, FindingKind::omits_own_consumption, 0.5), planted_seeds * 95 / 100);
    EXPECT_EQ(hits(LoadProfile::constant(64), blind, FindingKind::omits_own_consumption), 0) << "a steady load cannot tell";
}

TEST(FindingsWithin, a_stick_of_25_points_is_infeasible) {
    GaugeLaw sticky;
    sticky.sticks = {{71, 25, 0}};
    for (const auto& [name, load] : varying_loads()) EXPECT_GT(hits(load, sticky, FindingKind::infeasible), planted_seeds * 95 / 100) << name;
    EXPECT_GT(hits(LoadProfile::constant(64), sticky, FindingKind::infeasible), planted_seeds * 95 / 100);
}

TEST(FindingsWithin, a_gauge_of_five_point_steps_is_coarse) {
    GaugeLaw coarse;
    coarse.step_percent = 5;
    EXPECT_GT(hits(LoadProfile::constant(64), coarse, FindingKind::coarse, 0.3), planted_seeds * 95 / 100);
}

TEST(Bent, tells_size_place_and_slopes_of_a_broken_line) {
    // 0.8 points per 1 % of the drain down to 60 %, then 1.2: the break lies 10 points above the straight line.
    RecordBuilder run;
    for (int i = 0; i <= 40; ++i) run.at(i * 0.25, std::round(i <= 20 ? 100 - 2.0 * i : 60 - 3.0 * (i - 20)), 4000 + i * 20);
    const std::vector<Finding> findings = findings_within(run.record());
    const Finding* bent = finding_of(findings, FindingKind::bent);
    ASSERT_NE(bent, nullptr);
    EXPECT_EQ(bent->weight, Weight::fault);
    EXPECT_NEAR(bent->size, 10, 0.3);
    EXPECT_NE(bent->sentence.text().find("10 points more than a straight one, most at about 60 % (07:00)"), std::string::npos) << bent->sentence;
    EXPECT_NE(bent->sentence.text().find("falls more slowly before"), std::string::npos) << bent->sentence;
    EXPECT_EQ(bent->readings, (std::vector<ReadingId>{ReadingId("r1"), ReadingId("r21"), ReadingId("r41")}));
    EXPECT_LT(bent->statistic, bent->threshold);
}

TEST(Bent, a_hump_that_a_no_load_draw_explains_convicts_nobody) {
    // 130 W for 3 h, then 10 W for 25 h, own draw 20 W: against energy alone the gauge shows a large hump, against stored energy none.
    RecordBuilder run;
    const auto wh_at = [](double h) { return h < 3 ? 130 * h : 390 + 10 * (h - 3); };
    for (int i = 0; i <= 28; ++i) run.at(i, std::round(100 - 100 * (wh_at(i) + 20 * i) / (640 + 560)), 4000 + wh_at(i));
    EXPECT_EQ(finding_of(findings_within(run.record()), FindingKind::bent), nullptr);
    const PairedPoint third = analyse_energy(run.record()).points[3];
    EXPECT_GT(third.gauge_percent - (100 - 100 * third.delivered_wh / 640), 20) << "what a look at delivered energy alone would call bent";
}

TEST(Coarse, regular_drops_of_an_honest_gauge_convict_nobody) {
    RecordBuilder run; // 5 points between any two readings, because the readings are regular
    for (int i = 0; i <= 20; ++i) run.at(i * 0.5, 100 - 5 * i, 4000 + i * 40);
    EXPECT_EQ(finding_of(findings_within(run.record()), FindingKind::coarse), nullptr);
}

TEST(Coarse, tells_the_step_seen) {
    RecordBuilder run;
    for (int i = 0; i <= 40; ++i) run.at(i * 0.25, 5 * std::round((100 - 2.5 * i) / 5), 4000 + i * 20);
    const std::vector<Finding> findings = findings_within(run.record());
    const Finding* coarse = finding_of(findings, FindingKind::coarse);
    ASSERT_NE(coarse, nullptr);
    EXPECT_EQ(coarse->size, 5);
    EXPECT_EQ(coarse->sentence, "Gauge moves in steps of 5 points, not of 1 point as stated.");
    run.record().unit.gauge_step_percent = 5;
    EXPECT_EQ(finding_of(findings_within(run.record()), FindingKind::coarse), nullptr) << "as stated";
}

TEST(FoundOff, is_a_note_with_the_width_of_its_bracket_unless_a_cut_off_is_marked) {
    RecordBuilder run;
    for (int i = 0; i <= 9; ++i) run.at(i, 100 - 10 * i, 4000 + i * (i % 2 == 0 ? 80 : 90));
    run.at(13, {}, 4810);
    run.record().run.end = RunEnd::found_off;
    run.record().run.end_noticed_within_min.reset();
    const std::vector<Finding> findings = findings_within(run.record());
    const Finding* off = finding_of(findings, FindingKind::found_off_without_mark);
    ASSERT_NE(off, nullptr);
    EXPECT_EQ(off->weight, Weight::note);
    EXPECT_EQ(off->sentence, "Output was found off at 15:00; nobody saw when it went off, so the run time is a bracket.");
    EXPECT_NEAR(off->size, 4, 0.1) << off->evidence;
    run.record().readings.back().values.mark = MarkKind::cut_off;
    EXPECT_EQ(finding_of(findings_within(run.record()), FindingKind::found_off_without_mark), nullptr);
}

} // namespace
} // namespace ullage::test
