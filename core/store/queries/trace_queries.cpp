// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/trace_queries.h"

#include "store/inside/trace_codec.h"
#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <functional>
#include <optional>

namespace ullage::store {

namespace {

const std::string select_traces =
    "SELECT traces.id, traces.uuid, runs.uuid, meters.uuid, file_name, fingerprint, size_bytes, layout, offset_ms, rows_left_out, samples, "
    "first_ms, last_ms, added_ms, traces.withdrawn, offset_u_s, signature, zone, start_ms, started_anew, holds FROM traces JOIN runs ON runs.id = "
    "traces.run_id "
    "LEFT JOIN meters ON meters.id = traces.meter_id ";

StoredTrace trace_in(SQLite::Statement& statement) {
    Row row(statement);
    StoredTrace stored;
    stored.id = row.integer();
    Trace& trace = stored.trace;
    trace.uuid = row.id<TraceId>();
    trace.run_uuid = row.id<RunId>();
    trace.meter_uuid = row.maybe_id<MeterId>();
    trace.file_name = row.text();
    trace.fingerprint = row.text();
    trace.size_bytes = row.integer();
    trace.layout = row.text();
    trace.offset_ms = row.integer();
    trace.rows_left_out = row.integer();
    trace.samples = row.integer();
    trace.first_ms = row.integer();
    trace.last_ms = row.integer();
    trace.added_ms = row.integer();
    trace.withdrawn = row.flag();
    trace.offset_u_s = row.maybe_real();
    trace.signature = row.maybe_text().value_or(std::string());
    trace.zone = row.maybe_text().value_or(std::string());
    trace.start_ms = row.maybe_integer();
    trace.started_anew = row.integer();
    trace.holds = static_cast<int>(row.integer());
    return stored;
}

} // namespace

std::optional<StoredTrace> find_trace(SQLite::Database& database, const TraceId& uuid) {
    SQLite::Statement query(database, select_traces + "WHERE traces.uuid = ?1");
    Binder(query).id(uuid);
    if (!query.executeStep()) return std::nullopt;
    return trace_in(query);
}

std::optional<MeterId> meter_of_run(SQLite::Database& database, const RunId& run_uuid) {
    SQLite::Statement query(database, "SELECT meters.uuid FROM runs JOIN meters ON meters.id = runs.meter_id WHERE runs.uuid = ?1");
    Binder(query).id(run_uuid);
    if (!query.executeStep()) return std::nullopt;
    return Row(query).maybe_id<MeterId>();
}

std::vector<Trace> listed_traces(SQLite::Database& database, std::optional<std::int64_t> run_id) {
    SQLite::Statement query(database, select_traces + "WHERE ?1 IS NULL OR traces.run_id = ?1 ORDER BY first_ms, traces.id");
    Binder(query).integer(run_id);
    std::vector<Trace> traces;
    while (query.executeStep()) traces.push_back(trace_in(query).trace);
    return traces;
}

std::set<RunId> traced_runs(SQLite::Database& database, std::optional<std::int64_t> unit_id) {
    SQLite::Statement query(database, "SELECT DISTINCT runs.uuid FROM traces JOIN runs ON runs.id = traces.run_id WHERE ?1 IS NULL OR unit_id = ?1");
    Binder(query).integer(unit_id);
    std::set<RunId> runs;
    while (query.executeStep()) runs.insert(Row(query).id<RunId>());
    return runs;
}

std::int64_t next_trace_id(SQLite::Database& database) { return database.execAndGet("SELECT coalesce(max(id), 0) + 1 FROM traces").getInt64(); }

void insert_trace(SQLite::Database& database, std::int64_t id, const Trace& trace) {
    SQLite::Statement insert(
        database,
        "INSERT INTO traces (id, uuid, run_id, meter_id, file_name, fingerprint, size_bytes, layout, offset_ms, rows_left_out, "
        "samples, first_ms, last_ms, added_ms, offset_u_s, signature, zone, start_ms, holds) VALUES (?1, ?2, (SELECT id FROM runs WHERE uuid = ?3), "
        "(SELECT id FROM meters WHERE uuid = ?4), ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, ?19)");
    Binder binder(insert);
    binder.integer(id).id(trace.uuid).id(trace.run_uuid).id(trace.meter_uuid.value_or(MeterId())).text(trace.file_name);
    binder.text(trace.fingerprint).integer(trace.size_bytes).text(trace.layout).integer(trace.offset_ms).integer(trace.rows_left_out);
    binder.integer(trace.samples).integer(trace.first_ms).integer(trace.last_ms).integer(trace.added_ms).real(trace.offset_u_s);
    binder.text(trace.signature).text(trace.zone).integer(trace.start_ms).integer(trace.holds);
    insert.exec();
}

void grow_trace(SQLite::Database& database, std::int64_t id, const Trace& trace) {
    SQLite::Statement update(database, "UPDATE traces SET size_bytes = ?2, fingerprint = ?3, rows_left_out = ?4, samples = ?5, last_ms = ?6, "
                                       "started_anew = ?7 WHERE id = ?1");
    Binder binder(update);
    binder.integer(id).integer(trace.size_bytes).text(trace.fingerprint).integer(trace.rows_left_out).integer(trace.samples);
    binder.integer(trace.last_ms).integer(trace.started_anew);
    update.exec();
}

bool visit_samples(SQLite::Database& database, std::int64_t trace_id, UtcMs from_ms, UtcMs to_ms,
                   const std::function<bool(std::span<const TraceSample>)>& visit) {
    SQLite::Statement query(database, "SELECT content FROM trace_blocks WHERE trace_id = ?1 AND last_ms >= ?2 AND first_ms <= ?3 ORDER BY first_ms");
    Binder(query).integer(trace_id).integer(from_ms).integer(to_ms);
    std::vector<TraceSample> samples;
    std::optional<UtcMs> before_ms;
    while (query.executeStep()) {
        const SQLite::Column content = query.getColumn(0);
        samples.clear();
        if (!decode({static_cast<const char*>(content.getBlob()), static_cast<std::size_t>(content.getBytes())}, samples)) return false;
        // Damage within a block often gives numbers all the same, but hardly times in order.
        if (before_ms && samples.front().time_ms <= *before_ms) return false;
        if (std::ranges::adjacent_find(samples, std::ranges::greater_equal{}, &TraceSample::time_ms) != samples.end()) return false;
        before_ms = samples.back().time_ms;
        const auto first = std::ranges::lower_bound(samples, from_ms, {}, &TraceSample::time_ms);
        const auto last = std::ranges::upper_bound(samples, to_ms, {}, &TraceSample::time_ms);
        if (first < last && !visit({first, last})) return true;
    }
    return true;
}

void withdraw_trace(SQLite::Database& database, std::int64_t id, bool withdrawn) {
    SQLite::Statement update(database, "UPDATE traces SET withdrawn = ?2 WHERE id = ?1");
    Binder(update).integer(id).integer(withdrawn);
    update.exec();
}

} // namespace ullage::store
