// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/monte_carlo.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

using namespace ullage;

namespace {

double sum_of(std::span<const double> values) {
    double sum = 0;
    for (const double v : values) sum += v;
    return sum;
}

} // namespace

TEST(MonteCarlo, the_same_seed_gives_the_same_result_and_another_seed_another) {
    const std::vector<Input> inputs{{Shape::normal, 1}, {Shape::rectangular, 2}, {Shape::triangular, 3}};
    const auto one = propagate(inputs, sum_of, 42), again = propagate(inputs, sum_of, 42), other = propagate(inputs, sum_of, 43);
    EXPECT_EQ(one.mean, again.mean);
    EXPECT_EQ(one.lower, again.lower);
    EXPECT_EQ(one.trials, again.trials);
    EXPECT_NE(one.mean, other.mean);
}

TEST(MonteCarlo, draws_are_the_same_on_every_machine) {
    // The engine is fixed by the C++ standard: its 10000th number from the default seed is 9981545732273789042, so that the
    // rectangular draw, which uses no function of the library, is known exactly.
    std::mt19937_64 engine;
    engine.discard(9999);
    EXPECT_EQ(draw({Shape::rectangular, 1}, engine), 2 * ((9981545732273789042u >> 11) + 0.5) / 9007199254740992.0 - 1);
}

TEST(MonteCarlo, each_shape_has_its_moments_and_limits) {
    const struct {
        Shape shape;
        double fourth;
        bool bounded;
    } cases[] = {{Shape::normal, 3, false}, {Shape::rectangular, 1.8, true}, {Shape::triangular, 2.4, true}}; // kurtosis
    for (const auto& c : cases) {
        const Input input{c.shape, 2};
        std::mt19937_64 engine(9);
        const int n = 400'000;
        double first = 0, second = 0, fourth = 0;
        for (int i = 0; i < n; ++i) {
            const double z = draw(input, engine) / input.standard_uncertainty();
            if (c.bounded) {
                ASSERT_LE(std::abs(z * input.standard_uncertainty()), 2);
            }
            first += z / n;
            second += z * z / n;
            fourth += z * z * z * z / n;
        }
        // Standard deviations of these averages are at most 0.0016, 0.0022 and 0.016: five of each.
        EXPECT_NEAR(first, 0, 0.008);
        EXPECT_NEAR(second, 1, 0.011);
        EXPECT_NEAR(fourth, c.fourth, 0.08);
    }
}

TEST(MonteCarlo, a_model_without_uncertainty_is_its_value_exactly) {
    const std::vector<Input> inputs{{Shape::normal, 0}};
    const auto result = propagate(inputs, [](std::span<const double> v) { return 0.1 + v[0]; });
    EXPECT_EQ(result.mean, 0.1);
    EXPECT_EQ(result.standard_deviation, 0);
    EXPECT_EQ(result.lower, 0.1);
    EXPECT_TRUE(result.stable);
    EXPECT_EQ(result.trials, 100'000u);
}

TEST(MonteCarlo, no_inputs_at_all_are_a_constant) {
    const auto result = propagate({}, [](std::span<const double>) { return 7.0; });
    EXPECT_EQ(result.mean, 7);
    EXPECT_EQ(result.upper, 7);
}

TEST(MonteCarlo, a_stable_result_keeps_its_promise_of_half_a_second_digit) {
    // Standard deviation 1: second digit 0.1, so that 0.05 is promised for two standard deviations of each of the four.
    const std::vector<Input> inputs{{Shape::normal, 1}};
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const auto r = propagate(inputs, sum_of, seed);
        ASSERT_TRUE(r.stable);
        EXPECT_NEAR(r.mean, 0, 0.05);
        EXPECT_NEAR(r.standard_deviation, 1, 0.05);
        EXPECT_NEAR(r.lower, -1.96, 0.05);
        EXPECT_NEAR(r.upper, 1.96, 0.05);
    }
}

TEST(MonteCarlo, the_limit_of_trials_holds_and_is_told) {
    const std::vector<Input> inputs{{Shape::normal, 1}};
    const auto few = propagate(inputs, sum_of, 1, 500);
    EXPECT_EQ(few.trials, 500u);
    EXPECT_FALSE(few.stable);
    const auto some = propagate(inputs, sum_of, 1, 35'000);
    EXPECT_EQ(some.trials, 30'000u);
    EXPECT_EQ(propagate(inputs, sum_of, 1, 0).trials, 0u);
    const auto one = propagate(inputs, sum_of, 1, 1);
    EXPECT_EQ(one.lower, one.upper);
}

TEST(MonteCarlo, a_heavy_tail_that_does_not_settle_is_called_unstable) {
    const std::vector<Input> inputs{{Shape::normal, 1}, {Shape::normal, 1}};
    const auto ratio = propagate(
        inputs, [](std::span<const double> v) { return v[0] / v[1]; }, 1, 300'000);
    EXPECT_FALSE(ratio.stable);
    EXPECT_EQ(ratio.trials, 300'000u);
}

TEST(MonteCarlo, values_that_are_not_finite_are_counted_and_forbid_stable) {
    const std::vector<Input> inputs{{Shape::rectangular, 1}};
    const auto half = propagate(
        inputs, [](std::span<const double> v) { return std::sqrt(v[0]); }, 1, 100'000);
    EXPECT_EQ(half.trials + half.not_finite, 100'000u);
    EXPECT_NEAR(static_cast<double>(half.not_finite), 50'000, 800); // binomial standard deviation 158
    EXPECT_FALSE(half.stable);
    EXPECT_TRUE(std::isfinite(half.upper));
    const auto none = propagate(
        inputs, [](std::span<const double>) { return NAN; }, 1, 20'000);
    EXPECT_EQ(none.trials, 0u);
    EXPECT_FALSE(none.stable);
}

TEST(HalfWidthOfSum, one_part_alone_gives_its_own_interval) {
    EXPECT_DOUBLE_EQ(half_width_of_sum(10, 0), 9.5);
    EXPECT_NEAR(half_width_of_sum(0, 2), 2 * 1.959963984540054, 1e-13);
    EXPECT_EQ(half_width_of_sum(0, 0), 0);
    EXPECT_NEAR(half_width_of_sum(1, 1e-12), 0.95, 1e-12);
    EXPECT_NEAR(half_width_of_sum(1, 1e-320), 0.95, 1e-12);
}

TEST(HalfWidthOfSum, the_series_of_a_narrow_rectangle_joins_the_closed_form) {
    // A step at the seam r = 0.01 would show against the smooth slope of about r/3 * z.
    const double before = half_width_of_sum(0.01 - 1e-9, 1), after = half_width_of_sum(0.01 + 1e-9, 1);
    EXPECT_NEAR(after - before, 2e-9 * 0.01 / 3 * 1.96, 2e-12); // rounding of G over r: 1e-16/0.01, over the density 0.12
    // Var 1 + r^2/3 with all but normal shape: the first order in r^2.
    EXPECT_NEAR(half_width_of_sum(0.001, 1), 1.959963984540054 * std::sqrt(1 + 1e-6 / 3), 1e-12);
}

TEST(HalfWidthOfSum, it_agrees_with_drawing_the_sum) {
    for (const double coverage : {0.95, 0.5}) {
        const double half = half_width_of_sum(2, 0.7, coverage);
        std::mt19937_64 engine(3);
        int inside = 0;
        const int n = 400'000;
        for (int i = 0; i < n; ++i) inside += std::abs(draw({Shape::rectangular, 2}, engine) + draw({Shape::normal, 0.7}, engine)) <= half ? 1 : 0;
        EXPECT_NEAR(inside / static_cast<double>(n), coverage, 0.004); // binomial standard deviation at most 0.0008
    }
}

TEST(HalfWidthOfSum, the_coverage_of_a_sum_is_the_inverse_of_its_half_width) {
    for (const double coverage : {0.5, 0.9, 0.95, 0.99})
        for (const auto& [rectangular, normal_sd] :
             {std::pair(2.0, 0.7), std::pair(0.7, 2.0), std::pair(0.001, 1.0), std::pair(5.0, 0.01), std::pair(0.0, 3.0)})
            EXPECT_NEAR(coverage_of_sum(rectangular, normal_sd, half_width_of_sum(rectangular, normal_sd, coverage)), coverage, 1e-12);
    EXPECT_DOUBLE_EQ(coverage_of_sum(10, 0, 4), 0.4);
    EXPECT_EQ(coverage_of_sum(10, 0, 11), 1);
    EXPECT_EQ(coverage_of_sum(0, 0, 0), 1);
}

TEST(HalfWidthOfSum, the_table_of_half_widths_answers_as_solving_does) {
    for (const double coverage : {0.5, 0.95}) {
        const BeyondHalfWidth beyond(coverage);
        for (double rectangular = 0; rectangular < 40; rectangular = rectangular * 1.3 + 0.003) {
            const double half = half_width_of_sum(rectangular, 0.4, coverage);
            EXPECT_TRUE(beyond(half * (1 + 1e-7), rectangular, 0.4)) << rectangular;
            EXPECT_FALSE(beyond(half * (1 - 1e-7), rectangular, 0.4)) << rectangular;
        }
    }
    const BeyondHalfWidth beyond(0.95);
    EXPECT_TRUE(beyond(9.6, 10, 0));
    EXPECT_FALSE(beyond(9.4, 10, 0));
    EXPECT_FALSE(beyond(0, 0, 1));
    EXPECT_TRUE(beyond(1, 0, 0));
}

TEST(HalfWidthOfSum, it_scales_and_rises_with_every_part) {
    EXPECT_NEAR(half_width_of_sum(30, 20), 10 * half_width_of_sum(3, 2), 1e-12);
    EXPECT_LT(half_width_of_sum(3, 2), half_width_of_sum(3.1, 2));
    EXPECT_LT(half_width_of_sum(3, 2), half_width_of_sum(3, 2.1));
    EXPECT_LT(half_width_of_sum(3, 2, 0.9), half_width_of_sum(3, 2, 0.95));
}
