// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <cstddef>
#include <optional>
#include <span>

namespace ullage {

/// Two straight lines that meet at a break, y = level + slope_before (x - break_x) left of it and slope_after right of it,
/// and the evidence for them against one straight line through the same points.
struct SegmentedFit {
    double break_x = 0, level_at_break = 0;
    double slope_before = 0, slope_after = 0;
    double u_slope_before = 0, u_slope_after = 0; ///< with the break as a free parameter, to first order
    /// Standard uncertainty of the break to first order; absent when the two slopes are equal.
    std::optional<double> u_break_x;
    /// 95 % profile interval of the break, cut off where the search ends: more honest than u_break_x for a weak bend.
    double break_lower = 0, break_upper = 0;

    double line_residual_sum = 0; ///< of the one straight line: chi-square with sigmas, SSE without
    double residual_sum = 0;      ///< of the two lines
    double delta = 0;             ///< line_residual_sum - residual_sum: with sigmas the fall of chi-square
    std::size_t points = 0;
    std::size_t degrees_of_freedom = 0; ///< points - 4
    std::size_t added_parameters = 2;   ///< a second slope and the place of the break
    /// Without sigmas (delta/2)/(residual_sum/degrees_of_freedom); absent with sigmas or when no residual is left.
    std::optional<double> f_ratio;
    /// Upper bound of the probability that a straight line looks this bent somewhere (Davies, see fit_segmented).
    double p_value = 1;
    bool sigmas_known = false;

    [[nodiscard]] double at(double x) const { return level_at_break + (x < break_x ? slope_before : slope_after) * (x - break_x); }
};

/// Least squares with one free break, exact over all places of it, in O(n log n). x in any order, repeats allowed; sigma empty
/// (scatter estimated from the residuals) or n values > 0.
///
/// Search: Hudson 1966 (J. Am. Stat. Assoc. 61, 1097): between two neighbouring x the fall of chi-square is N(b)^2/D(b), N
/// linear and D quadratic in the break b, so that its one maximum has a closed form; the best of all intervals wins. Each side
/// of the break keeps at least `least_points_each_side` (2 or more) points and two different x.
///
/// Evidence: a fixed break would add one parameter and give chi-square (t^2 without sigmas) of one degree of freedom; a break
/// that was searched for gives more by chance, and chi-square of two degrees does not describe it. Davies 1987 (Biometrika 74,
/// 33) bounds the probability by P(chi^2_1 > M) + V exp(-M/2)/sqrt(2 pi), M the greatest fall and V the total variation of its
/// root along the search; without sigmas t is first put on the normal scale, which makes the bound approximate.
///
/// Errors: as fit_line; too few points for both sides (and under 5 without sigmas).
[[nodiscard]] Result<SegmentedFit> fit_segmented(std::span<const double> x, std::span<const double> y, std::span<const double> sigma = {},
                                                 std::size_t least_points_each_side = 3);

} // namespace ullage
