// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/inside/log_energy.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

/// Index of the first sample at or after a moment.
std::size_t after(const LogCurve& curve, UtcMs time_ms) {
    return static_cast<std::size_t>(std::ranges::lower_bound(curve.times_ms, time_ms) - curve.times_ms.begin());
}

double share_of_gap(const LogCurve& curve, std::size_t next, UtcMs time_ms) {
    return hours_between(curve.times_ms[next - 1], time_ms) / hours_between(curve.times_ms[next - 1], curve.times_ms[next]);
}

template <class Field>
LogCurve curve_of(const RunTrace& trace, Field field) {
    LogCurve curve;
    for (const TracePoint& point : trace.points) {
        if (!point.power_w) continue;
        curve.times_ms.push_back(point.time_ms);
        curve.values.push_back(point.*field);
    }
    return curve;
}

} // namespace

double LogCurve::at(UtcMs time_ms) const {
    const std::size_t next = after(*this, time_ms);
    if (next == 0) return values.front();
    if (next == times_ms.size()) return values.back();
    return values[next - 1] + share_of_gap(*this, next, time_ms) * (values[next] - values[next - 1]);
}

double LogCurve::u_between(UtcMs time_ms) const {
    const std::size_t next = after(*this, time_ms);
    if (next == 0 || next == times_ms.size()) return 0;
    const double f = share_of_gap(*this, next, time_ms);
    return std::abs(values[next] - values[next - 1]) * std::sqrt(f * (1 - f) / 3);
}

double LogCurve::u_moment(UtcMs time_ms, double doubt_ms) const {
    const auto doubt = static_cast<UtcMs>(std::llround(doubt_ms));
    return std::abs(at(time_ms + doubt) - at(time_ms - doubt)) / 2 / std::sqrt(3.0);
}

double log_moment_doubt_ms(const RunTrace& trace, const MeasureOptions& options) {
    return std::hypot(60'000 * options.moment_doubt_min, std::sqrt(3.0) * 1000 * trace.offset_u_s);
}

LogCurve integrated_energy(const RunTrace& trace) { return curve_of(trace, &TracePoint::energy_wh); }

LogCurve integrated_square(const RunTrace& trace) { return curve_of(trace, &TracePoint::square_w2h); }

IntegrationDoubt integration_doubt(const RunTrace& trace) {
    if (trace.points.empty()) return {};
    const TracePoint& last = trace.points.back();
    return {std::sqrt(last.sampled_wh2), trace.power_step_w * last.covered_h};
}

} // namespace ullage
