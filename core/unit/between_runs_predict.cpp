// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/between_runs_predict.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

Message why_no_prediction(const UnitFit& fit, const Unit& unit, const CommonLoad& load) {
    if (!std::isfinite(load.power_w) || load.power_w <= 0) return say(phrase("unit", "state a load above 0 W"));
    if (!(load.duty > 0 && load.duty <= 1)) return say(phrase("unit", "state a share of the time above 0 and at most 1"));
    if (unit.rated_output_w && load.power_w > *unit.rated_output_w)
        return say(phrase("unit", "%1 W is above the rated output of %2 W"), say_number(load.power_w, 0), say_number(*unit.rated_output_w, 0));
    if (!fit.parameters) return fit.deliverable_at_no_time_cost_wh.reason;
    return {};
}

bool mean_tested(const UnitFit& fit, const CommonLoad& load) { return load.mean_w() >= fit.lowest_load_w && load.mean_w() <= fit.highest_load_w; }

bool power_tested(const UnitFit& fit, const CommonLoad& load) { return load.power_w >= fit.lowest_power_w && load.power_w <= fit.highest_power_w; }

double beyond(double lowest_w, double highest_w, double load_w) {
    if (load_w >= lowest_w && load_w <= highest_w) return 1;
    return load_w < lowest_w ? lowest_w / load_w : load_w / highest_w;
}

/// "64 to 311 W"; "180 W" where they do not differ.
Message say_watts(double lowest_w, double highest_w) {
    if (fixed_text(lowest_w, 0) == fixed_text(highest_w, 0)) return say_measure(lowest_w, 0, "W");
    return say(phrase("unit", "%1 to %2 W"), say_number(lowest_w, 0), say_number(highest_w, 0));
}

Message say_where(const UnitFit& fit, const CommonLoad& load) {
    const Message means = say_watts(fit.lowest_load_w, fit.highest_load_w);
    if (!mean_tested(fit, load)) return say(phrase("unit", "beyond the tested loads (%1)"), means);
    if (power_tested(fit, load)) return say(phrase("unit", "between the tested loads (%1)"), means);
    return say(phrase("unit", "beyond the tested loads (%1 on average, as this one, but %2 while on, this one %3 W)"), means,
               say_watts(fit.lowest_power_w, fit.highest_power_w), say_number(load.power_w, 0));
}

Message words(const UnitFit& fit, const CommonLoad& load) {
    return say_joined({say_where(fit, load), say(phrase("unit", "a mean over drains: a single one scatters by another %1 %"),
                                                 say_digits(exact_text(fit.options.repeatability_percent)))},
                      "; ");
}

Quantity scaled(const Quantity& run_time, std::string key, std::string unit, double factor) {
    Quantity result = run_time;
    result.key = std::move(key);
    result.unit = std::move(unit);
    for (std::optional<double>* part : {&result.value, &result.lower, &result.upper})
        if (*part) **part *= factor;
    return result;
}

double rate_of(const UnitParameters& p, const CommonLoad& load) {
    return (load.mean_w() + p.p_star_w + p.c_per_w * load.mean_square_w2()) / p.e_star_wh;
}

Quantity run_time(const UnitFit& fit, const CommonLoad& load, Message reason) {
    const UnitParameters& p = *fit.parameters;
    // A draw below 0 does not exist; its interval still counts from where the drains put it.
    const double fitted_rate = rate_of(p, load);
    const double rate = p.p_star_w < 0 ? fitted_rate - p.p_star_w / p.e_star_wh : fitted_rate;
    const std::optional<double> half = half_width_along(p, rate_gradient(p, load), fit.options.coverage);
    Quantity result = known("run_time_h", "h", 1 / rate, std::nullopt, Kind::projected, std::move(reason));
    if (!half) {
        result.reason = say_joined({say(phrase("unit", "no interval: the error limit of a meter is not stated")), result.reason}, "; ");
        return result;
    }
    result.lower = 1 / std::max(rate, fitted_rate + *half);
    if (fitted_rate - *half > 0) {
        result.upper = 1 / (fitted_rate - *half);
    } else {
        result.kind = Kind::at_least;
        result.reason = say_joined({say(phrase("unit", "the draw is too uncertain for an upper end")), result.reason}, "; ");
    }
    return result;
}

} // namespace

std::array<double, 3> rate_gradient(const UnitParameters& parameters, const CommonLoad& load) {
    const double e_star_wh = parameters.e_star_wh;
    return {-rate_of(parameters, load) / e_star_wh, 1 / e_star_wh, load.mean_square_w2() / e_star_wh};
}

LoadPrediction predict_at(const UnitFit& fit, const Unit& unit, double load_w) { return predict_under(fit, unit, {load_w, 1, {}}); }

LoadPrediction predict_under(const UnitFit& fit, const Unit& unit, const CommonLoad& load) {
    LoadPrediction result;
    const double load_w = load.mean_w();
    result.load_w = load_w;
    const Message refusal = why_no_prediction(fit, unit, load);
    if (!refusal.empty()) {
        result.deliverable_wh = not_known("deliverable_wh", "Wh", refusal);
        result.usable_fraction = not_known("usable_fraction", "1", refusal);
        result.run_time_h = not_known("run_time_h", "h", refusal);
        return result;
    }
    result.within_tested_loads = mean_tested(fit, load) && power_tested(fit, load);
    result.beyond_factor =
        std::max(beyond(fit.lowest_load_w, fit.highest_load_w, load_w), beyond(fit.lowest_power_w, fit.highest_power_w, load.power_w));
    result.run_time_h = run_time(fit, load, words(fit, load));
    result.deliverable_wh = scaled(result.run_time_h, "deliverable_wh", "Wh", load_w);
    const double rated_wh = unit.rated_energy_wh.value_or(0);
    result.usable_fraction = rated_wh > 0 ? scaled(result.run_time_h, "usable_fraction", "1", load_w / rated_wh)
                                          : not_known("usable_fraction", "1", say(phrase("unit", "the rated energy of the unit is not stated")));
    return result;
}

std::vector<LoadPrediction> predict_curve(const UnitFit& fit, const Unit& unit, const std::vector<double>& loads_w) {
    std::vector<LoadPrediction> curve;
    for (const double load_w : loads_w) curve.push_back(predict_at(fit, unit, load_w));
    return curve;
}

} // namespace ullage
