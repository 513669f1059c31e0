// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/logged_energy.h"

#include "measure/budget.h"
#include "measure/inside/log_check.h"
#include "measure/inside/log_takeover.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr double least_apart_s = 30;

std::optional<LoggedEnergy> by_own_log(const RunRecord& record, const MeasureOptions& options) {
    if (!record.trace || record.trace->points.empty()) return std::nullopt;
    const RunScan scan = scan_run(record);
    if (!scan.first_ms) return std::nullopt;
    const std::optional<DenseLog> dense = dense_log(record, scan, options);
    if (!dense) return std::nullopt;
    const double correction = typical_correction(record.meter);
    LoggedEnergy energy;
    energy.times_ms = dense->energy_wh.times_ms;
    energy.wh = dense->energy_wh.values;
    energy.gaps = dense->open_gaps;
    for (const MissingGap& gap : dense->track.missing_gaps)
        if (gap.inside && gap.point > 0) energy.gaps.push_back({dense->track.points[gap.point - 1].time_ms, dense->track.points[gap.point].time_ms});
    const LogUse& use = *dense->track.log;
    energy.step_wh = use.step_wh * correction;
    energy.u_whole_wh = use.u_sampling_wh * correction;
    energy.step_half_wh = use.step_half_width_wh * correction;
    energy.clock_u_s = record.trace->offset_u_s;
    return energy;
}

std::optional<LoggedEnergy> by_hand(const RunRecord& record, const MeasureOptions& options) {
    const RegisterTrack track = unwrap_register(record, options);
    if (!track.usable()) return std::nullopt;
    LoggedEnergy energy;
    energy.noted_by_hand = true;
    energy.step_wh = register_step_wh(record) * typical_correction(record.meter);
    for (const RegisterPoint& point : track.points) {
        if (!energy.times_ms.empty() && point.time_ms <= energy.times_ms.back()) continue;
        energy.times_ms.push_back(point.time_ms);
        energy.wh.push_back(point.delivered_wh);
    }
    for (const MissingGap& gap : track.missing_gaps)
        if (gap.inside && gap.point > 0) energy.gaps.push_back({track.points[gap.point - 1].time_ms, track.points[gap.point].time_ms});
    return energy.times_ms.size() >= 2 ? std::optional(energy) : std::nullopt;
}

} // namespace

double LoggedEnergy::at(UtcMs time_ms) const { return LogCurve{times_ms, wh}.at(time_ms); }

bool LoggedEnergy::has_gap(UtcMs from_ms, UtcMs to_ms) const {
    const auto slack_ms = static_cast<UtcMs>(complete_within_h * ms_per_hour);
    return std::ranges::any_of(gaps, [&](const PowerGap& gap) { return std::min(gap.to_ms, to_ms) - std::max(gap.from_ms, from_ms) > slack_ms; });
}

double LoggedEnergy::variance_wh2(double stretch_wh) const {
    const double whole_wh = wh.back() - wh.front();
    const double share = whole_wh > 0 ? std::clamp(stretch_wh / whole_wh, 0.0, 1.0) : 0;
    return step_wh * step_wh / 6 + share * u_whole_wh * u_whole_wh + std::pow(share * step_half_wh, 2) / 3;
}

std::optional<LoggedEnergy> logged_energy(const RunRecord& record, const MeasureOptions& options) {
    if (record.trace && !record.trace->points.empty() && log_is_of_run_meter(record))
        if (auto logged = by_own_log(record, options)) return logged;
    return by_hand(record, options);
}

std::optional<LoggedEnergy> logged_energy_of_other(const RunRecord& record, std::size_t log, const MeasureOptions& options) {
    return by_own_log(by_other_log(record, log), options);
}

double clocks_apart_s(double first_offset_u_s, double second_offset_u_s) {
    return std::max(least_apart_s, std::sqrt(3.0) * std::hypot(first_offset_u_s, second_offset_u_s));
}

} // namespace ullage
