// SPDX-License-Identifier: GPL-3.0-or-later
// Step 4: what was paid for a unit, its tags, and named load lists with their appliances.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0004(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE units ADD COLUMN paid_price REAL;
ALTER TABLE units ADD COLUMN tags TEXT NOT NULL DEFAULT '';

CREATE TABLE load_lists (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    remark TEXT NOT NULL,
    created_ms INTEGER NOT NULL,
    withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;

CREATE TABLE appliances (
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
) STRICT, WITHOUT ROWID;
)sql");
}

} // namespace ullage::store
