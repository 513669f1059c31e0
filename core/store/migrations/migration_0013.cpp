// SPDX-License-Identifier: GPL-3.0-or-later
// How a meter is read by the program: the text of a live source (core/live/live_source.h), without secrets. It is a setting, not test data, so that
// it is replaced and not kept as versions; what each trace was read by stands with the trace.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

void migration_0013(SQLite::Database& database) {
    database.exec(R"sql(
CREATE TABLE meter_sources (
    meter_id INTEGER PRIMARY KEY REFERENCES meters (id),
    source TEXT NOT NULL CHECK (source <> '')
) STRICT;
)sql");
}

} // namespace ullage::store
