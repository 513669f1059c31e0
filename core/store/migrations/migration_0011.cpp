// SPDX-License-Identifier: GPL-3.0-or-later
// The tolerance of a module's voltages; the short-circuit current that a PV input withstands; what is known of a specimen; who publishes what a
// logbook says; which columns of a table the tester has chosen, and sets of them by name.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0011(SQLite::Database& database) {
    database.exec("ALTER TABLE pv_sheets ADD COLUMN voc_tolerance_percent REAL");
    database.exec(R"sql(
ALTER TABLE units ADD COLUMN pv_short_circuit_a REAL;
ALTER TABLE units ADD COLUMN serial_number TEXT NOT NULL DEFAULT '';
ALTER TABLE units ADD COLUMN chemistry TEXT NOT NULL DEFAULT '';
ALTER TABLE units ADD COLUMN purchased TEXT NOT NULL DEFAULT '';
ALTER TABLE units ADD COLUMN cycles_before REAL;

CREATE TABLE publisher_details (
    key TEXT PRIMARY KEY CHECK (key <> ''),
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE column_sets (
    name TEXT PRIMARY KEY,
    keys TEXT NOT NULL CHECK (keys <> '')
) STRICT, WITHOUT ROWID;
)sql");
}

} // namespace ullage::store
