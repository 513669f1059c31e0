// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/database.h"

#include "base/ids.h"
#include "store/migrations.h"
#include "store/snapshot.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include <utility>

namespace ullage::store {

namespace {

namespace fs = std::filesystem;

// Long enough for another instance to finish closing, short enough for a person.
constexpr int busy_ms = 700;

/// Removes an unfinished copy with its journal unless it was kept.
class Unfinished {
public:
    explicit Unfinished(fs::path path) : path_(std::move(path)) {}
    ~Unfinished() {
        std::error_code ignored;
        fs::remove(path_, ignored);
        fs::remove(path_.string() + "-journal", ignored);
    }
    Unfinished(const Unfinished&) = delete;
    Unfinished& operator=(const Unfinished&) = delete;
    [[nodiscard]] const fs::path& path() const { return path_; }

private:
    fs::path path_;
};

// SQLite puts its side files beside the file that a link leads to.
fs::path real_path(const fs::path& path) {
    std::error_code code;
    const fs::path real = fs::weakly_canonical(path, code);
    return code ? fs::absolute(path) : real;
}

void set_common_pragmas(SQLite::Database& database) {
    database.exec("PRAGMA foreign_keys = ON");
    database.exec("PRAGMA trusted_schema = OFF");
}

} // namespace

Connection::Connection(FileClaim claim, std::unique_ptr<SQLite::Database> database)
    : claim_(std::move(claim)), database_(std::move(database)) {}

Connection::~Connection() {
    if (!database_) return;
    const std::lock_guard door(door_mutex());
    database_.reset();
    // Ends the claim while the door is held.
    const FileClaim ended = std::move(claim_);
}

Result<Connection> Connection::record(const fs::path& path) {
    const std::lock_guard door(door_mutex());
    const fs::path file = real_path(path);
    // All judgement comes before, without writing: a file that is refused has not been touched.
    if (auto sound = check_logbook(file); !sound) return sound.error();
    if (auto obstacle = recording_obstacle(file)) return *obstacle;
    auto claim = FileClaim::take(file);
    if (!claim) return claim.error();

    auto database = std::make_unique<SQLite::Database>(file.string(), SQLite::OPEN_READWRITE, busy_ms);
    set_common_pragmas(*database);
    // Before the first access, so that the lock is taken with it, and the log needs no shared memory beside
    // the file.
    database->exec("PRAGMA locking_mode = EXCLUSIVE");
    if (database->execAndGet("PRAGMA journal_mode = WAL").getString() != "wal")
        return Error{Failure::io, "the disk does not allow safe recording", path.string(),
                     "copy the logbook to a disk of this machine"};
    database->exec("PRAGMA synchronous = FULL");
    SQLite::Transaction(*database, SQLite::TransactionBehavior::EXCLUSIVE).commit();
    migrate(*database, newest_version());
    return Connection(std::move(claim).value(), std::move(database));
}

Result<Connection> Connection::look(const fs::path& path) {
    const std::lock_guard door(door_mutex());
    auto snapshot = checked_snapshot(real_path(path));
    if (!snapshot) return snapshot.error();
    auto database = std::move(snapshot).value();
    set_common_pragmas(*database);
    migrate(*database, newest_version());
    database->exec("PRAGMA query_only = ON");
    return Connection({}, std::move(database));
}

Connection Connection::in_memory() {
    auto database =
        std::make_unique<SQLite::Database>(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    set_common_pragmas(*database);
    migrate(*database, newest_version());
    return Connection({}, std::move(database));
}

Result<void> write_copy(SQLite::Database& database, const fs::path& target) {
    const fs::path absolute = fs::absolute(target).lexically_normal();
    std::error_code code;
    if (fs::exists(fs::symlink_status(absolute, code))) return target_exists_error(target);
    for (const char* ending : {"-wal", "-journal"})
        if (fs::exists(absolute.string() + ending, code))
            return Error{Failure::refused, "the remains of another logbook of this name lie in the folder",
                         absolute.string() + ending, "choose another name"};
    if (auto obstacle = making_obstacle(absolute.parent_path())) return *obstacle;

    const Unfinished part(absolute.string() + "." + new_uuid() + ".part");
    SQLite::Statement vacuum(database, "VACUUM INTO ?");
    vacuum.bind(1, part.path().string());
    vacuum.exec();
    return put_in_place(part.path(), absolute);
}

Error error_from(const SQLite::Exception& exception, const fs::path& path) {
    const std::string where = path.string();
    switch (exception.getErrorCode()) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return in_use_error(path);
    case SQLITE_FULL:
        return {Failure::disk_full, "the disk is full; nothing was recorded", where,
                "free some space, then try again"};
    case SQLITE_READONLY:
        return {Failure::read_only, "the logbook cannot be written", where,
                "check the permissions of the file and its folder"};
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return {Failure::damaged, std::string("the logbook is damaged (") + exception.what() + ")", where,
                "close it and restore it from a copy"};
    case SQLITE_CONSTRAINT:
        return {Failure::refused,
                std::string("the logbook refused this (") + exception.what() + "); nothing was recorded",
                where,
                {}};
    case SQLITE_CANTOPEN:
        return {Failure::io, "the file cannot be opened", where,
                "check the permissions of the file and its folder"};
    case SQLITE_NOMEM:
        return {Failure::io, "the memory is used up; nothing was recorded", where, "close other programs"};
    default:
        return {Failure::io,
                std::string("the disk reported a fault; nothing was recorded (") + exception.what() + ")",
                where, "check the disk and its cable, then try again"};
    }
}

} // namespace ullage::store
