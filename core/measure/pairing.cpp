// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/pairing.h"

#include "measure/run_scan.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr std::size_t most_intervals = 10'000;

} // namespace

std::vector<PairedPoint> pair_gauge(RunScan& scan, const RegisterTrack& track, const MeasureOptions& options) {
    std::vector<PairedPoint> points = std::move(scan.gauges);
    scan.gauges.clear();
    const double doubt_h = options.moment_doubt_min / 60.0;
    std::size_t next = 0; // first register point at or after the gauge reading, in order of reading
    std::size_t paired = 0;
    for (PairedPoint& point : points) {
        while (next < track.points.size() && track.points[next].reading < point.reading) ++next;
        if (next == track.points.size()) break;
        // What was read after a log stopped belongs to none of its energies.
        if (track.points[next].reading == no_reading && point.time_ms > track.points[next].time_ms) break;
        if (track.points[next].reading == point.reading) {
            point.delivered_wh = track.points[next].delivered_wh;
            if (track.log) point.u_pairing_wh = track.log->u_wh[next];
        } else if (next > 0) {
            const RegisterPoint& a = track.points[next - 1];
            const RegisterPoint& b = track.points[next];
            const double gap_h = hours_between(a.time_ms, b.time_ms);
            const double gap_wh = b.delivered_wh - a.delivered_wh;
            const double f = gap_h > 0 ? std::clamp(hours_between(a.time_ms, point.time_ms) / gap_h, 0.0, 1.0) : 0.5;
            point.delivered_wh = a.delivered_wh + f * gap_wh;
            const double moment_wh = gap_h > 0 ? gap_wh / gap_h * doubt_h / std::sqrt(3.0) : 0.0;
            point.u_pairing_wh = std::hypot(gap_wh * std::sqrt(f * (1 - f) / 3), moment_wh);
        } else {
            continue;
        }
        if (&points[paired] != &point) points[paired] = point;
        ++paired;
    }
    points.resize(paired);
    return points;
}

std::vector<PairedPoint> pair_gauge(const RunRecord& record, const RegisterTrack& track, const MeasureOptions& options) {
    RunScan scan = scan_run(record);
    return pair_gauge(scan, track, options);
}

std::vector<IntervalRow> interval_table(const std::vector<PairedPoint>& points, std::optional<double> rated_energy_wh) {
    std::vector<IntervalRow> rows;
    if (points.size() < 2) return rows;
    const std::size_t count = std::min(points.size() - 1, most_intervals);
    rows.reserve(count);
    for (std::size_t k = 0; k < count; ++k) {
        IntervalRow row;
        row.from = k * (points.size() - 1) / count;
        row.to = (k + 1) * (points.size() - 1) / count;
        const PairedPoint& a = points[row.from];
        const PairedPoint& b = points[row.to];
        row.hours = b.hours - a.hours;
        row.gauge_drop_pt = a.gauge_percent - b.gauge_percent;
        row.delivered_wh = b.delivered_wh - a.delivered_wh;
        if (rated_energy_wh) row.gauge_implied_wh = *rated_energy_wh * row.gauge_drop_pt / 100;
        if (row.gauge_drop_pt != 0) {
            if (rated_energy_wh && *rated_energy_wh > 0) row.ratio = row.delivered_wh / *row.gauge_implied_wh;
            row.wh_per_point = row.delivered_wh / row.gauge_drop_pt;
        }
        if (row.hours > 0) row.mean_w = row.delivered_wh / row.hours;
        rows.push_back(row);
    }
    return rows;
}

} // namespace ullage
