// SPDX-License-Identifier: GPL-3.0-or-later
// PV sheets; the start voltage of a unit's PV input and its claimed charge time; where the energy of a charge run comes from.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0006(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE units ADD COLUMN pv_start_v REAL;
ALTER TABLE units ADD COLUMN charge_time_h REAL;
ALTER TABLE runs ADD COLUMN charge_source INTEGER CHECK (charge_source >= 1);
CREATE TABLE pv_sheets (
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
) STRICT;
CREATE INDEX pv_sheets_by_unit ON pv_sheets (unit_id);
)sql");
}

} // namespace ullage::store
