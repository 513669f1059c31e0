// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/instant.h"

#include "base/zone_table.h"

#include <date/date.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace ullage {

namespace {

using Sort = zone_table::LocalOffsets::Sort;

constexpr std::array<Phrase, 12> month_names = {phrase("date", "January"), phrase("date", "February"), phrase("date", "March"),
                                                phrase("date", "April"),   phrase("date", "May"),      phrase("date", "June"),
                                                phrase("date", "July"),    phrase("date", "August"),   phrase("date", "September"),
                                                phrase("date", "October"), phrase("date", "November"), phrase("date", "December")};
constexpr std::array<Phrase, 12> days_of_months = {phrase("date", "%1 January"), phrase("date", "%1 February"), phrase("date", "%1 March"),
                                                   phrase("date", "%1 April"),   phrase("date", "%1 May"),      phrase("date", "%1 June"),
                                                   phrase("date", "%1 July"),    phrase("date", "%1 August"),   phrase("date", "%1 September"),
                                                   phrase("date", "%1 October"), phrase("date", "%1 November"), phrase("date", "%1 December")};

Error time_error(const Message& what, const Message& remedy) { return Error{Failure::bad_input, what, {}, remedy}; }

LocalTime broken_down(UtcMs utc_ms, long offset_s) {
    const std::int64_t local_ms = utc_ms + offset_s * 1000LL;
    const auto day = date::floor<date::days>(date::local_time<std::chrono::milliseconds>(std::chrono::milliseconds(local_ms)));
    const date::year_month_day ymd{day};
    const auto in_day = local_ms - day.time_since_epoch().count() * 86'400'000LL;
    LocalTime local;
    local.year = int(ymd.year());
    local.month = int(unsigned(ymd.month()));
    local.day = int(unsigned(ymd.day()));
    local.hour = int(in_day / 3'600'000);
    local.minute = int(in_day / 60'000 % 60);
    local.second = int(in_day / 1000 % 60);
    local.millisecond = int(in_day % 1000);
    local.weekday = int(date::weekday{day}.c_encoding());
    local.offset_minutes = int(offset_s / 60);
    return local;
}

std::string plain_text(const LocalTime& local) {
    return fmt::format("{:04}-{:02}-{:02} {:02}:{:02}", local.year, local.month, local.day, local.hour, local.minute);
}

/// Local time read as if it were UTC; an error where calendar or clock has no such moment.
Result<UtcMs> as_if_utc(const LocalTime& local) {
    const bool clock_ok = local.hour >= 0 && local.hour < 24 && local.minute >= 0 && local.minute < 60 && local.second >= 0 && local.second < 60 &&
                          local.millisecond >= 0 && local.millisecond < 1000;
    if (!clock_ok)
        return time_error(say(phrase("base", "%1 is no time of day"), fmt::format("{:02}:{:02}:{:02}", local.hour, local.minute, local.second)),
                          say(phrase("base", "use 00:00:00 to 23:59:59")));
    if (local.year < 1583 || local.year > 9999)
        return time_error(say(phrase("base", "year %1 is outside 1583 to 9999"), say_number(local.year)), say(phrase("base", "correct the year")));
    const bool positive = local.month > 0 && local.day > 0;
    const date::year_month_day ymd{date::year(local.year), date::month(unsigned(positive ? local.month : 0)),
                                   date::day(unsigned(positive ? local.day : 0))};
    if (!positive || local.month > 12 || local.day > 31 || !ymd.ok())
        return time_error(say(phrase("base", "%1 is no date of the calendar"), fmt::format("{:04}-{:02}-{:02}", local.year, local.month, local.day)),
                          say(phrase("base", "correct the day or the month")));
    const std::int64_t days = date::local_days(ymd).time_since_epoch().count();
    return days * 86'400'000LL + local.hour * 3'600'000LL + local.minute * 60'000LL + local.second * 1000LL + local.millisecond;
}

Result<UtcMs> within_limits(UtcMs time_ms) {
    if (time_ms >= earliest_ms && time_ms <= latest_ms) return time_ms;
    return time_error(say(phrase("base", "the moment is outside the years 1583 to 9999")), say(phrase("base", "correct the year")));
}

/// Reads exactly `count` digits at `at` and moves on; false where they are missing.
bool digits(std::string_view text, std::size_t& at, int count, int& value) {
    if (text.size() - at < std::size_t(count)) return false;
    value = 0;
    for (int i = 0; i < count; ++i, ++at) {
        if (text[at] < '0' || text[at] > '9') return false;
        value = value * 10 + (text[at] - '0');
    }
    return true;
}

bool character(std::string_view text, std::size_t& at, std::string_view any_of) {
    if (at >= text.size() || any_of.find(text[at]) == std::string_view::npos) return false;
    ++at;
    return true;
}

/// Seconds and a fraction, both optional.
bool seconds_part(std::string_view text, std::size_t& at, LocalTime& local) {
    if (!character(text, at, ":")) return true;
    if (!digits(text, at, 2, local.second)) return false;
    if (!character(text, at, ".,")) return true;
    const std::size_t start = at;
    int scale = 100;
    for (; at < text.size() && text[at] >= '0' && text[at] <= '9'; ++at, scale /= 10) local.millisecond += (text[at] - '0') * scale;
    return at > start;
}

bool date_and_time(std::string_view text, std::size_t& at, LocalTime& local) {
    return digits(text, at, 4, local.year) && character(text, at, "-") && digits(text, at, 2, local.month) && character(text, at, "-") &&
           digits(text, at, 2, local.day) && character(text, at, "Tt ") && digits(text, at, 2, local.hour) && character(text, at, ":") &&
           digits(text, at, 2, local.minute) && seconds_part(text, at, local);
}

/// `+02:00`, `+0200` or `+02` up to the end of the text; minutes east of UTC.
std::optional<int> offset_part(std::string_view text, std::size_t& at) {
    const bool west = text[at++] == '-';
    int hours = 0, minutes = 0;
    if (!digits(text, at, 2, hours)) return std::nullopt;
    if (at < text.size()) {
        character(text, at, ":");
        if (!digits(text, at, 2, minutes)) return std::nullopt;
    }
    if (at != text.size() || hours > 23 || minutes > 59) return std::nullopt;
    return (west ? -1 : 1) * (hours * 60 + minutes);
}

} // namespace

bool zone_exists(std::string_view zone) { return zone_table::is_known(zone); }

std::string machine_zone() {
    const std::string name = zone_table::name_of_machine_zone();
    return name.empty() ? "UTC" : name;
}

LocalTime to_local(UtcMs time_ms, std::string_view zone) {
    const UtcMs held = std::clamp(time_ms, earliest_ms, latest_ms);
    const std::int64_t seconds = (held - ((held % 1000) + 1000) % 1000) / 1000;
    return broken_down(held, zone_table::offset_at_utc(seconds, zone).value_or(0));
}

Result<UtcMs> from_local(const LocalTime& local, std::string_view zone, Doubled doubled) {
    const Result<UtcMs> as_utc = as_if_utc(local);
    if (!as_utc) return as_utc;
    const UtcMs local_ms = as_utc.value();
    const auto offsets = zone_table::offsets_at_local((local_ms - local.millisecond) / 1000, zone);
    if (!offsets)
        return time_error(say(phrase("base", "`%1` is no time zone known to this machine"), zone),
                          say(phrase("base", "use an IANA name such as Europe/Vienna, or UTC")));
    if (offsets->sort == Sort::skipped)
        return time_error(say(phrase("base", "%1 does not exist in %2: the clocks went forward"), plain_text(local), zone),
                          say(phrase("base", "use the time after the change")));
    if (offsets->sort == Sort::doubled && doubled == Doubled::refuse)
        return time_error(say(phrase("base", "%1 occurs twice in %2: the clocks were put back"), plain_text(local), zone),
                          say(phrase("base", "add the offset: %1 or %2"), format_iso8601(local_ms - offsets->first * 1000LL, zone),
                              format_iso8601(local_ms - offsets->second * 1000LL, zone)));
    const bool use_second = offsets->sort == Sort::doubled && doubled == Doubled::later;
    return within_limits(local_ms - (use_second ? offsets->second : offsets->first) * 1000LL);
}

Result<UtcMs> parse_iso8601(std::string_view text, std::string_view zone, Doubled doubled) {
    const auto other_form = [text] {
        return time_error(say(phrase("base", "`%1` is no date and time"), text),
                          say(phrase("base", "write it like 2027-05-14T18:00, with Z or an offset such as +02:00 if need be")));
    };
    LocalTime local;
    std::size_t at = 0;
    if (!date_and_time(text, at, local)) return other_form();
    if (at == text.size()) return from_local(local, zone, doubled);
    std::optional<int> east_minutes;
    if (text[at] == '+' || text[at] == '-') east_minutes = offset_part(text, at);
    else if (character(text, at, "Zz") && at == text.size()) east_minutes = 0;
    if (!east_minutes) return other_form();
    const Result<UtcMs> as_utc = as_if_utc(local);
    if (!as_utc) return as_utc;
    return within_limits(as_utc.value() - *east_minutes * 60'000LL);
}

std::string format_iso8601(UtcMs time_ms, std::string_view zone) {
    const UtcMs held = std::clamp(time_ms, earliest_ms, latest_ms);
    const std::int64_t seconds = (held - ((held % 1000) + 1000) % 1000) / 1000;
    const std::optional<long> offset = zone_table::offset_at_utc(seconds, zone);
    const bool utc = zone_table::is_utc(zone) || !offset || *offset % 60 != 0;
    const LocalTime local = broken_down(held, utc ? 0 : *offset);
    std::string text = fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}", local.year, local.month, local.day, local.hour, local.minute);
    if (local.second != 0 || local.millisecond != 0) text += fmt::format(":{:02}", local.second);
    if (local.millisecond != 0) text += fmt::format(".{:03}", local.millisecond);
    if (utc) return text + 'Z';
    const int east = local.offset_minutes;
    return text + fmt::format("{}{:02}:{:02}", east < 0 ? '-' : '+', std::abs(east) / 60, std::abs(east) % 60);
}

std::string clock_text(UtcMs time_ms, std::string_view zone) {
    const LocalTime local = to_local(time_ms, zone);
    return fmt::format("{:02}:{:02}", local.hour, local.minute);
}

Message say_day(UtcMs time_ms, std::string_view zone) {
    const LocalTime local = to_local(time_ms, zone);
    return say(days_of_months[std::size_t(local.month - 1)], say_number(local.day));
}

Message say_date(UtcMs time_ms, std::string_view zone) {
    return say(phrase("date", "%1 %2"), say_day(time_ms, zone), say_number(to_local(time_ms, zone).year));
}

Message say_month(int month) { return say(month_names.at(std::size_t(month - 1))); }

std::string day_text(UtcMs time_ms, std::string_view zone) { return say_day(time_ms, zone).text(); }
std::string date_text(UtcMs time_ms, std::string_view zone) { return say_date(time_ms, zone).text(); }

std::string duration_text(double hours) {
    if (!std::isfinite(hours) || std::abs(hours) > 1e9) return say(phrase("base", "not known"));
    const long long minutes = std::llround(hours * 60);
    const long long size = std::llabs(minutes);
    const char* sign = minutes < 0 ? "-" : "";
    if (size < 60) return fmt::format("{}{} min", sign, size);
    return fmt::format("{}{} h {} min", sign, size / 60, size % 60);
}

} // namespace ullage
