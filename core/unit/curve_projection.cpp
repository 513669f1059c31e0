// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/curve_projection.h"

#include "measure/usable.h"
#include "numerics/distributions.h"
#include "numerics/monte_carlo.h"
#include "unit/usual_draw.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace ullage {
namespace {

constexpr double refuse_beyond = 0.25; ///< relative, of the interval that the depths alone leave

/// First depth at which the gauge, less the leeway between readings where asked for, is at or below a level.
std::optional<double> first_at_or_below(const CurveOverDepth& over, const GaugeCurve& curve, double level, bool with_leeway) {
    for (std::size_t i = 0; i < curve.points.size(); ++i) {
        const double from = over.depths()[i];
        if (curve.points[i].gauge_percent <= level) return from;
        if (i + 1 == curve.points.size()) break;
        const double leeway = with_leeway ? over.leeway_at({i, 0.5}) : 0;
        const double a = curve.points[i].gauge_percent - leeway, b = curve.points[i + 1].gauge_percent - leeway;
        if (a <= level) return from;
        if (b <= level) return from + (a - level) / (a - b) * (over.depths()[i + 1] - from);
    }
    return std::nullopt;
}

/// Last depth at which the gauge, plus the leeway where asked for, is at or above a level; 0 where it never is.
double last_at_or_above(const CurveOverDepth& over, const GaugeCurve& curve, double level, bool with_leeway) {
    for (std::size_t i = curve.points.size(); i-- > 0;) {
        if (curve.points[i].gauge_percent >= level) return over.depths()[i];
        if (i == 0) break;
        const double from = over.depths()[i - 1], to = over.depths()[i];
        const double leeway = with_leeway ? over.leeway_at({i - 1, 0.5}) : 0;
        const double a = curve.points[i - 1].gauge_percent + leeway, b = curve.points[i].gauge_percent + leeway;
        if (b >= level) return to;
        if (a >= level) return from + (a - level) / (a - b) * (to - from);
    }
    return 0;
}

/// What a no-load draw is taken to be.
Banded banded_draw(const UnitFit& fit, const Unit& unit) {
    const Quantity& draw = fit.no_load_draw_w;
    const Bounds usual = usual_no_load_draw(unit);
    if (!draw.value || !draw.lower || !draw.upper) return {usual.middle(), usual.low, usual.high};
    return {std::max(0.0, *draw.value), std::max(0.0, *draw.lower), std::max(0.0, *draw.upper)};
}

/// The depth that a partial drain went through by another run's curve, percent, with what may be missing or too much.
struct Span {
    double percent = 0, below = 0, above = 0;
};

std::optional<Span> span_of(const GaugeCurve& curve, const RunRecord& record, const EnergyAnalysis& energy, double draw_w, double coverage) {
    const double step_pt = record.unit.gauge_step_percent;
    const PairedPoint& a = energy.points.front();
    const PairedPoint& b = energy.points.back();
    const std::optional<DepthInterval> end = depth_at_level(curve, b.gauge_percent, step_pt, draw_w, coverage);
    if (!end) return std::nullopt;
    DepthInterval start{0, 0, 0};
    if (!record.run.started_full.value_or(false) || a.delivered_wh > 0)
        if (const auto found = depth_at_level(curve, a.gauge_percent, step_pt, draw_w, coverage)) start = *found;
    return Span{end->value - start.value, std::hypot(end->value - end->lower, start.upper - start.value),
                std::hypot(end->upper - end->value, start.value - start.lower)};
}

const DrainSummary* curve_before(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& fit) {
    const DrainSummary* latest = nullptr;
    for (const DrainSummary& drain : fit.drains)
        if (drain.used && drain.gauge_curve && drain.run_uuid != record.run.uuid && drain.start_ms < energy.start_ms &&
            (latest == nullptr || drain.start_ms > latest->start_ms))
            latest = &drain;
    return latest;
}

/// Relative half-width of one side: depths as a normal beside register and pairing, the gain as a rectangle.
double side(double depth_half_width, double u_independent, double gain_half_width, double coverage) {
    return half_width_of_sum(gain_half_width, std::hypot(depth_half_width / normal_quantile((1 + coverage) / 2), u_independent), coverage);
}

} // namespace

std::optional<DepthInterval> depth_at_level(const GaugeCurve& curve, double gauge_percent, double step_pt, double no_load_draw_w, double coverage) {
    const CurveOverDepth over(curve, no_load_draw_w);
    const double u_depth_pt = 100 * std::hypot(curve.points[curve.points.size() / 2].u_wh, curve.u_register_wh) / curve.total_wh;
    const double half_pt = half_width_of_sum(step_pt / 2, std::hypot(over.u_reading_pt(), u_depth_pt), coverage);
    const std::optional<double> lower = first_at_or_below(over, curve, gauge_percent + half_pt, true);
    if (!lower) return std::nullopt;
    // Where the gauge was last read no lower than this, it may have shown it up to the cut-off.
    const bool unread_below = curve.points.back().gauge_percent >= gauge_percent - half_pt;
    const double upper = unread_below ? 100 : last_at_or_above(over, curve, gauge_percent - half_pt, true);
    const double last = last_at_or_above(over, curve, gauge_percent, false);
    const double first = first_at_or_below(over, curve, gauge_percent, false).value_or(last);
    const double value = (first + last) / 2;
    return DepthInterval{value, std::min(*lower, value), std::max(upper, value)};
}

std::optional<Quantity> fraction_through_curve(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& fit) {
    const Quantity& own = energy.usable_fraction;
    if (own.kind != Kind::projected || energy.points.size() < 2) return std::nullopt;
    const DrainSummary* before = curve_before(record, energy, fit);
    if (before == nullptr) return std::nullopt;
    const GaugeCurve& curve = *before->gauge_curve;
    const PairedPoint& a = energy.points.front();
    const PairedPoint& b = energy.points.back();
    const Message run = say_number(before->run_number), title = before->title;
    const Message from = say_gauge(a.gauge_percent), to = say_gauge(b.gauge_percent);
    const auto refuse = [&](Message why) { return not_known(own.key, own.unit, std::move(why)); };
    const auto ends_above = [&] { return say(phrase("unit", "the gauge curve of run %1 (%2) ends above %3, where this run ends"), run, title, to); };

    const Banded draw = banded_draw(fit, record.unit);
    const std::optional<Span> span = span_of(curve, record, energy, draw.value, fit.options.coverage);
    if (!span) return refuse(ends_above());
    Span widened = *span;
    for (const double draw_w : {draw.lower, draw.upper}) {
        const std::optional<Span> moved = span_of(curve, record, energy, draw_w, fit.options.coverage);
        if (!moved) return refuse(ends_above());
        widened.below = std::max(widened.below, std::hypot(span->below, span->percent - std::min(moved->percent, span->percent)));
        widened.above = std::max(widened.above, std::hypot(span->above, std::max(moved->percent, span->percent) - span->percent));
    }
    if (span->percent <= 0 || std::max(widened.below, widened.above) > refuse_beyond * span->percent)
        return refuse(
            say(phrase("unit", "the gauge curve of run %1 (%2) is too flat from %3 to %4 to tell how deep this run went"), run, title, from, to));

    const double delivered_wh = b.delivered_wh - a.delivered_wh;
    const double fraction = 100 * delivered_wh / span->percent / *record.unit.rated_energy_wh;
    const Budget budget = energy_budget(record, energy.track, delivered_wh, fit.options);
    std::vector<Message> clauses{say(phrase("unit", "through the gauge curve of run %1 (%2), from %3 to %4"), run, title, from, to)};
    for (Message& remark : projection_remarks(record, energy.track, energy.points, budget)) clauses.push_back(std::move(remark));
    Quantity result = known(own.key, own.unit, fraction, std::nullopt, Kind::projected, say_joined(clauses, "; "));
    // A doubt lowers what is said and never raises it: after a rise the level at the end tells less of the depth than the falls do.
    if (!energy.rises.empty()) result.value = std::min(fraction, own.value.value_or(fraction));
    if (!own.lower || !own.upper) return result;
    const double gain = budget.gain_half_width_wh / delivered_wh;
    const double u = std::hypot(budget.independent_wh, a.u_pairing_wh, b.u_pairing_wh) / delivered_wh;
    const double more = span->percent / (span->percent - widened.below) - 1, less = 1 - span->percent / (span->percent + widened.above);
    result.lower = fraction * (1 - side(less, u, gain, fit.options.coverage));
    result.upper = fraction * (1 + side(more, u, gain, fit.options.coverage));
    if (energy.rises.empty() && !energy.track.missing_inside) return result;
    result.lower = std::min({*result.lower, *own.lower, *result.value});
    result.upper = std::max(*result.upper, *own.upper);
    return result;
}

void project_through_curve(const RunRecord& record, const UnitFit& fit, RunAnalysis& analysis) {
    const std::optional<Quantity> fraction = fraction_through_curve(record, analysis.energy, fit);
    if (!fraction) return;
    analysis.curve_run_uuid = curve_before(record, analysis.energy, fit)->run_uuid;
    const auto place = std::ranges::find(analysis.quantities, fraction->key, &Quantity::key);
    if (place != analysis.quantities.end()) *place = *fraction;
    analysis.energy.usable_fraction = *fraction;
}

} // namespace ullage
