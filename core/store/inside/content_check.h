// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"

#include <filesystem>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// Binds SQLite to what a logbook needs before anything is read from a file that may come from anywhere (SQLite, "Defense Against The Dark
/// Arts", 1.1): no functions or virtual tables asked for by the file's own schema, no writing to the schema, every cell's size checked, no
/// extensions, no memory mapping, bounded texts and statements. Foreign keys are enforced.
void harden(SQLite::Database& database);

/// Whether the schema is that of its version, entry for entry and statement for statement: a table, trigger or view more would change what a
/// reading means. Errors: newer_version, damaged.
[[nodiscard]] Result<void> check_schema(SQLite::Database& database, const std::filesystem::path& path);

/// Reads the file's structure from end to end: integrity_check, foreign keys, known kinds. Of any version, after check_schema. Error: damaged.
[[nodiscard]] Result<void> check_structure(SQLite::Database& database, const std::filesystem::path& path);

/// Whether every value could have been entered: texts in UTF-8 and of bounded length, numbers finite and within their ranges. Of the newest
/// version. Error: damaged, naming the value.
[[nodiscard]] Result<void> check_values(SQLite::Database& database, const std::filesystem::path& path);

[[nodiscard]] Error damaged_error(const std::filesystem::path& path, const Message& detail);

} // namespace ullage::store
