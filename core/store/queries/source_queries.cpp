// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/source_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

std::map<MeterId, std::string> meter_sources(SQLite::Database& database) {
    SQLite::Statement query(database, "SELECT meters.uuid, source FROM meter_sources JOIN meters ON meters.id = meter_id");
    std::map<MeterId, std::string> sources;
    while (query.executeStep()) {
        Row row(query);
        MeterId uuid = row.id<MeterId>();
        sources[std::move(uuid)] = row.text();
    }
    return sources;
}

void write_meter_source(SQLite::Database& database, std::int64_t meter_id, const std::string& source) {
    if (source.empty()) {
        SQLite::Statement clear(database, "DELETE FROM meter_sources WHERE meter_id = ?1");
        Binder(clear).integer(meter_id);
        clear.exec();
        return;
    }
    SQLite::Statement write(database,
                            "INSERT INTO meter_sources (meter_id, source) VALUES (?1, ?2) ON CONFLICT (meter_id) DO UPDATE SET source = ?2");
    Binder(write).integer(meter_id).text(source);
    write.exec();
}

} // namespace ullage::store
