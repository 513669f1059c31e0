// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/trace_overlap.h"

namespace ullage {

TraceOverlap trace_overlap(const Trace& one, const Trace& other, const std::optional<MeterId>& run_meter) {
    if (one.first_ms > other.last_ms || other.first_ms > one.last_ms) return TraceOverlap::none;
    const auto meter_of = [&run_meter](const Trace& trace) { return trace.meter_uuid ? trace.meter_uuid : run_meter; };
    const auto both = [&](int what) { return one.has(what) && other.has(what); };
    if (both(holds_meter) && meter_of(one) == meter_of(other)) return TraceOverlap::meter;
    if (both(holds_gauge)) return TraceOverlap::gauge;
    return both(holds_output) ? TraceOverlap::output : TraceOverlap::none;
}

} // namespace ullage
