// SPDX-License-Identifier: GPL-3.0-or-later
// Logs of meters.
#include "document/document.h"
#include "document/document_state.h"
#include "style/words.h"
#include "trace/run_load.h"

#include <QScopedValueRollback>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

StoreCommand::Step trace_withdrawn(const TraceId& uuid, bool withdrawn) {
    return [uuid, withdrawn](Logbook& book) { return book.set_trace_withdrawn(uuid, withdrawn); };
}

Change readings_of(const RunId& run_uuid) {
    Change change;
    change.readings.push_back(run_uuid);
    return change;
}

} // namespace

Result<ImportedTrace> Document::importTrace(const RunId& run_uuid, const std::optional<MeterId>& meter_uuid, const QString& path,
                                            const TraceDetection& detection, const TraceReadOptions& options) {
    if (!state_->book) return State::nothingOpen();
    if (!run(run_uuid)) return State::noSuch(phrase("document", "this run is no longer in the logbook"));
    const QScopedValueRollback importing(state_->importing, true);
    auto imported = import_trace(*state_->book, utf8_of(path), run_uuid, meter_uuid, detection, options);
    if (!imported) return imported;
    const auto& uuid = imported.value().trace.uuid;
    state_->push({tr("import log"), tr("Imported log")}, readings_of(run_uuid), trace_withdrawn(uuid, false), trace_withdrawn(uuid, true));
    return imported;
}

bool Document::isImporting() const { return state_->importing; }

void Document::setHeld(bool held) { state_->importing = held; }

Result<void> Document::withdrawTrace(const Trace& trace) {
    if (!state_->book) return State::nothingOpen();
    if (const auto done = state_->book->set_trace_withdrawn(trace.uuid, true); !done) return done;
    state_->push({tr("withdraw log"), tr("Withdrawn: log")}, readings_of(trace.run_uuid), trace_withdrawn(trace.uuid, true),
                 trace_withdrawn(trace.uuid, false));
    return {};
}

Result<std::optional<Trace>> Document::traceContinuedBy(const RunId& run_uuid, const QString& path) const {
    if (!state_->book) return State::nothingOpen();
    return trace_continued_by(*state_->book, run_uuid, utf8_of(path));
}

Result<LogFollow> Document::beginFollow(const Trace& trace, const QString& path, bool maybe_anew) const {
    if (!state_->book) return State::nothingOpen();
    return LogFollow::begin(*state_->book, trace, utf8_of(path), maybe_anew);
}

Result<FollowLook> Document::lookAtLog(LogFollow& follow) {
    if (!state_->book) return State::nothingOpen();
    return follow.look(*state_->book);
}

void Document::announceGrowth(const RunId& run_uuid) {
    if (state_->book && run(run_uuid)) state_->applied(readings_of(run_uuid));
}

Result<std::vector<Trace>> Document::traces(const RunId& run_uuid) const {
    if (!state_->book) return State::nothingOpen();
    auto found = state_->book->traces(run_uuid);
    if (found) std::erase_if(found.value(), [](const Trace& trace) { return trace.withdrawn; });
    return found;
}

Result<void> Document::readSamples(const TraceId& trace_uuid, UtcMs from_ms, UtcMs to_ms, const SampleVisitor& visit) const {
    if (!state_->book) return State::nothingOpen();
    return state_->book->read_samples(trace_uuid, from_ms, to_ms, visit);
}

Result<std::optional<LoadStatistics>> Document::load(const RunId& run_uuid) const {
    if (!state_->book) return State::nothingOpen();
    const auto* record = run(run_uuid);
    if (!record) return State::noSuch(phrase("document", "this run is no longer in the logbook"));
    return load_of_run(*state_->book, *record);
}

Result<std::map<std::string, std::string>> Document::traceAnswers() const {
    if (!state_->book) return State::nothingOpen();
    return state_->book->trace_answers();
}

} // namespace ullage
