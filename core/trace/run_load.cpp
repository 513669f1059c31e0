// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/run_load.h"

#include "model/trace_thinner.h"

#include <algorithm>

namespace ullage {
namespace {

struct Window {
    UtcMs from_ms = earliest_ms, to_ms = latest_ms;
};

Window window_of(const RunRecord& record) {
    Window window;
    std::optional<UtcMs> last_ms, cut_off_ms;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        if (!last_ms) window.from_ms = reading.values.time_ms;
        last_ms = reading.values.time_ms;
        if (reading.values.mark == MarkKind::cut_off && !cut_off_ms) cut_off_ms = last_ms;
    }
    if (cut_off_ms) window.to_ms = *cut_off_ms;
    else if (last_ms && record.run.end != RunEnd::still_running) window.to_ms = *last_ms;
    return window;
}

/// Leaves the traces of the run's own meter; where it has none, those of the first.
void keep_one_meter(const std::optional<MeterId>& own, std::vector<Trace>& traces) {
    const auto meter_of = [&own](const Trace& trace) { return trace.meter_uuid ? trace.meter_uuid : own; };
    const bool has_own = std::ranges::any_of(traces, [&](const Trace& trace) { return meter_of(trace) == own; });
    const std::optional<MeterId> kept = has_own ? own : meter_of(traces.front());
    std::erase_if(traces, [&](const Trace& trace) { return meter_of(trace) != kept; });
}

} // namespace

Result<std::optional<LoadStatistics>> load_of_run(const Logbook& logbook, const RunRecord& record) {
    Result<std::vector<Trace>> listed = logbook.traces(record.run.uuid);
    if (!listed) return listed.error();
    std::vector<Trace> traces = std::move(listed).value();
    std::erase_if(traces, [](const Trace& trace) { return trace.withdrawn || !trace.has(holds_meter); });
    if (traces.empty()) return std::optional<LoadStatistics>();
    keep_one_meter(record.run.meter_uuid, traces);
    const Window window = window_of(record);
    LoadMeter meter(gap_limit_s(traces));
    const auto each_sample = [&](void (LoadMeter::*take)(std::span<const TraceSample>)) -> Result<void> {
        for (const Trace& trace : traces) {
            auto read = logbook.read_samples(trace.uuid, window.from_ms, window.to_ms, [&](std::span<const TraceSample> samples) {
                (meter.*take)(samples);
                return true;
            });
            if (!read) return read;
        }
        return {};
    };
    if (auto read = each_sample(&LoadMeter::take); !read) return read.error();
    if (meter.needs_second_pass())
        if (auto read = each_sample(&LoadMeter::take_again); !read) return read.error();
    return meter.statistics();
}

} // namespace ullage
