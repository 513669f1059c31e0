// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include <span>
#include <string_view>

namespace ullage::store {

/// A row of SQLite's own table of what a database holds (SQLite, "The Schema Table").
struct SchemaEntry {
    std::string_view type, name, table;
    std::string_view sql; ///< empty for an index that SQLite makes by itself

    bool operator==(const SchemaEntry&) const = default;
};

/// What all migrations together make, in order of type and name. Kept here so that a logbook can be held against it at each opening without making
/// an empty one first.
[[nodiscard]] std::span<const SchemaEntry> newest_schema();

} // namespace ullage::store
