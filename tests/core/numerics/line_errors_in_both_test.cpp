// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/line_fit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

using namespace ullage;

namespace {
using Values = std::vector<double>;
const Values x{0, 1, 2, 3, 4, 5}, y{0.2, 0.9, 2.3, 2.8, 4.1, 5.2};
} // namespace

TEST(LineErrorsInBoth, exact_x_gives_the_weighted_line) {
    const Values sigma_y{0.1, 0.2, 0.1, 0.3, 0.1, 0.2};
    const auto both = fit_line_errors_in_both(x, y, Values(6, 0), sigma_y);
    const auto plain = fit_line(x, y, sigma_y);
    ASSERT_TRUE(both.ok() && plain.ok());
    EXPECT_NEAR(both.value().slope, plain.value().slope, 1e-13);
    EXPECT_NEAR(both.value().intercept, plain.value().intercept, 1e-13);
    EXPECT_NEAR(both.value().u_intercept, plain.value().u_intercept, 1e-13);
    EXPECT_NEAR(both.value().covariance, plain.value().covariance, 1e-13);
    EXPECT_NEAR(both.value().residual_sum, plain.value().residual_sum, 1e-11);
}

TEST(LineErrorsInBoth, exact_y_gives_the_line_of_x_on_y) {
    const auto both = fit_line_errors_in_both(x, y, Values(6, 0.1), Values(6, 0));
    const auto turned = fit_line(y, x, Values(6, 0.1));
    ASSERT_TRUE(both.ok() && turned.ok());
    EXPECT_NEAR(both.value().slope, 1 / turned.value().slope, 1e-13);
    EXPECT_NEAR(both.value().intercept, -turned.value().intercept / turned.value().slope, 1e-13);
}

TEST(LineErrorsInBoth, exchanging_the_axes_turns_the_line_over) {
    const Values sx{0.1, 0.3, 0.2, 0.1, 0.2, 0.1}, sy{0.2, 0.1, 0.2, 0.3, 0.1, 0.2};
    const auto one = fit_line_errors_in_both(x, y, sx, sy), other = fit_line_errors_in_both(y, x, sy, sx);
    ASSERT_TRUE(one.ok() && other.ok());
    EXPECT_NEAR(one.value().slope * other.value().slope, 1, 1e-12); // settled to 1e-14 a step
    EXPECT_NEAR(one.value().residual_sum, other.value().residual_sum, 1e-10);
}

TEST(LineErrorsInBoth, the_result_is_the_minimum_of_chi_square) {
    const Values sx{0.1, 0.3, 0.2, 0.1, 0.2, 0.1}, sy{0.2, 0.1, 0.2, 0.3, 0.1, 0.2};
    const auto fit = fit_line_errors_in_both(x, y, sx, sy);
    ASSERT_TRUE(fit.ok());
    const auto chi_square = [&](double a, double b) {
        double sum = 0;
        for (std::size_t i = 0; i < x.size(); ++i) {
            const double r = y[i] - a - b * x[i];
            sum += r * r / (sy[i] * sy[i] + b * b * sx[i] * sx[i]);
        }
        return sum;
    };
    const double a = fit.value().intercept, b = fit.value().slope, least = chi_square(a, b);
    EXPECT_NEAR(fit.value().residual_sum, least, 1e-11);
    for (const double step : {-0.01, 0.01}) {
        EXPECT_GT(chi_square(a + step, b), least);
        EXPECT_GT(chi_square(a, b + step), least);
        EXPECT_GT(chi_square(a - 2.5 * step, b + step), least);
    }
}

TEST(LineErrorsInBoth, noise_in_x_no_longer_flattens_the_slope) {
    std::mt19937 engine(5);
    std::normal_distribution<double> noise(0, 1);
    Values noisy_x, noisy_y;
    for (int i = 0; i < 4000; ++i) {
        const double t = i * 0.002;
        noisy_x.push_back(t + noise(engine));
        noisy_y.push_back(2 * t + 0.1 * noise(engine));
    }
    const auto fit = fit_line_errors_in_both(noisy_x, noisy_y, Values(4000, 1), Values(4000, 0.1));
    const auto plain = fit_line(noisy_x, noisy_y);
    ASSERT_TRUE(fit.ok() && plain.ok());
    EXPECT_NEAR(fit.value().slope, 2, 5 * fit.value().u_slope);
    EXPECT_LT(plain.value().slope, 1.8); // attenuation var(t)/(var(t) + 1) = 0.84
}

TEST(LineErrorsInBoth, bad_uncertainties_are_refused_in_words) {
    const Values good(6, 0.1);
    EXPECT_FALSE(fit_line_errors_in_both(x, y, Values(5, 0.1), good).ok());
    EXPECT_FALSE(fit_line_errors_in_both(x, y, Values(6, 0), Values(6, 0)).ok());
    EXPECT_FALSE(fit_line_errors_in_both(x, y, Values(6, -0.1), good).ok());
    EXPECT_FALSE(fit_line_errors_in_both(x, y, Values(6, NAN), good).ok());
    EXPECT_FALSE(fit_line_errors_in_both(Values(6, 1), y, good, good).ok());
    EXPECT_FALSE(fit_line_errors_in_both(Values{1}, Values{1}, Values{1}, Values{1}).ok());
    const auto level = fit_line_errors_in_both(x, Values(6, 3), good, Values(6, 0));
    ASSERT_FALSE(level.ok());
    EXPECT_NE(level.error().sentence().find("level line"), std::string::npos);
}

TEST(LineErrorsInBoth, a_level_line_with_uncertain_y_settles) {
    const auto fit = fit_line_errors_in_both(x, Values(6, 3), Values(6, 0.1), Values(6, 0.1));
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit.value().slope, 0, 1e-15);
    EXPECT_NEAR(fit.value().intercept, 3, 1e-14);
}
