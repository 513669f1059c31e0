// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/meter_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

#include <utility>

namespace ullage::store {

namespace {

/// A meter's data, in the order of bind_data() and data_in().
const std::string data_columns = "name, step_wh, limit_percent, span_wh, correction, load_part_percent, certificate_number, certificate_date, "
                                 "laboratory, valid_until, accuracy_class, standard, starting_current_a, range_low_w, range_high_w, remark";

void bind_data(Binder& binder, const Meter& meter) {
    binder.text(meter.name).real(meter.step_wh).real(meter.limit_percent).real(meter.span_wh).real(meter.correction);
    binder.real(meter.load_part_percent).text(meter.certificate.number).text(meter.certificate.date).text(meter.certificate.laboratory);
    binder.text(meter.certificate.valid_until).text(meter.accuracy_class).text(meter.standard).real(meter.starting_current_a);
    binder.real(meter.range_low_w).real(meter.range_high_w).text(meter.remark);
}

Meter data_in(Row& row) {
    Meter meter;
    meter.name = row.text();
    meter.step_wh = row.maybe_real();
    meter.limit_percent = row.maybe_real();
    meter.span_wh = row.maybe_real();
    meter.correction = row.real();
    meter.load_part_percent = row.maybe_real();
    meter.certificate.number = row.text();
    meter.certificate.date = row.text();
    meter.certificate.laboratory = row.text();
    meter.certificate.valid_until = row.text();
    meter.accuracy_class = row.text();
    meter.standard = row.text();
    meter.starting_current_a = row.maybe_real();
    meter.range_low_w = row.maybe_real();
    meter.range_high_w = row.maybe_real();
    meter.remark = row.text();
    return meter;
}

MeterPoint point_in(Row& row) {
    MeterPoint point;
    point.load_w = row.real();
    point.correction = row.real();
    point.expanded_u_percent = row.maybe_real();
    point.coverage_k = row.maybe_real();
    return point;
}

/// Adds what is stated of a meter as its next version.
void insert_version(SQLite::Database& database, std::int64_t id, const Meter& meter, UtcMs written_ms, const std::string& reason) {
    SQLite::Statement insert(database, "INSERT INTO meter_versions (meter_id, version, " + data_columns +
                                           ", written_ms, reason) VALUES (?1, (SELECT coalesce(max(version), 0) + 1 FROM meter_versions "
                                           "WHERE meter_id = ?1), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, ?19)");
    Binder binder(insert);
    binder.integer(id);
    bind_data(binder, meter);
    binder.integer(written_ms).text(reason);
    insert.exec();
    SQLite::Statement add(database, "INSERT INTO meter_points (meter_id, version, place, load_w, correction, expanded_u_percent, coverage_k) "
                                    "VALUES (?1, (SELECT max(version) FROM meter_versions WHERE meter_id = ?1), ?2, ?3, ?4, ?5, ?6)");
    std::int64_t place = 0;
    for (const MeterPoint& point : meter.points) {
        add.reset();
        Binder(add).integer(id).integer(++place).real(point.load_w).real(point.correction).real(point.expanded_u_percent).real(point.coverage_k);
        add.exec();
    }
}

/// The points of every meter as it stands, by row id.
std::map<std::int64_t, std::vector<MeterPoint>> present_points(SQLite::Database& database) {
    SQLite::Statement query(database,
                            "SELECT meter_id, load_w, correction, expanded_u_percent, coverage_k FROM meter_points AS points WHERE version = "
                            "(SELECT max(version) FROM meter_versions WHERE meter_id = points.meter_id) ORDER BY meter_id, place");
    std::map<std::int64_t, std::vector<MeterPoint>> points;
    while (query.executeStep()) {
        Row row(query);
        auto& of_meter = points[row.integer()];
        of_meter.push_back(point_in(row));
    }
    return points;
}

/// The present meters that `clause` selects and orders, with their row ids.
std::vector<std::pair<std::int64_t, Meter>> present_meters(SQLite::Database& database, const std::string& clause) {
    const auto points = present_points(database);
    SQLite::Statement query(database, "SELECT id, uuid, " + data_columns + " FROM current_meters " + clause);
    std::vector<std::pair<std::int64_t, Meter>> meters;
    while (query.executeStep()) {
        Row row(query);
        const std::int64_t id = row.integer();
        MeterId uuid = row.id<MeterId>();
        Meter& meter = meters.emplace_back(id, data_in(row)).second;
        meter.uuid = std::move(uuid);
        if (const auto found = points.find(id); found != points.end()) meter.points = found->second;
    }
    return meters;
}

} // namespace

std::optional<std::int64_t> meter_id(SQLite::Database& database, const MeterId& uuid) {
    SQLite::Statement query(database, "SELECT id FROM meters WHERE uuid = ?1");
    Binder(query).id(uuid);
    if (!query.executeStep()) return std::nullopt;
    return Row(query).integer();
}

std::int64_t insert_meter(SQLite::Database& database, const Meter& meter, UtcMs created_ms) {
    SQLite::Statement insert(database, "INSERT INTO meters (uuid, created_ms) VALUES (?1, ?2)");
    Binder(insert).id(meter.uuid).integer(created_ms);
    insert.exec();
    const std::int64_t id = database.getLastInsertRowid();
    insert_version(database, id, meter, created_ms, {});
    return id;
}

void update_meter(SQLite::Database& database, std::int64_t id, const Meter& meter, UtcMs written_ms, const std::string& reason) {
    insert_version(database, id, meter, written_ms, reason);
}

void withdraw_meter(SQLite::Database& database, std::int64_t id, bool withdrawn) {
    SQLite::Statement update(database, "UPDATE meters SET withdrawn = ?1 WHERE id = ?2");
    Binder(update).integer(withdrawn).integer(id);
    update.exec();
}

std::int64_t runs_naming_meter(SQLite::Database& database, std::int64_t id) {
    SQLite::Statement query(database, "SELECT count(*) FROM runs WHERE meter_id = ?1 OR second_meter_id = ?1");
    Binder(query).integer(id);
    query.executeStep();
    return Row(query).integer();
}

std::vector<Meter> listed_meters(SQLite::Database& database) {
    std::vector<Meter> meters;
    for (auto& [id, meter] : present_meters(database, "WHERE withdrawn = 0 ORDER BY name COLLATE NOCASE, name, id"))
        meters.push_back(std::move(meter));
    return meters;
}

std::map<std::int64_t, Meter> all_meters(SQLite::Database& database) {
    std::map<std::int64_t, Meter> meters;
    for (auto& each : present_meters(database, "")) meters.insert(std::move(each));
    return meters;
}

std::vector<std::int64_t> meter_ids(SQLite::Database& database) {
    SQLite::Statement query(database, "SELECT id FROM meters ORDER BY id");
    std::vector<std::int64_t> ids;
    while (query.executeStep()) ids.push_back(Row(query).integer());
    return ids;
}

std::vector<MeterVersion> meter_versions(SQLite::Database& database, std::int64_t id) {
    SQLite::Statement query(database, "SELECT version, uuid, written_ms, reason, " + data_columns +
                                          " FROM meter_versions JOIN meters ON meters.id = meter_id WHERE meter_id = ?1 ORDER BY version");
    Binder(query).integer(id);
    SQLite::Statement points(database, "SELECT load_w, correction, expanded_u_percent, coverage_k FROM meter_points "
                                       "WHERE meter_id = ?1 AND version = ?2 ORDER BY place");
    std::vector<MeterVersion> versions;
    while (query.executeStep()) {
        Row row(query);
        MeterVersion& version = versions.emplace_back();
        version.version = static_cast<int>(row.integer());
        MeterId uuid = row.id<MeterId>();
        version.written_ms = row.integer();
        version.reason = row.text();
        version.meter = data_in(row);
        version.meter.uuid = std::move(uuid);
        points.reset();
        Binder(points).integer(id).integer(static_cast<std::int64_t>(version.version));
        while (points.executeStep()) {
            Row point(points);
            version.meter.points.push_back(point_in(point));
        }
    }
    return versions;
}

} // namespace ullage::store
