// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/energy_ratio.h"

#include "numerics/distributions.h"
#include "numerics/monte_carlo.h"
#include "unit/usual_draw.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

/// A value with its standard uncertainty.
struct Known {
    double value = 0, u = 0;
};

Known known_draw(const UnitFit& fit, const Unit& unit) {
    const Quantity& draw = fit.no_load_draw_w;
    if (draw.value && draw.half_width()) return {std::max(0.0, *draw.value), *draw.half_width() / normal_quantile((1 + fit.options.coverage) / 2)};
    const Bounds usual = usual_no_load_draw(unit);
    return {usual.middle(), usual.standard_uncertainty()};
}

/// ln of the ratio of two energies and what makes it uncertain.
struct LogRatio {
    double value = 0;
    double variance = 0; ///< all but the gains
    double gain_half_width[2] = {0, 0};
    bool limits_known = true;
};

LogRatio log_ratio(const DrainSummary& earlier, const DrainSummary& later, const UnitFit& fit, const Unit& unit) {
    const Known draw = known_draw(fit, unit);
    const double c_per_w = fit.c_bounds.middle();
    LogRatio ratio;
    double by_draw = 0, by_curvature = 0, delivered_share[2] = {0, 0};
    const DrainSummary* drains[] = {&earlier, &later};
    for (std::size_t k = 0; k < 2; ++k) {
        const DrainSummary& drain = *drains[k];
        const double sign = k == 0 ? -1 : 1;
        const double energy_wh = drain.delivered_wh + draw.value * drain.hours + c_per_w * drain.squared_w2h;
        ratio.value += sign * std::log(energy_wh);
        by_draw += sign * drain.hours / energy_wh;
        by_curvature += sign * drain.squared_w2h / energy_wh;
        ratio.variance += std::pow(drain.independent_wh / energy_wh, 2) + std::pow(fit.options.repeatability_percent / 100, 2) +
                          std::pow(draw.value * drain.u_hours / energy_wh, 2);
        delivered_share[k] = (drain.delivered_wh + 2 * c_per_w * drain.squared_w2h) / energy_wh;
    }
    ratio.variance += std::pow(by_draw * draw.u, 2) + std::pow(by_curvature * fit.c_bounds.standard_uncertainty(), 2);
    const bool one_meter = earlier.meter_key == later.meter_key;
    for (std::size_t k = 0; k < 2; ++k) {
        // A limit that is not stated leaves the share of P*·T, a few tenths of a percent at most, to a limit assumed for weights only.
        const double limit = drains[k]->gain_limit_percent.value_or(assumed_limit_percent) / 100;
        if (one_meter) {
            ratio.gain_half_width[0] = limit * std::abs(delivered_share[1] - delivered_share[0]);
        } else {
            ratio.gain_half_width[k] = limit * delivered_share[k];
            ratio.limits_known = ratio.limits_known && drains[k]->gain_limit_percent.has_value();
        }
    }
    return ratio;
}

/// The part of a drain that its gauge was read over. ∫P² is taken to be spread as the energy is.
DrainSummary within_curve(const DrainSummary& drain) {
    DrainSummary part = drain;
    const GaugeCurve& curve = *drain.gauge_curve;
    part.squared_w2h *= drain.delivered_wh > 0 ? curve.fall_wh() / drain.delivered_wh : 0;
    part.delivered_wh = curve.fall_wh();
    part.hours = curve.fall_h();
    return part;
}

RatioChange change_of(const char* key, const LogRatio& ratio, double coverage, double threshold) {
    RatioChange change;
    if (!ratio.limits_known) {
        change.change_percent =
            not_known(key, "%", say(phrase("unit", "the drains used different meters, and the error limit of one is not stated")));
        return change;
    }
    const auto [less, more] = std::minmax(ratio.gain_half_width[0], ratio.gain_half_width[1]);
    const double u = std::sqrt(ratio.variance + (less * less + more * more) / 3);
    const double half = half_width_of_sum(more, std::sqrt(ratio.variance + less * less / 3), coverage);
    change.change_percent =
        known(key, "%", 100 * std::expm1(ratio.value), std::nullopt, Kind::measured, say(phrase("unit", "corrected for the loads")));
    change.change_percent.lower = 100 * std::expm1(ratio.value - half);
    change.change_percent.upper = 100 * std::expm1(ratio.value + half);
    change.statistic = ratio.value / u;
    change.p_value = std::erfc(std::abs(*change.statistic) / std::sqrt(2.0));
    change.significant = *change.p_value < threshold;
    return change;
}

} // namespace

RatioChange energy_change(const DrainSummary& earlier, const DrainSummary& later, const UnitFit& fit, const Unit& unit, double threshold) {
    return change_of("energy_change_percent", log_ratio(earlier, later, fit, unit), fit.options.coverage, threshold);
}

RatioChange wh_per_point_change(const DrainSummary& earlier, const DrainSummary& later, const UnitFit& fit, const Unit& unit, double threshold) {
    LogRatio ratio = log_ratio(within_curve(earlier), within_curve(later), fit, unit);
    ratio.value += std::log(earlier.gauge_curve->fall_pt() / later.gauge_curve->fall_pt());
    for (const DrainSummary* drain : {&earlier, &later})
        ratio.variance += std::pow(drain->gauge_curve->step_pt / drain->gauge_curve->fall_pt(), 2) / 6;
    return change_of("wh_per_gauge_point_change_percent", ratio, fit.options.coverage, threshold);
}

} // namespace ullage
