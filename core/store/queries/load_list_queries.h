// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "base/instant.h"
#include "model/load_list.h"
#include "store/whole_content.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// The row id of a load list, withdrawn or not.
[[nodiscard]] std::optional<std::int64_t> load_list_id(SQLite::Database& database, const LoadListId& uuid);
/// Whether another list than `uuid` that is not withdrawn has this name.
[[nodiscard]] bool load_list_name_taken(SQLite::Database& database, const std::string& name, const LoadListId& uuid);
/// Adds a list with a uuid of its own and its appliances.
void insert_load_list(SQLite::Database& database, const LoadList& list, UtcMs created_ms);
/// Puts the list's name, remark and appliances in the place of what was there.
void update_load_list(SQLite::Database& database, std::int64_t id, const LoadList& list);
void withdraw_load_list(SQLite::Database& database, std::int64_t id, bool withdrawn);
/// Those not withdrawn, by name (upper and lower case alike) and time of creation, with their appliances.
[[nodiscard]] std::vector<LoadList> listed_load_lists(SQLite::Database& database);
/// All of them, in the same order.
[[nodiscard]] std::vector<KeptRecord<LoadList>> all_load_lists(SQLite::Database& database);

} // namespace ullage::store
