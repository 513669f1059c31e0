// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/meter_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

namespace {

constexpr const char* select_meters = "SELECT id, uuid, name, step_wh, limit_percent, span_wh, correction, remark, load_part_percent FROM meters ";

void bind_values(Binder& binder, const Meter& meter) {
    binder.text(meter.uuid).text(meter.name).real(meter.step_wh).real(meter.limit_percent).real(meter.span_wh);
    binder.real(meter.correction).text(meter.remark).real(meter.load_part_percent);
}

std::pair<std::int64_t, Meter> meter_in(SQLite::Statement& statement) {
    Row row(statement);
    const std::int64_t id = row.integer();
    Meter meter;
    meter.uuid = row.text();
    meter.name = row.text();
    meter.step_wh = row.maybe_real();
    meter.limit_percent = row.maybe_real();
    meter.span_wh = row.maybe_real();
    meter.correction = row.real();
    meter.remark = row.text();
    meter.load_part_percent = row.maybe_real();
    return {id, std::move(meter)};
}

} // namespace

std::optional<std::int64_t> meter_id(SQLite::Database& database, const std::string& uuid) {
    SQLite::Statement query(database, "SELECT id FROM meters WHERE uuid = ?1");
    Binder(query).text(uuid);
    if (!query.executeStep()) return std::nullopt;
    return Row(query).integer();
}

std::int64_t insert_meter(SQLite::Database& database, const Meter& meter, UtcMs created_ms) {
    SQLite::Statement insert(database, "INSERT INTO meters (uuid, name, step_wh, limit_percent, span_wh, correction, remark, "
                                       "load_part_percent, created_ms) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)");
    Binder binder(insert);
    bind_values(binder, meter);
    binder.integer(created_ms);
    insert.exec();
    return database.getLastInsertRowid();
}

void update_meter(SQLite::Database& database, std::int64_t id, const Meter& meter) {
    SQLite::Statement update(database, "UPDATE meters SET uuid = ?1, name = ?2, step_wh = ?3, limit_percent = ?4, "
                                       "span_wh = ?5, correction = ?6, remark = ?7, load_part_percent = ?8 WHERE id = ?9");
    Binder binder(update);
    bind_values(binder, meter);
    binder.integer(id);
    update.exec();
}

void withdraw_meter(SQLite::Database& database, std::int64_t id, bool withdrawn) {
    SQLite::Statement update(database, "UPDATE meters SET withdrawn = ?1 WHERE id = ?2");
    Binder(update).integer(withdrawn).integer(id);
    update.exec();
}

std::int64_t runs_naming_meter(SQLite::Database& database, std::int64_t id) {
    SQLite::Statement query(database, "SELECT count(*) FROM runs WHERE meter_id = ?1");
    Binder(query).integer(id);
    query.executeStep();
    return Row(query).integer();
}

std::vector<Meter> listed_meters(SQLite::Database& database) {
    SQLite::Statement query(database, std::string(select_meters) + "WHERE withdrawn = 0 ORDER BY name COLLATE NOCASE, name, id");
    std::vector<Meter> meters;
    while (query.executeStep()) meters.push_back(meter_in(query).second);
    return meters;
}

std::map<std::int64_t, Meter> all_meters(SQLite::Database& database) {
    SQLite::Statement query(database, select_meters);
    std::map<std::int64_t, Meter> meters;
    while (query.executeStep()) meters.insert(meter_in(query));
    return meters;
}

} // namespace ullage::store
