// SPDX-License-Identifier: GPL-3.0-or-later
// The data of a meter as versions, with its certificate and points of correction; two meters in series; models of units; the temperature at the end
// of a run; options of the method.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

namespace {

constexpr const char* meters_as_versions = R"sql(
CREATE TABLE meter_versions (
    meter_id INTEGER NOT NULL REFERENCES meters (id),
    version INTEGER NOT NULL,
    name TEXT NOT NULL CHECK (name <> ''),
    step_wh REAL,
    limit_percent REAL,
    span_wh REAL,
    correction REAL NOT NULL,
    load_part_percent REAL CHECK (load_part_percent >= 0),
    certificate_number TEXT NOT NULL,
    certificate_date TEXT NOT NULL,
    laboratory TEXT NOT NULL,
    valid_until TEXT NOT NULL,
    accuracy_class TEXT NOT NULL,
    standard TEXT NOT NULL,
    starting_current_a REAL,
    range_low_w REAL,
    range_high_w REAL,
    remark TEXT NOT NULL,
    written_ms INTEGER NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (meter_id, version)
) STRICT, WITHOUT ROWID;
INSERT INTO meter_versions SELECT id, 1, name, step_wh, limit_percent, span_wh, correction, load_part_percent, '', '', '', '', '', '', NULL, NULL, NULL,
    remark, created_ms, '' FROM meters;

CREATE TABLE meter_points (
    meter_id INTEGER NOT NULL,
    version INTEGER NOT NULL,
    place INTEGER NOT NULL CHECK (place >= 1),
    load_w REAL NOT NULL,
    correction REAL NOT NULL,
    expanded_u_percent REAL,
    coverage_k REAL,
    PRIMARY KEY (meter_id, version, place),
    FOREIGN KEY (meter_id, version) REFERENCES meter_versions (meter_id, version)
) STRICT, WITHOUT ROWID;

ALTER TABLE meters DROP COLUMN name;
ALTER TABLE meters DROP COLUMN step_wh;
ALTER TABLE meters DROP COLUMN limit_percent;
ALTER TABLE meters DROP COLUMN span_wh;
ALTER TABLE meters DROP COLUMN correction;
ALTER TABLE meters DROP COLUMN load_part_percent;
ALTER TABLE meters DROP COLUMN remark;

CREATE VIEW current_meters AS
SELECT meters.id, meters.uuid, meters.withdrawn, meters.created_ms, versions.*
FROM meters JOIN meter_versions AS versions ON versions.meter_id = meters.id
WHERE versions.version = (SELECT max(version) FROM meter_versions WHERE meter_id = meters.id);

CREATE TRIGGER meter_versions_are_not_updated BEFORE UPDATE ON meter_versions
BEGIN SELECT RAISE(ABORT, 'a version of a meter is never changed'); END;
CREATE TRIGGER meter_versions_are_not_deleted BEFORE DELETE ON meter_versions
BEGIN SELECT RAISE(ABORT, 'a version of a meter is never deleted'); END;
CREATE TRIGGER meter_versions_are_not_replaced BEFORE INSERT ON meter_versions
WHEN NEW.version <> (SELECT coalesce(max(version), 0) + 1 FROM meter_versions WHERE meter_id = NEW.meter_id)
BEGIN SELECT RAISE(ABORT, 'a version of a meter is added after its earlier ones'); END;
CREATE TRIGGER meter_points_are_not_updated BEFORE UPDATE ON meter_points
BEGIN SELECT RAISE(ABORT, 'a point of a meter is never changed'); END;
CREATE TRIGGER meter_points_are_not_deleted BEFORE DELETE ON meter_points
BEGIN SELECT RAISE(ABORT, 'a point of a meter is never deleted'); END;
CREATE TRIGGER meter_points_come_with_their_version BEFORE INSERT ON meter_points
WHEN NEW.version <> (SELECT max(version) FROM meter_versions WHERE meter_id = NEW.meter_id)
  OR NEW.place <> (SELECT coalesce(max(place), 0) + 1 FROM meter_points WHERE meter_id = NEW.meter_id AND version = NEW.version)
BEGIN SELECT RAISE(ABORT, 'a point of a meter is added with its version'); END;
)sql";

constexpr const char* second_meters = R"sql(
ALTER TABLE runs ADD COLUMN ambient_end_c REAL;
ALTER TABLE runs ADD COLUMN second_meter_id INTEGER REFERENCES meters (id);
CREATE INDEX runs_by_second_meter ON runs (second_meter_id);

ALTER TABLE reading_versions ADD COLUMN second_register_wh REAL;
DROP VIEW current_readings;
CREATE VIEW current_readings AS
SELECT readings.id, readings.uuid, readings.run_id, readings.sequence, versions.version, versions.time_ms,
       versions.gauge_percent, versions.register_wh, versions.meter_w, versions.display_w, versions.mark,
       versions.remark, versions.withdrawn, versions.second_register_wh
FROM readings JOIN reading_versions AS versions ON versions.reading_id = readings.id
WHERE versions.version = (SELECT max(version) FROM reading_versions WHERE reading_id = readings.id);
)sql";

} // namespace

void migration_0010(SQLite::Database& database) {
    database.exec(meters_as_versions);
    database.exec(second_meters);
    database.exec(R"sql(
ALTER TABLE units ADD COLUMN model TEXT NOT NULL DEFAULT '';

CREATE TABLE method_settings (
    key TEXT PRIMARY KEY CHECK (key <> ''),
    value REAL NOT NULL
) STRICT, WITHOUT ROWID;
)sql");
}

} // namespace ullage::store
