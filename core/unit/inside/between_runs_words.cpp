// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/inside/between_runs_words.h"
#include "unit/advice.h"

#include "base/number.h"
#include "unit/next_run.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

std::string drains_text(std::size_t count) { return count_text(static_cast<long>(count), "drain", "drains"); }

std::string no_interval(const UnitParameters& parameters) {
    for (const UnitParameters::Gain& gain : parameters.gains)
        if (!gain.limit_known) return "no interval: the error limit of " + gain.meter_name + " is not stated";
    return {};
}

std::string joined(const std::string& first, const std::string& second) {
    return first.empty() || second.empty() ? first + second : first + "; " + second;
}

std::string why_not_known(const Unit& unit, const std::string& failure, const UnitFit& fit) {
    if (!failure.empty()) return failure;
    if (fit.used_drains == 0) return "no drain from full to cut-off has all its energy read" + std::string(advice_mark) + "one";
    const std::optional<NextRun> next = propose_next_run(fit, unit);
    const std::string remedy = std::string(advice_mark) + (next ? "a drain near " + fixed_text(next->load_w, 0) + " W"
                                                                : "a drain at less than half or more than twice that load");
    const auto first = std::ranges::find_if(fit.drains, &DrainSummary::used);
    if (fit.used_drains == 1) return "there is one drain only, at " + fixed_text(first->mean_load_w, 0) + " W" + remedy;
    double shortest_h = first->hours, longest_h = first->hours;
    for (const DrainSummary& drain : fit.drains) {
        if (!drain.used) continue;
        shortest_h = std::min(shortest_h, drain.hours);
        longest_h = std::max(longest_h, drain.hours);
    }
    return "the drains are too alike (" + fixed_text(shortest_h, 1) + " to " + fixed_text(longest_h, 1) + " h)" + remedy;
}

/// E*/P* by its reciprocal, which is nearly linear in the uncertain P*; without an upper end when P* may be 0.
Quantity endurance(const UnitFit& fit) {
    const UnitParameters& p = *fit.parameters;
    const auto key = "no_load_endurance_h";
    const double rate = p.p_star_w / p.e_star_wh;
    const std::optional<double> half = half_width_along(p, {-rate / p.e_star_wh, 1 / p.e_star_wh, 0}, fit.options.coverage);
    if (rate <= 0 && (!half || rate + *half <= 0)) return not_known(key, "h", "the drains show no draw above 0 W");
    if (!half) return known(key, "h", 1 / rate, std::nullopt, Kind::projected, no_interval(p));
    Quantity result = known(key, "h", 0, std::nullopt, Kind::projected, "from E*/P*; a gain that all drains share cancels");
    result.lower = 1 / (rate + *half);
    if (rate - *half > 0) {
        result.value = 1 / rate;
        result.upper = 1 / (rate - *half);
        return result;
    }
    result.value = rate > 0 ? std::optional(1 / rate) : std::nullopt;
    result.kind = Kind::at_least;
    result.reason = "the draw may be 0 W within its uncertainty";
    return result;
}

/// Negative draws do not exist, so neither value nor interval goes below 0.
Quantity no_load_draw(const UnitFit& fit) {
    const UnitParameters& p = *fit.parameters;
    const std::optional<double> half = half_width_along(p, {0, 1, 0}, fit.options.coverage);
    if (half && p.p_star_w + *half < 0)
        return not_known("no_load_draw_w", "W",
                         "the drains would need a draw below 0 W (" + with_interval_text(p.p_star_w, half, 1) +
                             " W): one of them is wrong, or the unit changed between them");
    Quantity result = known("no_load_draw_w", "W", std::max(0.0, p.p_star_w), std::nullopt, Kind::measured,
                            joined("seen from the socket, from the run times of " + drains_text(fit.used_drains), half ? "" : no_interval(p)));
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
                                "bounded by common practice, not fitted: that takes three loads that differ enough");
        result.value.reset();
        return result;
    }
    const std::optional<double> half = half_width_along(*fit.parameters, {0, 0, 1}, fit.options.coverage);
    std::string words = fit.curvature_source == CurvatureSource::fitted
                            ? "fitted: the drains narrow it further than common practice"
                            : "fitted: the drains contradict the bounds of common practice, which were dropped";
    return known(key, "1/W", fit.parameters->c_per_w, half, Kind::measured, joined(words, half ? "" : no_interval(*fit.parameters)));
}

std::string sentence_of(const UnitFit& fit) {
    std::string text = "From " + drains_text(fit.used_drains) + ": " + quantity_text(fit.deliverable_at_no_time_cost_wh) +
                       " deliverable before its own consumption, less " + quantity_text(fit.no_load_draw_w) + " for each hour that the output is on";
    if (fit.no_load_draw_w.kind == Kind::not_known) text += " (" + fit.no_load_draw_w.reason + ")";
    text += ".";
    if (fit.widening > 1)
        text += " The drains differ from this by " + fixed_text(std::sqrt(fit.chi_square / static_cast<double>(fit.degrees_of_freedom)), 1) +
                " times what their uncertainties allow; the intervals are widened for that.";
    return text;
}

} // namespace

bool run_times_differ(const std::vector<DrainSummary>& used) {
    if (used.size() < 2) return false;
    const auto [shortest, longest] = std::ranges::minmax_element(used, {}, &DrainSummary::hours);
    return longest->hours > run_time_ratio * shortest->hours;
}

void put_into_words(const Unit& unit, const std::string& failure, UnitFit& fit) {
    if (!fit.parameters) {
        const std::string reason = why_not_known(unit, failure, fit);
        fit.deliverable_at_no_time_cost_wh = not_known("deliverable_at_no_time_cost_wh", "Wh", reason);
        fit.no_load_draw_w = not_known("no_load_draw_w", "W", reason);
        fit.no_load_endurance_h = not_known("no_load_endurance_h", "h", reason);
        fit.curvature_per_w = not_known("curvature_per_w", "1/W", reason);
        fit.sentence = "The no-load draw and the energy before own consumption are not known: " + reason + ".";
        return;
    }
    const UnitParameters& p = *fit.parameters;
    const std::optional<double> half = half_width_along(p, {1, 0, 0}, fit.options.coverage);
    fit.deliverable_at_no_time_cost_wh =
        known("deliverable_at_no_time_cost_wh", "Wh", p.e_star_wh, half, Kind::projected,
              joined("the line through " + drains_text(fit.used_drains) + ", at a run time of 0 h", half ? "" : no_interval(p)));
    fit.no_load_draw_w = no_load_draw(fit);
    fit.no_load_endurance_h = endurance(fit);
    fit.curvature_per_w = curvature(fit);
    fit.sentence = sentence_of(fit);
}

} // namespace ullage
