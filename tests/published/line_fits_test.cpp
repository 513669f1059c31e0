// SPDX-License-Identifier: GPL-3.0-or-later
#include "nist_data.h"
#include "numerics/least_squares.h"
#include "numerics/line_fit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

using namespace ullage;

namespace {

using Values = std::vector<double>;

/// Relative comparison: `digits` significant digits agree to within one unit of the last.
void expect_digits(double value, double certified, int digits) { EXPECT_NEAR(value, certified, std::pow(10.0, 1 - digits) * std::abs(certified)); }

struct Columns {
    Values x, y;
};

Columns norris() {
    Columns c;
    for (const auto& p : nist::norris) {
        c.x.push_back(p.x);
        c.y.push_back(p.y);
    }
    return c;
}

} // namespace

// Source: NIST StRD, Norris; certified to 15 digits. 12 digits are asked: the data are decimal fractions that a double rounds at
// 1e-16, and the intercept is a difference 1600 times smaller than its parts.
TEST(PublishedLineFits, nist_norris_to_twelve_digits) {
    const auto [x, y] = norris();
    const auto fit = fit_line(x, y);
    ASSERT_TRUE(fit.ok());
    const LineFit& f = fit.value();
    expect_digits(f.intercept, -0.262323073774029, 12);
    expect_digits(f.slope, 1.00211681802045, 14);
    expect_digits(f.u_intercept, 0.232818234301152, 12);
    expect_digits(f.u_slope, 0.429796848199937e-03, 12);
    expect_digits(f.residual_sd().value(), 0.884796396144373, 12);
    expect_digits(f.r_squared.value(), 0.999993745883712, 14);
    expect_digits(f.residual_sum, 26.6173985294224, 12);
    EXPECT_EQ(f.degrees_of_freedom, 34u);
    // GSL's own test of its linear fit prints -7.74327536339570e-05 and asks 1e-10 of it; its 11th digit is already off, as exact
    // rational arithmetic on the decimal data shows.
    expect_digits(f.covariance, -7.74327536339570e-05, 10);
    expect_digits(f.covariance, -7.743275363156436e-05, 12);
    expect_digits(f.covariance / (f.u_intercept * f.u_slope), -0.7738280820878582, 12); // recalculated with 40 digits
}

// The same data with sigma = 1 taken as known: unscaled variances of GSL's test of its linear fit, printed to 15 digits.
TEST(PublishedLineFits, nist_norris_with_known_sigmas_is_not_scaled) {
    const auto [x, y] = norris();
    const auto fit = fit_line(x, y, Values(x.size(), 1.0));
    ASSERT_TRUE(fit.ok());
    expect_digits(fit.value().u_slope * fit.value().u_slope, 2.35960747164148e-07, 12);
    expect_digits(fit.value().covariance, -9.89095016390515e-05, 12);
    expect_digits(fit.value().u_intercept, 0.263131987557467, 12); // recalculated with 40 digits
    expect_digits(fit.value().u_slope, 0.000485757910037652, 12);  // recalculated with 40 digits
}

// Source: NIST StRD, Norris, through the general solver.
TEST(PublishedLineFits, nist_norris_by_general_least_squares) {
    const auto [x, y] = norris();
    Values design;
    for (const double v : x) design.insert(design.end(), {1, v});
    const auto fit = solve_least_squares(design, 2, y);
    ASSERT_TRUE(fit.ok());
    expect_digits(fit.value().parameters[0], -0.262323073774029, 12);
    expect_digits(fit.value().parameters[1], 1.00211681802045, 14);
    expect_digits(std::sqrt(fit.value().cov(0, 0)), 0.232818234301152, 12);
    expect_digits(fit.value().cov(0, 1), -7.743275363156436e-05, 12); // exact rational arithmetic
    expect_digits(fit.value().residual_sum, 26.6173985294224, 12);
}

// Source: NIST StRD, NoInt1. The R-squared of a line through the origin is uncentred. Small whole numbers: 13 digits.
TEST(PublishedLineFits, nist_noint1_through_the_origin) {
    Values x, y;
    for (int i = 0; i <= 10; ++i) {
        x.push_back(60 + i);
        y.push_back(130 + i);
    }
    const auto fit = fit_through_origin(x, y);
    ASSERT_TRUE(fit.ok());
    expect_digits(fit.value().slope, 2.07438016528926, 13);
    expect_digits(fit.value().u_slope, 0.165289256198347e-01, 13);
    expect_digits(fit.value().residual_sd().value(), 3.56753034006338, 13);
    expect_digits(fit.value().r_squared.value(), 0.999365492298663, 13);
    expect_digits(fit.value().residual_sum, 127.272727272727, 13);
    EXPECT_EQ(fit.value().degrees_of_freedom, 10u);
}

// Source: NIST StRD, NoInt2.
TEST(PublishedLineFits, nist_noint2_through_the_origin) {
    const auto fit = fit_through_origin(Values{4, 5, 6}, Values{3, 4, 4});
    ASSERT_TRUE(fit.ok());
    expect_digits(fit.value().slope, 0.727272727272727, 13);
    expect_digits(fit.value().u_slope, 0.420827318078432e-01, 13);
    expect_digits(fit.value().residual_sd().value(), 0.369274472937998, 13);
    expect_digits(fit.value().r_squared.value(), 0.993348115299335, 13);
    expect_digits(fit.value().residual_sum, 0.272727272727273, 13);
    EXPECT_EQ(fit.value().degrees_of_freedom, 2u);
}

// Source: NIST StRD, Pontius. 11 digits: x^2 reaches 9e12 and B2's share of y is a few parts in a hundred.
TEST(PublishedLineFits, nist_pontius_quadratic) {
    Values design, y(nist::pontius_y.begin(), nist::pontius_y.end());
    double squares = 0, mean = 0;
    for (std::size_t i = 0; i < y.size(); ++i) {
        const double x = nist::pontius_x(i);
        design.insert(design.end(), {1, x, x * x});
        mean += y[i] / 40;
    }
    for (const double v : y) squares += (v - mean) * (v - mean);
    const auto fit = solve_least_squares(design, 3, y);
    ASSERT_TRUE(fit.ok());
    const LeastSquaresFit& f = fit.value();
    expect_digits(f.parameters[0], 0.673565789473684e-03, 11);
    expect_digits(f.parameters[1], 0.732059160401003e-06, 11);
    expect_digits(f.parameters[2], -0.316081871345029e-14, 11);
    expect_digits(std::sqrt(f.cov(0, 0)), 0.107938612033077e-03, 11);
    expect_digits(std::sqrt(f.cov(1, 1)), 0.157817399981659e-09, 11);
    expect_digits(std::sqrt(f.cov(2, 2)), 0.486652849992036e-16, 11);
    expect_digits(f.residual_sum, 0.155761768796992e-05, 11);
    expect_digits(1 - f.residual_sum / squares, 0.999999900178537, 14);
    EXPECT_EQ(f.degrees_of_freedom, 37u);
}

// Source: JCGM 100:2008, H.3 (Tables H.6 and H.7): calibration of a thermometer, correction b = y1 + y2 (t - 20 C).
// Printed figures to their last digit; further digits recalculated from the printed data, to 12 digits.
TEST(PublishedLineFits, gum_h3_thermometer_with_covariance) {
    Values t{21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
    const Values b{-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160};
    for (double& v : t) v -= 20;
    const auto fit = fit_line(t, b);
    ASSERT_TRUE(fit.ok());
    const LineFit& f = fit.value();
    EXPECT_NEAR(f.intercept, -0.1712, 0.00005);
    EXPECT_NEAR(f.u_intercept, 0.0029, 0.00005);
    EXPECT_NEAR(f.slope, 0.00218, 0.000005);
    EXPECT_NEAR(f.u_slope, 0.00067, 0.000005);
    const double correlation = f.covariance / (f.u_intercept * f.u_slope);
    EXPECT_NEAR(correlation, -0.930, 0.0005);
    EXPECT_NEAR(f.residual_sd().value(), 0.0035, 0.00005);
    EXPECT_NEAR(f.at(10), -0.1494, 0.00005); // at 30 C
    EXPECT_NEAR(f.u_at(10), 0.0041, 0.00005);
    EXPECT_EQ(f.degrees_of_freedom, 9u);
    expect_digits(f.intercept, -0.17120379013135, 12);
    expect_digits(f.u_intercept, 0.002877597835159954, 11); // t - 20 is rounded at 1e-15 of 1.5
    expect_digits(f.slope, 0.002182697739887278, 11);
    expect_digits(f.u_slope, 0.0006679387732278317, 11);
    expect_digits(correlation, -0.9304296030934459, 12);
    expect_digits(f.u_at(10), 0.00413859575285, 11);
    expect_digits(f.u_new_value(10), 0.00541857255, 8);
    // Without the correlation it would be 0.0073: the covariance is not optional.
    EXPECT_NEAR(std::hypot(f.u_intercept, 10 * f.u_slope), 0.0073, 0.00005);
    // A common systematic uncertainty of 0.005 enters the intercept only (worked example in the documentation of GTC).
    expect_digits(std::hypot(f.u_intercept, 0.005), 0.00576893138292676, 12);
}

// Source: Natrella, NBS Handbook 91, 5-4.1: Young's modulus against temperature. The handbook's last printed digits carry its
// desk calculation (s truncated, variances off by one there), so one or two units of the last digit; beside them exact rational
// arithmetic on the same data, to 12 digits.
TEST(PublishedLineFits, natrella_falling_line_and_its_two_bands) {
    const Values x{30, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200, 1300, 1400, 1500};
    const Values y{4642, 4612, 4565, 4513, 4476, 4433, 4389, 4347, 4303, 4251, 4201, 4140, 4100, 4073, 4024, 3999};
    const auto fit = fit_line(x, y);
    ASSERT_TRUE(fit.ok());
    const LineFit& f = fit.value();
    EXPECT_NEAR(f.slope, -0.44985482, 1e-8);
    EXPECT_NEAR(f.u_slope * f.u_slope, 0.000025649045, 1e-12);
    EXPECT_NEAR(f.intercept, 4654.9846, 1e-4);
    EXPECT_NEAR(f.u_intercept * f.u_intercept, 19.879452, 2e-6);
    EXPECT_NEAR(f.residual_sd().value(), 9.277617, 1e-6);
    EXPECT_NEAR(std::pow(f.u_at(1200), 2), 10.53, 0.005);
    EXPECT_NEAR(std::pow(f.u_new_value(750), 2), 91.45, 0.005);
    expect_digits(f.slope, -0.4498548241407246687, 12);
    expect_digits(f.intercept, 4654.984595900807360, 12);
    expect_digits(f.u_slope * f.u_slope, 2.564904551385835e-05, 12);
    expect_digits(f.u_intercept * f.u_intercept, 19.87945303205037822, 12);
    expect_digits(f.covariance, -0.01928487609573224929, 12);
    expect_digits(f.residual_sd().value(), 9.277617640383068343, 12);
}

// Source: test of weighted fits in GTC (Measurement Standards Laboratory of New Zealand), values of R's lm(weights =).
TEST(PublishedLineFits, weighted_line_with_known_and_with_scaled_sigmas) {
    const Values x{1, 2, 3, 4, 5, 6}, y{3.014, 5.225, 7.004, 9.061, 11.201, 12.762}, u{0.2, 0.2, 0.2, 0.4, 0.4, 0.4};
    const auto fit = fit_line(x, y, u);
    ASSERT_TRUE(fit.ok());
    const LineFit& f = fit.value();
    expect_digits(f.intercept, 1.137537974683544, 14);
    expect_digits(f.slope, 1.972639240506329, 14);
    EXPECT_NEAR(f.u_intercept, 0.21188326, 5e-9); // printed digits
    EXPECT_NEAR(f.u_slope, 0.07115681, 5e-9);
    EXPECT_NEAR(f.covariance, -0.01316456, 5e-9);
    expect_digits(f.residual_sum, 1.339521795886076, 12);
    EXPECT_EQ(f.degrees_of_freedom, 4u);
    // chi-square per degree of freedom is 0.33 here; scaled by it the sigmas would shrink to R's:
    EXPECT_NEAR(f.u_intercept * f.residual_sd().value(), 0.12261, 5e-6);
    EXPECT_NEAR(f.u_slope * f.residual_sd().value(), 0.04118, 5e-6);
    EXPECT_NEAR(f.covariance * f.residual_sd().value() * f.residual_sd().value(), -0.004408553, 5e-10);
}
