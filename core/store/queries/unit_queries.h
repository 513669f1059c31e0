// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "base/instant.h"
#include "model/unit.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// The row id of a unit, withdrawn or not.
[[nodiscard]] std::optional<std::int64_t> unit_id(SQLite::Database& database, const UnitId& uuid);
/// Adds a unit with a uuid of its own; returns its row id.
std::int64_t insert_unit(SQLite::Database& database, const Unit& unit, UtcMs created_ms);
void update_unit(SQLite::Database& database, std::int64_t id, const Unit& unit);
void withdraw_unit(SQLite::Database& database, std::int64_t id, bool withdrawn);
/// Those not withdrawn, by name (upper and lower case alike), maker and time of creation.
[[nodiscard]] std::vector<Unit> listed_units(SQLite::Database& database);
/// Every unit by row id.
[[nodiscard]] std::map<std::int64_t, Unit> all_units(SQLite::Database& database);
/// The unit of this row, if there is one; every unit where none is named.
[[nodiscard]] std::map<std::int64_t, Unit> units_of(SQLite::Database& database, std::optional<std::int64_t> id);

} // namespace ullage::store
