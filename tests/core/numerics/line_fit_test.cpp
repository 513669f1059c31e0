// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/line_fit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>
#include <vector>

using namespace ullage;

namespace {

using Values = std::vector<double>;

Values scattered(const Values& x, double intercept, double slope, double sd, unsigned seed) {
    std::mt19937 engine(seed);
    std::normal_distribution<double> noise(0, sd);
    Values y;
    for (const double v : x) y.push_back(intercept + slope * v + noise(engine));
    return y;
}

Values steps(std::size_t n, double from, double step) {
    Values x;
    for (std::size_t i = 0; i < n; ++i) x.push_back(from + step * static_cast<double>(i));
    return x;
}

} // namespace

TEST(LineFit, points_on_a_line_give_that_line_without_residuals) {
    const auto fit = fit_line(Values{1, 2, 3, 4}, Values{5, 7, 9, 11});
    ASSERT_TRUE(fit.ok());
    EXPECT_DOUBLE_EQ(fit.value().intercept, 3);
    EXPECT_DOUBLE_EQ(fit.value().slope, 2);
    EXPECT_NEAR(fit.value().residual_sum, 0, 1e-28); // squares of single roundings of numbers near 10
    EXPECT_DOUBLE_EQ(fit.value().r_squared.value(), 1);
    EXPECT_EQ(fit.value().degrees_of_freedom, 2u);
    EXPECT_DOUBLE_EQ(fit.value().at(10), 23);
}

TEST(LineFit, a_large_offset_of_x_costs_no_digits_of_the_slope) {
    // Milliseconds since 1970 as x: sums of squares without centring would lose all digits.
    const Values x = steps(50, 1.8e12, 60000);
    Values y;
    for (const double v : x) y.push_back(0.25 * (v - 1.8e12));
    const auto fit = fit_line(x, y);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit.value().slope, 0.25, 1e-15);
}

TEST(LineFit, moving_and_stretching_the_axes_moves_and_stretches_the_line) {
    const Values x = steps(20, 0, 0.7);
    const Values y = scattered(x, 3, -2, 0.5, 7);
    const auto before = fit_line(x, y);
    Values x2, y2;
    for (const double v : x) x2.push_back(10 + 4 * v);
    for (const double v : y) y2.push_back(-1 + 8 * v);
    const auto after = fit_line(x2, y2);
    ASSERT_TRUE(before.ok() && after.ok());
    EXPECT_NEAR(after.value().slope, 2 * before.value().slope, 1e-13);
    EXPECT_NEAR(after.value().u_slope, 2 * before.value().u_slope, 1e-13);
    EXPECT_NEAR(after.value().at(10 + 4 * 3.3), -1 + 8 * before.value().at(3.3), 1e-12);
    EXPECT_NEAR(after.value().u_at(10 + 4 * 3.3), 8 * before.value().u_at(3.3), 1e-12);
    EXPECT_NEAR(after.value().r_squared.value(), before.value().r_squared.value(), 1e-14);
}

TEST(LineFit, known_sigmas_are_not_shrunk_by_points_that_lie_too_well) {
    const Values x{0, 1, 2, 3}, y{0, 1, 2, 3}, sigma{1, 1, 1, 1};
    const auto fit = fit_line(x, y, sigma);
    ASSERT_TRUE(fit.ok());
    EXPECT_DOUBLE_EQ(fit.value().u_slope, std::sqrt(1 / 5.0)); // 1/Sxx, Sxx = 5
    EXPECT_TRUE(fit.value().sigmas_known);
}

TEST(LineFit, twice_the_weight_is_the_same_as_the_point_twice) {
    const Values x{0, 1, 2, 5}, y{1, 2, 2, 7};
    const double half = 1 / std::sqrt(2.0);
    const auto weighted = fit_line(x, y, Values{1, half, 1, 1});
    const auto repeated = fit_line(Values{0, 1, 1, 2, 5}, Values{1, 2, 2, 2, 7}, Values{1, 1, 1, 1, 1});
    ASSERT_TRUE(weighted.ok() && repeated.ok());
    EXPECT_NEAR(weighted.value().slope, repeated.value().slope, 1e-14);
    EXPECT_NEAR(weighted.value().u_intercept, repeated.value().u_intercept, 1e-14);
    EXPECT_NEAR(weighted.value().covariance, repeated.value().covariance, 1e-14);
}

TEST(LineFit, the_line_is_best_known_at_the_mean_of_x) {
    const Values x = steps(12, 100, 5);
    const auto fit = fit_line(x, scattered(x, 4, 0.3, 0.2, 3));
    ASSERT_TRUE(fit.ok());
    const double mean = 127.5;
    EXPECT_LT(fit.value().u_at(mean), fit.value().u_at(mean - 1));
    EXPECT_LT(fit.value().u_at(mean), fit.value().u_at(mean + 1));
    // At the mean only the scatter of the mean is left: s/sqrt(n).
    EXPECT_NEAR(fit.value().u_at(mean), fit.value().residual_sd().value() / std::sqrt(12.0), 1e-9);
}

TEST(LineFit, a_new_value_adds_its_own_scatter) {
    const Values x{0, 1, 2, 3}, y{0, 1.1, 1.9, 3};
    const auto free = fit_line(x, y);
    const auto known = fit_line(x, y, Values{1, 1, 1, 1});
    ASSERT_TRUE(free.ok() && known.ok());
    EXPECT_DOUBLE_EQ(free.value().u_new_value(2), std::hypot(free.value().u_at(2), free.value().residual_sd().value()));
    EXPECT_DOUBLE_EQ(known.value().u_new_value(2, 3), std::hypot(known.value().u_at(2), 3));
}

TEST(LineFit, two_points_do_with_sigmas_and_not_without) {
    const Values x{1, 3}, y{2, 8};
    const auto fit = fit_line(x, y, Values{0.1, 0.2});
    ASSERT_TRUE(fit.ok());
    EXPECT_DOUBLE_EQ(fit.value().slope, 3);
    EXPECT_EQ(fit.value().degrees_of_freedom, 0u);
    EXPECT_FALSE(fit.value().residual_sd()) << "no scatter is left to take it from";
    const auto refused = fit_line(x, y);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().sentence().find("at least 3 points"), std::string::npos) << refused.error().sentence();
}

TEST(LineFit, level_points_give_slope_zero_and_leave_the_share_explained_undefined) {
    const auto fit = fit_line(Values{1, 2, 3}, Values{4, 4, 4});
    ASSERT_TRUE(fit.ok());
    EXPECT_EQ(fit.value().slope, 0);
    EXPECT_FALSE(fit.value().r_squared);
}

TEST(LineFit, bad_points_are_refused_in_words) {
    const double nan = std::numeric_limits<double>::quiet_NaN(), inf = std::numeric_limits<double>::infinity();
    const struct {
        Values x, y, sigma;
        const char* says;
    } cases[] = {
        {{1, 2}, {1, 2, 3}, {}, "do not belong together"},
        {{1, 2, 3}, {1, 2, 3}, {1, 1}, "do not belong together"},
        {{}, {}, {}, "has 0"},
        {{5, 5, 5}, {1, 2, 3}, {}, "all x are the same"},
        {{1, nan, 3}, {1, 2, 3}, {}, "x of point 2"},
        {{1, 2, 3}, {1, 2, inf}, {}, "y of point 3"},
        {{1, 2, 3}, {1, 2, 3}, {1, 0, 1}, "uncertainty of point 2"},
        {{1, 2, 3}, {1, 2, 3}, {-1, 1, 1}, "uncertainty of point 1"},
        {{0, 1e-300, 2e-300}, {-1e300, 1e300, 1e300}, {}, "too large or too small"},
    };
    for (const auto& c : cases) {
        const auto fit = fit_line(c.x, c.y, c.sigma);
        ASSERT_FALSE(fit.ok()) << c.says;
        EXPECT_NE(fit.error().sentence().find(c.says), std::string::npos) << fit.error().sentence();
        EXPECT_FALSE(fit.error().remedy.empty());
    }
}

TEST(LineFit, a_million_points_are_fitted_without_losing_digits) {
    const std::size_t n = 1'000'000;
    Values x(n), y(n);
    for (std::size_t i = 0; i < n; ++i) {
        x[i] = 1e6 + static_cast<double>(i);
        y[i] = 7 + 0.5 * x[i] + (i % 2 == 0 ? 0.25 : -0.25);
    }
    const auto fit = fit_line(x, y);
    ASSERT_TRUE(fit.ok());
    // The alternating part is all but orthogonal to x: slope bias 0.25 * 6/n^2, under 2e-12.
    EXPECT_NEAR(fit.value().slope, 0.5, 2e-12);
    EXPECT_NEAR(fit.value().residual_sd().value(), 0.25, 1e-6); // n - 2 instead of n
}

TEST(LineFit, stated_uncertainties_cover_the_truth_as_often_as_they_say) {
    const Values x = steps(10, 0, 1);
    int covered = 0;
    const int trials = 4000;
    for (int k = 0; k < trials; ++k) {
        const auto fit = fit_line(x, scattered(x, 1, 2, 0.3, 1000u + static_cast<unsigned>(k)), Values(10, 0.3));
        ASSERT_TRUE(fit.ok());
        covered += std::abs(fit.value().at(12) - 25) <= 1.959964 * fit.value().u_at(12) ? 1 : 0;
    }
    // Binomial standard deviation 0.0034; five of them.
    EXPECT_NEAR(covered / static_cast<double>(trials), 0.95, 0.018);
}

TEST(LineThroughOrigin, points_on_a_ray_give_the_ray) {
    const auto fit = fit_through_origin(Values{1, 2, 4}, Values{3, 6, 12});
    ASSERT_TRUE(fit.ok());
    EXPECT_DOUBLE_EQ(fit.value().slope, 3);
    EXPECT_EQ(fit.value().intercept, 0);
    EXPECT_EQ(fit.value().u_intercept, 0);
    EXPECT_EQ(fit.value().degrees_of_freedom, 2u);
}

TEST(LineThroughOrigin, one_point_with_its_sigma_gives_ratio_and_uncertainty) {
    const auto fit = fit_through_origin(Values{4}, Values{10}, Values{0.2});
    ASSERT_TRUE(fit.ok());
    EXPECT_DOUBLE_EQ(fit.value().slope, 2.5);
    EXPECT_DOUBLE_EQ(fit.value().u_slope, 0.05);
    EXPECT_FALSE(fit_through_origin(Values{4}, Values{10}).ok());
}

TEST(LineThroughOrigin, points_at_zero_only_are_refused) {
    const auto fit = fit_through_origin(Values{0, 0}, Values{1, 2});
    ASSERT_FALSE(fit.ok());
    EXPECT_NE(fit.error().what.text().find("all x are zero"), std::string::npos);
}
