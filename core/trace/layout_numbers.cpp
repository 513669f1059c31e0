// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/inside/layout_columns.h"

#include <algorithm>

namespace ullage {
namespace {

/// What a cell says of its decimal sign.
enum class Says { nothing, point, comma, point_grouped, comma_grouped, open };

Says sign_of(std::string_view cell) {
    DateParts date;
    ClockParts clock;
    std::string_view rest = cell;
    if (read_date(rest, date) || read_date_time(cell, date, clock) || read_clock(cell, false, clock)) return Says::nothing;
    const std::size_t end = std::min(cell.find_first_not_of("0123456789.,+-"), cell.size());
    const std::string_view number = cell.substr(0, end);
    const auto points = std::ranges::count(number, '.'), commas = std::ranges::count(number, ',');
    if (points == 0 && commas == 0) return Says::nothing;
    if (points > 0 && commas > 0) return number.rfind('.') > number.rfind(',') ? Says::point_grouped : Says::comma_grouped;
    if (points > 1) return Says::comma_grouped;
    if (commas > 1) return Says::point_grouped;
    const std::size_t at = number.find_first_of(".,");
    std::size_t before = at;
    while (before > 0 && is_digit(number[before - 1])) --before;
    const std::size_t whole = at - before, after = number.size() - at - 1;
    const bool could_group = after == 3 && whole >= 1 && whole <= 3 && number[before] != '0';
    if (points == 1) return could_group ? Says::nothing : Says::point; // 12.345 is common as a plain number
    return could_group ? Says::open : Says::comma;
}

} // namespace

void settle_numbers(const LayoutRows& rows, const LayoutAnswers& answers, TraceDetection& detection) {
    std::size_t counts[6] = {};
    std::string example;
    for (const auto& row : rows.data)
        for (const std::string& cell : row) {
            const Says says = sign_of(cell);
            ++counts[static_cast<std::size_t>(says)];
            if (says == Says::open && example.empty()) example = cell;
        }
    const auto count = [&counts](Says says) { return counts[static_cast<std::size_t>(says)]; };
    TraceLayout& layout = detection.layout;
    const std::size_t commas = count(Says::comma) + count(Says::comma_grouped), points = count(Says::point) + count(Says::point_grouped);
    layout.decimal = answers.decimal.value_or(commas > points ? ',' : '.');
    if (layout.decimal == '.' && count(Says::point_grouped) > 0) layout.grouping = ',';
    if (layout.decimal == ',' && count(Says::comma_grouped) > 0) layout.grouping = '.';
    if (answers.grouping) layout.grouping = *answers.grouping;
    if (answers.decimal || commas > 0 || example.empty()) return;
    if (points > 0) {
        layout.grouping = ',';
        return;
    }
    layout.decimal = ','; // for the time being, so that the columns can be told
    detection.questions.push_back(
        {OpenQuestion::decimal_sign,
         say(phrase("trace", "`%1` can be read in two ways: the comma is the decimal sign, or it parts the thousands"), example),
         {"comma", "point"}});
}

std::vector<ColumnContent> contents_of(const LayoutRows& rows, const TraceLayout& layout) {
    std::vector<ColumnContent> contents(layout.columns.size());
    for (const auto& row : rows.data)
        for (std::size_t c = 0; c < contents.size(); ++c) {
            const std::string& cell = row[c];
            if (says_nothing(cell)) continue;
            ColumnContent& content = contents[c];
            ++content.filled;
            LogNumber number;
            DateParts date;
            ClockParts clock;
            std::string_view rest = cell;
            if (read_date_time(cell, date, clock)) {
                ++content.date_times;
                content.with_offset = content.with_offset || clock.offset_minutes.has_value();
            } else if (read_clock(cell, false, clock)) {
                ++content.clocks;
            } else if (read_date(rest, date) && rest.empty()) {
                ++content.dates;
            } else if (read_number(cell, layout.decimal, layout.grouping, number)) {
                const auto unit = number.suffix.empty() ? std::nullopt : unit_named(number.suffix);
                if (!number.suffix.empty() && !unit) continue;
                const auto value = value_of(number, LogUnit{});
                if (!value) continue;
                if (content.numbers++ == 0) content.first = *value;
                else if (*value < content.last) content.grows = false;
                content.last = *value;
                if (unit && !content.suffix) content.suffix = unit;
            }
        }
    return contents;
}

} // namespace ullage
