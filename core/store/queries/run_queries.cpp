// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/run_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

#include <map>
#include <utility>

namespace ullage::store {

namespace {

std::string unit_clause(std::optional<std::int64_t> unit_id) { return unit_id ? " WHERE runs.unit_id = ?1 " : " "; }

void bind_unit(SQLite::Statement& query, std::optional<std::int64_t> unit_id) {
    if (unit_id) Binder(query).integer(*unit_id);
}

void bind_values(Binder& binder, const Run& run, const RunOwners& owners) {
    std::optional<std::int64_t> started_full;
    if (run.started_full) started_full = *run.started_full;
    binder.id(run.uuid).integer(owners.unit_id).integer(owners.meter_id).integer(static_cast<std::int64_t>(run.kind));
    binder.integer(started_full).integer(static_cast<std::int64_t>(run.end)).text(run.load).real(run.ambient_c);
    binder.text(run.time_zone).integer(run.created_ms);
    std::optional<std::int64_t> source;
    if (run.charge_source) source = static_cast<std::int64_t>(*run.charge_source);
    binder.integer(source).real(run.end_noticed_within_min).real(run.ambient_end_c).integer(owners.second_meter_id);
}

void insert_extras(SQLite::Database& database, std::int64_t run_id, const Run& run) {
    SQLite::Statement insert(database, "INSERT INTO run_extras (run_id, position, key, value) VALUES (?1, ?2, ?3, ?4)");
    std::int64_t position = 0;
    for (const auto& [key, value] : run.extra) {
        insert.reset();
        Binder(insert).integer(run_id).integer(++position).text(key).text(value);
        insert.exec();
    }
}

std::map<std::int64_t, std::vector<std::pair<std::string, std::string>>> extras(SQLite::Database& database, std::optional<std::int64_t> unit_id) {
    SQLite::Statement query(database, "SELECT run_id, key, value FROM run_extras JOIN runs ON runs.id = run_id" + unit_clause(unit_id) +
                                          "ORDER BY run_id, position");
    bind_unit(query, unit_id);
    std::map<std::int64_t, std::vector<std::pair<std::string, std::string>>> found;
    while (query.executeStep()) {
        Row row(query);
        auto& list = found[row.integer()];
        std::string key = row.text();
        list.emplace_back(std::move(key), row.text());
    }
    return found;
}

ListedRun run_in(SQLite::Statement& statement) {
    Row row(statement);
    ListedRun listed;
    listed.id = row.integer();
    listed.unit_id = row.integer();
    listed.meter_id = row.maybe_integer();
    listed.second_meter_id = row.maybe_integer();
    listed.shown = row.flag();
    listed.number = static_cast<int>(row.integer());
    Run& run = listed.run;
    run.uuid = row.id<RunId>();
    run.unit_uuid = row.id<UnitId>();
    run.meter_uuid = row.maybe_id<MeterId>();
    run.kind = static_cast<RunKind>(row.integer());
    if (const auto full = row.maybe_integer()) run.started_full = *full != 0;
    run.end = static_cast<RunEnd>(row.integer());
    run.load = row.text();
    run.ambient_c = row.maybe_real();
    run.time_zone = row.text();
    run.created_ms = row.integer();
    if (const auto source = row.maybe_integer()) run.charge_source = static_cast<ChargeSource>(*source);
    run.end_noticed_within_min = row.maybe_real();
    run.ambient_end_c = row.maybe_real();
    run.second_meter_uuid = row.maybe_id<MeterId>();
    return listed;
}

} // namespace

std::optional<std::int64_t> run_id(SQLite::Database& database, const RunId& uuid) {
    SQLite::Statement query(database, "SELECT id FROM runs WHERE uuid = ?1");
    Binder(query).id(uuid);
    if (!query.executeStep()) return std::nullopt;
    return Row(query).integer();
}

std::optional<std::int64_t> unit_of_run(SQLite::Database& database, const RunId& run_uuid) {
    SQLite::Statement query(database, "SELECT unit_id FROM runs WHERE uuid = ?1");
    Binder(query).id(run_uuid);
    if (!query.executeStep()) return std::nullopt;
    return Row(query).integer();
}

std::int64_t insert_run(SQLite::Database& database, const Run& run, const RunOwners& owners) {
    SQLite::Statement insert(database, "INSERT INTO runs (uuid, unit_id, meter_id, kind, started_full, ended, load, ambient_c, "
                                       "time_zone, created_ms, charge_source, end_noticed_within_min, ambient_end_c, second_meter_id) "
                                       "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14)");
    Binder binder(insert);
    bind_values(binder, run, owners);
    insert.exec();
    const std::int64_t id = database.getLastInsertRowid();
    insert_extras(database, id, run);
    return id;
}

void update_run(SQLite::Database& database, std::int64_t id, const Run& run, const RunOwners& owners) {
    SQLite::Statement update(database, "UPDATE runs SET uuid = ?1, unit_id = ?2, meter_id = ?3, kind = ?4, started_full = ?5, "
                                       "ended = ?6, load = ?7, ambient_c = ?8, time_zone = ?9, "
                                       "created_ms = iif(?10 = 0, created_ms, ?10), charge_source = ?11, "
                                       "end_noticed_within_min = ?12, ambient_end_c = ?13, second_meter_id = ?14 WHERE id = ?15");
    Binder binder(update);
    bind_values(binder, run, owners);
    binder.integer(id);
    update.exec();
    SQLite::Statement clear(database, "DELETE FROM run_extras WHERE run_id = ?1");
    Binder(clear).integer(id);
    clear.exec();
    insert_extras(database, id, run);
}

void withdraw_run(SQLite::Database& database, std::int64_t id, bool withdrawn) {
    SQLite::Statement update(database, "UPDATE runs SET withdrawn = ?1 WHERE id = ?2");
    Binder(update).integer(withdrawn).integer(id);
    update.exec();
}

std::vector<ListedRun> listed_runs(SQLite::Database& database, std::optional<std::int64_t> unit_id) {
    // The number of a withdrawn run is the one that it would have after being restored.
    SQLite::Statement query(database, R"sql(
WITH timed AS (
    SELECT runs.*, coalesce((SELECT min(time_ms) FROM current_readings
                             WHERE current_readings.run_id = runs.id AND current_readings.withdrawn = 0),
                            runs.created_ms) AS first_ms
    FROM runs)sql" + unit_clause(unit_id) +
                                          R"sql(
), numbered AS (
    SELECT *, 1 + count(*) FILTER (WHERE withdrawn = 0) OVER (
        PARTITION BY unit_id ORDER BY first_ms, created_ms, id
        ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING) AS number
    FROM timed
)
SELECT numbered.id, numbered.unit_id, numbered.meter_id, second_meter_id, numbered.withdrawn = 0 AND units.withdrawn = 0, number,
       numbered.uuid, units.uuid, meters.uuid, kind, started_full, ended, load, ambient_c, time_zone, numbered.created_ms, charge_source,
       end_noticed_within_min, ambient_end_c, seconds.uuid
FROM numbered JOIN units ON units.id = numbered.unit_id LEFT JOIN meters ON meters.id = numbered.meter_id
     LEFT JOIN meters AS seconds ON seconds.id = numbered.second_meter_id
ORDER BY units.name COLLATE NOCASE, units.name, units.maker, units.id, first_ms, numbered.created_ms, numbered.id
)sql");
    bind_unit(query, unit_id);
    auto extra = extras(database, unit_id);
    std::vector<ListedRun> runs;
    while (query.executeStep()) {
        runs.push_back(run_in(query));
        if (auto found = extra.find(runs.back().id); found != extra.end()) runs.back().run.extra = std::move(found->second);
    }
    return runs;
}

void write_draft(SQLite::Database& database, std::int64_t run_id, const std::string& draft, UtcMs now_ms) {
    SQLite::Statement write(database, draft.empty() ? "DELETE FROM run_drafts WHERE run_id = ?1"
                                                    : "INSERT INTO run_drafts (run_id, draft, kept_ms) VALUES (?1, ?2, ?3) "
                                                      "ON CONFLICT (run_id) DO UPDATE SET draft = ?2, kept_ms = ?3");
    Binder binder(write);
    binder.integer(run_id);
    if (!draft.empty()) binder.text(draft).integer(now_ms);
    write.exec();
}

std::string read_draft(SQLite::Database& database, std::int64_t run_id) {
    SQLite::Statement query(database, "SELECT draft FROM run_drafts WHERE run_id = ?1");
    Binder(query).integer(run_id);
    return query.executeStep() ? Row(query).text() : std::string();
}

} // namespace ullage::store
