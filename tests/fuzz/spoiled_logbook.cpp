// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/spoiled_logbook.h"

#include "formats/sheets/load_list_file.h"
#include "formats/sheets/pv_sheet_text.h"
#include "formats/sheets/run_sheet.h"
#include "fuzz/fuzz_target.h"
#include "store/logbook.h"
#include "support/fake_clock.h"
#include "support/photo_bytes.h"
#include "support/source_dir.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <stdexcept>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

template <class T>
T taken(Result<T> result) {
    if (!result) throw std::runtime_error(result.error().sentence());
    return std::move(result).value();
}

void remove_with_logs(const fs::path& path) {
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) fs::remove_all(path.string() + ending);
}

std::vector<std::string> schema_words(SQLite::Database& database) {
    std::vector<std::string> words;
    SQLite::Statement query(database, "SELECT type || '|' || name || '|' || tbl_name || '|' || coalesce(sql, '') FROM sqlite_schema ORDER BY 1");
    while (query.executeStep()) words.push_back(query.getColumn(0).getString());
    return words;
}

/// No rule of the file or its schema binds the connection.
void unbind(SQLite::Database& database) {
    sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
    database.exec("PRAGMA ignore_check_constraints = ON");
    database.exec("PRAGMA foreign_keys = OFF");
    database.exec("PRAGMA writable_schema = ON");
    database.exec("PRAGMA wal_autocheckpoint = 0");
    database.exec("PRAGMA synchronous = OFF");
}

} // namespace

void write_full_logbook(const fs::path& path) {
    remove_with_logs(path);
    FakeClock clock;
    Logbook logbook = taken(Logbook::create(path, clock));
    const fs::path data = source_dir() / "sample-data";
    std::vector<RunRecord> records;
    for (const char* sheet : {"03-pelm-900-no-load-drain.csv", "04-pelm-900-drain-240-w.csv", "06-osk-1200-drain-64-w.csv", "09-osk-1200-charge.csv"})
        records.push_back(taken(logbook.import(taken(read_run_sheet(bytes_of(data / sheet), sheet)).record)));
    const RunRecord& drain = records[2];
    ReadingValues values = drain.readings[1].values;
    values.remark = "read again";
    (void)taken(logbook.amend(drain.readings[1].uuid, values, "misread"));
    (void)taken(logbook.set_withdrawn(drain.readings[2].uuid, true, "twice"));
    const NewPhoto photo{"display.jpg", bare_jpeg(640, 480, 3000), PhotoMoment{clock.now_ms(), true}};
    (void)taken(logbook.add_photo(drain.run.uuid, drain.readings[0].uuid, photo));
    (void)taken(logbook.add_photo(drain.run.uuid, {}, {"waits.png", bare_png(), {}}));
    Trace trace;
    trace.run_uuid = drain.run.uuid;
    trace.meter_uuid = drain.run.meter_uuid;
    trace.file_name = "meter.log";
    trace.signature = "time,Wh";
    trace.layout = "answers";
    trace.fingerprint = "f";
    trace.size_bytes = 9000;
    std::vector<TraceSample> samples;
    for (int i = 0; i < 5000; ++i) samples.push_back({drain.readings.front().values.time_ms + i * 10'000, i * 0.18, 64.0 + i % 5, 230.0, 0.28});
    (void)taken(logbook.add_trace(trace, [&](Trace&, const SampleTaker& take) { return take(samples); }));
    (void)taken(logbook.add(taken(read_load_list(texts_of(data / "load-lists", ".csv").front(), "list"))));
    (void)taken(logbook.add(taken(read_pv_sheet(texts_of(data, ".txt").front(), "sheet")).sheet));
    (void)logbook.keep_draft(drain.run.uuid, "gauge=55");
}

LogbookSpoiler::LogbookSpoiler(std::uint64_t seed, const fs::path& folder)
    : work_(folder / "fuzz_work"), sound_([this] {
          write_full_logbook(work_);
          return bytes_of(work_);
      }()),
      files_({sound_}, seed) {
    SQLite::Database database(work_.string());
    SQLite::Statement query(database, "SELECT tables.name, columns.name, columns.type FROM sqlite_schema AS tables, pragma_table_info(tables.name) "
                                      "AS columns WHERE tables.type = 'table' ORDER BY 1, columns.cid");
    while (query.executeStep()) columns_.push_back({query.getColumn(0).getString(), query.getColumn(1).getString(), query.getColumn(2).getString()});
}

LogbookSpoiler::Spoiled LogbookSpoiler::next(const fs::path& path) {
    remove_with_logs(path);
    switch (files_.pick(6)) {
    case 0:
    case 1: return spoil_bytes(path);
    case 2: return spoil_by_sql(path, false, true);
    case 3: return spoil_by_sql(path, true, files_.pick(3) == 0);
    default: return spoil_by_sql(path, false, false);
    }
}

LogbookSpoiler::Spoiled LogbookSpoiler::spoil_bytes(const fs::path& path) {
    // Within the pages mostly, since a file of another length is refused by its head.
    std::string bytes = sound_;
    if (files_.pick(4) == 0) {
        bytes = files_.next_bytes();
    } else {
        for (std::size_t changes = 1 + files_.pick(4); changes > 0; --changes) {
            const std::size_t at = files_.pick(bytes.size());
            if (files_.pick(3) == 0) { // a stretch over another
                const std::size_t length = std::min(1 + files_.pick(4096), bytes.size() - at), from = files_.pick(bytes.size() - length + 1);
                bytes.replace(at, length, bytes.substr(from, length));
            } else {
                bytes[at] = static_cast<char>(files_.pick(2) == 0 ? bytes[at] ^ (1 << files_.pick(8)) : static_cast<int>(files_.pick(256)));
            }
        }
    }
    write_bytes_to(path, bytes);
    return {"bytes", false};
}

LogbookSpoiler::Spoiled LogbookSpoiler::spoil_by_sql(const fs::path& path, bool schema, bool log) {
    remove_with_logs(work_);
    write_bytes_to(work_, sound_);
    Spoiled spoiled;
    SQLite::Database database(work_.string(), SQLite::OPEN_READWRITE);
    const std::vector<std::string> before = schema_words(database);
    database.exec(log ? "PRAGMA journal_mode = WAL" : "PRAGMA journal_mode = DELETE");
    unbind(database);
    for (std::size_t changes = 1 + files_.pick(3); changes > 0; --changes) {
        const std::string change = schema ? schema_change() : value_change();
        try {
            database.exec(change);
            spoiled.what += change + ";\n";
        } catch (const SQLite::Exception&) {
            // A change that even SQLite refuses is none.
        }
    }
    try {
        spoiled.other_schema = schema_words(database) != before;
    } catch (const SQLite::Exception&) {
        spoiled.other_schema = true;
    }
    // What a process that was killed leaves: the log has what the file has not.
    write_bytes_to(path, bytes_of(work_));
    if (!log) return spoiled;
    std::string wal = bytes_of(work_.string() + "-wal");
    if (!wal.empty() && files_.pick(3) == 0) {
        if (files_.pick(2) == 0) wal.resize(files_.pick(wal.size()));
        else wal[files_.pick(wal.size())] = static_cast<char>(files_.pick(256));
        spoiled.other_schema = false; // the change may be gone
        spoiled.what += "log damaged";
    }
    write_bytes_to(path.string() + "-wal", wal);
    return spoiled;
}

std::string LogbookSpoiler::value_change() {
    static constexpr const char* reals[] = {"9e999", "-9e999", "1e308", "-1e308",   "1e-320", "-0.0", "0",
                                            "-1",    "1e15",   "NULL",  "100.0001", "0.5",    "1e6"};
    static constexpr const char* integers[] = {
        "9223372036854775807", "-9223372036854775808", "0", "-1", "1", "2", "3", "7", "255", "1099511627776", "NULL", "100000", "-2208988800001"};
    static constexpr const char* texts[] = {"''",
                                            "char(0) || 'x'",
                                            "cast(x'c328' AS TEXT)",
                                            "cast(x'ff' AS TEXT)",
                                            "'nan'",
                                            "hex(zeroblob(40000))",
                                            "char(8238) || 'Osk'",
                                            "'Europe/Nowhere'",
                                            "'a' || char(10) || 'b'",
                                            "NULL",
                                            "'{}'",
                                            "'=1+1'",
                                            "hex(zeroblob(1000000))",
                                            "'../..'",
                                            "'%1 %2'"};
    static constexpr const char* blobs[] = {"x''", "zeroblob(100000)", "randomblob(50)", "x'ffffffffffffffffff'", "x'ffd8ff'", "zeroblob(1)"};
    const SpoiledColumn& column = columns_[files_.pick(columns_.size())];
    const std::string rows = files_.pick(3) == 0 ? std::string()
                                                 : fmt::format(" WHERE {0} IN (SELECT {0} FROM {1} ORDER BY 1 LIMIT 1 OFFSET {2})", column.name,
                                                               column.table, files_.pick(20));
    if (files_.pick(10) == 0) return fmt::format("DELETE FROM {}{}", column.table, rows);
    std::string value = column.type == "REAL"      ? any_of(reals)
                        : column.type == "INTEGER" ? any_of(integers)
                        : column.type == "TEXT"    ? any_of(texts)
                                                   : any_of(blobs);
    if (column.type == "INTEGER" && files_.pick(3) == 0) value = fmt::format("{} + {}", column.name, static_cast<int>(files_.pick(9)) - 4);
    if (column.type == "BLOB" && files_.pick(2) == 0) {
        const std::size_t at = 1 + files_.pick(300);
        value = fmt::format("cast(substr({0}, 1, {1}) || x'{2:02x}' || substr({0}, {3}) AS BLOB)", column.name, at - 1, files_.pick(256),
                            at + files_.pick(3));
    }
    // One reading in two runs, a photo of another's reading: other rows' values.
    if (files_.pick(6) == 0) value = fmt::format("(SELECT {} FROM {} ORDER BY 1 LIMIT 1 OFFSET {})", column.name, column.table, files_.pick(20));
    return fmt::format("UPDATE {} SET {} = {}{}", column.table, column.name, value, rows);
}

std::string LogbookSpoiler::schema_change() {
    static constexpr const char* changes[] = {
        "CREATE TRIGGER swallow AFTER INSERT ON readings BEGIN DELETE FROM reading_versions; END; "
        "UPDATE sqlite_schema SET name = 'sqlite_x', sql = replace(sql, 'TRIGGER swallow', 'TRIGGER sqlite_x') WHERE name = 'swallow'",
        "CREATE TRIGGER renames AFTER INSERT ON reading_versions BEGIN UPDATE units SET name = 'x'; END; "
        "UPDATE sqlite_schema SET name = 'sqlite_autoindex_units_9', sql = replace(sql, 'TRIGGER renames', 'TRIGGER sqlite_autoindex_units_9') "
        "WHERE name = 'renames'",
        "CREATE TRIGGER plain AFTER INSERT ON readings BEGIN SELECT 1; END",
        "CREATE VIEW more AS SELECT * FROM units",
        "CREATE VIEW hidden AS SELECT * FROM units; UPDATE sqlite_schema SET name = 'sqlite_v', sql = replace(sql, 'hidden', 'sqlite_v') WHERE name = 'hidden'",
        "CREATE TABLE more (x)",
        "CREATE INDEX more_of_units ON units (name)",
        "CREATE UNIQUE INDEX one_of_each ON runs (kind)",
        "CREATE INDEX computed ON units (abs(price))",
        "CREATE VIRTUAL TABLE words USING fts5(text)",
        "CREATE VIRTUAL TABLE boxes USING rtree(id, x0, x1)",
        "ALTER TABLE units ADD COLUMN more TEXT",
        "ALTER TABLE units ADD COLUMN more AS (name)",
        "ALTER TABLE units RENAME COLUMN remark TO note",
        "ALTER TABLE run_drafts RENAME TO drafts",
        "DROP TRIGGER readings_are_not_updated",
        "DROP TRIGGER reading_versions_are_not_deleted",
        "DROP INDEX runs_by_unit",
        "DROP VIEW current_readings",
        "DROP TABLE run_drafts",
        "DROP VIEW current_readings; CREATE VIEW current_readings AS SELECT readings.*, 1 AS version, 0 AS time_ms, 50 AS gauge_percent, 1 AS "
        "register_wh, NULL AS meter_w, NULL AS display_w, NULL AS mark, '' AS remark, 0 AS withdrawn FROM readings",
        "UPDATE sqlite_schema SET sql = replace(sql, 'NOT NULL', '') WHERE name = 'units'",
        "UPDATE sqlite_schema SET sql = replace(sql, ' STRICT', '') WHERE name = 'runs'",
        "UPDATE sqlite_schema SET sql = replace(sql, 'CHECK (name <> '''')', '') WHERE name = 'meter_versions'",
        "UPDATE sqlite_schema SET sql = replace(sql, 'CREATE TABLE', 'create table') WHERE name = 'units'",
        "UPDATE sqlite_schema SET sql = sql || ' ' WHERE name = 'units'",
        "UPDATE sqlite_schema SET rootpage = 2 WHERE name = 'runs'",
        "UPDATE sqlite_schema SET rootpage = 99999 WHERE name = 'meters'",
        "UPDATE sqlite_schema SET tbl_name = 'units' WHERE name = 'meters'",
        "UPDATE sqlite_schema SET type = 'view' WHERE name = 'meters'",
        "UPDATE sqlite_schema SET sql = NULL WHERE name = 'meters'",
        "UPDATE sqlite_schema SET sql = 'CREATE TABLE meters(' WHERE name = 'meters'",
        "INSERT INTO sqlite_schema VALUES ('table', 'sqlite_stat9', 'sqlite_stat9', 2, 'CREATE TABLE sqlite_stat9(x)')",
        "INSERT INTO sqlite_schema VALUES ('trigger', 'sqlite_t', 'readings', 0, 'CREATE TRIGGER sqlite_t AFTER INSERT ON readings BEGIN SELECT 1; END')",
        "DELETE FROM sqlite_schema WHERE type = 'trigger'",
        "ANALYZE"};
    static constexpr const char* settings[] = {"user_version = 0",  "user_version = 1",   "user_version = 5",  "user_version = 2147483647",
                                               "user_version = -1", "application_id = 0", "application_id = 1"};
    if (files_.pick(5) == 0) return std::string("PRAGMA ") + any_of(settings);
    return any_of(changes);
}

} // namespace ullage::test
