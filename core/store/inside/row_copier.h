// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. Throws SQLite::Exception.
#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace ullage::store {

/// Copies rows from one open logbook of the newest version to another, column by column, so that what a later version adds goes along.
class RowCopier {
public:
    RowCopier(SQLite::Database& from, SQLite::Database& to) : from_(from), to_(to) {}

    /// What stands in a column instead of what it says there.
    using Owners = std::map<std::string, std::optional<std::int64_t>>;
    /// Called with the row id there and the one that the copy got; only of a table whose rows have one of their own.
    using Copied = std::function<void(std::int64_t from_id, std::int64_t to_id)>;

    /// Copies the rows of `table` that `which` chooses, such as "run_id = ?1", with these values in it, in this order and with these owners. A table
    /// with a column `id` gives its rows new ones.
    void copy(const std::string& table, const std::string& which, const std::vector<std::int64_t>& values, const std::string& order,
              const Owners& owners, const Copied& copied = {});
    /// The next row with a column `uuid` that is copied has this there.
    void rename_next(std::string uuid) { uuid_ = std::move(uuid); }

private:
    struct Table {
        std::vector<std::string> columns; ///< without `id`
        bool has_id = false;
        std::unique_ptr<SQLite::Statement> insert;
        std::map<std::string, std::unique_ptr<SQLite::Statement>> selects; ///< by `which` and order
    };
    Table& table_of(const std::string& name);
    void put(Table& table, SQLite::Statement& row, const Owners& owners, const Copied& copied);

    SQLite::Database& from_;
    SQLite::Database& to_;
    std::map<std::string, Table> tables_;
    std::optional<std::string> uuid_;
};

} // namespace ullage::store
