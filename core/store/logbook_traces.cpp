// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"
#include "model/trace_overlap.h"
#include "store/inside/block_writer.h"
#include "store/inside/logbook_impl.h"
#include "store/inside/value_checks.h"
#include "store/logbook.h"
#include "store/queries/meter_queries.h"
#include "store/queries/rows.h"
#include "store/queries/trace_queries.h"

#include <SQLiteCpp/Database.h>

#include <utility>

namespace ullage {

namespace {

/// Why a trace may not reach from its first to its last sample beside the others that the run has.
std::optional<Error> conflict(SQLite::Database& database, const std::vector<Trace>& present, const Trace& wanted) {
    const std::optional<MeterId> own = store::meter_of_run(database, wanted.run_uuid);
    for (const Trace& other : present) {
        if (other.withdrawn || other.uuid == wanted.uuid) continue;
        const TraceOverlap overlap = trace_overlap(wanted, other, own);
        if (overlap == TraceOverlap::none) continue;
        if (overlap == TraceOverlap::meter)
            return Error{Failure::refused, say(phrase("store", "its times overlap those of `%1`, which the run has already"), other.file_name),
                         wanted.file_name, say(phrase("store", "withdraw that trace, cut the log, or name the meter if another wrote it"))};
        const Phrase told_twice = overlap == TraceOverlap::gauge
                                      ? phrase("store", "it tells the unit's gauge for times at which `%1` does so already")
                                      : phrase("store", "it tells the unit's output power for times at which `%1` does so already");
        return Error{Failure::refused, say(told_twice, other.file_name), wanted.file_name,
                     say(phrase("store", "withdraw that trace, or leave that column unused"))};
    }
    return std::nullopt;
}

/// Why a new trace may not stand beside those that the run has.
std::optional<Error> obstacle(SQLite::Database& database, const std::vector<Trace>& present, const Trace& added) {
    for (const Trace& other : present)
        if (!other.withdrawn && other.fingerprint == added.fingerprint && other.size_bytes == added.size_bytes)
            return Error{Failure::refused, say(phrase("store", "this log is in the run already (as `%1`)"), other.file_name), added.file_name,
                         say(phrase("store", "nothing was imported"))};
    return conflict(database, present, added);
}

void keep_answers(SQLite::Database& database, const std::string& signature, const std::string& answers, UtcMs now_ms) {
    SQLite::Statement keep(database, "INSERT INTO trace_layouts (signature, answers, kept_ms) VALUES (?1, ?2, ?3) "
                                     "ON CONFLICT (signature) DO UPDATE SET answers = ?2, kept_ms = ?3");
    store::Binder(keep).text(signature).text(answers).integer(now_ms);
    keep.exec();
}

} // namespace

Result<Trace> Logbook::add_trace(Trace trace, const TraceSource& source) {
    return impl_->change([&]() -> Result<Trace> {
        SQLite::Database& database = impl_->database();
        const auto run = store::run_id(database, trace.run_uuid);
        if (!run) return impl_->not_found(phrase("store", "the logbook has no such run"));
        if (trace.meter_uuid && !store::meter_id(database, *trace.meter_uuid))
            return impl_->not_found(phrase("store", "the logbook has no such meter"));
        if (trace.uuid.empty()) trace.uuid = TraceId(new_uuid());
        if (store::find_trace(database, trace.uuid)) return impl_->known_already(phrase("store", "the logbook has this trace already"));
        const std::int64_t id = store::next_trace_id(database);
        store::BlockWriter blocks(database, id);
        if (auto produced = source(trace, [&blocks](std::span<const TraceSample> samples) { return blocks.take(samples); }); !produced)
            return produced.error();
        blocks.finish(trace);
        if (trace.samples == 0)
            return Error{Failure::bad_input, say(phrase("store", "no row of the log could be taken")), trace.file_name,
                         say(phrase("store", "see which rows were left out, and why"))};
        if (auto refused = obstacle(database, store::listed_traces(database, run), trace)) return *refused;
        trace.added_ms = impl_->clock->now_ms();
        trace.withdrawn = false;
        if (auto sound = store::check(trace); !sound) return sound.error();
        store::insert_trace(database, id, trace);
        if (!trace.signature.empty()) {
            if (auto sound = store::check_trace_answers(trace.signature, trace.layout); !sound) return sound.error();
            keep_answers(database, trace.signature, trace.layout, trace.added_ms);
        }
        return trace;
    });
}

Result<Trace> Logbook::extend_trace(const Trace& known, const TraceGrowth& growth) {
    return impl_->change(
        [&]() -> Result<Trace> {
            SQLite::Database& database = impl_->database();
            const auto stored = store::find_trace(database, known.uuid);
            if (!stored) return impl_->not_found(phrase("store", "the logbook has no such trace"));
            if (stored->trace.withdrawn)
                return Error{Failure::refused, say(phrase("store", "this log was withdrawn from its run")), known.file_name,
                             say(phrase("store", "import it again"))};
            if (stored->trace != known)
                return Error{Failure::refused, say(phrase("store", "this log has been added to meanwhile")), known.file_name,
                             say(phrase("store", "follow it again"))};
            Trace trace = known;
            store::BlockWriter blocks(database, stored->id);
            if (!blocks.go_on(trace)) return impl_->damaged_block();
            if (auto taken = blocks.take(growth.samples); !taken) return taken.error();
            blocks.finish(trace);
            if (auto refused = conflict(database, store::listed_traces(database, store::run_id(database, trace.run_uuid)), trace)) return *refused;
            trace.size_bytes = growth.size_bytes;
            trace.fingerprint = growth.fingerprint;
            trace.rows_left_out += growth.rows_left_out;
            if (growth.started_anew) ++trace.started_anew;
            store::grow_trace(database, stored->id, trace);
            return trace;
        },
        Settling::within_seconds);
}

Result<std::vector<Trace>> Logbook::traces(const RunId& run_uuid) const {
    return impl_->read([&]() -> Result<std::vector<Trace>> {
        std::optional<std::int64_t> run;
        if (!run_uuid.empty()) {
            run = store::run_id(impl_->database(), run_uuid);
            if (!run) return impl_->not_found(phrase("store", "the logbook has no such run"));
        }
        return store::listed_traces(impl_->database(), run);
    });
}

Result<void> Logbook::set_trace_withdrawn(const TraceId& trace_uuid, bool withdrawn) {
    return impl_->change([&]() -> Result<void> {
        const auto stored = store::find_trace(impl_->database(), trace_uuid);
        if (!stored) return impl_->not_found(phrase("store", "the logbook has no such trace"));
        if (!withdrawn) {
            const auto run = store::run_id(impl_->database(), stored->trace.run_uuid);
            if (auto refused = obstacle(impl_->database(), store::listed_traces(impl_->database(), run), stored->trace);
                refused && stored->trace.withdrawn)
                return *refused;
        }
        store::withdraw_trace(impl_->database(), stored->id, withdrawn);
        return {};
    });
}

Result<void> Logbook::read_samples(const TraceId& trace_uuid, UtcMs from_ms, UtcMs to_ms, const SampleVisitor& visit) const {
    return impl_->read([&]() -> Result<void> {
        const auto stored = store::find_trace(impl_->database(), trace_uuid);
        if (!stored) return impl_->not_found(phrase("store", "the logbook has no such trace"));
        if (!store::visit_samples(impl_->database(), stored->id, from_ms, to_ms, visit)) return impl_->damaged_block();
        return {};
    });
}

Result<std::map<std::string, std::string>> Logbook::trace_answers() const {
    return impl_->read([&]() -> Result<std::map<std::string, std::string>> {
        SQLite::Statement query(impl_->database(), "SELECT signature, answers FROM trace_layouts");
        std::map<std::string, std::string> kept;
        while (query.executeStep()) {
            store::Row row(query);
            std::string signature = row.text();
            kept[std::move(signature)] = row.text();
        }
        return kept;
    });
}

} // namespace ullage
