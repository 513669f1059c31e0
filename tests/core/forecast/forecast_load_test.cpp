// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/forecast_load.h"
#include "forecast/inside/forecast_trend.h"
#include "forecast/inside/weighted_quantile.h"

#include <gtest/gtest.h>

#include <cmath>
#include <utility>

namespace ullage::test {
namespace {

std::vector<ullage::LoadStep> steps_of(const std::vector<double>& watts, double hours = 1) {
    std::vector<ullage::LoadStep> steps;
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

Spread left_of(const TrendSetup& setup) {
    WeightedValues values;
    for (const LeftWeight& left : left_by_trend(setup, {OwnDraw{}})) values.emplace_back(left.left_wh, left.weight);
    return spread_of(std::move(values), 0.95).value_or(Spread{});
}

/// 250 Wh taken in ten readings while the gauge fell by 50 points.
TrendSetup half_taken() {
    TrendSetup setup;
    setup.started_full = true;
    for (int i = 0; i <= 10; ++i) setup.points.push_back({100.0 - 5 * i, 0.5 * i, 25.0 * i, 0});
    setup.end = setup.points.back();
    return setup;
}

TEST(ForecastTrend, a_straight_gauge_is_believed_within_the_common_faults) {
    TrendSetup labelled = half_taken();
    labelled.least_wh = 300;
    labelled.most_wh = 660; // 110 % of a label of 600 Wh
    const Spread left = left_of(labelled);
    EXPECT_NEAR(left.middle, 250, 30);
    EXPECT_GT(left.lower, 100);
    EXPECT_LT(left.lower, 235); // may end at 5 %
    EXPECT_GT(left.upper, 265);
    EXPECT_LE(left.upper, 410);
    // Without a label nothing bounds a gauge that falls too fast.
    EXPECT_GT(left_of(half_taken()).upper, 1.8 * left.upper);
}

// Labels err: a linear gauge that asks for 500 Wh is heard beside a label that allows 480, and hardly beside one that allows 350.
TEST(ForecastTrend, the_most_that_a_label_allows_is_a_soft_bound) {
    TrendSetup setup = half_taken();
    setup.most_wh = 480;
    EXPECT_GE(left_of(setup).upper, 250);
    EXPECT_LT(left_of(setup).upper, 300);
    setup.most_wh = 350;
    EXPECT_LE(left_of(setup).upper, 1.3 * 350 - 250);
    setup.most_wh = 240; // less than was taken: what it gave counts more than its label
    EXPECT_LE(left_of(setup).upper, 1.3 * 275 - 250);
    EXPECT_GT(left_of(setup).upper, 0);
}

TEST(ForecastTrend, a_run_that_did_not_start_full_begins_where_its_gauge_does) {
    TrendSetup setup;
    for (int i = 0; i <= 6; ++i) setup.points.push_back({60.0 - 5 * i, 0.5 * i, 25.0 * i, 0});
    setup.end = setup.points.back(); // 150 Wh for 30 points; 30 % left
    const Spread left = left_of(setup);
    EXPECT_NEAR(left.middle, 150, 25);
    EXPECT_LT(left.lower, 130);
    EXPECT_GT(left.upper, 170);
}

TEST(ForecastTrend, a_gauge_that_no_law_fits_leaves_only_the_label) {
    TrendSetup wild = half_taken();
    wild.least_wh = 300;
    wild.most_wh = 700;
    const double shown[] = {100, 40, 93, 20, 71, 55, 12, 88, 31, 64, 7};
    for (std::size_t i = 0; i < wild.points.size(); ++i) wild.points[i].gauge_percent = shown[i];
    const auto lefts = left_by_trend(wild, {OwnDraw{}});
    EXPECT_GT(family_shares(lefts)[static_cast<std::size_t>(GaugeFamily::unknown)], 0.99);
    const Spread left = left_of(wild);
    // E* even from 300 to 700, then falling by e every 21 Wh; 250 of it taken: 50 to 450 left and 21 beyond, of 421 in all. 2.5 % are 10.5: from 60.5
    // on, and in the tail beyond 450 + 21 ln(21/10.5) = 464.6.
    EXPECT_NEAR(left.lower, 60.5, 6);
    EXPECT_NEAR(left.upper, 464.6, 10);
}

TEST(ForecastTrend, a_gauge_that_stands_still_and_then_falls_is_one_that_sticks) {
    TrendSetup sticking = half_taken();
    sticking.least_wh = 300;
    sticking.most_wh = 700;
    for (std::size_t i = 4; i < 8; ++i) sticking.points[i].gauge_percent = 82;
    const auto shares = family_shares(left_by_trend(sticking, {OwnDraw{}}));
    EXPECT_GT(shares[static_cast<std::size_t>(GaugeFamily::sticks)], 0.5);
    EXPECT_LT(shares[static_cast<std::size_t>(GaugeFamily::honest)], 0.01);
}

TEST(ForecastTrend, nothing_taken_says_nothing) {
    TrendSetup setup;
    setup.points = {{100, 0, 0, 0}, {90, 1, 0, 0}};
    setup.end = setup.points.back();
    EXPECT_TRUE(left_by_trend(setup, {OwnDraw{}}).empty());
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
