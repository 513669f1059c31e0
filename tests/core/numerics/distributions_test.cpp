// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/distributions.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace ullage;

TEST(Distributions, quantiles_are_symmetric_and_rise) {
    for (const double p : {1e-9, 0.001, 0.2, 0.4}) {
        EXPECT_NEAR(normal_quantile(p), -normal_quantile(1 - p), 1e-7); // 1 - 1e-9 itself is rounded to 1e-16
        EXPECT_LT(normal_quantile(p), normal_quantile(p * 1.1));
        EXPECT_LT(student_t_quantile(p, 3), student_t_quantile(p * 1.1, 3));
        EXPECT_LT(chi_square_quantile(p, 3), chi_square_quantile(p * 1.1, 3));
    }
    EXPECT_EQ(normal_quantile(0.5), 0);
    EXPECT_EQ(student_t_quantile(0.5, 4), 0);
}

TEST(Distributions, student_t_of_one_degree_is_the_cauchy_distribution) {
    for (const double p : {0.01, 0.3, 0.75, 0.999})
        EXPECT_NEAR(student_t_quantile(p, 1), std::tan(M_PI * (p - 0.5)), 1e-12 * std::abs(std::tan(M_PI * (p - 0.5))) + 1e-15);
}

TEST(Distributions, infinite_degrees_of_freedom_are_the_normal_distribution) {
    EXPECT_EQ(student_t_quantile(0.9, INFINITY), normal_quantile(0.9));
    EXPECT_NEAR(coverage_factor(0.95, INFINITY), 1.959963984540054, 1e-14);
    EXPECT_NEAR(coverage_factor(0.95, 1e9), coverage_factor(0.95, INFINITY), 1e-8);
    EXPECT_NEAR(student_t_two_sided_tail(1.959963984540054, INFINITY), 0.05, 1e-15);
}

TEST(Distributions, chi_square_of_two_degrees_is_exponential) {
    for (const double x : {0.1, 1.0, 5.0, 60.0}) EXPECT_NEAR(chi_square_tail(x, 2), std::exp(-x / 2), 1e-14 * std::exp(-x / 2));
    EXPECT_EQ(chi_square_tail(0, 4), 1);
    EXPECT_EQ(chi_square_tail(-3, 4), 1);
}

TEST(Distributions, tail_and_quantile_undo_each_other) {
    for (const double nu : {1.0, 2.5, 7.0, 120.0}) {
        for (const double p : {0.01, 0.5, 0.95, 0.9999}) {
            EXPECT_NEAR(chi_square_tail(chi_square_quantile(p, nu), nu), 1 - p, 1e-13);
            EXPECT_NEAR(student_t_two_sided_tail(coverage_factor(p, nu), nu), 1 - p, 1e-13);
        }
    }
}

TEST(Distributions, the_ends_and_violated_preconditions_do_not_throw) {
    EXPECT_EQ(normal_quantile(0), -INFINITY);
    EXPECT_EQ(normal_quantile(1), INFINITY);
    EXPECT_TRUE(std::isnan(normal_quantile(1.5)));
    EXPECT_TRUE(std::isnan(normal_quantile(NAN)));
    EXPECT_TRUE(std::isnan(student_t_quantile(0.5, -1)));
    EXPECT_TRUE(std::isnan(chi_square_quantile(0.5, 0)));
}

TEST(EffectiveDegreesOfFreedom, one_part_alone_keeps_its_own_and_a_known_limit_adds_none) {
    const UncertaintyPart alone[] = {{0.3, 7}};
    EXPECT_DOUBLE_EQ(*effective_degrees_of_freedom(alone), 7);
    // Equal parts, one of them known: (2 u^2)^2 / (u^4 / nu) = 4 nu.
    const UncertaintyPart with_limit[] = {{0.3, 7}, {0.3, INFINITY}};
    EXPECT_DOUBLE_EQ(*effective_degrees_of_freedom(with_limit), 28);
    const UncertaintyPart limits[] = {{0.3, INFINITY}, {0.2, INFINITY}};
    EXPECT_EQ(*effective_degrees_of_freedom(limits), INFINITY);
    const UncertaintyPart tiny[] = {{3e-200, 7}, {3e-200, 7}};
    EXPECT_DOUBLE_EQ(*effective_degrees_of_freedom(tiny), 14);
}

TEST(EffectiveDegreesOfFreedom, what_has_none_is_absent) {
    EXPECT_FALSE(effective_degrees_of_freedom({}).has_value());
    const UncertaintyPart certain[] = {{0, 5}}, negative[] = {{-1, 5}}, none[] = {{1, 0}}, not_a_number[] = {{1, NAN}};
    EXPECT_FALSE(effective_degrees_of_freedom(certain).has_value());
    EXPECT_FALSE(effective_degrees_of_freedom(negative).has_value());
    EXPECT_FALSE(effective_degrees_of_freedom(none).has_value());
    EXPECT_FALSE(effective_degrees_of_freedom(not_a_number).has_value());
}
