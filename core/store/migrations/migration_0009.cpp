// SPDX-License-Identifier: GPL-3.0-or-later
// Within how many minutes the end of a run was noticed, and the part of a meter's error limit that is each load's own.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0009(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE runs ADD COLUMN end_noticed_within_min REAL CHECK (end_noticed_within_min >= 0);
ALTER TABLE meters ADD COLUMN load_part_percent REAL CHECK (load_part_percent >= 0);
)sql");
}

} // namespace ullage::store
