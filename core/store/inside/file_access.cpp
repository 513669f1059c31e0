// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/file_access.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace ullage::store {

namespace {

namespace fs = std::filesystem;

// SQLite's shared range in a database file (os.h: PENDING_BYTE 0x40000000, SHARED_FIRST +2, SHARED_SIZE 510).
constexpr off_t shared_first = 0x40000000 + 2;
constexpr off_t shared_size = 510;

struct flock sqlite_range(short type) {
    struct flock lock {};
    lock.l_type = type;
    lock.l_whence = SEEK_SET;
    lock.l_start = shared_first;
    lock.l_len = shared_size;
    return lock;
}

bool no_write_bit(const fs::path& path) {
    struct stat status {};
    return ::stat(path.c_str(), &status) == 0 && (status.st_mode & (S_IWUSR | S_IWGRP | S_IWOTH)) == 0;
}

bool write_through(const fs::path& path, int flags) {
    const int descriptor = ::open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) return false;
    const bool done = ::fsync(descriptor) == 0;
    ::close(descriptor);
    return done;
}

std::string system_words(int number) { return std::strerror(number); }

Error unwritten_error(const fs::path& target) {
    return {Failure::io, say(phrase("store", "the file could not be written to the disk (%1)"), system_words(errno)), target.string(),
            say(phrase("store", "check the disk, or choose another folder"))};
}

Error unnamed_error(const fs::path& target) {
    return {Failure::io, say(phrase("store", "the file could not be given its name (%1)"), system_words(errno)), target.string(),
            say(phrase("store", "choose another name or folder"))};
}

/// Some file systems cannot write a folder through; the file's content is safe all the same.
void write_entry_through(const fs::path& target) {
    [[maybe_unused]] const bool entry_written = write_through(target.parent_path(), O_RDONLY | O_DIRECTORY);
}

} // namespace

Error in_use_error(const fs::path& path) {
    return {Failure::in_use, say(phrase("store", "the logbook is open elsewhere")), path.string(),
            say(phrase("store", "close it there first; only one window or command can record into a logbook at a time"))};
}

bool is_recorded(const fs::path& path) {
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) return false;
    struct flock lock = sqlite_range(F_RDLCK);
    const bool excluded = ::fcntl(descriptor, F_OFD_GETLK, &lock) == 0 && lock.l_type == F_WRLCK;
    ::close(descriptor);
    return excluded;
}

Result<SharedFile> SharedFile::open(const fs::path& path, WhileRecorded recorded) {
    std::error_code code;
    const fs::file_status status = fs::status(path, code);
    if (status.type() == fs::file_type::not_found)
        return Error{Failure::not_found, say(phrase("store", "there is no such file")), path.string(),
                     say(phrase("store", "check the name and the folder"))};
    if (code)
        return Error{Failure::io, say(phrase("store", "the file cannot be reached (%1)"), code.message()), path.string(),
                     say(phrase("store", "check the permissions of its folder"))};
    if (status.type() != fs::file_type::regular)
        return Error{Failure::not_a_logbook,
                     status.type() == fs::file_type::directory ? say(phrase("store", "this is a folder")) : say(phrase("store", "this is no file")),
                     path.string(), say(phrase("store", "choose a .ullage file"))};
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        return Error{Failure::io, say(phrase("store", "the file cannot be read (%1)"), system_words(errno)), path.string(),
                     say(phrase("store", "check its permissions"))};
    SharedFile file(descriptor);
    struct flock lock = sqlite_range(F_RDLCK);
    // Another errno tells that the medium knows no locks, and then nobody can have locked the file.
    file.recorded_ = ::fcntl(descriptor, F_OFD_SETLK, &lock) != 0 && (errno == EACCES || errno == EAGAIN);
    if (file.recorded_ && recorded == WhileRecorded::refused) return in_use_error(path);
    const auto state = state_of(descriptor);
    if (!state)
        return Error{Failure::io, say(phrase("store", "the file cannot be read (%1)"), system_words(errno)), path.string(),
                     say(phrase("store", "check its permissions"))};
    file.state_ = *state;
    return file;
}

SharedFile::~SharedFile() { close(); }

void SharedFile::close() {
    if (descriptor_ >= 0) ::close(std::exchange(descriptor_, -1));
}

bool SharedFile::read(unsigned char* target, std::size_t count) const {
    std::size_t done = 0;
    while (done < count) {
        const ssize_t got = ::pread(descriptor_, target + done, count - done, static_cast<off_t>(done));
        if (got < 0 && errno == EINTR) continue;
        if (got <= 0) return false;
        done += static_cast<std::size_t>(got);
    }
    return true;
}

std::optional<Error> recording_obstacle(const fs::path& path) {
    const fs::path folder = path.parent_path();
    if (no_write_bit(path) || ::access(path.c_str(), W_OK) != 0)
        return Error{Failure::read_only, say(phrase("store", "the file is read-only")), path.string(),
                     say(phrase("store", "make it writable, or save a copy elsewhere and record there; it can be looked at as it is"))};
    if (no_write_bit(folder) || ::access(folder.c_str(), W_OK) != 0)
        return Error{Failure::read_only, say(phrase("store", "the folder is read-only")), folder.string(),
                     say(phrase("store", "make it writable, or save a copy elsewhere and record there; the logbook can be looked "
                                         "at as it is"))};
    return std::nullopt;
}

std::optional<Error> making_obstacle(const fs::path& folder) {
    std::error_code code;
    if (!fs::is_directory(folder, code))
        return Error{Failure::io, say(phrase("store", "there is no such folder")), folder.string(),
                     say(phrase("store", "make the folder first, or choose another"))};
    if (no_write_bit(folder) || ::access(folder.c_str(), W_OK | X_OK) != 0) {
        const bool medium = errno == EROFS;
        return Error{medium ? Failure::read_only : Failure::io, say(phrase("store", "no file can be made in this folder")), folder.string(),
                     say(phrase("store", "choose a folder that you may write to"))};
    }
    return std::nullopt;
}

Result<void> put_in_place(const fs::path& file, const fs::path& target) {
    if (!write_through(file, O_RDWR)) return unwritten_error(target);
    int moved = ::renameat2(AT_FDCWD, file.c_str(), AT_FDCWD, target.c_str(), RENAME_NOREPLACE);
    if (moved != 0 && errno == EINVAL) { // a file system without that promise: ask first
        std::error_code code;
        if (fs::exists(target, code)) return target_exists_error(target);
        moved = ::rename(file.c_str(), target.c_str());
    }
    if (moved != 0 && errno == EEXIST) return target_exists_error(target);
    if (moved != 0) return unnamed_error(target);
    write_entry_through(target);
    return {};
}

Result<void> replace_in_place(const fs::path& file, const fs::path& target) {
    if (!write_through(file, O_RDWR)) return unwritten_error(target);
    if (::rename(file.c_str(), target.c_str()) != 0) return unnamed_error(target);
    write_entry_through(target);
    return {};
}

Error target_exists_error(const fs::path& target) {
    return {Failure::refused, say(phrase("store", "a file of this name exists already")), target.string(),
            say(phrase("store", "choose another name"))};
}

} // namespace ullage::store
