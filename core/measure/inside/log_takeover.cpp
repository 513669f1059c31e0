// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/inside/log_takeover.h"

#include "measure/logged_energy.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

constexpr auto slack_ms = static_cast<UtcMs>(complete_within_h * ms_per_hour);

struct OtherLog {
    std::size_t log = 0;
    DenseLog dense;
    double correction = 1;
};

std::vector<OtherLog> other_logs(const RunRecord& record, const MeasureOptions& options) {
    std::vector<OtherLog> others;
    for (std::size_t log = 0; log < record.other_logs.size(); ++log) {
        const RunRecord theirs = by_other_log(record, log);
        const RunScan scan = scan_run(theirs);
        if (!scan.first_ms || theirs.trace->points.empty()) continue;
        if (auto dense = dense_log(theirs, scan, options)) others.push_back({log, std::move(*dense), typical_correction(theirs.meter)});
    }
    return others;
}

bool covers(const OtherLog& other, const PowerGap& gap) {
    const LogCurve& curve = other.dense.energy_wh;
    if (curve.times_ms.front() > gap.from_ms + slack_ms || curve.times_ms.back() < gap.to_ms - slack_ms) return false;
    return std::ranges::none_of(other.dense.open_gaps, [&](const PowerGap& open) {
        return std::min(open.to_ms, gap.to_ms) - std::max(open.from_ms, gap.from_ms) > slack_ms;
    });
}

/// Puts the course of another curve over a stretch into one that says nothing there; what comes after it is lifted.
void splice(const LogCurve& from, const PowerGap& gap, LogCurve& into) {
    const double begin = from.at(gap.from_ms), gained = from.at(gap.to_ms) - begin;
    const auto at = static_cast<std::size_t>(std::ranges::upper_bound(into.times_ms, gap.from_ms) - into.times_ms.begin());
    const double base = at == 0 ? into.values.front() - gained : into.values[at - 1];
    std::vector<UtcMs> times_ms;
    std::vector<double> values;
    const auto put = [&](UtcMs time_ms) {
        if (at > 0 && time_ms <= into.times_ms[at - 1]) return;
        if (at < into.times_ms.size() && time_ms >= into.times_ms[at]) return;
        if (!times_ms.empty() && time_ms <= times_ms.back()) return;
        times_ms.push_back(time_ms);
        values.push_back(base + from.at(time_ms) - begin);
    };
    put(gap.from_ms);
    for (const UtcMs time_ms : from.times_ms)
        if (time_ms > gap.from_ms && time_ms < gap.to_ms) put(time_ms);
    put(gap.to_ms);
    if (at > 0)
        for (std::size_t i = at; i < into.values.size(); ++i) into.values[i] += gained;
    const auto place = static_cast<std::ptrdiff_t>(at);
    into.times_ms.insert(into.times_ms.begin() + place, times_ms.begin(), times_ms.end());
    into.values.insert(into.values.begin() + place, values.begin(), values.end());
}

/// What its meter measured over a stretch.
MeterPart part_over(const OtherLog& other, double wh) {
    MeterPart part;
    part.meter = MeterOfRun::other;
    part.log = other.log;
    const double whole_wh = other.dense.energy_wh.values.back() - other.dense.energy_wh.values.front();
    const double share = whole_wh > 0 ? wh / whole_wh : 0;
    part.is_stated = !other.dense.track.meters.empty();
    for (const MeterPart& measured : other.dense.track.meters) {
        part.register_wh += share * measured.register_wh;
        part.delivered_wh += share * measured.delivered_wh;
        part.limit_wh += share * measured.limit_wh;
        part.u_wh += share * measured.u_wh;
        part.beyond_points_wh += share * measured.beyond_points_wh;
        part.out_of_range_wh += share * measured.out_of_range_wh;
        part.is_stated = part.is_stated && measured.is_stated;
    }
    part.delivered_wh = wh;
    return part;
}

double u_of_ends(const OtherLog& other, const PowerGap& gap, double wh, double clocks_s) {
    const LogCurve& curve = other.dense.energy_wh;
    const LogUse& use = *other.dense.track.log;
    double variance = 0;
    for (const UtcMs time_ms : {gap.from_ms, gap.to_ms})
        variance += std::pow(curve.u_between(time_ms), 2) + std::pow(curve.u_moment(time_ms, 1000 * clocks_s), 2);
    const double whole_wh = curve.values.back() - curve.values.front();
    const double share = whole_wh > 0 ? std::min(1.0, wh / whole_wh) : 0;
    if (use.integrated)
        variance += share * std::pow(other.correction * use.u_sampling_wh, 2) + std::pow(share * other.correction * use.step_half_width_wh, 2) / 3;
    else variance += std::pow(other.correction * use.step_wh, 2) / 6;
    return std::sqrt(variance);
}

} // namespace

RunRecord by_other_log(const RunRecord& record, std::size_t log) {
    RunRecord theirs = record;
    theirs.meter = record.other_logs[log].meter;
    theirs.run.meter_uuid = record.other_logs[log].trace.meter_uuid;
    theirs.second_meter.reset();
    theirs.trace = record.other_logs[log].trace;
    theirs.other_logs.clear();
    theirs.gauge_log.reset();
    for (Reading& reading : theirs.readings) {
        reading.values.register_wh.reset();
        if (reading.values.mark == MarkKind::meter_zeroed || reading.values.mark == MarkKind::meter_swapped) reading.values.mark.reset();
    }
    return theirs;
}

void add_part(const MeterPart& part, std::vector<MeterPart>& parts) {
    const auto known = std::ranges::find_if(parts, [&](const MeterPart& each) { return each.meter == part.meter && each.log == part.log; });
    if (known == parts.end()) {
        parts.push_back(part);
        return;
    }
    known->register_wh += part.register_wh;
    known->delivered_wh += part.delivered_wh;
    known->limit_wh += part.limit_wh;
    known->u_wh += part.u_wh;
    known->beyond_points_wh += part.beyond_points_wh;
    known->out_of_range_wh += part.out_of_range_wh;
    known->is_stated = known->is_stated && part.is_stated;
}

void take_over_gaps(const RunRecord& record, const RunScan& scan, const MeasureOptions& options, DenseLog& dense) {
    if (record.other_logs.empty()) return;
    const std::vector<OtherLog> others = other_logs(record, options);
    const bool ceased = record.trace->has_power && record.trace->off_ms.has_value();
    std::vector<TakenOver>& taken_over = dense.track.log->taken_over;
    const auto fill = [&](const PowerGap& gap) {
        if (gap.to_ms - gap.from_ms <= slack_ms) return false;
        for (const OtherLog& other : others) {
            if (!covers(other, gap)) continue;
            const RunTrace& trace = record.other_logs[other.log].trace;
            TakenOver taken{gap.from_ms, gap.to_ms, {}, 0, {}};
            const double wh = other.dense.energy_wh.at(gap.to_ms) - other.dense.energy_wh.at(gap.from_ms);
            taken.part = part_over(other, wh);
            taken.u_wh = u_of_ends(other, gap, wh, clocks_apart_s(record.trace->offset_u_s, trace.offset_u_s));
            if (const auto& meter = record.other_logs[other.log].meter) taken.name = meter->name;
            splice(other.dense.energy_wh, gap, dense.energy_wh);
            splice(other.dense.square_w2h, gap, dense.square_w2h);
            taken_over.push_back(std::move(taken));
            return true;
        }
        return false;
    };
    fill({*scan.first_ms, dense.energy_wh.times_ms.front()});
    std::erase_if(dense.open_gaps, fill);
    if (ceased) return;
    UtcMs end_ms = log_end_of(record, scan);
    if (end_ms == latest_ms)
        for (const OtherLog& other : others) end_ms = other.dense.energy_wh.times_ms.back();
    if (end_ms != latest_ms) fill({dense.energy_wh.times_ms.back(), end_ms});
}

} // namespace ullage
