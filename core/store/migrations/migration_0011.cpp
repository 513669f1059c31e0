// SPDX-License-Identifier: GPL-3.0-or-later
// Which columns of a table the tester has chosen, and sets of them by name.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0011(SQLite::Database& database) {
    database.exec(R"sql(
CREATE TABLE column_sets (
    name TEXT PRIMARY KEY,
    keys TEXT NOT NULL CHECK (keys <> '')
) STRICT, WITHOUT ROWID;
)sql");
}

} // namespace ullage::store
