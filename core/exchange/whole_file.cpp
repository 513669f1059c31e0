// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/whole_file.h"

#include "base/ids.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
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
        return {Failure::disk_full, "there is no room left on the disk", path, "make room or choose another place"};
    if (code == ENOENT)
        return {Failure::io, "the folder does not exist", path, "make the folder or choose another place"};
    if (code == EACCES || code == EPERM || code == EROFS)
        return {Failure::io, "writing is not permitted here", path, "choose a place that you may write to"};
    return {Failure::io, std::string("cannot be written: ") + std::strerror(code), path, "choose another place"};
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

/// Removes the temporary file unless it was renamed away.
struct Remover {
    std::string path;
    ~Remover() {
        std::error_code ignored;
        fs::remove(path, ignored);
    }
};

Result<void> flush_to_disk(const std::string& path, int flags, const std::string& shown) {
    const Descriptor file(::open(path.c_str(), flags | O_CLOEXEC));
    if (!file.open() || ::fsync(file.number()) != 0) return system_error(errno, shown);
    return {};
}

} // namespace

Result<void> replace_file(const std::string& path, const std::function<Result<void>(const std::string&)>& make) {
    if (path.empty())
        return Error{Failure::refused, "no file name is given", {}, "name a file"};
    std::error_code trouble;
    const fs::file_status status = fs::status(path, trouble);
    const bool exists = fs::exists(status);
    if (exists && !fs::is_regular_file(status))
        return Error{Failure::refused, fs::is_directory(status) ? "this is a folder" : "this is no regular file", path,
                     "choose another file name"};
    const fs::path target = exists ? fs::canonical(path, trouble) : fs::path(path);
    if (trouble && exists) return system_error(trouble.value(), path);
    const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
    // Asked ahead, so that no library gets to complain in words of its own.
    if (::access(folder.c_str(), W_OK | X_OK) != 0) return system_error(errno, path);
    const Remover temporary{(folder / (".ullage-" + new_uuid() + ".part")).string()};

    if (Result<void> made = make(temporary.path); !made) {
        Error error = made.error();
        if (error.where.empty() || error.where == temporary.path) error.where = path;
        return error;
    }
    if (exists) {
        struct stat old {};
        // A file keeps its permissions; where that fails the new file has the usual ones.
        if (::stat(target.c_str(), &old) == 0) (void)::chmod(temporary.path.c_str(), old.st_mode & 0777);
    }
    if (Result<void> flushed = flush_to_disk(temporary.path, O_RDONLY, path); !flushed) return flushed;
    if (::rename(temporary.path.c_str(), target.c_str()) != 0) return system_error(errno, path);
    // The file is in place whatever this says: some file systems cannot flush a folder.
    (void)flush_to_disk(folder.string(), O_RDONLY | O_DIRECTORY, path);
    return {};
}

Result<void> write_whole_file(const std::string& path, std::string_view bytes) {
    return replace_file(path, [&](const std::string& temporary) -> Result<void> {
        const Descriptor file(::open(temporary.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
        if (!file.open()) return system_error(errno, path);
        std::string_view rest = bytes;
        while (!rest.empty()) {
            const ssize_t written = ::write(file.number(), rest.data(), rest.size());
            if (written < 0 && errno != EINTR) return system_error(errno, path);
            if (written > 0) rest.remove_prefix(static_cast<std::size_t>(written));
        }
        return {};
    });
}

Result<std::string> read_whole_file(const std::string& path) {
    std::error_code trouble;
    const fs::file_status status = fs::status(path, trouble);
    if (!fs::exists(status))
        return Error{Failure::not_found, "there is no such file", path, "check the name"};
    if (!fs::is_regular_file(status))
        return Error{Failure::refused, fs::is_directory(status) ? "this is a folder" : "this is no regular file", path,
                     "name a file"};
    if (fs::file_size(path, trouble) > most_bytes && !trouble)
        return Error{Failure::refused, "the file is larger than 64 MiB, which no run sheet is", path, "check the name"};
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return Error{Failure::io, "the file cannot be read", path, "check its permissions"};
    std::string bytes{std::istreambuf_iterator<char>(file), {}};
    if (file.bad())
        return Error{Failure::io, "reading the file failed", path, "check the disk"};
    return bytes;
}

} // namespace ullage
