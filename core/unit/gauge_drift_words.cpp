// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/gauge_drift_words.h"

#include "base/number.h"
#include "base/quantity.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

constexpr auto shift_key = "gauge_curve_shift_pt";

Message run_of(const UnitFit& fit, std::size_t drain) { return say_number(fit.drains[drain].run_number); }

Message why_not_known(const UnitFit& fit, const GaugeDrift& drift, std::size_t curves) {
    if (curves >= 2 && drift.like_pairs > 0)
        return say(phrase("unit", "of %1 full drains those at like loads were read at too few common depths"), say_number(curves)) +
               say(phrase("advice", ": read the gauge more often"));
    if (curves >= 2)
        return say(phrase("unit", "no two of the %1 full drains had like loads (mean loads within a factor of %2, in like order) at temperatures "
                                  "within 8 °C"),
                   say_number(curves), say_digits("1.25")) +
               say(phrase("advice", ": repeat an early drain"));
    std::vector<Message> parts{
        say(phrase("unit", "it takes two drains from full to cut-off with the gauge read at six depths or more; so far: %1"), say_number(curves))};
    for (const DrainSummary& drain : fit.drains)
        if (drain.used && drain.kind == RunKind::drain && !drain.gauge_curve)
            parts.push_back(say(phrase("unit", "of run %1, %2"), say_number(drain.run_number), drain.no_curve_reason));
    return say_joined(parts, "; ");
}

/// The energy's part: "E* falls (−0.31 ± 0.12 Wh a day)".
Message energy_drift_clause(const UnitFit& fit, const Drift& energy, const DrainComparison& lead) {
    const bool over_all = energy.statistic.has_value();
    const Quantity& change = over_all ? energy.change_wh_per_day : lead.energy.change_percent;
    if (!change.value) return say(phrase("unit", "whether E* moves is not known (%1)"), change.reason);
    const bool moves = over_all ? energy.significant : lead.energy.significant;
    const double half = change.half_width().value_or(0);
    const int decimals = half > 0 ? decimals_for(half) : 1;
    const Message size = say_digits(signed_text(*change.value, decimals) + " ± " + fixed_text(half, decimals));
    if (over_all)
        return say(!moves              ? phrase("unit", "E* is unmoved (%1 Wh a day)")
                   : *change.value < 0 ? phrase("unit", "E* falls (%1 Wh a day)")
                                       : phrase("unit", "E* rises (%1 Wh a day)"),
                   size);
    return say(!moves              ? phrase("unit", "E* is unmoved (%1 % from run %2 to run %3)")
               : *change.value < 0 ? phrase("unit", "E* falls (%1 % from run %2 to run %3)")
                                   : phrase("unit", "E* rises (%1 % from run %2 to run %3)"),
               size, run_of(fit, lead.earlier), run_of(fit, lead.later));
}

Message say_test(const DrainComparison& pair) {
    return say(phrase("unit", "χ² %1 for %2 degrees of freedom, %3"), say_number(pair.curve.chi_square, 1),
               say_number(pair.curve.degrees_of_freedom, 1), say_p(pair.adjusted_p));
}

Message moved_clause(const UnitFit& fit, const DrainComparison& pair) {
    return say(phrase("unit", "the gauge's curve moves by %1 pt at %2 % depth from run %3 to run %4 (%5)"),
               say_digits(signed_text(pair.curve.size_pt, 1) + " ± " + fixed_text(pair.curve.half_width_pt, 1)),
               say_number(pair.curve.depth_percent, 0), run_of(fit, pair.earlier), run_of(fit, pair.later), say_test(pair));
}

Message unmoved_clause(const UnitFit& fit, const DrainComparison& pair) {
    return say(phrase("unit", "the gauge's curve is unmoved from run %1 to run %2 (%3; a move of %4 pt would be seen)"), run_of(fit, pair.earlier),
               run_of(fit, pair.later), say_test(pair), say_number(2 * pair.curve.resolution_pt, 1));
}

Message verdict_sentence(const UnitFit& fit, const Drift& energy, const GaugeDrift& drift) {
    if (!drift.lead) return say(phrase("unit", "Whether the gauge drifts from run to run is not known: %1."), drift.reason);
    const DrainComparison& lead = drift.comparisons[*drift.lead];
    const Message e = energy_drift_clause(fit, energy, lead);
    const bool falls = energy.statistic ? energy.change_wh_per_day.value.value_or(0) < 0 : lead.energy.change_percent.value.value_or(0) < 0;
    switch (drift.verdict) {
    case DriftVerdict::energy_moves:
        return say(falls ? phrase("unit", "%1, %2: ageing, not the gauge.") : phrase("unit", "%1, %2: warmer or fuller, not the gauge."),
                   begin_sentence(e), unmoved_clause(fit, lead));
    case DriftVerdict::gauge_drifts: return say(phrase("unit", "%1, %2: the gauge drifts."), begin_sentence(moved_clause(fit, lead)), e);
    case DriftVerdict::both_move:
        return say(falls ? phrase("unit", "%1 and %2: the unit ages, and its gauge drifts.")
                         : phrase("unit", "%1 and %2: the energy moves, and the gauge drifts."),
                   begin_sentence(e), moved_clause(fit, lead));
    case DriftVerdict::nothing_moves: return say(phrase("unit", "%1, and %2."), begin_sentence(e), unmoved_clause(fit, lead));
    case DriftVerdict::not_known: break;
    }
    return {};
}

} // namespace

Message say_p(double p_value) { return say_digits(p_value < 1e-4 ? "p < 0.0001" : "p " + fixed_text(p_value, p_value < 0.01 ? 4 : 2)); }

Message wh_per_point_sentence(const UnitFit& fit, const DrainComparison& pair) {
    std::vector<Message> said{run_of(fit, pair.earlier), run_of(fit, pair.later), say_number(pair.earlier_wh_per_point, 2),
                              say_number(pair.later_wh_per_point, 2)};
    const Quantity& change = pair.wh_per_point.change_percent;
    if (!change.value || !change.half_width()) {
        said.emplace_back(change.reason);
        return say(phrase("unit", "Wh per gauge point from run %1 to run %2: %3 to %4; whether that is more than chance is not known (%5)."),
                   std::move(said));
    }
    const int decimals = decimals_for(*change.half_width());
    said.push_back(say_digits(signed_text(*change.value, decimals) + " ± " + fixed_text(*change.half_width(), decimals)));
    said.push_back(say_p(*pair.wh_per_point.p_value));
    return say(pair.wh_per_point.significant
                   ? phrase("unit", "Wh per gauge point from run %1 to run %2: %3 to %4, %5 % corrected for the loads (%6): more than chance.")
                   : phrase("unit", "Wh per gauge point from run %1 to run %2: %3 to %4, %5 % corrected for the loads (%6): no more than chance."),
               std::move(said));
}

void put_into_words(const UnitFit& fit, const Drift& energy, std::size_t curves, GaugeDrift& drift) {
    if (!drift.lead) {
        drift.reason = why_not_known(fit, drift, curves);
        drift.shift_pt = not_known(shift_key, "pt", drift.reason);
    } else {
        const DrainComparison& lead = drift.comparisons[*drift.lead];
        drift.shift_pt = known(shift_key, "pt", lead.curve.size_pt, lead.curve.half_width_pt, Kind::measured,
                               say(phrase("unit", "where the curves from run %1 to run %2 differ most, at %3 % of the share delivered"),
                                   run_of(fit, lead.earlier), run_of(fit, lead.later), say_number(lead.curve.depth_percent, 0)));
    }
    drift.sentence = verdict_sentence(fit, energy, drift);
}

} // namespace ullage
