// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/load_list_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

#include <map>
#include <utility>

namespace ullage::store {

namespace {

void insert_appliances(SQLite::Database& database, std::int64_t list_id, const LoadList& list) {
    std::int64_t place = 0;
    for (const Appliance& appliance : list.appliances) {
        SQLite::Statement insert(database, "INSERT INTO appliances (list_id, place, name, power_w, duty, measured_wh, measured_hours, "
                                           "hours_per_day, night_hours, start_peak_w, how_many, always_connected) "
                                           "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)");
        Binder binder(insert);
        binder.integer(list_id).integer(++place).text(appliance.name).real(appliance.power_w).real(appliance.duty);
        const auto& measured = appliance.measured;
        binder.real(measured ? std::optional(measured->energy_wh) : std::nullopt);
        binder.real(measured ? std::optional(measured->hours) : std::nullopt);
        binder.real(appliance.hours_per_day).real(appliance.night_hours).real(appliance.start_peak_w);
        binder.integer(appliance.count).integer(appliance.always_connected);
        insert.exec();
    }
}

Appliance appliance_in(Row& row) {
    Appliance appliance;
    appliance.name = row.text();
    appliance.power_w = row.maybe_real();
    appliance.duty = row.real();
    const auto measured_wh = row.maybe_real(), measured_hours = row.maybe_real();
    if (measured_wh && measured_hours) appliance.measured = MeasuredUse{*measured_wh, *measured_hours};
    appliance.hours_per_day = row.real();
    appliance.night_hours = row.real();
    appliance.start_peak_w = row.maybe_real();
    appliance.count = static_cast<int>(row.integer());
    appliance.always_connected = row.flag();
    return appliance;
}

} // namespace

std::optional<std::int64_t> load_list_id(SQLite::Database& database, const LoadListId& uuid) {
    SQLite::Statement query(database, "SELECT id FROM load_lists WHERE uuid = ?1");
    Binder(query).id(uuid);
    if (!query.executeStep()) return std::nullopt;
    return Row(query).integer();
}

bool load_list_name_taken(SQLite::Database& database, const std::string& name, const LoadListId& uuid) {
    SQLite::Statement query(database, "SELECT 1 FROM load_lists WHERE name = ?1 COLLATE NOCASE AND uuid <> ?2 AND withdrawn = 0");
    Binder(query).text(name).id(uuid);
    return query.executeStep();
}

void insert_load_list(SQLite::Database& database, const LoadList& list, UtcMs created_ms) {
    SQLite::Statement insert(database, "INSERT INTO load_lists (uuid, name, remark, created_ms) VALUES (?1, ?2, ?3, ?4)");
    Binder(insert).id(list.uuid).text(list.name).text(list.remark).integer(created_ms);
    insert.exec();
    insert_appliances(database, database.getLastInsertRowid(), list);
}

void update_load_list(SQLite::Database& database, std::int64_t id, const LoadList& list) {
    SQLite::Statement update(database, "UPDATE load_lists SET name = ?1, remark = ?2 WHERE id = ?3");
    Binder(update).text(list.name).text(list.remark).integer(id);
    update.exec();
    SQLite::Statement clear(database, "DELETE FROM appliances WHERE list_id = ?1");
    Binder(clear).integer(id);
    clear.exec();
    insert_appliances(database, id, list);
}

void withdraw_load_list(SQLite::Database& database, std::int64_t id, bool withdrawn) {
    SQLite::Statement update(database, "UPDATE load_lists SET withdrawn = ?1 WHERE id = ?2");
    Binder(update).integer(withdrawn).integer(id);
    update.exec();
}

std::vector<KeptRecord<LoadList>> all_load_lists(SQLite::Database& database) {
    std::vector<KeptRecord<LoadList>> lists;
    std::map<std::int64_t, std::size_t> place_of;
    SQLite::Statement query(database, "SELECT id, withdrawn, uuid, name, remark FROM load_lists ORDER BY name COLLATE NOCASE, name, id");
    while (query.executeStep()) {
        Row row(query);
        place_of[row.integer()] = lists.size();
        auto& [list, withdrawn] = lists.emplace_back();
        withdrawn = row.flag();
        list.uuid = row.id<LoadListId>();
        list.name = row.text();
        list.remark = row.text();
    }
    SQLite::Statement lines(database, "SELECT list_id, name, power_w, duty, measured_wh, measured_hours, hours_per_day, night_hours, "
                                      "start_peak_w, how_many, always_connected FROM appliances ORDER BY list_id, place");
    while (lines.executeStep()) {
        Row row(lines);
        const auto list = place_of.find(row.integer());
        if (list != place_of.end()) lists[list->second].record.appliances.push_back(appliance_in(row));
    }
    return lists;
}

std::vector<LoadList> listed_load_lists(SQLite::Database& database) {
    std::vector<LoadList> listed;
    for (auto& [list, withdrawn] : all_load_lists(database))
        if (!withdrawn) listed.push_back(std::move(list));
    return listed;
}

} // namespace ullage::store
