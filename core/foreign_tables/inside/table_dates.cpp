// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "base/plain_text.h"
#include "foreign_tables/inside/table_cells.h"
#include "trace/log_number.h"

#include <algorithm>
#include <cctype>
#include <utility>

namespace ullage {

namespace {

/// Beginnings of the names of months, English, German, French, Spanish, in lower case.
constexpr std::pair<std::string_view, int> month_beginnings[] = {
    {"jan", 1},  {"ene", 1},  {"j\u00E4n", 1}, {"feb", 2},  {"fev", 2},       {"f\u00E9v", 2}, {"mar", 3}, {"m\u00E4r", 3},
    {"mrz", 3},  {"apr", 4},  {"avr", 4},      {"abr", 4},  {"may", 5},       {"mai", 5},      {"jun", 6}, {"juin", 6},
    {"jul", 7},  {"juil", 7}, {"aug", 8},      {"ago", 8},  {"ao\u00FB", 8},  {"aou", 8},      {"sep", 9}, {"oct", 10},
    {"okt", 10}, {"nov", 11}, {"dec", 12},     {"dez", 12}, {"d\u00E9c", 12}, {"dic", 12}};

constexpr std::string_view weekdays[] = {"mon",    "tue",      "tues",        "wed",        "thu",       "thur",     "thurs",     "fri",
                                         "sat",    "sun",      "monday",      "tuesday",    "wednesday", "thursday", "friday",    "saturday",
                                         "sunday", "mo",       "di",          "mi",         "do",        "fr",       "sa",        "so",
                                         "montag", "dienstag", "mittwoch",    "donnerstag", "freitag",   "samstag",  "sonnabend", "sonntag",
                                         "lundi",  "mardi",    "mercredi",    "jeudi",      "vendredi",  "samedi",   "dimanche",  "lun",
                                         "mer",    "jeu",      "ven",         "sam",        "dim",       "lunes",    "martes",    "mi\u00E9rcoles",
                                         "jueves", "viernes",  "s\u00E1bado", "domingo",    "date",      "date:",    "datum:"};

struct DateWord {
    std::string_view text;
    std::size_t end; ///< where it ends in the whole text
};

/// The next run of letters or digits; what parts them is passed over but for colons and signs, which belong to a clock.
std::optional<DateWord> next_word(std::string_view text, std::size_t at) {
    while (at < text.size() && std::string_view(" ,.-/").find(text[at]) != std::string_view::npos) ++at;
    if (at >= text.size()) return std::nullopt;
    const bool digits = is_digit(text[at]);
    std::size_t end = at;
    while (end < text.size() && (digits ? is_digit(text[end]) : std::isalpha(static_cast<unsigned char>(text[end])) != 0 || (text[end] & 0x80) != 0))
        ++end;
    if (end == at) return std::nullopt;
    return DateWord{text.substr(at, end - at), end};
}

int month_of(std::string_view word) {
    int found = 0;
    std::size_t longest = 0;
    for (const auto& [beginning, month] : month_beginnings)
        if (word.starts_with(beginning) && beginning.size() > longest) {
            found = month;
            longest = beginning.size();
        }
    return found;
}

int number_of_word(std::string_view word) {
    int value = 0;
    for (const char c : word.substr(0, 4)) value = value * 10 + (c - '0');
    return value;
}

/// 14 May 2027, May 14, 14. Mai; `rest` is what stands behind.
std::optional<DateInCell> worded_date(std::string_view text, std::string_view& rest) {
    const auto first = next_word(text, 0);
    if (!first) return std::nullopt;
    const auto second = next_word(text, first->end);
    if (!second) return std::nullopt;
    const bool month_leads = !is_digit(first->text.front());
    const std::string_view day = month_leads ? second->text : first->text;
    const int month = month_of(month_leads ? first->text : second->text);
    if (month == 0 || !is_digit(day.front()) || day.size() > 2) return std::nullopt;
    DateInCell found;
    found.parts.part[0] = number_of_word(day);
    found.parts.digits[0] = static_cast<int>(day.size());
    found.parts.part[1] = month; // a month in letters has no digits
    std::size_t end = second->end;
    // English ordinals: May 14th.
    if (const auto ordinal = next_word(text, end);
        ordinal && (ordinal->text == "st" || ordinal->text == "nd" || ordinal->text == "rd" || ordinal->text == "th"))
        end = ordinal->end;
    const auto year = next_word(text, end);
    const bool is_year = year && is_digit(year->text.front()) && (year->text.size() == 4 || year->text.size() == 2) &&
                         (year->end == text.size() || text[year->end] == ' ' || text[year->end] == ',');
    found.has_year = is_year;
    if (is_year) {
        found.parts.part[2] = number_of_word(year->text);
        found.parts.digits[2] = static_cast<int>(year->text.size());
        end = year->end;
    }
    rest = text.substr(end);
    return found;
}

/// 14.05. and, where it is a date for sure, 14.05 or 14/5.
std::optional<DateInCell> date_without_year(std::string_view text, bool bare, std::string_view& rest) {
    DateInCell found;
    found.has_year = false;
    std::size_t at = 0;
    char separator = 0;
    for (int i = 0; i < 2; ++i) {
        const std::size_t begin = at;
        while (at < text.size() && at - begin < 2 && is_digit(text[at])) ++at;
        if (at == begin) return std::nullopt;
        found.parts.part[i] = number_of_word(text.substr(begin, at - begin));
        found.parts.digits[i] = static_cast<int>(at - begin);
        if (i == 0) {
            if (at >= text.size() || (text[at] != '.' && text[at] != '/' && text[at] != '-')) return std::nullopt;
            separator = text[at++];
        }
    }
    const bool closed = at < text.size() && text[at] == separator && separator == '.';
    if (closed) ++at;
    if ((!closed && !bare) || (at < text.size() && text[at] != ' ')) return std::nullopt;
    found.parts.separator = separator;
    rest = text.substr(at);
    return found;
}

} // namespace

std::optional<DateInCell> date_in_cell(std::string_view cell, bool bare) {
    std::string text = with_plain_blanks(cell);
    std::ranges::transform(text, text.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    std::string_view rest = text;
    while (true) {
        const std::size_t end = std::min(rest.find_first_of(" ,."), rest.size());
        const std::string_view word = rest.substr(0, end);
        if (end == rest.size() || std::ranges::find(weekdays, word) == std::end(weekdays)) break;
        rest = trimmed(rest.substr(end + 1));
        while (!rest.empty() && (rest.front() == ',' || rest.front() == ' ')) rest.remove_prefix(1);
    }
    if (rest.empty()) return std::nullopt;
    DateInCell found;
    std::string_view behind = rest;
    // A T between date and time of ISO 8601 is in lower case here.
    std::string iso;
    if (rest.size() > 10 && rest[10] == 't' && is_digit(rest.front())) {
        iso = rest;
        iso[10] = ' ';
        rest = behind = iso;
    }
    if (auto worded = worded_date(rest, behind)) found = *worded;
    else if (behind = rest; read_date(behind, found.parts)) found.has_year = true;
    else if (auto yearless = date_without_year(rest, bare, behind)) found = *yearless;
    else return std::nullopt;
    while (!behind.empty() && std::string_view(" ,").find(behind.front()) != std::string_view::npos) behind.remove_prefix(1);
    for (const std::string_view word : {"um ", "at ", "a las "})
        if (behind.starts_with(word)) behind.remove_prefix(word.size());
    if (behind.empty()) return found;
    found.clock = clock_in_cell(behind);
    return found.clock ? std::optional(found) : std::nullopt;
}

} // namespace ullage
