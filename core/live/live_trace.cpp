// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/live_trace.h"

#include "base/ids.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

const std::string live_word = "live ";
constexpr UtcMs same_event_ms = 120'000;

/// What a source gives by its fields; 0 where it finds them out itself.
int held_by(const LiveSource& source) {
    int holds = source.sunspec ? holds_meter : 0;
    for (const LiveField& field : source.fields)
        holds |= field.role == ColumnRole::gauge ? holds_gauge : field.role == ColumnRole::output ? holds_output : holds_meter;
    return holds;
}

int held_by(std::span<const TraceSample> samples) {
    int holds = 0;
    for (const TraceSample& sample : samples) {
        if (sample.register_wh || sample.power_w || sample.voltage_v || sample.current_a) holds |= holds_meter;
        if (sample.gauge_percent) holds |= holds_gauge;
        if (sample.output_w) holds |= holds_output;
    }
    return holds;
}

} // namespace

bool is_live(const Trace& trace) { return trace.layout.starts_with(live_word); }

LiveTrace::LiveTrace(RunId run_uuid, std::optional<MeterId> meter_uuid, const LiveSource& source)
    : run_uuid_(std::move(run_uuid)), meter_uuid_(std::move(meter_uuid)), name_(source.title()), layout_(live_word + source_text(source)),
      holds_(held_by(source)) {}

Result<LiveTrace> LiveTrace::begin(const Logbook& logbook, const RunId& run_uuid, const std::optional<MeterId>& meter_uuid,
                                   const LiveSource& source) {
    const auto record = logbook.run_record(run_uuid);
    if (!record) return record.error();
    if (record.value().run.end != RunEnd::still_running)
        return Error{Failure::refused, say(phrase("live", "the run has ended")), record.value().unit.name,
                     say(phrase("live", "start a new run, or set it to still running"))};
    const auto traces = logbook.traces(run_uuid);
    if (!traces) return traces.error();
    LiveTrace live(run_uuid, meter_uuid, source);
    const auto meter_of = [&own = record.value().run.meter_uuid](const std::optional<MeterId>& stated) { return stated ? stated : own; };
    for (const Trace& trace : traces.value()) {
        // The log of another meter may stand beside this one.
        if (trace.withdrawn || (meter_of(trace.meter_uuid) != meter_of(meter_uuid) && trace.layout != live.layout_)) continue;
        // Whatever way the meter was read before: what comes now is later than that.
        const auto read = logbook.read_samples(trace.uuid, trace.last_ms, trace.last_ms, [&live](std::span<const TraceSample> samples) {
            if (!live.last_before_ || samples.back().time_ms > live.last_before_->time_ms) live.last_before_ = samples.back();
            return true;
        });
        if (!read) return read.error();
        if (is_live(trace) && trace.layout == live.layout_) live.trace_ = trace;
    }
    // A log that was brought in since lies between: the samples begin a trace of their own behind it.
    if (live.trace_ && live.last_before_ && live.trace_->last_ms < live.last_before_->time_ms) live.trace_.reset();
    return live;
}

Result<void> LiveTrace::write(Logbook& logbook, std::span<const TraceSample> samples, long left_out) {
    if (samples.empty()) return {};
    if (trace_) {
        // A source has no bytes that could be told again: size and fingerprint stay those of the name that the trace was given.
        auto grown = logbook.extend_trace(*trace_, {samples, trace_->size_bytes, trace_->fingerprint, left_out, false});
        if (!grown) return grown.error();
        trace_ = std::move(grown).value();
        return {};
    }
    Trace trace;
    trace.uuid = TraceId(new_uuid());
    trace.run_uuid = run_uuid_;
    trace.holds = holds_ != 0 ? holds_ : held_by(samples);
    if (trace.has(holds_meter)) trace.meter_uuid = meter_uuid_; // no meter tells what the unit says of itself
    trace.file_name = name_;
    trace.fingerprint = trace.uuid.text();
    trace.layout = layout_;
    auto added = logbook.add_trace(std::move(trace), [samples, left_out](Trace& about, const SampleTaker& take) {
        about.rows_left_out = left_out;
        return take(samples);
    });
    if (!added) return added.error();
    trace_ = std::move(added).value();
    return {};
}

bool is_marked(const RunRecord& record, const LiveEvent& event) {
    const auto mark = mark_of(event.kind);
    return std::ranges::any_of(record.readings, [&](const Reading& reading) {
        if (reading.withdrawn) return false;
        const UtcMs time_ms = reading.values.time_ms;
        const bool near = time_ms >= event.moment_ms - same_event_ms && time_ms <= event.by_ms + same_event_ms;
        if (!near) return false;
        if (!mark) return reading.values.remark == reading_of(event).remark;
        const bool off = *mark == MarkKind::cut_off && (reading.values.mark == MarkKind::output_tripped);
        return reading.values.mark == mark || off;
    });
}

Result<std::vector<LiveEvent>> proposed_events(const std::vector<Trace>& traces,
                                               const std::function<Result<void>(const Trace&, const SampleVisitor&)>& read, const RunRecord& record) {
    EventDetector detector(record.meter ? record.meter->step_wh : std::nullopt);
    for (const Trace& trace : traces) {
        if (trace.withdrawn || !is_live(trace)) continue;
        const auto done = read(trace, [&detector](std::span<const TraceSample> samples) {
            for (const TraceSample& sample : samples) detector.take(sample);
            return true;
        });
        if (!done) return done.error();
    }
    std::vector<LiveEvent> events = detector.take_events();
    std::erase_if(events, [&record](const LiveEvent& event) { return is_marked(record, event); });
    std::ranges::stable_sort(events, {}, &LiveEvent::moment_ms);
    return events;
}

ReadingValues reading_of(const LiveEvent& event) {
    ReadingValues values;
    values.time_ms = event.moment_ms;
    values.mark = mark_of(event.kind);
    values.register_wh = event.register_wh;
    values.remark = say(phrase("live", "%1, from the samples of the live source: %2"), say_event(event.kind), event.evidence);
    return values;
}

} // namespace ullage
