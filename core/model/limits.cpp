// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/limits.h"

#include "base/number.h"
#include "base/utf8.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace ullage {

namespace {

Error beyond(const Message& field, const Message& what, const Message& remedy) { return {Failure::bad_input, what, field, remedy}; }

Message say_with_symbol(double value, std::string_view symbol) {
    const std::string number = exact_text(value);
    if (symbol == "cycles") return say(phrase("model", "%1 cycles"), say_digits(number));
    if (symbol == "years") return say(phrase("model", "%1 years"), say_digits(number));
    return say_digits(symbol.empty() ? number : number + " " + std::string(symbol));
}

Message within(const NumberRange& range) { return say(phrase("model", "give %1, or leave it empty"), say_range(range)); }

} // namespace

Message say_range(const NumberRange& range) {
    return say(phrase("model", "%1 to %2"), say_digits(exact_text(range.lowest)), say_with_symbol(range.highest, range.symbol));
}

Result<void> check_text(const Message& field, std::string_view text, std::size_t most) {
    if (const auto position = first_bad_utf8(text))
        return beyond(field, say(phrase("model", "byte %1 of the text is no UTF-8 character"), say_number(*position + 1)),
                      say(phrase("model", "type it anew, or save the file as UTF-8")));
    if (text.size() <= most) return {};
    const auto characters = static_cast<std::size_t>(std::ranges::count_if(text, [](char c) { return (c & 0xC0) != 0x80; }));
    if (characters <= most) return {};
    return beyond(field, say_count(characters, phrases("model", "the text has %n characters", "the text has %n character")),
                  say(phrase("model", "give at most %1"), say_number(most)));
}

Result<void> check_number(const Message& field, const std::optional<double>& value, const NumberRange& range) {
    if (!value) return {};
    if (!std::isfinite(*value)) return beyond(field, say(phrase("model", "the value is no finite number")), within(range));
    if (*value >= range.lowest && *value <= range.highest) return {};
    return beyond(field, say(phrase("model", "%1 is out of range"), say_with_symbol(*value, range.symbol)), within(range));
}

Result<void> check_date(const Message& field, std::string_view date) {
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
    return beyond(field, say(phrase("model", "`%1` is no date"), date), say(phrase("model", "give a date like 2027-05-14, or leave it empty")));
}

Result<void> check_moment(const Message& field, UtcMs time_ms) {
    if (time_ms >= earliest_moment_ms && time_ms <= latest_moment_ms) return {};
    const std::string shown = time_ms >= earliest_ms && time_ms <= latest_ms ? format_iso8601(time_ms, "UTC") : std::to_string(time_ms) + " ms";
    return beyond(field, say(phrase("model", "%1 is out of range"), shown), say(phrase("model", "give a date in the years 1900 to 2199")));
}

Result<void> check_count(const Message& field, const Phrase& words, std::size_t count, std::size_t most) {
    if (count <= most) return {};
    return beyond(field, say_count(count, words), say(phrase("model", "keep at most %1"), say_number(most)));
}

} // namespace ullage
