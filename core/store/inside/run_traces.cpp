// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/run_traces.h"

#include "model/gauge_thinner.h"
#include "model/trace_thinner.h"
#include "store/queries/meter_queries.h"
#include "store/queries/trace_queries.h"

#include <algorithm>

namespace ullage::store {
namespace {

using TraceGroup = std::vector<const Trace*>;

/// The traces with a meter's values, a group a meter; that of the run's own meter first. One without a meter counts as the run's own.
std::vector<TraceGroup> by_meter(const std::vector<Trace>& traces, const std::optional<MeterId>& run_meter_uuid) {
    std::vector<TraceGroup> groups;
    const auto meter_of = [&](const Trace& trace) { return trace.meter_uuid ? trace.meter_uuid : run_meter_uuid; };
    for (const Trace& trace : traces) {
        if (!trace.has(holds_meter)) continue;
        const auto group = std::ranges::find_if(groups, [&](const TraceGroup& known) { return meter_of(*known.front()) == meter_of(trace); });
        if (group == groups.end()) groups.push_back({&trace});
        else group->push_back(&trace);
    }
    std::ranges::stable_partition(groups, [&](const TraceGroup& group) { return meter_of(*group.front()) == run_meter_uuid; });
    return groups;
}

/// Hands the samples of traces over in order. False where a block cannot be read.
template <class Taker>
bool visit(SQLite::Database& database, const TraceGroup& traces, UtcMs from_ms, UtcMs to_ms, Taker& taker) {
    for (const Trace* trace : traces) {
        const auto stored = find_trace(database, trace->uuid);
        const auto take = [&taker](std::span<const TraceSample> samples) {
            taker.take(samples);
            return true;
        };
        if (!stored || !visit_samples(database, stored->id, from_ms, to_ms, take)) return false;
    }
    return true;
}

double largest_offset_u_s(const TraceGroup& traces) {
    double largest_s = 0;
    for (const Trace* trace : traces) largest_s = std::max(largest_s, trace->offset_u_s.value_or(0));
    return largest_s;
}

/// False where a block cannot be read.
bool thin(SQLite::Database& database, const RunRecord& record, const TraceGroup& group, std::optional<RunTrace>& thinned) {
    std::vector<Trace> traces;
    for (const Trace* trace : group) traces.push_back(*trace);
    TraceThinner thinner(record.readings, record.run.end, traces.front().first_ms, traces.back().last_ms, gap_limit_s(traces));
    if (!visit(database, group, thinner.from_ms(), thinner.to_ms(), thinner)) return false;
    thinned = thinner.finish();
    if (!thinned) return true;
    thinned->offset_u_s = largest_offset_u_s(group);
    thinned->meter_uuid = traces.front().meter_uuid;
    return true;
}

/// The gauge of the run's traces. False where a block cannot be read.
bool thin_gauge(SQLite::Database& database, const std::vector<Trace>& traces, const std::vector<TraceGroup>& groups, std::optional<GaugeLog>& gauge) {
    TraceGroup with_gauge;
    for (const Trace& trace : traces)
        if (trace.has(holds_gauge)) with_gauge.push_back(&trace);
    if (with_gauge.empty()) return true;
    GaugeThinner thinner;
    if (!visit(database, with_gauge, earliest_ms, latest_ms, thinner)) return false;
    gauge = thinner.finish();
    if (!gauge) return true;
    gauge->offset_u_s = largest_offset_u_s(with_gauge);
    gauge->own_clock = !std::ranges::all_of(
        with_gauge, [&](const Trace* trace) { return !groups.empty() && std::ranges::find(groups.front(), trace) != groups.front().end(); });
    return true;
}

} // namespace

bool RunTraces::fill(SQLite::Database& database, std::int64_t run_id, RunRecord& record) {
    std::vector<Trace> traces = listed_traces(database, run_id);
    std::erase_if(traces, [](const Trace& trace) { return trace.withdrawn; });
    std::vector<UtcMs> moments;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn) moments.push_back(reading.values.time_ms);
    record.trace.reset();
    record.other_logs.clear();
    record.gauge_log.reset();
    if (traces.empty() || moments.empty()) {
        known_.erase(record.run.uuid);
        return true;
    }
    Known now{{}, moments, record.run.end == RunEnd::still_running, record.run.meter_uuid};
    for (const Trace& trace : traces) now.traces.push_back({trace.uuid, trace.samples});
    Known& known = known_[record.run.uuid];
    if (!known.rests_on_the_same(now)) {
        const std::vector<TraceGroup> groups = by_meter(traces, record.run.meter_uuid);
        bool sound = thin_gauge(database, traces, groups, now.gauge);
        for (std::size_t g = 0; sound && g < groups.size(); ++g) {
            std::optional<RunTrace> thinned;
            sound = thin(database, record, groups[g], thinned);
            if (g == 0) now.trace = std::move(thinned);
            else if (thinned) now.others.push_back(std::move(*thinned));
        }
        if (!sound) {
            known_.erase(record.run.uuid);
            return false;
        }
        known = std::move(now);
    }
    record.trace = known.trace;
    record.gauge_log = known.gauge;
    // The log of another meter alone stands beside the registers noted by hand.
    std::vector<RunTrace> others = known.others;
    if (known.trace && known.trace->meter_uuid && record.run.meter_uuid && known.trace->meter_uuid != record.run.meter_uuid)
        others.insert(others.begin(), *known.trace);
    if (others.empty()) return true;
    const std::map<std::int64_t, Meter> meters = all_meters(database);
    for (const RunTrace& trace : others) {
        const auto meter = trace.meter_uuid ? meter_id(database, *trace.meter_uuid) : std::nullopt;
        record.other_logs.push_back({meter ? std::optional(meters.at(*meter)) : std::nullopt, trace});
    }
    return true;
}

} // namespace ullage::store
