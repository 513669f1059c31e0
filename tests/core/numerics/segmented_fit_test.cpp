// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/segmented_fit.h"

#include "numerics/least_squares.h"
#include "numerics/line_fit.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

using namespace ullage;

namespace {

using Values = std::vector<double>;

struct Points {
    Values x, y;
};

/// n points over 0 .. 10 on two lines that meet at (at, 3), with normal scatter.
Points bent(std::size_t n, double at, double before, double after, double sd, unsigned seed) {
    std::mt19937 engine(seed);
    std::normal_distribution<double> noise(0, 1);
    Points p;
    for (std::size_t i = 0; i < n; ++i) {
        const double x = 10.0 * static_cast<double>(i) / static_cast<double>(n - 1);
        p.x.push_back(x);
        p.y.push_back(3 + (x < at ? before : after) * (x - at) + sd * noise(engine));
    }
    return p;
}

/// Residual sum of the best two lines with the break at b, by the general solver.
double residual_at(const Points& p, double b, const Values& sigma) {
    Values design;
    for (const double x : p.x) design.insert(design.end(), {1, x, std::max(0.0, x - b)});
    return solve_least_squares(design, 3, p.y, sigma).value().residual_sum;
}

} // namespace

TEST(SegmentedFit, exact_lines_give_break_and_slopes_back) {
    for (const double at : {3.0, 4.77, 6.123}) {
        const Points p = bent(21, at, 2, -1, 0, 1);
        const auto fit = fit_segmented(p.x, p.y);
        ASSERT_TRUE(fit.ok());
        EXPECT_NEAR(fit.value().break_x, at, 1e-10);
        EXPECT_NEAR(fit.value().level_at_break, 3, 1e-10);
        EXPECT_NEAR(fit.value().slope_before, 2, 1e-11);
        EXPECT_NEAR(fit.value().slope_after, -1, 1e-11);
        EXPECT_LT(fit.value().p_value, 1e-12);
        EXPECT_FALSE(fit.value().f_ratio.has_value()); // nothing left to divide by
        EXPECT_NEAR(fit.value().at(0), 3 - 2 * at, 1e-9);
        EXPECT_NEAR(fit.value().at(10), 3 - (10 - at), 1e-9);
    }
}

TEST(SegmentedFit, a_straight_line_has_no_evidence_of_a_break) {
    const Points p = bent(15, 5, 0.3, 0.3, 0, 1);
    const auto fit = fit_segmented(p.x, p.y);
    ASSERT_TRUE(fit.ok());
    EXPECT_EQ(fit.value().p_value, 1);
    EXPECT_FALSE(fit.value().f_ratio.has_value());
    const auto known = fit_segmented(p.x, p.y, Values(15, 0.1));
    ASSERT_TRUE(known.ok());
    EXPECT_EQ(known.value().p_value, 1);
    EXPECT_NEAR(known.value().delta, 0, 1e-12);
}

TEST(SegmentedFit, the_break_is_the_best_of_a_fine_grid) {
    for (unsigned seed = 1; seed <= 30; ++seed) {
        const Points p = bent(14, 4.2, 1, 0.2, 0.4, seed);
        const Values sigma = seed % 2 == 0 ? Values{} : Values{.4, .2, .4, .5, .4, .4, .3, .4, .6, .4, .4, .2, .4, .4};
        const auto fit = fit_segmented(p.x, p.y, sigma);
        ASSERT_TRUE(fit.ok());
        const double found = fit.value().residual_sum;
        EXPECT_NEAR(found, residual_at(p, fit.value().break_x, sigma), 1e-9 * found);
        const double from = p.x[2], to = p.x[11]; // three points on each side
        ASSERT_GE(fit.value().break_x, from);
        ASSERT_LE(fit.value().break_x, to);
        for (int i = 0; i <= 500; ++i) EXPECT_GE(residual_at(p, from + (to - from) * i / 500, sigma), found * (1 - 1e-9));
    }
}

TEST(SegmentedFit, the_reported_fall_is_that_of_the_residual_sums) {
    const Points p = bent(20, 5, 1, 0.5, 0.3, 4);
    const auto fit = fit_segmented(p.x, p.y);
    const auto line = fit_line(p.x, p.y);
    ASSERT_TRUE(fit.ok() && line.ok());
    EXPECT_NEAR(fit.value().line_residual_sum, line.value().residual_sum, 1e-12);
    EXPECT_NEAR(fit.value().delta, line.value().residual_sum - fit.value().residual_sum, 1e-12);
    EXPECT_EQ(fit.value().degrees_of_freedom, 16u);
    ASSERT_TRUE(fit.value().f_ratio.has_value());
    EXPECT_NEAR(*fit.value().f_ratio, fit.value().delta / 2 / (fit.value().residual_sum / 16), 1e-12);
}

TEST(SegmentedFit, order_mirror_and_units_do_not_change_the_answer) {
    const Points p = bent(18, 6, 1, 2, 0.2, 8);
    const Values sigma(18, 0.2);
    const auto fit = fit_segmented(p.x, p.y, sigma);
    Points shuffled, mirrored, scaled;
    for (std::size_t i = 0; i < 18; ++i) {
        const std::size_t k = (i * 7) % 18;
        shuffled.x.push_back(p.x[k]);
        shuffled.y.push_back(p.y[k]);
        mirrored.x.push_back(-p.x[i]);
        mirrored.y.push_back(p.y[i]);
        scaled.x.push_back(1e6 + 1000 * p.x[i]);
        scaled.y.push_back(5 * p.y[i]);
    }
    const auto a = fit_segmented(shuffled.x, shuffled.y, sigma), b = fit_segmented(mirrored.x, mirrored.y, sigma);
    const auto c = fit_segmented(scaled.x, scaled.y, Values(18, 1.0));
    ASSERT_TRUE(fit.ok() && a.ok() && b.ok() && c.ok());
    const SegmentedFit& f = fit.value();
    EXPECT_EQ(a.value().break_x, f.break_x);
    EXPECT_NEAR(b.value().break_x, -f.break_x, 1e-9);
    EXPECT_NEAR(b.value().slope_before, -f.slope_after, 1e-9);
    EXPECT_NEAR(b.value().u_slope_before, f.u_slope_after, 1e-9);
    EXPECT_NEAR(b.value().break_lower, -f.break_upper, 1e-8);
    EXPECT_NEAR(b.value().p_value, f.p_value, 1e-9);
    EXPECT_NEAR(c.value().break_x, 1e6 + 1000 * f.break_x, 1e-5);
    EXPECT_NEAR(c.value().slope_after, f.slope_after / 200, 1e-10);
    EXPECT_NEAR(c.value().delta, f.delta, 1e-7 * f.delta);
}

TEST(SegmentedFit, straight_lines_are_rarely_called_bent) {
    // Davies' p is an upper bound: at most 5 % of straight lines may fall under 0.05. Binomial standard deviation 0.005, three.
    for (const bool known : {true, false}) {
        int bent_lines = 0;
        const int trials = 2000;
        for (int k = 0; k < trials; ++k) {
            const Points p = bent(20, 5, 0.7, 0.7, 0.5, 100u + static_cast<unsigned>(k));
            const auto fit = fit_segmented(p.x, p.y, known ? Values(20, 0.5) : Values{});
            ASSERT_TRUE(fit.ok());
            bent_lines += fit.value().p_value < 0.05 ? 1 : 0;
        }
        EXPECT_LT(bent_lines / static_cast<double>(trials), 0.065);
        EXPECT_GT(bent_lines / static_cast<double>(trials), 0.01); // a bound, but not an idle one
    }
}

TEST(SegmentedFit, clear_bends_are_found_and_located_within_their_interval) {
    int found = 0, covered = 0;
    const int trials = 1000;
    for (int k = 0; k < trials; ++k) {
        const Points p = bent(30, 4.3, 1, 0, 0.4, 5000u + static_cast<unsigned>(k));
        const auto fit = fit_segmented(p.x, p.y, k % 2 == 0 ? Values(30, 0.4) : Values{});
        ASSERT_TRUE(fit.ok());
        found += fit.value().p_value < 0.01 ? 1 : 0;
        covered += fit.value().break_lower <= 4.3 && 4.3 <= fit.value().break_upper ? 1 : 0;
        ASSERT_TRUE(fit.value().u_break_x.has_value());
    }
    EXPECT_GT(found, 990);
    EXPECT_NEAR(covered / static_cast<double>(trials), 0.95, 0.03); // binomial standard deviation 0.007
}

TEST(SegmentedFit, the_break_uncertainty_is_the_spread_of_repeated_fits) {
    double sum = 0, squares = 0, u = 0;
    const int trials = 1000;
    for (int k = 0; k < trials; ++k) {
        const Points p = bent(40, 5.1, 2, 0, 0.2, 9000u + static_cast<unsigned>(k));
        const auto fit = fit_segmented(p.x, p.y, Values(40, 0.2));
        ASSERT_TRUE(fit.ok());
        sum += fit.value().break_x / trials;
        squares += fit.value().break_x * fit.value().break_x / trials;
        u += *fit.value().u_break_x / trials;
    }
    EXPECT_NEAR(sum, 5.1, 0.02);
    EXPECT_NEAR(std::sqrt(squares - sum * sum) / u, 1, 0.1); // 0.022 from the trials, the rest for the first order
}

TEST(SegmentedFit, repeated_x_are_welcome) {
    Values x, y;
    for (int i = 0; i <= 8; ++i) {
        for (const double off : {-0.1, 0.1}) {
            x.push_back(i);
            y.push_back(std::max(0, i - 4) + off);
        }
    }
    const auto fit = fit_segmented(x, y);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit.value().break_x, 4, 1e-10);
    EXPECT_NEAR(fit.value().slope_before, 0, 1e-12);
    EXPECT_NEAR(fit.value().slope_after, 1, 1e-12);
}

TEST(SegmentedFit, thousands_of_points_take_one_pass) {
    const Points p = bent(50'000, 7.5, 1, 1.05, 0.1, 77);
    const auto fit = fit_segmented(p.x, p.y, Values(50'000, 0.1));
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit.value().break_x, 7.5, 5 * *fit.value().u_break_x);
    EXPECT_LT(fit.value().p_value, 1e-6);
}

TEST(SegmentedFit, what_cannot_bend_is_refused_in_words) {
    EXPECT_FALSE(fit_segmented(Values{1, 2, 3, 4, 5}, Values{1, 2, 3, 4, 5}).ok()); // three on each side
    EXPECT_TRUE(fit_segmented(Values{1, 2, 3, 4, 5}, Values{1, 2, 3, 3, 2}, {}, 2).ok());
    EXPECT_TRUE(fit_segmented(Values{1, 2, 3, 4}, Values{1, 2, 2, 1}, Values(4, 0.1), 2).ok());
    EXPECT_FALSE(fit_segmented(Values{1, 2, 3, NAN, 5, 6}, Values(6, 1)).ok());
    EXPECT_FALSE(fit_segmented(Values(6, 1), Values{1, 2, 3, 4, 5, 6}).ok());
    EXPECT_FALSE(fit_segmented(Values{1, 2, 3, 4, 5, 6}, Values{1, 2, 3, 4, 5, 7}, Values(6, 1e200)).ok());
    EXPECT_FALSE(fit_segmented(Values{1, 2, 3, 4, 5, 6}, Values{1, 2, 3, 4, 5, 7}, Values(6, 1e-200)).ok());
    const auto sides = fit_segmented(Values{1, 1, 1, 2, 2, 2}, Values{1, 2, 3, 4, 5, 6});
    ASSERT_FALSE(sides.ok());
    EXPECT_NE(sides.error().sentence().find("two different x on both sides"), std::string::npos);
}
