// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "base/instant.h"
#include "model/meter.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// The row id of a meter, withdrawn or not.
[[nodiscard]] std::optional<std::int64_t> meter_id(SQLite::Database& database, const MeterId& uuid);
/// Adds a meter with a uuid of its own, its data as version 1; returns its row id. Call it within a transaction.
std::int64_t insert_meter(SQLite::Database& database, const Meter& meter, UtcMs created_ms);
/// Adds what is stated of a meter as its next version. Call it within a transaction.
void update_meter(SQLite::Database& database, std::int64_t id, const Meter& meter, UtcMs written_ms, const std::string& reason);
void withdraw_meter(SQLite::Database& database, std::int64_t id, bool withdrawn);
/// How many runs name the meter as their first or second, withdrawn ones included since they can be restored.
[[nodiscard]] std::int64_t runs_naming_meter(SQLite::Database& database, std::int64_t id);
/// Those not withdrawn, by name (upper and lower case alike) and time of creation.
[[nodiscard]] std::vector<Meter> listed_meters(SQLite::Database& database);
/// Every meter by row id.
[[nodiscard]] std::map<std::int64_t, Meter> all_meters(SQLite::Database& database);
/// The row ids of all meters, also of one that has no version.
[[nodiscard]] std::vector<std::int64_t> meter_ids(SQLite::Database& database);
/// What was stated of a meter, from the first version on.
[[nodiscard]] std::vector<MeterVersion> meter_versions(SQLite::Database& database, std::int64_t id);

} // namespace ullage::store
