// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/ids.h"

#include <filesystem>
#include <string>
#include <system_error>

namespace ullage::test {

/// A new empty folder of its own, removed with all that is in it at the end of its scope.
class TempFolder {
public:
    TempFolder() : path_(std::filesystem::temp_directory_path() / ("ullage-test-" + new_uuid())) { std::filesystem::create_directories(path_); }
    ~TempFolder() {
        // A test may have made the folder unwritable.
        std::error_code ignored;
        std::filesystem::permissions(path_, std::filesystem::perms::owner_all, std::filesystem::perm_options::add, ignored);
        std::filesystem::remove_all(path_, ignored);
    }
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    /// The path of a file of that name in the folder; the file is not made.
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return path_ / name; }

private:
    std::filesystem::path path_;
};

} // namespace ullage::test
