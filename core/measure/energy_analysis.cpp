// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/energy_analysis.h"

#include "measure/inside/log_track.h"
#include "measure/usable.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

Quantity delivered(const EnergyAnalysis& analysis) {
    if (!analysis.track.usable()) return not_known("delivered_wh", "Wh", "fewer than two register readings");
    Quantity result = known("delivered_wh", "Wh", analysis.track.total_wh(), analysis.budget.half_width_wh, Kind::measured,
                            analysis.budget.half_width_wh ? "" : analysis.budget.half_width_method);
    if (analysis.track.log) {
        const std::string words = analysis.track.log->integrated ? "integrated power of the log" : "by the log's register";
        result.reason = words + (result.reason.empty() ? "" : "; ") + result.reason;
    }
    if (analysis.track.energy_may_be_missing) {
        result.kind = Kind::at_least;
        result.upper.reset();
        result.reason += (result.reason.empty() ? "" : "; ") + analysis.track.missing_reason;
    }
    return result;
}

/// Delivered energy over the time between the first and the last register reading; for a run found off over its duration.
Quantity mean_load(const RunRecord& record, const EnergyAnalysis& analysis, const MeasureOptions& options) {
    if (!analysis.track.usable()) return not_known("mean_load_w", "W", "fewer than two register readings");
    const double energy_wh = analysis.track.total_wh();
    double hours = hours_between(analysis.track.points.front().time_ms, analysis.track.points.back().time_ms);
    double hours_half_width = options.moment_doubt_min / 60;
    if (record.run.end == RunEnd::found_off && analysis.duration_h.value) {
        hours = *analysis.duration_h.value;
        hours_half_width = analysis.duration_h.half_width().value_or(0);
    }
    if (hours <= 0) return not_known("mean_load_w", "W", "no time passed between the register readings");
    const double watts = energy_wh / hours;
    std::optional<double> half_width;
    if (analysis.budget.half_width_wh)
        half_width = std::hypot(*analysis.budget.half_width_wh / hours, watts * std::min(1.0, hours_half_width / hours));
    const bool bracket = analysis.duration_h.kind == Kind::bracket;
    Quantity result = known("mean_load_w", "W", watts, half_width, bracket ? Kind::bracket : Kind::measured,
                            bracket ? "the moment of the cut-off is a bracket" : "");
    if (!half_width) result.reason += (result.reason.empty() ? "" : "; ") + analysis.budget.half_width_method;
    if (analysis.track.missing_inside) {
        result.kind = Kind::at_least;
        result.upper.reset();
        result.reason += (result.reason.empty() ? "" : "; ") + analysis.track.missing_reason;
    }
    return result;
}

std::vector<std::size_t> changes_of(const std::vector<PairedPoint>& points) {
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

} // namespace

EnergyAnalysis analyse_energy(const RunRecord& record, const MeasureOptions& options) {
    EnergyAnalysis analysis;
    RunScan scan = scan_run(record);
    analysis.start_ms = scan.first_ms.value_or(0);
    analysis.track = energy_track(record, scan, options);
    analysis.log_sentence = compare_with_log(record, options, analysis.track);
    analysis.points = pair_gauge(scan, analysis.track, options);
    analysis.gauge_changes = changes_of(analysis.points);
    analysis.squares = LoadSquares(analysis.track);
    analysis.register_step_wh = analysis.track.log ? analysis.track.log->step_wh : register_step_wh(record);
    analysis.intervals = interval_table(analysis.points, record.unit.rated_energy_wh);
    // Over a cut-off that nobody saw, energy / time is no load.
    if (record.run.end == RunEnd::found_off && !analysis.intervals.empty() && analysis.points.back().time_ms == analysis.track.points.back().time_ms)
        analysis.intervals.back().mean_w.reset();
    analysis.budget = energy_budget(record, analysis.track, analysis.track.total_wh(), options);
    analysis.from_full_to_cut_off = is_full_drain(record);
    analysis.delivered_wh = delivered(analysis);
    analysis.duration_h = run_duration(record, scan, analysis.track, options);
    analysis.rises = std::move(scan.rises);
    analysis.output_off = std::move(scan.output_off);
    analysis.mean_load_w = mean_load(record, analysis, options);
    analysis.usable_fraction = usable_fraction(record, analysis.track, analysis.points, analysis.budget, options);
    analysis.wh_per_gauge_point = wh_per_gauge_point(record, analysis.points, analysis.budget, options);
    return analysis;
}

} // namespace ullage
