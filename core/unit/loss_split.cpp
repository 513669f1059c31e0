// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/loss_split.h"

#include "base/number.h"
#include "base/quantity.h"
#include "gauge/drain_series.h"
#include "unit/advice.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

std::string why_no_split(const RunRecord& record, const EnergyAnalysis& energy) {
    if (record.run.kind != RunKind::drain && record.run.kind != RunKind::no_load_drain)
        return "a " + std::string(run_kind_text(record.run.kind)) + " run does not tell it" + std::string(drain_advice);
    if (record.unit.rated_energy_wh.value_or(0) <= 0) return "the rated energy of the unit is not stated";
    if (!record.run.started_full.value_or(false)) return "the run is not noted as started full";
    if (record.run.end != RunEnd::cut_off_seen && record.run.end != RunEnd::found_off)
        return "the run did not go to cut-off, so what stayed inside is not known";
    if (energy.delivered_wh.kind == Kind::not_known) return energy.delivered_wh.reason;
    if (energy.delivered_wh.kind == Kind::at_least || !energy.delivered_wh.value)
        return "not all delivered energy was read: " + energy.delivered_wh.reason;
    return {};
}

/// P*·T; both are 0 or more.
Quantity taken(const Quantity& draw_w, const Quantity& on_h) {
    const auto key = "no_load_taken_wh";
    if (draw_w.kind == Kind::not_known || !draw_w.value) return not_known(key, "Wh", draw_w.reason);
    // A duration that is a bracket has no value; its middle stands for it.
    std::optional<double> hours = on_h.value;
    if (!hours && on_h.lower && on_h.upper) hours = (*on_h.lower + *on_h.upper) / 2;
    if (!hours) return not_known(key, "Wh", on_h.reason);
    Quantity result = known(key, "Wh", std::max(0.0, *draw_w.value) * *hours, std::nullopt, Kind::measured, draw_w.reason);
    if (draw_w.lower && draw_w.upper) {
        result.lower = std::max(0.0, *draw_w.lower) * on_h.lower.value_or(*hours);
        result.upper = *draw_w.upper * on_h.upper.value_or(*hours);
    }
    return result;
}

Quantity rest_of(const Quantity& undelivered, const Quantity& taken) {
    if (!taken.value) return not_known("rest_wh", "Wh", taken.reason);
    Quantity result = known("rest_wh", "Wh", *undelivered.value - *taken.value, std::nullopt, Kind::measured,
                            "conversion or missing capacity, not separable from the socket");
    if (undelivered.lower && undelivered.upper && taken.lower && taken.upper) {
        result.lower = *undelivered.lower - *taken.upper;
        result.upper = *undelivered.upper - *taken.lower;
    }
    return result;
}

std::string hours_text(const Quantity& on_h) {
    if (on_h.value) return fixed_text(*on_h.value, 1) + " h";
    if (on_h.lower && on_h.upper) return fixed_text(*on_h.lower, 1) + " to " + fixed_text(*on_h.upper, 1) + " h";
    return "its run time";
}

std::string rest_text(const Quantity& rest) {
    const bool none_shown = rest.lower && rest.upper && *rest.lower <= 0 && *rest.upper >= 0;
    if (none_shown) return "rest " + quantity_text(rest, 0) + ": none is shown beyond the uncertainty";
    if (*rest.value < 0)
        return "together " + energy_text(-*rest.value) + " more than rated: the unit holds more than its label says, or the draw is overestimated";
    return "rest " + quantity_text(rest, 0) + ": conversion or missing capacity, not separable from the socket";
}

std::string sentence_of(const LossSplit& split, const RunRecord& record, const EnergyAnalysis& energy) {
    std::string text = "Of " + energy_text(*record.unit.rated_energy_wh) + " rated: " + quantity_text(energy.delivered_wh, 0) + " delivered, ";
    if (!split.rest_wh.value)
        return text + quantity_text(split.undelivered_wh, 0) + " not: no-load draw over " + hours_text(output_on_hours(energy)) +
               ", conversion and missing capacity, which cannot be told apart as the no-load draw is not known (" + split.no_load_taken_wh.reason +
               ").";
    text += "about " + quantity_text(split.no_load_taken_wh, 0) + " no-load draw over " + hours_text(output_on_hours(energy));
    if (split.draw_from_this_run) text += " (if the gauge is linear in stored energy)";
    return text + ", " + rest_text(split.rest_wh) + ".";
}

} // namespace

LossSplit split_losses(const RunRecord& record, const RunAnalysis& analysis, const UnitFit& unit_fit) {
    LossSplit split;
    const EnergyAnalysis& energy = analysis.energy;
    if (const std::string reason = why_no_split(record, energy); !reason.empty()) {
        split.undelivered_wh = not_known("undelivered_wh", "Wh", reason);
        split.no_load_taken_wh = not_known("no_load_taken_wh", "Wh", reason);
        split.rest_wh = not_known("rest_wh", "Wh", reason);
        split.sentence = "Where the rated energy went is not known: " + reason + ".";
        return split;
    }
    const double rated_wh = *record.unit.rated_energy_wh;
    split.undelivered_wh = known("undelivered_wh", "Wh", rated_wh - *energy.delivered_wh.value, std::nullopt, energy.delivered_wh.kind,
                                 "rated energy (a claim) less delivered energy");
    if (energy.delivered_wh.upper) split.undelivered_wh.lower = rated_wh - *energy.delivered_wh.upper;
    if (energy.delivered_wh.lower) split.undelivered_wh.upper = rated_wh - *energy.delivered_wh.lower;
    const bool unit_knows = unit_fit.no_load_draw_w.value.has_value();
    split.draw_from_this_run = !unit_knows && analysis.gauge.losses.known();
    split.no_load_taken_wh =
        taken(split.draw_from_this_run ? analysis.gauge.losses.no_load_draw_w : unit_fit.no_load_draw_w, output_on_hours(energy));
    split.rest_wh = rest_of(split.undelivered_wh, split.no_load_taken_wh);
    split.sentence = sentence_of(split, record, energy);
    return split;
}

} // namespace ullage
