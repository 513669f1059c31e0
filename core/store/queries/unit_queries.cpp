// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/unit_queries.h"

#include "model/tags.h"
#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

namespace {

constexpr const char* select_units =
    "SELECT id, uuid, name, maker, rated_energy_wh, rated_output_w, peak_output_w, pv_max_v, pv_max_a, "
    "pv_max_w, price, "
    "currency, mass_kg, warranty_years, gauge_step_percent, remark, pv_start_v, charge_time_h, paid_price, tags, model, "
    "pv_short_circuit_a, serial_number, chemistry, purchased, cycles_before FROM units ";

void bind_values(Binder& binder, const Unit& unit) {
    binder.id(unit.uuid).text(unit.name).text(unit.maker);
    binder.real(unit.rated_energy_wh).real(unit.rated_output_w).real(unit.peak_output_w);
    binder.real(unit.pv_max_v).real(unit.pv_max_a).real(unit.pv_max_w);
    binder.real(unit.price).text(unit.currency).real(unit.mass_kg).real(unit.warranty_years);
    binder.real(unit.gauge_step_percent).text(unit.remark).real(unit.pv_start_v).real(unit.charge_time_h);
    binder.real(unit.paid_price).text(tags_text(unit.tags)).text(unit.model).real(unit.pv_short_circuit_a);
    binder.text(unit.serial_number).text(unit.chemistry).text(unit.purchased).real(unit.cycles_before);
}

std::pair<std::int64_t, Unit> unit_in(SQLite::Statement& statement) {
    Row row(statement);
    const std::int64_t id = row.integer();
    Unit unit;
    unit.uuid = row.id<UnitId>();
    unit.name = row.text();
    unit.maker = row.text();
    unit.rated_energy_wh = row.maybe_real();
    unit.rated_output_w = row.maybe_real();
    unit.peak_output_w = row.maybe_real();
    unit.pv_max_v = row.maybe_real();
    unit.pv_max_a = row.maybe_real();
    unit.pv_max_w = row.maybe_real();
    unit.price = row.maybe_real();
    unit.currency = row.text();
    unit.mass_kg = row.maybe_real();
    unit.warranty_years = row.maybe_real();
    unit.gauge_step_percent = row.real();
    unit.remark = row.text();
    unit.pv_start_v = row.maybe_real();
    unit.charge_time_h = row.maybe_real();
    unit.paid_price = row.maybe_real();
    // What another program may have put there is no reason to lose the unit.
    const std::string tags = row.text();
    if (auto known = tags_from(tags)) unit.tags = std::move(known).value();
    unit.model = row.text();
    unit.pv_short_circuit_a = row.maybe_real();
    unit.serial_number = row.text();
    unit.chemistry = row.text();
    unit.purchased = row.text();
    unit.cycles_before = row.maybe_real();
    return {id, std::move(unit)};
}

} // namespace

std::optional<std::int64_t> unit_id(SQLite::Database& database, const UnitId& uuid) {
    SQLite::Statement query(database, "SELECT id FROM units WHERE uuid = ?1");
    Binder(query).id(uuid);
    if (!query.executeStep()) return std::nullopt;
    return Row(query).integer();
}

std::int64_t insert_unit(SQLite::Database& database, const Unit& unit, UtcMs created_ms) {
    SQLite::Statement insert(
        database,
        "INSERT INTO units (uuid, name, maker, rated_energy_wh, rated_output_w, peak_output_w, pv_max_v, "
        "pv_max_a, "
        "pv_max_w, price, currency, mass_kg, warranty_years, gauge_step_percent, remark, pv_start_v, charge_time_h, paid_price, tags, model, "
        "pv_short_circuit_a, serial_number, chemistry, purchased, cycles_before, created_ms) "
        "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, ?19, ?20, ?21, ?22, ?23, ?24, ?25, ?26)");
    Binder binder(insert);
    bind_values(binder, unit);
    binder.integer(created_ms);
    insert.exec();
    return database.getLastInsertRowid();
}

void update_unit(SQLite::Database& database, std::int64_t id, const Unit& unit) {
    SQLite::Statement update(
        database, "UPDATE units SET uuid = ?1, name = ?2, maker = ?3, rated_energy_wh = ?4, rated_output_w = ?5, "
                  "peak_output_w = ?6, pv_max_v = ?7, pv_max_a = ?8, pv_max_w = ?9, price = ?10, currency = ?11, "
                  "mass_kg = ?12, warranty_years = ?13, gauge_step_percent = ?14, remark = ?15, pv_start_v = ?16, charge_time_h = ?17, "
                  "paid_price = ?18, tags = ?19, model = ?20, pv_short_circuit_a = ?21, serial_number = ?22, chemistry = ?23, purchased = ?24, "
                  "cycles_before = ?25 WHERE id = ?26");
    Binder binder(update);
    bind_values(binder, unit);
    binder.integer(id);
    update.exec();
}

void withdraw_unit(SQLite::Database& database, std::int64_t id, bool withdrawn) {
    SQLite::Statement update(database, "UPDATE units SET withdrawn = ?1 WHERE id = ?2");
    Binder(update).integer(withdrawn).integer(id);
    update.exec();
}

std::vector<Unit> listed_units(SQLite::Database& database) {
    SQLite::Statement query(database, std::string(select_units) + "WHERE withdrawn = 0 ORDER BY name COLLATE NOCASE, name, maker, id");
    std::vector<Unit> units;
    while (query.executeStep()) units.push_back(unit_in(query).second);
    return units;
}

std::map<std::int64_t, Unit> all_units(SQLite::Database& database) { return units_of(database, std::nullopt); }

std::map<std::int64_t, Unit> units_of(SQLite::Database& database, std::optional<std::int64_t> id) {
    SQLite::Statement query(database, std::string(select_units) + (id ? "WHERE id = ?1" : ""));
    if (id) Binder(query).integer(id);
    std::map<std::int64_t, Unit> units;
    while (query.executeStep()) units.insert(unit_in(query));
    return units;
}

} // namespace ullage::store
