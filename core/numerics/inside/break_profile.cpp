// SPDX-License-Identifier: GPL-3.0-or-later
// h = max(0, x - b) is the bend's column. Freed of its part along (1, x) it explains (sum w h r)^2 / (h, h) of the residuals
// r of the straight line, (h, h) = sum w h^2 - (sum w h)^2/sum w - (sum w x h)^2/sum w x^2 with x centred (Frisch and Waugh
// 1933). All sums run over the points right of b only, so one pass from the right gives them for every gap.
#include "numerics/inside/break_profile.h"

#include <array>
#include <cmath>
#include <utility>

namespace ullage {

long double BreakProfile::Ratio::at(long double b) const {
    const long double numerator = n0 - n1 * b, denominator = d0 + b * (d1 + b * d2);
    return denominator > 0 ? numerator * numerator / denominator : 0;
}

BreakProfile::BreakProfile(std::span<const double> x, std::span<const double> residual, std::span<const double> weight, std::size_t least_points) {
    const std::size_t n = x.size();
    long double sum_wx = 0;
    for (std::size_t i = 0; i < n; ++i) {
        sum_w_ += weight[i];
        sum_wx += static_cast<long double>(weight[i]) * x[i];
    }
    centre_ = sum_wx / sum_w_;
    scale_ = static_cast<long double>(x[n - 1]) - x[0];
    right_.resize(n + 1);
    for (std::size_t i = n; i-- > 0;) {
        const long double w = weight[i], u = (x[i] - centre_) / scale_, wr = w * residual[i];
        const Sums& r = right_[i + 1];
        right_[i] = {r.w + w, r.wx + w * u, r.wxx + w * u * u, r.wr + wr, r.wxr + wr * u};
    }
    sum_wxx_ = right_[0].wxx;
    for (std::size_t k = least_points; k + least_points <= n; ++k)
        if (x[k - 1] < x[k] && x[0] < x[k - 1] && x[k] < x[n - 1]) add_gap(x[k - 1], x[k], k);
}

BreakProfile::Ratio BreakProfile::ratio(std::size_t left_points) const {
    const Sums& s = right_[left_points];
    return {s.wxr, s.wr, s.wxx - s.wx * s.wx / sum_w_ - s.wxx * s.wxx / sum_wxx_, -2 * s.wx + 2 * s.wx * s.w / sum_w_ + 2 * s.wxx * s.wx / sum_wxx_,
            s.w - s.w * s.w / sum_w_ - s.wx * s.wx / sum_wxx_};
}

double BreakProfile::fall(double b, std::size_t left_points) const { return static_cast<double>(ratio(left_points).at((b - centre_) / scale_)); }

void BreakProfile::add_gap(double from, double to, std::size_t left_points) {
    const Ratio r = ratio(left_points);
    // The fall can turn at two places in a gap: at its zero and where its derivative vanishes otherwise.
    const std::array<long double, 2> turns{r.n0 / r.n1, -(2 * r.n1 * r.d0 + r.n0 * r.d1) / (r.n1 * r.d1 + 2 * r.n0 * r.d2)};
    std::array<double, 4> ends{from, to, to, to};
    std::size_t count = 1;
    for (const long double turn : turns) {
        const auto b = static_cast<double>(turn * scale_ + centre_);
        if (b > from && b < to) ends[count++] = b; // false for the NaN of a gap without residuals
    }
    if (count == 3 && ends[2] < ends[1]) std::swap(ends[1], ends[2]);
    ends[count++] = to;
    for (std::size_t i = 1; i < count; ++i)
        pieces_.push_back({ends[i - 1], ends[i], fall(ends[i - 1], left_points), fall(ends[i], left_points), left_points});
}

} // namespace ullage
