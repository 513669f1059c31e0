// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_meter.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage::test {
namespace {

MeterSetup meter_of(double step_wh, double gain_error_percent, double start_wh) {
    MeterSetup setup;
    setup.meter.step_wh = step_wh;
    setup.gain_error_percent = gain_error_percent;
    setup.start_wh = start_wh;
    return setup;
}

TEST(SimulatedMeter, its_register_advances_by_delivered_energy_times_gain) {
    Random random(3);
    for (int i = 0; i < 200; ++i) {
        const SimulatedMeter meter(meter_of(1, 0.8, 4312), 0, random);
        EXPECT_DOUBLE_EQ(meter.register_wh(0), 4312);
        const double advance_wh = meter.register_wh(1000) - meter.register_wh(0);
        EXPECT_NEAR(advance_wh, 1008, 1); // one step, where in the step it began is unknown
    }
}

TEST(SimulatedMeter, a_rounding_register_begins_where_it_is_said_to) {
    Random random(3);
    MeterSetup setup = meter_of(10, 0, 500);
    setup.steps = Steps::rounded;
    for (int i = 0; i < 200; ++i) EXPECT_DOUBLE_EQ(SimulatedMeter(setup, 0, random).register_wh(0), 500);
}

TEST(SimulatedMeter, a_register_zeroed_and_truncated_reads_low_by_half_a_step_on_average) {
    Random random(3);
    MeterSetup setup = meter_of(10, 0, 0);
    setup.zeroed_at_start = true;
    const SimulatedMeter meter(setup, 0, random);
    double sum_wh = 0;
    constexpr int count = 10'000;
    for (int i = 0; i < count; ++i) sum_wh += meter.register_wh(i * 0.0937) - i * 0.0937;
    EXPECT_NEAR(sum_wh / count, -5, 0.1);
}

TEST(SimulatedMeter, the_correction_undoes_what_the_register_does) {
    Random random(3);
    MeterSetup setup = meter_of(0.001, 0, 0);
    setup.meter.correction = 1.02;
    EXPECT_NEAR(1.02 * SimulatedMeter(setup, 0, random).register_wh(900), 900, 0.01);
}

TEST(SimulatedMeter, a_gain_error_that_is_not_given_fills_the_limit_evenly) {
    MeterSetup setup;
    setup.meter.limit_percent = 2;
    Random random(11);
    constexpr int count = 4000;
    double least = 9, largest = -9, squares = 0;
    for (int i = 0; i < count; ++i) {
        const double error = SimulatedMeter(setup, 0, random).gain_error_percent();
        least = std::min(least, error);
        largest = std::max(largest, error);
        squares += error * error;
    }
    EXPECT_GE(least, -2);
    EXPECT_LE(largest, 2);
    EXPECT_LT(least, -1.98);
    EXPECT_GT(largest, 1.98);
    EXPECT_NEAR(std::sqrt(squares / count), 2 / std::sqrt(3.0), 0.03); // rectangular, JCGM 100:2008, 4.3.7
}

TEST(SimulatedMeter, it_returns_to_zero_at_its_span) {
    Random random(3);
    MeterSetup setup = meter_of(1, 0, 99'900);
    setup.meter.span_wh = 100'000;
    const SimulatedMeter meter(setup, 0, random);
    EXPECT_NEAR(meter.register_wh(99), 99'999, 1);
    EXPECT_NEAR(meter.register_wh(350), 250, 1);
}

TEST(SimulatedMeter, zeroing_starts_it_again_from_nothing) {
    Random random(3);
    SimulatedMeter meter(meter_of(1, 0, 777), 0, random);
    meter.zero(400.4);
    EXPECT_DOUBLE_EQ(meter.register_wh(400.4), 0);
    EXPECT_DOUBLE_EQ(meter.register_wh(500), 99);
}

TEST(SimulatedMeter, a_slip_of_the_pen_differs_by_the_least_asked_for) {
    Random random(5);
    for (const double value_wh : {0.0, 7.0, 11.0, 40.0, 111.0, 4312.0, 99'999.0, 431.5}) {
        for (int i = 0; i < 50; ++i) {
            const double slip_wh = mistyped(value_wh, 20, random);
            EXPECT_GE(std::abs(slip_wh - value_wh), 20) << value_wh;
            EXPECT_GE(slip_wh, 0);
        }
    }
}

} // namespace
} // namespace ullage::test
