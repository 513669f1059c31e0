// SPDX-License-Identifier: GPL-3.0-or-later
#include "fleet/forecast_load.h"
#include "fleet/forecast_trend.h"
#include "fleet/weighted_quantile.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

std::vector<LoadStep> steps_of(const std::vector<double>& watts, double hours = 1) {
    std::vector<LoadStep> steps;
    for (std::size_t i = 0; i < watts.size(); ++i) {
        const auto from = static_cast<UtcMs>(static_cast<double>(i) * hours * ms_per_hour);
        steps.push_back({i, i + 1, from, from + static_cast<UtcMs>(hours * ms_per_hour), watts[i]});
    }
    return steps;
}

double total_weight(const FutureLoads& loads) {
    double total = 0;
    for (std::size_t path = 0; path < loads.paths(); ++path) total += loads.weight(path);
    return total;
}

TEST(FutureLoads, a_steady_load_takes_what_load_and_own_draw_add_up_to) {
    const FutureLoads loads(steps_of({80, 80, 80}));
    EXPECT_EQ(loads.shape(), FutureLoads::Shape::steady);
    EXPECT_NEAR(total_weight(loads), 1, 1e-12);
    for (std::size_t path = 0; path < loads.paths(); ++path) {
        EXPECT_NEAR(loads.hours_to_use(path, 500, 10, 1e-4), 500 / (80 + 10 + 0.64), 1e-9);
        EXPECT_NEAR(loads.mean_w(path, 7.3), 80, 1e-9);
    }
}

TEST(FutureLoads, a_load_that_comes_back_cycles_and_keeps_its_mean) {
    const FutureLoads loads(steps_of({100, 20, 100, 20, 100, 20}));
    EXPECT_EQ(loads.shape(), FutureLoads::Shape::cycling);
    EXPECT_NEAR(total_weight(loads), 1, 1e-12);
    double log_mean = 0;
    for (std::size_t path = 0; path < loads.paths(); ++path) log_mean += loads.weight(path) * std::log(loads.mean_w(path, 60));
    EXPECT_NEAR(std::exp(log_mean), 60, 0.1);
}

TEST(FutureLoads, a_load_that_has_stepped_may_stay_or_return) {
    const FutureLoads loads(steps_of({200, 200, 120, 50, 50}));
    EXPECT_EQ(loads.shape(), FutureLoads::Shape::stepped);
    EXPECT_NEAR(total_weight(loads), 1, 1e-12);
    EXPECT_NEAR(loads.recent_w(), 50, 1e-9); // without the interval of the step
    EXPECT_NEAR(loads.overall_w(), 124, 1e-9);
}

TEST(FutureLoads, a_stretch_far_longer_than_any_before_is_a_step_not_a_cycle) {
    EXPECT_EQ(FutureLoads(steps_of({100, 20, 100, 20, 100, 100, 100, 100})).shape(), FutureLoads::Shape::stepped);
}

TEST(FutureLoads, no_load_and_no_draw_never_use_anything_up) {
    const FutureLoads none({});
    ASSERT_EQ(none.paths(), 1U);
    EXPECT_TRUE(std::isinf(none.hours_to_use(0, 10, 0, 0)));
    EXPECT_NEAR(none.hours_to_use(0, 10, 5, 0), 2, 1e-12);
    const FutureLoads idle(steps_of({0, 0}));
    for (std::size_t path = 0; path < idle.paths(); ++path) EXPECT_TRUE(std::isinf(idle.hours_to_use(path, 10, 0, 0)));
}

TEST(FutureLoads, replays_wrap_around_the_history_without_losing_energy) {
    const FutureLoads loads(steps_of({30, 90}));
    for (std::size_t path = 0; path < loads.paths(); ++path) {
        const double hours = loads.hours_to_use(path, 345, 2, 0);
        EXPECT_NEAR(loads.mean_w(path, hours) * hours + 2 * hours, 345, 1e-6) << path;
    }
}

/// 100 W·h taken from 500 with a gauge at 80 %: a straight gauge says 400 left.
TEST(ForecastTrend, a_straight_gauge_is_likeliest_where_it_points) {
    TrendSetup setup;
    setup.started_full = true;
    for (int i = 0; i <= 10; ++i) setup.points.push_back({100.0 - 5 * i, 0.5 * i, 25.0 * i, 0});
    setup.end = setup.points.back();
    const OwnDraw draw;
    EXPECT_GT(trend_likelihood(setup, 250, draw), 2 * trend_likelihood(setup, 150, draw));
    EXPECT_GT(trend_likelihood(setup, 250, draw), 2 * trend_likelihood(setup, 450, draw));
    setup.most_wh = 480; // less than 250 + 250
    EXPECT_EQ(trend_likelihood(setup, 250, draw), 0);
}

TEST(ForecastTrend, a_run_that_did_not_start_full_begins_where_its_gauge_does) {
    TrendSetup setup;
    for (int i = 0; i <= 6; ++i) setup.points.push_back({60.0 - 5 * i, 0.5 * i, 25.0 * i, 0});
    setup.end = setup.points.back(); // 150 Wh for 30 points; 30 % left
    const OwnDraw draw;
    EXPECT_GT(trend_likelihood(setup, 150, draw), 2 * trend_likelihood(setup, 75, draw));
    EXPECT_GT(trend_likelihood(setup, 150, draw), 2 * trend_likelihood(setup, 300, draw));
}

TEST(ForecastTrend, nothing_taken_says_nothing) {
    TrendSetup setup;
    setup.points = {{100, 0, 0, 0}, {90, 1, 0, 0}};
    setup.end = setup.points.back();
    EXPECT_TRUE(left_by_trend(setup, {}).empty());
}

TEST(WeightedQuantile, of_an_even_spread_its_ends_and_middle) {
    WeightedValues values;
    for (int i = 999; i >= 0; --i) values.emplace_back((i + 0.5) / 1000, 2.0);
    const auto spread = spread_of(values, 0.95);
    ASSERT_TRUE(spread);
    EXPECT_NEAR(spread->lower, 0.025, 1e-9);
    EXPECT_NEAR(spread->middle, 0.5, 1e-9);
    EXPECT_NEAR(spread->upper, 0.975, 1e-9);
}

TEST(WeightedQuantile, weights_count_and_none_is_refused) {
    const auto spread = spread_of({{1, 0.01}, {2, 10}, {3, 0.01}}, 0.95);
    ASSERT_TRUE(spread);
    EXPECT_NEAR(spread->middle, 2, 1e-9);
    EXPECT_FALSE(spread_of({}, 0.95));
    EXPECT_FALSE(spread_of({{1, 0}}, 0.95));
}

} // namespace
} // namespace ullage::test
