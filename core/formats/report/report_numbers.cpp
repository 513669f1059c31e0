// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/report/report_numbers.h"

#include <algorithm>
#include <iterator>
#include <variant>

namespace ullage {

namespace {

bool is_digit(char letter) { return letter >= '0' && letter <= '9'; }
bool is_word(char letter) { return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') || letter == '_'; }

/// Where the digits around `at` begin and end.
std::size_t digits_from(std::string_view text, std::size_t at) {
    while (at > 0 && is_digit(text[at - 1])) --at;
    return at;
}
std::size_t digits_to(std::string_view text, std::size_t at) {
    while (at < text.size() && is_digit(text[at])) ++at;
    return at;
}

/// Whether the point at `at` is the sign of one decimal number.
bool is_decimal_point(std::string_view text, std::size_t at) {
    if (text[at] != '.' || at == 0 || at + 1 >= text.size() || !is_digit(text[at - 1]) || !is_digit(text[at + 1])) return false;
    const std::size_t from = digits_from(text, at), to = digits_to(text, at + 1);
    const bool word_before = from > 0 && is_word(text[from - 1]);
    const bool point_before = from > 1 && text[from - 1] == '.' && is_digit(text[from - 2]);
    const bool word_after = to < text.size() && is_word(text[to]);
    const bool point_after = to + 1 < text.size() && text[to] == '.' && is_digit(text[to + 1]);
    return !word_before && !point_before && !word_after && !point_after;
}

bool is_minus(std::string_view text, std::size_t at) {
    if (text[at] != '-' || at + 1 >= text.size() || !is_digit(text[at + 1])) return false;
    return at == 0 || text[at - 1] == ' ' || text[at - 1] == '(';
}

/// How long the longest of the names is that `text` begins with; 0 where it begins with none.
std::size_t name_at_beginning(const std::set<std::string, std::less<>>& names, std::string_view text) {
    while (!text.empty()) {
        const auto after = names.upper_bound(text);
        if (after == names.begin()) return 0;
        // The last name in order that is not beyond the text: a longer beginning of it would come later still.
        const std::string& name = *std::prev(after);
        if (text.starts_with(name)) return name.size();
        const auto differs = std::ranges::mismatch(name, text).in2;
        text = text.substr(0, static_cast<std::size_t>(differs - text.begin()));
    }
    return 0;
}

} // namespace

std::string NumberForm::apply(std::string_view text) const {
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        if (const std::size_t length = name_at_beginning(names, text.substr(at)); length > 0) {
            out += text.substr(at, length);
            at += length;
            continue;
        }
        if (is_minus(text, at)) out += "\u2212";
        else out += is_decimal_point(text, at) ? decimal_sign : text[at];
        ++at;
    }
    return out;
}

PrintedTable printed_in_form(const Table& table, const NumberForm& form) {
    PrintedTable printed = printed_table(table);
    for (std::size_t r = 0; r < printed.rows.size(); ++r)
        for (std::size_t c = 0; c < printed.rows[r].size(); ++c) {
            if (!std::holds_alternative<Quantity>(cell_at(table.rows[r], c))) continue;
            PrintedCell& cell = printed.rows[r][c];
            cell.value = form.apply(cell.value);
            cell.interval = form.apply(cell.interval);
        }
    for (std::string& note : printed.notes) note = form.apply(note);
    return printed;
}

} // namespace ullage
