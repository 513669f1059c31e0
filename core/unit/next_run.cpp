// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/next_run.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace ullage {
namespace {

using Vector = std::array<double, 3>;
using Matrix = std::array<Vector, 3>;

constexpr double lowest_candidate_w = 10, lowest_wanted_w = 20;
constexpr std::size_t candidates = 41, wanted = 13;
constexpr double different_enough = 2; ///< twice, not 1.5 times: the run time to come is only guessed
constexpr double worth_it = 1.05;
constexpr double longest_wanted_h = 24; ///< few will watch a unit for longer
constexpr double assumed_step_wh = 1;

std::vector<double> logarithmic_grid(double low, double high, std::size_t count) {
    std::vector<double> grid;
    for (std::size_t i = 0; i < count; ++i) grid.push_back(low * std::pow(high / low, static_cast<double>(i) / static_cast<double>(count - 1)));
    return grid;
}

double two_digits(double value) {
    const double unit = std::pow(10, std::floor(std::log10(value)) - 1);
    return std::round(value / unit) * unit;
}

double battery_rate_w(const UnitParameters& p, double load_w) { return load_w + std::max(0.0, p.p_star_w) + p.c_per_w * load_w * load_w; }

double quadratic_form(const Matrix& c, const Vector& v) {
    double sum = 0;
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j) sum += v[i] * c[i][j] * v[j];
    return sum;
}

/// Mean of Var(ln D) over the loads that matter.
double mean_relative_variance(const UnitParameters& p, const Matrix& c, const std::vector<double>& loads_w) {
    double sum = 0;
    for (const double load_w : loads_w) {
        const double rate_w = battery_rate_w(p, load_w);
        sum += quadratic_form(c, {1 / p.e_star_wh, -1 / rate_w, -load_w * load_w / rate_w});
    }
    return sum / static_cast<double>(loads_w.size());
}

/// Covariance after one more observation with design row `a` (Sherman and Morrison's update).
Matrix updated(const Matrix& c, const Vector& a, double sigma) {
    Vector ca{};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j) ca[i] += c[i][j] * a[j];
    const double denominator = sigma * sigma + quadratic_form(c, a);
    Matrix result = c;
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j) result[i][j] -= ca[i] * ca[j] / denominator;
    return result;
}

bool would_differ(const UnitFit& fit, double hours) {
    return std::ranges::any_of(fit.drains, [hours](const DrainSummary& drain) {
        return drain.used && (hours >= different_enough * drain.hours || drain.hours >= different_enough * hours);
    });
}

} // namespace

std::optional<NextRun> propose_next_run(const UnitFit& fit, const Unit& unit) {
    if (!fit.planning || fit.planning->e_star_wh <= 0) return std::nullopt;
    const UnitParameters& p = *fit.planning;
    const double rated_w = unit.rated_output_w.value_or(0);
    const double highest_w = rated_w > 0 ? rated_w : std::max(200.0, 2 * fit.highest_load_w);
    const std::vector<double> matter = logarithmic_grid(std::min(lowest_wanted_w, highest_w / 4), highest_w / 2, wanted);
    const double before = mean_relative_variance(p, p.covariance, matter);
    const double u_hours = fit.options.moment_doubt_min / 60 * std::sqrt(2.0 / 3.0);
    const double sigma_wh =
        std::hypot(fit.options.repeatability_percent / 100 * p.e_star_wh, assumed_step_wh / std::sqrt(6.0), std::max(0.0, p.p_star_w) * u_hours) *
        fit.widening;
    // Of runs up to a day, and of longer ones.
    std::optional<NextRun> within_a_day, longer;
    for (const double grid_w : logarithmic_grid(std::min(lowest_candidate_w, highest_w / 2), highest_w, candidates)) {
        const double load_w = std::min(two_digits(grid_w), highest_w);
        const double hours = p.e_star_wh / battery_rate_w(p, load_w);
        if (!fit.parameters && !would_differ(fit, hours)) continue;
        const double after = mean_relative_variance(p, updated(p.covariance, {1, -hours, -load_w * load_w * hours}, sigma_wh), matter);
        const double factor = std::sqrt(before / after);
        std::optional<NextRun>& best = hours <= longest_wanted_h ? within_a_day : longer;
        if (factor >= worth_it && (!best || factor > best->shrink_factor)) best = NextRun{load_w, hours, factor};
    }
    return within_a_day ? within_a_day : longer;
}

} // namespace ullage
