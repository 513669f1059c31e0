// SPDX-License-Identifier: GPL-3.0-or-later
// Rows are divided by sigma, columns by their length; the scaled problem A z = b is solved by A P = Q R (Golub and Van Loan,
// Matrix Computations, 5.5), then corrected once with residuals in long double (Bjorck 1967), which matters for polynomials.
#include "numerics/least_squares.h"

#include "numerics/inside/sample_check.h"

#include <Eigen/Core>
#include <Eigen/QR>
#include <Eigen/SVD>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

namespace ullage {
namespace {

constexpr Phrase squares_task = phrase("numerics", "least-squares fit");
/// Columns that agree to 13 digits are one column: what is left of a double cannot tell them apart.
constexpr double rank_threshold = 1e-13;

std::optional<Error> check_shape(std::span<const double> design, std::size_t p, std::span<const double> y) {
    const auto bad = [](const Message& what, const Message& remedy) { return Error{Failure::bad_input, what, say(squares_task), remedy}; };
    if (p == 0) return bad(say(phrase("numerics", "there are no parameters to find")), say(phrase("numerics", "give at least one column")));
    if (design.size() != y.size() * p)
        return bad(
            say_count(design.size(),
                      phrases("numerics", "a design of %n numbers does not have %1 rows of %2", "a design of %n number does not have %1 rows of %2"),
                      say_number(y.size()), say_number(p)),
            say(phrase("numerics", "give one row for each point")));
    for (std::size_t i = 0; i < design.size(); ++i)
        if (!std::isfinite(design[i]))
            return bad(
                say(phrase("numerics", "row %1, column %2 of the design is not a finite number"), say_number(i / p + 1), say_number(i % p + 1)),
                say(phrase("numerics", "correct or leave out that point")));
    return std::nullopt;
}

Eigen::VectorXd residuals_of(std::span<const double> design, std::span<const double> y, const Eigen::VectorXd& parameters) {
    const auto p = static_cast<std::size_t>(parameters.size());
    Eigen::VectorXd residuals(static_cast<Eigen::Index>(y.size()));
    for (std::size_t i = 0; i < y.size(); ++i) {
        long double r = y[i];
        for (std::size_t j = 0; j < p; ++j) r -= static_cast<long double>(design[i * p + j]) * parameters[static_cast<Eigen::Index>(j)];
        residuals[static_cast<Eigen::Index>(i)] = static_cast<double>(r);
    }
    return residuals;
}

} // namespace

Result<LeastSquaresFit> solve_least_squares(std::span<const double> design, std::size_t parameter_count, std::span<const double> y,
                                            std::span<const double> sigma) {
    if (auto error = check_shape(design, parameter_count, y)) return *error;
    if (auto error = check_points(squares_task, y, y, sigma, parameter_count + (sigma.empty() ? 1 : 0))) return *error;

    const auto n = static_cast<Eigen::Index>(y.size()), p = static_cast<Eigen::Index>(parameter_count);
    using RowMajor = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;
    Eigen::VectorXd weight = Eigen::VectorXd::Ones(n);
    if (!sigma.empty()) weight = Eigen::Map<const Eigen::VectorXd>(sigma.data(), n).cwiseInverse();
    Eigen::MatrixXd scaled = weight.asDiagonal() * Eigen::Map<const RowMajor>(design.data(), n, p);
    Eigen::VectorXd length(p);
    for (Eigen::Index j = 0; j < p; ++j) {
        length[j] = scaled.col(j).stableNorm();
        if (length[j] == 0)
            return Error{Failure::bad_input, say(phrase("numerics", "column %1 of the design is zero everywhere"), say_number(j + 1)),
                         say(squares_task), say(phrase("numerics", "leave out that parameter"))};
        scaled.col(j) /= length[j];
    }
    if (!length.allFinite() || !scaled.allFinite()) return out_of_range(squares_task);

    const Eigen::ColPivHouseholderQR<Eigen::MatrixXd> qr(scaled);
    const Eigen::MatrixXd r = qr.matrixQR().topRows(p).triangularView<Eigen::Upper>();
    if (!(r.diagonal().cwiseAbs().minCoeff() > rank_threshold * std::abs(r(0, 0))))
        return Error{Failure::bad_input, say(phrase("numerics", "the points cannot tell the parameters apart")), say(squares_task),
                     say(phrase("numerics", "vary the conditions more, or fit fewer parameters"))};

    Eigen::VectorXd parameters = Eigen::VectorXd::Zero(p), residuals = Eigen::Map<const Eigen::VectorXd>(y.data(), n);
    for (int pass = 0; pass < 2; ++pass) {
        parameters += qr.solve(weight.cwiseProduct(residuals)).cwiseQuotient(length);
        residuals = residuals_of(design, y, parameters);
    }

    LeastSquaresFit fit;
    fit.residual_sum = weight.cwiseProduct(residuals).squaredNorm();
    fit.degrees_of_freedom = y.size() - parameter_count;
    const double unit = sigma.empty() ? fit.residual_sum / static_cast<double>(fit.degrees_of_freedom) : 1;
    Eigen::MatrixXd root = r.triangularView<Eigen::Upper>().solve(Eigen::MatrixXd::Identity(p, p));
    root = length.cwiseInverse().asDiagonal() * (qr.colsPermutation() * root);
    const Eigen::MatrixXd covariance = unit * root * root.transpose();
    const auto singular = Eigen::JacobiSVD<Eigen::MatrixXd, Eigen::NoQRPreconditioner>(r).singularValues();
    fit.condition = singular[0] / singular[p - 1];
    if (!parameters.allFinite() || !covariance.allFinite() || !std::isfinite(fit.residual_sum)) return out_of_range(squares_task);
    fit.parameters.assign(parameters.begin(), parameters.end());
    fit.residuals.assign(residuals.begin(), residuals.end());
    fit.covariance.assign(covariance.data(), covariance.data() + covariance.size()); // symmetric: the order is no matter
    return fit;
}

} // namespace ullage
