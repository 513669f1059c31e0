// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/files/whole_file.h"

#include "base/work_folder.h"
#include "formats/files/inside/written_files.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace ullage {

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t most_bytes = 64u << 20;

Error system_error(int code, const std::string& path) {
    if (code == ENOSPC || code == EDQUOT)
        return {Failure::disk_full, say(phrase("files", "there is no room left on the disk")), path,
                say(phrase("files", "make room or choose another place"))};
    if (code == ENOENT)
        return {Failure::io, say(phrase("files", "the folder does not exist")), path,
                say(phrase("files", "make the folder or choose another place"))};
    if (code == EACCES || code == EPERM || code == EROFS)
        return {Failure::io, say(phrase("files", "writing is not permitted here")), path,
                say(phrase("files", "choose a place that you may write to"))};
    return {Failure::io, say(phrase("files", "cannot be written: %1"), std::strerror(code)), path, say(phrase("files", "choose another place"))};
}

/// A file descriptor that closes itself.
class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}
    ~Descriptor() {
        if (number_ >= 0) ::close(number_);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] int number() const { return number_; }
    [[nodiscard]] bool open() const { return number_ >= 0; }

private:
    int number_;
};

Result<void> flush_to_disk(const std::string& path, int flags, const std::string& shown) {
    const Descriptor file(::open(path.c_str(), flags | O_CLOEXEC));
    if (!file.open() || ::fsync(file.number()) != 0) return system_error(errno, shown);
    return {};
}

bool has_no_write_bit(const fs::path& path) {
    struct stat status {};
    return ::stat(path.c_str(), &status) == 0 && (status.st_mode & (S_IWUSR | S_IWGRP | S_IWOTH)) == 0;
}

/// Moves the finished file to its place. Where there was none, one that came in the meantime is not replaced.
Result<void> give_name(const std::string& temporary, const OutputTarget& target, const std::string& shown) {
    int moved = -1;
    if (!target.exists) {
        moved = ::renameat2(AT_FDCWD, temporary.c_str(), AT_FDCWD, target.path.c_str(), RENAME_NOREPLACE);
        if (moved != 0 && errno == EEXIST)
            return Error{Failure::refused, say(phrase("files", "a file of this name has just come into being")), shown,
                         say(phrase("files", "look at it, then try again"))};
    }
    // A file system without that promise says EINVAL.
    if (moved != 0 && (target.exists || errno == EINVAL)) moved = ::rename(temporary.c_str(), target.path.c_str());
    return moved == 0 ? Result<void>() : system_error(errno, shown);
}

} // namespace

Result<void> replace_file(const std::string& path, const Replacing& replacing,
                          const std::function<Result<void>(const std::string& temporary)>& make) {
    const Result<OutputTarget> output = output_target(path, replacing);
    if (!output) return output.error();
    const fs::path& target = output.value().path;
    const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
    // Asked ahead, so that no library gets to complain in words of its own; an administrator's account has access everywhere.
    if (::access(folder.c_str(), W_OK | X_OK) != 0) return system_error(errno, path);
    if (has_no_write_bit(folder)) return system_error(EACCES, path);
    sweep_work_folders_once(folder);
    const Result<WorkFolder> work = WorkFolder::make(folder);
    if (!work) {
        Error error = work.error();
        error.where = path;
        return error;
    }
    const std::string temporary = (work.value() / "file").string();

    if (Result<void> made = make(temporary); !made) {
        Error error = made.error();
        if (error.where.empty() || error.where == temporary) error.where = path;
        return error;
    }
    if (output.value().exists) {
        struct stat old {};
        // A file keeps its permissions; where that fails the new file has the usual ones.
        if (::stat(target.c_str(), &old) == 0) (void)::chmod(temporary.c_str(), old.st_mode & 0777);
    }
    if (Result<void> flushed = flush_to_disk(temporary, O_RDONLY, path); !flushed) return flushed;
    remember_written(temporary);
    if (Result<void> named = give_name(temporary, output.value(), path); !named) return named;
    // The file is in place whatever this says: some file systems cannot flush a folder.
    (void)flush_to_disk(folder.string(), O_RDONLY | O_DIRECTORY, path);
    return {};
}

Result<void> write_whole_file(const std::string& path, const std::function<bool(const TextTaker& take)>& write, const Replacing& replacing) {
    return replace_file(path, replacing, [&](const std::string& temporary) -> Result<void> {
        const Descriptor file(::open(temporary.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
        if (!file.open()) return system_error(errno, path);
        int trouble = 0;
        const bool whole = write([&](std::string_view rest) {
            while (!rest.empty()) {
                const ssize_t written = ::write(file.number(), rest.data(), rest.size());
                if (written < 0 && errno != EINTR) {
                    trouble = errno;
                    return false;
                }
                if (written > 0) rest.remove_prefix(static_cast<std::size_t>(written));
            }
            return true;
        });
        return whole ? Result<void>() : system_error(trouble, path);
    });
}

Result<void> write_whole_file(const std::string& path, std::string_view bytes, const Replacing& replacing) {
    return write_whole_file(
        path, [bytes](const TextTaker& take) { return take(bytes); }, replacing);
}

Result<std::string> read_whole_file(const std::string& path) {
    std::error_code trouble;
    const fs::file_status status = fs::status(path, trouble);
    if (!fs::exists(status))
        return Error{Failure::not_found, say(phrase("files", "there is no such file")), path, say(phrase("files", "check the name"))};
    if (!fs::is_regular_file(status))
        return Error{Failure::refused,
                     fs::is_directory(status) ? say(phrase("files", "this is a folder")) : say(phrase("files", "this is no regular file")), path,
                     say(phrase("files", "name a file"))};
    if (fs::file_size(path, trouble) > most_bytes && !trouble)
        return Error{Failure::refused, say(phrase("files", "the file is larger than 64 MiB, which no run sheet is")), path,
                     say(phrase("files", "check the name"))};
    std::ifstream file(path, std::ios::binary);
    if (!file) return Error{Failure::io, say(phrase("files", "the file cannot be read")), path, say(phrase("files", "check its permissions"))};
    std::string bytes{std::istreambuf_iterator<char>(file), {}};
    if (file.bad()) return Error{Failure::io, say(phrase("files", "reading the file failed")), path, say(phrase("files", "check the disk"))};
    return bytes;
}

} // namespace ullage
