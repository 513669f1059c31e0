// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace ullage {

/// Columns, prices and right side of: minimise price . y subject to sum y_j column_j = right, y >= 0.
struct StandardProgram {
    std::size_t equations = 0;
    std::vector<double> columns; ///< column after column, each `equations` long
    std::vector<double> prices;  ///< one for each column
    std::vector<double> right;   ///< one for each equation
};

enum class StandardStatus { optimal, infeasible, unbounded, no_end };

struct StandardSolution {
    StandardStatus status = StandardStatus::optimal;
    std::vector<std::size_t> positive; ///< columns with y > 0
    std::vector<double> multipliers;   ///< one for each equation: price_j - multipliers . column_j >= 0 at the optimum
    double price = 0;
};

/// Two-phase revised simplex with artificial columns, for entries of size about 1. See solve_linear_program for the method.
[[nodiscard]] StandardSolution solve_standard(const StandardProgram& program);

} // namespace ullage
