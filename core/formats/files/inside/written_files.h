// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ullage {

// Which files this program wrote, for the account that runs it. No format is spoiled by a mark: size and fingerprint of what was written stand in
// a list of their own, $XDG_STATE_HOME/ullage/written-files (~/.local/state where that is not set), one line each, the latest 50,000. A file that
// was changed since is no longer found in it, and neither is any file where there is no list.

/// Puts the content of the file `path` on the list. Nothing happens where the list cannot be written: the file then counts as somebody else's.
void remember_written(const std::string& path);

/// Whether the file `path` has, byte for byte, a content that this program wrote.
[[nodiscard]] bool is_as_written(const std::string& path);

} // namespace ullage
