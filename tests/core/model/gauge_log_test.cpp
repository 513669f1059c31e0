// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/gauge_thinner.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

namespace ullage::test {
namespace {

constexpr UtcMs second_ms = 1000;

/// A sample each `every_s` seconds; below 0: a blank cell.
GaugeLog thinned(const std::vector<double>& shown, UtcMs every_s = 10) {
    GaugeThinner thinner;
    UtcMs time_ms = 0;
    for (const double percent : shown) {
        TraceSample sample;
        sample.time_ms = time_ms;
        if (percent >= 0) sample.gauge_percent = percent;
        thinner.take({&sample, 1});
        time_ms += every_s * second_ms;
    }
    return thinner.finish().value();
}

std::vector<double> repeated(std::initializer_list<std::pair<int, double>> treads) {
    std::vector<double> shown;
    for (const auto& [count, percent] : treads) shown.insert(shown.end(), static_cast<std::size_t>(count), percent);
    return shown;
}

TEST(GaugeThinner, times_a_step_to_its_two_samples) {
    const GaugeLog log = thinned(repeated({{50, 71}, {50, 70}, {50, 69}}));
    ASSERT_EQ(log.steps.size(), 2u);
    EXPECT_EQ(log.steps[0].from_ms, 490 * second_ms);
    EXPECT_EQ(log.steps[0].to_ms, 500 * second_ms);
    EXPECT_EQ(log.steps[1].from_ms, 990 * second_ms);
    EXPECT_EQ(log.first_percent, 71);
    EXPECT_EQ(log.last_percent, 69);
    EXPECT_EQ(log.resolution_pt, 1);
    EXPECT_EQ(log.shown_at(750 * second_ms), 70.0);
    EXPECT_FALSE(log.shown_at(-1));
}

TEST(GaugeThinner, takes_a_flicker_for_one_step_from_before_it_to_after_it) {
    std::vector<double> shown = repeated({{50, 71}});
    for (int i = 0; i < 5; ++i) shown.insert(shown.end(), {70, 71});
    const std::vector<double> after = repeated({{80, 70}, {10, 69}});
    shown.insert(shown.end(), after.begin(), after.end());
    const GaugeLog log = thinned(shown);
    ASSERT_EQ(log.steps.size(), 2u);
    EXPECT_EQ(log.steps[0].from_ms, 490 * second_ms);
    EXPECT_EQ(log.steps[0].to_ms, 600 * second_ms);
}

TEST(GaugeThinner, a_gauge_that_comes_back_long_after_has_risen) {
    const GaugeLog log = thinned(repeated({{50, 71}, {200, 70}, {50, 71}}));
    ASSERT_EQ(log.steps.size(), 2u);
    EXPECT_EQ(log.steps[1].to_percent, 71);
}

TEST(GaugeThinner, doubts_drop_outs_and_values_that_no_gauge_shows) {
    std::vector<double> shown = repeated({{50, 71}, {4, 0}, {20, 71}, {3, 255}, {5, -1}, {1, 12}, {20, 71}, {30, 70}});
    const GaugeLog log = thinned(shown);
    EXPECT_EQ(log.steps.size(), 1u);
    EXPECT_EQ(log.doubted, 8);
    EXPECT_EQ(log.samples, 120);
}

TEST(GaugeThinner, a_zero_at_the_end_counts_only_where_it_lasts) {
    EXPECT_EQ(thinned(repeated({{50, 9}, {10, 0}})).last_percent, 9);
    EXPECT_EQ(thinned(repeated({{50, 9}, {80, 0}})).last_percent, 0);
}

TEST(GaugeThinner, a_log_that_begins_with_a_drop_out_begins_after_it) {
    const GaugeLog log = thinned(repeated({{2, 0}, {50, 100}, {50, 99}}));
    EXPECT_EQ(log.first_percent, 100);
    EXPECT_EQ(log.steps.size(), 1u);
    EXPECT_EQ(log.doubted, 2);
}

TEST(GaugeThinner, believes_a_jump_that_lasts_and_a_fast_drain_seldom_sampled) {
    const GaugeLog jump = thinned(repeated({{50, 71}, {50, 52}, {50, 51}}));
    ASSERT_EQ(jump.steps.size(), 2u);
    EXPECT_EQ(jump.steps[0].from_percent - jump.steps[0].to_percent, 19);
    EXPECT_EQ(jump.steps[0].to_ms, 500 * second_ms);
    const GaugeLog fast = thinned({100, 92, 84, 76, 68, 60, 52}, 300);
    EXPECT_EQ(fast.steps.size(), 5u);
    EXPECT_EQ(fast.doubted, 1) << "the last may still come back";
}

TEST(GaugeThinner, a_fractional_gauge_steps_at_the_halves) {
    std::vector<double> shown;
    for (int i = 0; i <= 200; ++i) shown.push_back(72 - 0.01 * i);
    const GaugeLog log = thinned(shown);
    ASSERT_EQ(log.steps.size(), 2u);
    EXPECT_NEAR(log.steps[0].from_percent, 71.5, 0.011);
    EXPECT_NEAR(log.steps[0].to_percent, 71.5, 0.011);
    EXPECT_EQ(log.resolution_pt, 0.01);
}

TEST(GaugeThinner, takes_medians_of_a_gauge_that_flickers_by_more_than_a_step) {
    std::mt19937 random(3);
    std::normal_distribution<double> noise(0, 1.2);
    std::vector<double> shown;
    for (int i = 0; i < 20'000; ++i) shown.push_back(std::clamp(std::round(10 * (90 - 0.002 * i + noise(random))) / 10, 0.0, 100.0));
    const GaugeLog log = thinned(shown, 1);
    EXPECT_TRUE(log.calmed);
    EXPECT_EQ(log.samples, 20'000);
    EXPECT_NEAR(static_cast<double>(log.steps.size()), 40, 6);
    long rises = 0;
    for (const GaugeStep& step : log.steps) rises += step.to_percent - step.from_percent >= 1;
    EXPECT_EQ(rises, 0);
    EXPECT_FALSE(thinned(repeated({{50, 71}, {50, 70}, {50, 69}})).calmed);
}

TEST(GaugeThinner, memory_has_a_bound_whatever_the_gauge_does) {
    GaugeStepper stepper;
    for (long i = 0; i < 200'000; ++i) stepper.take(i * 1000, i % 4 < 2 ? 50 : 52);
    EXPECT_EQ(stepper.finish()->steps.size(), GaugeStepper::most_steps);
}

} // namespace
} // namespace ullage::test
