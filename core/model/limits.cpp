// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/limits.h"

#include "base/number.h"
#include "base/utf8.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace ullage {

namespace {

Error beyond(std::string_view field, std::string what, std::string remedy) {
    return {Failure::bad_input, std::move(what), std::string(field), std::move(remedy)};
}

std::string with_symbol(double value, std::string_view symbol) {
    std::string text = exact_text(value);
    if (!symbol.empty()) text.append(" ").append(symbol);
    return text;
}

} // namespace

std::string range_text(const NumberRange& range) { return exact_text(range.lowest) + " to " + with_symbol(range.highest, range.symbol); }

Result<void> check_text(std::string_view field, std::string_view text, std::size_t most) {
    if (const auto position = first_bad_utf8(text))
        return beyond(field, "byte " + std::to_string(*position + 1) + " of the text is no UTF-8 character",
                      "type it anew, or save the file as UTF-8");
    if (text.size() <= most) return {};
    const auto characters = static_cast<std::size_t>(std::ranges::count_if(text, [](char c) { return (c & 0xC0) != 0x80; }));
    if (characters <= most) return {};
    return beyond(field, "the text has " + std::to_string(characters) + " characters", "give at most " + std::to_string(most));
}

Result<void> check_number(std::string_view field, const std::optional<double>& value, const NumberRange& range) {
    if (!value) return {};
    if (!std::isfinite(*value)) return beyond(field, "the value is no finite number", "give " + range_text(range) + ", or leave it empty");
    if (*value >= range.lowest && *value <= range.highest) return {};
    return beyond(field, with_symbol(*value, range.symbol) + " is out of range", "give " + range_text(range) + ", or leave it empty");
}

Result<void> check_date(std::string_view field, std::string_view date) {
    if (date.empty()) return {};
    const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
    const bool shaped = date.size() == 10 && date[4] == '-' && date[7] == '-' && std::ranges::count_if(date, is_digit) == 8;
    const auto number = [&](std::size_t at, std::size_t length) {
        int value = 0;
        for (const char c : date.substr(at, length)) value = 10 * value + (c - '0');
        return value;
    };
    using namespace std::chrono;
    if (shaped && number(0, 4) >= 1900 && number(0, 4) <= 2199 &&
        year_month_day(year(number(0, 4)), month(unsigned(number(5, 2))), day(unsigned(number(8, 2)))).ok())
        return {};
    return beyond(field, "`" + std::string(date) + "` is no date", "give a date like 2027-05-14, or leave it empty");
}

Result<void> check_moment(std::string_view field, UtcMs time_ms) {
    if (time_ms >= earliest_moment_ms && time_ms <= latest_moment_ms) return {};
    const std::string shown = time_ms >= earliest_ms && time_ms <= latest_ms ? format_iso8601(time_ms, "UTC") : std::to_string(time_ms) + " ms";
    return beyond(field, shown + " is out of range", "give a date in the years 1900 to 2199");
}

Result<void> check_count(std::string_view field, std::string_view things, std::size_t count, std::size_t most) {
    if (count <= most) return {};
    return beyond(field, "there are " + std::to_string(count) + " " + std::string(things), "keep at most " + std::to_string(most));
}

} // namespace ullage
