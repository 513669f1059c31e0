// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double normal_95 = 1.959963984540054; ///< two-sided factor of the normal distribution

MeterGain gain_of(const Meter& meter, const MeterPoint& point) {
    MeterGain gain;
    gain.correction = point.correction;
    if (point.expanded_u_percent && point.coverage_k) gain.u_percent = *point.expanded_u_percent / *point.coverage_k;
    else gain.limit_percent = point.expanded_u_percent ? point.expanded_u_percent : meter.limit_percent;
    return gain;
}

} // namespace

double MeterGain::standard_percent() const { return u_percent ? *u_percent : limit_percent.value_or(0) / std::sqrt(3.0); }

MeterGain gain_at(const Meter& meter, double load_w) {
    if (meter.points.empty()) return {meter.correction, meter.limit_percent, {}, false};
    const auto above = std::ranges::lower_bound(meter.points, load_w, {}, &MeterPoint::load_w);
    if (above == meter.points.end() || above == meter.points.begin()) {
        MeterGain gain = gain_of(meter, above == meter.points.end() ? meter.points.back() : meter.points.front());
        gain.beyond_points = above == meter.points.end() || load_w < above->load_w;
        return gain;
    }
    const MeterGain high = gain_of(meter, *above), low = gain_of(meter, *(above - 1));
    const double f = (load_w - (above - 1)->load_w) / (above->load_w - (above - 1)->load_w);
    const auto between = [f](double from, double to) { return from + f * (to - from); };
    MeterGain gain;
    gain.correction = between(low.correction, high.correction);
    if (low.u_percent && high.u_percent) gain.u_percent = between(*low.u_percent, *high.u_percent);
    else if (const auto a = bounding_percent(low), b = bounding_percent(high); a && b) gain.limit_percent = std::max(*a, *b);
    return gain;
}

std::optional<double> bounding_percent(const MeterGain& gain) {
    if (gain.u_percent) return *gain.u_percent * normal_95 / 0.95;
    return gain.limit_percent;
}

std::optional<double> error_limit_percent(const Meter& meter) {
    if (meter.points.empty()) return meter.limit_percent;
    double widest = 0;
    for (const MeterPoint& point : meter.points) {
        const auto bound = bounding_percent(gain_of(meter, point));
        if (!bound) return std::nullopt;
        widest = std::max(widest, *bound);
    }
    return widest;
}

double typical_correction(const std::optional<Meter>& meter) {
    if (!meter) return 1.0;
    if (meter->points.empty()) return meter->correction;
    double sum = 0;
    for (const MeterPoint& point : meter->points) sum += point.correction;
    return sum / static_cast<double>(meter->points.size());
}

} // namespace ullage
