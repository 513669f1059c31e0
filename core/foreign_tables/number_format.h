// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace ullage {

/// What a number format of a workbook makes of a number.
struct NumberFormat {
    enum class Shows { number, percent, day, clock, moment, duration } shows = Shows::number;
    std::string unit; ///< a unit that the format writes behind the number, such as "kWh"; empty: none
};

/// Where day 0 of a workbook's dates lies: ECMA-376 Part 1, 18.17.4.1.
enum class DateSystem { from_1900, from_1904 };

/// Reads a format code (ECMA-376 Part 1, 18.8.31), its first section: days, times, `[h]` durations, percent, a unit in quotes.
[[nodiscard]] NumberFormat number_format_of(std::string_view code);
/// The formats that have a number and no code in the file (ECMA-376 Part 1, 18.8.30, and those of East Asia, which are dates too).
[[nodiscard]] NumberFormat built_in_format(int id);

/// The text of a stored number as GridCell::typed has it. A serial value is rounded to the second where it is within 10 ms of one, as
/// serial values are written with seven places (18.17.4.3). Absent for a date outside the years 1583 to 9999.
[[nodiscard]] std::optional<std::string> stored_number_text(double value, const NumberFormat& format, DateSystem system);

} // namespace ullage
