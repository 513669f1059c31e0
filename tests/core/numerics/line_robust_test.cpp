// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/line_fit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

using namespace ullage;

namespace {
using Values = std::vector<double>;
} // namespace

TEST(RobustLine, a_quarter_of_wild_points_does_not_move_an_exact_line) {
    Values x, y;
    for (int i = 0; i < 20; ++i) {
        x.push_back(i);
        y.push_back(i % 4 == 3 ? 1000.0 * i : 5 - 0.5 * i);
    }
    const auto line = fit_robust_line(x, y);
    ASSERT_TRUE(line.ok());
    EXPECT_DOUBLE_EQ(line.value().slope, -0.5);
    EXPECT_DOUBLE_EQ(line.value().intercept_joint, 5);
}

TEST(RobustLine, the_order_of_points_is_no_matter) {
    const Values x{3, 1, 2, 5, 4}, y{3.1, 1.2, 1.8, 5.3, 3.9};
    const auto one = fit_robust_line(x, y);
    const auto other = fit_robust_line(Values{1, 2, 3, 4, 5}, Values{1.2, 1.8, 3.1, 3.9, 5.3});
    ASSERT_TRUE(one.ok() && other.ok());
    EXPECT_DOUBLE_EQ(one.value().slope, other.value().slope);
    EXPECT_DOUBLE_EQ(one.value().slope_lower, other.value().slope_lower);
    EXPECT_DOUBLE_EQ(one.value().intercept_separate, other.value().intercept_separate);
}

TEST(RobustLine, pairs_with_equal_x_are_left_out) {
    const auto line = fit_robust_line(Values{0, 0, 1, 1}, Values{0, 10, 1, 11});
    ASSERT_TRUE(line.ok());
    EXPECT_DOUBLE_EQ(line.value().slope, 1); // slopes 1, 11, -9, 1
}

TEST(RobustLine, more_confidence_means_a_wider_interval_around_the_slope) {
    Values x, y;
    std::mt19937 engine(11);
    std::normal_distribution<double> noise(0, 1);
    for (int i = 0; i < 40; ++i) {
        x.push_back(i);
        y.push_back(0.3 * i + noise(engine));
    }
    const auto narrow = fit_robust_line(x, y, 0.5), wide = fit_robust_line(x, y, 0.99);
    ASSERT_TRUE(narrow.ok() && wide.ok());
    EXPECT_LT(wide.value().slope_lower, narrow.value().slope_lower);
    EXPECT_LT(narrow.value().slope_lower, narrow.value().slope);
    EXPECT_LT(narrow.value().slope, narrow.value().slope_upper);
    EXPECT_LT(narrow.value().slope_upper, wide.value().slope_upper);
}

TEST(RobustLine, the_interval_covers_the_slope_as_often_as_it_says) {
    std::mt19937 engine(12);
    std::normal_distribution<double> noise(0, 1);
    int covered = 0;
    const int trials = 2000;
    for (int k = 0; k < trials; ++k) {
        Values x, y;
        for (int i = 0; i < 25; ++i) {
            x.push_back(i);
            y.push_back(2.0 * i + noise(engine));
        }
        const auto line = fit_robust_line(x, y);
        ASSERT_TRUE(line.ok());
        covered += line.value().slope_lower <= 2 && 2 <= line.value().slope_upper ? 1 : 0;
    }
    // Ranks are rounded outwards, so slightly more; binomial standard deviation 0.005, four of them.
    EXPECT_NEAR(covered / static_cast<double>(trials), 0.955, 0.02);
}

TEST(RobustLine, bad_points_are_refused_in_words) {
    EXPECT_FALSE(fit_robust_line(Values{1}, Values{1}).ok());
    EXPECT_FALSE(fit_robust_line(Values{1, 1}, Values{1, 2}).ok());
    EXPECT_FALSE(fit_robust_line(Values{1, 2}, Values{1, NAN}).ok());
    EXPECT_FALSE(fit_robust_line(Values{1, 2}, Values{1, 2}, 1.0).ok());
    EXPECT_FALSE(fit_robust_line(Values{0, 1e-300}, Values{-1e300, 1e300}).ok());
    const auto many = fit_robust_line(Values(3001, 1), Values(3001, 1));
    ASSERT_FALSE(many.ok());
    EXPECT_NE(many.error().sentence().find("3001 points"), std::string::npos);
}
