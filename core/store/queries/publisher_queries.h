// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "model/publisher.h"

namespace SQLite {
class Database;
}

namespace ullage::store {

[[nodiscard]] Publisher publisher(SQLite::Database& database);
/// In place of what was stated before.
void write_publisher(SQLite::Database& database, const Publisher& publisher);

} // namespace ullage::store
