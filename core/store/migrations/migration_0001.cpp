// SPDX-License-Identifier: GPL-3.0-or-later
// Step 1: units with their claims, meters, runs, and readings that only grow.
#include "store/inside/file_header.h"
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

#include <string>

namespace ullage::store {

namespace {

constexpr const char* records = R"sql(
CREATE TABLE units (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    name TEXT NOT NULL CHECK (name <> ''),
    maker TEXT NOT NULL,
    rated_energy_wh REAL,
    rated_output_w REAL,
    peak_output_w REAL,
    pv_max_v REAL,
    pv_max_a REAL,
    pv_max_w REAL,
    price REAL,
    currency TEXT NOT NULL,
    mass_kg REAL,
    warranty_years REAL,
    gauge_step_percent REAL NOT NULL,
    remark TEXT NOT NULL,
    withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
    created_ms INTEGER NOT NULL
) STRICT;

CREATE TABLE meters (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    name TEXT NOT NULL CHECK (name <> ''),
    step_wh REAL,
    limit_percent REAL,
    span_wh REAL,
    correction REAL NOT NULL,
    remark TEXT NOT NULL,
    withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
    created_ms INTEGER NOT NULL
) STRICT;

CREATE TABLE runs (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    unit_id INTEGER NOT NULL REFERENCES units (id),
    meter_id INTEGER REFERENCES meters (id),
    kind INTEGER NOT NULL CHECK (kind >= 1),
    started_full INTEGER CHECK (started_full IN (0, 1)),
    ended INTEGER NOT NULL CHECK (ended >= 1),
    load TEXT NOT NULL,
    ambient_c REAL,
    time_zone TEXT NOT NULL,
    withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
    created_ms INTEGER NOT NULL
) STRICT;
CREATE INDEX runs_by_unit ON runs (unit_id);
CREATE INDEX runs_by_meter ON runs (meter_id);

CREATE TABLE run_extras (
    run_id INTEGER NOT NULL REFERENCES runs (id),
    position INTEGER NOT NULL,
    key TEXT NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (run_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE readings (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    run_id INTEGER NOT NULL REFERENCES runs (id),
    sequence INTEGER NOT NULL,
    UNIQUE (run_id, sequence)
) STRICT;

CREATE TABLE reading_versions (
    reading_id INTEGER NOT NULL REFERENCES readings (id),
    version INTEGER NOT NULL,
    time_ms INTEGER NOT NULL,
    gauge_percent REAL,
    register_wh REAL,
    meter_w REAL,
    display_w REAL,
    mark INTEGER CHECK (mark >= 1),
    remark TEXT NOT NULL,
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1)),
    written_ms INTEGER NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (reading_id, version)
) STRICT, WITHOUT ROWID;

CREATE VIEW current_readings AS
SELECT readings.id, readings.uuid, readings.run_id, readings.sequence, versions.version, versions.time_ms,
       versions.gauge_percent, versions.register_wh, versions.meter_w, versions.display_w, versions.mark,
       versions.remark, versions.withdrawn
FROM readings JOIN reading_versions AS versions ON versions.reading_id = readings.id
WHERE versions.version = (SELECT max(version) FROM reading_versions WHERE reading_id = readings.id);
)sql";

// Any program that opens the file is bound by these. The two on INSERT are there since INSERT OR REPLACE
// removes the old row without asking a DELETE trigger.
constexpr const char* only_growing = R"sql(
CREATE TRIGGER readings_are_not_updated BEFORE UPDATE ON readings
BEGIN SELECT RAISE(ABORT, 'a reading is never changed in place'); END;

CREATE TRIGGER readings_are_not_deleted BEFORE DELETE ON readings
BEGIN SELECT RAISE(ABORT, 'a reading is never deleted'); END;

CREATE TRIGGER readings_are_not_replaced BEFORE INSERT ON readings
WHEN EXISTS (SELECT 1 FROM readings WHERE id = NEW.id OR uuid = NEW.uuid)
  OR NEW.sequence <> (SELECT coalesce(max(sequence), 0) + 1 FROM readings WHERE run_id = NEW.run_id)
BEGIN SELECT RAISE(ABORT, 'a reading is added after those of its run'); END;

CREATE TRIGGER reading_versions_are_not_updated BEFORE UPDATE ON reading_versions
BEGIN SELECT RAISE(ABORT, 'a version of a reading is never changed'); END;

CREATE TRIGGER reading_versions_are_not_deleted BEFORE DELETE ON reading_versions
BEGIN SELECT RAISE(ABORT, 'a version of a reading is never deleted'); END;

CREATE TRIGGER reading_versions_are_not_replaced BEFORE INSERT ON reading_versions
WHEN NEW.version <> (SELECT coalesce(max(version), 0) + 1 FROM reading_versions WHERE reading_id = NEW.reading_id)
BEGIN SELECT RAISE(ABORT, 'a version of a reading is added after its earlier ones'); END;
)sql";

} // namespace

void migration_0001(SQLite::Database& database) {
    database.exec("PRAGMA application_id = " + std::to_string(application_id));
    database.exec(records);
    database.exec(only_growing);
}

} // namespace ullage::store
