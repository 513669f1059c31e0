// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/pv_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

#include <utility>

namespace ullage::store {

namespace {

void bind_coefficient(Binder& binder, const std::optional<PvCoefficient>& coefficient) {
    std::optional<double> value;
    std::optional<std::int64_t> per;
    if (coefficient) {
        value = coefficient->value;
        per = static_cast<std::int64_t>(coefficient->per);
    }
    binder.real(value).integer(per);
}

void bind_values(Binder& binder, const PvSheet& sheet, std::optional<std::int64_t> unit_id) {
    binder.id(sheet.uuid).integer(unit_id).text(sheet.name).text(sheet.module);
    binder.real(sheet.voc_v).real(sheet.vmp_v).real(sheet.isc_a).real(sheet.imp_a);
    for (const auto* coefficient : {&sheet.voc_coefficient, &sheet.vmp_coefficient, &sheet.power_coefficient}) bind_coefficient(binder, *coefficient);
    binder.real(sheet.noct_c).integer(sheet.crystalline_silicon).integer(sheet.series).integer(sheet.parallel);
    binder.real(sheet.coldest_c).real(sheet.hottest_c).real(sheet.hottest_cell_c).real(sheet.irradiance_w_m2).text(sheet.remark);
    binder.real(sheet.voc_tolerance_percent);
}

std::optional<PvCoefficient> coefficient_in(Row& row) {
    const std::optional<double> value = row.maybe_real();
    const std::optional<std::int64_t> per = row.maybe_integer();
    if (!value || !per) return std::nullopt;
    return PvCoefficient{*value, static_cast<PvPerDegree>(*per)};
}

PvSheet sheet_in(SQLite::Statement& statement) {
    Row row(statement);
    PvSheet sheet;
    sheet.uuid = row.id<PvSheetId>();
    sheet.unit_uuid = row.maybe_id<UnitId>().value_or(UnitId());
    sheet.name = row.text();
    sheet.module = row.text();
    for (auto* number : {&sheet.voc_v, &sheet.vmp_v, &sheet.isc_a, &sheet.imp_a}) *number = row.maybe_real();
    for (auto* coefficient : {&sheet.voc_coefficient, &sheet.vmp_coefficient, &sheet.power_coefficient}) *coefficient = coefficient_in(row);
    sheet.noct_c = row.maybe_real();
    sheet.crystalline_silicon = row.flag();
    sheet.series = static_cast<int>(row.integer());
    sheet.parallel = static_cast<int>(row.integer());
    for (auto* number : {&sheet.coldest_c, &sheet.hottest_c, &sheet.hottest_cell_c, &sheet.irradiance_w_m2}) *number = row.maybe_real();
    sheet.remark = row.text();
    sheet.voc_tolerance_percent = row.maybe_real();
    return sheet;
}

} // namespace

std::optional<std::int64_t> pv_sheet_id(SQLite::Database& database, const PvSheetId& uuid) {
    SQLite::Statement query(database, "SELECT id FROM pv_sheets WHERE uuid = ?1");
    Binder(query).id(uuid);
    if (!query.executeStep()) return std::nullopt;
    return Row(query).integer();
}

void insert_pv_sheet(SQLite::Database& database, const PvSheet& sheet, std::optional<std::int64_t> unit_id, UtcMs created_ms) {
    SQLite::Statement insert(
        database,
        "INSERT INTO pv_sheets (uuid, unit_id, name, module, voc_v, vmp_v, isc_a, imp_a, voc_per_c, voc_per_c_unit, vmp_per_c, "
        "vmp_per_c_unit, power_per_c, power_per_c_unit, noct_c, crystalline_silicon, series, parallel, coldest_c, hottest_c, "
        "hottest_cell_c, irradiance_w_m2, remark, voc_tolerance_percent, created_ms) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, "
        "?15, ?16, ?17, ?18, ?19, ?20, ?21, ?22, ?23, ?24, ?25)");
    Binder binder(insert);
    bind_values(binder, sheet, unit_id);
    binder.integer(created_ms);
    insert.exec();
}

void update_pv_sheet(SQLite::Database& database, std::int64_t id, const PvSheet& sheet, std::optional<std::int64_t> unit_id) {
    SQLite::Statement update(
        database, "UPDATE pv_sheets SET uuid = ?1, unit_id = ?2, name = ?3, module = ?4, voc_v = ?5, vmp_v = ?6, isc_a = ?7, imp_a = ?8, "
                  "voc_per_c = ?9, voc_per_c_unit = ?10, vmp_per_c = ?11, vmp_per_c_unit = ?12, power_per_c = ?13, power_per_c_unit = ?14, "
                  "noct_c = ?15, crystalline_silicon = ?16, series = ?17, parallel = ?18, coldest_c = ?19, hottest_c = ?20, hottest_cell_c = ?21, "
                  "irradiance_w_m2 = ?22, remark = ?23, voc_tolerance_percent = ?24 WHERE id = ?25");
    Binder binder(update);
    bind_values(binder, sheet, unit_id);
    binder.integer(id);
    update.exec();
}

void withdraw_pv_sheet(SQLite::Database& database, std::int64_t id, bool withdrawn) {
    SQLite::Statement update(database, "UPDATE pv_sheets SET withdrawn = ?1 WHERE id = ?2");
    Binder(update).integer(withdrawn).integer(id);
    update.exec();
}

std::vector<KeptRecord<PvSheet>> all_pv_sheets(SQLite::Database& database) {
    SQLite::Statement query(
        database, "SELECT pv_sheets.uuid, units.uuid, pv_sheets.name, module, voc_v, vmp_v, isc_a, imp_a, voc_per_c, voc_per_c_unit, vmp_per_c, "
                  "vmp_per_c_unit, power_per_c, power_per_c_unit, noct_c, crystalline_silicon, series, parallel, coldest_c, hottest_c, "
                  "hottest_cell_c, irradiance_w_m2, pv_sheets.remark, voc_tolerance_percent, pv_sheets.withdrawn FROM pv_sheets "
                  "LEFT JOIN units ON units.id = unit_id ORDER BY pv_sheets.name COLLATE NOCASE, pv_sheets.name, pv_sheets.id");
    std::vector<KeptRecord<PvSheet>> sheets;
    while (query.executeStep()) sheets.push_back({sheet_in(query), query.getColumn("withdrawn").getInt() != 0});
    return sheets;
}

std::vector<PvSheet> listed_pv_sheets(SQLite::Database& database) {
    std::vector<PvSheet> listed;
    for (auto& [sheet, withdrawn] : all_pv_sheets(database))
        if (!withdrawn) listed.push_back(std::move(sheet));
    return listed;
}

} // namespace ullage::store
