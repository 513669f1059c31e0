// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/store_version.h"

#include "store/sqlite_version.h"
#include "style/words.h"

namespace ullage {

StoreVersion store_version() {
    const SqliteVersion version = sqlite_version();
    return {raw_text(version.built_with), raw_text(version.running)};
}

} // namespace ullage
