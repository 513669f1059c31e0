// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room foreign_tables: what one cell says.
#pragma once

#include "foreign_tables/table_book.h"
#include "model/reading.h"
#include "trace/log_time.h"

#include <optional>
#include <string>
#include <string_view>

namespace ullage {

/// How numbers are written in a table.
struct NumberWriting {
    char decimal = '.', grouping = ',';
};

struct NumberInCell {
    double value = 0;
    std::string unit;   ///< as known_table_unit() names it; empty: none
    bool about = false; ///< written as `~ 69` or `ca. 69`
};
/// The number of a cell with its unit; absent for any other text.
[[nodiscard]] std::optional<NumberInCell> number_in_cell(const GridCell& cell, const NumberWriting& writing);

/// Begins as a number does: a digit, or a sign before one.
[[nodiscard]] bool looks_numeric(std::string_view text);

/// What a cell says of its decimal sign.
enum class DecimalSays { nothing, point, comma, open_point, open_comma };
[[nodiscard]] DecimalSays decimal_said_by(std::string_view text);

struct DateInCell {
    DateParts parts;
    bool has_year = true;
    std::optional<ClockParts> clock; ///< of a cell with both
};
/// A date of any order, perhaps with a weekday, a month in words, a time of day behind it. `bare`: also 14.05 and 14/5, which elsewhere are numbers.
[[nodiscard]] std::optional<DateInCell> date_in_cell(std::string_view text, bool bare);

/// A time of day: 18:00, 18.00, 1800, 6 pm, 18h00, 18:00 Uhr, with an offset perhaps.
[[nodiscard]] std::optional<ClockParts> clock_in_cell(std::string_view text);

/// A time counted from the start: 26:30, 2.5 h, 1 h 30 min, or a bare number in `unit_s` seconds each. Absent where it is none, or bare and no unit
/// is known (0); `bare` then says so.
[[nodiscard]] std::optional<std::int64_t> elapsed_ms_in_cell(const GridCell& cell, const NumberWriting& writing, double unit_s, bool& bare);

/// What a note names.
struct EventInCell {
    std::optional<MarkKind> mark;
    bool full = false;
};
/// The event that a note names by itself or in its first words; nothing for an ordinary remark.
[[nodiscard]] EventInCell event_in_cell(std::string_view text);

/// A line of totals or means, by its first word.
[[nodiscard]] bool names_total(std::string_view text);

} // namespace ullage
