// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "trace/log_number.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace ullage {

/// What a column of a foreign table of readings is taken for.
enum class TableRole {
    unused,
    time,
    date,
    elapsed,
    gauge,
    energy,
    second_energy, ///< register of a second meter
    power,
    display_power,
    mark,
    remark,
    run,
    unit
};

struct TableRoleEntry {
    TableRole role;
    std::string_view word; ///< for `--map` and remembered answers: "register"
};

/// Every role once, in the order in which they are offered: unused, time, date, elapsed, gauge, register, second-register, load-power, display-power,
/// mark, remark, run, unit.
[[nodiscard]] std::span<const TableRoleEntry> table_roles();
[[nodiscard]] std::string_view table_role_text(TableRole role);
/// "register", "second register", "power of the load": for people.
[[nodiscard]] Message say_table_role(TableRole role);
[[nodiscard]] std::optional<TableRole> table_role_from(std::string_view text);

/// Roles whose cells are numbers with a unit.
[[nodiscard]] bool holds_numbers(TableRole role);

/// What the head of a column says.
struct HeadMeaning {
    TableRole role = TableRole::unused;
    std::string unit;   ///< "kWh", "%"; empty: none named
    Message why;        ///< "“SoC” names the gauge"; empty where nothing is said
    bool known = false; ///< its words are known, also those of a column that no run needs, such as a voltage
};

/// Reads the head of a column by its words (English, German, French, Spanish) and the unit in it.
[[nodiscard]] HeadMeaning meaning_of_head(std::string_view title);

/// A unit of a cell, a head or an answer: those of unit_named(), and "%". Absent for another word.
[[nodiscard]] std::optional<std::string> known_table_unit(std::string_view word);

} // namespace ullage
