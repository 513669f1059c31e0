// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace ullage {

/// "3.40.1": the SQLite that this build was made with, and the one that logbooks are kept by.
struct StoreVersion {
    QString built_with, running;
};
[[nodiscard]] StoreVersion store_version();

} // namespace ullage
