// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ullage {

/// "3.40.1": the SQLite that this build was made with, and the one that it runs on.
struct SqliteVersion {
    std::string built_with, running;
};
[[nodiscard]] SqliteVersion sqlite_version();

} // namespace ullage
