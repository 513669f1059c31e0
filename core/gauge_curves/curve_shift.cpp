// SPDX-License-Identifier: GPL-3.0-or-later
// Notation: the base curve gives the depths, the other is read between its points.
#include "gauge_curves/curve_shift.h"

#include "numerics/distributions.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace ullage {
namespace {

constexpr std::size_t draws_tried = 21;
constexpr std::size_t least_common = 5;
constexpr double start_percent = 0.5;     ///< at the start both gauges show full, which compares nothing
constexpr double widest_gap_percent = 15; ///< of depth: between two readings further apart a gauge may stick and catch up unseen

/// One gauge curve over the depth of a candidate draw, and over that of the draw under which both gauges are most even, by
/// which its scatter and leeway are judged: a wrong draw bends every curve.
struct Seen {
    const GaugeCurve& curve;
    const CurveOverDepth& over;
    const CurveOverDepth& even;
};

/// The differences at common depths, and what they share.
struct Differences {
    std::vector<double> d_pt, leeway_pt, depth_percent;
    std::vector<std::size_t> base_point;
    std::vector<CurveOverDepth::Place> place;
    [[nodiscard]] std::size_t size() const { return d_pt.size(); }
};

Differences differences_of(const Seen& base, const Seen& other, double sign) {
    Differences found;
    for (std::size_t i = 0; i < base.curve.points.size(); ++i) {
        const double depth = base.over.depths()[i];
        if (depth < start_percent || depth < other.over.depths().front() || depth > other.over.depths().back() + 1e-9) continue;
        const CurveOverDepth::Place place = other.over.place(depth);
        const double gap_percent = other.over.depths()[place.point + 1] - other.over.depths()[place.point];
        if (place.share > 0 && place.share < 1 && gap_percent > widest_gap_percent) continue;
        const double d_pt = sign * (other.over.gauge_at(place) - base.curve.points[i].gauge_percent);
        const double leeway_pt = other.even.leeway_at(place);
        found.d_pt.push_back(std::copysign(std::max(0.0, std::abs(d_pt) - leeway_pt), d_pt));
        found.leeway_pt.push_back(leeway_pt);
        found.depth_percent.push_back(depth);
        found.base_point.push_back(i);
        found.place.push_back(place);
    }
    return found;
}

/// Standard uncertainty of a point's own depth, points of gauge.
double u_depth_pt(const GaugeCurve& curve, std::size_t point) { return 100 * curve.points[point].u_wh / curve.total_wh; }

/// Variance that two differences share because they are read between the same points of `curve`.
double shared_variance(const GaugeCurve& curve, double u_reading_pt, const CurveOverDepth::Place& a, const CurveOverDepth::Place& b) {
    double sum = 0;
    for (const auto& [point_a, weight_a] : {std::pair{a.point, 1 - a.share}, {a.point + 1, a.share}})
        for (const auto& [point_b, weight_b] : {std::pair{b.point, 1 - b.share}, {b.point + 1, b.share}}) {
            if (point_a != point_b) continue;
            const double u_depth = u_depth_pt(curve, point_a);
            sum += weight_a * weight_b * (u_reading_pt * u_reading_pt + u_depth * u_depth);
        }
    return sum;
}

/// What the start and the end of the register do to two depths at once.
double register_variance(const GaugeCurve& curve, double depth_a, double depth_b) {
    const double u_pt = 100 * curve.u_register_wh / curve.total_wh;
    const double a = depth_a / 100, b = depth_b / 100;
    return u_pt * u_pt * (a * b + (1 - a) * (1 - b));
}

double draw_of(std::size_t k, double most_draw_w) { return most_draw_w * static_cast<double>(k) / (draws_tried - 1); }

struct Tested {
    Differences differences;
    std::vector<double> covariance; ///< n x n
    double chi_square = 0, degrees_of_freedom = 0, p_value = 1;
    [[nodiscard]] double cov(std::size_t i, std::size_t j) const { return covariance[i * differences.size() + j]; }
};

Tested test_at(const Seen& earlier, const Seen& later) {
    const bool later_is_base = later.curve.points.size() < earlier.curve.points.size();
    const Seen& base = later_is_base ? later : earlier;
    const Seen& other = later_is_base ? earlier : later;
    Tested tested;
    tested.differences = differences_of(base, other, later_is_base ? -1 : 1);
    const Differences& d = tested.differences;
    const std::size_t n = d.size();
    if (n < least_common) return tested;
    tested.covariance.resize(n * n);
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < n; ++j) {
            double& cov = tested.covariance[i * n + j];
            cov = shared_variance(other.curve, other.even.u_reading_pt(), d.place[i], d.place[j]);
            for (const Seen* seen : {&base, &other}) cov += register_variance(seen->curve, d.depth_percent[i], d.depth_percent[j]);
            if (i == j) cov += std::pow(base.even.u_reading_pt(), 2) + std::pow(u_depth_pt(base.curve, d.base_point[i]), 2);
        }
    double sum = 0, squared_correlations = 0;
    for (std::size_t i = 0; i < n; ++i) {
        sum += d.d_pt[i] * d.d_pt[i] / tested.cov(i, i);
        for (std::size_t j = 0; j < n; ++j) squared_correlations += tested.cov(i, j) * tested.cov(i, j) / (tested.cov(i, i) * tested.cov(j, j));
    }
    const auto count = static_cast<double>(n);
    tested.degrees_of_freedom = count * count / squared_correlations;
    tested.chi_square = sum * count / squared_correlations;
    tested.p_value = chi_square_tail(tested.chi_square, tested.degrees_of_freedom);
    return tested;
}

/// Where the mean of neighbouring differences is largest.
void find_size(const Tested& tested, const GaugeCurve& later, const GaugeCurve& earlier, double coverage, CurveShift& shift) {
    const Differences& d = tested.differences;
    const std::size_t n = d.size();
    std::vector<double> resolved_pt;
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t first = i == 0 ? 0 : i - 1, last = std::min(i + 1, n - 1);
        double sum = 0, variance = 0;
        for (std::size_t a = first; a <= last; ++a) {
            sum += d.d_pt[a];
            for (std::size_t b = first; b <= last; ++b) variance += tested.cov(a, b);
        }
        const auto count = static_cast<double>(last - first + 1);
        resolved_pt.push_back(d.leeway_pt[i] + normal_quantile((1 + coverage) / 2) * std::sqrt(tested.cov(i, i)));
        if (i > 0 && std::abs(sum / count) <= std::abs(shift.size_pt)) continue;
        shift.size_pt = sum / count;
        shift.half_width_pt = normal_quantile((1 + coverage) / 2) * std::sqrt(variance) / count;
        // Only the later drain's own share delivered is a plain number for a reader.
        const CurveOverDepth stored(later, shift.no_load_draw_w), delivered(later, 0);
        const CurveOverDepth::Place place = stored.place(d.depth_percent[i]);
        shift.depth_percent = (1 - place.share) * delivered.depths()[place.point] + place.share * delivered.depths()[place.point + 1];
    }
    const auto middle = resolved_pt.begin() + static_cast<std::ptrdiff_t>(n / 2);
    std::ranges::nth_element(resolved_pt, middle);
    shift.resolution_pt = std::max({earlier.step_pt, later.step_pt, *middle});
}

/// What the choice of the draw may hide of a move: the root mean square by which the extreme draws change the differences.
double absorbed_pt(const std::vector<double>& a, const std::vector<double>& b) {
    const std::size_t n = std::min(a.size(), b.size());
    double sum = 0;
    for (std::size_t i = 0; i < n; ++i) sum += (a[i] - b[i]) * (a[i] - b[i]);
    return std::sqrt(sum / static_cast<double>(n));
}

} // namespace

double time_share_difference(const GaugeCurve& earlier, const GaugeCurve& later) {
    const CurveOverDepth over(earlier, 0);
    const std::vector<double> depths = later.depths(0);
    double most = 0;
    for (std::size_t i = 0; i < depths.size(); ++i) {
        const CurveOverDepth::Place place = over.place(depths[i]);
        const double hours = (1 - place.share) * earlier.points[place.point].on_hours + place.share * earlier.points[place.point + 1].on_hours;
        most = std::max(most, std::abs(hours / earlier.total_h - later.points[i].on_hours / later.total_h));
    }
    return most;
}

std::optional<CurveShift> compare_curves(const GaugeCurve& earlier, const GaugeCurve& later, double most_draw_w, double coverage) {
    std::vector<CurveOverDepth> earlier_over, later_over;
    std::size_t even = 0;
    const auto unevenness = [&](std::size_t k) { return earlier_over[k].unevenness() + later_over[k].unevenness(); };
    for (std::size_t k = 0; k < draws_tried; ++k) {
        earlier_over.emplace_back(earlier, draw_of(k, most_draw_w));
        later_over.emplace_back(later, draw_of(k, most_draw_w));
        if (unevenness(k) < unevenness(even)) even = k;
    }
    std::optional<Tested> best;
    CurveShift shift;
    std::vector<std::vector<double>> differences; // for each draw
    for (std::size_t k = 0; k < draws_tried; ++k) {
        Tested tested = test_at({earlier, earlier_over[k], earlier_over[even]}, {later, later_over[k], later_over[even]});
        // The true draw may be the one that leaves too few: then the others would have to answer for it.
        if (tested.differences.size() < least_common) return std::nullopt;
        differences.push_back(tested.differences.d_pt);
        if (best && tested.p_value < best->p_value) continue;
        if (best && tested.p_value == best->p_value && tested.chi_square >= best->chi_square) continue;
        best = std::move(tested);
        shift.no_load_draw_w = draw_of(k, most_draw_w);
    }
    shift.chi_square = best->chi_square;
    shift.degrees_of_freedom = best->degrees_of_freedom;
    shift.p_value = best->p_value;
    shift.common_depths = best->differences.size();
    find_size(*best, later, earlier, coverage, shift);
    shift.resolution_pt += absorbed_pt(differences.front(), differences.back());
    return shift;
}

} // namespace ullage
