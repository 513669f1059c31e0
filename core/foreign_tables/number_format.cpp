// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/number_format.h"

#include "base/instant.h"
#include "base/number.h"
#include "trace/log_number.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>

namespace ullage {

namespace {

using Shows = NumberFormat::Shows;

constexpr std::int64_t ms_of_day = 86'400'000;
constexpr std::int64_t base_1900_days = -25'569; ///< 1899-12-30, in days since 1970
constexpr std::int64_t base_1904_days = -24'107; ///< 1904-01-01
constexpr double most_serial = 2'958'466;

/// The letters of a code that say what it shows; what stands in quotes or behind a backslash goes to `literal`.
std::string bare_code(std::string_view code, std::string& literal, bool& duration) {
    std::string bare;
    for (std::size_t i = 0; i < code.size(); ++i) {
        const char c = code[i];
        if (c == ';') break;
        if (c == '"') {
            const auto end = std::min(code.find('"', i + 1), code.size());
            literal += code.substr(i + 1, end - i - 1);
            i = end;
        } else if (c == '\\') {
            if (++i < code.size()) literal += code[i];
        } else if (c == '_' || c == '*') {
            ++i;
        } else if (c == '[') {
            const auto end = std::min(code.find(']', i), code.size());
            const std::string_view inside = code.substr(i + 1, end - i - 1);
            if (!inside.empty() && inside.find_first_not_of("hHmMsS") == std::string_view::npos) duration = true;
            i = end;
        } else {
            bare += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        }
    }
    return bare;
}

/// An m beside hours or seconds is minutes.
bool has_month(std::string_view bare) {
    for (std::size_t i = bare.find('m'); i != std::string_view::npos; i = bare.find('m', i)) {
        const auto end = std::min(bare.find_first_not_of('m', i), bare.size());
        const auto before = i == 0 ? std::string_view::npos : bare.find_last_of("ydhs", i - 1);
        const auto after = bare.find_first_of("ydhs", end);
        const bool minutes = (before != std::string_view::npos && bare[before] == 'h') || (after != std::string_view::npos && bare[after] == 's') ||
                             bare.substr(end).starts_with("/pm");
        if (!minutes) return true;
        i = end;
    }
    return false;
}

std::string clock_of(std::int64_t ms) {
    std::string text = fmt::format("{:02}:{:02}:{:02}", ms / 3'600'000, ms / 60'000 % 60, ms / 1000 % 60);
    if (ms % 1000 != 0) text += fmt::format(".{:03}", ms % 1000);
    return text;
}

} // namespace

NumberFormat number_format_of(std::string_view code) {
    NumberFormat format;
    std::string literal;
    bool duration = false;
    const std::string bare = bare_code(code, literal, duration);
    const auto has = [&bare](std::string_view letters) { return bare.find_first_of(letters) != std::string::npos; };
    const bool general = bare.find("general") != std::string::npos;
    if (duration) format.shows = Shows::duration;
    else if (general) format.shows = Shows::number;
    else if (has("yd") || has_month(bare)) format.shows = has("hs") ? Shows::moment : Shows::day;
    else if (has("hs")) format.shows = Shows::clock;
    else if (has("%")) format.shows = Shows::percent;
    if (format.shows == Shows::number)
        if (const std::string_view unit = trimmed(literal); unit == "%" || (!unit.empty() && unit_named(unit))) format.unit = unit;
    return format;
}

NumberFormat built_in_format(int id) {
    if (id == 9 || id == 10) return {Shows::percent, {}};
    if ((id >= 14 && id <= 17) || (id >= 27 && id <= 31) || id == 36 || (id >= 50 && id <= 58)) return {Shows::day, {}};
    if ((id >= 18 && id <= 21) || (id >= 32 && id <= 35)) return {Shows::clock, {}};
    if (id == 22) return {Shows::moment, {}};
    if (id >= 45 && id <= 47) return {Shows::duration, {}};
    return {};
}

std::optional<std::string> stored_number_text(double value, const NumberFormat& format, DateSystem system) {
    if (!std::isfinite(value)) return std::nullopt;
    if (format.shows == Shows::number) return format.unit.empty() ? exact_text(value) : exact_text(value) + ' ' + format.unit;
    if (format.shows == Shows::percent) {
        // 0.69 is stored for 69 %: its shortest text moves the point, without a digit that the file does not have.
        const double percent = std::round(value * 1e14) / 1e12;
        return exact_text(percent) + " %";
    }
    if (std::abs(value) > most_serial) return std::nullopt;
    std::int64_t ms = std::llround(value * static_cast<double>(ms_of_day));
    constexpr std::int64_t near_ms = 10;
    const std::int64_t off_ms = ((ms % 1000) + 1000) % 1000;
    if (off_ms <= near_ms) ms -= off_ms;
    else if (off_ms >= 1000 - near_ms) ms += 1000 - off_ms;
    if (format.shows == Shows::duration || (format.shows == Shows::clock && value < 1)) return ms < 0 ? std::nullopt : std::optional(clock_of(ms));
    const UtcMs moment = ms + (system == DateSystem::from_1904 ? base_1904_days : base_1900_days) * ms_of_day;
    if (moment < earliest_ms || moment > latest_ms) return std::nullopt;
    const std::int64_t within = ((moment % ms_of_day) + ms_of_day) % ms_of_day;
    const LocalTime day = to_local(moment, "UTC");
    std::string text = fmt::format("{:04}-{:02}-{:02}", day.year, day.month, day.day);
    if (within != 0 || format.shows == Shows::moment) text += ' ' + clock_of(within);
    return text;
}

} // namespace ullage
