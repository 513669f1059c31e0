// SPDX-License-Identifier: GPL-3.0-or-later
// A file from anywhere is opened with what SQLite offers against hostile ones (https://www.sqlite.org/security.html).
#include "samples.h"
#include "store/inside/database.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <vector>

namespace ullage {
namespace {

using namespace test;
using store::Connection;

TEST(Hardening, holds_however_a_logbook_is_opened) {
    const TempFolder folder;
    write_logbook(folder / "a.ullage");
    std::vector<Connection> opened;
    opened.push_back(take(Connection::look(folder / "a.ullage", SystemClock(), nullptr)));
    opened.push_back(take(Connection::record(folder / "a.ullage", SystemClock(), nullptr)));
    opened.push_back(Connection::in_memory());
    for (const Connection& connection : opened) {
        SQLite::Database& database = connection.database();
        const auto configured = [&database](int option) {
            int on = -1;
            sqlite3_db_config(database.getHandle(), option, -1, &on);
            return on;
        };
        EXPECT_EQ(configured(SQLITE_DBCONFIG_TRUSTED_SCHEMA), 0);
        EXPECT_EQ(configured(SQLITE_DBCONFIG_DEFENSIVE), 1);
        EXPECT_EQ(configured(SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION), 0);
        EXPECT_EQ(database.execAndGet("PRAGMA cell_size_check").getInt(), 1);
        EXPECT_THROW(database.execAndGet("SELECT zeroblob(40000000)"), SQLite::Exception) << "longer than any photo";
        EXPECT_THROW(database.exec("SELECT 1 -- " + std::string(200'000, 'x')), SQLite::Exception) << "longer than any statement of ours";
    }
}

} // namespace
} // namespace ullage
