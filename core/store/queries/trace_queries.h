// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "model/trace.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

struct StoredTrace {
    std::int64_t id = 0;
    Trace trace;
};

/// A trace, withdrawn or not.
[[nodiscard]] std::optional<StoredTrace> find_trace(SQLite::Database& database, const TraceId& uuid);
/// The meter that a run names; absent where it names none, or there is no such run.
[[nodiscard]] std::optional<MeterId> meter_of_run(SQLite::Database& database, const RunId& run_uuid);
/// All traces of a run (of every run when absent), withdrawn ones too, in order of their first sample.
[[nodiscard]] std::vector<Trace> listed_traces(SQLite::Database& database, std::optional<std::int64_t> run_id);
/// The runs of a unit (of every unit when absent) that have traces, withdrawn ones too.
[[nodiscard]] std::set<RunId> traced_runs(SQLite::Database& database, std::optional<std::int64_t> unit_id);
[[nodiscard]] std::int64_t next_trace_id(SQLite::Database& database);
/// Call it after the blocks of `id` have been written, within the same transaction.
void insert_trace(SQLite::Database& database, std::int64_t id, const Trace& trace);
/// Writes what may change of a trace that has grown, after its blocks.
void grow_trace(SQLite::Database& database, std::int64_t id, const Trace& trace);
/// Hands the samples from `from_ms` to `to_ms` over, block by block in order of time, until `visit` returns false. False where a block cannot be
/// read, or its times are not in order.
[[nodiscard]] bool visit_samples(SQLite::Database& database, std::int64_t trace_id, UtcMs from_ms, UtcMs to_ms,
                                 const std::function<bool(std::span<const TraceSample>)>& visit);
void withdraw_trace(SQLite::Database& database, std::int64_t id, bool withdrawn);

} // namespace ullage::store
