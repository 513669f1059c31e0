// SPDX-License-Identifier: GPL-3.0-or-later
// Traces: log files of meters. Their samples stand in blocks of a few thousand, column by column as differences (trace_codec.h): opening a logbook
// reads it whole to check it, and a million samples of four columns take about 5 MB so, against 46 MB as a row each (measured on 200,000 invented
// ones).
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

namespace {

// The row of a trace is written after its blocks, when all is known of it: hence the deferred reference.
constexpr const char* traces = R"sql(
CREATE TABLE traces (
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
) STRICT;
CREATE INDEX traces_by_run ON traces (run_id);

CREATE TABLE trace_blocks (
    id INTEGER PRIMARY KEY,
    trace_id INTEGER NOT NULL REFERENCES traces (id) DEFERRABLE INITIALLY DEFERRED,
    first_ms INTEGER NOT NULL,
    last_ms INTEGER NOT NULL CHECK (last_ms >= first_ms),
    samples INTEGER NOT NULL CHECK (samples > 0),
    content BLOB NOT NULL
) STRICT;
CREATE UNIQUE INDEX trace_blocks_in_order ON trace_blocks (trace_id, first_ms);

CREATE TABLE trace_layouts (
    signature TEXT PRIMARY KEY,
    answers TEXT NOT NULL,
    kept_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
)sql";

// As for readings: what came in stays as it came in.
constexpr const char* traces_only_growing = R"sql(
CREATE TRIGGER traces_are_only_withdrawn BEFORE UPDATE OF id, uuid, run_id, meter_id, file_name, fingerprint, size_bytes, layout, offset_ms,
    rows_left_out, samples, first_ms, last_ms, added_ms ON traces
BEGIN SELECT RAISE(ABORT, 'a trace is never changed'); END;

CREATE TRIGGER traces_are_not_deleted BEFORE DELETE ON traces
BEGIN SELECT RAISE(ABORT, 'a trace is never deleted'); END;

CREATE TRIGGER trace_blocks_are_not_updated BEFORE UPDATE ON trace_blocks
BEGIN SELECT RAISE(ABORT, 'a sample is never changed'); END;

CREATE TRIGGER trace_blocks_are_not_deleted BEFORE DELETE ON trace_blocks
BEGIN SELECT RAISE(ABORT, 'a sample is never deleted'); END;

CREATE TRIGGER trace_blocks_come_before_their_trace BEFORE INSERT ON trace_blocks
WHEN EXISTS (SELECT 1 FROM traces WHERE id = NEW.trace_id)
BEGIN SELECT RAISE(ABORT, 'a trace is never changed'); END;
)sql";

} // namespace

void migration_0005(SQLite::Database& database) {
    database.exec(traces);
    database.exec(traces_only_growing);
}

} // namespace ullage::store
