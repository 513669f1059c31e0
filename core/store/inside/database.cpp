// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/database.h"

#include "base/work_folder.h"
#include "store/inside/content_check.h"
#include "store/inside/descriptor_locks.h"
#include "store/inside/file_header.h"
#include "store/inside/snapshot.h"
#include "store/inside/sound_files.h"
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include <array>
#include <unistd.h>
#include <utility>

namespace ullage::store {

namespace {

namespace fs = std::filesystem;

// Long enough for another instance to finish closing, short enough for a person.
constexpr int busy_ms = 700;

// SQLite puts its side files beside the file that a link leads to.
fs::path real_path(const fs::path& path) {
    std::error_code code;
    const fs::path real = fs::weakly_canonical(path, code);
    return code ? fs::absolute(path) : real;
}

// A page of a logbook that others may cut short must be in memory to be saved elsewhere; so many a small one has.
constexpr int cache_kib = 32 * 1024;
constexpr std::int64_t kept_whole_bytes = 8 * 1024 * 1024;

void keep_in_memory(SQLite::Database& database, std::int64_t size) {
    database.exec("PRAGMA cache_size = -" + std::to_string(cache_kib));
    if (size <= kept_whole_bytes) database.execAndGet("PRAGMA quick_check(1)"); // reads every page
}

Error changed_meanwhile(const fs::path& path) {
    return {Failure::in_use, say(phrase("store", "the file changed while it was being opened")), path.string(),
            say(phrase("store", "wait until the other program has done with it, then open it again"))};
}

std::uint32_t header_counter(int descriptor) {
    std::array<unsigned char, 28> head{};
    if (::pread(descriptor, head.data(), head.size(), 0) != static_cast<ssize_t>(head.size())) return 0;
    return change_counter(head);
}

constexpr auto longest_wait_for_readers = std::chrono::minutes(1);

} // namespace

Connection::~Connection() {
    if (!database_ || descriptor_ < 0) return;
    try {
        if (displaced()) {
            // The files beside the name may be another's by now: they are left alone.
            sqlite3_db_config(database_->getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
            return;
        }
        constexpr int closing_patience_ms = 1000;
        if (settle(closing_patience_ms)) remember_sound(left_, header_counter(descriptor_));
    } catch (const SQLite::Exception&) {
        // What could not be taken into the file stays beside it, for the next opening.
        sqlite3_db_config(database_->getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    }
}

Result<Connection> Connection::record(const fs::path& path, const Clock& clock, const std::atomic<bool>* cancelled) {
    const fs::path file = real_path(path);
    // All judgement comes before, without writing: a file that is refused has not been touched.
    const auto checked = check_logbook(file, clock, cancelled);
    if (!checked) return checked.error();
    if (auto obstacle = recording_obstacle(file)) return *obstacle;
    // What a crash left of copies in the making.
    sweep_work_folders(file.parent_path());

    const DescriptorCatch opening(file);
    Connection connection(std::make_unique<SQLite::Database>(file.string(), SQLite::OPEN_READWRITE, busy_ms));
    SQLite::Database& database = connection.database();
    connection.path_ = fs::absolute(path);
    connection.check_ = checked.value().check;
    harden(database);
    // Before the first access, so that the lock is taken with it, and the log needs no shared memory beside
    // the file.
    database.exec("PRAGMA locking_mode = EXCLUSIVE");
    SQLite::Transaction(database, SQLite::TransactionBehavior::EXCLUSIVE).commit();
    const auto now = state_of(opening.descriptor());
    if (!now || !now->same_file(checked.value().state)) return changed_meanwhile(path);
    const bool untouched = now->size == checked.value().state.size && now->modified_ns == checked.value().state.modified_ns;
    if (!untouched && !checked.value().left_open) return changed_meanwhile(path);

    if (database.execAndGet("PRAGMA journal_mode = WAL").getString() != "wal")
        return Error{Failure::io, say(phrase("store", "the disk does not allow safe recording")), path.string(),
                     say(phrase("store", "copy the logbook to a disk of this machine"))};
    database.exec("PRAGMA synchronous = FULL");
    database.exec("PRAGMA wal_autocheckpoint = 0");
    migrate(database, newest_version());
    keep_in_memory(database, now->size);
    // From here on the end of the connection settles; before, it leaves a refused file alone.
    connection.descriptor_ = opening.descriptor();
    connection.note_commit();
    constexpr int opening_patience_ms = 50;
    connection.left_ = *state_of(connection.descriptor_);
    connection.settle(opening_patience_ms);
    return connection;
}

Result<Connection> Connection::look(const fs::path& path, const Clock& clock, const std::atomic<bool>* cancelled) {
    auto copy = checked_snapshot(real_path(path), clock, cancelled);
    if (!copy) return copy.error();
    Connection connection(std::move(copy.value().database));
    connection.path_ = fs::absolute(path);
    connection.check_ = copy.value().check;
    connection.copied_while_recorded_ = copy.value().recorded;
    connection.copied_ = copy.value().seen;
    connection.database().exec("PRAGMA query_only = ON");
    return connection;
}

Connection Connection::in_memory() {
    auto database = std::make_unique<SQLite::Database>(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    harden(*database);
    migrate(*database, newest_version());
    return Connection(std::move(database));
}

CopyAge Connection::copy_age() const {
    const fs::path file = real_path(path_);
    if (state_of(file) != copied_.file) return CopyAge::outdated;
    const auto size_of = [](const std::optional<FileState>& state) { return state ? state->size : 0; };
    const auto log = state_of(write_ahead_log(file));
    // An empty log that was made or removed says nothing.
    return size_of(log) == size_of(copied_.log) && (size_of(log) == 0 || log == copied_.log) ? CopyAge::present : CopyAge::waiting;
}

std::optional<Error> Connection::displaced() const {
    if (descriptor_ < 0) return std::nullopt;
    return displacement(descriptor_, left_, path_);
}

void Connection::note_commit() {
    if (!unsettled_since_) unsettled_since_ = std::chrono::steady_clock::now();
}

bool Connection::settle(int patience_ms) {
    if (descriptor_ < 0) unsettled_since_.reset();
    if (!unsettled_since_) return true;
    const ReaderPause pause(descriptor_, readers_stay_ ? 0 : patience_ms);
    if (pause.state() == ReaderPause::State::others_read) {
        readers_stay_ = readers_stay_ || unsettled_for() > longest_wait_for_readers;
        if (!readers_stay_) return false;
    } else {
        readers_stay_ = false;
    }
    const int code = sqlite3_wal_checkpoint_v2(database_->getHandle(), "main", SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr);
    // A checkpoint that stopped half way has written to the file all the same.
    if (const auto now = state_of(descriptor_)) left_ = *now;
    if (code != SQLITE_OK) throw SQLite::Exception(database_->getHandle(), code);
    unsettled_since_.reset();
    return true;
}

std::chrono::steady_clock::duration Connection::unsettled_for() const {
    return unsettled_since_ ? std::chrono::steady_clock::now() - *unsettled_since_ : std::chrono::steady_clock::duration::zero();
}

Result<void> write_copy(SQLite::Database& database, const fs::path& target, CopyTrust trust) {
    const fs::path absolute = fs::absolute(target).lexically_normal();
    std::error_code code;
    if (fs::exists(fs::symlink_status(absolute, code))) return target_exists_error(target);
    // An empty one holds nothing: it stays where an open logbook was moved away.
    for (const char* ending : {"-wal", "-journal"})
        if (fs::file_size(absolute.string() + ending, code) > 0 && !code)
            return Error{Failure::refused, say(phrase("store", "the remains of another logbook of this name lie in the folder")),
                         absolute.string() + ending, say(phrase("store", "choose another name"))};
    if (auto obstacle = making_obstacle(absolute.parent_path())) return *obstacle;

    const Result<WorkFolder> unfinished = WorkFolder::make(absolute.parent_path());
    if (!unfinished) return unfinished.error();
    const fs::path part = unfinished.value() / "logbook";
    SQLite::Statement vacuum(database, "VACUUM INTO ?");
    vacuum.bind(1, part.string());
    vacuum.exec();
    if (trust == CopyTrust::check_it)
        if (auto sound = check_logbook(part, SystemClock()); !sound)
            return Error{Failure::damaged, say(phrase("store", "not all of the open logbook can be read any more")), target.string(),
                         say(phrase("store", "restore the logbook from a copy of it; no copy was made"))};
    return put_in_place(part, absolute);
}

Error error_from(const SQLite::Exception& exception, const fs::path& path) {
    const std::string where = path.string();
    switch (exception.getErrorCode()) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return in_use_error(path);
    case SQLITE_FULL:
        return {Failure::disk_full, say(phrase("store", "the disk is full; nothing was recorded")), where,
                say(phrase("store", "free some space, then try again"))};
    case SQLITE_READONLY:
        return {Failure::read_only, say(phrase("store", "the logbook cannot be written")), where,
                say(phrase("store", "check the permissions of the file and its folder"))};
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return {Failure::damaged, say(phrase("store", "the logbook is damaged (%1)"), exception.what()), where,
                say(phrase("store", "close it and restore it from a copy"))};
    case SQLITE_CONSTRAINT:
        return {Failure::refused, say(phrase("store", "the logbook refused this (%1); nothing was recorded"), exception.what()), where, {}};
    case SQLITE_CANTOPEN:
        return {Failure::io, say(phrase("store", "the file cannot be opened")), where,
                say(phrase("store", "check the permissions of the file and its folder"))};
    case SQLITE_NOMEM:
        return {Failure::io, say(phrase("store", "the memory is used up; nothing was recorded")), where,
                say(phrase("store", "close other programs"))};
    default:
        return {Failure::io, say(phrase("store", "the disk reported a fault; nothing was recorded (%1)"), exception.what()), where,
                say(phrase("store", "check the disk and its cable, then try again"))};
    }
}

} // namespace ullage::store
