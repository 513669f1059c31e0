// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/power_curve.h"

#include "model/trace_thinner.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace ullage {

namespace {

constexpr double ms_per_h = 3'600'000;
constexpr double margin = 1.0 / 16; ///< of a view's width: the curve leaves it on both sides

std::vector<ChartPoint> part_of(const std::vector<ChartPoint>& points, double from_h, double to_h) {
    const auto begin = std::ranges::lower_bound(points, from_h, {}, &ChartPoint::x);
    return {begin, std::ranges::upper_bound(begin, points.end(), to_h, {}, &ChartPoint::x)};
}

} // namespace

/// Points of samples in order of time; with a span, only the lowest and the highest in each.
class PowerCurve::Collector {
public:
    Collector(std::vector<ChartPoint>& points, std::optional<double> TraceSample::*value, double most, UtcMs origin_ms, double gap_limit_s,
              double span_h)
        : points_(points), value_(value), most_(most), origin_ms_(origin_ms), gap_h_(gap_limit_s / 3600), span_h_(span_h) {}

    void take(std::span<const TraceSample> samples) {
        for (const TraceSample& sample : samples) {
            if (!(sample.*value_) || *(sample.*value_) > most_) continue;
            const ChartPoint point{static_cast<double>(sample.time_ms - origin_ms_) / ms_per_h, *(sample.*value_)};
            const bool gap = any_ && point.x - last_x_ > gap_h_;
            if (gap || (any_ && span_h_ > 0 && point.x >= span_end_)) close();
            if (gap) points_.push_back({last_x_, std::numeric_limits<double>::quiet_NaN()});
            if (span_h_ <= 0) points_.push_back(point);
            else add(point);
            any_ = true;
            last_x_ = point.x;
        }
    }
    /// The points of a finer curve instead.
    void takeCurve(const std::vector<ChartPoint>& finer) {
        for (const ChartPoint& point : finer) {
            const bool gap = std::isnan(point.y);
            if (gap || (open_ && point.x >= span_end_)) close();
            if (gap) points_.push_back(point);
            else add(point);
        }
        close();
    }
    void close() {
        if (!open_) return;
        open_ = false;
        const auto [first, second] = low_.x <= high_.x ? std::pair(low_, high_) : std::pair(high_, low_);
        points_.push_back(first);
        if (second.x > first.x) points_.push_back(second);
    }

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
    std::optional<double> TraceSample::*value_;
    double most_;
    UtcMs origin_ms_;
    double gap_h_, span_h_;
    double span_end_ = 0, last_x_ = 0;
    bool any_ = false, open_ = false;
    ChartPoint low_, high_;
};

Result<PowerCurve> PowerCurve::of(const Document& document, std::vector<Trace> traces, UtcMs origin_ms, std::optional<double> TraceSample::*value,
                                  double most) {
    PowerCurve curve;
    curve.value_ = value;
    curve.most_ = most;
    curve.origin_ms_ = origin_ms;
    if (traces.empty()) return curve;
    curve.gap_limit_s_ = gap_limit_s(traces);
    curve.whole_h_ = static_cast<double>(traces.back().last_ms - traces.front().first_ms) / ms_per_h;
    std::int64_t samples = 0;
    for (const Trace& trace : traces) samples += trace.samples;
    // Two points a span: fewer samples than that are kept as they are.
    curve.whole_kept_ = samples <= static_cast<std::int64_t>(2 * coarsest_spans);
    curve.curves_.resize(curve.whole_kept_ ? 1 : finenesses);
    double span_h = curve.whole_kept_ ? 0 : curve.whole_h_ / static_cast<double>(coarsest_spans);
    for (std::size_t finer = 1; finer < curve.curves_.size(); ++finer) span_h /= static_cast<double>(next_finer);
    Collector finest(curve.curves_.back(), value, most, origin_ms, curve.gap_limit_s_, span_h);
    for (const Trace& trace : traces) {
        const auto read = document.readSamples(trace.uuid, trace.first_ms, trace.last_ms, [&finest](std::span<const TraceSample> part) {
            finest.take(part);
            return true;
        });
        if (!read) return read.error();
    }
    finest.close();
    for (std::size_t coarser = curve.curves_.size() - 1; coarser-- > 0;) {
        span_h *= static_cast<double>(next_finer);
        Collector(curve.curves_[coarser], value, most, origin_ms, curve.gap_limit_s_, span_h).takeCurve(curve.curves_[coarser + 1]);
    }
    curve.traces_ = std::move(traces);
    return curve;
}

Result<std::vector<ChartPoint>> PowerCurve::inView(const Document& document, double from_h, double to_h) {
    const double width_h = to_h - from_h;
    if (whole_kept_ || !(width_h > 0)) return overview();
    const double first_h = from_h - margin * width_h, last_h = to_h + margin * width_h;
    double spans = coarsest_spans * width_h / whole_h_;
    for (const std::vector<ChartPoint>& points : curves_) {
        if (spans >= spans_in_view) return part_of(points, first_h, last_h);
        spans *= static_cast<double>(next_finer);
    }
    if (first_h < read_.from_h || last_h > read_.to_h) {
        auto samples = samplesBetween(document, first_h, last_h);
        if (!samples) return samples;
        read_ = {first_h, last_h, std::move(samples).value()};
    }
    return part_of(read_.points, first_h, last_h);
}

Result<std::vector<ChartPoint>> PowerCurve::samplesBetween(const Document& document, double from_h, double to_h) const {
    std::vector<ChartPoint> points;
    Collector collector(points, value_, most_, origin_ms_, gap_limit_s_, 0);
    const UtcMs from_ms = origin_ms_ + std::llround(from_h * ms_per_h), to_ms = origin_ms_ + std::llround(to_h * ms_per_h);
    for (const Trace& trace : traces_) {
        if (trace.last_ms < from_ms || trace.first_ms > to_ms) continue;
        const auto read = document.readSamples(trace.uuid, from_ms, to_ms, [&collector](std::span<const TraceSample> part) {
            collector.take(part);
            return true;
        });
        if (!read) return read.error();
    }
    return points;
}

} // namespace ullage
