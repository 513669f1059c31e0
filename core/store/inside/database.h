// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/clock.h"
#include "base/result.h"
#include "store/copy_age.h"
#include "store/inside/file_access.h"
#include "store/inside/steady_copy.h"
#include "store/opening_check.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>

#include <atomic>
#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

namespace ullage::store {

/// An open database of the newest version, with its hold on the file.
///
/// A recording connection keeps SQLite's exclusive lock from opening to closing, by open file description (descriptor_locks.h). What is committed
/// is durable in the write-ahead log beside the file at once; settle() takes it into the file, so that the file alone is the logbook.
class Connection {
public:
    /// For recording, checked first without writing, and migrated. Errors: those of check_logbook, read_only, in_use.
    static Result<Connection> record(const std::filesystem::path& path, const Clock& clock, const std::atomic<bool>* cancelled);
    /// A copy in memory, checked and migrated, also of a file that somebody records into. Errors: those of checked_snapshot.
    static Result<Connection> look(const std::filesystem::path& path, const Clock& clock, const std::atomic<bool>* cancelled);
    /// An empty logbook in memory.
    static Connection in_memory();

    Connection(Connection&&) noexcept = default;
    Connection& operator=(Connection&&) = delete;
    ~Connection();

    [[nodiscard]] SQLite::Database& database() const { return *database_; }
    [[nodiscard]] const OpeningCheck& opening_check() const { return check_; }

    /// Of a copy: somebody recorded into the file.
    [[nodiscard]] bool copied_while_recorded() const { return copied_while_recorded_; }
    /// Of a copy: how it stands to the file now.
    [[nodiscard]] CopyAge copy_age() const;

    /// Why the file is no longer the one that was opened, or as it was left; see displacement(). Nothing for a copy in memory.
    [[nodiscard]] std::optional<Error> displaced() const;

    /// To be called after each commit.
    void note_commit();
    /// Takes all that is committed into the file itself, in a moment in which nobody begins to read it. True when that is done, or nothing was to
    /// do; false while others have the file open, for whom it waits up to `patience_ms`, and whom it passes over when they stay for a minute.
    /// Throws SQLite::Exception (disk full, a faulty disk): then all of it stays safe beside the file, and the next call tries again.
    bool settle(int patience_ms);
    [[nodiscard]] bool settled() const { return !unsettled_since_; }
    /// Since when something is committed that is not in the file itself; zero when all is.
    [[nodiscard]] std::chrono::steady_clock::duration unsettled_for() const;

private:
    using Moment = std::chrono::steady_clock::time_point;
    explicit Connection(std::unique_ptr<SQLite::Database> database) : database_(std::move(database)) {}
    std::filesystem::path path_; ///< as it was named, so that a link that leads elsewhere is noticed
    std::unique_ptr<SQLite::Database> database_;
    OpeningCheck check_;
    int descriptor_ = -1; ///< SQLite's; -1 for a copy in memory
    FileState left_;      ///< the file as the last settling left it
    std::optional<Moment> unsettled_since_;
    bool copied_while_recorded_ = false;
    LookedAt copied_;           ///< of a copy in memory
    bool readers_stay_ = false; ///< others keep the file open for good: they are passed over
};

/// Whether a copy may be taken for sound as it is, or the file under the open database may have been changed by others.
enum class CopyTrust { as_written, check_it };

/// Writes a complete copy that appears under its name only when it is on the disk.
/// Errors: refused (target, or what a crash left beside it, exists), io, read_only, damaged (check_it). Throws SQLite::Exception.
[[nodiscard]] Result<void> write_copy(SQLite::Database& database, const std::filesystem::path& target, CopyTrust trust = CopyTrust::as_written);

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
        return Error{Failure::io, say(phrase("store", "the file cannot be reached (%1)"), exception.what()), path.string(),
                     say(phrase("store", "check the folder"))};
    }
}

} // namespace ullage::store
