// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <cstddef>
#include <span>
#include <vector>

namespace ullage {

/// Solution of a linear least-squares problem with p parameters.
struct LeastSquaresFit {
    std::vector<double> parameters; ///< p values
    std::vector<double> covariance; ///< p x p, row-major; of known sigmas, or scaled by the residual variance
    std::vector<double> residuals;  ///< y - model, n values, in units of y
    double residual_sum = 0;        ///< chi-square with sigmas, SSE without
    std::size_t degrees_of_freedom = 0;
    /// Ratio of largest to smallest singular value of the column-scaled, weighted design: how well the columns are told apart.
    double condition = 0;

    [[nodiscard]] double cov(std::size_t i, std::size_t j) const { return covariance[i * parameters.size() + j]; }
};

/// Weighted linear least squares by Householder QR with column pivoting on scaled columns. `design` is n x p, row-major;
/// `sigma` empty (unweighted, residual variance estimated) or n values > 0. Errors: shapes, values that are not finite,
/// fewer than p rows (p + 1 unweighted: no residual variance otherwise), a zero column, a rank below p (columns that agree to
/// 13 digits). Accuracy: 12 digits on NIST Norris and Pontius. Source: Golub and Van Loan, Matrix Computations, 5.3 to 5.5.
[[nodiscard]] Result<LeastSquaresFit> solve_least_squares(std::span<const double> design, std::size_t parameter_count, std::span<const double> y,
                                                          std::span<const double> sigma = {});

} // namespace ullage
