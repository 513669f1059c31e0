// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/publisher_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

#include <string>
#include <utility>

namespace ullage::store {

namespace {

/// Each detail is a row of its own; one that is not stated has none.
constexpr std::pair<const char*, std::string Publisher::*> publisher_keys[] = {
    {"name", &Publisher::name}, {"title", &Publisher::title}, {"introduction", &Publisher::introduction}, {"licence", &Publisher::licence}};

} // namespace

Publisher publisher(SQLite::Database& database) {
    Publisher publisher;
    SQLite::Statement query(database, "SELECT key, value FROM publisher_details");
    while (query.executeStep()) {
        Row row(query);
        const std::string key = row.text();
        const std::string value = row.text();
        for (const auto& [known, member] : publisher_keys)
            if (key == known) publisher.*member = value;
    }
    return publisher;
}

void write_publisher(SQLite::Database& database, const Publisher& publisher) {
    database.exec("DELETE FROM publisher_details");
    for (const auto& [key, member] : publisher_keys) {
        if ((publisher.*member).empty()) continue;
        SQLite::Statement write(database, "INSERT INTO publisher_details (key, value) VALUES (?1, ?2)");
        Binder(write).text(key).text(publisher.*member);
        write.exec();
    }
}

} // namespace ullage::store
