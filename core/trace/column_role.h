// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "model/trace.h"
#include "trace/log_number.h"

#include <optional>
#include <span>
#include <string_view>

namespace ullage {

/// What a column of a log is taken for.
/// The last two are what the unit says of itself, all others before them a meter's.
enum class ColumnRole { unused, time, date, energy, power, voltage, current, gauge, output };

/// All that is particular to a role; what else asks for roles goes through these.
struct RoleEntry {
    ColumnRole role;
    std::string_view word;                               ///< for `--map` and remembered answers: "register"
    LogQuantity quantity = LogQuantity::unknown;         ///< of its units; unknown for a role that holds no value
    std::string_view basic_unit = {};                    ///< of a value without unit
    std::optional<double> TraceSample::*place = nullptr; ///< where its values go; null for a role that holds none
    std::span<const std::string_view> header_words = {}; ///< by which a header names it, in lower case
};

/// Every role once, in the order in which they are offered.
[[nodiscard]] std::span<const RoleEntry> column_roles();

/// "unused", "time", "date", "register", "power", "voltage", "current", "gauge", "output".
[[nodiscard]] std::string_view role_text(ColumnRole role);
/// The same for people.
[[nodiscard]] Message say_role(ColumnRole role);
[[nodiscard]] std::optional<ColumnRole> role_from(std::string_view text);
/// The role whose values are of this quantity; unused where there is none.
[[nodiscard]] ColumnRole role_of(LogQuantity quantity);
/// Whether its values are what the unit says of itself.
[[nodiscard]] constexpr bool is_of_unit(ColumnRole role) { return role == ColumnRole::gauge || role == ColumnRole::output; }
/// Whether its values are a meter's.
[[nodiscard]] constexpr bool is_of_meter(ColumnRole role) {
    return role == ColumnRole::energy || role == ColumnRole::power || role == ColumnRole::voltage || role == ColumnRole::current;
}
/// The role that a word of a header names, in lower case; unused where none does.
[[nodiscard]] ColumnRole role_of_header_word(std::string_view word);
/// What a value of this role is taken to be in where nothing says it: "Wh". Without name for a role that holds no value.
[[nodiscard]] LogUnit basic_unit(ColumnRole role);

} // namespace ullage
