// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/drain_series.h"

#include "model/meter_gain.h"
#include "numerics/line_fit.h"

#include <algorithm>
#include <cmath>

namespace ullage {

double tripped_hours(const EnergyAnalysis& energy, UtcMs until_ms) {
    double hours = 0;
    for (const OffSpan& span : energy.output_off)
        if (span.from_ms < until_ms) hours += hours_between(span.from_ms, std::min(span.to_ms, until_ms));
    return hours;
}

Quantity output_on_hours(const EnergyAnalysis& energy) {
    Quantity on_h = energy.duration_h;
    on_h.key = "output_on_h";
    for (std::optional<double>* part : {&on_h.value, &on_h.lower, &on_h.upper})
        if (*part) **part -= tripped_hours(energy, energy.start_ms + static_cast<UtcMs>(std::llround(**part * ms_per_hour)));
    const std::optional<double> most_h = on_h.upper ? on_h.upper : on_h.value;
    if (most_h && *most_h <= 0) return not_known("output_on_h", "h", say(phrase("gauge", "no time passed with the output on")));
    return on_h;
}

void DrainSeries::reserve(std::size_t count) {
    point.reserve(count);
    for (std::vector<double>* column : {&gauge_percent, &on_hours, &delivered_wh, &u_wh, &squared_w2h}) column->reserve(count);
}

DrainSeries drain_series(const RunRecord& record, const EnergyAnalysis& energy, std::size_t most_points) {
    DrainSeries series;
    const std::vector<PairedPoint>& points = energy.points;
    const std::vector<RegisterPoint>& track = energy.track.points;
    if (points.empty() || track.empty()) return series;
    const double u_step_wh = energy.register_step_wh * typical_correction(record.meter) / std::sqrt(12.0);
    const std::size_t count = std::min(points.size(), most_points);
    auto next = track.begin(); // first track point at or after the paired point, by energy, which never falls
    series.reserve(count);
    for (std::size_t k = 0; k < count; ++k) {
        const std::size_t i = count == points.size() ? k : k * (points.size() - 1) / (count - 1);
        const PairedPoint& point = points[i];
        next = std::lower_bound(next, track.end() - 1, point.delivered_wh, [](const RegisterPoint& p, double wh) { return p.delivered_wh < wh; });
        const auto at = static_cast<std::size_t>(next - track.begin());
        double squared_w2h = energy.squares.up_to(energy.track, at);
        if (at > 0) {
            const double gap_wh = next->delivered_wh - (next - 1)->delivered_wh;
            const double missing = gap_wh > 0 ? std::clamp((next->delivered_wh - point.delivered_wh) / gap_wh, 0.0, 1.0) : 0.0;
            squared_w2h -= missing * LoadSquares::step(energy.track, at);
        }
        series.point.push_back(i);
        series.gauge_percent.push_back(point.gauge_percent);
        series.on_hours.push_back(point.hours - tripped_hours(energy, point.time_ms));
        series.delivered_wh.push_back(point.delivered_wh);
        series.u_wh.push_back(std::hypot(point.u_pairing_wh, u_step_wh));
        series.squared_w2h.push_back(point.square_w2h.value_or(squared_w2h));
    }
    return series;
}

double steady_noise_wh(const DrainSeries& series, double moment_doubt_h) {
    if (series.size() < 2 || series.on_hours.back() <= series.on_hours.front()) return 0;
    const double mean_w = (series.delivered_wh.back() - series.delivered_wh.front()) / (series.on_hours.back() - series.on_hours.front());
    const double u_moment_wh = mean_w * moment_doubt_h / std::sqrt(3.0);
    double sum = 0;
    for (const double u_wh : series.u_wh) sum += u_wh * u_wh + u_moment_wh * u_moment_wh;
    return std::sqrt(sum / static_cast<double>(series.size()));
}

double spread_beyond_time_wh(const DrainSeries& series) {
    if (series.size() < 3) return 0;
    const Result<LineFit> line = fit_line(series.on_hours, series.delivered_wh);
    return line ? std::sqrt(std::max(0.0, line.value().residual_sum) / static_cast<double>(series.size())) : 0;
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
