// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlite_version.h"

#include <SQLiteCpp/Database.h>

namespace ullage {

SqliteVersion sqlite_version() { return {SQLite::VERSION, SQLite::getLibVersion()}; }

} // namespace ullage
