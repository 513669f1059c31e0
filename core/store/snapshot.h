// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"

#include <filesystem>
#include <memory>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// A copy of a logbook file in memory, with what a crashed writer left beside it, after every check: header,
/// quick_check, foreign keys, and the tables of its version. The file and its folder are only read.
///
/// Errors: not_found, not_a_logbook, newer_version, damaged, in_use, io. Throws SQLite::Exception for what no
/// check foresees. Precondition: door_mutex() is held.
[[nodiscard]] Result<std::unique_ptr<SQLite::Database>> checked_snapshot(const std::filesystem::path& path);

/// The same checks without keeping a copy: a file that was closed properly is read where it lies, page by page, so that
/// photos in it cost no memory. Errors and precondition as above.
[[nodiscard]] Result<void> check_logbook(const std::filesystem::path& path);

} // namespace ullage::store
