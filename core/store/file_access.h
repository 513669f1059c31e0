// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store; the only place that talks to the operating system about a logbook file.
#pragma once

#include "base/result.h"

#include <cstdint>
#include <filesystem>
#include <mutex>
#include <optional>
#include <utility>

namespace ullage::store {

/// Held while a logbook is opened or closed. POSIX file locks belong to the process and end when it closes
/// any descriptor of the file, so two threads must not look at and take the same file at once.
[[nodiscard]] std::mutex& door_mutex();

/// This process's note that it records into a file, by the file's identity and not its name.
/// Precondition of all functions: door_mutex() is held, also when a claim ends.
class FileClaim {
public:
    FileClaim() = default;
    FileClaim(FileClaim&& other) noexcept : identity_(std::exchange(other.identity_, std::nullopt)) {}
    FileClaim& operator=(FileClaim&& other) noexcept {
        std::swap(identity_, other.identity_);
        return *this;
    }
    ~FileClaim();

    /// A claim on the existing file `path`. Error: in_use when this process has one already.
    static Result<FileClaim> take(const std::filesystem::path& path);
    /// True when this process records into the file.
    [[nodiscard]] static bool exists(const std::filesystem::path& path);

private:
    std::optional<std::pair<std::uint64_t, std::uint64_t>> identity_;
};

[[nodiscard]] Error in_use_error(const std::filesystem::path& path);

/// A file opened for reading, with a shared lock on the bytes that SQLite locks, so that nobody can begin to
/// record into it meanwhile. Precondition: this process has no claim on the file, whose locks would end with
/// this object.
class SharedFile {
public:
    /// Errors: not_found, not_a_logbook (no regular file), in_use (somebody records), io (not readable).
    static Result<SharedFile> open(const std::filesystem::path& path);
    SharedFile(SharedFile&& other) noexcept
        : descriptor_(std::exchange(other.descriptor_, -1)), size_(other.size_) {}
    SharedFile& operator=(SharedFile&&) = delete;
    ~SharedFile();

    [[nodiscard]] std::size_t size() const { return size_; }
    /// Reads the first `count` bytes into `target`; false when they cannot be read.
    [[nodiscard]] bool read(unsigned char* target, std::size_t count) const;

private:
    SharedFile(int descriptor, std::size_t size) : descriptor_(descriptor), size_(size) {}
    int descriptor_;
    std::size_t size_;
};

/// Why nothing can be recorded into the file `path`: its or its folder's permissions, or a read-only medium.
/// Looks at the permission bits too, since an administrator's account could write in spite of them.
[[nodiscard]] std::optional<Error> recording_obstacle(const std::filesystem::path& path);

/// Why no new file can be made in `folder` (io, or read_only on a read-only medium).
[[nodiscard]] std::optional<Error> making_obstacle(const std::filesystem::path& folder);

/// Waits until the file's content is on the disk, gives it the name `target` unless that exists, and waits
/// until the folder's entry is on the disk too. Errors: refused (target exists), io.
[[nodiscard]] Result<void> put_in_place(const std::filesystem::path& file,
                                        const std::filesystem::path& target);

[[nodiscard]] Error target_exists_error(const std::filesystem::path& target);

} // namespace ullage::store
