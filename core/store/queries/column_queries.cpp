// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/column_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

std::map<std::string, std::string> column_sets(SQLite::Database& database) {
    SQLite::Statement query(database, "SELECT name, keys FROM column_sets");
    std::map<std::string, std::string> sets;
    while (query.executeStep()) {
        Row row(query);
        std::string name = row.text();
        sets[std::move(name)] = row.text();
    }
    return sets;
}

void write_column_set(SQLite::Database& database, const std::string& name, const std::string& keys) {
    SQLite::Statement write(database, "INSERT INTO column_sets (name, keys) VALUES (?1, ?2) ON CONFLICT (name) DO UPDATE SET keys = ?2");
    Binder(write).text(name).text(keys);
    write.exec();
}

void forget_column_set(SQLite::Database& database, const std::string& name) {
    SQLite::Statement clear(database, "DELETE FROM column_sets WHERE name = ?1");
    Binder(clear).text(name);
    clear.exec();
}

} // namespace ullage::store
