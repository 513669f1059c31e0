// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge_curves/gauge_curve.h"

#include <optional>

namespace ullage {

/// How far the gauge curve of one drain lies from that of an earlier one.
struct CurveShift {
    double size_pt = 0;            ///< later less earlier, where they differ most
    double half_width_pt = 0;      ///< 95 % interval of size_pt
    double depth_percent = 0;      ///< share delivered (of the later drain) of that place
    double resolution_pt = 0;      ///< 95 % half-width of one difference, with what an uneven gauge and the unknown P* may hide
    double chi_square = 0;         ///< of all differences, scaled to degrees_of_freedom
    double degrees_of_freedom = 0; ///< effective: differences share readings
    double p_value = 1;
    std::size_t common_depths = 0;
    double no_load_draw_w = 0; ///< under which the two agree best
};

/// Loads count as like when the mean loads differ by at most this factor …
inline constexpr double like_load_ratio = 1.25;
/// … and at no common depth the shares of time gone differ by more than this: the load came in the same order.
inline constexpr double like_time_share = 0.1;

/// Largest difference of the shares of run time gone at the same share delivered.
[[nodiscard]] double time_share_difference(const GaugeCurve& earlier, const GaugeCurve& later);

/// Compares two gauge curves at common depths: at the points of the one with fewer, the other by straight lines between its
/// points.
///
/// Differences d_i = s_later − s_earlier at equal depth; the meters' gains cancel in depth. |d_i| is lessened by what an uneven
/// gauge may do between two readings (CurveOverDepth::leeway_at). Covariance: reading of the gauge (step/√12, more for a noisy
/// one) by the shares of the lines, pairing and register step through the fall of 1 pt for 1 % of depth, start and end of each
/// register for all points together. The sum of (d_i/u_i)² is held against a scaled chi-square with the same mean and variance
/// (Satterthwaite 1946; Box 1954; from memory): scale sum(rho²)/n, degrees of freedom n²/sum(rho²), rho the correlations.
///
/// Between two readings further apart than 15 % of depth nothing is compared: a gauge may stick and catch up there unseen.
/// Scatter and leeway are those under the P* for which both curves are most even.
///
/// Depth is stored depth for a no-load draw P* between 0 and `most_draw_w`; of these the P* that lets the curves agree best
/// (greatest p) counts, so a load that came in another order convicts no gauge. `size_pt` is the mean of three neighbouring
/// differences (two at the ends) where that is largest: two roundings never make more than a step of it. Absent: fewer than
/// five common depths under one of these P*.
[[nodiscard]] std::optional<CurveShift> compare_curves(const GaugeCurve& earlier, const GaugeCurve& later, double most_draw_w,
                                                       double coverage = 0.95);

} // namespace ullage
