// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/forecast_cut_off.h"

#include "base/number.h"
#include "numerics/distributions.h"
#include "unit/usual_draw.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace ullage {
namespace {

constexpr double usual_curvature = 0.04; ///< c times rated output: the middle of what loss_fit.h allows
constexpr double least_forecast_steps = 2;
constexpr double longest_h = 24.0 * 366; ///< a cut-off further off is not forecast

/// By the earlier drains alone.
struct FitLeft {
    double wh = 0, u_wh = 0;
    OwnDraw draw;
    bool limit_assumed = false;
};

double curvature_of(const Unit& unit) {
    const double rated_w = unit.rated_output_w.value_or(0);
    return rated_w > 0 ? usual_curvature / rated_w : 0;
}

/// Why the gauge cannot tell; empty when it can.
std::string no_trend(const TrendSetup& trend) {
    if (trend.points.size() < 2) return "the gauge and the register have not been read together twice yet";
    const double fall_pt = trend.points.front().gauge_percent - trend.points.back().gauge_percent;
    if (fall_pt < least_forecast_steps * trend.gauge_step_pt)
        return "the gauge has not fallen by " + exact_text(least_forecast_steps * trend.gauge_step_pt) + " points yet";
    return {};
}

std::vector<LeftWeight> by_trend(const CutOffSetup& setup) {
    std::vector<OwnDraw> draws;
    if (!setup.has_register) {
        draws.push_back({1, 0});
    } else {
        const Bounds bounds = usual_no_load_draw(setup.record.unit);
        // Quantiles of a triangle that falls to nothing at the upper bound: small draws are commoner than large ones.
        for (const double p : {0.1, 0.3, 0.5, 0.7, 0.9})
            draws.push_back({bounds.high - (bounds.high - bounds.low) * std::sqrt(1 - p), curvature_of(setup.record.unit)});
    }
    return left_by_trend(setup.trend, draws);
}

/// Whether every drain that the fit rests on was measured by the meter of this run, so that its gain cancels.
bool same_meter(const RunRecord& record, const UnitFit& fit) {
    const std::string key = !record.meter ? "" : record.meter->uuid.empty() ? record.meter->name : record.meter->uuid;
    return !key.empty() && std::ranges::all_of(fit.drains, [&](const DrainSummary& drain) {
        return !drain.used || drain.meter_key.empty() || drain.meter_key == key;
    });
}

std::optional<FitLeft> by_earlier_drains(const CutOffSetup& setup) {
    const UnitFit& fit = setup.unit_fit;
    const bool idle = setup.record.run.kind == RunKind::no_load_drain;
    if (fit.used_drains == 0 || !setup.trend.started_full || (!setup.has_register && !idle)) return std::nullopt;
    if (!fit.parameters && !fit.planning) return std::nullopt;
    UnitParameters p = fit.parameters ? *fit.parameters : *fit.planning;
    const TrendPoint& end = setup.trend.end;
    FitLeft left;
    left.draw = {std::max(0.0, p.p_star_w), p.c_per_w};
    left.wh = p.e_star_wh - p.p_star_w * end.on_hours - p.c_per_w * end.squared_w2h - end.delivered_wh;
    const double load_w = setup.loads.overall_w();
    const double rate_w = load_w + left.draw.no_load_w + left.draw.curvature_per_w * load_w * load_w;
    if (rate_w <= 0) return std::nullopt;
    const double hours = std::max(0.0, left.wh / rate_w);
    double own_gain_wh = 0;
    if (same_meter(setup.record, fit)) {
        p.gains.clear();
    } else if (setup.record.meter) {
        left.limit_assumed = !setup.record.meter->limit_percent;
        own_gain_wh = setup.record.meter->limit_percent.value_or(assumed_limit_percent) / 100 / std::sqrt(3.0) * (end.delivered_wh + load_w * hours);
    }
    for (UnitParameters::Gain& gain : p.gains) {
        left.limit_assumed = left.limit_assumed || !gain.limit_known;
        gain.limit_known = true;
    }
    const std::optional<double> half_wh =
        half_width_along(p, {1, -(end.on_hours + hours), -(end.squared_w2h + load_w * load_w * hours)}, setup.options.coverage);
    if (!half_wh) return std::nullopt;
    left.u_wh = std::hypot(*half_wh / normal_quantile((1 + setup.options.coverage) / 2), own_gain_wh,
                           setup.options.repeatability_percent / 100 * p.e_star_wh);
    return left;
}

std::vector<LeftWeight> around(const FitLeft& fit) {
    std::vector<LeftWeight> result;
    for (double z = -4; z <= 4.001; z += 0.2)
        if (const double wh = fit.wh + z * fit.u_wh; wh > 0) result.push_back({wh, fit.draw, std::exp(-0.5 * z * z)});
    return result;
}

std::optional<Spread> hours_until_used(const CutOffSetup& setup, const std::vector<LeftWeight>& lefts) {
    WeightedValues values;
    for (const LeftWeight& left : lefts)
        for (std::size_t path = 0; left.weight > 0 && path < setup.loads.paths(); ++path) {
            if (setup.loads.weight(path) <= 0) continue;
            const double hours = setup.loads.hours_to_use(path, left.left_wh, left.draw.no_load_w, left.draw.curvature_per_w);
            if (hours >= setup.seen_on_h) values.emplace_back(std::min(hours, 2 * longest_h), left.weight * setup.loads.weight(path));
        }
    return spread_of(std::move(values), setup.options.coverage);
}

std::optional<Spread> left_range(const std::vector<LeftWeight>& lefts, double coverage) {
    WeightedValues values;
    for (const LeftWeight& left : lefts) values.emplace_back(left.left_wh, left.weight);
    return spread_of(std::move(values), coverage);
}

std::string load_words(const FutureLoads& loads) {
    if (loads.overall_w() <= 0) return {};
    const std::string overall = fixed_text(loads.overall_w(), 0) + " W";
    switch (loads.shape()) {
    case FutureLoads::Shape::steady: return "assumes that the load stays near " + overall;
    case FutureLoads::Shape::cycling: return "assumes that the load goes on as it has, " + overall + " in the mean";
    case FutureLoads::Shape::stepped: break;
    }
    return "allows for a load that stays near " + fixed_text(loads.recent_w(), 0) + " W and for one that returns to " + overall +
           " in the mean; a step yet to come cannot be foreseen";
}

std::string words(const CutOffSetup& setup, ForecastBasis basis, bool limit_assumed) {
    std::string text = "from " + std::string(forecast_basis_text(basis));
    if (!setup.has_register && basis == ForecastBasis::trend) text += " and time alone, without a register: assumes a steady load";
    if (const std::string load = load_words(setup.loads); !load.empty()) text += "; " + load;
    if (basis == ForecastBasis::trend)
        text += "; allows for a gauge that is bent, offset, ends early or lingers, or is blind to the unit's own consumption, "
                "not for one that sticks or jumps";
    if (basis == ForecastBasis::disagreeing) text += "; the range holds both";
    if (limit_assumed) text += "; ±" + exact_text(assumed_limit_percent) + " % taken for a meter whose error limit is not stated";
    return text;
}

/// From what the earlier drains say, held against this run's gauge where it can tell. A gauge that agrees does not narrow the
/// range: in simulated units with common gauge faults that made the forecast worse.
std::optional<CutOffForecast> with_earlier_drains(const CutOffSetup& setup, const FitLeft& fit, bool gauge_tells) {
    CutOffForecast result;
    result.basis = ForecastBasis::earlier_drains;
    result.hours = hours_until_used(setup, around(fit));
    if (gauge_tells) {
        const std::vector<LeftWeight> trend = by_trend(setup);
        const auto seen = left_range(trend, setup.options.coverage);
        const bool agree = seen && seen->lower <= fit.wh + 2 * fit.u_wh && seen->upper >= fit.wh - 2 * fit.u_wh;
        if (agree) {
            result.basis = ForecastBasis::both;
        } else if (const auto other = hours_until_used(setup, trend)) {
            result.basis = ForecastBasis::disagreeing;
            if (result.hours)
                result.hours = Spread{std::min(result.hours->lower, other->lower), result.hours->middle, std::max(result.hours->upper, other->upper)};
            else result.hours = other;
        }
    }
    if (!result.hours) return std::nullopt;
    result.reason = words(setup, result.basis, fit.limit_assumed);
    return result;
}

} // namespace

CutOffForecast forecast_cut_off(const CutOffSetup& setup) {
    CutOffForecast result;
    if (setup.record.run.kind == RunKind::drain && setup.has_register && setup.trend.end.delivered_wh <= 0) {
        result.reason = "nothing has been delivered yet";
        return result;
    }
    const std::string without_trend = no_trend(setup.trend);
    if (const auto fit = by_earlier_drains(setup)) {
        if (auto found = with_earlier_drains(setup, *fit, without_trend.empty())) result = std::move(*found);
    } else if (without_trend.empty()) {
        result.hours = hours_until_used(setup, by_trend(setup));
        if (result.hours) result.reason = words(setup, result.basis, false);
    } else {
        result.reason = without_trend + ", and no earlier drain of the unit tells";
        return result;
    }
    if (!result.hours) {
        result.reason = "it has already delivered more than the readings and the unit's label allow for; read often now";
    } else if (result.hours->upper > longest_h) {
        result.hours.reset();
        result.reason = "the load is so small that the end may be more than a year away";
    }
    return result;
}

} // namespace ullage
