// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include <filesystem>
#include <string>

namespace ullage::store {

/// Makes SQLite hold its locks by open file descriptions (F_OFD_SETLK, Linux fcntl(2)) instead of by process. A lock of the
/// process would end as soon as anything in it (a file dialog that looks into files, a library that reads a folder) closed any
/// descriptor of the logbook; these end only when SQLite closes the file. They exclude the older kind, of other programs, too.
/// Concerns all files that SQLite opens from then on; call it before the first. Thread-safe.
void hold_locks_by_descriptor();

/// The descriptor with which SQLite opens one file, caught while this object lives. SQLite does not tell it otherwise. One at a time in a
/// thread; only opens of the same thread are seen.
class DescriptorCatch {
public:
    explicit DescriptorCatch(const std::filesystem::path& path);
    ~DescriptorCatch();
    DescriptorCatch(const DescriptorCatch&) = delete;
    DescriptorCatch& operator=(const DescriptorCatch&) = delete;

    /// Of the last open for writing; -1 when there was none. It stays SQLite's: never close it.
    [[nodiscard]] int descriptor() const;

private:
    std::string path_;
};

/// A time in which no other program can begin to read a file, so that a copy of it never holds one half of a change: a write
/// lease (F_SETLEASE, Linux fcntl(2)), for which whoever opens the file waits until it ends. Hold it for milliseconds. Instances of this program are
/// kept off where there are no leases too, by a lock on a byte that SettlingPause shares.
class ReaderPause {
public:
    enum class State { held, others_read, not_offered };
    /// Waits up to `patience_ms` for programs that have the file open. `others_read`: they still have. `not_offered`: this file system, or
    /// another owner's file, has no such leases; the byte is locked all the same.
    ReaderPause(int descriptor, int patience_ms);
    ~ReaderPause();
    ReaderPause(const ReaderPause&) = delete;
    ReaderPause& operator=(const ReaderPause&) = delete;

    [[nodiscard]] State state() const { return state_; }

private:
    int descriptor_;
    State state_;
};

/// The other side of it: a time in which who records into a file takes nothing from the write-ahead log into it, so that both can be copied as they
/// stand at one moment. Hold it for milliseconds; a recorder that has waited for a minute passes over it.
class SettlingPause {
public:
    /// Waits up to `patience_ms` for a ReaderPause that somebody holds. The descriptor may be one for reading.
    SettlingPause(int descriptor, int patience_ms);
    ~SettlingPause();
    SettlingPause(const SettlingPause&) = delete;
    SettlingPause& operator=(const SettlingPause&) = delete;

    /// False: the other holds on. True also where the medium knows no locks.
    [[nodiscard]] bool held() const { return held_; }

private:
    int descriptor_;
    bool held_;
};

} // namespace ullage::store
