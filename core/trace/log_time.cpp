// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/log_time.h"

#include "trace/log_number.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <chrono>

namespace ullage {
namespace {

bool is_letter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

void skip_blanks(std::string_view& text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
}

/// Up to `most` digits off the front; how many there were.
int take_digits(std::string_view& text, int most, int& value) {
    int count = 0;
    value = 0;
    while (count < most && !text.empty() && is_digit(text.front())) {
        value = value * 10 + (text.front() - '0');
        text.remove_prefix(1);
        ++count;
    }
    return count;
}

/// 1 to 12 for an English name of a month or its first three letters.
int take_month(std::string_view& text) {
    constexpr std::array<std::string_view, 12> names = {"january", "february", "march",     "april",   "may",      "june",
                                                        "july",    "august",   "september", "october", "november", "december"};
    std::size_t length = 0;
    while (length < text.size() && is_letter(text[length])) ++length;
    if (length < 3) return 0;
    for (std::size_t m = 0; m < names.size(); ++m) {
        if (length > names[m].size() || (length != 3 && length != names[m].size())) continue;
        if (!std::ranges::equal(text.substr(0, length), names[m].substr(0, length),
                                [](unsigned char a, unsigned char b) { return std::tolower(a) == b; }))
            continue;
        text.remove_prefix(length);
        return static_cast<int>(m) + 1;
    }
    return 0;
}

} // namespace

Message say_time_form(TimeForm form) {
    switch (form) {
    case TimeForm::date_time: return say(phrase("trace", "date and time"));
    case TimeForm::date_and_clock: return say(phrase("trace", "date and clock"));
    case TimeForm::clock: return say(phrase("trace", "clock"));
    case TimeForm::epoch_s: return say(phrase("trace", "epoch s"));
    case TimeForm::epoch_ms: return say(phrase("trace", "epoch ms"));
    case TimeForm::elapsed: return say(phrase("trace", "elapsed"));
    case TimeForm::elapsed_clock: return say(phrase("trace", "elapsed h:m:s"));
    }
    return {};
}

bool needs_start(TimeForm form) { return form == TimeForm::clock || form == TimeForm::elapsed || form == TimeForm::elapsed_clock; }

bool read_date(std::string_view& text, DateParts& parts) {
    std::string_view rest = text;
    skip_blanks(rest);
    if (rest.size() > 8 && rest[8] == 'T' && std::ranges::all_of(rest.substr(0, 8), is_digit)) {
        (void)take_digits(rest, 4, parts.part[0]);
        (void)take_digits(rest, 2, parts.part[1]);
        (void)take_digits(rest, 2, parts.part[2]);
        parts.digits[0] = 4;
        parts.digits[1] = parts.digits[2] = 2;
        parts.separator = '-';
        text = rest;
        return true;
    }
    char separator = 0;
    for (int i = 0; i < 3; ++i) {
        if (i > 0) {
            if (rest.empty() || std::string_view("-/. ").find(rest.front()) == std::string_view::npos) return false;
            if (i == 1) separator = rest.front();
            else if (rest.front() != separator) return false;
            rest.remove_prefix(1);
            if (separator == '.') skip_blanks(rest);
        }
        parts.digits[i] = take_digits(rest, 4, parts.part[i]);
        if (parts.digits[i] == 0) parts.part[i] = take_month(rest);
        if (parts.part[i] == 0 && parts.digits[i] == 0) return false;
    }
    if (!rest.empty() && is_digit(rest.front())) return false;
    const auto [first, second, third] = parts.digits;
    const auto day_or_year = [](int digits) { return digits <= 2 || digits == 4; };
    if (second > 2 || third == 0 || !day_or_year(first) || !day_or_year(third) || first + third == 8 || first + second == 0) return false;
    // Numbers with blanks between are three cells rather than a date.
    if (separator == ' ' && first != 0 && second != 0) return false;
    parts.separator = separator;
    text = rest;
    return true;
}

bool read_clock(std::string_view text, bool basic, ClockParts& parts) {
    skip_blanks(text);
    int hours = 0, minutes = 0, seconds = 0;
    std::int64_t ms = 0;
    const int hour_digits = take_digits(text, basic ? 2 : 5, hours);
    if (hour_digits == 0) return false;
    const bool colons = !text.empty() && text.front() == ':';
    if (colons) text.remove_prefix(1);
    else if (!basic || hour_digits != 2) return false;
    if (take_digits(text, 2, minutes) != 2 || minutes > 59) return false;
    bool has_seconds = false;
    if (colons && !text.empty() && text.front() == ':') {
        text.remove_prefix(1);
        if (take_digits(text, 2, seconds) != 2) return false;
        has_seconds = true;
    } else if (!colons && !text.empty() && is_digit(text.front())) {
        if (take_digits(text, 2, seconds) != 2) return false;
        has_seconds = true;
    }
    if (seconds > 59) return false;
    if (has_seconds && text.size() > 1 && (text.front() == '.' || text.front() == ',') && is_digit(text[1])) {
        text.remove_prefix(1);
        int scale = 100;
        for (; !text.empty() && is_digit(text.front()); text.remove_prefix(1), scale /= 10) ms += (text.front() - '0') * scale;
    }
    skip_blanks(text);
    if (text.size() >= 2 && (text[0] == 'A' || text[0] == 'a' || text[0] == 'P' || text[0] == 'p')) {
        const bool afternoon = text[0] == 'P' || text[0] == 'p';
        text.remove_prefix(1);
        if (text.front() == '.') text.remove_prefix(1);
        if (text.empty() || (text.front() != 'M' && text.front() != 'm')) return false;
        text.remove_prefix(1);
        if (!text.empty() && text.front() == '.') text.remove_prefix(1);
        if (hours < 1 || hours > 12) return false;
        hours = hours % 12 + (afternoon ? 12 : 0);
        skip_blanks(text);
    }
    parts.offset_minutes.reset();
    if (text == "Z" || text == "z" || text == "UTC" || text == "GMT") {
        parts.offset_minutes = 0;
        text = {};
    } else if (!text.empty() && (text.front() == '+' || text.front() == '-')) {
        const bool west = text.front() == '-';
        text.remove_prefix(1);
        int east_h = 0, east_min = 0;
        if (take_digits(text, 2, east_h) != 2 || east_h > 15) return false;
        if (!text.empty() && text.front() == ':') text.remove_prefix(1);
        if (!text.empty() && (take_digits(text, 2, east_min) != 2 || east_min > 59)) return false;
        parts.offset_minutes = (west ? -1 : 1) * (east_h * 60 + east_min);
    }
    parts.ms = ((hours * 60LL + minutes) * 60 + seconds) * 1000 + ms;
    return text.empty();
}

bool read_date_time(std::string_view text, DateParts& date, ClockParts& clock) {
    if (!read_date(text, date)) return false;
    if (text.empty()) return false;
    const bool with_t = text.front() == 'T' || text.front() == 't';
    if (!with_t && text.front() != ' ' && text.front() != ',') return false;
    text.remove_prefix(1);
    return read_clock(text, with_t, clock) && clock.ms < 86'400'000;
}

DateOrder order_of(const DateParts& parts) {
    if (parts.digits[0] == 4) return DateOrder::year_first;
    if (parts.digits[1] == 0 || parts.separator == '.') return DateOrder::day_first;
    if (parts.digits[0] == 0) return DateOrder::month_first;
    if (parts.digits[2] != 4) return DateOrder::unknown;
    if (parts.part[0] > 12) return DateOrder::day_first;
    return parts.part[1] > 12 ? DateOrder::month_first : DateOrder::unknown;
}

std::optional<std::int64_t> days_of(const DateParts& parts, DateOrder order) {
    int year = 0, month = 0, day = 0;
    switch (order) {
    case DateOrder::unknown: return std::nullopt;
    case DateOrder::year_first:
        year = parts.part[0];
        month = parts.part[1];
        day = parts.part[2];
        break;
    case DateOrder::day_first:
        day = parts.part[0];
        month = parts.part[1];
        year = parts.part[2];
        break;
    case DateOrder::month_first:
        month = parts.part[0];
        day = parts.part[1];
        year = parts.part[2];
        break;
    }
    if (year < 100) year += 2000;
    if (year < 1900 || year > 2200 || month < 1 || month > 12 || day < 1 || day > 31) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                           std::chrono::day(static_cast<unsigned>(day))};
    if (!date.ok()) return std::nullopt;
    return std::chrono::sys_days(date).time_since_epoch().count();
}

} // namespace ullage
