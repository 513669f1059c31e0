// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/row_copier.h"

#include <SQLiteCpp/Column.h>

#include <utility>

namespace ullage::store {

namespace {

/// Binds the value as it is; blobs stay where they are until the statement has run.
void bind_as_is(SQLite::Statement& insert, int place, const SQLite::Column& value) {
    if (value.isNull()) insert.bind(place);
    else if (value.isInteger()) insert.bind(place, value.getInt64());
    else if (value.isFloat()) insert.bind(place, value.getDouble());
    else if (value.isText()) insert.bind(place, value.getString());
    else insert.bindNoCopy(place, value.getBlob(), value.getBytes());
}

} // namespace

RowCopier::Table& RowCopier::table_of(const std::string& name) {
    const auto known = tables_.find(name);
    if (known != tables_.end()) return known->second;
    Table& table = tables_[name];
    SQLite::Statement columns(to_, "SELECT name FROM pragma_table_info(?1)");
    columns.bind(1, name);
    std::string names, places;
    while (columns.executeStep()) {
        const std::string column = columns.getColumn(0).getString();
        if (column == "id") {
            table.has_id = true;
            continue;
        }
        table.columns.push_back(column);
        names += (names.empty() ? "" : ", ") + column;
        places += (places.empty() ? "?" : ", ?") + std::to_string(table.columns.size());
    }
    table.insert = std::make_unique<SQLite::Statement>(to_, "INSERT INTO " + name + " (" + names + ") VALUES (" + places + ")");
    return table;
}

void RowCopier::put(Table& table, SQLite::Statement& row, const Owners& owners, const Copied& copied) {
    const int first = table.has_id ? 1 : 0;
    SQLite::Statement& insert = *table.insert;
    insert.reset();
    insert.clearBindings();
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const int place = static_cast<int>(i) + 1;
        if (const auto owner = owners.find(table.columns[i]); owner != owners.end()) {
            if (owner->second) insert.bind(place, *owner->second);
        } else if (table.columns[i] == "uuid" && uuid_) {
            insert.bind(place, *std::exchange(uuid_, std::nullopt));
        } else {
            bind_as_is(insert, place, row.getColumn(static_cast<int>(i) + first));
        }
    }
    insert.exec();
    if (copied && table.has_id) copied(row.getColumn(0).getInt64(), to_.getLastInsertRowid());
}

void RowCopier::copy(const std::string& name, const std::string& which, const std::vector<std::int64_t>& values, const std::string& order,
                     const Owners& owners, const Copied& copied) {
    Table& table = table_of(name);
    auto& select = table.selects[which + " by " + order];
    if (!select) {
        std::string names = table.has_id ? "id" : "";
        for (const std::string& column : table.columns) names += (names.empty() ? "" : ", ") + column;
        select = std::make_unique<SQLite::Statement>(from_, "SELECT " + names + " FROM " + name + " WHERE " + which + " ORDER BY " + order);
    }
    for (std::size_t i = 0; i < values.size(); ++i) select->bind(static_cast<int>(i) + 1, values[i]);
    while (select->executeStep()) put(table, *select, owners, copied);
    select->reset();
}

} // namespace ullage::store
