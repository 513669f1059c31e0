// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/content_check.h"

#include "model/photo.h"
#include "model/pv_sheet.h"
#include "model/reading.h"
#include "model/run.h"
#include "store/inside/file_header.h"
#include "store/migrations/migrations.h"
#include "store/migrations/newest_schema.h"
#include "store/queries/rows.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <cstddef>
#include <iterator>
#include <string>
#include <string_view>

namespace ullage::store {

namespace {

namespace fs = std::filesystem;

/// Every entry, SQLite's own indexes with their empty statements too: no name is passed over.
constexpr const char* all_entries = "SELECT type, name, tbl_name, coalesce(sql, '') FROM sqlite_schema ORDER BY type, name, tbl_name, sql";

/// Valid until the statement is stepped on.
std::string_view view_of(const SQLite::Column& column) {
    const char* const text = column.getText();
    return {text, static_cast<std::size_t>(column.getBytes())};
}

SchemaEntry entry_in(SQLite::Statement& row) {
    return {view_of(row.getColumn(0)), view_of(row.getColumn(1)), view_of(row.getColumn(2)), view_of(row.getColumn(3))};
}

bool has_newest_schema(SQLite::Database& database) {
    SQLite::Statement present(database, all_entries);
    for (const SchemaEntry& wanted : newest_schema())
        if (!present.executeStep() || entry_in(present) != wanted) return false;
    return !present.executeStep();
}

bool same_schema(SQLite::Database& one, SQLite::Database& other) {
    SQLite::Statement left(one, all_entries), right(other, all_entries);
    while (left.executeStep())
        if (!right.executeStep() || entry_in(left) != entry_in(right)) return false;
    return !right.executeStep();
}

/// Whether the schema is what the migrations make. They are asked where it is not that of the newest version as kept in the program: for an older
/// one, and in case another SQLite words a changed table in another way.
bool has_schema_of(SQLite::Database& database, int version) {
    if (version == newest_version() && has_newest_schema(database)) return true;
    SQLite::Database fresh(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    migrate(fresh, version);
    return same_schema(database, fresh);
}

/// Of a file that holds them already: the sheets' choices are known ones.
Result<void> check_pv_kinds(SQLite::Database& database, const fs::path& path) {
    if (!database.tableExists("pv_sheets")) return {};
    SQLite::Statement unknown(database, "SELECT 1 FROM pv_sheets WHERE max(coalesce(voc_per_c_unit, 1), coalesce(vmp_per_c_unit, 1), "
                                        "coalesce(power_per_c_unit, 1)) > ?1 UNION ALL SELECT 1 FROM runs WHERE charge_source > ?2");
    Binder(unknown).integer(static_cast<int>(PvPerDegree::milli)).integer(static_cast<int>(*std::prev(std::end(all_charge_sources))));
    if (unknown.executeStep()) return damaged_error(path, say(phrase("store", "a PV sheet or the source of a charge is of an unknown kind")));
    return {};
}

Result<void> check_kinds(SQLite::Database& database, const fs::path& path) {
    SQLite::Statement unknown(database, "SELECT 1 FROM runs WHERE kind > ?1 OR ended > ?2 "
                                        "UNION ALL SELECT 1 FROM reading_versions WHERE mark > ?3");
    Binder(unknown)
        .integer(static_cast<int>(*std::prev(std::end(all_run_kinds))))
        .integer(static_cast<int>(*std::prev(std::end(all_run_ends))))
        .integer(static_cast<int>(*std::prev(std::end(all_mark_kinds))));
    if (unknown.executeStep()) return damaged_error(path, say(phrase("store", "a run or a mark is of an unknown kind")));
    if (Result<void> sheets = check_pv_kinds(database, path); !sheets) return sheets;
    if (!database.tableExists("photos")) return {};
    SQLite::Statement photos(database, "SELECT 1 FROM photos WHERE format > ?1");
    Binder(photos).integer(static_cast<int>(PhotoFormat::png));
    if (photos.executeStep()) return damaged_error(path, say(phrase("store", "a photo is of an unknown kind")));
    return {};
}

} // namespace

Error damaged_error(const fs::path& path, const Message& detail) {
    return {Failure::damaged, say(phrase("store", "the logbook is damaged (%1)"), detail), path.string(),
            say(phrase("store", "restore it from a copy; nothing was changed"))};
}

void harden(SQLite::Database& database) {
    sqlite3* const handle = database.getHandle();
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0, nullptr);
    // A photo has at most 20 MB; a statement of ours a few thousand letters. VACUUM INTO attaches its target.
    sqlite3_limit(handle, SQLITE_LIMIT_LENGTH, 32'000'000);
    sqlite3_limit(handle, SQLITE_LIMIT_SQL_LENGTH, 100'000);
    sqlite3_limit(handle, SQLITE_LIMIT_COLUMN, 100);
    sqlite3_limit(handle, SQLITE_LIMIT_EXPR_DEPTH, 50);
    sqlite3_limit(handle, SQLITE_LIMIT_COMPOUND_SELECT, 10);
    sqlite3_limit(handle, SQLITE_LIMIT_VDBE_OP, 25'000);
    sqlite3_limit(handle, SQLITE_LIMIT_FUNCTION_ARG, 8);
    sqlite3_limit(handle, SQLITE_LIMIT_ATTACHED, 1);
    sqlite3_limit(handle, SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 50);
    sqlite3_limit(handle, SQLITE_LIMIT_TRIGGER_DEPTH, 10);
    database.exec("PRAGMA cell_size_check = ON");
    database.exec("PRAGMA mmap_size = 0");
    database.exec("PRAGMA foreign_keys = ON");
}

Result<void> check_schema(SQLite::Database& database, const fs::path& path) {
    // The write-ahead log may have brought another version than the header of the file.
    const std::int64_t version = database.execAndGet("PRAGMA user_version").getInt64();
    if (version > newest_version()) return newer_version_error(version, path);
    if (version < 1) return damaged_error(path, say(phrase("store", "it has no version")));
    if (!has_schema_of(database, static_cast<int>(version)))
        return damaged_error(path, say(phrase("store", "its tables are not those of version %1"), say_number(version)));
    return {};
}

Result<void> check_structure(SQLite::Database& database, const fs::path& path) {
    const std::string finding = database.execAndGet("PRAGMA integrity_check(1)").getString();
    if (finding != "ok") return damaged_error(path, finding);
    SQLite::Statement orphans(database, "PRAGMA foreign_key_check");
    if (orphans.executeStep()) return damaged_error(path, say(phrase("store", "a row of %1 has lost its owner"), orphans.getColumn(0).getString()));
    return check_kinds(database, path);
}

} // namespace ullage::store
