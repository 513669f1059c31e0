// SPDX-License-Identifier: GPL-3.0-or-later
// Drains whose unit logs its own gauge, with a clock, noise and drop-outs as the world has them, beside a meter's log.
#include "core/gauge/simulated_drains.h"
#include "gauge/gauge_analysis.h"
#include "support/seeds.h"
#include "support/simulated_log.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace ullage::test {
namespace {

struct LoggedDrain {
    RunSetup setup;
    SimulatedRun run;
};

/// Three notes by hand, a meter's log with a gap, and the gauge's with drop-outs, flicker and a clock that was set right to `clock_off_s`.
LoggedDrain logged_drain(const LoadProfile& load, int seed, const GaugeLaw& gauge = {}, double clock_off_s = 20) {
    RunSetup setup = drain_under(load, seed);
    setup.gauge = gauge;
    setup.tester.interval_h = 5;
    LoggedDrain drain{setup, simulate_run(setup, static_cast<std::uint64_t>(seed))};
    LogSetup meter;
    meter.interval_s = 10;
    meter.gaps_h = {{2.1, 2.4}};
    give_log(drain.run.record, simulated_log(setup, drain.run, meter, static_cast<std::uint64_t>(seed)));
    GaugeLogSetup own;
    own.behind_s = clock_off_s;
    own.drop_outs = 0.02;
    own.flicker_pt = 0.1;
    own.gaps_h = {{1.2, 1.5}};
    give_gauge_log(drain.run.record, simulated_gauge_log(setup, drain.run, own, static_cast<std::uint64_t>(seed) + 1));
    return drain;
}

RunRecord without_gauge_log(RunRecord record) {
    record.gauge_log.reset();
    return record;
}

TEST(GaugeLog, honest_gauges_are_convicted_in_fewer_than_one_run_of_a_hundred) {
    constexpr int seeds = simulated_runs(60);
    int judged = 0, convicted = 0;
    std::string example;
    for (const GaugeCounts counts : {GaugeCounts::stored_energy, GaugeCounts::charge})
        for (const Steps steps : {Steps::rounded, Steps::truncated})
            for (const auto& [name, load] : all_loads())
                for (int seed = 1; seed <= seeds; ++seed) {
                    GaugeLaw law;
                    law.counts = counts;
                    law.steps = steps;
                    const LoggedDrain drain = logged_drain(load, seed, law, seed % 2 == 0 ? 25 : -25);
                    const EnergyAnalysis energy = analyse_energy(drain.run.record);
                    ASSERT_TRUE(energy.gauge_log && energy.gauge_log->used) << name << ": " << energy.gauge_log->sentence;
                    const GaugeAnalysis gauge = analyse_gauge(drain.run.record, energy);
                    ++judged;
                    for (const Finding& finding : gauge.findings)
                        if (finding.weight != Weight::note) {
                            ++convicted;
                            example = name + " " + std::to_string(seed) + ": " + finding.sentence + " " + finding.evidence;
                            break;
                        }
                }
    EXPECT_LE(convicted * 100, judged) << convicted << " of " << judged << ", such as " << example;
}

TEST(GaugeLog, honest_gauges_that_flicker_by_more_than_a_step_are_not_convicted_either) {
    int judged = 0, convicted = 0;
    std::string example;
    for (const double flicker_pt : {0.4, 1.0})
        for (const auto& [name, load] : all_loads())
            for (int seed = 1; seed <= 20; ++seed) {
                LoggedDrain drain = logged_drain(load, seed);
                GaugeLogSetup own;
                own.interval_s = seed % 2 == 0 ? 30 : 5;
                own.drop_outs = 0.02;
                own.flicker_pt = flicker_pt;
                give_gauge_log(drain.run.record, simulated_gauge_log(drain.setup, drain.run, own, static_cast<std::uint64_t>(seed)));
                const GaugeAnalysis gauge = analyse_gauge(drain.run.record, analyse_energy(drain.run.record));
                ++judged;
                for (const Finding& finding : gauge.findings)
                    if (finding.weight != Weight::note) {
                        ++convicted;
                        example = name + ", flicker " + std::to_string(flicker_pt) + ": " + finding.sentence + " " + finding.evidence;
                        break;
                    }
            }
    EXPECT_LE(convicted * 100, judged) << convicted << " of " << judged << ", such as " << example;
}

TEST(GaugeLog, gives_a_narrower_gauge_error_than_the_hand_readings_and_covers_the_true_one) {
    long points = 0, covered = 0, hand_points = 0;
    double width = 0, hand_width = 0;
    for (const auto& [name, load] : all_loads())
        for (int seed = 1; seed <= 20; ++seed) {
            GaugeLaw law;
            law.bend_pt = seed % 2 == 0 ? 8 : -8;
            LoggedDrain drain = logged_drain(load, seed, law);
            // Its clock was four minutes behind, which was estimated with a standard uncertainty of 12 s.
            Random random(static_cast<std::uint64_t>(seed));
            const double estimated_s = 240 + random.normal(12);
            GaugeLogSetup own;
            own.behind_s = 240;
            own.drop_outs = 0.02;
            own.flicker_pt = 0.1;
            give_gauge_log(drain.run.record, simulated_gauge_log(drain.setup, drain.run, own, static_cast<std::uint64_t>(seed)),
                           std::llround(1000 * estimated_s), 12);
            const SimulatedUnit& unit = drain.run.truth.physics;
            const Discharge discharge(unit, drain.setup.load, 0);
            const SimulatedGauge gauge(law, unit, discharge);
            const EnergyAnalysis energy = analyse_energy(drain.run.record);
            const GaugeAnalysis judged = analyse_gauge(drain.run.record, energy);
            ASSERT_EQ(judged.basis, ErrorBasis::delivered_depth);
            for (const GaugeErrorPoint& error : judged.errors) {
                const PairedPoint& point = energy.points[error.point];
                if (point.reading != no_reading) continue;
                const double hours = hours_between(drain.setup.start_ms, point.time_ms) + (240 - estimated_s) / 3600;
                const double truth = gauge.exact_percent(hours) - 100 * (1 - discharge.at(hours).delivered_wh / drain.run.truth.full_drain_wh);
                ++points;
                covered += truth >= error.lower_pt && truth <= error.upper_pt;
                width += error.upper_pt - error.lower_pt;
            }
            const RunRecord by_hand = without_gauge_log(drain.run.record);
            for (const GaugeErrorPoint& error : analyse_gauge(by_hand, analyse_energy(by_hand)).errors) {
                ++hand_points;
                hand_width += error.upper_pt - error.lower_pt;
            }
        }
    ASSERT_GT(points, 20 * hand_points) << "a hundred steps beside a few notes";
    EXPECT_GE(static_cast<double>(covered) / static_cast<double>(points), 0.93);
    EXPECT_LT(width / static_cast<double>(points), 0.7 * hand_width / static_cast<double>(hand_points));
}

TEST(GaugeLog, the_own_draw_found_with_it_covers_the_true_one_though_the_clocks_differ) {
    long told = 0, covered = 0;
    for (const auto& [name, load] : varying_loads())
        for (int seed = 1; seed <= 50; ++seed) {
            const LoggedDrain drain = logged_drain(load, seed, {}, seed % 2 == 0 ? 30 : -30);
            const Quantity draw = analyse_gauge(drain.run.record, analyse_energy(drain.run.record)).own_draw_w;
            if (draw.kind != Kind::projected || !draw.lower) continue;
            ++told;
            covered += drain.run.truth.no_load_draw_w >= *draw.lower && drain.run.truth.no_load_draw_w <= *draw.upper;
        }
    EXPECT_GE(told, 75) << "a log tells it where three notes cannot";
    EXPECT_GE(covered * 100, told * 93) << covered << " of " << told;
}

TEST(GaugeLog, times_a_stuck_gauge_that_three_notes_cannot_show) {
    GaugeLaw law;
    law.sticks = {{71, 8, 3}};
    int by_log = 0, by_hand = 0;
    for (int seed = 1; seed <= 40; ++seed) {
        const LoggedDrain drain = logged_drain(LoadProfile::constant(64), seed, law);
        const EnergyAnalysis energy = analyse_energy(drain.run.record);
        for (const Finding& finding : analyse_gauge(drain.run.record, energy).findings)
            if (finding.kind == FindingKind::stuck) {
                ++by_log;
                EXPECT_NE(finding.sentence.text().find("stuck at 71 %"), std::string::npos) << finding.sentence;
                EXPECT_NEAR(finding.size, 8, 2);
                break;
            }
        const RunRecord noted = without_gauge_log(drain.run.record);
        for (const Finding& finding : analyse_gauge(noted, analyse_energy(noted)).findings) by_hand += finding.kind == FindingKind::stuck;
    }
    EXPECT_GE(by_log, 38);
    EXPECT_EQ(by_hand, 0);
}

TEST(GaugeLog, what_the_unit_says_of_its_output_never_enters_delivered_energy) {
    const LoggedDrain drain = logged_drain(LoadProfile::constant(100), 3);
    const EnergyAnalysis energy = analyse_energy(drain.run.record), without = analyse_energy(without_gauge_log(drain.run.record));
    EXPECT_EQ(*energy.delivered_wh.value, *without.delivered_wh.value);
    EXPECT_EQ(*energy.delivered_wh.half_width(), *without.delivered_wh.half_width());
    EXPECT_EQ(energy.track.points.size(), without.track.points.size());
    EXPECT_EQ(energy.intervals.size(), without.intervals.size()) << "tables stay those of what was noted";
}

TEST(GaugeLog, one_whose_clock_is_hours_off_is_not_used_and_says_so) {
    const LoggedDrain drain = logged_drain(LoadProfile::constant(100), 4, {}, 2 * 3600);
    const EnergyAnalysis energy = analyse_energy(drain.run.record);
    ASSERT_TRUE(energy.gauge_log);
    EXPECT_FALSE(energy.gauge_log->used);
    EXPECT_NE(energy.gauge_log->sentence.text().find("It was not used."), std::string::npos) << energy.gauge_log->sentence;
    EXPECT_EQ(energy.points.size(), analyse_energy(without_gauge_log(drain.run.record)).points.size());
}

TEST(GaugeLog, says_how_many_steps_it_timed_and_what_it_left_out) {
    const LoggedDrain drain = logged_drain(LoadProfile::constant(100), 5);
    const EnergyAnalysis energy = analyse_energy(drain.run.record);
    ASSERT_TRUE(energy.gauge_log);
    const std::string& words = energy.gauge_log->sentence;
    EXPECT_NE(words.find("drop-outs were left out"), std::string::npos) << words;
    EXPECT_NE(words.find("steps of the gauge are timed by it, its clock known within 60 s"), std::string::npos) << words;
    EXPECT_GT(energy.gauge_log->steps, 90);
}

} // namespace
} // namespace ullage::test
