// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/drain_series.h"

#include "numerics/line_fit.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ullage {
namespace {

struct Span {
    UtcMs from_ms = 0, to_ms = 0;
};

std::vector<Span> tripped_spans(const RunRecord& record) {
    std::vector<Span> spans;
    std::optional<UtcMs> since_ms;
    UtcMs last_ms = 0;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        last_ms = reading.values.time_ms;
        if (reading.values.mark == MarkKind::output_tripped && !since_ms) since_ms = last_ms;
        if (reading.values.mark == MarkKind::output_reset && since_ms) {
            spans.push_back({*since_ms, last_ms});
            since_ms.reset();
        }
    }
    if (since_ms) spans.push_back({*since_ms, last_ms});
    return spans;
}

double hours_off(const std::vector<Span>& spans, UtcMs until_ms) {
    double hours = 0;
    for (const Span& span : spans)
        if (span.from_ms < until_ms) hours += hours_between(span.from_ms, std::min(span.to_ms, until_ms));
    return hours;
}

/// The integral of P squared at every point of the track.
std::vector<double> squared_along(const RegisterTrack& track) {
    std::vector<double> squared(track.points.size(), 0.0);
    for (std::size_t i = 1; i < track.points.size(); ++i) {
        const double hours = hours_between(track.points[i - 1].time_ms, track.points[i].time_ms);
        const double wh = track.points[i].delivered_wh - track.points[i - 1].delivered_wh;
        squared[i] = squared[i - 1] + (hours > 0 ? wh * wh / hours : 0.0);
    }
    return squared;
}

} // namespace

double tripped_hours(const RunRecord& record, UtcMs until_ms) { return hours_off(tripped_spans(record), until_ms); }

DrainSeries drain_series(const RunRecord& record, const EnergyAnalysis& energy, std::size_t most_points) {
    DrainSeries series;
    const std::vector<PairedPoint>& points = energy.points;
    const std::vector<RegisterPoint>& track = energy.track.points;
    if (points.empty() || track.empty()) return series;
    const std::vector<Span> tripped = tripped_spans(record);
    const std::vector<double> squared = squared_along(energy.track);
    const double u_step_wh = register_step_wh(record) * (record.meter ? record.meter->correction : 1.0) / std::sqrt(12.0);
    const std::size_t count = std::min(points.size(), most_points);
    std::size_t next = 0; // first track point at or after the paired point
    for (std::size_t k = 0; k < count; ++k) {
        const std::size_t i = count == points.size() ? k : k * (points.size() - 1) / (count - 1);
        const PairedPoint& point = points[i];
        while (next + 1 < track.size() && track[next].delivered_wh < point.delivered_wh) ++next;
        double squared_w2h = squared[next];
        if (next > 0) {
            const double gap_wh = track[next].delivered_wh - track[next - 1].delivered_wh;
            const double missing = gap_wh > 0 ? std::clamp((track[next].delivered_wh - point.delivered_wh) / gap_wh, 0.0, 1.0) : 0.0;
            squared_w2h -= missing * (squared[next] - squared[next - 1]);
        }
        series.point.push_back(i);
        series.gauge_percent.push_back(point.gauge_percent);
        series.on_hours.push_back(point.hours - hours_off(tripped, point.time_ms));
        series.delivered_wh.push_back(point.delivered_wh);
        series.u_wh.push_back(std::hypot(point.u_pairing_wh, u_step_wh));
        series.squared_w2h.push_back(squared_w2h);
    }
    return series;
}

double separable_share(const DrainSeries& series) {
    if (series.size() < 3) return 0;
    const Result<LineFit> line = fit_line(series.on_hours, series.delivered_wh);
    if (!line) return 0;
    double mean = 0, spread = 0;
    for (const double wh : series.delivered_wh) mean += wh / static_cast<double>(series.size());
    for (const double wh : series.delivered_wh) spread += (wh - mean) * (wh - mean);
    return spread > 0 ? std::sqrt(std::min(1.0, line.value().residual_sum / spread)) : 0;
}

} // namespace ullage
