// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/gauge_drift_words.h"

#include "base/number.h"
#include "base/quantity.h"
#include "unit/advice.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr auto shift_key = "gauge_curve_shift_pt";

std::string run_text(const UnitFit& fit, std::size_t drain) { return "run " + std::to_string(fit.drains[drain].run_number); }

std::string runs_text(const UnitFit& fit, const DrainComparison& pair) {
    return "from " + run_text(fit, pair.earlier) + " to " + run_text(fit, pair.later);
}

std::string why_not_known(const UnitFit& fit, const GaugeDrift& drift, std::size_t curves) {
    if (curves >= 2 && drift.like_pairs > 0)
        return "of " + std::to_string(curves) + " full drains those at like loads were read at too few common depths" + std::string(gauge_advice);
    if (curves >= 2)
        return "no two of the " + std::to_string(curves) +
               " full drains had like loads (mean loads within a factor of 1.25, in like order) at temperatures within 8 °C" +
               std::string(repeat_advice);
    std::string text = "it takes two drains from full to cut-off with the gauge read at six depths or more; so far: " + std::to_string(curves);
    for (const DrainSummary& drain : fit.drains)
        if (drain.used && drain.kind == RunKind::drain && !drain.gauge_curve)
            text += "; of run " + std::to_string(drain.run_number) + ", " + drain.no_curve_reason;
    return text;
}

/// The energy's part: "E* falls (−0.31 ± 0.12 Wh a day)".
std::string energy_drift_text(const UnitFit& fit, const Drift& energy, const DrainComparison& lead) {
    const bool over_all = energy.statistic.has_value();
    const Quantity& change = over_all ? energy.change_wh_per_day : lead.energy.change_percent;
    if (!change.value) return "whether E* moves is not known (" + change.reason + ")";
    const bool moves = over_all ? energy.significant : lead.energy.significant;
    const double half = change.half_width().value_or(0);
    const int decimals = half > 0 ? decimals_for(half) : 1;
    const std::string size =
        signed_text(*change.value, decimals) + " ± " + fixed_text(half, decimals) + (over_all ? " Wh a day" : " % " + runs_text(fit, lead));
    return (moves ? *change.value < 0 ? "E* falls (" : "E* rises (" : "E* is unmoved (") + size + ")";
}

std::string test_text(const DrainComparison& pair) {
    return "χ² " + fixed_text(pair.curve.chi_square, 1) + " for " + fixed_text(pair.curve.degrees_of_freedom, 1) + " degrees of freedom, " +
           p_text(pair.adjusted_p);
}

std::string moved_text(const UnitFit& fit, const DrainComparison& pair) {
    return "the gauge's curve moves by " + signed_text(pair.curve.size_pt, 1) + " ± " + fixed_text(pair.curve.half_width_pt, 1) + " pt at " +
           fixed_text(pair.curve.depth_percent, 0) + " % depth " + runs_text(fit, pair) + " (" + test_text(pair) + ")";
}

std::string unmoved_text(const UnitFit& fit, const DrainComparison& pair) {
    return "the gauge's curve is unmoved " + runs_text(fit, pair) + " (" + test_text(pair) + "; a move of " +
           fixed_text(2 * pair.curve.resolution_pt, 1) + " pt would be seen)";
}

std::string capital(std::string text) {
    // Every clause starts with an ASCII letter.
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string verdict_sentence(const UnitFit& fit, const Drift& energy, const GaugeDrift& drift) {
    if (!drift.lead) return "Whether the gauge drifts from run to run is not known: " + drift.reason + ".";
    const DrainComparison& lead = drift.comparisons[*drift.lead];
    const std::string e = energy_drift_text(fit, energy, lead);
    const bool falls = energy.statistic ? energy.change_wh_per_day.value.value_or(0) < 0 : lead.energy.change_percent.value.value_or(0) < 0;
    switch (drift.verdict) {
    case DriftVerdict::energy_moves:
        return capital(e) + ", " + unmoved_text(fit, lead) + (falls ? ": ageing, not the gauge." : ": warmer or fuller, not the gauge.");
    case DriftVerdict::gauge_drifts: return capital(moved_text(fit, lead)) + ", " + e + ": the gauge drifts.";
    case DriftVerdict::both_move:
        return capital(e) + " and " + moved_text(fit, lead) +
               (falls ? ": the unit ages, and its gauge drifts." : ": the energy moves, and the gauge drifts.");
    case DriftVerdict::nothing_moves: return capital(e) + ", and " + unmoved_text(fit, lead) + ".";
    case DriftVerdict::not_known: break;
    }
    return {};
}

} // namespace

std::string p_text(double p_value) { return p_value < 1e-4 ? "p < 0.0001" : "p " + fixed_text(p_value, p_value < 0.01 ? 4 : 2); }

std::string wh_per_point_sentence(const UnitFit& fit, const DrainComparison& pair) {
    std::string text = "Wh per gauge point " + runs_text(fit, pair) + ": " + fixed_text(pair.earlier_wh_per_point, 2) + " to " +
                       fixed_text(pair.later_wh_per_point, 2);
    const Quantity& change = pair.wh_per_point.change_percent;
    if (!change.value || !change.half_width()) return text + "; whether that is more than chance is not known (" + change.reason + ").";
    const int decimals = decimals_for(*change.half_width());
    return text + ", " + signed_text(*change.value, decimals) + " ± " + fixed_text(*change.half_width(), decimals) + " % corrected for the loads (" +
           p_text(*pair.wh_per_point.p_value) + "): " + (pair.wh_per_point.significant ? "more than chance." : "no more than chance.");
}

void put_into_words(const UnitFit& fit, const Drift& energy, std::size_t curves, GaugeDrift& drift) {
    if (!drift.lead) {
        drift.reason = why_not_known(fit, drift, curves);
        drift.shift_pt = not_known(shift_key, "pt", drift.reason);
    } else {
        const DrainComparison& lead = drift.comparisons[*drift.lead];
        drift.shift_pt = known(shift_key, "pt", lead.curve.size_pt, lead.curve.half_width_pt, Kind::measured,
                               "where the curves " + runs_text(fit, lead) + " differ most, at " + fixed_text(lead.curve.depth_percent, 0) +
                                   " % of the share delivered");
    }
    drift.sentence = verdict_sentence(fit, energy, drift);
}

} // namespace ullage
