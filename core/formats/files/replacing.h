// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace ullage {

/// What a new file may take the place of. A file that this program wrote and that nobody changed since (formats/files/written_files.h) may be
/// replaced with any consent, a logbook in use, a write-protected file and a file that this process holds with none.
struct Replacing {
    enum class Consent {
        own,      ///< nothing else
        ordinary, ///< somebody was asked about this very file: any but logbooks and inputs
        any       ///< --force: inputs and logbooks that nobody uses as well
    };
    Consent consent = Consent::own;
    std::vector<std::string> inputs; ///< what this call reads: files, and folders of run sheets
};

/// Where a file goes that is to be written under the name `path`.
struct OutputTarget {
    std::filesystem::path path; ///< what a link leads to, itself no link
    bool exists = false;
};

/// The target of `path` where it may be written. Reads of an existing file what tells a logbook and a file of our own, and changes nothing.
/// Errors: refused (a folder, no regular file, a link that leads nowhere, write-protected, or not covered by `replacing`), disk_full, io.
[[nodiscard]] Result<OutputTarget> output_target(const std::string& path, const Replacing& replacing = {});

/// While it lives no writer of this process replaces the file, nor even opens it, whatever its name: closing any descriptor of a file ends the
/// process's POSIX locks on it.
class HeldFile {
public:
    HeldFile() = default;
    /// Holds the file that is `path` now; none where there is no such file.
    explicit HeldFile(const std::filesystem::path& path);
    HeldFile(HeldFile&& other) noexcept : identity_(std::exchange(other.identity_, std::nullopt)) {}
    HeldFile& operator=(HeldFile&& other) noexcept {
        std::swap(identity_, other.identity_);
        return *this;
    }
    ~HeldFile();

private:
    std::optional<std::pair<std::uint64_t, std::uint64_t>> identity_; ///< device and inode
};

} // namespace ullage
