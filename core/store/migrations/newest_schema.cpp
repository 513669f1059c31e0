// SPDX-License-Identifier: GPL-3.0-or-later
// What the migrations make. After a new one the test of this table (tests/core/store/migrations_test.cpp) prints the entries that differ, as they
// belong here.
#include "store/migrations/newest_schema.h"

namespace ullage::store {

namespace {

// clang-format off
constexpr SchemaEntry entries[] = {
{"index", "photos_by_run", "photos", R"sql(CREATE INDEX photos_by_run ON photos (run_id))sql"},
{"index", "pv_sheets_by_unit", "pv_sheets", R"sql(CREATE INDEX pv_sheets_by_unit ON pv_sheets (unit_id))sql"},
{"index", "runs_by_meter", "runs", R"sql(CREATE INDEX runs_by_meter ON runs (meter_id))sql"},
{"index", "runs_by_second_meter", "runs", R"sql(CREATE INDEX runs_by_second_meter ON runs (second_meter_id))sql"},
{"index", "runs_by_unit", "runs", R"sql(CREATE INDEX runs_by_unit ON runs (unit_id))sql"},
{"index", "sqlite_autoindex_load_lists_1", "load_lists", ""},
{"index", "sqlite_autoindex_meters_1", "meters", ""},
{"index", "sqlite_autoindex_photos_1", "photos", ""},
{"index", "sqlite_autoindex_pv_sheets_1", "pv_sheets", ""},
{"index", "sqlite_autoindex_readings_1", "readings", ""},
{"index", "sqlite_autoindex_readings_2", "readings", ""},
{"index", "sqlite_autoindex_runs_1", "runs", ""},
{"index", "sqlite_autoindex_traces_1", "traces", ""},
{"index", "sqlite_autoindex_units_1", "units", ""},
{"index", "trace_blocks_in_order", "trace_blocks", R"sql(CREATE UNIQUE INDEX trace_blocks_in_order ON trace_blocks (trace_id, first_ms))sql"},
{"index", "traces_by_run", "traces", R"sql(CREATE INDEX traces_by_run ON traces (run_id))sql"},
{"table", "appliances", "appliances", R"sql(CREATE TABLE appliances (
    list_id INTEGER NOT NULL REFERENCES load_lists (id),
    place INTEGER NOT NULL CHECK (place >= 1),
    name TEXT NOT NULL,
    power_w REAL,
    duty REAL NOT NULL,
    measured_wh REAL,
    measured_hours REAL,
    hours_per_day REAL NOT NULL,
    night_hours REAL NOT NULL,
    start_peak_w REAL,
    how_many INTEGER NOT NULL CHECK (how_many >= 1),
    always_connected INTEGER NOT NULL CHECK (always_connected IN (0, 1)),
    CHECK ((measured_wh IS NULL) = (measured_hours IS NULL)),
    PRIMARY KEY (list_id, place)
) STRICT, WITHOUT ROWID)sql"},
{"table", "column_sets", "column_sets", R"sql(CREATE TABLE column_sets (
    name TEXT PRIMARY KEY,
    keys TEXT NOT NULL CHECK (keys <> '')
) STRICT, WITHOUT ROWID)sql"},
{"table", "load_lists", "load_lists", R"sql(CREATE TABLE load_lists (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    remark TEXT NOT NULL,
    created_ms INTEGER NOT NULL,
    withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT)sql"},
{"table", "meter_points", "meter_points", R"sql(CREATE TABLE meter_points (
    meter_id INTEGER NOT NULL,
    version INTEGER NOT NULL,
    place INTEGER NOT NULL CHECK (place >= 1),
    load_w REAL NOT NULL,
    correction REAL NOT NULL,
    expanded_u_percent REAL,
    coverage_k REAL,
    PRIMARY KEY (meter_id, version, place),
    FOREIGN KEY (meter_id, version) REFERENCES meter_versions (meter_id, version)
) STRICT, WITHOUT ROWID)sql"},
{"table", "meter_sources", "meter_sources", R"sql(CREATE TABLE meter_sources (
    meter_id INTEGER PRIMARY KEY REFERENCES meters (id),
    source TEXT NOT NULL CHECK (source <> '')
) STRICT)sql"},
{"table", "meter_versions", "meter_versions", R"sql(CREATE TABLE meter_versions (
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
) STRICT, WITHOUT ROWID)sql"},
{"table", "meters", "meters", R"sql(CREATE TABLE meters (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
    created_ms INTEGER NOT NULL
) STRICT)sql"},
{"table", "method_settings", "method_settings", R"sql(CREATE TABLE method_settings (
    key TEXT PRIMARY KEY CHECK (key <> ''),
    value REAL NOT NULL
) STRICT, WITHOUT ROWID)sql"},
{"table", "photo_bytes", "photo_bytes", R"sql(CREATE TABLE photo_bytes (
    photo_id INTEGER PRIMARY KEY REFERENCES photos (id),
    bytes BLOB NOT NULL
) STRICT)sql"},
{"table", "photo_versions", "photo_versions", R"sql(CREATE TABLE photo_versions (
    photo_id INTEGER NOT NULL REFERENCES photos (id),
    version INTEGER NOT NULL,
    reading_id INTEGER REFERENCES readings (id),
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1)),
    written_ms INTEGER NOT NULL,
    PRIMARY KEY (photo_id, version)
) STRICT, WITHOUT ROWID)sql"},
{"table", "photos", "photos", R"sql(CREATE TABLE photos (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    run_id INTEGER NOT NULL REFERENCES runs (id),
    format INTEGER NOT NULL CHECK (format >= 1),
    file_name TEXT NOT NULL,
    size_bytes INTEGER NOT NULL CHECK (size_bytes > 0),
    taken_ms INTEGER,
    zone_assumed INTEGER NOT NULL CHECK (zone_assumed IN (0, 1)),
    added_ms INTEGER NOT NULL
) STRICT)sql"},
{"table", "publisher_details", "publisher_details", R"sql(CREATE TABLE publisher_details (
    key TEXT PRIMARY KEY CHECK (key <> ''),
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID)sql"},
{"table", "pv_sheets", "pv_sheets", R"sql(CREATE TABLE pv_sheets (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    unit_id INTEGER REFERENCES units (id),
    name TEXT NOT NULL CHECK (name <> ''),
    module TEXT NOT NULL,
    voc_v REAL,
    vmp_v REAL,
    isc_a REAL,
    imp_a REAL,
    voc_per_c REAL,
    voc_per_c_unit INTEGER CHECK (voc_per_c_unit >= 1),
    vmp_per_c REAL,
    vmp_per_c_unit INTEGER CHECK (vmp_per_c_unit >= 1),
    power_per_c REAL,
    power_per_c_unit INTEGER CHECK (power_per_c_unit >= 1),
    noct_c REAL,
    crystalline_silicon INTEGER NOT NULL CHECK (crystalline_silicon IN (0, 1)),
    series INTEGER NOT NULL CHECK (series >= 1),
    parallel INTEGER NOT NULL CHECK (parallel >= 1),
    coldest_c REAL,
    hottest_c REAL,
    hottest_cell_c REAL,
    irradiance_w_m2 REAL,
    remark TEXT NOT NULL,
    withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
    created_ms INTEGER NOT NULL
, voc_tolerance_percent REAL) STRICT)sql"},
{"table", "reading_versions", "reading_versions", R"sql(CREATE TABLE reading_versions (
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
    reason TEXT NOT NULL, second_register_wh REAL,
    PRIMARY KEY (reading_id, version)
) STRICT, WITHOUT ROWID)sql"},
{"table", "readings", "readings", R"sql(CREATE TABLE readings (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    run_id INTEGER NOT NULL REFERENCES runs (id),
    sequence INTEGER NOT NULL,
    UNIQUE (run_id, sequence)
) STRICT)sql"},
{"table", "run_drafts", "run_drafts", R"sql(CREATE TABLE run_drafts (
    run_id INTEGER PRIMARY KEY REFERENCES runs (id),
    draft TEXT NOT NULL,
    kept_ms INTEGER NOT NULL
) STRICT)sql"},
{"table", "run_extras", "run_extras", R"sql(CREATE TABLE run_extras (
    run_id INTEGER NOT NULL REFERENCES runs (id),
    position INTEGER NOT NULL,
    key TEXT NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (run_id, position)
) STRICT, WITHOUT ROWID)sql"},
{"table", "runs", "runs", R"sql(CREATE TABLE runs (
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
, charge_source INTEGER CHECK (charge_source >= 1), end_noticed_within_min REAL CHECK (end_noticed_within_min >= 0), ambient_end_c REAL, second_meter_id INTEGER REFERENCES meters (id)) STRICT)sql"},
{"table", "trace_blocks", "trace_blocks", R"sql(CREATE TABLE trace_blocks (
    id INTEGER PRIMARY KEY,
    trace_id INTEGER NOT NULL REFERENCES traces (id) DEFERRABLE INITIALLY DEFERRED,
    first_ms INTEGER NOT NULL,
    last_ms INTEGER NOT NULL CHECK (last_ms >= first_ms),
    samples INTEGER NOT NULL CHECK (samples > 0),
    content BLOB NOT NULL
) STRICT)sql"},
{"table", "trace_layouts", "trace_layouts", R"sql(CREATE TABLE trace_layouts (
    signature TEXT PRIMARY KEY,
    answers TEXT NOT NULL,
    kept_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID)sql"},
{"table", "traces", "traces", R"sql(CREATE TABLE traces (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    run_id INTEGER NOT NULL REFERENCES runs (id),
    meter_id INTEGER REFERENCES meters (id),
    file_name TEXT NOT NULL,
    fingerprint TEXT NOT NULL,
    size_bytes INTEGER NOT NULL CHECK (size_bytes >= 0),
    layout TEXT NOT NULL,
    offset_ms INTEGER NOT NULL,
    rows_left_out INTEGER NOT NULL CHECK (rows_left_out >= 0),
    samples INTEGER NOT NULL CHECK (samples > 0),
    first_ms INTEGER NOT NULL,
    last_ms INTEGER NOT NULL CHECK (last_ms >= first_ms),
    added_ms INTEGER NOT NULL,
    withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
, offset_u_s REAL CHECK (offset_u_s >= 0), signature TEXT, zone TEXT, start_ms INTEGER, started_anew INTEGER NOT NULL DEFAULT 0 CHECK (started_anew >= 0), holds INTEGER NOT NULL DEFAULT 1 CHECK (holds BETWEEN 1 AND 7)) STRICT)sql"},
{"table", "units", "units", R"sql(CREATE TABLE units (
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
, paid_price REAL, tags TEXT NOT NULL DEFAULT '', pv_start_v REAL, charge_time_h REAL, model TEXT NOT NULL DEFAULT '', pv_short_circuit_a REAL, serial_number TEXT NOT NULL DEFAULT '', chemistry TEXT NOT NULL DEFAULT '', purchased TEXT NOT NULL DEFAULT '', cycles_before REAL) STRICT)sql"},
{"trigger", "meter_points_are_not_deleted", "meter_points", R"sql(CREATE TRIGGER meter_points_are_not_deleted BEFORE DELETE ON meter_points
BEGIN SELECT RAISE(ABORT, 'a point of a meter is never deleted'); END)sql"},
{"trigger", "meter_points_are_not_updated", "meter_points", R"sql(CREATE TRIGGER meter_points_are_not_updated BEFORE UPDATE ON meter_points
BEGIN SELECT RAISE(ABORT, 'a point of a meter is never changed'); END)sql"},
{"trigger", "meter_points_come_with_their_version", "meter_points", R"sql(CREATE TRIGGER meter_points_come_with_their_version BEFORE INSERT ON meter_points
WHEN NEW.version <> (SELECT max(version) FROM meter_versions WHERE meter_id = NEW.meter_id)
  OR NEW.place <> (SELECT coalesce(max(place), 0) + 1 FROM meter_points WHERE meter_id = NEW.meter_id AND version = NEW.version)
BEGIN SELECT RAISE(ABORT, 'a point of a meter is added with its version'); END)sql"},
{"trigger", "meter_versions_are_not_deleted", "meter_versions", R"sql(CREATE TRIGGER meter_versions_are_not_deleted BEFORE DELETE ON meter_versions
BEGIN SELECT RAISE(ABORT, 'a version of a meter is never deleted'); END)sql"},
{"trigger", "meter_versions_are_not_replaced", "meter_versions", R"sql(CREATE TRIGGER meter_versions_are_not_replaced BEFORE INSERT ON meter_versions
WHEN NEW.version <> (SELECT coalesce(max(version), 0) + 1 FROM meter_versions WHERE meter_id = NEW.meter_id)
BEGIN SELECT RAISE(ABORT, 'a version of a meter is added after its earlier ones'); END)sql"},
{"trigger", "meter_versions_are_not_updated", "meter_versions", R"sql(CREATE TRIGGER meter_versions_are_not_updated BEFORE UPDATE ON meter_versions
BEGIN SELECT RAISE(ABORT, 'a version of a meter is never changed'); END)sql"},
{"trigger", "photo_bytes_are_not_deleted", "photo_bytes", R"sql(CREATE TRIGGER photo_bytes_are_not_deleted BEFORE DELETE ON photo_bytes
BEGIN SELECT RAISE(ABORT, 'a photo is never deleted'); END)sql"},
{"trigger", "photo_bytes_are_not_replaced", "photo_bytes", R"sql(CREATE TRIGGER photo_bytes_are_not_replaced BEFORE INSERT ON photo_bytes
WHEN EXISTS (SELECT 1 FROM photo_bytes WHERE photo_id = NEW.photo_id)
BEGIN SELECT RAISE(ABORT, 'a photo is never changed'); END)sql"},
{"trigger", "photo_bytes_are_not_updated", "photo_bytes", R"sql(CREATE TRIGGER photo_bytes_are_not_updated BEFORE UPDATE ON photo_bytes
BEGIN SELECT RAISE(ABORT, 'a photo is never changed'); END)sql"},
{"trigger", "photo_versions_are_not_deleted", "photo_versions", R"sql(CREATE TRIGGER photo_versions_are_not_deleted BEFORE DELETE ON photo_versions
BEGIN SELECT RAISE(ABORT, 'a version of a photo is never deleted'); END)sql"},
{"trigger", "photo_versions_are_not_replaced", "photo_versions", R"sql(CREATE TRIGGER photo_versions_are_not_replaced BEFORE INSERT ON photo_versions
WHEN NEW.version <> (SELECT coalesce(max(version), 0) + 1 FROM photo_versions WHERE photo_id = NEW.photo_id)
BEGIN SELECT RAISE(ABORT, 'a version of a photo is added after its earlier ones'); END)sql"},
{"trigger", "photo_versions_are_not_updated", "photo_versions", R"sql(CREATE TRIGGER photo_versions_are_not_updated BEFORE UPDATE ON photo_versions
BEGIN SELECT RAISE(ABORT, 'a version of a photo is never changed'); END)sql"},
{"trigger", "photos_are_not_deleted", "photos", R"sql(CREATE TRIGGER photos_are_not_deleted BEFORE DELETE ON photos
BEGIN SELECT RAISE(ABORT, 'a photo is never deleted'); END)sql"},
{"trigger", "photos_are_not_replaced", "photos", R"sql(CREATE TRIGGER photos_are_not_replaced BEFORE INSERT ON photos
WHEN EXISTS (SELECT 1 FROM photos WHERE id = NEW.id OR uuid = NEW.uuid)
BEGIN SELECT RAISE(ABORT, 'a photo is added beside the others'); END)sql"},
{"trigger", "photos_are_not_updated", "photos", R"sql(CREATE TRIGGER photos_are_not_updated BEFORE UPDATE ON photos
BEGIN SELECT RAISE(ABORT, 'a photo is never changed'); END)sql"},
{"trigger", "photos_stay_in_their_run", "photo_versions", R"sql(CREATE TRIGGER photos_stay_in_their_run BEFORE INSERT ON photo_versions
WHEN NEW.reading_id IS NOT NULL AND (SELECT run_id FROM readings WHERE id = NEW.reading_id)
                             IS NOT (SELECT run_id FROM photos WHERE id = NEW.photo_id)
BEGIN SELECT RAISE(ABORT, 'a photo belongs to a reading of its own run'); END)sql"},
{"trigger", "photos_stay_with_their_reading", "photo_versions", R"sql(CREATE TRIGGER photos_stay_with_their_reading BEFORE INSERT ON photo_versions
WHEN EXISTS (SELECT 1 FROM photo_versions WHERE photo_id = NEW.photo_id AND reading_id IS NOT NULL
                                            AND reading_id IS NOT NEW.reading_id)
BEGIN SELECT RAISE(ABORT, 'a photo stays with its reading'); END)sql"},
{"trigger", "reading_versions_are_not_deleted", "reading_versions", R"sql(CREATE TRIGGER reading_versions_are_not_deleted BEFORE DELETE ON reading_versions
BEGIN SELECT RAISE(ABORT, 'a version of a reading is never deleted'); END)sql"},
{"trigger", "reading_versions_are_not_replaced", "reading_versions", R"sql(CREATE TRIGGER reading_versions_are_not_replaced BEFORE INSERT ON reading_versions
WHEN NEW.version <> (SELECT coalesce(max(version), 0) + 1 FROM reading_versions WHERE reading_id = NEW.reading_id)
BEGIN SELECT RAISE(ABORT, 'a version of a reading is added after its earlier ones'); END)sql"},
{"trigger", "reading_versions_are_not_updated", "reading_versions", R"sql(CREATE TRIGGER reading_versions_are_not_updated BEFORE UPDATE ON reading_versions
BEGIN SELECT RAISE(ABORT, 'a version of a reading is never changed'); END)sql"},
{"trigger", "readings_are_not_deleted", "readings", R"sql(CREATE TRIGGER readings_are_not_deleted BEFORE DELETE ON readings
BEGIN SELECT RAISE(ABORT, 'a reading is never deleted'); END)sql"},
{"trigger", "readings_are_not_replaced", "readings", R"sql(CREATE TRIGGER readings_are_not_replaced BEFORE INSERT ON readings
WHEN EXISTS (SELECT 1 FROM readings WHERE id = NEW.id OR uuid = NEW.uuid)
  OR NEW.sequence <> (SELECT coalesce(max(sequence), 0) + 1 FROM readings WHERE run_id = NEW.run_id)
BEGIN SELECT RAISE(ABORT, 'a reading is added after those of its run'); END)sql"},
{"trigger", "readings_are_not_updated", "readings", R"sql(CREATE TRIGGER readings_are_not_updated BEFORE UPDATE ON readings
BEGIN SELECT RAISE(ABORT, 'a reading is never changed in place'); END)sql"},
{"trigger", "trace_blocks_are_not_deleted", "trace_blocks", R"sql(CREATE TRIGGER trace_blocks_are_not_deleted BEFORE DELETE ON trace_blocks
BEGIN SELECT RAISE(ABORT, 'a sample is never deleted'); END)sql"},
{"trigger", "trace_blocks_come_in_order", "trace_blocks", R"sql(CREATE TRIGGER trace_blocks_come_in_order BEFORE INSERT ON trace_blocks
WHEN NEW.first_ms <= (SELECT last_ms FROM trace_blocks WHERE trace_id = NEW.trace_id ORDER BY first_ms DESC LIMIT 1)
BEGIN SELECT RAISE(ABORT, 'a sample is never changed'); END)sql"},
{"trigger", "trace_blocks_only_grow", "trace_blocks", R"sql(CREATE TRIGGER trace_blocks_only_grow BEFORE UPDATE ON trace_blocks
WHEN NEW.id <> OLD.id OR NEW.trace_id <> OLD.trace_id OR NEW.first_ms <> OLD.first_ms OR NEW.samples <= OLD.samples OR NEW.last_ms <= OLD.last_ms
  OR EXISTS (SELECT 1 FROM trace_blocks WHERE trace_id = OLD.trace_id AND first_ms > OLD.first_ms)
BEGIN SELECT RAISE(ABORT, 'a sample is never changed'); END)sql"},
{"trigger", "traces_are_not_deleted", "traces", R"sql(CREATE TRIGGER traces_are_not_deleted BEFORE DELETE ON traces
BEGIN SELECT RAISE(ABORT, 'a trace is never deleted'); END)sql"},
{"trigger", "traces_only_grow", "traces", R"sql(CREATE TRIGGER traces_only_grow BEFORE UPDATE OF size_bytes, fingerprint, rows_left_out, samples, last_ms, started_anew ON traces
WHEN NEW.samples < OLD.samples OR NEW.last_ms < OLD.last_ms OR NEW.rows_left_out < OLD.rows_left_out OR NEW.started_anew < OLD.started_anew
  OR (NEW.started_anew = OLD.started_anew AND NEW.size_bytes < OLD.size_bytes)
  OR NEW.samples <> (SELECT sum(samples) FROM trace_blocks WHERE trace_id = OLD.id)
BEGIN SELECT RAISE(ABORT, 'a trace only grows'); END)sql"},
{"trigger", "traces_stay_what_they_are", "traces", R"sql(CREATE TRIGGER traces_stay_what_they_are BEFORE UPDATE OF id, uuid, run_id, meter_id, file_name, layout, offset_ms, offset_u_s, first_ms, added_ms,
    signature, zone, start_ms, holds ON traces
BEGIN SELECT RAISE(ABORT, 'a trace is never changed'); END)sql"},
{"view", "current_meters", "current_meters", R"sql(CREATE VIEW current_meters AS
SELECT meters.id, meters.uuid, meters.withdrawn, meters.created_ms, versions.*
FROM meters JOIN meter_versions AS versions ON versions.meter_id = meters.id
WHERE versions.version = (SELECT max(version) FROM meter_versions WHERE meter_id = meters.id))sql"},
{"view", "current_photos", "current_photos", R"sql(CREATE VIEW current_photos AS
SELECT photos.id, photos.uuid, photos.run_id, photos.format, photos.file_name, photos.size_bytes, photos.taken_ms,
       photos.zone_assumed, photos.added_ms, versions.version, versions.reading_id, versions.withdrawn
FROM photos JOIN photo_versions AS versions ON versions.photo_id = photos.id
WHERE versions.version = (SELECT max(version) FROM photo_versions WHERE photo_id = photos.id))sql"},
{"view", "current_readings", "current_readings", R"sql(CREATE VIEW current_readings AS
SELECT readings.id, readings.uuid, readings.run_id, readings.sequence, versions.version, versions.time_ms,
       versions.gauge_percent, versions.register_wh, versions.meter_w, versions.display_w, versions.mark,
       versions.remark, versions.withdrawn, versions.second_register_wh
FROM readings JOIN reading_versions AS versions ON versions.reading_id = readings.id
WHERE versions.version = (SELECT max(version) FROM reading_versions WHERE reading_id = readings.id))sql"},
};
// clang-format on

} // namespace

std::span<const SchemaEntry> newest_schema() { return entries; }

} // namespace ullage::store
