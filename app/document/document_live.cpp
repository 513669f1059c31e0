// SPDX-License-Identifier: GPL-3.0-or-later
// Meters that are read live.
#include "document/document.h"
#include "document/document_state.h"

#include <utility>

namespace ullage {

std::map<MeterId, std::string> Document::meterSources() const {
    if (!state_->book || state_->importing) return {};
    auto sources = state_->book->meter_sources();
    return sources ? std::move(sources).value() : std::map<MeterId, std::string>();
}

Result<void> Document::setMeterSource(const MeterId& meter_uuid, const std::string& source) {
    if (!state_->book) return State::nothingOpen();
    if (const auto kept = state_->book->set_meter_source(meter_uuid, source); !kept) return kept;
    Change change;
    change.meters = true;
    state_->applied(change);
    return {};
}

Result<LiveTrace> Document::beginLive(const RunId& run_uuid, const LiveSource& source) const {
    if (!state_->book) return State::nothingOpen();
    const auto* record = run(run_uuid);
    if (!record) return State::noSuch(phrase("document", "this run is no longer in the logbook"));
    return LiveTrace::begin(*state_->book, run_uuid, record->run.meter_uuid, source);
}

Result<void> Document::writeLive(LiveTrace& live, std::span<const TraceSample> samples, long left_out) {
    if (state_->importing)
        return Error{
            Failure::io, say(phrase("document", "the logbook is busy")), {}, say(phrase("document", "what has come waits and is recorded then"))};
    if (!state_->book) return State::nothingOpen();
    return live.write(*state_->book, samples, left_out);
}

Result<std::vector<LiveEvent>> Document::proposedEvents(const RunId& run_uuid) const {
    if (!state_->book) return State::nothingOpen();
    const auto* record = run(run_uuid);
    if (!record) return State::noSuch(phrase("document", "this run is no longer in the logbook"));
    const auto found = traces(run_uuid);
    if (!found) return found.error();
    return proposed_events(
        found.value(),
        [this](const Trace& trace, const SampleVisitor& visit) { return readSamples(trace.uuid, trace.first_ms, trace.last_ms, visit); }, *record);
}

} // namespace ullage
