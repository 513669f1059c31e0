// SPDX-License-Identifier: GPL-3.0-or-later
// How well the clock of a log is known against the hand readings, where its offset was estimated.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0007(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE traces ADD COLUMN offset_u_s REAL CHECK (offset_u_s >= 0);
DROP TRIGGER traces_are_only_withdrawn;
CREATE TRIGGER traces_are_only_withdrawn BEFORE UPDATE OF id, uuid, run_id, meter_id, file_name, fingerprint, size_bytes, layout, offset_ms, offset_u_s,
    rows_left_out, samples, first_ms, last_ms, added_ms ON traces
BEGIN SELECT RAISE(ABORT, 'a trace is never changed'); END;
)sql");
}

} // namespace ullage::store
