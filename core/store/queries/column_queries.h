// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include <map>
#include <string>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// Sets of columns by name.
[[nodiscard]] std::map<std::string, std::string> column_sets(SQLite::Database& database);
void write_column_set(SQLite::Database& database, const std::string& name, const std::string& keys);
void forget_column_set(SQLite::Database& database, const std::string& name);

} // namespace ullage::store
