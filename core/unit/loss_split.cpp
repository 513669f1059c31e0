// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/loss_split.h"

#include "base/number.h"
#include "base/quantity.h"
#include "gauge/drain_series.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

/// Why the kind of run tells no split; empty when it does.
Message kind_without_split(RunKind kind) {
    switch (kind) {
    case RunKind::drain:
    case RunKind::no_load_drain: break;
    case RunKind::charge: return say(phrase("unit", "a charge run does not tell it"));
    case RunKind::sustained_output: return say(phrase("unit", "a sustained output run does not tell it"));
    case RunKind::peak_output: return say(phrase("unit", "a peak output run does not tell it"));
    case RunKind::standby: return say(phrase("unit", "a standby run does not tell it"));
    }
    return {};
}

Message why_no_split(const RunRecord& record, const EnergyAnalysis& energy) {
    if (const Message reason = kind_without_split(record.run.kind); !reason.empty()) return reason + say(phrase("advice", "; make a drain"));
    if (record.unit.rated_energy_wh.value_or(0) <= 0) return say(phrase("unit", "the rated energy of the unit is not stated"));
    if (!record.run.started_full.value_or(false)) return say(phrase("unit", "the run is not noted as started full"));
    if (record.run.end != RunEnd::cut_off_seen && record.run.end != RunEnd::found_off)
        return say(phrase("unit", "the run did not go to cut-off, so what stayed inside is not known"));
    if (energy.delivered_wh.kind == Kind::not_known) return energy.delivered_wh.reason;
    if (energy.delivered_wh.kind == Kind::at_least || !energy.delivered_wh.value)
        return say(phrase("unit", "not all delivered energy was read: %1"), energy.delivered_wh.reason);
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
                            say(phrase("unit", "conversion or missing capacity, not separable from the socket")));
    if (undelivered.lower && undelivered.upper && taken.lower && taken.upper) {
        result.lower = *undelivered.lower - *taken.upper;
        result.upper = *undelivered.upper - *taken.lower;
    }
    return result;
}

Message say_hours(const Quantity& on_h) {
    if (on_h.value) return say_measure(*on_h.value, 1, "h");
    if (on_h.lower && on_h.upper) return say(phrase("unit", "%1 to %2 h"), say_number(*on_h.lower, 1), say_number(*on_h.upper, 1));
    return say(phrase("unit", "its run time"));
}

Message rest_clause(const Quantity& rest) {
    const bool none_shown = rest.lower && rest.upper && *rest.lower <= 0 && *rest.upper >= 0;
    if (none_shown) return say(phrase("unit", "rest %1: none is shown beyond the uncertainty"), say_quantity(rest, 0));
    if (*rest.value < 0)
        return say(phrase("unit", "together %1 more than rated: the unit holds more than its label says, or the draw is overestimated"),
                   say_energy(-*rest.value));
    return say(phrase("unit", "rest %1: conversion or missing capacity, not separable from the socket"), say_quantity(rest, 0));
}

Message sentence_of(const LossSplit& split, const RunRecord& record, const EnergyAnalysis& energy) {
    const Message rated = say_energy(*record.unit.rated_energy_wh), delivered = say_quantity(energy.delivered_wh, 0);
    const Message hours = say_hours(output_on_hours(energy));
    if (!split.rest_wh.value)
        return say(phrase("unit", "Of %1 rated: %2 delivered, %3 not: no-load draw over %4, conversion and missing capacity, which cannot be told "
                                  "apart as the no-load draw is not known (%5)."),
                   rated, delivered, say_quantity(split.undelivered_wh, 0), hours, split.no_load_taken_wh.reason);
    return say(split.draw_from_this_run
                   ? phrase("unit", "Of %1 rated: %2 delivered, about %3 no-load draw over %4 (if the gauge is linear in stored energy), %5.")
                   : phrase("unit", "Of %1 rated: %2 delivered, about %3 no-load draw over %4, %5."),
               rated, delivered, say_quantity(split.no_load_taken_wh, 0), hours, rest_clause(split.rest_wh));
}

} // namespace

LossSplit split_losses(const RunRecord& record, const RunAnalysis& analysis, const UnitFit& unit_fit) {
    LossSplit split;
    const EnergyAnalysis& energy = analysis.energy;
    if (const Message reason = why_no_split(record, energy); !reason.empty()) {
        split.undelivered_wh = not_known("undelivered_wh", "Wh", reason);
        split.no_load_taken_wh = not_known("no_load_taken_wh", "Wh", reason);
        split.rest_wh = not_known("rest_wh", "Wh", reason);
        split.sentence = say(phrase("unit", "Where the rated energy went is not known: %1."), reason);
        return split;
    }
    const double rated_wh = *record.unit.rated_energy_wh;
    split.undelivered_wh = known("undelivered_wh", "Wh", rated_wh - *energy.delivered_wh.value, std::nullopt, energy.delivered_wh.kind,
                                 say(phrase("unit", "rated energy (a claim) less delivered energy")));
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
