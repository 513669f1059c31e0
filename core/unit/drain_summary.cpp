// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/drain_summary.h"

#include "gauge/drain_series.h"
#include "run_analysis/run_analysis.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

/// Why the kind of run is no drain; empty when it is.
Message no_drain(RunKind kind) {
    switch (kind) {
    case RunKind::drain:
    case RunKind::no_load_drain: break;
    case RunKind::charge: return say(phrase("unit", "a charge run is no drain"));
    case RunKind::sustained_output: return say(phrase("unit", "a sustained output run is no drain"));
    case RunKind::peak_output: return say(phrase("unit", "a peak output run is no drain"));
    case RunKind::standby: return say(phrase("unit", "a standby run is no drain"));
    }
    return {};
}

/// Why the run is no drain from full to cut-off; empty when it is.
Message not_full_to_cut_off(const Run& run) {
    if (Message reason = no_drain(run.kind); !reason.empty()) return reason;
    if (!run.started_full) return say(phrase("unit", "whether it started full is not stated"));
    if (!*run.started_full) return say(phrase("unit", "it did not start full"));
    if (run.end == RunEnd::still_running) return say(phrase("unit", "it is still running"));
    if (run.end == RunEnd::stopped_by_tester) return say(phrase("unit", "it was stopped before the cut-off"));
    return {};
}

double squared_w2h(const RegisterTrack& track, UtcMs end_ms, double mean_load_w) {
    double sum = 0;
    for (std::size_t i = 1; i < track.points.size(); ++i) {
        const RegisterPoint& a = track.points[i - 1];
        const RegisterPoint& b = track.points[i];
        const double energy_wh = b.delivered_wh - a.delivered_wh;
        const bool on_throughout = b.time_ms <= end_ms && b.time_ms > a.time_ms;
        sum += energy_wh * (on_throughout ? energy_wh / hours_between(a.time_ms, b.time_ms) : mean_load_w);
    }
    return sum;
}

void name_meter(const RunRecord& record, const EnergyAnalysis& energy, DrainSummary& drain) {
    // Nothing was delivered, so no gain error can show.
    if (drain.delivered_wh == 0) return;
    const bool swapped = std::ranges::any_of(energy.track.register_corrections, [](const RegisterCorrection& register_correction) {
        return register_correction.kind == RegisterCorrectionKind::marked_swap;
    });
    // Two meters in one run share their gain error with no other run.
    if (swapped || !record.meter) drain.meter_key = "run " + record.run.uuid.text();
    else drain.meter_key = record.meter->uuid.empty() ? record.meter->name : record.meter->uuid.text();
    if (!record.meter) {
        drain.meter_name = say(phrase("unit", "a meter that is not stated"));
        return;
    }
    drain.meter_name = record.meter->name;
    drain.gain_limit_percent = energy.budget.gain_percent;
    if (swapped && !drain.gain_limit_percent) drain.meter_name = say(phrase("unit", "the meter that took over"));
    drain.load_part_wh = load_part_percent(*record.meter).value_or(0) / 100 * drain.delivered_wh;
}

/// Fills T and its uncertainty; gives the reason when the run has none.
Message fill_hours(const EnergyAnalysis& energy, const MeasureOptions& options, DrainSummary& drain) {
    if (!energy.duration_h.value) return energy.duration_h.reason;
    const double duration_h = *energy.duration_h.value;
    const auto end_ms = energy.start_ms + static_cast<UtcMs>(std::llround(duration_h * ms_per_hour));
    const bool stayed_off = std::ranges::any_of(
        energy.output_off, [end_ms](const OffSpan& off) { return off.from_ms <= end_ms && (off.to_ms > end_ms || !off.was_reset); });
    if (stayed_off) return say(phrase("unit", "the output tripped and nothing says that it was switched on again; mark when it was"));
    drain.hours = duration_h - tripped_hours(energy, end_ms);
    // Two noted moments, each rectangular.
    drain.u_hours = options.moment_doubt_min / 60 * std::sqrt(2.0 / 3.0);
    if (energy.cut_off) drain.u_hours = std::hypot(options.moment_doubt_min / 60 / std::sqrt(3.0), energy.cut_off->u_h);
    return drain.hours > 0 ? Message() : say(phrase("unit", "no time passed with the output on"));
}

Message fill_energy(const RunRecord& record, const EnergyAnalysis& energy, DrainSummary& drain) {
    const bool idle = record.run.kind == RunKind::no_load_drain;
    if (!energy.track.usable()) {
        if (idle && energy.track.points.empty()) return {};
        return say(phrase("unit", "fewer than two register readings"));
    }
    if (energy.track.energy_may_be_missing) return energy.track.missing_reason;
    drain.delivered_wh = energy.track.total_wh();
    drain.independent_wh = energy.budget.independent_wh;
    return idle || drain.delivered_wh > 0 ? Message() : say(phrase("unit", "nothing was delivered"));
}

} // namespace

DrainSummary summarise_drain(const RunRecord& record, const MeasureOptions& options) {
    return summarise_drain(record, analyse_energy(record, options), options);
}

DrainSummary summarise_drain(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    DrainSummary drain;
    drain.run_uuid = record.run.uuid;
    drain.run_number = record.number;
    drain.title = run_title(record, energy);
    drain.kind = record.run.kind;
    drain.start_ms = energy.start_ms;
    const auto &at_start = record.run.ambient_c, &at_end = record.run.ambient_end_c;
    drain.ambient_c = at_start && at_end ? std::optional((*at_start + *at_end) / 2) : at_start ? at_start : at_end;
    drain.found_off = record.run.end == RunEnd::found_off;
    drain.reason = not_full_to_cut_off(record.run);
    const Message no_hours = fill_hours(energy, options, drain);
    const Message no_energy = fill_energy(record, energy, drain);
    for (const Message& reason : {no_hours, no_energy})
        if (drain.reason.empty()) drain.reason = reason;
    drain.used = drain.reason.empty();
    if (!drain.used) return drain;
    drain.mean_load_w = drain.delivered_wh / drain.hours;
    const auto end_ms = energy.start_ms + static_cast<UtcMs>(std::llround(*energy.duration_h.value * ms_per_hour));
    drain.squared_w2h = energy.track.log ? energy.track.log->square_w2h.back() : squared_w2h(energy.track, end_ms, drain.mean_load_w);
    name_meter(record, energy, drain);
    if (drain.kind != RunKind::drain) return drain;
    Result<GaugeCurve> curve = read_gauge_curve(record, energy, drain.hours, drain.u_hours, options);
    if (curve) drain.gauge_curve = std::move(curve).value();
    else drain.no_curve_reason = curve.error().what;
    return drain;
}

} // namespace ullage
