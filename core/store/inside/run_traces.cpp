// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/run_traces.h"

#include "store/queries/trace_queries.h"

#include <algorithm>

namespace ullage::store {
bool RunTraces::fill(SQLite::Database& database, std::int64_t run_id, RunRecord& record) {
    std::vector<Trace> traces = listed_traces(database, run_id);
    std::erase_if(traces, [](const Trace& trace) { return trace.withdrawn; });
    std::vector<UtcMs> moments;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn) moments.push_back(reading.values.time_ms);
    record.trace.reset();
    if (traces.empty() || moments.empty()) {
        known_.erase(record.run.uuid);
        return true;
    }
    Known now{{}, moments, record.run.end == RunEnd::still_running, {}};
    for (const Trace& trace : traces) now.traces.push_back({trace.uuid, trace.samples});
    Known& known = known_[record.run.uuid];
    if (known.traces != now.traces || known.moments != now.moments || known.running != now.running) {
        TraceThinner thinner(record.readings, record.run.end, traces.front().first_ms, traces.back().last_ms, gap_limit_s(traces));
        double offset_u_s = 0;
        for (const Trace& trace : traces) {
            offset_u_s = std::max(offset_u_s, trace.offset_u_s.value_or(0));
            const auto stored = find_trace(database, trace.uuid);
            if (!stored || !visit_samples(database, stored->id, thinner.from_ms(), thinner.to_ms(), [&thinner](std::span<const TraceSample> samples) {
                    thinner.take(samples);
                    return true;
                })) {
                known_.erase(record.run.uuid);
                return false;
            }
        }
        now.trace = thinner.finish();
        if (now.trace) {
            now.trace->offset_u_s = offset_u_s;
            now.trace->meter_uuid = traces.front().meter_uuid;
        }
        known = std::move(now);
    }
    record.trace = known.trace;
    return true;
}

} // namespace ullage::store
