// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/energy_analysis.h"

#include "measure/inside/clauses.h"
#include "measure/inside/gauge_of_log.h"
#include "measure/inside/log_track.h"
#include "measure/inside/missing_energy.h"
#include "measure/meter_remarks.h"
#include "measure/usable.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

Quantity delivered(const EnergyAnalysis& analysis) {
    if (!analysis.track.usable()) return not_known("delivered_wh", "Wh", say(phrase("measure", "fewer than two register readings")));
    Quantity result = known("delivered_wh", "Wh", analysis.track.total_wh(), analysis.budget.half_width_wh, Kind::measured,
                            analysis.budget.half_width_wh ? Message() : analysis.budget.half_width_method);
    if (analysis.track.log) {
        const Message words =
            analysis.track.log->integrated ? say(phrase("measure", "integrated power of the log")) : say(phrase("measure", "by the log's register"));
        result.reason = with_clause(words, result.reason);
    }
    if (analysis.track.energy_may_be_missing) inherit_missing(analysis.track, 1, analysis.track.missing_estimate_wh, result);
    return result;
}

/// Delivered energy over the time from the first register reading to the last one, or to the cut-off where that came before.
Quantity mean_load(const RunRecord& record, const EnergyAnalysis& analysis, const MeasureOptions& options) {
    if (!analysis.track.usable()) return not_known("mean_load_w", "W", say(phrase("measure", "fewer than two register readings")));
    const double energy_wh = analysis.track.total_wh();
    const double from_h = hours_between(analysis.start_ms, analysis.track.points.front().time_ms);
    const double to_h = hours_between(analysis.start_ms, analysis.track.points.back().time_ms);
    const double start_half_h = options.moment_doubt_min / 60;
    double hours = to_h - from_h, below_h = start_half_h, above_h = start_half_h;
    const bool by_cut_off = analysis.cut_off && to_h >= analysis.cut_off->lower_h;
    if (by_cut_off) {
        const CutOffMoment& moment = *analysis.cut_off;
        const double end_h = std::min(to_h, moment.estimate_h);
        hours = end_h - from_h;
        below_h = std::hypot(start_half_h, end_h - std::min(end_h, moment.lower_h));
        above_h = std::hypot(start_half_h, std::max(end_h, moment.upper_h) - end_h);
    }
    if (hours <= 0) return not_known("mean_load_w", "W", say(phrase("measure", "no time passed between the register readings")));
    const double watts = energy_wh / hours;
    const bool bracket = by_cut_off && analysis.duration_h.kind == Kind::bracket;
    Quantity result = known("mean_load_w", "W", watts, std::nullopt, bracket ? Kind::bracket : Kind::measured,
                            bracket ? say(phrase("measure", "the moment of the cut-off is a bracket")) : Message());
    if (analysis.budget.half_width_wh) {
        const double energy_w = *analysis.budget.half_width_wh / hours;
        result.lower = std::max(0.0, watts - std::hypot(energy_w, watts - energy_wh / (hours + above_h)));
        // It may have gone off just after the last reading with it on; no load is higher than unit and socket can do.
        const double most_w = std::max(watts, std::min(energy_wh / std::max(hours - below_h, hours / 100), believable_load_w(record.unit, options)));
        result.upper = watts + std::hypot(energy_w, most_w - watts);
    } else {
        result.reason = with_clause(result.reason, analysis.budget.half_width_method);
    }
    if (analysis.track.missing_inside) inherit_missing(analysis.track, 1 / hours, analysis.track.missing_estimate_wh, result);
    return result;
}

/// Nothing is delivered after the cut-off, and no time counts.
void end_points_at_cut_off(EnergyAnalysis& analysis) {
    if (!analysis.cut_off) return;
    for (std::size_t i = analysis.points.size(); i-- > 0 && analysis.points[i].hours > analysis.cut_off->estimate_h;)
        analysis.points[i].hours = analysis.cut_off->estimate_h;
}

/// Where nobody can say how much a register lost, energy / time is no load.
void forget_loads_over_gaps(EnergyAnalysis& analysis) {
    if (analysis.track.missing_most_wh) return;
    for (const MissingGap& gap : analysis.track.missing_gaps) {
        if (!gap.inside) continue;
        const UtcMs from_ms = analysis.track.points[gap.point - 1].time_ms, to_ms = analysis.track.points[gap.point].time_ms;
        for (IntervalRow& row : analysis.intervals)
            if (analysis.points[row.from].time_ms < to_ms && analysis.points[row.to].time_ms > from_ms) row.mean_w.reset();
    }
}

std::vector<GaugeRise> rises_of(const RunRecord& record, const std::vector<PairedPoint>& points) {
    std::vector<GaugeRise> rises;
    const double least_pt = 2 * std::max(record.unit.gauge_step_percent, 1e-3);
    for (std::size_t i = 1; i < points.size(); ++i)
        if (points[i - 1].reading != no_reading && points[i].reading != no_reading &&
            points[i].gauge_percent - points[i - 1].gauge_percent >= least_pt)
            rises.push_back({points[i - 1].reading, points[i].reading, points[i - 1].time_ms, points[i].time_ms, points[i - 1].gauge_percent,
                             points[i].gauge_percent});
    return rises;
}

} // namespace

std::vector<std::size_t> gauge_changes_of(const std::vector<PairedPoint>& points) {
    std::vector<std::size_t> changes;
    for (std::size_t i = 1; i < points.size(); ++i)
        if (points[i].gauge_percent != points[i - 1].gauge_percent) changes.push_back(i);
    return changes;
}

/// The track by the log, unless it lacks energy that registers noted by hand hold.
RegisterTrack energy_track(const RunRecord& record, RunScan& scan, const MeasureOptions& options) {
    std::optional<RegisterTrack> by_log = log_track(record, scan, options);
    if (by_log && !by_log->energy_may_be_missing) return std::move(*by_log);
    RegisterTrack by_hand = unwrap_register(record, scan, options);
    const bool hand_holds_more = by_hand.usable() && !by_hand.energy_may_be_missing;
    return by_log && !hand_holds_more ? std::move(*by_log) : by_hand;
}

EnergyAnalysis without_gauge_reading(const RunRecord& record, const EnergyAnalysis& energy, std::size_t point) {
    EnergyAnalysis rest = energy;
    rest.points.erase(rest.points.begin() + static_cast<std::ptrdiff_t>(point));
    rest.gauge_changes = gauge_changes_of(rest.points);
    rest.intervals = interval_table(rest.points, record.unit.rated_energy_wh);
    forget_loads_over_gaps(rest);
    rest.rises = rises_of(record, rest.points);
    for (const GaugeRise& rise : energy.rises)
        if (rise.before == no_reading) rest.rises.push_back(rise);
    std::erase_if(rest.shown, [&](const PairedPoint& shown) { return shown.reading == energy.points[point].reading && shown.reading != no_reading; });
    return rest;
}

EnergyAnalysis analyse_energy(const RunRecord& record, const MeasureOptions& options) {
    EnergyAnalysis analysis;
    analysis.options = options;
    RunScan scan = scan_run(record);
    analysis.start_ms = scan.first_ms.value_or(0);
    analysis.track = energy_track(record, scan, options);
    analysis.log_sentence = compare_with_log(record, options, analysis.track);
    analysis.cut_off = cut_off_moment(record, scan, analysis.track, options);
    analysis.points = pair_gauge(scan, analysis.track, options);
    end_points_at_cut_off(analysis);
    analysis.gauge_changes = gauge_changes_of(analysis.points);
    analysis.squares = LoadSquares(analysis.track);
    analysis.register_step_wh = analysis.track.log ? analysis.track.log->step_wh : register_step_wh(record);
    analysis.intervals = interval_table(analysis.points, record.unit.rated_energy_wh);
    analysis.rises = std::move(scan.rises);
    add_gauge_of_log(record, options, analysis);
    // Over a cut-off that nobody saw, energy / time is no load.
    const bool unseen = analysis.cut_off && analysis.cut_off->basis == CutOffBasis::bracket;
    forget_loads_over_gaps(analysis);
    if (unseen && !analysis.intervals.empty() && analysis.points.back().time_ms == analysis.track.points.back().time_ms)
        analysis.intervals.back().mean_w.reset();
    analysis.budget = energy_budget(record, analysis.track, analysis.track.total_wh(), options);
    analysis.meter_remarks = meter_remarks(record, analysis.track, analysis.start_ms);
    analysis.from_full_to_cut_off = is_full_drain(record);
    analysis.delivered_wh = delivered(analysis);
    analysis.duration_h = run_duration(record, scan, analysis.cut_off, options);
    analysis.output_off = std::move(scan.output_off);
    analysis.mean_load_w = mean_load(record, analysis, options);
    analysis.usable_fraction = usable_fraction(record, analysis.track, analysis.points, analysis.budget, options);
    analysis.wh_per_gauge_point = wh_per_gauge_point(record, analysis.track, analysis.points, analysis.budget, options);
    return analysis;
}

} // namespace ullage
