// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/what_is_left.h"

#include "base/number.h"
#include "model/meter_gain.h"
#include "numerics/distributions.h"
#include "unit/usual_draw.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

constexpr double usual_curvature = 0.04; ///< c times rated output: the middle of what loss_fit.h allows
constexpr double least_forecast_steps = 2;

double curvature_of(const Unit& unit) {
    const double rated_w = unit.rated_output_w.value_or(0);
    return rated_w > 0 ? usual_curvature / rated_w : 0;
}

/// Whether every drain that the fit rests on was measured by the meter of this run, so that its gain cancels.
bool same_meter(const RunRecord& record, const UnitFit& fit) {
    const std::string key = !record.meter ? "" : record.meter->uuid.empty() ? record.meter->name : record.meter->uuid.text();
    return !key.empty() && std::ranges::all_of(fit.drains, [&](const DrainSummary& drain) {
        return !drain.used || drain.meter_key.empty() || drain.meter_key == key;
    });
}

} // namespace

Message no_trend(const TrendSetup& trend) {
    if (trend.points.size() < 2) return say(phrase("forecast", "the gauge and the register have not been read together twice yet"));
    const double fall_pt = trend.points.front().gauge_percent - trend.points.back().gauge_percent;
    if (fall_pt < least_forecast_steps * trend.gauge_step_pt)
        return say(phrase("forecast", "the gauge has not fallen by %1 points yet"),
                   say_digits(exact_text(least_forecast_steps * trend.gauge_step_pt)));
    return {};
}

std::vector<LeftWeight> lefts_by_trend(const CutOffSetup& setup) {
    std::vector<OwnDraw> draws;
    if (!setup.has_register) {
        draws.push_back({1, 0});
    } else {
        const Bounds bounds = usual_no_load_draw(setup.record.unit);
        // Quantiles of a triangle that falls to nothing at the upper bound: small draws are commoner than large ones.
        for (const double p : {0.12, 0.37, 0.63, 0.88})
            draws.push_back({bounds.high - (bounds.high - bounds.low) * std::sqrt(1 - p), curvature_of(setup.record.unit)});
    }
    return left_by_trend(setup.trend, draws);
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
        left.limit_assumed = !error_limit_percent(*setup.record.meter);
        own_gain_wh =
            error_limit_percent(*setup.record.meter).value_or(assumed_limit_percent) / 100 / std::sqrt(3.0) * (end.delivered_wh + load_w * hours);
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
        if (const double wh = fit.wh + z * fit.u_wh; wh > 0) result.push_back({wh, fit.draw, std::exp(-0.5 * z * z), {}});
    return result;
}

std::vector<HoursLeft> hours_of(const CutOffSetup& setup, const std::vector<LeftWeight>& lefts) {
    std::vector<HoursLeft> all;
    for (std::size_t i = 0; i < lefts.size(); ++i)
        for (std::size_t path = 0; lefts[i].weight > 0 && path < setup.loads.paths(); ++path) {
            if (setup.loads.weight(path) <= 0) continue;
            const OwnDraw& draw = lefts[i].draw;
            const double hours = setup.loads.hours_to_use(path, lefts[i].left_wh, draw.no_load_w, draw.curvature_per_w);
            if (hours >= setup.seen_on_h) all.push_back({std::min(hours, 2 * longest_forecast_h), setup.loads.weight(path), i});
        }
    std::ranges::sort(all, {}, &HoursLeft::hours);
    return all;
}

std::optional<Spread> spread_by(const std::vector<HoursLeft>& all, double coverage, const std::function<double(std::size_t)>& weight) {
    WeightedValues values;
    values.reserve(all.size());
    for (const HoursLeft& one : all)
        if (const double w = weight(one.left); w > 0) values.emplace_back(one.hours, w * one.path_weight);
    return spread_of_sorted(values, coverage);
}

} // namespace ullage
