// SPDX-License-Identifier: GPL-3.0-or-later
// Notation of York, Evensen, Martinez and Delgado 2004 (Am. J. Phys. 72, 367), r_i = 0:
// W = 1/(sy^2 + b^2 sx^2), Xbar and Ybar W-means, U = X - Xbar, V = Y - Ybar, beta = W (U sy^2 + b V sx^2),
// b = sum W beta V / sum W beta U until it stands still, a = Ybar - b Xbar; errors from the adjusted points x = Xbar + beta.
// Variances instead of York's weights 1/s^2, so that a point exact in one direction needs no infinity.
#include "numerics/inside/sample_check.h"
#include "numerics/line_fit.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace ullage {
namespace {

constexpr Phrase both_errors_task = phrase("numerics", "line fit with uncertainties in x and y");
constexpr int most_steps = 200;

struct Points {
    std::span<const double> x, y, sigma_x, sigma_y;
};

/// Weights and weighted means that belong to one slope.
struct State {
    std::vector<double> weight, beta;
    double sum_w = 0, mean_x = 0, mean_y = 0;
};

/// False when a point gets an infinite weight: exact in y on a level line.
bool weigh(const Points& p, double slope, State& s) {
    double sum_x = 0, sum_y = 0;
    s.sum_w = 0;
    for (std::size_t i = 0; i < p.x.size(); ++i) {
        const double variance = p.sigma_y[i] * p.sigma_y[i] + slope * slope * p.sigma_x[i] * p.sigma_x[i];
        const double w = 1 / variance;
        if (!(variance > 0) || !std::isfinite(w)) return false;
        s.weight[i] = w;
        s.sum_w += w;
        sum_x += w * p.x[i];
        sum_y += w * p.y[i];
    }
    s.mean_x = sum_x / s.sum_w;
    s.mean_y = sum_y / s.sum_w;
    for (std::size_t i = 0; i < p.x.size(); ++i)
        s.beta[i] = s.weight[i] * ((p.x[i] - s.mean_x) * p.sigma_y[i] * p.sigma_y[i] + slope * (p.y[i] - s.mean_y) * p.sigma_x[i] * p.sigma_x[i]);
    return true;
}

double next_slope(const Points& p, const State& s) {
    double above = 0, below = 0;
    for (std::size_t i = 0; i < p.x.size(); ++i) {
        above += s.weight[i] * s.beta[i] * (p.y[i] - s.mean_y);
        below += s.weight[i] * s.beta[i] * (p.x[i] - s.mean_x);
    }
    return above / below;
}

Error no_answer() {
    return {Failure::refused,
            say_count(most_steps, phrases("numerics", "the slope did not settle within %n steps", "the slope did not settle within %n step")),
            say(both_errors_task), say(phrase("numerics", "the points scatter too widely for their uncertainties to give one line; check both"))};
}

std::optional<Error> check_uncertainties(const Points& p) {
    if (p.sigma_x.size() != p.x.size() || p.sigma_y.size() != p.x.size())
        return Error{Failure::bad_input, say(phrase("numerics", "each point needs one uncertainty in x and one in y")), say(both_errors_task),
                     say(phrase("numerics", "give as many of each"))};
    for (std::size_t i = 0; i < p.x.size(); ++i) {
        const double sx = p.sigma_x[i], sy = p.sigma_y[i];
        if (!std::isfinite(sx) || !std::isfinite(sy) || sx < 0 || sy < 0 || sx + sy == 0)
            return Error{Failure::bad_input,
                         say(phrase("numerics", "the uncertainties of point %1 must be finite, not negative, and not zero in both x and y"),
                             say_number(i + 1)),
                         say(both_errors_task), say(phrase("numerics", "give a positive uncertainty or leave out that point"))};
    }
    return std::nullopt;
}

LineFit summarise(const Points& p, const State& s, double slope) {
    const std::size_t n = p.x.size();
    double sum_adjusted = 0;
    for (std::size_t i = 0; i < n; ++i) sum_adjusted += s.weight[i] * s.beta[i];
    const double adjusted_mean = sum_adjusted / s.sum_w; // of beta, relative to mean_x
    double spread = 0, residual_sum = 0, total = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const double d = s.beta[i] - adjusted_mean, v = p.y[i] - s.mean_y, r = v - slope * (p.x[i] - s.mean_x);
        spread += s.weight[i] * d * d;
        residual_sum += s.weight[i] * r * r;
        total += s.weight[i] * v * v;
    }
    const double x_bar = s.mean_x + adjusted_mean, variance_slope = 1 / spread;
    LineFit fit;
    fit.slope = slope;
    fit.intercept = s.mean_y - slope * s.mean_x;
    fit.u_slope = std::sqrt(variance_slope);
    fit.u_intercept = std::sqrt(1 / s.sum_w + x_bar * x_bar * variance_slope);
    fit.covariance = -x_bar * variance_slope;
    fit.residual_sum = residual_sum;
    fit.points = n;
    fit.degrees_of_freedom = n - 2;
    if (total > 0) fit.r_squared = 1 - residual_sum / total;
    fit.sigmas_known = true;
    return fit;
}

} // namespace

Result<LineFit> fit_line_errors_in_both(std::span<const double> x, std::span<const double> y, std::span<const double> sigma_x,
                                        std::span<const double> sigma_y) {
    const Points p{x, y, sigma_x, sigma_y};
    if (auto error = check_points(both_errors_task, x, y, {}, 2)) return *error;
    if (auto error = check_uncertainties(p)) return *error;
    if (auto error = check_spread(both_errors_task, x)) return *error;

    // York's start: the ordinary line; equal weights do for it, and two points are enough.
    const std::vector<double> even(x.size(), 1.0);
    const auto start = fit_line(x, y, even);
    if (!start) return start.error();

    const auto [x_least, x_most] = std::minmax_element(x.begin(), x.end());
    const auto [y_least, y_most] = std::minmax_element(y.begin(), y.end());
    // A slope of zero has no relative precision: below this the y of the points cannot tell two slopes apart.
    const double rounding = 1e-15 * (*y_most - *y_least) / (*x_most - *x_least);
    double slope = start.value().slope;
    State state{std::vector<double>(x.size()), std::vector<double>(x.size())};
    for (int step = 0; step < most_steps; ++step) {
        if (!weigh(p, slope, state))
            return Error{Failure::refused,
                         say(phrase("numerics", "a point without uncertainty in y lies on a level line and would outweigh all others")),
                         say(both_errors_task), say(phrase("numerics", "give that point an uncertainty in y"))};
        const double next = next_slope(p, state);
        if (!std::isfinite(next)) return no_answer();
        const bool settled = std::abs(next - slope) <= 1e-14 * std::abs(next) + rounding;
        slope = next;
        if (!settled) continue;
        if (!weigh(p, slope, state)) return no_answer();
        const LineFit fit = summarise(p, state, slope);
        if (!std::isfinite(fit.u_intercept) || !std::isfinite(fit.residual_sum)) return out_of_range(both_errors_task);
        return fit;
    }
    return no_answer();
}

} // namespace ullage
