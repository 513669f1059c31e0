// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/work_folder.h"

#include "base/ids.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <mutex>
#include <set>
#include <string_view>
#include <vector>

namespace ullage {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view work_prefix = ".ullage-", work_ending = ".part";
constexpr std::size_t uuid_length = 36;

bool names_work_folder(std::string_view name) {
    return name.size() == work_prefix.size() + uuid_length + work_ending.size() && name.starts_with(work_prefix) && name.ends_with(work_ending);
}

/// A descriptor of the folder with its lock; -1 where somebody holds it, it is no folder of this user, or the file system knows no locks.
int locked_folder(const fs::path& path) {
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_NOFOLLOW | O_CLOEXEC);
    if (descriptor < 0) return -1;
    struct stat status {};
    if (::fstat(descriptor, &status) == 0 && status.st_uid == ::geteuid() && ::flock(descriptor, LOCK_EX | LOCK_NB) == 0) return descriptor;
    ::close(descriptor);
    return -1;
}

bool still_there(const fs::path& path, int descriptor) {
    struct stat named {
    }, held{};
    return ::lstat(path.c_str(), &named) == 0 && ::fstat(descriptor, &held) == 0 && named.st_ino == held.st_ino && named.st_dev == held.st_dev;
}

} // namespace

Result<WorkFolder> WorkFolder::make(const fs::path& parent) {
    constexpr int most_tries = 8;
    for (int attempt = 1;; ++attempt) {
        const fs::path path = parent / (std::string(work_prefix) + new_uuid() + std::string(work_ending));
        if (::mkdir(path.c_str(), 0700) != 0) {
            const bool full = errno == ENOSPC || errno == EDQUOT;
            return Error{full ? Failure::disk_full : Failure::io,
                         full ? say(phrase("base", "there is no room left on the disk"))
                              : say(phrase("base", "nothing can be made in this folder: %1"), std::strerror(errno)),
                         parent.string(),
                         full ? say(phrase("base", "make room or choose another place"))
                              : say(phrase("base", "choose a folder that you may write to"))};
        }
        const int descriptor = locked_folder(path);
        // Somebody who sweeps may have found the folder before its lock was taken; without locks nobody sweeps.
        if (still_there(path, descriptor) || (descriptor < 0 && fs::exists(path)) || attempt == most_tries) return WorkFolder(path, descriptor);
        if (descriptor >= 0) ::close(descriptor);
    }
}

WorkFolder::~WorkFolder() {
    if (path_.empty()) return;
    std::error_code ignored;
    fs::remove_all(path_, ignored);
    if (descriptor_ >= 0) ::close(descriptor_);
}

std::size_t sweep_work_folders(const fs::path& parent) {
    std::vector<fs::path> found;
    std::error_code trouble;
    for (fs::directory_iterator entry(parent, trouble), end; !trouble && entry != end; entry.increment(trouble))
        if (names_work_folder(entry->path().filename().string())) found.push_back(entry->path());
    std::size_t gone = 0;
    for (const fs::path& path : found) {
        const int descriptor = locked_folder(path);
        if (descriptor < 0) continue;
        std::error_code failed;
        fs::remove_all(path, failed);
        if (!failed) ++gone;
        ::close(descriptor);
    }
    return gone;
}

void sweep_work_folders_once(const fs::path& parent) {
    static std::mutex guard;
    static std::set<fs::path> swept;
    std::error_code failed;
    const fs::path folder = fs::weakly_canonical(parent, failed);
    {
        const std::lock_guard lock(guard);
        if (!failed && !swept.insert(folder).second) return;
    }
    sweep_work_folders(parent);
}

} // namespace ullage
