// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/clock.h"
#include "base/result.h"
#include "store/inside/file_state.h"
#include "store/inside/steady_copy.h"
#include "store/opening_check.h"

#include <atomic>
#include <filesystem>
#include <memory>
#include <string>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// A logbook in memory, of the newest version and bound by harden().
struct CheckedCopy {
    std::unique_ptr<SQLite::Database> database;
    OpeningCheck check;
    bool recorded = false; ///< somebody recorded into the file
    LookedAt seen{};       ///< what was copied
};

/// A copy of a logbook file in memory, with what a crashed writer left beside it or a living one has not taken into it yet, migrated, after every
/// check: header and schema always; structure and values (content_check.h) unless the file was closed properly and found sound as it is. The file
/// and its folder are only read.
///
/// Errors: not_found, not_a_logbook, newer_version, damaged, io; in_use where who records never leaves it at rest; refused soon after `*cancelled`
/// is set. How long they took is told by `clock`. Throws SQLite::Exception where the memory is used up.
[[nodiscard]] Result<CheckedCopy> checked_snapshot(const std::filesystem::path& path, const Clock& clock,
                                                   const std::atomic<bool>* cancelled = nullptr);

/// A file that passed the same checks.
struct CheckedFile {
    FileState state;        ///< as it was when it was checked
    bool left_open = false; ///< a writer that crashed left something beside it, which was taken into account
    OpeningCheck check;
};

/// The same checks without keeping a copy: a file that was closed properly is read where it lies, page by page, so that
/// photos in it cost no memory. Errors as above.
[[nodiscard]] Result<CheckedFile> check_logbook(const std::filesystem::path& path, const Clock& clock, const std::atomic<bool>* cancelled = nullptr);

/// The file as an address that lets SQLite neither write nor lock nor look for side files (SQLite, "Uniform Resource
/// Identifiers", 3.3).
[[nodiscard]] std::string resting_address(const std::filesystem::path& path);

} // namespace ullage::store
