// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>

namespace ullage::test {

/// A file system in memory with little room, which this process and those that it starts see at `folder`, and no other.
class SmallFileSystem {
public:
    static constexpr std::size_t bytes = 512 * 1024;

    /// Mounts it in a mount namespace of this process (mount_namespaces(7)), one of its own user where it is run by no administrator; see trouble().
    explicit SmallFileSystem(const std::filesystem::path& folder);
    ~SmallFileSystem();
    SmallFileSystem(const SmallFileSystem&) = delete;
    SmallFileSystem& operator=(const SmallFileSystem&) = delete;

    /// Why there is none; empty where there is.
    [[nodiscard]] const std::string& trouble() const { return trouble_; }
    /// Empties it and fills it again until so many bytes are free, down to a whole page.
    void leave(std::size_t free_bytes);
    /// What lies in it, apart from what fills it, hidden files and folders included.
    [[nodiscard]] std::size_t entries() const;

private:
    std::filesystem::path folder_;
    std::string trouble_;
};

} // namespace ullage::test
