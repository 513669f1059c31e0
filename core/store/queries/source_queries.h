// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "model/ids.h"

#include <cstdint>
#include <map>
#include <string>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// How meters are read, by the meter's uuid.
[[nodiscard]] std::map<MeterId, std::string> meter_sources(SQLite::Database& database);
/// An empty text clears it.
void write_meter_source(SQLite::Database& database, std::int64_t meter_id, const std::string& source);

} // namespace ullage::store
