// SPDX-License-Identifier: GPL-3.0-or-later
// Small units with honest gauges under meters whose register step nobody stated: what a coarse register hides must not be held against the gauge.
#include "run_analysis/run_analysis.h"
#include "support/simulator_run.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage::test {
namespace {

RunSetup small_unit(double step_wh, std::uint64_t seed) {
    RunSetup setup;
    setup.unit.name = "Small";
    setup.unit.rated_energy_wh = 288;
    setup.unit.rated_output_w = 300;
    Random random(seed * 7919 + 17);
    setup.physics.battery_wh = random.uniform(250, 288);
    setup.physics.p0_w = random.uniform(3, 8);
    setup.physics.a = random.uniform(1.05, 1.2);
    setup.load = LoadProfile::constant(random.uniform(25, 60));
    setup.meter->meter.name = "Meter";
    setup.meter->meter.uuid = MeterId(setup.meter->meter.name);
    setup.meter->meter.step_wh = step_wh;
    setup.meter->meter.limit_percent = 1;
    setup.meter->start_wh = step_wh * std::floor(random.uniform(0, 300));
    setup.tester.jitter = 0.4;
    setup.tester.interval_h = 0.08 * Discharge(setup.physics, setup.load).end_hours();
    return setup;
}

TEST(UnstatedStep, no_honest_gauge_of_a_small_unit_is_accused_and_the_energy_is_covered) {
    constexpr int seeds = 60;
    for (const double step_wh : {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0}) {
        int accused = 0, covered = 0;
        for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
            SimulatedRun run = simulate_run(small_unit(step_wh, seed), seed);
            run.record.meter->step_wh.reset();
            const RunAnalysis analysis = analyse_run(run.record);
            accused += std::ranges::any_of(analysis.gauge.findings, [](const Finding& finding) { return finding.weight == Weight::fault; }) ? 1 : 0;
            const Quantity& delivered = analysis.energy.delivered_wh;
            covered += *delivered.lower <= run.truth.delivered_wh && run.truth.delivered_wh <= *delivered.upper ? 1 : 0;
        }
        EXPECT_EQ(accused, 0) << "step " << step_wh << " Wh";
        EXPECT_GE(covered, std::floor(0.9 * seeds)) << "step " << step_wh << " Wh";
    }
}

} // namespace
} // namespace ullage::test
