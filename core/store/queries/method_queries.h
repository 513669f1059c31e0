// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include <map>
#include <string>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// The options of the method that the logbook states, by key.
[[nodiscard]] std::map<std::string, double> method_settings(SQLite::Database& database);
void write_method_setting(SQLite::Database& database, const std::string& key, double value);
void forget_method_setting(SQLite::Database& database, const std::string& key);

} // namespace ullage::store
