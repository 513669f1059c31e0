// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_events.h"
#include "live/live_source.h"
#include "store/logbook.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace ullage {

/// The samples of a live source in a run: a trace like that of a log, which grows while the source speaks. A run that was left and is taken up again
/// goes on in the same trace; the time between is a gap of it.
class LiveTrace {
public:
    /// Errors: not_found; refused: the run has ended, or it has a trace of another meter.
    static Result<LiveTrace> begin(const Logbook& logbook, const RunId& run_uuid, const std::optional<MeterId>& meter_uuid, const LiveSource& source);

    /// One durable transaction. `left_out`: what the gate has left out since the last write. Errors of the logbook: nothing was written, write again;
    /// refused: the trace was withdrawn, or another is in its way: it will not go better the next time.
    Result<void> write(Logbook& logbook, std::span<const TraceSample> samples, long left_out);

    /// As it stands in the logbook; absent until something was written.
    [[nodiscard]] const std::optional<Trace>& trace() const { return trace_; }
    /// The last sample that the run had already, for SampleGate.
    [[nodiscard]] const std::optional<TraceSample>& last_before() const { return last_before_; }
    [[nodiscard]] const RunId& run_uuid() const { return run_uuid_; }

private:
    LiveTrace(RunId run_uuid, std::optional<MeterId> meter_uuid, const LiveSource& source);

    RunId run_uuid_;
    std::optional<MeterId> meter_uuid_;
    std::string name_, layout_;
    int holds_ = 0; ///< as Trace::holds; 0: told by the first samples
    std::optional<Trace> trace_;
    std::optional<TraceSample> last_before_;
};

/// True for the trace of a live source: no file continues it.
[[nodiscard]] bool is_live(const Trace& trace);

/// The events that the samples of a run's live traces say, in order of time; those whose mark the run has already within two minutes are left out.
/// Reads all of them. Errors: those of the logbook.
[[nodiscard]] Result<std::vector<LiveEvent>> proposed_events(const std::vector<Trace>& traces,
                                                             const std::function<Result<void>(const Trace&, const SampleVisitor&)>& read,
                                                             const RunRecord& record);
/// Whether the run has a mark of this event already.
[[nodiscard]] bool is_marked(const RunRecord& record, const LiveEvent& event);

/// The reading that accepting an event records: its moment, its mark, the register there, and the evidence as its remark.
[[nodiscard]] ReadingValues reading_of(const LiveEvent& event);

} // namespace ullage
