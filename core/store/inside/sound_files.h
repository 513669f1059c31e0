// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "store/inside/file_state.h"

#include <cstdint>

namespace ullage::store {

/// Logbooks that passed the full check, so that it need not be repeated each time a file is opened that nobody has touched since. Kept as
/// a list of at most 200 files in the person's folder for states (XDG Base Directory Specification 0.8: $XDG_STATE_HOME, else
/// $HOME/.local/state); where that cannot be written nothing is remembered. A file counts as touched when its size, a time of its state
/// (which no program can set back) or the change counter in its header (SQLite, "Database File Format", 1.3.8) differs; and after 30 days,
/// since disks forget.

/// Whether this very state of the file was found sound.
[[nodiscard]] bool known_sound(const FileState& state, std::uint32_t change_counter);
/// Remembers it. A file changed within the last 20 ms is not remembered: a further change could bear the same time.
void remember_sound(const FileState& state, std::uint32_t change_counter);

} // namespace ullage::store
