// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store; the only place that talks to the operating system about a logbook file.
#pragma once

#include "base/result.h"
#include "store/inside/file_state.h"

#include <filesystem>
#include <optional>
#include <utility>

namespace ullage::store {

[[nodiscard]] Error in_use_error(const std::filesystem::path& path);

/// What becomes of a file that somebody records into.
enum class WhileRecorded { refused, opened };

/// A file opened for reading, with a shared lock on the bytes that SQLite locks, so that nobody can begin to
/// record into it meanwhile. The lock is of this object alone: other locks of this process on the file exclude it and outlive it.
class SharedFile {
public:
    /// Errors: not_found, not_a_logbook (no regular file), in_use (somebody records and that is refused), io (not readable).
    static Result<SharedFile> open(const std::filesystem::path& path, WhileRecorded recorded = WhileRecorded::refused);
    SharedFile(SharedFile&& other) noexcept : descriptor_(std::exchange(other.descriptor_, -1)), state_(other.state_), recorded_(other.recorded_) {}
    SharedFile& operator=(SharedFile&&) = delete;
    ~SharedFile();

    [[nodiscard]] std::size_t size() const { return static_cast<std::size_t>(state_.size); }
    /// As it was when the lock was taken.
    [[nodiscard]] const FileState& state() const { return state_; }
    /// Somebody records into it: there is no lock, and what is read may change.
    [[nodiscard]] bool recorded() const { return recorded_; }
    [[nodiscard]] int descriptor() const { return descriptor_; }
    /// Closes it, its lock with it: only what is known of it stays.
    void close();
    /// Reads the first `count` bytes into `target`; false when they cannot be read.
    [[nodiscard]] bool read(unsigned char* target, std::size_t count) const;

private:
    explicit SharedFile(int descriptor) : descriptor_(descriptor) {}
    int descriptor_;
    FileState state_;
    bool recorded_ = false;
};

/// Whether somebody holds the file's lock for recording. False where that cannot be asked.
[[nodiscard]] bool is_recorded(const std::filesystem::path& path);

/// Why nothing can be recorded into the file `path`: its or its folder's permissions, or a read-only medium.
/// Looks at the permission bits too, since an administrator's account could write in spite of them.
[[nodiscard]] std::optional<Error> recording_obstacle(const std::filesystem::path& path);

/// Why no new file can be made in `folder` (io, or read_only on a read-only medium).
[[nodiscard]] std::optional<Error> making_obstacle(const std::filesystem::path& folder);

/// Waits until the file's content is on the disk, gives it the name `target` unless that exists, and waits
/// until the folder's entry is on the disk too. Errors: refused (target exists), io.
[[nodiscard]] Result<void> put_in_place(const std::filesystem::path& file, const std::filesystem::path& target);

/// The same in the place of what `target` is now. Error: io.
[[nodiscard]] Result<void> replace_in_place(const std::filesystem::path& file, const std::filesystem::path& target);

[[nodiscard]] Error target_exists_error(const std::filesystem::path& target);

} // namespace ullage::store
