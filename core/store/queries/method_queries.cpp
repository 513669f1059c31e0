// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/method_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

std::map<std::string, double> method_settings(SQLite::Database& database) {
    SQLite::Statement query(database, "SELECT key, value FROM method_settings");
    std::map<std::string, double> settings;
    while (query.executeStep()) {
        Row row(query);
        std::string key = row.text();
        settings[std::move(key)] = row.real();
    }
    return settings;
}

void write_method_setting(SQLite::Database& database, const std::string& key, double value) {
    SQLite::Statement write(database, "INSERT INTO method_settings (key, value) VALUES (?1, ?2) ON CONFLICT (key) DO UPDATE SET value = ?2");
    Binder(write).text(key).real(value);
    write.exec();
}

void forget_method_setting(SQLite::Database& database, const std::string& key) {
    SQLite::Statement clear(database, "DELETE FROM method_settings WHERE key = ?1");
    Binder(clear).text(key);
    clear.exec();
}

} // namespace ullage::store
