// SPDX-License-Identifier: GPL-3.0-or-later
// Logs that another program is still writing: a trace may grow, at its end alone. What is needed to read on stands with it.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0008(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE traces ADD COLUMN signature TEXT;
ALTER TABLE traces ADD COLUMN zone TEXT;
ALTER TABLE traces ADD COLUMN start_ms INTEGER;
ALTER TABLE traces ADD COLUMN started_anew INTEGER NOT NULL DEFAULT 0 CHECK (started_anew >= 0);

DROP TRIGGER traces_are_only_withdrawn;
CREATE TRIGGER traces_stay_what_they_are BEFORE UPDATE OF id, uuid, run_id, meter_id, file_name, layout, offset_ms, offset_u_s, first_ms, added_ms,
    signature, zone, start_ms ON traces
BEGIN SELECT RAISE(ABORT, 'a trace is never changed'); END;
CREATE TRIGGER traces_only_grow BEFORE UPDATE OF size_bytes, fingerprint, rows_left_out, samples, last_ms, started_anew ON traces
WHEN NEW.samples < OLD.samples OR NEW.last_ms < OLD.last_ms OR NEW.rows_left_out < OLD.rows_left_out OR NEW.started_anew < OLD.started_anew
  OR (NEW.started_anew = OLD.started_anew AND NEW.size_bytes < OLD.size_bytes)
  OR NEW.samples <> (SELECT sum(samples) FROM trace_blocks WHERE trace_id = OLD.id)
BEGIN SELECT RAISE(ABORT, 'a trace only grows'); END;

DROP TRIGGER trace_blocks_come_before_their_trace;
CREATE TRIGGER trace_blocks_come_in_order BEFORE INSERT ON trace_blocks
WHEN NEW.first_ms <= (SELECT last_ms FROM trace_blocks WHERE trace_id = NEW.trace_id ORDER BY first_ms DESC LIMIT 1)
BEGIN SELECT RAISE(ABORT, 'a sample is never changed'); END;

DROP TRIGGER trace_blocks_are_not_updated;
CREATE TRIGGER trace_blocks_only_grow BEFORE UPDATE ON trace_blocks
WHEN NEW.id <> OLD.id OR NEW.trace_id <> OLD.trace_id OR NEW.first_ms <> OLD.first_ms OR NEW.samples <= OLD.samples OR NEW.last_ms <= OLD.last_ms
  OR EXISTS (SELECT 1 FROM trace_blocks WHERE trace_id = OLD.trace_id AND first_ms > OLD.first_ms)
BEGIN SELECT RAISE(ABORT, 'a sample is never changed'); END;
)sql");
}

} // namespace ullage::store
