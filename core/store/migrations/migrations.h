// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include <span>
#include <string_view>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// One step from user_version `version - 1` to `version`. Published steps are never edited: a later change of
/// the schema is a further step in a file of its own.
struct Migration {
    int version;
    std::string_view purpose;
    void (*apply)(SQLite::Database& database);
};

void migration_0001(SQLite::Database& database);
void migration_0002(SQLite::Database& database);
void migration_0003(SQLite::Database& database);
void migration_0004(SQLite::Database& database);
void migration_0005(SQLite::Database& database);
void migration_0006(SQLite::Database& database);
void migration_0007(SQLite::Database& database);
void migration_0008(SQLite::Database& database);
void migration_0009(SQLite::Database& database);
void migration_0010(SQLite::Database& database);
void migration_0011(SQLite::Database& database);
void migration_0012(SQLite::Database& database);
void migration_0013(SQLite::Database& database);

/// All steps in order; step i leads to version i + 1.
[[nodiscard]] std::span<const Migration> migrations();

/// The user_version that this program writes.
[[nodiscard]] int newest_version();

/// Brings a database from its user_version to `version`, each step in a transaction of its own.
/// Throws SQLite::Exception; the steps committed before stay.
void migrate(SQLite::Database& database, int version);

} // namespace ullage::store
