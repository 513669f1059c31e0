// SPDX-License-Identifier: GPL-3.0-or-later
// What the columns of a trace hold: a meter's values, the unit's gauge, the unit's own output power (core/model/trace.h).
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0012(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE traces ADD COLUMN holds INTEGER NOT NULL DEFAULT 1 CHECK (holds BETWEEN 1 AND 7);

DROP TRIGGER traces_stay_what_they_are;
CREATE TRIGGER traces_stay_what_they_are BEFORE UPDATE OF id, uuid, run_id, meter_id, file_name, layout, offset_ms, offset_u_s, first_ms, added_ms,
    signature, zone, start_ms, holds ON traces
BEGIN SELECT RAISE(ABORT, 'a trace is never changed'); END;
)sql");
}

} // namespace ullage::store
