// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace ullage {

[[nodiscard]] constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// What a column of a log holds. `share` is a percentage, of whatever; `charge` (Ah) and `other` are recognised so that they are not taken for
/// something else.
enum class LogQuantity { unknown, energy, power, voltage, current, charge, time, share, other };

/// A unit as logs write it: 1 of it is factor / divisor × 10^exponent in Wh, W, V, A, Ah, s or %.
struct LogUnit {
    LogQuantity quantity = LogQuantity::unknown;
    int exponent = 0;
    double factor = 1; ///< 1 but for minutes and hours
    std::string_view name;
    double divisor = 1; ///< 3600 for joules
};

/// The unit of this name: W, mW, kW, Wh, mWh, kWh, MWh, J, kJ, MJ, Ws, V, mV, A, mA, Ah, mAh, s, ms, min, h, and some that no run needs (VA, var, Hz,
/// °C, %). Where no other unit differs by case alone, case does not matter.
[[nodiscard]] std::optional<LogUnit> unit_named(std::string_view name);

/// A number as a cell has it: mantissa × 10^exponent, exactly up to 18 digits, and what follows it (a unit, or nothing).
struct LogNumber {
    std::int64_t mantissa = 0;
    int exponent = 0;
    std::string_view suffix;
};

/// Reads a cell: sign, digits with `decimal` as decimal sign and `grouping` (if not 0) between groups of digits, exponent. False for any other
/// text; "nan" and "inf" are no numbers. The suffix begins with no digit or sign.
[[nodiscard]] bool read_number(std::string_view cell, char decimal, char grouping, LogNumber& number);

/// The value in the basic unit (Wh, W, V, A), correctly rounded where mantissa and power of ten are exact doubles. Absent beyond 1e15.
[[nodiscard]] std::optional<double> value_of(const LogNumber& number, const LogUnit& unit);

/// True for the ways in which logs say that a value is missing: empty, "-", "--", "nan", "n/a", "null", "none", "err".
[[nodiscard]] bool says_nothing(std::string_view cell);

} // namespace ullage
