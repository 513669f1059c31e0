// SPDX-License-Identifier: GPL-3.0-or-later
// What the moments of the hand readings need of the dense log becomes the track.
#include "measure/inside/log_track.h"

#include "base/number.h"
#include "base/quantity.h"
#include "measure/inside/dense_log.h"
#include "measure/inside/log_check.h"
#include "measure/inside/log_energy.h"
#include "measure/inside/log_takeover.h"
#include "measure/inside/missing_energy.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace ullage {
namespace {

void scale(MeterPart& part, double factor) {
    for (double* wh : {&part.register_wh, &part.delivered_wh, &part.limit_wh, &part.u_wh, &part.beyond_points_wh, &part.out_of_range_wh})
        *wh *= factor;
}

/// The gaps of the log's own track, as gaps between the noted moments; what was estimated before the first of them is in none.
void carry_gaps(const std::vector<RegisterPoint>& logged, RegisterTrack& track) {
    std::vector<MissingGap> carried;
    for (MissingGap gap : std::exchange(track.missing_gaps, {})) {
        if (gap.inside) {
            const UtcMs to_ms = logged[gap.point].time_ms;
            const auto at = std::ranges::lower_bound(track.points, to_ms, {}, &RegisterPoint::time_ms);
            if (at == track.points.begin() || at == track.points.end()) {
                track.missing_estimate_wh = std::max(0.0, track.missing_estimate_wh - gap.estimate_wh);
                continue;
            }
            gap.point = static_cast<std::size_t>(at - track.points.begin());
        }
        carried.push_back(gap);
    }
    track.missing_gaps = std::move(carried);
}

/// The track at the noted moments.
RegisterTrack at_noted_moments(const RunRecord& record, const RunScan& scan, const MeasureOptions& options, DenseLog dense) {
    RegisterTrack track = std::move(dense.track);
    LogUse& use = *track.log;
    const std::vector<RegisterPoint> logged = std::exchange(track.points, {});
    const LogCurve& energy_wh = dense.energy_wh;
    const UtcMs log_from_ms = energy_wh.times_ms.front(), log_to_ms = energy_wh.times_ms.back();
    const auto outside = static_cast<UtcMs>(complete_within_h * ms_per_hour);
    const RunTrace& trace = *record.trace;
    // After a power that ceased nothing flowed; what was noted after the cut-off is no part of the drain.
    const bool ceased = trace.has_power && trace.off_ms.has_value();
    const double doubt_ms = log_moment_doubt_ms(trace, options);
    const double total_h = hours_between(log_from_ms, log_to_ms);
    const double usual_w = total_h > 0 ? energy_wh.values.back() / total_h : 0;
    const double peak_w = trace.has_power ? trace.peak_w : usual_w;
    std::optional<double> start_wh, start_square;
    UtcMs covered_to_ms = log_from_ms;
    for (std::size_t i = 0; i < record.readings.size(); ++i) {
        const Reading& reading = record.readings[i];
        if (reading.withdrawn) continue;
        const UtcMs time_ms = reading.values.time_ms;
        if (time_ms < log_from_ms - outside || (time_ms > log_to_ms + outside && !ceased)) continue;
        const bool at_end = record.run.end == RunEnd::cut_off_seen && time_ms == scan.cut_off_ms.value_or(*scan.last_ms);
        const auto doubt = static_cast<UtcMs>(std::llround(doubt_ms));
        const UtcMs read_ms = at_end ? time_ms + doubt : time_ms;
        const double wh = energy_wh.at(read_ms);
        if (!start_wh) {
            start_wh = wh;
            start_square = dense.square_w2h.at(read_ms);
        }
        covered_to_ms = std::max(covered_to_ms, time_ms);
        const double shown_wh = track.points.empty() ? 0.0 : std::max(wh - *start_wh, track.points.back().delivered_wh);
        track.points.push_back({i, time_ms, wh, shown_wh});
        use.square_w2h.push_back(std::max(0.0, dense.square_w2h.at(read_ms) - *start_square));
        use.u_wh.push_back(std::hypot(energy_wh.u_between(read_ms), at_end ? 0.0 : energy_wh.u_moment(time_ms, doubt_ms)));
    }
    if (track.points.empty()) {
        track.missing_gaps.clear();
        return track;
    }
    const UtcMs end_ms = scan.cut_off_ms.value_or(*scan.last_ms);
    const bool runs_out = record.run.end == RunEnd::still_running || (trace.on_past_notes && !scan.cut_off_ms);
    const bool stops_short = !ceased && end_ms > log_to_ms + outside;
    if ((runs_out || stops_short) && log_to_ms > covered_to_ms) {
        const double last_wh = energy_wh.values.back();
        track.points.push_back({no_reading, log_to_ms, last_wh, std::max(last_wh - *start_wh, track.points.back().delivered_wh)});
        use.square_w2h.push_back(std::max(0.0, dense.square_w2h.at(log_to_ms) - *start_square));
        use.u_wh.push_back(0);
    }
    carry_gaps(logged, track);
    // The log may begin before the run and go on after it.
    double taken_over_wh = 0;
    for (const TakenOver& taken : use.taken_over) taken_over_wh += taken.part.delivered_wh;
    const double logged_wh = energy_wh.values.back() - energy_wh.values.front() - taken_over_wh;
    for (MeterPart& part : track.meters) scale(part, logged_wh > 0 ? std::max(0.0, track.total_wh() - taken_over_wh) / logged_wh : 0);
    for (const TakenOver& taken : use.taken_over) add_part(taken.part, track.meters);
    const auto short_gap = [&](double hours) { track.short_gaps.push_back({hours, peak_w * (hours + options.moment_doubt_min / 60)}); };
    if (*scan.first_ms < log_from_ms) {
        const double hours = hours_between(*scan.first_ms, log_from_ms);
        if (hours <= complete_within_h) short_gap(hours);
        else
            note_missing(say(phrase("measure", "the log begins after the start (%1, about %2 at the mean load)"), duration_text(hours),
                             say_energy(usual_w * hours)),
                         track);
    }
    if (record.run.end != RunEnd::still_running && !ceased && end_ms > log_to_ms) {
        const double hours = hours_between(log_to_ms, end_ms);
        if (hours <= complete_within_h) short_gap(hours);
        else
            note_missing(say(phrase("measure", "the log ends before the end of the run (%1, about %2 at the mean load)"), duration_text(hours),
                             say_energy(usual_w * hours)),
                         track);
    }
    return track;
}

} // namespace

std::optional<RegisterTrack> log_track(const RunRecord& record, const RunScan& scan, const MeasureOptions& options) {
    if (!record.trace || record.trace->points.empty() || !scan.first_ms || !log_is_of_run_meter(record)) return std::nullopt;
    std::optional<DenseLog> dense = dense_log(record, scan, options);
    if (!dense) return std::nullopt;
    take_over_gaps(record, scan, options, *dense);
    note_open_gaps(record, options, *dense);
    RegisterTrack track = at_noted_moments(record, scan, options, std::move(*dense));
    if (!track.usable()) return std::nullopt;
    return track;
}

} // namespace ullage
