// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulated_log.h"
#include "unit/drain_summary.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

/// A unit with a quadratic loss under a load that cycles far faster than it is read.
RunSetup fast_cycling() {
    RunSetup setup;
    setup.unit.rated_energy_wh = 1000;
    setup.unit.rated_output_w = 600;
    setup.physics.b_per_w = 1e-4;
    setup.load = LoadProfile::cycling(300, 10, 0.25, 0.3);
    setup.meter->meter.limit_percent = 1;
    setup.meter->meter.step_wh = 1;
    return setup;
}

TEST(LoggedDrain, the_integral_of_p_squared_that_the_curvature_rests_on_is_that_of_the_log) {
    const RunSetup setup = fast_cycling();
    SimulatedRun run = simulate_run(setup, 5);
    const double by_hand_w2h = summarise_drain(run.record).squared_w2h;
    EXPECT_LT(by_hand_w2h, 0.6 * run.truth.squared_w2h); // means over an hour hide what the load does
    for (Reading& reading : run.record.readings) reading.values.register_wh.reset();
    LogSetup log;
    log.interval_s = 5;
    give_log(run.record, simulated_log(setup, run, log, 5));
    const DrainSummary drain = summarise_drain(run.record);
    ASSERT_TRUE(drain.used) << drain.reason;
    // The meter's gain, up to 1 %, counts twice.
    EXPECT_NEAR(drain.squared_w2h, run.truth.squared_w2h, 0.03 * run.truth.squared_w2h);
    EXPECT_NEAR(drain.delivered_wh, run.truth.delivered_wh, 0.015 * run.truth.delivered_wh);
}

TEST(LoggedDrain, a_register_alone_gives_the_squares_as_far_as_its_steps_resolve_the_load) {
    RunSetup setup = fast_cycling();
    setup.load = LoadProfile::cycling(300, 10, 2, 0.3);
    SimulatedRun run = simulate_run(setup, 6);
    for (Reading& reading : run.record.readings) reading.values.register_wh.reset();
    LogSetup log;
    log.interval_s = 5;
    log.with_power = false;
    give_log(run.record, simulated_log(setup, run, log, 6));
    const DrainSummary drain = summarise_drain(run.record);
    ASSERT_TRUE(drain.used) << drain.reason;
    EXPECT_NEAR(drain.squared_w2h, run.truth.squared_w2h, 0.1 * run.truth.squared_w2h);
}

} // namespace
} // namespace ullage::test
