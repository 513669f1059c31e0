// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store: parameters in, columns out, both in the order of the SQL.
#pragma once

#include "model/ids.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <optional>
#include <string>

namespace ullage::store {

/// Binds the parameters ?1, ?2, … in turn; an absent value becomes NULL.
class Binder {
public:
    explicit Binder(SQLite::Statement& statement) : statement_(statement) {}

    Binder& text(const std::string& value) { return bind(value); }
    template <typename Tag>
    Binder& id(const Id<Tag>& value) {
        return bind(value.text());
    }
    Binder& real(double value) { return bind(value); }
    Binder& real(const std::optional<double>& value) { return value ? bind(*value) : null(); }
    Binder& integer(std::int64_t value) { return bind(value); }
    /// `value` must outlive the execution of the statement. Precondition: under 2 GB.
    Binder& blob(const std::string& value) {
        statement_.bindNoCopy(next_++, value.data(), static_cast<int>(value.size()));
        return *this;
    }
    Binder& integer(const std::optional<std::int64_t>& value) { return value ? bind(*value) : null(); }

private:
    template <class T>
    Binder& bind(const T& value) {
        statement_.bind(next_++, value);
        return *this;
    }
    Binder& null() {
        statement_.bind(next_++);
        return *this;
    }

    SQLite::Statement& statement_;
    int next_ = 1;
};

/// Reads the columns of the present row in turn.
class Row {
public:
    explicit Row(SQLite::Statement& statement) : statement_(statement) {}

    std::string text() { return column().getString(); }
    /// A column of identifiers of one kind, such as RunId.
    template <typename KindOfId>
    KindOfId id() {
        return KindOfId(text());
    }
    template <typename KindOfId>
    std::optional<KindOfId> maybe_id() {
        const SQLite::Column value = column();
        return value.isNull() ? std::nullopt : std::optional(KindOfId(value.getString()));
    }
    double real() { return column().getDouble(); }
    std::int64_t integer() { return column().getInt64(); }
    bool flag() { return column().getInt() != 0; }
    std::optional<double> maybe_real() {
        const SQLite::Column value = column();
        return value.isNull() ? std::nullopt : std::optional(value.getDouble());
    }
    std::optional<std::int64_t> maybe_integer() {
        const SQLite::Column value = column();
        return value.isNull() ? std::nullopt : std::optional(value.getInt64());
    }
    std::optional<std::string> maybe_text() {
        const SQLite::Column value = column();
        return value.isNull() ? std::nullopt : std::optional(value.getString());
    }

private:
    SQLite::Column column() { return statement_.getColumn(next_++); }

    SQLite::Statement& statement_;
    int next_ = 0;
};

} // namespace ullage::store
