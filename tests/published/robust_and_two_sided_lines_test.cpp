// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/line_fit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

using namespace ullage;

namespace {

using Values = std::vector<double>;

// Pearson's data with York's weights (York, Evensen, Martinez, Delgado 2004, Am. J. Phys. 72, 367, Table I).
const Values x{0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4}, y{5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5};
const Values weight_x{1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1}, weight_y{1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500};

Values sigmas(const Values& weights) {
    Values result;
    for (const double w : weights) result.push_back(1 / std::sqrt(w));
    return result;
}

} // namespace

// Source: York et al. 2004, Table II, to the printed digits.
TEST(PublishedLineInBoth, pearson_york_errors_of_given_sigmas) {
    const auto fit = fit_line_errors_in_both(x, y, sigmas(weight_x), sigmas(weight_y));
    ASSERT_TRUE(fit.ok());
    const LineFit& f = fit.value();
    EXPECT_NEAR(f.slope, -0.4805334, 5e-8);
    EXPECT_NEAR(f.intercept, 5.4799102, 5e-8);
    EXPECT_NEAR(f.u_slope, 0.05799, 5.1e-6); // 0.0579850, printed as 0.05799: rounded up from the middle
    EXPECT_NEAR(f.u_intercept, 0.29497, 5e-6);
    EXPECT_NEAR(f.residual_sum / 8, 1.48329, 5e-6);
    EXPECT_EQ(f.degrees_of_freedom, 8u);
    // Williamson's digits, quoted by Reed 1992 and later papers, and a recalculation: 10 and 11 digits.
    EXPECT_NEAR(f.slope, -0.48053340745, 5e-11);
    EXPECT_NEAR(f.intercept, 5.47991022403, 5e-11);
    EXPECT_NEAR(f.u_slope, 0.0579850090008, 1e-12);
    EXPECT_NEAR(f.u_intercept, 0.294970735493, 1e-11);
    EXPECT_NEAR(f.covariance, -0.01647254466, 1e-10);
    EXPECT_NEAR(f.residual_sum, 11.8663531941, 1e-9);
}

// Source: Cantrell 2008 (Atmos. Chem. Phys. 8, 5477) scales the same errors by sqrt(S/(n - 2)), printed to three digits.
TEST(PublishedLineInBoth, pearson_york_errors_scaled_by_the_scatter) {
    const auto fit = fit_line_errors_in_both(x, y, sigmas(weight_x), sigmas(weight_y));
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit.value().u_intercept * fit.value().residual_sd().value(), 0.359, 0.0005);
    EXPECT_NEAR(fit.value().u_slope * fit.value().residual_sd().value(), 0.0706, 0.00005);
    EXPECT_NEAR(fit.value().u_slope * fit.value().residual_sd().value(), 0.0706202695288, 1e-11); // recalculated
    EXPECT_NEAR(fit.value().u_intercept * fit.value().residual_sd().value(), 0.359246522551, 1e-11);
}

// The same data without weights and with those of y only: recalculated from the printed data, to the digits noted (12).
TEST(PublishedLineInBoth, pearson_data_with_other_weightings) {
    const auto plain = fit_line(x, y);
    ASSERT_TRUE(plain.ok());
    EXPECT_NEAR(plain.value().intercept, 5.76118519044, 5e-12);
    EXPECT_NEAR(plain.value().slope, -0.539577274984, 5e-13);
    EXPECT_NEAR(plain.value().u_intercept, 0.189485195921, 5e-13);
    EXPECT_NEAR(plain.value().u_slope, 0.0421265483887, 5e-14);
    const auto weighted = fit_line(x, y, sigmas(weight_y));
    ASSERT_TRUE(weighted.ok());
    EXPECT_NEAR(weighted.value().intercept, 6.10010931667, 5e-12);
    EXPECT_NEAR(weighted.value().slope, -0.610812956584, 5e-13);
    EXPECT_NEAR(weighted.value().u_intercept, 0.204662685811, 5e-13);
    EXPECT_NEAR(weighted.value().u_slope, 0.0300874488372, 5e-14);
}

// Source: Sen 1968 (J. Am. Stat. Assoc. 63, 1379), as tested in SciPy: slope 4, 93 % limits 3.71 and 4.38.
TEST(PublishedRobustLine, sen_1968) {
    const Values sx{1, 2, 3, 4, 10, 12, 18}, sy{9, 15, 19, 20, 45, 55, 78};
    const auto line = fit_robust_line(sx, sy, 0.93);
    ASSERT_TRUE(line.ok());
    EXPECT_EQ(line.value().slope, 4);
    EXPECT_EQ(line.value().intercept_separate, 4);
    EXPECT_EQ(line.value().intercept_joint, 6);
    EXPECT_NEAR(line.value().slope_lower, 3.71, 0.005);
    EXPECT_NEAR(line.value().slope_upper, 4.38, 0.0051); // exactly 4.375
    EXPECT_DOUBLE_EQ(line.value().slope_lower, 26.0 / 7);
    EXPECT_DOUBLE_EQ(line.value().slope_upper, 4.375);
    const auto plain = fit_line(sx, sy); // recalculated, nine digits
    ASSERT_TRUE(plain.ok());
    EXPECT_NEAR(plain.value().slope, 4.02135231, 5e-9);
    EXPECT_NEAR(plain.value().intercept, 5.70462633, 5e-9);
}

// Source: the test data of two published implementations: Sen's line, y moved by one, with one wild value.
TEST(PublishedRobustLine, sen_with_an_outlier_keeps_its_slope) {
    const auto line = fit_robust_line(Values{1, 2, 3, 4, 10, 12, 18}, Values{10, 14, 180, 22, 46, 54, 78});
    ASSERT_TRUE(line.ok());
    EXPECT_EQ(line.value().slope, 4);
    EXPECT_EQ(line.value().intercept_joint, 6);
}

// Source: SciPy's test of both intercepts.
TEST(PublishedRobustLine, three_points_tell_the_two_intercepts_apart) {
    const auto line = fit_robust_line(Values{0, 1, 2}, Values{0, 1, 1});
    ASSERT_TRUE(line.ok());
    EXPECT_EQ(line.value().slope, 0.5);
    EXPECT_EQ(line.value().intercept_separate, 0.5);
    EXPECT_EQ(line.value().intercept_joint, 0);
}
