// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/reading_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

namespace {

const std::string reading_columns = "current.id, current.run_id, current.uuid, sequence, version, current.withdrawn, time_ms, "
                                    "gauge_percent, register_wh, meter_w, display_w, mark, remark, second_register_wh";
const std::string from_readings = " FROM current_readings AS current ";
const std::string with_runs = "JOIN runs ON runs.id = current.run_id ";

const std::string in_order = " ORDER BY current.run_id, time_ms, sequence";

struct ReadingRow {
    std::int64_t run_id = 0;
    StoredReading stored;
};

/// The next columns, reading_columns.
ReadingRow reading_in(Row& row) {
    ReadingRow found;
    found.stored.id = row.integer();
    found.run_id = row.integer();
    Reading& reading = found.stored.reading;
    reading.uuid = row.id<ReadingId>();
    reading.sequence = static_cast<long>(row.integer());
    reading.version = static_cast<int>(row.integer());
    reading.withdrawn = row.flag();
    reading.values = values_in(row);
    return found;
}

constexpr const char* insert_version_sql = "INSERT INTO reading_versions (reading_id, version, time_ms, gauge_percent, "
                                           "register_wh, meter_w, display_w, mark, remark, withdrawn, written_ms, reason, second_register_wh) "
                                           "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13)";

void bind_version(SQLite::Statement& insert, std::int64_t reading_id, int version, const ReadingValues& values, bool withdrawn, UtcMs written_ms,
                  const std::string& reason) {
    std::optional<std::int64_t> mark;
    if (values.mark) mark = static_cast<std::int64_t>(*values.mark);
    Binder binder(insert);
    binder.integer(reading_id).integer(version).integer(values.time_ms);
    binder.real(values.gauge_percent).real(values.register_wh).real(values.meter_w).real(values.display_w);
    binder.integer(mark).text(values.remark).integer(withdrawn).integer(written_ms).text(reason).real(values.second_register_wh);
}

/// An empty list for each run with readings, as large as it will get: a list that grows is in memory twice.
std::map<std::int64_t, std::vector<Reading>> room_for_readings(SQLite::Database& database) {
    SQLite::Statement query(database, "SELECT run_id, count(*) FROM readings GROUP BY run_id");
    std::map<std::int64_t, std::vector<Reading>> room;
    while (query.executeStep()) {
        Row row(query);
        const std::int64_t run = row.integer();
        room[run].reserve(static_cast<std::size_t>(row.integer()));
    }
    return room;
}

/// Every reading in one pass along the file: asking for the newest version of each and for its place in time costs several times as much.
std::map<std::int64_t, std::vector<Reading>> all_readings_by_run(SQLite::Database& database) {
    // CROSS JOIN keeps the order of the tables, so that the versions come as they lie and need no sorting.
    SQLite::Statement query(
        database, "SELECT readings.id, readings.run_id, readings.uuid, sequence, version, versions.withdrawn, time_ms, "
                  "gauge_percent, register_wh, meter_w, display_w, mark, remark, second_register_wh "
                  "FROM reading_versions AS versions CROSS JOIN readings ON readings.id = versions.reading_id ORDER BY versions.reading_id, version");
    std::map<std::int64_t, std::vector<Reading>> found = room_for_readings(database);
    std::int64_t last_id = -1, last_run = -1;
    std::vector<Reading>* of_run = nullptr;
    while (query.executeStep()) {
        Row columns(query);
        ReadingRow row = reading_in(columns);
        if (row.stored.id == last_id) {
            of_run->back() = std::move(row.stored.reading); // a later version takes the place of the one before
            continue;
        }
        if (row.run_id != last_run) of_run = &found[row.run_id];
        last_run = row.run_id;
        last_id = row.stored.id;
        of_run->push_back(std::move(row.stored.reading));
    }
    for (auto& [run, readings] : found) sort_by_time(readings);
    return found;
}

} // namespace

ReadingValues values_in(Row& row) {
    ReadingValues values;
    values.time_ms = row.integer();
    values.gauge_percent = row.maybe_real();
    values.register_wh = row.maybe_real();
    values.meter_w = row.maybe_real();
    values.display_w = row.maybe_real();
    if (const auto mark = row.maybe_integer()) values.mark = static_cast<MarkKind>(*mark);
    values.remark = row.text();
    values.second_register_wh = row.maybe_real();
    return values;
}

std::optional<StoredReading> find_reading(SQLite::Database& database, const ReadingId& uuid) {
    SQLite::Statement query(database, "SELECT " + reading_columns + ", runs.uuid" + from_readings + with_runs + "WHERE current.uuid = ?1");
    Binder(query).id(uuid);
    if (!query.executeStep()) return std::nullopt;
    Row row(query);
    StoredReading found = reading_in(row).stored;
    found.run_uuid = row.id<RunId>();
    return found;
}

void insert_reading(SQLite::Database& database, Reading& reading, std::int64_t run_id, UtcMs written_ms) {
    SQLite::Statement insert(database, "INSERT INTO readings (uuid, run_id, sequence) VALUES (?1, ?2, "
                                       "(SELECT coalesce(max(sequence), 0) + 1 FROM readings WHERE run_id = ?2)) "
                                       "RETURNING id, sequence");
    Binder(insert).id(reading.uuid).integer(run_id);
    insert.executeStep();
    Row row(insert);
    const std::int64_t id = row.integer();
    reading.sequence = static_cast<long>(row.integer());
    reading.version = 1;
    // Ends the statement, which the transaction would otherwise wait for.
    insert.executeStep();
    insert_version(database, {id, reading}, written_ms, {});
}

void insert_version(SQLite::Database& database, const StoredReading& stored, UtcMs written_ms, const std::string& reason) {
    SQLite::Statement insert(database, insert_version_sql);
    bind_version(insert, stored.id, stored.reading.version, stored.reading.values, stored.reading.withdrawn, written_ms, reason);
    insert.exec();
}

struct ReadingsInserter::Statements {
    SQLite::Statement reading, version;
};

ReadingsInserter::ReadingsInserter(SQLite::Database& database, std::int64_t run_id, UtcMs written_ms)
    : statements_(new Statements{{database, "INSERT INTO readings (uuid, run_id, sequence) VALUES (?1, ?2, ?3)"}, {database, insert_version_sql}}),
      database_(database), run_id_(run_id), written_ms_(written_ms) {}

ReadingsInserter::~ReadingsInserter() = default;

long ReadingsInserter::add(const ReadingId& uuid, const ReadingValues& values, bool withdrawn) {
    Binder(statements_->reading).id(uuid).integer(run_id_).integer(static_cast<std::int64_t>(++sequence_));
    statements_->reading.exec();
    statements_->reading.reset();
    bind_version(statements_->version, database_.getLastInsertRowid(), 1, values, withdrawn, written_ms_, {});
    statements_->version.exec();
    statements_->version.reset();
    return sequence_;
}

bool has_readings(SQLite::Database& database, std::int64_t run_id, const std::vector<Reading>& readings) {
    SQLite::Statement query(database, "SELECT " + reading_columns + from_readings + "WHERE current.run_id = ?1 AND current.withdrawn = 0" + in_order);
    Binder(query).integer(run_id);
    for (const Reading& reading : readings) {
        if (reading.withdrawn) continue;
        if (!query.executeStep()) return false;
        Row row(query);
        if (reading_in(row).stored.reading.values != reading.values) return false;
    }
    return !query.executeStep();
}

std::vector<Reading> run_readings(SQLite::Database& database, std::int64_t run_id) {
    SQLite::Statement query(database, "SELECT " + reading_columns + from_readings + "WHERE current.run_id = ?1" + in_order);
    Binder(query).integer(run_id);
    std::vector<Reading> readings;
    while (query.executeStep()) {
        Row row(query);
        readings.push_back(std::move(reading_in(row).stored.reading));
    }
    return readings;
}

std::map<std::int64_t, std::vector<Reading>> readings_by_run(SQLite::Database& database, std::optional<std::int64_t> unit_id) {
    if (!unit_id) return all_readings_by_run(database);
    SQLite::Statement query(database, "SELECT " + reading_columns + from_readings + with_runs + "WHERE runs.unit_id = ?1" + in_order);
    Binder(query).integer(*unit_id);
    std::map<std::int64_t, std::vector<Reading>> found;
    while (query.executeStep()) {
        Row columns(query);
        ReadingRow row = reading_in(columns);
        found[row.run_id].push_back(std::move(row.stored.reading));
    }
    return found;
}

std::vector<ReadingVersion> reading_versions(SQLite::Database& database, std::int64_t reading_id) {
    SQLite::Statement query(database, "SELECT version, withdrawn, written_ms, reason, time_ms, gauge_percent, register_wh, "
                                      "meter_w, display_w, mark, remark, second_register_wh FROM reading_versions WHERE reading_id = ?1 "
                                      "ORDER BY version");
    Binder(query).integer(reading_id);
    std::vector<ReadingVersion> versions;
    while (query.executeStep()) {
        Row row(query);
        ReadingVersion version;
        version.version = static_cast<int>(row.integer());
        version.withdrawn = row.flag();
        version.written_ms = row.integer();
        version.reason = row.text();
        version.values = values_in(row);
        versions.push_back(std::move(version));
    }
    return versions;
}

} // namespace ullage::store
