// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>

namespace ullage {

/// Who records into a logbook.
struct Recorder {
    long process = 0;    ///< 0 where it cannot be told, as of another user's
    std::string command; ///< the first argument of its command line: "watch"; of a window the logbook, or nothing

    bool operator==(const Recorder&) const = default;
};

/// Whether somebody records into a logbook at this moment.
[[nodiscard]] bool is_recorded_into(const std::filesystem::path& path);

/// Who does; absent where nobody does. It looks through the processes that this user may look into (Linux proc(5), fdinfo), which takes milliseconds.
[[nodiscard]] std::optional<Recorder> recorder_of(const std::filesystem::path& path);

} // namespace ullage
