// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/own_draw.h"

#include "base/quantity.h"
#include "gauge/drain_series.h"
#include "gauge/feasibility.h"
#include "gauge/share_bounds.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace ullage {
namespace {

struct Box {
    double most_wh = 0;                 ///< that a battery of this label holds
    double delivered_wh = 0, limit = 0; ///< limit of the meter, relative
    double hours = 0;                   ///< least time with the output on
    double most_used = 1;               ///< share of the content, at most
    bool by_gauge = false;

    [[nodiscard]] double least_delivered_wh() const { return delivered_wh * (1 - limit); }
    [[nodiscard]] double most_draw_w() const { return std::max(0.0, (most_used * most_wh - least_delivered_wh()) / hours); }
};

/// What energy alone allows, or why it allows nothing to be said.
Result<Box> box_of(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    const auto refuse = [](const Message& reason) { return Error{Failure::refused, reason, {}, {}}; };
    if (record.run.kind != RunKind::drain)
        return refuse(say(phrase("gauge", "a %1 run does not tell losses from delivered energy"), say_run_kind(record.run.kind)) +
                      say(phrase("advice", "; make a drain")));
    if (!record.unit.rated_energy_wh) return refuse(say(phrase("gauge", "the rated energy of the unit is not stated")));
    if (!record.meter) return refuse(say(phrase("gauge", "no meter is stated")));
    const auto limit_percent = error_limit_percent(*record.meter);
    if (!limit_percent) return refuse(say(phrase("gauge", "the error limit of the meter is not stated")));
    if (energy.track.missing_inside || (energy.from_full_to_cut_off && energy.track.energy_may_be_missing))
        return refuse(energy.track.missing_reason);
    if (!energy.track.usable() || energy.track.total_wh() <= 0)
        return refuse(say(phrase("gauge", "nothing was delivered between two register readings")));
    Box box;
    box.limit = *limit_percent / 100;
    if (energy.from_full_to_cut_off) {
        const Quantity on_h = output_on_hours(energy);
        if (!on_h.value) return refuse(on_h.reason);
        box.delivered_wh = energy.track.total_wh();
        box.hours = on_h.lower.value_or(*on_h.value);
    } else {
        const std::vector<PairedPoint>& points = energy.points;
        if (points.size() < 2) return refuse(say(phrase("gauge", "the gauge and the register have not been read together twice")));
        const DrainSeries series = drain_series(record, energy, 2);
        box.delivered_wh = series.delivered_wh.back() - series.delivered_wh.front();
        box.hours = series.on_hours.back() - series.on_hours.front();
        const double fall_pt = points.front().gauge_percent - points.back().gauge_percent;
        if (fall_pt <= 0) return refuse(say(phrase("gauge", "the gauge has not fallen")));
        box.most_used = std::min(1.0, (fall_pt + record.unit.gauge_step_percent + charge_for_energy_pt) / 100);
        box.by_gauge = true;
    }
    if (box.hours <= 0) return refuse(say(phrase("gauge", "no time passed with the output on")));
    box.most_wh = most_held_wh(record.unit, box.delivered_wh / box.most_used, options).value_or(0);
    return box;
}

bool worth_printing(const Quantity& fitted, double least, double most) {
    if (!fitted.value || !fitted.lower || !fitted.upper) return false;
    return *fitted.value >= least && *fitted.value <= most && *fitted.upper - *fitted.lower <= 2 * most_printed_share * *fitted.value;
}

/// The fit's value with what a gauge that is not quite linear would change.
Quantity with_shape(Quantity fitted, double shape) {
    if (!fitted.value || !fitted.lower || !fitted.upper) return fitted;
    fitted.lower = *fitted.value - std::hypot(*fitted.value - *fitted.lower, shape);
    fitted.upper = *fitted.value + std::hypot(*fitted.upper - *fitted.value, shape);
    return fitted;
}

Quantity cut_to(Quantity fitted, double least, double most) {
    fitted.lower = std::clamp(*fitted.lower, least, *fitted.value);
    fitted.upper = std::clamp(*fitted.upper, *fitted.value, most);
    return fitted;
}

Quantity box_bracket(std::string key, std::string unit, double low, double high, const Message& reason) {
    Quantity result = known(std::move(key), std::move(unit), (low + high) / 2, std::nullopt, Kind::bracket, reason);
    result.lower = low;
    result.upper = high;
    return result;
}

Message box_reason(const Box& box, const LossFit& fit) {
    std::vector<Message> clauses{
        say(box.by_gauge ? phrase("gauge", "from energy alone: a battery of this label holds at most %1, if the gauge is right over this run")
                         : phrase("gauge", "from energy alone: a battery of this label holds at most %1"),
            say_energy(box.most_wh))};
    if (!fit.doubt.empty()) clauses.push_back(say(phrase("gauge", "not by this run's own fit, as %1"), fit.doubt));
    else if (fit.known()) clauses.push_back(say(phrase("gauge", "this run's own fit is wider than half its value or outside of that")));
    else if (!fit.no_load_draw_w.reason.empty()) clauses.push_back(say(phrase("gauge", "not sharper, as %1"), fit.no_load_draw_w.reason));
    return say_joined(clauses, "; ");
}

/// Without a box: the fit where its interval is worth printing or it has none to print.
Quantity fit_alone(const Quantity& fitted, const LossFit& fit, const Message& box_words) {
    if (!fitted.value) return fitted;
    if (!fit.doubt.empty()) return not_known(fitted.key, fitted.unit, fit.doubt);
    if (!fitted.lower || worth_printing(fitted, 0, std::numeric_limits<double>::infinity())) return fitted;
    return not_known(fitted.key, fitted.unit, say(phrase("gauge", "this run's own fit is wider than half its value, and %1"), box_words));
}

} // namespace

Quantity own_draw_bracket(const RunRecord& record, const EnergyAnalysis& energy, const LossFit& fit, const MeasureOptions& options) {
    const Quantity fitted = with_shape(fit.no_load_draw_w, fit.shape_draw_w);
    const Result<Box> box = box_of(record, energy, options);
    if (!box) return fit_alone(fitted, fit, box.error().what);
    const double most_w = box.value().most_draw_w();
    if (fit.doubt.empty() && worth_printing(fitted, 0, most_w)) return cut_to(fitted, 0, most_w);
    return box_bracket("no_load_draw_w", "W", 0, most_w, box_reason(box.value(), fit));
}

Quantity own_energy_bracket(const RunRecord& record, const EnergyAnalysis& energy, const LossFit& fit, const MeasureOptions& options) {
    const Quantity fitted = with_shape(fit.zero_time_energy_wh, fit.shape_energy_wh);
    const Result<Box> box = box_of(record, energy, options);
    if (!box) return fit_alone(fitted, fit, box.error().what);
    const double least_wh = box.value().least_delivered_wh() / box.value().most_used, most_wh = box.value().most_wh * (1 + box.value().limit);
    if (fit.doubt.empty() && worth_printing(fitted, least_wh, most_wh)) return cut_to(fitted, least_wh, most_wh);
    return box_bracket("zero_time_energy_wh", "Wh", least_wh, most_wh, box_reason(box.value(), fit));
}

Message own_draw_sentence(const Quantity& own_draw_w, const Quantity& own_energy_wh, const LossFit& fit) {
    if (own_draw_w.kind == Kind::bracket)
        return say(phrase("gauge", "The unit itself takes at most %1 (seen from the socket): %2."),
                   say_quantity(known("no_load_draw_w", "W", *own_draw_w.upper, std::nullopt, Kind::measured), 1), own_draw_w.reason);
    if (!own_draw_w.value) {
        if (!fit.known()) return fit.sentence;
        return say(phrase("gauge", "What the unit itself takes is not known: %1."), own_draw_w.reason);
    }
    return say(phrase("gauge",
                      "If the gauge is linear in stored energy, the unit itself draws %1 (seen from the socket) and would deliver %2 if it took "
                      "nothing for itself."),
               say_quantity(own_draw_w), say_quantity(own_energy_wh, 0));
}

} // namespace ullage
