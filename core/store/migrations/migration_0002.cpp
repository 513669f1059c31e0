// SPDX-License-Identifier: GPL-3.0-or-later
// Step 2: what a person has typed for a run and not yet recorded.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0002(SQLite::Database& database) {
    database.exec(R"sql(
CREATE TABLE run_drafts (
    run_id INTEGER PRIMARY KEY REFERENCES runs (id),
    draft TEXT NOT NULL,
    kept_ms INTEGER NOT NULL
) STRICT;
)sql");
}

} // namespace ullage::store
