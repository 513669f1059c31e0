// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

#include <optional>
#include <string>
#include <utility>
#include <variant>

namespace ullage {

/// What sort of thing went wrong; decides nothing but the caller's reaction, the words are in Error.
enum class Failure { bad_input, not_found, not_a_logbook, newer_version, damaged, read_only, in_use, displaced, disk_full, io, refused };

/// A failure that a person can act on: what is wrong, where it is, and what to do about it.
struct Error {
    Failure failure = Failure::bad_input;
    Message what;   ///< one clause, e.g. "`abc` is no number"
    Message where;  ///< file, line and column, or field; may be empty
    Message remedy; ///< what to do; may be empty

    /// "WHERE: WHAT; REMEDY" with the empty parts left out; one line.
    [[nodiscard]] Message message() const;
    /// The same in the language in use.
    [[nodiscard]] std::string sentence() const;
};

/// The error with `place`, e.g. the file, in front of where it is.
[[nodiscard]] Error within(Error error, const std::string& place);

/// A value or an Error. Precondition of value(): ok(); of error(): !ok().
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : content_(std::move(value)) {}
    Result(Error error) : content_(std::move(error)) {}

    [[nodiscard]] bool ok() const { return content_.index() == 0; }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const T& value() const& { return std::get<0>(content_); }
    [[nodiscard]] T& value() & { return std::get<0>(content_); }
    [[nodiscard]] T&& value() && { return std::get<0>(std::move(content_)); }
    [[nodiscard]] const Error& error() const { return std::get<1>(content_); }

private:
    std::variant<T, Error> content_;
};

/// Success without a value, or an Error.
template <>
class [[nodiscard]] Result<void> {
public:
    Result() = default;
    Result(Error error) : error_(std::move(error)) {}

    [[nodiscard]] bool ok() const { return !error_.has_value(); }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const Error& error() const { return *error_; }

private:
    std::optional<Error> error_;
};

} // namespace ullage
