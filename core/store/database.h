// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"
#include "store/file_access.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>

#include <filesystem>
#include <memory>
#include <string>

namespace ullage::store {

/// An open database of the newest version, with its hold on the file.
///
/// A recording connection keeps SQLite's exclusive lock from opening to closing. POSIX ends it when the same
/// process opens and closes the file by other means, so nothing else in the program may do that meanwhile.
class Connection {
public:
    /// For recording, checked first without writing, and migrated. Errors: those of checked_snapshot, read_only,
    /// in_use.
    static Result<Connection> record(const std::filesystem::path& path);
    /// A copy in memory, checked and migrated. Errors: those of checked_snapshot.
    static Result<Connection> look(const std::filesystem::path& path);
    /// An empty logbook in memory.
    static Connection in_memory();

    Connection(Connection&&) noexcept = default;
    Connection& operator=(Connection&&) = delete;
    ~Connection();

    [[nodiscard]] SQLite::Database& database() const { return *database_; }

private:
    Connection(FileClaim claim, std::unique_ptr<SQLite::Database> database);
    FileClaim claim_; // outlives the database, whose closing needs the file
    std::unique_ptr<SQLite::Database> database_;
};

/// Writes a complete copy that appears under its name only when it is on the disk.
/// Errors: refused (target, or what a crash left beside it, exists), io, read_only. Throws SQLite::Exception.
[[nodiscard]] Result<void> write_copy(SQLite::Database& database, const std::filesystem::path& target);

/// The failure in words for a person.
[[nodiscard]] Error error_from(const SQLite::Exception& exception, const std::filesystem::path& path);

/// What `action` returns, or the Error of the exception that SQLite or the file system threw.
template <class Action>
auto guarded(const std::filesystem::path& path, Action action) -> decltype(action()) {
    try {
        return action();
    } catch (const SQLite::Exception& exception) {
        return error_from(exception, path);
    } catch (const std::filesystem::filesystem_error& exception) {
        return Error{Failure::io, std::string("the file cannot be reached (") + exception.what() + ")",
                     path.string(), "check the folder"};
    }
}

} // namespace ullage::store
