// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <cstddef>
#include <span>
#include <vector>

namespace ullage {

enum class VariableSign { free, non_negative };

/// Minimise cost . x subject to row . x <= limit for every row, and x >= 0 for the non-negative variables.
struct LinearProgram {
    std::vector<double> cost;        ///< one for each variable
    std::vector<VariableSign> signs; ///< one for each variable, or empty: all free
    std::vector<double> rows;        ///< row-major, limits.size() x cost.size()
    std::vector<double> limits;

    /// Adds row . x <= limit.
    void add(std::span<const double> row, double limit);
};

enum class LinearProgramStatus { optimal, infeasible, unbounded };

struct LinearProgramSolution {
    LinearProgramStatus status = LinearProgramStatus::optimal;
    std::vector<double> point; ///< a best x; empty unless optimal
    double objective = 0;      ///< cost . point; meaningless unless optimal
    /// Rows (rising indices) that together force this value: with a positive multiplier, at most one for each variable; those
    /// alone, with the signs, have the same optimum. Empty unless optimal.
    std::vector<std::size_t> binding;
};

/// Solves a small dense linear programme: a handful of variables (at most 50), thousands of rows; time about
/// variables x rows for each of few steps.
///
/// Method: simplex on the dual programme (as many equations as variables; Chvatal 1983, Linear Programming, ch. 5, 7 and 8),
/// each basis solved afresh from the data, so that rounding does not gather; steepest prices, and Bland's rule (1977, Math. Oper.
/// Res. 2, 103) while steps stand still, so that degenerate programmes end. A point counts as feasible within 1e-9 of a row's
/// limit, rows scaled to a largest coefficient of 1 and variables to columns of that size; "infeasible" means by more than that.
///
/// Errors: no variables or over 50, shapes that do not fit, values that are not finite, no end within the step limit.
[[nodiscard]] Result<LinearProgramSolution> solve_linear_program(const LinearProgram& program);

} // namespace ullage
