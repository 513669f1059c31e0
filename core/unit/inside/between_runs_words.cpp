// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/inside/between_runs_words.h"

#include "base/number.h"
#include "unit/next_run.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

Message no_interval(const UnitParameters& parameters) {
    for (const UnitParameters::Gain& gain : parameters.gains)
        if (!gain.limit_known) return say(phrase("unit", "no interval: the error limit of %1 is not stated"), gain.meter_name);
    return {};
}

Message joined(const Message& first, const Message& second) {
    return first.empty() || second.empty() ? first + second : say_joined({first, second}, "; ");
}

Message why_not_known(const Unit& unit, const Message& failure, const UnitFit& fit) {
    if (!failure.empty()) return failure;
    if (fit.used_drains == 0)
        return say(phrase("unit", "no drain from full to cut-off has all its energy read")) + say(phrase("advice", ": make one"));
    const std::optional<NextRun> next = propose_next_run(fit, unit);
    const Message remedy = next ? say(phrase("advice", ": make a drain near %1 W"), say_number(next->load_w, 0))
                                : say(phrase("advice", ": make a drain at less than half or more than twice that load"));
    const auto first = std::ranges::find_if(fit.drains, &DrainSummary::used);
    if (fit.used_drains == 1) return say(phrase("unit", "there is one drain only, at %1 W"), say_number(first->mean_load_w, 0)) + remedy;
    double shortest_h = first->hours, longest_h = first->hours;
    for (const DrainSummary& drain : fit.drains) {
        if (!drain.used) continue;
        shortest_h = std::min(shortest_h, drain.hours);
        longest_h = std::max(longest_h, drain.hours);
    }
    return say(phrase("unit", "the drains are too alike (%1 to %2 h)"), say_number(shortest_h, 1), say_number(longest_h, 1)) + remedy;
}

/// E*/P* by its reciprocal, which is nearly linear in the uncertain P*; without an upper end when P* may be 0.
Quantity endurance(const UnitFit& fit) {
    const UnitParameters& p = *fit.parameters;
    const auto key = "no_load_endurance_h";
    const double rate = p.p_star_w / p.e_star_wh;
    const std::optional<double> half = half_width_along(p, {-rate / p.e_star_wh, 1 / p.e_star_wh, 0}, fit.options.coverage);
    if (rate <= 0 && (!half || rate + *half <= 0)) return not_known(key, "h", say(phrase("unit", "the drains show no draw above 0 W")));
    if (!half) return known(key, "h", 1 / rate, std::nullopt, Kind::projected, no_interval(p));
    Quantity result = known(key, "h", 0, std::nullopt, Kind::projected, say(phrase("unit", "from E*/P*; a gain that all drains share cancels")));
    result.lower = 1 / (rate + *half);
    if (rate - *half > 0) {
        result.value = 1 / rate;
        result.upper = 1 / (rate - *half);
        return result;
    }
    result.value = rate > 0 ? std::optional(1 / rate) : std::nullopt;
    result.kind = Kind::at_least;
    result.reason = say(phrase("unit", "the draw may be 0 W within its uncertainty"));
    return result;
}

/// Negative draws do not exist, so neither value nor interval goes below 0.
Quantity no_load_draw(const UnitFit& fit) {
    const UnitParameters& p = *fit.parameters;
    const std::optional<double> half = half_width_along(p, {0, 1, 0}, fit.options.coverage);
    if (half && p.p_star_w + *half < 0)
        return not_known("no_load_draw_w", "W",
                         say(phrase("unit", "the drains would need a draw below 0 W (%1 W): one of them is wrong, or the unit changed between them"),
                             say_digits(with_interval_text(p.p_star_w, half, 1))));
    Quantity result = known("no_load_draw_w", "W", std::max(0.0, p.p_star_w), std::nullopt, Kind::measured,
                            joined(say_count(fit.used_drains, phrases("unit", "seen from the socket, from the run times of %n drains",
                                                                      "seen from the socket, from the run times of %n drain")),
                                   half ? Message() : no_interval(p)));
    if (!half) return result;
    result.lower = std::max(0.0, p.p_star_w - *half);
    result.upper = p.p_star_w + *half;
    return result;
}

Quantity curvature(const UnitFit& fit) {
    const auto key = "curvature_per_w";
    const Bounds& bounds = fit.c_bounds;
    if (fit.curvature_source == CurvatureSource::bounded) {
        Quantity result = known(key, "1/W", bounds.middle(), bounds.middle(), Kind::bracket,
                                say(phrase("unit", "bounded by common practice, not fitted: that takes three loads that differ enough")));
        result.value.reset();
        return result;
    }
    const std::optional<double> half = half_width_along(*fit.parameters, {0, 0, 1}, fit.options.coverage);
    const Phrase words = fit.curvature_source == CurvatureSource::fitted
                             ? phrase("unit", "fitted: the drains narrow it further than common practice")
                             : phrase("unit", "fitted: the drains contradict the bounds of common practice, which were dropped");
    return known(key, "1/W", fit.parameters->c_per_w, half, Kind::measured, joined(say(words), half ? Message() : no_interval(*fit.parameters)));
}

Message sentence_of(const UnitFit& fit) {
    const Message energy = say_quantity(fit.deliverable_at_no_time_cost_wh), draw = say_quantity(fit.no_load_draw_w);
    Message text =
        fit.no_load_draw_w.kind == Kind::not_known
            ? say_count(fit.used_drains,
                        phrases("unit",
                                "From %n drains: %1 deliverable before its own consumption, less %2 for each hour that the output is on "
                                "(%3).",
                                "From %n drain: %1 deliverable before its own consumption, less %2 for each hour that the output is on "
                                "(%3)."),
                        energy, draw, fit.no_load_draw_w.reason)
            : say_count(fit.used_drains,
                        phrases("unit", "From %n drains: %1 deliverable before its own consumption, less %2 for each hour that the output is on.",
                                "From %n drain: %1 deliverable before its own consumption, less %2 for each hour that the output is on."),
                        energy, draw);
    if (fit.widening > 1)
        text +=
            " " + say(phrase("unit", "The drains differ from this by %1 times what their uncertainties allow; the intervals are widened for that."),
                      say_number(std::sqrt(fit.chi_square / static_cast<double>(fit.degrees_of_freedom)), 1));
    return text;
}

} // namespace

bool run_times_differ(const std::vector<DrainSummary>& used) {
    if (used.size() < 2) return false;
    const auto [shortest, longest] = std::ranges::minmax_element(used, {}, &DrainSummary::hours);
    return longest->hours > run_time_ratio * shortest->hours;
}

void put_into_words(const Unit& unit, const Message& failure, UnitFit& fit) {
    if (!fit.parameters) {
        const Message reason = why_not_known(unit, failure, fit);
        fit.deliverable_at_no_time_cost_wh = not_known("deliverable_at_no_time_cost_wh", "Wh", reason);
        fit.no_load_draw_w = not_known("no_load_draw_w", "W", reason);
        fit.no_load_endurance_h = not_known("no_load_endurance_h", "h", reason);
        fit.curvature_per_w = not_known("curvature_per_w", "1/W", reason);
        fit.sentence = say(phrase("unit", "The no-load draw and the energy before own consumption are not known: %1."), reason);
        return;
    }
    const UnitParameters& p = *fit.parameters;
    const std::optional<double> half = half_width_along(p, {1, 0, 0}, fit.options.coverage);
    fit.deliverable_at_no_time_cost_wh = known("deliverable_at_no_time_cost_wh", "Wh", p.e_star_wh, half, Kind::projected,
                                               joined(say_count(fit.used_drains, phrases("unit", "the line through %n drains, at a run time of 0 h",
                                                                                         "the line through %n drain, at a run time of 0 h")),
                                                      half ? Message() : no_interval(p)));
    fit.no_load_draw_w = no_load_draw(fit);
    fit.no_load_endurance_h = endurance(fit);
    fit.curvature_per_w = curvature(fit);
    fit.sentence = sentence_of(fit);
}

} // namespace ullage
