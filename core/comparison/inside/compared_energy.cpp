// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/inside/compared_energy.h"

#include "numerics/distributions.h"
#include "numerics/monte_carlo.h"
#include "unit/between_runs_predict.h"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace ullage {
namespace {

/// D = P·T is linear in 1/T to first order: dD = −(D·T)·d(1/T).
ComparedEnergy moved(const UnitFit& fit, const CommonLoad& load, double energy_wh) {
    const UnitParameters& p = *fit.parameters;
    const std::array<double, 3> slope = rate_gradient(p, load);
    const double run_time_h = energy_wh / load.mean_w();
    const auto along = [&](const std::array<double, 3>& shift) {
        double sum = 0;
        for (std::size_t i = 0; i < 3; ++i) sum += slope[i] * shift[i];
        return -energy_wh * run_time_h * sum;
    };
    ComparedEnergy result;
    result.energy_wh = energy_wh;
    double variance = 0;
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j) variance += slope[i] * p.covariance[i][j] * slope[j];
    result.independent_wh = energy_wh * run_time_h * std::sqrt(std::max(0.0, variance));
    // The covariance is widened for Student's t already.
    for (const UnitParameters::Gain& gain : p.gains) result.gain_half_width_wh[gain.meter_key] += along(gain.half_width);
    return result;
}

ComparedEnergy from_repeats(const RepeatMean& mean, const MeasureOptions& options) {
    ComparedEnergy result;
    result.energy_wh = mean.mean_wh;
    result.independent_wh = mean.independent_wh;
    result.degrees_of_freedom = mean.degrees_of_freedom;
    result.pooled = !mean.by_own_scatter && options.repeatability_source == RepeatabilitySource::pooled;
    for (const auto& [meter, gain] : mean.gains) result.gain_half_width_wh[meter] = gain.half_width_wh;
    result.load_w = mean.mean_load_w;
    result.load_part_wh = mean.load_part_wh;
    return result;
}

/// The normal part that makes an interval of this half-width together with a rectangle: half_width_of_sum turned round.
double normal_part(double half_width, double rectangular, double coverage) {
    if (half_width_of_sum(rectangular, 0, coverage) >= half_width) return 0;
    if (rectangular == 0) return half_width / coverage_factor(coverage, INFINITY);
    std::uintmax_t steps = 100;
    const auto too_wide = [&](double normal_sd) { return coverage - coverage_of_sum(rectangular, normal_sd, half_width); };
    const auto [low, high] = boost::math::tools::toms748_solve(too_wide, 0.0, half_width, too_wide(0), too_wide(half_width),
                                                               boost::math::tools::eps_tolerance<double>(45), steps);
    return (low + high) / 2;
}

const DrainSummary* drain_of(const UnitFit& fit, const RunId& run_uuid) {
    const auto found = std::ranges::find(fit.drains, run_uuid, &DrainSummary::run_uuid);
    return found == fit.drains.end() ? nullptr : &*found;
}

} // namespace

std::optional<ComparedEnergy> compared_energy_of(const Comparison& comparison, const FairComparison& fair, std::size_t row, Message& why) {
    const ComparisonRow& tested = comparison.rows[row];
    const FairRow& at = fair.rows[row];
    const UnitFit& fit = comparison.fits[tested.fit];
    const Quantity& energy = at.deliverable_wh;
    if (!energy.value) {
        why = say(phrase("comparison", "%1: %2"), tested.unit.name, energy.reason);
        return std::nullopt;
    }
    if (energy.kind != Kind::measured && energy.kind != Kind::projected) {
        why = say(phrase("comparison", "%1: its energy is only \"%2\""), tested.unit.name, say_kind(energy.kind));
        return std::nullopt;
    }
    if (!energy.half_width()) {
        why = energy.reason.empty() ? say(phrase("comparison", "%1: its energy has no interval"), tested.unit.name)
                                    : say(phrase("comparison", "%1: %2"), tested.unit.name, energy.reason);
        return std::nullopt;
    }
    if (at.standing == Standing::moved) return moved(fit, *fair.load, *energy.value);
    if (at.mean) return from_repeats(*at.mean, fit.options);

    ComparedEnergy result;
    result.energy_wh = *energy.value;
    const DrainSummary* drain = drain_of(fit, at.run_uuid);
    double rectangular = 0;
    if (drain != nullptr && drain->gain_limit_percent) {
        rectangular = *drain->gain_limit_percent / 100 * *energy.value;
        result.gain_half_width_wh[drain->meter_key] = rectangular;
        result.load_w = drain->mean_load_w;
        result.load_part_wh = drain->load_part_wh;
    }
    // A single drain speaks for the unit only as far as drains repeat.
    const double repeatability_wh = fit.options.repeatability_percent / 100 * *energy.value;
    result.independent_wh = std::hypot(normal_part(*energy.half_width(), rectangular, fit.options.coverage), repeatability_wh);
    return result;
}

namespace {

/// What the uncertainty of a difference is made of: its widest rectangle, and the standard deviation of the rest.
struct DifferenceSpread {
    double rectangular = 0, rest_sd = 0;
    double degrees_of_freedom = INFINITY; ///< of the rest

    /// The rest as a normal part that gives the same interval.
    [[nodiscard]] double normal_rest(double coverage) const {
        return rest_sd * coverage_factor(coverage, degrees_of_freedom) / coverage_factor(coverage, INFINITY);
    }
};

/// A scatter that both sides take from one pool is one estimate, whose degrees of freedom count once.
double freedom_of_difference(const ComparedEnergy& x, double x_wh, const ComparedEnergy& y, double y_wh, double others_sd) {
    std::vector<UncertaintyPart> parts;
    if (x.pooled && y.pooled) {
        parts.push_back({std::hypot(x_wh, y_wh), std::min(x.degrees_of_freedom, y.degrees_of_freedom)});
    } else {
        parts.push_back({x_wh, x.degrees_of_freedom});
        parts.push_back({y_wh, y.degrees_of_freedom});
    }
    parts.push_back({others_sd, INFINITY});
    return effective_degrees_of_freedom(parts).value_or(INFINITY);
}

DifferenceSpread spread_of_difference(const ComparedEnergy& x, double a, const ComparedEnergy& y, double b) {
    DifferenceSpread spread;
    double others = 0;
    bool one_meter = false;
    const auto take = [&](double signed_part) {
        const double part = std::abs(signed_part), narrower = std::min(part, spread.rectangular);
        others += narrower * narrower / 3;
        spread.rectangular = std::max(part, spread.rectangular);
    };
    for (const auto& [meter, half_width] : x.gain_half_width_wh) {
        const auto same = y.gain_half_width_wh.find(meter);
        one_meter = one_meter || same != y.gain_half_width_wh.end();
        take(a * half_width - (same == y.gain_half_width_wh.end() ? 0.0 : b * same->second));
    }
    for (const auto& [meter, half_width] : y.gain_half_width_wh)
        if (!x.gain_half_width_wh.contains(meter)) take(b * half_width);
    // What cancels between two loads of one meter is only the part common to both.
    if (one_meter && x.load_w > 0 && y.load_w > 0 && are_unlike_loads(x.load_w, y.load_w))
        others += (std::pow(a * x.load_part_wh, 2) + std::pow(b * y.load_part_wh, 2)) / 3;
    const double x_wh = std::abs(a) * x.independent_wh, y_wh = std::abs(b) * y.independent_wh;
    spread.rest_sd = std::sqrt(x_wh * x_wh + y_wh * y_wh + others);
    spread.degrees_of_freedom = freedom_of_difference(x, x_wh, y, y_wh, std::sqrt(others));
    return spread;
}

} // namespace

double difference_half_width(const ComparedEnergy& x, double a, const ComparedEnergy& y, double b, double coverage) {
    const DifferenceSpread spread = spread_of_difference(x, a, y, b);
    return half_width_of_sum(spread.rectangular, spread.normal_rest(coverage), coverage);
}

bool is_beyond_half_width(double difference, const ComparedEnergy& x, double a, const ComparedEnergy& y, double b, const BeyondHalfWidth& beyond) {
    const DifferenceSpread spread = spread_of_difference(x, a, y, b);
    return beyond(std::abs(difference), spread.rectangular, spread.normal_rest(beyond.coverage()));
}

bool share_a_meter(const ComparedEnergy& x, const ComparedEnergy& y) {
    return std::ranges::any_of(x.gain_half_width_wh, [&](const auto& gain) { return y.gain_half_width_wh.contains(gain.first); });
}

} // namespace ullage
