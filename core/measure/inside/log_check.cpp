// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/inside/log_check.h"

#include "measure/budget.h"
#include "measure/inside/log_energy.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ullage {
namespace {

/// What a value noted by hand is to lie within, by the log.
struct Expected {
    double at_wh = 0, low_wh = 0, high_wh = 0;
};

/// Absent where the log has no samples about the moment, or its register falls there.
std::optional<Expected> expected_at(const std::vector<RegisterSample>& samples, UtcMs time_ms, double doubt_ms, double step_wh) {
    const auto doubt = static_cast<UtcMs>(std::llround(doubt_ms));
    const auto low = std::ranges::upper_bound(samples, time_ms - doubt, {}, &RegisterSample::time_ms);
    const auto high = std::ranges::lower_bound(samples, time_ms + doubt, {}, &RegisterSample::time_ms);
    if (low == samples.begin() || high == samples.end()) return std::nullopt;
    const auto from = low - 1;
    if (high->time_ms - from->time_ms > 2 * doubt + bridged_by_hand_ms) return std::nullopt;
    if (!std::ranges::is_sorted(from, high + 1, {}, &RegisterSample::wh)) return std::nullopt;
    const auto next = std::ranges::lower_bound(from, high, time_ms, {}, &RegisterSample::time_ms);
    const auto& before = next == from ? *from : *(next - 1);
    const double f = next->time_ms > before.time_ms ? hours_between(before.time_ms, time_ms) / hours_between(before.time_ms, next->time_ms) : 0.0;
    return Expected{before.wh + std::clamp(f, 0.0, 1.0) * (next->wh - before.wh), from->wh - step_wh, high->wh + step_wh};
}

} // namespace

bool log_is_of_run_meter(const RunRecord& record) {
    return !record.trace->meter_uuid || !record.run.meter_uuid || *record.trace->meter_uuid == *record.run.meter_uuid;
}

std::vector<const Reading*> readings_kept(const RunRecord& record) {
    std::vector<const Reading*> readings;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn) readings.push_back(&reading);
    return readings;
}

std::vector<PowerGap> gaps_within(const RunTrace& trace, UtcMs from_ms, UtcMs to_ms) {
    std::vector<PowerGap> within;
    for (const PowerGap& gap : trace.gaps)
        if (gap.to_ms > from_ms && gap.from_ms < to_ms) within.push_back({std::max(gap.from_ms, from_ms), std::min(gap.to_ms, to_ms)});
    return within;
}

std::vector<RegisterSample> register_samples(const RunTrace& trace) {
    std::vector<RegisterSample> samples;
    for (const TracePoint& point : trace.points)
        if (point.register_wh) samples.push_back({point.time_ms, *point.register_wh});
    return samples;
}

HandCheck hand_check(const RunRecord& record, const MeasureOptions& options) {
    HandCheck check;
    const std::vector<RegisterSample> samples = register_samples(*record.trace);
    const double doubt_ms = log_moment_doubt_ms(*record.trace, options), step_wh = register_step_wh(record);
    for (const Reading* reading : readings_kept(record)) {
        if (!reading->values.register_wh) continue;
        const auto expected = expected_at(samples, reading->values.time_ms, doubt_ms, step_wh);
        if (!expected) continue;
        ++check.compared;
        if (*reading->values.register_wh >= expected->low_wh && *reading->values.register_wh <= expected->high_wh) ++check.agreeing;
        else check.differing.emplace_back(reading, expected->at_wh);
    }
    return check;
}

} // namespace ullage
