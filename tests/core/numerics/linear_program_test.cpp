// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/linear_program.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <random>
#include <span>
#include <vector>

using namespace ullage;

namespace {

using Values = std::vector<double>;
using Status = LinearProgramStatus;

double value_of(const LinearProgram& p, std::size_t row, const Values& x) {
    double sum = 0;
    for (std::size_t j = 0; j < x.size(); ++j) sum += p.rows[row * x.size() + j] * x[j];
    return sum;
}

bool holds(const LinearProgram& p, const Values& x, double slack) {
    for (std::size_t i = 0; i < p.limits.size(); ++i)
        if (value_of(p, i, x) > p.limits[i] + slack) return false;
    return true;
}

/// Gauss-Jordan on a small system; absent when it is singular to 1e-9.
std::optional<Values> solve(std::vector<Values> a, Values b) {
    const std::size_t n = b.size();
    for (std::size_t k = 0; k < n; ++k) {
        std::size_t pivot = k;
        for (std::size_t i = k; i < n; ++i)
            if (std::abs(a[i][k]) > std::abs(a[pivot][k])) pivot = i;
        if (std::abs(a[pivot][k]) < 1e-9) return std::nullopt;
        std::swap(a[k], a[pivot]);
        std::swap(b[k], b[pivot]);
        for (std::size_t i = 0; i < n; ++i) {
            if (i == k) continue;
            const double f = a[i][k] / a[k][k];
            for (std::size_t j = 0; j < n; ++j) a[i][j] -= f * a[k][j];
            b[i] -= f * b[k];
        }
    }
    for (std::size_t k = 0; k < n; ++k) b[k] /= a[k][k];
    return b;
}

/// Least cost over all vertices (every choice of n rows), for programmes whose feasible set is bounded; absent: infeasible.
std::optional<double> best_vertex(const LinearProgram& p) {
    const std::size_t n = p.cost.size(), m = p.limits.size();
    std::optional<double> best;
    std::vector<bool> chosen(m, false);
    std::fill(chosen.begin(), chosen.begin() + static_cast<std::ptrdiff_t>(n), true);
    do {
        std::vector<Values> a;
        Values b;
        for (std::size_t i = 0; i < m; ++i) {
            if (!chosen[i]) continue;
            const auto row = std::span(p.rows).subspan(i * n, n);
            a.emplace_back(row.begin(), row.end());
            b.push_back(p.limits[i]);
        }
        const auto x = solve(a, b);
        if (!x || !holds(p, *x, 1e-9)) continue;
        double cost = 0;
        for (std::size_t j = 0; j < n; ++j) cost += p.cost[j] * (*x)[j];
        if (!best || cost < *best) best = cost;
    } while (std::prev_permutation(chosen.begin(), chosen.end()));
    return best;
}

void add_box(LinearProgram& p, double size) {
    for (std::size_t j = 0; j < p.cost.size(); ++j) {
        for (const double sign : {1.0, -1.0}) {
            Values row(p.cost.size(), 0);
            row[j] = sign;
            p.add(row, size);
        }
    }
}

} // namespace

TEST(LinearProgram, a_textbook_corner_is_found) {
    // max 3x + 5y, x <= 4, 2y <= 12, 3x + 2y <= 18: 36 at (2, 6) (the standard example of simplex courses; from memory).
    LinearProgram p{{-3, -5}, {VariableSign::non_negative, VariableSign::non_negative}, {}, {}};
    p.add(Values{1, 0}, 4);
    p.add(Values{0, 2}, 12);
    p.add(Values{3, 2}, 18);
    const auto s = solve_linear_program(p);
    ASSERT_TRUE(s.ok());
    ASSERT_EQ(s.value().status, Status::optimal);
    EXPECT_NEAR(s.value().objective, -36, 1e-12);
    EXPECT_NEAR(s.value().point[0], 2, 1e-12);
    EXPECT_NEAR(s.value().point[1], 6, 1e-12);
    EXPECT_EQ(s.value().binding, (std::vector<std::size_t>{1, 2}));
}

TEST(LinearProgram, random_programmes_agree_with_trying_every_vertex) {
    std::mt19937 engine(1);
    std::normal_distribution<double> normal(0, 1);
    int infeasible = 0;
    for (int k = 0; k < 600; ++k) {
        const std::size_t n = 1 + static_cast<std::size_t>(k) % 4;
        LinearProgram p;
        for (std::size_t j = 0; j < n; ++j) p.cost.push_back(normal(engine));
        add_box(p, 3);
        for (int i = 0; i < 6; ++i) {
            Values row;
            for (std::size_t j = 0; j < n; ++j) row.push_back(normal(engine));
            p.add(row, normal(engine) + 0.5);
        }
        const auto expected = best_vertex(p);
        const auto s = solve_linear_program(p);
        ASSERT_TRUE(s.ok());
        ASSERT_EQ(s.value().status, expected ? Status::optimal : Status::infeasible) << k;
        infeasible += expected ? 0 : 1;
        if (!expected) continue;
        EXPECT_NEAR(s.value().objective, *expected, 1e-8) << k; // conditions of random corners up to about 1e4
        EXPECT_TRUE(holds(p, s.value().point, 1e-8)) << k;
    }
    EXPECT_GT(infeasible, 50);
    EXPECT_LT(infeasible, 550);
}

TEST(LinearProgram, small_whole_numbers_with_many_ties_agree_with_trying_every_vertex) {
    std::mt19937 engine(2);
    std::uniform_int_distribution<int> whole(-2, 2);
    for (int k = 0; k < 600; ++k) {
        LinearProgram p;
        for (int j = 0; j < 3; ++j) p.cost.push_back(whole(engine));
        add_box(p, 1);
        for (int i = 0; i < 8; ++i) {
            const Values row{1.0 * whole(engine), 1.0 * whole(engine), 1.0 * whole(engine)};
            p.add(row, std::max(-1, whole(engine)));
        }
        const auto expected = best_vertex(p);
        const auto s = solve_linear_program(p);
        ASSERT_TRUE(s.ok());
        ASSERT_EQ(s.value().status, expected ? Status::optimal : Status::infeasible) << k;
        if (expected) {
            EXPECT_NEAR(s.value().objective, *expected, 1e-9) << k;
        }
    }
}

TEST(LinearProgram, open_and_contradictory_programmes_agree_with_trying_every_vertex_of_two_far_boxes) {
    // Corners of rows with whole numbers up to 2 lie well within 1000; where the farther box does better, there is no end.
    std::mt19937 engine(6);
    std::uniform_int_distribution<int> whole(-2, 2);
    int seen[3] = {0, 0, 0};
    for (int k = 0; k < 300; ++k) {
        LinearProgram p, near, far;
        for (int j = 0; j < 3; ++j) p.cost.push_back(whole(engine));
        for (int i = 0; i < 5; ++i) {
            const Values row{1.0 * whole(engine), 1.0 * whole(engine), 1.0 * whole(engine)};
            p.add(row, whole(engine));
        }
        near = far = p;
        add_box(near, 1000);
        add_box(far, 2000);
        const auto here = best_vertex(near), there = best_vertex(far);
        const Status expected = !here ? Status::infeasible : *there < *here - 1 ? Status::unbounded : Status::optimal;
        const auto s = solve_linear_program(p);
        ASSERT_TRUE(s.ok());
        ASSERT_EQ(s.value().status, expected) << k;
        ++seen[static_cast<int>(expected)];
        if (expected == Status::optimal) {
            EXPECT_NEAR(s.value().objective, *here, 1e-9) << k;
            EXPECT_TRUE(holds(p, s.value().point, 1e-9)) << k;
        }
    }
    for (const int times : seen) EXPECT_GT(times, 10);
}

TEST(LinearProgram, the_binding_rows_alone_force_the_value) {
    std::mt19937 engine(3);
    std::normal_distribution<double> normal(0, 1);
    for (int k = 0; k < 50; ++k) {
        LinearProgram p{{normal(engine), normal(engine), normal(engine)}, {}, {}, {}};
        add_box(p, 5);
        for (int i = 0; i < 40; ++i) p.add(Values{normal(engine), normal(engine), normal(engine)}, 1 + std::abs(normal(engine)));
        const auto s = solve_linear_program(p);
        ASSERT_TRUE(s.ok());
        ASSERT_EQ(s.value().status, Status::optimal);
        LinearProgram few{p.cost, {}, {}, {}};
        for (const std::size_t i : s.value().binding) few.add(std::span(p.rows).subspan(i * 3, 3), p.limits[i]);
        EXPECT_LE(few.limits.size(), 3u);
        const auto same = solve_linear_program(few);
        ASSERT_TRUE(same.ok());
        ASSERT_EQ(same.value().status, Status::optimal);
        EXPECT_NEAR(same.value().objective, s.value().objective, 1e-8);
    }
}

TEST(LinearProgram, least_worst_error_of_a_line_over_thousands_of_points) {
    // min t, |y - a - b x| <= t for y = x^2 on 0 .. 1: the Chebyshev line x - 1/8 with t = 1/8 (equioscillation at 0, 1/2, 1).
    LinearProgram p{{0, 0, 1}, {VariableSign::free, VariableSign::free, VariableSign::non_negative}, {}, {}};
    for (int i = 0; i <= 2000; ++i) {
        const double x = i / 2000.0;
        p.add(Values{-1, -x, -1}, -x * x);
        p.add(Values{1, x, -1}, x * x);
    }
    const auto s = solve_linear_program(p);
    ASSERT_TRUE(s.ok());
    ASSERT_EQ(s.value().status, Status::optimal);
    EXPECT_NEAR(s.value().objective, 0.125, 1e-9);
    EXPECT_NEAR(s.value().point[0], -0.125, 1e-9);
    EXPECT_NEAR(s.value().point[1], 1, 1e-9);
    EXPECT_EQ(s.value().binding.size(), 3u);
}

TEST(LinearProgram, variables_of_very_different_sizes_keep_their_digits) {
    // The same with x in milliseconds and y in Wh of a large unit.
    LinearProgram p{{0, 0, 1}, {}, {}, {}};
    for (int i = 0; i <= 100; ++i) {
        const double u = i / 100.0, x = 3.6e7 * u, y = 5000 * u * u;
        p.add(Values{-1, -x, -1}, -y);
        p.add(Values{1, x, -1}, y);
    }
    const auto s = solve_linear_program(p);
    ASSERT_TRUE(s.ok());
    ASSERT_EQ(s.value().status, Status::optimal);
    EXPECT_NEAR(s.value().objective, 625, 1e-6);
    EXPECT_NEAR(s.value().point[1], 5000 / 3.6e7, 1e-12);
}

TEST(LinearProgram, an_open_direction_is_unbounded_and_a_contradiction_infeasible) {
    LinearProgram open{{-1, 0}, {VariableSign::non_negative, VariableSign::non_negative}, {}, {}};
    open.add(Values{-1, 1}, 1);
    EXPECT_EQ(solve_linear_program(open).value().status, Status::unbounded);
    LinearProgram none{{-1, 0}, {}, {}, {}};
    none.add(Values{0, 1}, 1);
    none.add(Values{0, -1}, -2);
    EXPECT_EQ(solve_linear_program(none).value().status, Status::infeasible); // and x is free to run away
    LinearProgram zero{{0}, {}, {}, {}};
    zero.add(Values{0}, -1);
    EXPECT_EQ(solve_linear_program(zero).value().status, Status::infeasible);
    EXPECT_EQ(solve_linear_program({{1}, {}, {}, {}}).value().status, Status::unbounded);
}

TEST(LinearProgram, no_rows_and_no_cost_are_answered) {
    const auto idle = solve_linear_program({{0, 0}, {}, {}, {}});
    ASSERT_EQ(idle.value().status, Status::optimal);
    EXPECT_EQ(idle.value().point, (Values{0, 0}));
    const auto signs = solve_linear_program({{2}, {VariableSign::non_negative}, {}, {}});
    ASSERT_EQ(signs.value().status, Status::optimal);
    EXPECT_EQ(signs.value().objective, 0);
    EXPECT_TRUE(signs.value().binding.empty());
    LinearProgram feasible{{0, 0}, {}, {}, {}};
    feasible.add(Values{1, 1}, -3);
    const auto any = solve_linear_program(feasible);
    ASSERT_EQ(any.value().status, Status::optimal);
    EXPECT_LE(any.value().point[0] + any.value().point[1], -3 + 1e-9);
}

TEST(LinearProgram, equations_written_as_two_rows_are_met) {
    LinearProgram p{{1, 1}, {}, {}, {}};
    for (const double sign : {1.0, -1.0}) {
        p.add(Values{sign * 1, sign * 2}, sign * 4);
        p.add(Values{sign * 2, sign * 4}, sign * 8); // the same again: rank 1
        p.add(Values{sign * 1, sign * -1}, sign * 1);
    }
    const auto s = solve_linear_program(p);
    ASSERT_TRUE(s.ok());
    ASSERT_EQ(s.value().status, Status::optimal);
    EXPECT_NEAR(s.value().point[0], 2, 1e-10);
    EXPECT_NEAR(s.value().point[1], 1, 1e-10);
}

TEST(LinearProgram, the_programme_on_which_plain_simplex_circles_ends) {
    // Beale 1955 (Nav. Res. Logist. Q. 2, 269; from memory): minimum -1/20.
    LinearProgram p{{-0.75, 150, -0.02, 6}, std::vector<VariableSign>(4, VariableSign::non_negative), {}, {}};
    p.add(Values{0.25, -60, -0.04, 9}, 0);
    p.add(Values{0.5, -90, -0.02, 3}, 0);
    p.add(Values{0, 0, 1, 0}, 1);
    const auto s = solve_linear_program(p);
    ASSERT_TRUE(s.ok());
    ASSERT_EQ(s.value().status, Status::optimal);
    EXPECT_NEAR(s.value().objective, -0.05, 1e-12);
}

TEST(LinearProgram, many_copies_of_one_corner_do_not_hold_it_up) {
    LinearProgram p{{-1, -1, -1}, {}, {}, {}};
    std::mt19937 engine(4);
    std::uniform_real_distribution<double> positive(0.1, 1);
    for (int i = 0; i < 3000; ++i) {
        const double a = positive(engine), b = positive(engine), c = positive(engine);
        p.add(Values{a, b, c}, a + b + c); // every row passes through (1, 1, 1)
    }
    const auto s = solve_linear_program(p);
    ASSERT_TRUE(s.ok());
    ASSERT_EQ(s.value().status, Status::optimal);
    EXPECT_NEAR(s.value().objective, -3, 1e-9);
}

TEST(LinearProgram, bad_programmes_are_refused_in_words) {
    EXPECT_FALSE(solve_linear_program({{}, {}, {}, {}}).ok());
    EXPECT_FALSE(solve_linear_program({Values(51, 1), {}, {}, {}}).ok());
    EXPECT_FALSE(solve_linear_program({{1, 1}, {}, {1}, {1}}).ok());
    EXPECT_FALSE(solve_linear_program({{1, 1}, {VariableSign::free}, {}, {}}).ok());
    const auto nan = solve_linear_program({{1}, {}, {NAN}, {1}});
    ASSERT_FALSE(nan.ok());
    EXPECT_NE(nan.error().sentence().find("not a finite number"), std::string::npos);
    EXPECT_FALSE(solve_linear_program({{1}, {}, {1}, {std::numeric_limits<double>::infinity()}}).ok());
}
