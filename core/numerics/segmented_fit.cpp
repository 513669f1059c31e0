// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/segmented_fit.h"

#include "numerics/distributions.h"
#include "numerics/inside/break_profile.h"
#include "numerics/inside/sample_check.h"
#include "numerics/least_squares.h"
#include "numerics/line_fit.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace ullage {
namespace {

constexpr Phrase segmented_task = phrase("numerics", "fit of two lines");

struct Sorted {
    std::vector<double> x, y, sigma;
};

Sorted sort_points(std::span<const double> x, std::span<const double> y, std::span<const double> sigma) {
    std::vector<std::size_t> order(x.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t i, std::size_t j) { return x[i] < x[j]; });
    Sorted points;
    for (const std::size_t i : order) {
        points.x.push_back(x[i]);
        points.y.push_back(y[i]);
        if (!sigma.empty()) points.sigma.push_back(sigma[i]);
    }
    return points;
}

/// Fall of chi-square as a deviate of the standard normal: its root with sigmas, else t by Wallace 1959 (Ann. Math. Stat. 30,
/// 1121), good to a few parts in a thousand, which the variation V of a bound can bear.
double deviate(double fall, const SegmentedFit& fit) {
    if (fit.sigmas_known) return std::sqrt(fall);
    const double nu = static_cast<double>(fit.points) - 3;
    const double rest = std::max(fit.line_residual_sum - fall, 1e-30 * fit.line_residual_sum);
    return (8 * nu + 1) / (8 * nu + 3) * std::sqrt(nu * std::log1p(fall / rest));
}

double davies_bound(const BreakProfile& profile, double best_fall, const SegmentedFit& fit) {
    double variation = 0;
    for (const auto& piece : profile.pieces()) variation += std::abs(deviate(piece.fall_to, fit) - deviate(piece.fall_from, fit));
    const double top = deviate(best_fall, fit);
    double fixed = 0;
    if (fit.sigmas_known) {
        fixed = chi_square_tail(best_fall, 1);
    } else {
        const double nu = static_cast<double>(fit.points) - 3, rest = fit.line_residual_sum - best_fall;
        fixed = rest > 0 ? student_t_two_sided_tail(std::sqrt(best_fall * nu / rest), nu) : 0;
    }
    return std::min(1.0, fixed + variation * std::exp(-top * top / 2) / std::sqrt(2 * std::numbers::pi));
}

/// Where the fall reaches `level` between `below`, where it does not, and `above` (either order), by bisection.
double crossing(const BreakProfile& profile, double below, double above, std::size_t left_points, double level) {
    for (int step = 0; step < 100; ++step) {
        const double middle = std::midpoint(below, above);
        (profile.fall(middle, left_points) < level ? below : above) = middle;
    }
    return above;
}

void set_profile_interval(const BreakProfile& profile, double level, SegmentedFit& fit) {
    const auto& pieces = profile.pieces();
    const auto reaches = [&](const BreakProfile::Piece& p) { return std::max(p.fall_from, p.fall_to) >= level; };
    const auto first = std::find_if(pieces.begin(), pieces.end(), reaches);
    const auto last = std::find_if(pieces.rbegin(), pieces.rend(), reaches);
    if (first == pieces.end()) return;
    fit.break_lower = first->from;
    if (first->fall_from < level) fit.break_lower = crossing(profile, first->from, first->to, first->left_points, level);
    fit.break_upper = last->to;
    if (last->fall_to < level) fit.break_upper = crossing(profile, last->to, last->from, last->left_points, level);
}

/// Coefficients at the fixed break, then their uncertainties with the break free: its column is -bend for x right of it.
std::optional<Error> set_lines(const Sorted& points, std::size_t left_points, SegmentedFit& fit) {
    const std::size_t n = points.x.size();
    std::vector<double> fixed, freed;
    for (std::size_t i = 0; i < n; ++i) {
        const double d = points.x[i] - fit.break_x;
        const bool right = i >= left_points;
        fixed.insert(fixed.end(), {1, right ? 0 : d, right ? d : 0});
        freed.insert(freed.end(), {1, right ? 0 : d, right ? d : 0, right ? -1.0 : 0});
    }
    const auto lines = solve_least_squares(fixed, 3, points.y, points.sigma);
    if (!lines) return lines.error();
    const auto spread = solve_least_squares(freed, 4, points.y, points.sigma);
    if (!spread) return spread.error();
    fit.level_at_break = lines.value().parameters[0];
    fit.slope_before = lines.value().parameters[1];
    fit.slope_after = lines.value().parameters[2];
    fit.residual_sum = lines.value().residual_sum;

    // Covariances of the freed fit are scaled by its own residuals; ours is the scatter about the two joined lines.
    const double own = spread.value().residual_sum;
    const double unit = fit.sigmas_known || own == 0 ? 1 : fit.residual_sum / own;
    fit.u_slope_before = std::sqrt(unit * spread.value().cov(1, 1));
    fit.u_slope_after = std::sqrt(unit * spread.value().cov(2, 2));
    const double bend = fit.slope_after - fit.slope_before;
    if (bend != 0) fit.u_break_x = std::sqrt(unit * spread.value().cov(3, 3)) / std::abs(bend);
    return std::nullopt;
}

} // namespace

Result<SegmentedFit> fit_segmented(std::span<const double> x, std::span<const double> y, std::span<const double> sigma,
                                   std::size_t least_points_each_side) {
    const std::size_t each = std::max<std::size_t>(2, least_points_each_side);
    if (auto error = check_points(segmented_task, x, y, sigma, std::max<std::size_t>(2 * each, sigma.empty() ? 5 : 4))) return *error;
    const Sorted points = sort_points(x, y, sigma);
    const auto line = fit_line(points.x, points.y, points.sigma);
    if (!line) return line.error();

    SegmentedFit fit;
    fit.points = x.size();
    fit.degrees_of_freedom = x.size() - 4;
    fit.sigmas_known = !sigma.empty();
    fit.line_residual_sum = line.value().residual_sum;
    std::vector<double> residual(x.size()), weight(x.size(), 1.0);
    double rounding = 0; // residuals that the rounding of y alone may leave
    for (std::size_t i = 0; i < x.size(); ++i) {
        if (!sigma.empty()) weight[i] = 1 / (points.sigma[i] * points.sigma[i]);
        residual[i] = points.y[i] - line.value().at(points.x[i]);
        const double step = 4e-16 * (std::abs(points.y[i]) + std::abs(line.value().slope * points.x[i]));
        if (!(weight[i] > 0)) return out_of_range(segmented_task); // the square of so large a sigma has no reciprocal
        rounding += weight[i] * step * step;
    }
    if (!std::isfinite(rounding)) return out_of_range(segmented_task);

    const BreakProfile profile(points.x, residual, weight, each);
    if (profile.pieces().empty())
        return Error{Failure::bad_input,
                     say_count(each, phrases("numerics", "no break leaves %n points and two different x on both sides of it",
                                             "no break leaves %n point and two different x on both sides of it")),
                     say(segmented_task), say(phrase("numerics", "take more readings, spread over x"))};
    double best_fall = -1;
    std::size_t left_points = 0;
    for (const auto& piece : profile.pieces()) {
        for (const auto& [b, fall] : {std::pair{piece.from, piece.fall_from}, std::pair{piece.to, piece.fall_to}}) {
            if (fall <= best_fall) continue;
            best_fall = fall;
            fit.break_x = b;
            left_points = piece.left_points;
        }
    }
    fit.break_lower = profile.pieces().front().from;
    fit.break_upper = profile.pieces().back().to;
    if (auto error = set_lines(points, left_points, fit)) return *error;
    fit.delta = std::max(0.0, fit.line_residual_sum - fit.residual_sum);
    // A line that is straight to the last digit has nothing to explain; its rounding must not pass for a bend.
    if (fit.line_residual_sum <= rounding) return fit;

    const auto nu = static_cast<double>(fit.degrees_of_freedom);
    const bool exact = fit.residual_sum <= rounding;
    double margin = chi_square_quantile(0.95, 1);
    if (!fit.sigmas_known) {
        if (!exact && nu > 0) fit.f_ratio = fit.delta / 2 / (fit.residual_sum / nu);
        const double t = coverage_factor(0.95, nu);
        margin = t * t * fit.residual_sum / nu;
    }
    fit.p_value = davies_bound(profile, exact ? fit.line_residual_sum : best_fall, fit);
    set_profile_interval(profile, best_fall - margin, fit);
    fit.break_lower = std::min(fit.break_lower, fit.break_x);
    fit.break_upper = std::max(fit.break_upper, fit.break_x);
    return fit;
}

} // namespace ullage
