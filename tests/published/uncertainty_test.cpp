// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/distributions.h"
#include "numerics/monte_carlo.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdint>
#include <functional>
#include <numbers>
#include <span>
#include <utility>
#include <vector>

using namespace ullage;

// Source: JCGM 100:2008, 4.3.7, 4.3.9 and F.2.2.1 (from memory; the factors follow by integration).
TEST(PublishedTypeB, half_widths_become_standard_uncertainties) {
    EXPECT_NEAR((Input{Shape::rectangular, 1}.standard_uncertainty()), 0.577350269, 5e-10);
    EXPECT_NEAR((Input{Shape::triangular, 1}.standard_uncertainty()), 0.408248290, 5e-10);
    EXPECT_EQ((Input{Shape::normal, 1}.standard_uncertainty()), 1);
    EXPECT_NEAR((Input{Shape::rectangular, 0.5}.standard_uncertainty()), 0.288675135, 5e-10); // a step of 1, "0.29 q"
    // The difference of two readings, each +/- 1: triangular with half-width 2.
    EXPECT_NEAR((Input{Shape::triangular, 2}.standard_uncertainty()), 0.816496581, 5e-10);
    // 50:50 within +/- a of a normal: 1.48 a (4.3.5); two chances in three: about a (4.3.6).
    EXPECT_NEAR(1 / normal_quantile(0.75), 1.48, 0.005);
    EXPECT_NEAR(1 / coverage_factor(2.0 / 3, INFINITY), 1, 0.04); // the guide rounds 1.03 to 1
    // Gauges that show 1 % and 5 % steps and four bars, in points.
    EXPECT_NEAR((Input{Shape::rectangular, 0.5}.standard_uncertainty()), 0.289, 0.0005);
    EXPECT_NEAR((Input{Shape::rectangular, 2.5}.standard_uncertainty()), 1.443, 0.0005);
    EXPECT_NEAR((Input{Shape::rectangular, 12.5}.standard_uncertainty()), 7.217, 0.0005);
}

// Source: JCGM 100:2008, 4.3.7 and 5.1.5 (from memory): voltmeter 14e-6 of reading + 2e-6 of the 1 V range; printed 8.7 and 15 uV.
TEST(PublishedTypeB, gum_5_1_5_digital_voltmeter) {
    const double half_width_uv = 14 * 0.928571 + 2 * 1;
    const double u_uv = Input{Shape::rectangular, half_width_uv}.standard_uncertainty();
    EXPECT_NEAR(half_width_uv, 15, 0.005);
    EXPECT_NEAR(u_uv, 8.7, 0.05);
    EXPECT_NEAR(std::hypot(12, u_uv), 15, 0.5);
    EXPECT_NEAR(std::hypot(12, u_uv), 14.82, 0.03); // recalculated with the half-width rounded to 15 uV: 14.80
}

// Source: JCGM 100:2008, Table G.2, all cells to the two printed decimals. The columns 68.27, 95.45 and 99.73 stand for the exact
// probabilities of one, two and three standard deviations.
TEST(PublishedFactors, gum_table_g2) {
    const double one = std::erf(1 / std::numbers::sqrt2), two = std::erf(2 / std::numbers::sqrt2);
    const double three = std::erf(3 / std::numbers::sqrt2);
    const std::array<double, 6> coverage{one, 0.90, 0.95, two, 0.99, three};
    struct Row {
        double nu;
        std::array<double, 6> t;
    };
    const std::vector<Row> rows{
        {1, {1.84, 6.31, 12.71, 13.97, 63.66, 235.80}},   {2, {1.32, 2.92, 4.30, 4.53, 9.92, 19.21}}, {3, {1.20, 2.35, 3.18, 3.31, 5.84, 9.22}},
        {4, {1.14, 2.13, 2.78, 2.87, 4.60, 6.62}},        {5, {1.11, 2.02, 2.57, 2.65, 4.03, 5.51}},  {6, {1.09, 1.94, 2.45, 2.52, 3.71, 4.90}},
        {7, {1.08, 1.89, 2.36, 2.43, 3.50, 4.53}},        {8, {1.07, 1.86, 2.31, 2.37, 3.36, 4.28}},  {9, {1.06, 1.83, 2.26, 2.32, 3.25, 4.09}},
        {10, {1.05, 1.81, 2.23, 2.28, 3.17, 3.96}},       {11, {1.05, 1.80, 2.20, 2.25, 3.11, 3.85}}, {12, {1.04, 1.78, 2.18, 2.23, 3.05, 3.76}},
        {13, {1.04, 1.77, 2.16, 2.21, 3.01, 3.69}},       {14, {1.04, 1.76, 2.14, 2.20, 2.98, 3.64}}, {15, {1.03, 1.75, 2.13, 2.18, 2.95, 3.59}},
        {16, {1.03, 1.75, 2.12, 2.17, 2.92, 3.54}},       {17, {1.03, 1.74, 2.11, 2.16, 2.90, 3.51}}, {18, {1.03, 1.73, 2.10, 2.15, 2.88, 3.48}},
        {19, {1.03, 1.73, 2.09, 2.14, 2.86, 3.45}},       {20, {1.03, 1.72, 2.09, 2.13, 2.85, 3.42}}, {25, {1.02, 1.71, 2.06, 2.11, 2.79, 3.33}},
        {30, {1.02, 1.70, 2.04, 2.09, 2.75, 3.27}},       {35, {1.01, 1.69, 2.03, 2.07, 2.72, 3.23}}, {40, {1.01, 1.68, 2.02, 2.06, 2.70, 3.20}},
        {45, {1.01, 1.68, 2.01, 2.06, 2.69, 3.18}},       {50, {1.01, 1.68, 2.01, 2.05, 2.68, 3.16}}, {100, {1.01, 1.66, 1.98, 2.03, 2.63, 3.08}},
        {INFINITY, {1.00, 1.64, 1.96, 2.00, 2.58, 3.00}},
    };
    for (const Row& row : rows)
        for (std::size_t i = 0; i < coverage.size(); ++i)
            EXPECT_NEAR(coverage_factor(coverage[i], row.nu), row.t[i], 0.005 + 1e-9) << row.nu << " at " << coverage[i];
    const std::array<std::pair<double, double>, 8> more{
        {{1, 12.706205}, {2, 4.302653}, {5, 2.570582}, {9, 2.262157}, {10, 2.228139}, {16, 2.119905}, {30, 2.042272}, {INFINITY, 1.959964}}};
    for (const auto& [nu, t] : more) EXPECT_NEAR(coverage_factor(0.95, nu), t, 5.1e-7); // recalculated, six decimals
}

// Source: JCGM 100:2008, table H.1 and H.1.6, as printed (seen in part in the data of an open library, else from memory): u_c = 32 nm, 16 effective
// degrees of freedom (truncated), t of 99 % 2.92, U = 93 nm. The parts of the comparator's reading (9.7 nm) have 25.6 degrees of freedom, the other
// figures are those of the table; d_theta is 16.6 nm there.
TEST(PublishedFactors, gum_h_1_end_gauge_effective_degrees_of_freedom) {
    const UncertaintyPart parts[] = {{25, 18}, {9.7, 25.6}, {2.9, 50}, {16.6, 2}};
    const double u_c = std::sqrt(25.0 * 25.0 + 9.7 * 9.7 + 2.9 * 2.9 + 16.6 * 16.6);
    EXPECT_NEAR(u_c, 32, 0.5);
    const double nu = effective_degrees_of_freedom(parts).value();
    EXPECT_EQ(std::floor(nu), 16);
    EXPECT_NEAR(coverage_factor(0.99, 16), 2.92, 0.005);
    EXPECT_NEAR(u_c * coverage_factor(0.99, 16), 93, 1);
}

// Source: JCGM 100:2008, G.4.1 (from memory): relative parts 0.25 %, 0.57 % and 0.82 % with 9, 4 and 14 degrees of freedom: u 1.03 %, nu 19,
// t95 2.09, U 2.2 %; recalculated nu 18.998742.
TEST(PublishedFactors, gum_g_4_1_effective_degrees_of_freedom) {
    const UncertaintyPart parts[] = {{0.25, 9}, {0.57, 4}, {0.82, 14}};
    const double nu = effective_degrees_of_freedom(parts).value();
    EXPECT_NEAR(nu, 18.998742, 5e-7);
    EXPECT_NEAR(nu, 19.0, 0.05);
    EXPECT_NEAR(coverage_factor(0.95, std::round(nu)), 2.09, 0.005);
    EXPECT_NEAR(coverage_factor(0.95, nu) * std::hypot(0.25, 0.57, 0.82), 2.2, 0.05);
}

// Source: uncertainty course notes of Sandia National Laboratories (seen as test data of an open uncertainty library):
// y = X1/X2 Yu with 0.1820, 0.1823, 0.6978, u 0.00093, 0.00058, 0.0026 and nu 9, 19, 19: y 0.6967, u 0.00494, nu 27.7, U95 0.0101 from rounded
// inputs; recalculated 0.00493180199913, 27.5127317557 and 0.0101104.
TEST(PublishedFactors, quotient_and_product_with_few_degrees_of_freedom) {
    const double y = 0.1820 / 0.1823 * 0.6978;
    const UncertaintyPart parts[] = {{y * 0.00093 / 0.1820, 9}, {y * 0.00058 / 0.1823, 19}, {y * 0.0026 / 0.6978, 19}};
    const double u = std::hypot(parts[0].standard, parts[1].standard, parts[2].standard);
    const double nu = effective_degrees_of_freedom(parts).value();
    EXPECT_NEAR(y, 0.6967, 0.00005);
    EXPECT_NEAR(u, 0.00493180199913, 1e-13);
    EXPECT_NEAR(u, 0.00494, 0.00001); // printed from rounded sensitivities
    EXPECT_NEAR(nu, 27.5127317557, 1e-9);
    EXPECT_NEAR(nu, 27.7, 0.3); // likewise
    EXPECT_NEAR(coverage_factor(0.95, nu) * u, 0.0101, 0.00005);
}

// Source: EA-4/02, example S9 (from memory): multimeter at 100 V, printed u 0.030 V and k = 0.95 sqrt(3) = 1.65. Resolution
// +/- 0.05 V rectangular outweighs the source (0.001 V normal) and its drift (+/- 0.011 V rectangular).
TEST(PublishedFactors, ea_4_02_s9_one_rectangular_part_dominates) {
    const double rest = std::hypot(0.001, Input{Shape::rectangular, 0.011}.standard_uncertainty());
    const double combined = std::hypot(Input{Shape::rectangular, 0.05}.standard_uncertainty(), rest);
    EXPECT_NEAR(combined, 0.030, 0.0005);
    EXPECT_NEAR(combined, 0.0295748, 5e-8);
    const double half_width = half_width_of_sum(0.05, rest);
    EXPECT_NEAR(half_width, 0.05, 0.005);           // printed U = 0.05 V
    EXPECT_NEAR(half_width / combined, 1.65, 0.06); // the example neglects the small parts, the convolution does not
    // Of the two rectangular parts alone the sum is a trapezium, whose tail is (a + b - h)^2/(8 a b) = 0.025; a normal part in
    // place of the smaller one and the source's 0.001 V change little.
    EXPECT_NEAR(half_width, 0.061 - std::sqrt(0.025 * 8 * 0.05 * 0.011), 0.0005);
    const Input alone{Shape::rectangular, 1}; // with next to nothing beside it
    EXPECT_NEAR(half_width_of_sum(1, 1e-6) / alone.standard_uncertainty(), 0.95 * std::numbers::sqrt3, 1e-6);
}

namespace {

double sum_of(std::span<const double> v) {
    double sum = 0;
    for (const double x : v) sum += x;
    return sum;
}

/// A million draws; the standard deviation of the mean is then 0.001 u, that of u about 0.0007 u, of a normal 2.5 % end about
/// 0.0027 u. Tolerances below are four to five of these unless noted.
Propagation million(const std::vector<Input>& inputs, const std::function<double(std::span<const double>)>& model) {
    // Ten parts of 100,000, the least that the adaptive rule draws: so no part can end early and the tolerances are known.
    Propagation total;
    const std::uint64_t parts = 10;
    for (std::uint64_t seed = 1; seed <= parts; ++seed) {
        const Propagation p = propagate(inputs, model, seed, 100'000);
        total.mean += p.mean / parts;
        total.standard_deviation += p.standard_deviation * p.standard_deviation / parts;
        total.lower += p.lower / parts;
        total.upper += p.upper / parts;
        total.trials += p.trials;
    }
    total.standard_deviation = std::sqrt(total.standard_deviation);
    return total;
}

} // namespace

// Source: JCGM 101:2008, 9.2.2, Table 2: four normal parts, u 2.0, +/- 3.92.
TEST(PublishedMonteCarlo, jcgm_101_9_2_2_four_normal_parts) {
    const auto r = million(std::vector<Input>(4, {Shape::normal, 1}), sum_of);
    EXPECT_EQ(r.trials, 1'000'000u);
    EXPECT_NEAR(r.mean, 0, 0.01);
    EXPECT_NEAR(r.standard_deviation, 2.0, 0.007);
    EXPECT_NEAR(r.lower, -3.92, 0.025);
    EXPECT_NEAR(r.upper, 3.919928, 0.025);
}

// Source: JCGM 101:2008, 9.2.3, Table 3: four rectangular parts of standard deviation 1, +/- 3.88; exactly 2 sqrt3 (2 - 0.6^(1/4)).
TEST(PublishedMonteCarlo, jcgm_101_9_2_3_four_rectangular_parts) {
    const auto r = million(std::vector<Input>(4, {Shape::rectangular, std::numbers::sqrt3}), sum_of);
    EXPECT_NEAR(r.mean, 0, 0.01);
    EXPECT_NEAR(r.standard_deviation, 2.0, 0.006);
    EXPECT_NEAR(r.lower, -3.88, 0.02);
    EXPECT_NEAR(r.upper, 2 * std::numbers::sqrt3 * (2 - std::pow(0.6, 0.25)), 0.02);
}

// Source: JCGM 101:2008, 9.2.4, Table 4 (from memory): one rectangular part of standard deviation 10 and three of 1: u 10.1,
// +/- 17.0 where first order gives 19.9; exactly u 10.148891565 and +/- 17.015814.
TEST(PublishedMonteCarlo, jcgm_101_9_2_4_one_rectangular_part_dominates) {
    std::vector<Input> inputs(3, {Shape::rectangular, std::numbers::sqrt3});
    inputs.push_back({Shape::rectangular, 10 * std::numbers::sqrt3});
    const auto r = million(inputs, sum_of);
    EXPECT_NEAR(r.standard_deviation, 10.148891565, 0.03);
    EXPECT_NEAR(r.lower, -17.015814, 0.03); // the density at the ends is high: standard deviation about 0.006
    EXPECT_NEAR(r.upper, 17.015814, 0.03);
    // The closed form takes the three small parts as one normal of the same standard deviation.
    EXPECT_NEAR(half_width_of_sum(10 * std::numbers::sqrt3, std::numbers::sqrt3), 17.0, 0.05);
    // Numerical quadrature of that convolution: 0.95 to 1e-10 at 16.994797203. Against 17.0158 the shape matters by 0.1 %.
    EXPECT_NEAR(half_width_of_sum(10 * std::numbers::sqrt3, std::numbers::sqrt3), 16.994797203, 1e-8);
    EXPECT_NEAR(coverage_factor(0.95, INFINITY) * std::sqrt(103.0), 19.9, 0.05);
}

// Source: JCGM 101:2008, 9.3, Table 6 (from memory; inputs as in the manual of the R package propagate): mass calibration, mg and
// kg/m3: Monte Carlo 1.2341, u 0.0754, [1.0834, 1.3825], where first order gives u 0.0539. 20 million draws of a separate
// calculation: 1.23403, 0.07550, [1.0844, 1.3836]; the published digits are one unstable draw, so 0.0015 of them.
TEST(PublishedMonteCarlo, jcgm_101_9_3_mass_calibration) {
    const std::vector<Input> inputs{
        {Shape::normal, 0.050}, {Shape::normal, 0.020}, {Shape::rectangular, 0.10}, {Shape::rectangular, 1000}, {Shape::rectangular, 50}};
    const auto r = million(inputs, [](std::span<const double> v) {
        const double mass = 100000 + v[0] + 1.234 + v[1], air = 1.20 + v[2], rho_w = 8000 + v[3], rho_r = 8000 + v[4];
        return mass * (1 + (air - 1.2) * (1 / rho_w - 1 / rho_r)) - 100000;
    });
    EXPECT_NEAR(r.mean, 1.23403, 0.0005);
    EXPECT_NEAR(r.standard_deviation, 0.07550, 0.0005);
    EXPECT_NEAR(r.standard_deviation, 0.0754, 0.0005);
    EXPECT_NEAR(r.lower, 1.0844, 0.001);
    EXPECT_NEAR(r.upper, 1.3836, 0.001);
    EXPECT_NEAR(r.lower, 1.0834, 0.0015);
    EXPECT_NEAR(r.upper, 1.3825, 0.0015);
    EXPECT_NEAR(std::hypot(0.050, 0.020), 0.0539, 0.00005); // first order: the air term vanishes at its estimate
}

// Source: JCGM 101:2008, 9.4 in kind (comparison loss): Y = X1^2 + X2^2, u = 0.005 each, X2 = 0; exact moments in 1e-6:
// mean x1^2 + 2 u^2, variance 4 x1^2 u^2 + 4 u^4.
TEST(PublishedMonteCarlo, jcgm_101_9_4_squares_near_zero) {
    const struct { double x1, mean, sd; } cases[] = {{0, 50, 50}, {0.010, 150, 111.803}, {0.050, 2550, 502.494}};
    for (const auto& c : cases) {
        const auto r = million(std::vector<Input>(2, {Shape::normal, 0.005}),
                               [&](std::span<const double> v) { return 1e6 * ((c.x1 + v[0]) * (c.x1 + v[0]) + v[1] * v[1]); });
        EXPECT_NEAR(r.mean, c.mean, 0.005 * c.sd);
        EXPECT_NEAR(r.standard_deviation, c.sd, 0.008 * c.sd); // exponential for x1 = 0: kurtosis 9, sd of u 0.0014 u
        EXPECT_GE(r.lower, 0);
    }
}

// Source: JCGM 100:2008, H.1 (figures as in the manual of the R package propagate), nm: end gauge l = ls + d - ls (da th + as dt);
// u 32 by first order, 34 with the second-order terms, recalculated 33.911149527. Drawn with normal parts, whose product terms
// are exactly those of second order.
TEST(PublishedMonteCarlo, gum_h1_end_gauge_products_of_zero_mean) {
    const std::vector<Input> inputs{{Shape::normal, 25},   {Shape::normal, 9.7},    {Shape::normal, 0.58e-6},
                                    {Shape::normal, 0.41}, {Shape::normal, 1.2e-6}, {Shape::normal, 0.029}};
    const auto r = million(inputs, [](std::span<const double> v) {
        const double ls = 50000623;
        return v[0] + 215 + v[1] - (ls + v[0]) * (v[2] * (-0.1 + v[3]) + (11.5e-6 + v[4]) * v[5]);
    });
    EXPECT_NEAR(r.standard_deviation, 34, 0.5);
    EXPECT_NEAR(r.standard_deviation, 33.911149527, 0.13);
    EXPECT_NEAR(r.mean, 215, 0.17);
}

// Source: NPL report DEM-ES-011, 9.2: y = ln x, x rectangular on 0.1 .. 1.1; exact mean -0.664900292916, sd 0.606226697429.
TEST(PublishedMonteCarlo, npl_logarithm_of_a_rectangular_input) {
    const auto r = million({{Shape::rectangular, 0.5}}, [](std::span<const double> v) { return std::log(0.6 + v[0]); });
    EXPECT_NEAR(r.mean, -0.664900292916, 0.003);
    EXPECT_NEAR(r.standard_deviation, 0.606226697429, 0.003);
    EXPECT_NEAR(r.upper, std::log(0.1 + 0.975), 0.001);
    EXPECT_NEAR(r.lower, std::log(0.1 + 0.025), 0.006);
    EXPECT_GT(std::abs(std::log(0.6) - r.mean), 0.1); // first order says -0.511
}

// Constructed: 1000 Wh from two readings of a register in steps of 10 Wh, class limit +/- 1 %: u = sqrt(50) Wh.
TEST(PublishedMonteCarlo, register_budget_arithmetic) {
    const Input gain{Shape::rectangular, 10}, steps{Shape::triangular, 10}; // two readings, each +/- 5 Wh
    EXPECT_NEAR(gain.standard_uncertainty(), 5.773502692, 5e-10);
    EXPECT_NEAR(steps.standard_uncertainty(), 4.082482905, 5e-10);
    const double combined_wh = std::hypot(gain.standard_uncertainty(), steps.standard_uncertainty());
    EXPECT_NEAR(combined_wh, 7.071067812, 5e-10);
    EXPECT_NEAR(2 * combined_wh, 14.142, 0.0005);
    const auto drawn = million({gain, {Shape::rectangular, 5}, {Shape::rectangular, 5}}, sum_of);
    EXPECT_NEAR(drawn.standard_deviation, combined_wh, 0.025);
    // Gain rectangular, steps as a normal part: the closed form agrees with drawing both.
    EXPECT_NEAR(half_width_of_sum(10, steps.standard_uncertainty()), (drawn.upper - drawn.lower) / 2, 0.15);
}
