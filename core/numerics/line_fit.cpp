// SPDX-License-Identifier: GPL-3.0-or-later
// Notation: w = 1/sigma^2 (1 without sigmas), X and Y weighted means, dx = x - X, dy = y - Y,
// Sxx = sum w dx^2, Sxy = sum w dx dy; slope = Sxy/Sxx, intercept = Y - slope X (JCGM 100:2008, H.3.2).
// Sums are kept in long double: the intercept is a small difference of large numbers (NIST Norris loses 3 digits there).
#include "numerics/line_fit.h"

#include "numerics/inside/sample_check.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

using Sum = long double;

Sum weight_of(std::span<const double> sigma, std::size_t i) { return sigma.empty() ? Sum{1} : 1 / (Sum{sigma[i]} * Sum{sigma[i]}); }

bool all_finite(const LineFit& fit) {
    return std::isfinite(fit.intercept) && std::isfinite(fit.slope) && std::isfinite(fit.u_intercept) && std::isfinite(fit.u_slope) &&
           std::isfinite(fit.covariance) && std::isfinite(fit.residual_sum);
}

/// Known sigmas give the variances themselves; otherwise the scatter of the residuals has to supply the unit.
Sum variance_unit(const LineFit& fit, Sum residual_sum) {
    return fit.sigmas_known ? Sum{1} : residual_sum / static_cast<Sum>(fit.degrees_of_freedom);
}

} // namespace

std::optional<double> LineFit::residual_sd() const {
    if (degrees_of_freedom == 0) return std::nullopt;
    return std::sqrt(residual_sum / static_cast<double>(degrees_of_freedom));
}

double LineFit::u_at(double x) const {
    const double variance = u_intercept * u_intercept + x * x * u_slope * u_slope + 2 * x * covariance;
    return std::sqrt(std::max(0.0, variance)); // rounding may bring an exact fit below zero
}

double LineFit::u_new_value(double x, double sigma_new) const { return std::hypot(u_at(x), sigmas_known ? sigma_new : residual_sd().value()); }

Result<LineFit> fit_line(std::span<const double> x, std::span<const double> y, std::span<const double> sigma) {
    constexpr Phrase task = phrase("numerics", "line fit");
    if (auto error = check_points(task, x, y, sigma, sigma.empty() ? 3 : 2)) return *error;
    if (auto error = check_spread(task, x)) return *error;

    const std::size_t n = x.size();
    Sum sum_w = 0, sum_x = 0, sum_y = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const Sum w = weight_of(sigma, i);
        sum_w += w;
        sum_x += w * x[i];
        sum_y += w * y[i];
    }
    const Sum mean_x = sum_x / sum_w, mean_y = sum_y / sum_w;

    // The small sums of dx and dy correct what rounding left of the means.
    Sum sxx = 0, sxy = 0, syy = 0, rest_x = 0, rest_y = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const Sum w = weight_of(sigma, i), dx = x[i] - mean_x, dy = y[i] - mean_y;
        sxx += w * dx * dx;
        sxy += w * dx * dy;
        syy += w * dy * dy;
        rest_x += w * dx;
        rest_y += w * dy;
    }
    sxx -= rest_x * rest_x / sum_w;
    sxy -= rest_x * rest_y / sum_w;
    syy -= rest_y * rest_y / sum_w;
    if (!(sxx > 0)) return out_of_range(task);
    const Sum slope = sxy / sxx, intercept = mean_y - slope * mean_x;

    // Residuals are summed themselves: syy - sxy^2/sxx would lose every digit of a good fit.
    Sum residual_sum = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const Sum r = (y[i] - mean_y) - slope * (x[i] - mean_x);
        residual_sum += weight_of(sigma, i) * r * r;
    }

    LineFit fit;
    fit.points = n;
    fit.degrees_of_freedom = n - 2;
    fit.sigmas_known = !sigma.empty();
    const Sum unit = variance_unit(fit, residual_sum);
    fit.intercept = static_cast<double>(intercept);
    fit.slope = static_cast<double>(slope);
    fit.u_slope = static_cast<double>(std::sqrt(unit / sxx));
    fit.u_intercept = static_cast<double>(std::sqrt(unit * (1 / sum_w + mean_x * mean_x / sxx)));
    fit.covariance = static_cast<double>(-unit * mean_x / sxx);
    fit.residual_sum = static_cast<double>(residual_sum);
    if (syy > 0) fit.r_squared = static_cast<double>(1 - residual_sum / syy);
    if (!all_finite(fit)) return out_of_range(task);
    return fit;
}

Result<LineFit> fit_through_origin(std::span<const double> x, std::span<const double> y, std::span<const double> sigma) {
    constexpr Phrase task = phrase("numerics", "line fit through the origin");
    if (auto error = check_points(task, x, y, sigma, sigma.empty() ? 2 : 1)) return *error;

    const std::size_t n = x.size();
    Sum sxx = 0, sxy = 0, syy = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const Sum w = weight_of(sigma, i);
        sxx += w * x[i] * x[i];
        sxy += w * x[i] * y[i];
        syy += w * y[i] * y[i];
    }
    if (!(sxx > 0))
        return Error{Failure::bad_input, say(phrase("numerics", "all x are zero, so that no slope can be found")), say(task),
                     say(phrase("numerics", "take readings at another x"))};
    const Sum slope = sxy / sxx;
    Sum residual_sum = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const Sum r = y[i] - slope * x[i];
        residual_sum += weight_of(sigma, i) * r * r;
    }

    LineFit fit;
    fit.points = n;
    fit.degrees_of_freedom = n - 1;
    fit.sigmas_known = !sigma.empty();
    fit.slope = static_cast<double>(slope);
    fit.u_slope = static_cast<double>(std::sqrt(variance_unit(fit, residual_sum) / sxx));
    fit.residual_sum = static_cast<double>(residual_sum);
    if (syy > 0) fit.r_squared = static_cast<double>(1 - residual_sum / syy);
    if (!all_finite(fit)) return out_of_range(task);
    return fit;
}

} // namespace ullage
