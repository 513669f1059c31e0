// SPDX-License-Identifier: GPL-3.0-or-later
// What a file from anywhere says is held against the rules that hold at entry.
#include "base/utf8.h"
#include "store/inside/content_check.h"
#include "store/inside/value_checks.h"
#include "store/queries/column_queries.h"
#include "store/queries/load_list_queries.h"
#include "store/queries/meter_queries.h"
#include "store/queries/method_queries.h"
#include "store/queries/publisher_queries.h"
#include "store/queries/pv_queries.h"
#include "store/queries/reading_queries.h"
#include "store/queries/rows.h"
#include "store/queries/run_queries.h"
#include "store/queries/source_queries.h"
#include "store/queries/trace_queries.h"
#include "store/queries/unit_queries.h"

#include <SQLiteCpp/Database.h>

#include <string>
#include <vector>

namespace ullage::store {

namespace {

namespace fs = std::filesystem;

// Beyond what any text of a logbook may have (core/model/limits.h has each one's own bound, which check() applies).
constexpr int longest_text_bytes = 1'000'000;

/// `error` of a value, as the damage of the file that holds it.
Error unfit(const Error& error, const Message& owner, const fs::path& path) {
    return damaged_error(path, error.where.empty() ? say_joined({owner, error.what}, ": ") : say_joined({owner, error.where, error.what}, ": "));
}

std::vector<std::pair<std::string, std::string>> text_columns(SQLite::Database& database) {
    std::vector<std::pair<std::string, std::string>> columns;
    SQLite::Statement query(database, "SELECT tables.name, columns.name FROM sqlite_schema AS tables, pragma_table_info(tables.name) AS columns "
                                      "WHERE tables.type = 'table' AND columns.type = 'TEXT'");
    while (query.executeStep()) columns.emplace_back(query.getColumn(0).getString(), query.getColumn(1).getString());
    return columns;
}

Result<void> check_texts(SQLite::Database& database, const fs::path& path) {
    for (const auto& [table, column] : text_columns(database)) {
        // Names of our own schema, which check_schema has seen.
        SQLite::Statement query(database, "SELECT " + column + " FROM " + table + " WHERE " + column + " <> ''");
        while (query.executeStep()) {
            const SQLite::Column text = query.getColumn(0);
            if (text.getBytes() > longest_text_bytes) return damaged_error(path, say(phrase("store", "a text of %1 is too long"), table));
            if (first_bad_utf8({static_cast<const char*>(text.getBlob()), static_cast<std::size_t>(text.getBytes())}))
                return damaged_error(path, say(phrase("store", "a text of %1 is no UTF-8"), table));
        }
    }
    return {};
}

template <class Thing, class Named>
Result<void> check_each(const std::vector<Thing>& things, const fs::path& path, Named owner_of) {
    for (const Thing& thing : things)
        if (const auto sound = store::check(thing); !sound) return unfit(sound.error(), owner_of(thing), path);
    return {};
}

Result<void> check_readings(SQLite::Database& database, const fs::path& path) {
    SQLite::Statement query(database, "SELECT time_ms, gauge_percent, register_wh, meter_w, display_w, mark, remark, second_register_wh FROM "
                                      "reading_versions");
    while (query.executeStep()) {
        Row row(query);
        if (const auto sound = check(values_in(row)); !sound) return unfit(sound.error(), say(phrase("store", "a reading")), path);
    }
    return {};
}

/// Every version of every meter; one without any could not be shown.
Result<void> check_meters(SQLite::Database& database, const fs::path& path) {
    for (const std::int64_t id : meter_ids(database)) {
        const std::vector<MeterVersion> versions = meter_versions(database, id);
        if (versions.empty()) return damaged_error(path, say(phrase("store", "a meter has no data")));
        for (const MeterVersion& version : versions) {
            if (const auto sound = check(version.meter); !sound)
                return unfit(sound.error(), say(phrase("store", "meter %1"), version.meter.name), path);
            if (const auto sound = check_reason(version.reason); !sound)
                return unfit(sound.error(), say(phrase("store", "meter %1"), version.meter.name), path);
        }
    }
    return {};
}

Result<void> check_settings(SQLite::Database& database, const fs::path& path) {
    for (const auto& [key, value] : method_settings(database))
        if (const auto sound = check_method_setting(key, value); !sound)
            return unfit(sound.error(), say(phrase("store", "an option of the method")), path);
    if (const auto sound = check(publisher(database)); !sound) return unfit(sound.error(), say(phrase("store", "the publisher's details")), path);
    for (const auto& [meter, source] : meter_sources(database))
        if (const auto sound = check_meter_source(source); !sound) return unfit(sound.error(), say(phrase("store", "the source of a meter")), path);
    for (const auto& [name, keys] : column_sets(database))
        if (const auto sound = check_column_set(name, keys); !sound) return unfit(sound.error(), say(phrase("store", "a set of columns")), path);
    return {};
}

} // namespace

Result<void> check_values(SQLite::Database& database, const fs::path& path) {
    if (auto texts = check_texts(database, path); !texts) return texts;
    for (const auto& [id, unit] : all_units(database))
        if (const auto sound = check(unit); !sound) return unfit(sound.error(), say(phrase("store", "unit %1"), unit.name), path);
    if (auto meters = check_meters(database, path); !meters) return meters;
    if (auto settings = check_settings(database, path); !settings) return settings;
    for (const ListedRun& listed : listed_runs(database, std::nullopt))
        if (const auto sound = check(listed.run); !sound)
            return unfit(sound.error(), say(phrase("store", "run %1"), say_number(listed.number)), path);
    const auto named = [](const auto& thing) { return thing.name; };
    if (auto lists = check_each(listed_load_lists(database), path, named); !lists) return lists;
    if (auto sheets = check_each(listed_pv_sheets(database), path, named); !sheets) return sheets;
    const auto of_file = [](const Trace& trace) { return say(phrase("store", "log %1"), trace.file_name); };
    if (auto traces = check_each(listed_traces(database, std::nullopt), path, of_file); !traces) return traces;
    return check_readings(database, path);
}

} // namespace ullage::store
