// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <utility>

namespace ullage {

/// A private folder for files in the making, removed with all that is in it at the end of its scope. While it lives the process holds a lock on
/// the folder (flock(2)), which ends with the process however that ends: so another process can tell what a crash left behind.
class WorkFolder {
public:
    /// Makes ".ullage-UUID.part" in `parent`, for the owner alone. Errors: disk_full; io with the system's words, `where` is `parent`.
    static Result<WorkFolder> make(const std::filesystem::path& parent);
    WorkFolder(WorkFolder&& other) noexcept : path_(std::move(other.path_)), descriptor_(std::exchange(other.descriptor_, -1)) {}
    WorkFolder& operator=(WorkFolder&&) = delete;
    ~WorkFolder();

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    /// The path of a file of that name in it; the file is not made.
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return path_ / name; }

private:
    WorkFolder(std::filesystem::path path, int descriptor) : path_(std::move(path)), descriptor_(descriptor) {}

    std::filesystem::path path_;
    int descriptor_;
};

/// Removes the work folders of this user in `parent` that no living process holds; what cannot be removed stays. Returns how many went.
std::size_t sweep_work_folders(const std::filesystem::path& parent);
/// The same, the first time that this process asks for this folder: whoever writes thousands of files into one goes through it once.
void sweep_work_folders_once(const std::filesystem::path& parent);

} // namespace ullage
