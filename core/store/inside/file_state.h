// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>

namespace ullage::store {

/// Which file something is and when it was changed last, as the system tells.
struct FileState {
    std::uint64_t device = 0, inode = 0;
    std::int64_t size = 0;
    std::int64_t modified_ns = 0; ///< content, UTC since 1970
    std::int64_t changed_ns = 0;  ///< content, name or rights; no program can set it back
    std::uint64_t names = 0;      ///< links to it; 0 once it is removed

    [[nodiscard]] bool same_file(const FileState& other) const { return device == other.device && inode == other.inode; }
    bool operator==(const FileState&) const = default;
};

[[nodiscard]] std::optional<FileState> state_of(int descriptor);
/// Of the file that a name leads to, through links; absent where it leads to none.
[[nodiscard]] std::optional<FileState> state_of(const std::filesystem::path& path);

/// Why an open file is no longer the one under its name, or no longer as it was left (`left`): removed, renamed, replaced, cut short or
/// written to by another program. Failure `displaced`.
[[nodiscard]] std::optional<Error> displacement(int descriptor, const FileState& left, const std::filesystem::path& path);

} // namespace ullage::store
