// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "base/instant.h"
#include "model/run.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// The rows that a run names.
struct RunOwners {
    std::int64_t unit_id = 0;
    std::optional<std::int64_t> meter_id{}, second_meter_id{};
};

/// A run with what the list of runs knows about it.
struct ListedRun {
    std::int64_t id = 0;
    std::int64_t unit_id = 0;
    std::optional<std::int64_t> meter_id, second_meter_id;
    Run run;
    bool shown = true; ///< neither it nor its unit is withdrawn
    int number = 1;    ///< its place among the unit's runs that are not withdrawn, counted from 1
};

/// The row id of a run, withdrawn or not.
[[nodiscard]] std::optional<std::int64_t> run_id(SQLite::Database& database, const RunId& uuid);
/// The row id of the unit that a run tests.
[[nodiscard]] std::optional<std::int64_t> unit_of_run(SQLite::Database& database, const RunId& run_uuid);
/// Adds a run with its extra keys; returns its row id. Call it within a transaction.
std::int64_t insert_run(SQLite::Database& database, const Run& run, const RunOwners& owners);
/// Call it within a transaction. `created_ms` 0 leaves the time of creation as it is.
void update_run(SQLite::Database& database, std::int64_t id, const Run& run, const RunOwners& owners);
void withdraw_run(SQLite::Database& database, std::int64_t id, bool withdrawn);

/// All runs, or those of one unit, hidden ones included, by the unit's name, then by the first reading that
/// is not withdrawn, else by creation.
[[nodiscard]] std::vector<ListedRun> listed_runs(SQLite::Database& database, std::optional<std::int64_t> unit_id);

/// Keeps the draft of a run; an empty one is forgotten.
void write_draft(SQLite::Database& database, std::int64_t run_id, const std::string& draft, UtcMs now_ms);
[[nodiscard]] std::string read_draft(SQLite::Database& database, std::int64_t run_id);

} // namespace ullage::store
