// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/least_squares.h"

#include "numerics/line_fit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

using namespace ullage;

namespace {

using Values = std::vector<double>;

/// Columns 1, t, t^2 at n times.
Values quadratic(std::size_t n) {
    Values design;
    for (std::size_t i = 0; i < n; ++i) {
        const auto t = static_cast<double>(i);
        design.insert(design.end(), {1, t, t * t});
    }
    return design;
}

} // namespace

TEST(LeastSquares, exact_data_give_the_parameters_back) {
    const Values design = quadratic(6);
    Values y;
    for (int t = 0; t < 6; ++t) y.push_back(3 - 2 * t + 0.5 * t * t);
    const auto fit = solve_least_squares(design, 3, y);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit.value().parameters[0], 3, 1e-13);
    EXPECT_NEAR(fit.value().parameters[1], -2, 1e-13);
    EXPECT_NEAR(fit.value().parameters[2], 0.5, 1e-13);
    EXPECT_EQ(fit.value().degrees_of_freedom, 3u);
}

TEST(LeastSquares, a_line_agrees_with_the_line_fit_in_every_number) {
    const Values x{0, 1, 3, 4, 8}, y{1, 2.5, 3, 5, 8}, sigma{0.1, 0.3, 0.2, 0.1, 0.5};
    Values design;
    for (const double v : x) design.insert(design.end(), {1, v});
    for (const bool known : {false, true}) {
        const std::span<const double> s = known ? std::span<const double>(sigma) : std::span<const double>();
        const auto general = solve_least_squares(design, 2, y, s);
        const auto line = fit_line(x, y, s);
        ASSERT_TRUE(general.ok() && line.ok());
        EXPECT_NEAR(general.value().parameters[1], line.value().slope, 1e-14);
        EXPECT_NEAR(general.value().cov(0, 0), std::pow(line.value().u_intercept, 2), 1e-14);
        EXPECT_NEAR(general.value().cov(0, 1), line.value().covariance, 1e-14);
        EXPECT_NEAR(general.value().residual_sum, line.value().residual_sum, 1e-11);
    }
}

TEST(LeastSquares, residuals_are_orthogonal_to_every_column) {
    std::mt19937 engine(2);
    std::normal_distribution<double> noise(0, 1);
    const Values design = quadratic(30);
    Values y;
    for (int i = 0; i < 30; ++i) y.push_back(noise(engine));
    const auto fit = solve_least_squares(design, 3, y);
    ASSERT_TRUE(fit.ok());
    for (std::size_t j = 0; j < 3; ++j) {
        double product = 0;
        for (std::size_t i = 0; i < 30; ++i) product += design[i * 3 + j] * fit.value().residuals[i];
        EXPECT_NEAR(product, 0, 1e-10); // column lengths up to 2000
    }
}

TEST(LeastSquares, units_of_a_column_do_not_change_how_well_it_is_told_apart) {
    Values design = quadratic(10), y(10, 1);
    y[4] = 2;
    const auto one = solve_least_squares(design, 3, y);
    for (std::size_t i = 0; i < 10; ++i) design[i * 3 + 2] *= 1e9;
    const auto other = solve_least_squares(design, 3, y);
    ASSERT_TRUE(one.ok() && other.ok());
    EXPECT_NEAR(one.value().condition, other.value().condition, 1e-9);
    EXPECT_NEAR(one.value().parameters[2], other.value().parameters[2] * 1e9, 1e-14);
}

TEST(LeastSquares, orthogonal_columns_have_condition_one) {
    const auto fit = solve_least_squares(Values{1, -1, 1, 1, 1, -1, 1, 1}, 2, Values{1, 2, 3, 4});
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit.value().condition, 1, 1e-14);
}

TEST(LeastSquares, as_many_points_as_parameters_need_sigmas) {
    const Values design{1, 0, 1, 2}, y{3, 7};
    const auto fit = solve_least_squares(design, 2, y, Values{0.1, 0.1});
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit.value().parameters[1], 2, 1e-15);
    EXPECT_FALSE(solve_least_squares(design, 2, y).ok());
}

TEST(LeastSquares, columns_that_cannot_be_told_apart_are_refused) {
    // Constant power: energy is proportional to time.
    Values design;
    for (int i = 1; i <= 8; ++i) design.insert(design.end(), {1.0, i * 0.1, i * 0.1 * 73.3});
    const auto fit = solve_least_squares(design, 3, Values{1, 2, 3, 4, 5, 6, 7, 8});
    ASSERT_FALSE(fit.ok());
    EXPECT_NE(fit.error().sentence().find("cannot tell the parameters apart"), std::string::npos);
}

TEST(LeastSquares, bad_shapes_and_values_are_refused_in_words) {
    const Values y{1, 2, 3};
    EXPECT_FALSE(solve_least_squares(Values{1, 2, 3, 4}, 2, y).ok());
    EXPECT_FALSE(solve_least_squares(Values{}, 0, y).ok());
    EXPECT_FALSE(solve_least_squares(Values{1, 2, 3}, 1, y, Values{1, 1}).ok());
    EXPECT_FALSE(solve_least_squares(Values{1, 2, 3}, 1, y, Values{1, 0, 1}).ok());
    EXPECT_FALSE(solve_least_squares(Values{1, NAN, 3}, 1, y).ok());
    EXPECT_FALSE(solve_least_squares(Values{1, 2, 3}, 1, Values{1, NAN, 3}).ok());
    const auto zero = solve_least_squares(Values{1, 0, 1, 0, 1, 0}, 2, y);
    ASSERT_FALSE(zero.ok());
    EXPECT_NE(zero.error().sentence().find("column 2"), std::string::npos);
}
