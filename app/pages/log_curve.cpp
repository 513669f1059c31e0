// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/log_curve.h"

#include "model/run_trace.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace ullage {

namespace {

constexpr double ms_per_h = 3'600'000;

} // namespace

/// Points of samples in order of time; with a span, only the lowest and the highest in each.
class LogCurve::Collector {
public:
    Collector(std::vector<ChartPoint>& points, UtcMs origin_ms, double gap_limit_s, double span_h)
        : points_(points), origin_ms_(origin_ms), gap_h_(gap_limit_s / 3600), span_h_(span_h) {}

    void take(std::span<const TraceSample> samples) {
        for (const TraceSample& sample : samples) {
            if (!sample.power_w) continue;
            const ChartPoint point{static_cast<double>(sample.time_ms - origin_ms_) / ms_per_h, *sample.power_w};
            const bool gap = any_ && point.x - last_x_ > gap_h_;
            if (gap || (any_ && span_h_ > 0 && point.x >= span_end_)) close();
            if (gap) points_.push_back({last_x_, std::numeric_limits<double>::quiet_NaN()});
            if (span_h_ <= 0) points_.push_back(point);
            else add(point);
            any_ = true;
            last_x_ = point.x;
            ++samples_;
        }
    }
    void close() {
        if (!open_) return;
        open_ = false;
        const auto [first, second] = low_.x <= high_.x ? std::pair(low_, high_) : std::pair(high_, low_);
        points_.push_back(first);
        if (second.x > first.x) points_.push_back(second);
    }
    [[nodiscard]] std::int64_t samples() const { return samples_; }

private:
    void add(const ChartPoint& point) {
        if (!open_) {
            low_ = high_ = point;
            span_end_ = (std::floor(point.x / span_h_) + 1) * span_h_;
            open_ = true;
        }
        if (point.y < low_.y) low_ = point;
        if (point.y > high_.y) high_ = point;
    }

    std::vector<ChartPoint>& points_;
    UtcMs origin_ms_;
    double gap_h_, span_h_;
    double span_end_ = 0, last_x_ = 0;
    bool any_ = false, open_ = false;
    ChartPoint low_, high_;
    std::int64_t samples_ = 0;
};

Result<LogCurve> LogCurve::of(const Document& document, std::vector<Trace> traces, UtcMs origin_ms) {
    LogCurve curve;
    curve.origin_ms_ = origin_ms;
    if (traces.empty()) return curve;
    curve.gap_limit_s_ = gap_limit_s(traces);
    const UtcMs first_ms = traces.front().first_ms, last_ms = traces.back().last_ms;
    const double whole_h = static_cast<double>(last_ms - first_ms) / ms_per_h;
    std::int64_t samples = 0;
    for (const Trace& trace : traces) samples += trace.samples;
    // Two points a span: fewer samples than that are kept as they are.
    const double span_h = samples > static_cast<std::int64_t>(2 * spans) ? whole_h / static_cast<double>(spans) : 0;
    Collector collector(curve.overview_, origin_ms, curve.gap_limit_s_, span_h);
    for (const Trace& trace : traces) {
        const auto read = document.readSamples(trace.uuid, trace.first_ms, trace.last_ms, [&collector](std::span<const TraceSample> part) {
            collector.take(part);
            return true;
        });
        if (!read) return read.error();
    }
    collector.close();
    curve.samples_ = span_h > 0 ? collector.samples() : 0;
    curve.samples_per_h_ = whole_h > 0 ? static_cast<double>(collector.samples()) / whole_h : 0;
    curve.traces_ = std::move(traces);
    return curve;
}

Result<std::optional<std::vector<ChartPoint>>> LogCurve::detailed(const Document& document, double from_h, double to_h) const {
    std::optional<std::vector<ChartPoint>> none;
    const double width_h = to_h - from_h;
    if (samples_ == 0 || !(width_h > 0) || 3 * width_h * samples_per_h_ > static_cast<double>(most_detail)) return none;
    const double first_h = from_h - width_h, last_h = to_h + width_h;
    std::vector<ChartPoint> points;
    const auto before = std::ranges::lower_bound(overview_, first_h, {}, &ChartPoint::x);
    points.assign(overview_.begin(), before);
    Collector collector(points, origin_ms_, gap_limit_s_, 0);
    for (const Trace& trace : traces_) {
        const auto from_ms = origin_ms_ + std::llround(first_h * ms_per_h), to_ms = origin_ms_ + std::llround(last_h * ms_per_h);
        if (trace.last_ms < from_ms || trace.first_ms > to_ms) continue;
        const auto read = document.readSamples(trace.uuid, from_ms, to_ms, [&collector](std::span<const TraceSample> part) {
            collector.take(part);
            return true;
        });
        if (!read) return read.error();
    }
    points.insert(points.end(), std::ranges::upper_bound(overview_, last_h, {}, &ChartPoint::x), overview_.end());
    return std::optional(std::move(points));
}

} // namespace ullage
