// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/between_runs.h"

#include "base/number.h"
#include "numerics/distributions.h"
#include "numerics/monte_carlo.h"
#include "unit/inside/between_runs_words.h"
#include "unit/usual_draw.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>

namespace ullage {
namespace {

constexpr double distinct_ratio = 1.3;
constexpr double idle_below_w = 1; ///< a mean load below this is a no-load drain, whatever the register caught

std::vector<DrainSummary> used_of(const std::vector<DrainSummary>& drains) {
    std::vector<DrainSummary> used;
    std::ranges::copy_if(drains, std::back_inserter(used), &DrainSummary::used);
    return used;
}

/// Loads that differ from their neighbours by the ratio or more; no load at all is a load of its own.
std::size_t distinct_loads(const std::vector<DrainSummary>& used) {
    std::vector<double> loads;
    for (const DrainSummary& drain : used) loads.push_back(drain.mean_load_w);
    std::ranges::sort(loads);
    std::size_t count = 0;
    double last_w = -1;
    for (const double load_w : loads) {
        if (last_w >= 0 && load_w < distinct_ratio * std::max(last_w, idle_below_w)) continue;
        ++count;
        last_w = load_w;
    }
    return count;
}

/// See UnitFit::lowest_power_w.
double power_while_on_w(const DrainSummary& drain) {
    if (drain.mean_load_w < idle_below_w) return drain.mean_load_w;
    const double power_w = drain.squared_w2h / drain.delivered_wh;
    return power_w < distinct_ratio * drain.mean_load_w ? drain.mean_load_w : power_w;
}

Bounds curvature_bounds(const Unit& unit, double highest_load_w, const MeasureOptions& options) {
    const double full_w = unit.rated_output_w.value_or(0) > 0 ? *unit.rated_output_w : std::max(highest_load_w, 1.0);
    return {0, options.most_quadratic_loss / full_w};
}

double widening_of(const BalanceFit& fit, const MeasureOptions& options) {
    const Disagreement found = disagreement_of(fit);
    const bool pooled = options.repeatability_source == RepeatabilitySource::pooled && options.repeatability_degrees > 0;
    const double nu = pooled ? std::min(found.nu, static_cast<double>(options.repeatability_degrees)) : found.nu;
    return found.ratio * coverage_factor(options.coverage, nu) / coverage_factor(options.coverage, std::numeric_limits<double>::infinity());
}

UnitParameters parameters_of(const BalanceFit& fit, double widening) {
    UnitParameters result{fit.parameters[0], fit.parameters[1], fit.parameters[2], {}, {}};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j) result.covariance[i][j] = widening * widening * fit.scatter[i][j] + fit.bounds[i][j];
    for (const GainShift& gain : fit.gains)
        result.gains.push_back({gain.meter_key, gain.meter_name, {gain.half_width[0], gain.half_width[1], gain.half_width[2]}, gain.limit_known});
    return result;
}

/// Chooses how c is held and solves; sets the source.
Result<BalanceFit> solve_with_curvature(const std::vector<DrainSummary>& used, UnitFit& unit_fit) {
    const BalanceTerms bounded{unit_fit.c_bounds, std::nullopt, false};
    if (distinct_loads(used) >= 3) {
        const Result<BalanceFit> alone = fit_balance(used, BalanceTerms{}, unit_fit.options);
        if (alone) {
            const double widening = widening_of(alone.value(), unit_fit.options);
            const double u_per_w = widening * std::sqrt(alone.value().scatter[2][2]);
            const double c_per_w = alone.value().parameters[2];
            const bool contradicts = c_per_w < unit_fit.c_bounds.low - 2 * u_per_w || c_per_w > unit_fit.c_bounds.high + 2 * u_per_w;
            if (u_per_w < unit_fit.c_bounds.standard_uncertainty()) {
                unit_fit.curvature_source = contradicts ? CurvatureSource::outside : CurvatureSource::fitted;
                if (contradicts) return alone;
            }
        }
    }
    return fit_balance(used, bounded, unit_fit.options);
}

void plan(const std::vector<DrainSummary>& used, const Unit& unit, UnitFit& fit) {
    fit.planning = fit.parameters;
    if (fit.planning || used.empty()) return;
    const Result<BalanceFit> rough = fit_balance(used, {fit.c_bounds, usual_no_load_draw(unit), false}, fit.options);
    if (rough) fit.planning = parameters_of(rough.value(), 1);
}

} // namespace

std::optional<double> half_width_along(const UnitParameters& parameters, const std::array<double, 3>& gradient, double coverage) {
    double variance = 0;
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j) variance += gradient[i] * parameters.covariance[i][j] * gradient[j];
    variance = std::max(0.0, variance);
    double largest = 0, others = 0;
    for (const UnitParameters::Gain& gain : parameters.gains) {
        double part = 0;
        for (std::size_t i = 0; i < 3; ++i) part += gradient[i] * gain.half_width[i];
        part = std::abs(part);
        // A tenth of the deviation adds 0.2 % to the interval: then the limit does not matter. Not 0, as the bounds on c keep a gain
        // from cancelling to the last digit.
        if (!gain.limit_known && part > 0.1 * std::sqrt(variance)) return std::nullopt;
        others += std::min(part, largest) * std::min(part, largest) / 3;
        largest = std::max(part, largest);
    }
    return half_width_of_sum(largest, std::sqrt(variance + others), coverage);
}

UnitFit fit_unit(const std::vector<RunRecord>& records, const MeasureOptions& options) {
    std::vector<const RunRecord*> runs;
    std::vector<EnergyAnalysis> energies;
    energies.reserve(records.size());
    for (const RunRecord& record : records) {
        runs.push_back(&record);
        energies.push_back(analyse_energy(record, options));
    }
    return fit_unit(runs, energies, options);
}

UnitFit fit_unit(const std::vector<const RunRecord*>& records, const std::vector<EnergyAnalysis>& energies, const MeasureOptions& options) {
    UnitFit fit;
    fit.options = options;
    for (std::size_t i = 0; i < records.size(); ++i) {
        fit.drains.push_back(summarise_drain(*records[i], energies[i], options));
        if (records[i]->run.unit_uuid == records.front()->run.unit_uuid) continue;
        fit.drains.back().used = false;
        fit.drains.back().reason = say(phrase("unit", "it is a run of another unit"));
    }
    const std::vector<DrainSummary> used = used_of(fit.drains);
    const Unit unit = records.empty() ? Unit{} : records.front()->unit;
    fit.used_drains = used.size();
    if (!used.empty()) {
        const auto [low, high] = std::ranges::minmax_element(used, {}, &DrainSummary::mean_load_w);
        fit.lowest_load_w = low->mean_load_w;
        fit.highest_load_w = high->mean_load_w;
        const auto [least, most] = std::ranges::minmax_element(used, {}, power_while_on_w);
        fit.lowest_power_w = power_while_on_w(*least);
        fit.highest_power_w = power_while_on_w(*most);
    }
    fit.c_bounds = curvature_bounds(unit, fit.highest_load_w, options);

    Message failure;
    if (run_times_differ(used)) {
        const Result<BalanceFit> solved = solve_with_curvature(used, fit);
        if (solved) {
            const BalanceFit& balance = solved.value();
            fit.chi_square = balance.chi_square;
            fit.degrees_of_freedom = balance.degrees_of_freedom;
            fit.widening = widening_of(balance, options);
            fit.parameters = parameters_of(balance, fit.widening);
            std::size_t k = 0;
            for (DrainSummary& drain : fit.drains) {
                if (!drain.used) continue;
                drain.residual_wh = balance.residuals_wh[k];
                drain.u_wh = balance.u_wh[k++];
            }
        } else {
            failure = solved.error().message();
        }
    }
    plan(used, unit, fit);
    fit.repeats = repeat_means(fit.drains, options);
    fit.full_charge = full_charge_of(records, energies);
    put_into_words(unit, failure, fit);
    return fit;
}

} // namespace ullage
