// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/gauge_analysis.h"

#include "support/simulator.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

RunSetup unit_under(const LoadProfile& load) {
    RunSetup setup;
    setup.unit.name = "Specimen";
    setup.unit.rated_energy_wh = 1050;
    setup.unit.rated_output_w = 1200;
    setup.physics = {1000, 12, 1.12, 4e-5};
    setup.load = load;
    setup.meter->meter.step_wh = 1;
    setup.meter->meter.limit_percent = 1;
    setup.tester.interval_h = 0.8;
    setup.tester.jitter = 0.4;
    return setup;
}

GaugeAnalysis judge(const SimulatedRun& run) { return analyse_gauge(run.record, analyse_energy(run.record)); }

long faults_in(const GaugeAnalysis& analysis) {
    long faults = 0;
    for (const Finding& finding : analysis.findings) faults += finding.weight != Weight::note;
    return faults;
}

bool found(const GaugeAnalysis& analysis, FindingKind kind) {
    for (const Finding& finding : analysis.findings)
        if (finding.kind == kind) return true;
    return false;
}

constexpr int seeds = 200; // the ensemble judges 13 200 honest runs

const std::vector<std::pair<const char*, LoadProfile>>& loads() {
    static const std::vector<std::pair<const char*, LoadProfile>> all{
        {"constant", LoadProfile::constant(64)},
        {"heavy", LoadProfile::constant(400)},
        {"cycling", LoadProfile::cycling(120, 10, 0.9, 0.4)},
        {"stepped", LoadProfile::stepped({{2, 220}, {9, 25}, {2, 220}, {9, 25}}, true)},
        {"idle nights", LoadProfile::stepped({{3, 110}, {8, 0}}, true)},
    };
    return all;
}

TEST(HonestGauges, are_convicted_in_fewer_than_one_run_of_a_hundred) {
    for (const GaugeCounts counts : {GaugeCounts::stored_energy, GaugeCounts::charge})
        for (const auto& [name, load] : loads()) {
            int convicted = 0;
            std::string example;
            for (int seed = 1; seed <= seeds; ++seed) {
                RunSetup setup = unit_under(load);
                setup.gauge.counts = counts;
                if (std::string(name) == "heavy") setup.tester.interval_h = 0.15;
                const GaugeAnalysis analysis = judge(simulate_run(setup, static_cast<std::uint64_t>(seed)));
                if (faults_in(analysis) == 0) continue;
                ++convicted;
                example = analysis.findings.front().sentence + " " + analysis.findings.front().evidence;
            }
            EXPECT_LT(convicted, seeds / 100) << name << (counts == GaugeCounts::charge ? ", charge counting: " : ": ") << example;
        }
}

/// Runs a planted fault over many seeds and expects it to be found in more than 95 of 100.
void expect_found(FindingKind kind, const RunSetup& setup) {
    int hits = 0;
    for (int seed = 1; seed <= seeds; ++seed) hits += found(judge(simulate_run(setup, static_cast<std::uint64_t>(seed))), kind);
    EXPECT_GT(hits, seeds * 95 / 100) << finding_key(kind);
}

TEST(PlantedFaults, a_stick_of_twelve_points_is_found) {
    RunSetup setup = unit_under(LoadProfile::constant(64));
    setup.tester.interval_h = 0.5; // an honest fall of about 4 points, so that the stick spans more than two readings
    setup.gauge.sticks = {{71, 12, 3}};
    expect_found(FindingKind::stuck, setup);
}

TEST(PlantedFaults, a_jump_of_ten_points_is_found) {
    RunSetup setup = unit_under(LoadProfile::constant(64));
    setup.tester.interval_h = 0.5; // an honest fall of about 4 points
    setup.gauge.sticks = {{64, 10, 0}};
    expect_found(FindingKind::jump, setup);
}

TEST(PlantedFaults, a_gauge_held_at_full_for_ten_points_is_found) {
    RunSetup setup = unit_under(LoadProfile::constant(64));
    setup.gauge.sticks = {{100, 10, 20}};
    expect_found(FindingKind::held_at_full, setup);
}

TEST(PlantedFaults, a_gauge_that_ends_at_ten_percent_is_found) {
    RunSetup setup = unit_under(LoadProfile::constant(64));
    setup.gauge.ends_at_percent = 10;
    expect_found(FindingKind::stopped_early, setup);
}

TEST(PlantedFaults, a_reserve_of_eight_percent_is_found) {
    RunSetup setup = unit_under(LoadProfile::constant(64));
    setup.gauge.reserve_wh = 70;
    setup.tester.closing_below_percent = 10;
    expect_found(FindingKind::hidden_reserve, setup);
}

TEST(PlantedFaults, a_rebound_of_six_points_is_found) {
    RunSetup setup = unit_under(LoadProfile::stepped({{3, 220}, {2, 20}}, true));
    setup.gauge.rebound_pt = 8;
    setup.gauge.rebound_fades_h = 6;
    setup.tester.interval_h = 0.15; // read often enough that the fall between two readings does not hide the rise
    expect_found(FindingKind::rebound, setup);
}

} // namespace
} // namespace ullage::test
