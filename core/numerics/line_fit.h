// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <cstddef>
#include <optional>
#include <span>

namespace ullage {

/// What a straight-line fit y = intercept + slope x found. Variances are those of known sigmas where sigmas were given
/// (never shrunk by a small chi-square), else scaled by the residual variance.
struct LineFit {
    double intercept = 0, slope = 0;
    double u_intercept = 0, u_slope = 0; ///< standard uncertainties
    double covariance = 0;               ///< cov(intercept, slope)
    double residual_sum = 0;             ///< sum of weighted squared residuals: chi-square with sigmas, SSE without
    std::size_t points = 0;
    std::size_t degrees_of_freedom = 0;
    /// Centred with an intercept, uncentred (1 - SSE/sum y^2) through the origin; absent where y does not vary (nothing to explain).
    /// With uncertainties in both: of y, with the effective weights of the fitted line.
    std::optional<double> r_squared;
    bool sigmas_known = false;

    /// sqrt(residual_sum / degrees_of_freedom); absent when there are no degrees of freedom, never so without sigmas.
    [[nodiscard]] std::optional<double> residual_sd() const;
    [[nodiscard]] double at(double x) const { return intercept + slope * x; }
    /// Standard uncertainty of the line at x: u_a^2 + x^2 u_b^2 + 2 x cov (JCGM 100:2008, H.3.4).
    [[nodiscard]] double u_at(double x) const;
    /// As u_at, with the scatter of one new value added (residual_sd without sigmas, `sigma_new` with).
    [[nodiscard]] double u_new_value(double x, double sigma_new = 0) const;
};

/// Ordinary (empty `sigma`) or weighted least squares line. Same lengths; at least 2 points (3 without sigmas) and two
/// distinct x, all finite, sigma > 0; otherwise an error that says which. Source: JCGM 100:2008 H.3; Numerical accuracy:
/// x is centred and scaled first, 13 digits on NIST Norris.
[[nodiscard]] Result<LineFit> fit_line(std::span<const double> x, std::span<const double> y, std::span<const double> sigma = {});

/// Line through the origin, y = slope x; at least 1 point (2 without sigmas) and one x other than 0, else errors as fit_line.
/// intercept, u_intercept and covariance are 0. Source: ordinary least squares; checked with NIST NoInt1 and NoInt2.
[[nodiscard]] Result<LineFit> fit_through_origin(std::span<const double> x, std::span<const double> y, std::span<const double> sigma = {});

/// Line with uncertainties in x and y, uncorrelated (York, Evensen, Martinez, Delgado 2004, Am. J. Phys. 72, 367; r_i = 0).
/// sigma_x, sigma_y > 0 (one of the two may be 0 at a point). At least 2 points. Uncertainties are York's, of the given sigmas,
/// not scaled by chi-square: multiply by residual_sd() where it exceeds 1 and the sigmas are in doubt.
/// Errors: as fit_line, no convergence in 200 steps, or a level line through points that are exact in y.
[[nodiscard]] Result<LineFit> fit_line_errors_in_both(std::span<const double> x, std::span<const double> y, std::span<const double> sigma_x,
                                                      std::span<const double> sigma_y);

/// Robust line: the median of pairwise slopes (Sen 1968) with its confidence interval, and median(y) - slope median(x).
struct RobustLine {
    double slope = 0, intercept_separate = 0;
    double intercept_joint = 0; ///< median(y - slope x)
    double slope_lower = 0, slope_upper = 0;
};

/// Theil-Sen line; `confidence` in (0, 1) for the slope interval by Kendall's statistic (normal approximation, ties
/// corrected, ranks rounded outwards; with very few points the interval is the whole range of slopes and covers less than
/// asked). O(n^2): refused over 3000 points. Errors: under 2 points, all x the same, a value that is not finite.
[[nodiscard]] Result<RobustLine> fit_robust_line(std::span<const double> x, std::span<const double> y, double confidence = 0.95);

} // namespace ullage
