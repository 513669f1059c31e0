// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "model/reading.h"

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

class Row;

struct StoredReading {
    std::int64_t id = 0;
    Reading reading;
    RunId run_uuid{}; ///< only where one reading was asked for
};

/// Reads the next eight columns: time_ms, gauge_percent, register_wh, meter_w, display_w, mark, remark, second_register_wh.
[[nodiscard]] ReadingValues values_in(Row& row);
/// The reading as it stands.
[[nodiscard]] std::optional<StoredReading> find_reading(SQLite::Database& database, const ReadingId& uuid);
/// Adds a reading at the end of its run with its values as version 1, and fills `sequence` and `version`.
/// Call it within a transaction.
void insert_reading(SQLite::Database& database, Reading& reading, std::int64_t run_id, UtcMs written_ms);
/// Adds the readings of a run that has none yet, one after the other, each as version 1. Use it within a transaction.
class ReadingsInserter {
public:
    ReadingsInserter(SQLite::Database& database, std::int64_t run_id, UtcMs written_ms);
    ~ReadingsInserter();
    /// The sequence that the reading got: 1, 2, …
    long add(const ReadingId& uuid, const ReadingValues& values, bool withdrawn);

private:
    struct Statements;
    std::unique_ptr<Statements> statements_;
    SQLite::Database& database_;
    std::int64_t run_id_;
    UtcMs written_ms_;
    long sequence_ = 0;
};
/// Whether the readings of the run that are not withdrawn say the same as those of `readings`, which are in order of time, that are not.
[[nodiscard]] bool has_readings(SQLite::Database& database, std::int64_t run_id, const std::vector<Reading>& readings);
/// Adds what `stored` now says as its version `version`.
void insert_version(SQLite::Database& database, const StoredReading& stored, UtcMs written_ms, const std::string& reason);

/// The readings of one run in order of time.
[[nodiscard]] std::vector<Reading> run_readings(SQLite::Database& database, std::int64_t run_id);
/// The readings of all runs, or of one unit's, by run id, each in order of time.
[[nodiscard]] std::map<std::int64_t, std::vector<Reading>> readings_by_run(SQLite::Database& database, std::optional<std::int64_t> unit_id);
/// All versions of a reading from the first on.
[[nodiscard]] std::vector<ReadingVersion> reading_versions(SQLite::Database& database, std::int64_t reading_id);

} // namespace ullage::store
