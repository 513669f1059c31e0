// SPDX-License-Identifier: GPL-3.0-or-later
#include "shipped/small_file_system.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <sched.h>
#include <sys/mount.h>
#include <unistd.h>

namespace ullage::test {

namespace {

constexpr std::size_t page_bytes = 4096;
constexpr const char* filler = "filler";

bool wrote(const char* path, const std::string& text) {
    std::ofstream file(path);
    file << text << std::flush;
    return static_cast<bool>(file);
}

/// Puts this process into a mount namespace of its own, once; why not, or nothing.
std::string own_mount_namespace() {
    static const std::string trouble = [] {
        const uid_t user = ::geteuid();
        const gid_t group = ::getegid();
        if (::unshare(CLONE_NEWNS) != 0) {
            if (::unshare(CLONE_NEWUSER | CLONE_NEWNS) != 0) return std::string("no mount namespace: ") + std::strerror(errno);
            wrote("/proc/self/setgroups", "deny"); // without it the group below is refused (user_namespaces(7))
            if (!wrote("/proc/self/uid_map", "0 " + std::to_string(user) + " 1") || !wrote("/proc/self/gid_map", "0 " + std::to_string(group) + " 1"))
                return std::string("no user of its own in a user namespace");
        }
        // What is mounted here is not to be seen outside.
        if (::mount(nullptr, "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0)
            return std::string("mounts cannot be kept private: ") + std::strerror(errno);
        return std::string();
    }();
    return trouble;
}

} // namespace

SmallFileSystem::SmallFileSystem(const std::filesystem::path& folder) : folder_(folder), trouble_(own_mount_namespace()) {
    std::filesystem::create_directories(folder_);
    if (!trouble_.empty()) return;
    if (::mount("tmpfs", folder_.c_str(), "tmpfs", 0, ("size=" + std::to_string(bytes)).c_str()) != 0)
        trouble_ = std::string("no tmpfs can be mounted: ") + std::strerror(errno);
}

SmallFileSystem::~SmallFileSystem() {
    if (trouble_.empty()) ::umount2(folder_.c_str(), MNT_DETACH);
}

void SmallFileSystem::leave(std::size_t free_bytes) {
    for (const auto& entry : std::filesystem::directory_iterator(folder_)) std::filesystem::remove_all(entry.path());
    const std::size_t pages = free_bytes / page_bytes;
    std::ofstream file(folder_ / filler, std::ios::binary);
    const std::string page(page_bytes, 'x');
    for (std::size_t i = pages; i < bytes / page_bytes; ++i) file << page;
    file.flush();
}

std::size_t SmallFileSystem::entries() const {
    const auto all = std::filesystem::directory_iterator(folder_);
    return static_cast<std::size_t>(std::ranges::count_if(all, [](const auto& entry) { return entry.path().filename() != filler; }));
}

} // namespace ullage::test
