// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace ullage {

/// Fall of chi-square that a break at b brings against the straight line, as a function of b: the search of fit_segmented.
/// Precondition: x sorted, at least two different values of it on each side of some gap; r residuals of the weighted line.
class BreakProfile {
public:
    /// A stretch of b on which the fall is monotone.
    struct Piece {
        double from = 0, to = 0;           ///< from <= to
        double fall_from = 0, fall_to = 0; ///< at its ends
        std::size_t left_points = 0;       ///< points before the gap between two x that the piece belongs to
    };

    /// `weight` = 1/sigma^2. Gaps whose sides hold fewer than `least_points` points or two different x are left out.
    BreakProfile(std::span<const double> x, std::span<const double> residual, std::span<const double> weight, std::size_t least_points);

    /// In rising order and touching; empty when no gap has enough points on both sides.
    [[nodiscard]] const std::vector<Piece>& pieces() const { return pieces_; }
    /// Fall of chi-square at a break in the gap after `left_points` points.
    [[nodiscard]] double fall(double b, std::size_t left_points) const;

private:
    /// Sums over the points right of a gap, x and b in units of scale_ from centre_.
    struct Sums {
        long double w = 0, wx = 0, wxx = 0, wr = 0, wxr = 0;
    };
    struct Ratio { // fall = (n0 - n1 b)^2 / (d0 + d1 b + d2 b^2)
        long double n0 = 0, n1 = 0, d0 = 0, d1 = 0, d2 = 0;
        [[nodiscard]] long double at(long double b) const;
    };
    [[nodiscard]] Ratio ratio(std::size_t left_points) const;
    void add_gap(double from, double to, std::size_t left_points);

    long double centre_ = 0, scale_ = 1, sum_w_ = 0, sum_wxx_ = 0;
    std::vector<Sums> right_; ///< right_[k]: over the points k, k + 1, ...
    std::vector<Piece> pieces_;
};

} // namespace ullage
