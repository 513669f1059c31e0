// SPDX-License-Identifier: GPL-3.0-or-later
// Dual of min c.x, A x <= b, x free: min b.y, A^T y = -c, y >= 0; a non-negative x_j adds the row -x_j <= 0. At its optimum the
// multipliers m satisfy b - A m >= 0 and x = m. The dual without solution: the programme is unbounded or infeasible; the smallest
// t with A x - t <= b, t >= 0, which always exists, tells which.
#include "numerics/linear_program.h"

#include "numerics/inside/dual_simplex.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <string>

namespace ullage {
namespace {

constexpr Phrase programme_task = phrase("numerics", "linear programme");
constexpr std::size_t most_variables = 50;
constexpr double feasible_within = 1e-9;

std::optional<Error> check(const LinearProgram& p) {
    const auto bad = [](const Message& what, const Message& remedy) { return Error{Failure::bad_input, what, say(programme_task), remedy}; };
    const std::size_t n = p.cost.size();
    if (n == 0 || n > most_variables)
        return bad(say_count(n, phrases("numerics", "%n variables are not 1 to %1", "%n variable is not 1 to %1"), say_number(most_variables)),
                   say(phrase("numerics", "state a smaller problem")));
    if (p.rows.size() != p.limits.size() * n || (!p.signs.empty() && p.signs.size() != n))
        return bad(say_count(n, phrases("numerics", "the rows, limits and signs do not fit %n variables",
                                        "the rows, limits and signs do not fit %n variable")),
                   say(phrase("numerics", "give one coefficient for each")));
    const auto finite = [](const std::vector<double>& v) { return std::all_of(v.begin(), v.end(), [](double x) { return std::isfinite(x); }); };
    if (!finite(p.cost) || !finite(p.rows) || !finite(p.limits))
        return bad(say(phrase("numerics", "a coefficient is not a finite number")), say(phrase("numerics", "correct or leave out that row")));
    return std::nullopt;
}

/// The largest power of two not above |v|: dividing by it rounds nothing. 1 for 0.
double power_below(double v) { return v == 0 ? 1 : std::exp2(std::floor(std::log2(std::abs(v)))); }

/// The programme with rows and columns brought to size about 1; x = unit * (scaled x).
struct Scaled {
    std::vector<double> unit;         ///< of each variable
    std::vector<double> rows, limits; ///< row-major
    std::vector<std::size_t> origin;  ///< index of the programme's row; SIZE_MAX for a sign
    bool contradiction = false;       ///< a row of zeros with a negative limit
};

Scaled scale(const LinearProgram& p) {
    const std::size_t n = p.cost.size();
    Scaled s;
    std::vector<double> row_size(p.limits.size(), 0);
    for (std::size_t i = 0; i < p.limits.size(); ++i)
        for (std::size_t j = 0; j < n; ++j) row_size[i] = std::max(row_size[i], std::abs(p.rows[i * n + j]));
    s.unit.assign(n, 0);
    for (std::size_t i = 0; i < p.limits.size(); ++i)
        for (std::size_t j = 0; j < n; ++j)
            if (row_size[i] > 0) s.unit[j] = std::max(s.unit[j], std::abs(p.rows[i * n + j] / row_size[i]));
    for (double& u : s.unit) u = 1 / power_below(u);
    for (std::size_t i = 0; i < p.limits.size(); ++i) {
        if (row_size[i] == 0) {
            s.contradiction = s.contradiction || p.limits[i] < 0;
            continue;
        }
        double size = 0;
        for (std::size_t j = 0; j < n; ++j) size = std::max(size, std::abs(p.rows[i * n + j] * s.unit[j]));
        size = power_below(size);
        for (std::size_t j = 0; j < n; ++j) s.rows.push_back(p.rows[i * n + j] * s.unit[j] / size);
        s.limits.push_back(p.limits[i] / size);
        s.origin.push_back(i);
    }
    for (std::size_t k = 0; k < p.signs.size(); ++k) {
        if (p.signs[k] == VariableSign::free) continue;
        for (std::size_t j = 0; j < n; ++j) s.rows.push_back(j == k ? -1 : 0);
        s.limits.push_back(0);
        s.origin.push_back(SIZE_MAX);
    }
    return s;
}

/// Limits as prices of the dual, brought to size 1 so that its tolerances mean what they say; returns the unit.
double price_by(const std::vector<double>& limits, std::vector<double>& prices) {
    double largest = 0;
    for (const double b : limits) largest = std::max(largest, std::abs(b));
    const double unit = power_below(largest);
    for (const double b : limits) prices.push_back(b / unit);
    return unit;
}

/// Whether some x misses no row by more than `feasible_within` (of the largest limit); absent when the search did not end.
std::optional<bool> feasible(const Scaled& s, std::size_t n) {
    StandardProgram dual{n + 1, {}, {}, {}};
    for (std::size_t i = 0; i < s.limits.size(); ++i) {
        dual.columns.insert(dual.columns.end(), s.rows.begin() + static_cast<std::ptrdiff_t>(i * n),
                            s.rows.begin() + static_cast<std::ptrdiff_t>((i + 1) * n));
        dual.columns.push_back(-1);
    }
    price_by(s.limits, dual.prices);
    dual.columns.insert(dual.columns.end(), n, 0.0); // t >= 0
    dual.columns.push_back(-1);
    dual.prices.push_back(0);
    dual.right.assign(n, 0.0);
    dual.right.push_back(-1); // minimise t
    const StandardSolution solution = solve_standard(dual);
    if (solution.status != StandardStatus::optimal) return std::nullopt;
    return -solution.price <= feasible_within;
}

LinearProgramSolution without_point(LinearProgramStatus status) {
    LinearProgramSolution solution;
    solution.status = status;
    return solution;
}

} // namespace

void LinearProgram::add(std::span<const double> row, double limit) {
    rows.insert(rows.end(), row.begin(), row.end());
    limits.push_back(limit);
}

Result<LinearProgramSolution> solve_linear_program(const LinearProgram& program) {
    if (auto error = check(program)) return *error;
    const std::size_t n = program.cost.size();
    const Scaled s = scale(program);
    if (s.contradiction) return without_point(LinearProgramStatus::infeasible);

    StandardProgram dual{n, s.rows, {}, {}};
    const double limit_unit = price_by(s.limits, dual.prices);
    double largest_cost = 0;
    for (std::size_t j = 0; j < n; ++j) largest_cost = std::max(largest_cost, std::abs(program.cost[j] * s.unit[j]));
    const double cost_unit = power_below(largest_cost);
    for (std::size_t j = 0; j < n; ++j) dual.right.push_back(-program.cost[j] * s.unit[j] / cost_unit);

    const StandardSolution solved = solve_standard(dual);
    const Error no_end{Failure::refused, say(phrase("numerics", "the search did not end within its steps")), say(programme_task),
                       say(phrase("numerics", "check the rows for coefficients of very different sizes"))};
    if (solved.status == StandardStatus::no_end) return no_end;
    if (solved.status == StandardStatus::unbounded) return without_point(LinearProgramStatus::infeasible);
    if (solved.status == StandardStatus::infeasible) {
        const auto any = feasible(s, n);
        if (!any) return no_end;
        return without_point(*any ? LinearProgramStatus::unbounded : LinearProgramStatus::infeasible);
    }
    LinearProgramSolution result;
    for (std::size_t j = 0; j < n; ++j) {
        result.point.push_back(solved.multipliers[j] * limit_unit * s.unit[j]);
        result.objective += program.cost[j] * result.point[j];
    }
    for (const std::size_t k : solved.positive)
        if (s.origin[k] != SIZE_MAX) result.binding.push_back(s.origin[k]);
    return result;
}

} // namespace ullage
