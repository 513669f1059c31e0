// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "base/instant.h"
#include "model/pv_sheet.h"
#include "store/whole_content.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// The row id of a PV sheet, withdrawn or not.
[[nodiscard]] std::optional<std::int64_t> pv_sheet_id(SQLite::Database& database, const PvSheetId& uuid);
/// Adds a sheet with a uuid of its own. `unit_id`: of the unit that it names, if any.
void insert_pv_sheet(SQLite::Database& database, const PvSheet& sheet, std::optional<std::int64_t> unit_id, UtcMs created_ms);
void update_pv_sheet(SQLite::Database& database, std::int64_t id, const PvSheet& sheet, std::optional<std::int64_t> unit_id);
void withdraw_pv_sheet(SQLite::Database& database, std::int64_t id, bool withdrawn);
/// Those not withdrawn, by name (upper and lower case alike) and time of creation. A withdrawn unit is still named.
[[nodiscard]] std::vector<PvSheet> listed_pv_sheets(SQLite::Database& database);
/// All of them, in the same order.
[[nodiscard]] std::vector<KeptRecord<PvSheet>> all_pv_sheets(SQLite::Database& database);

} // namespace ullage::store
