// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/table_reading.h"

#include "base/number.h"

#include <fmt/format.h>

#include <charconv>

namespace ullage {

namespace {

std::string_view order_word(DateOrder order) {
    return order == DateOrder::month_first ? "month-first" : order == DateOrder::year_first ? "year-first" : "day-first";
}

} // namespace

std::string table_answers_text(const TableAnswers& answers) {
    std::string text;
    const auto add = [&text](std::string_view key, std::string_view value) { text += fmt::format("{}{}={}", text.empty() ? "" : " ", key, value); };
    for (const TableAnswers::Column& column : answers.columns)
        add("column", fmt::format("{}:{}{}{}", column.index + 1, table_role_text(column.role), column.unit.empty() ? "" : ":", column.unit));
    if (answers.date_order) add("dates", order_word(*answers.date_order));
    if (answers.decimal) add("decimal", *answers.decimal == ',' ? "comma" : "point");
    if (!answers.register_unit.empty()) add("register", answers.register_unit);
    if (!answers.elapsed_unit.empty()) add("elapsed", answers.elapsed_unit);
    if (answers.gauge_is_share) add("gauge", *answers.gauge_is_share ? "share" : "percent");
    if (answers.times_are_elapsed) add("times", *answers.times_are_elapsed ? "elapsed" : "clock");
    if (answers.gaps_part_runs) add("runs", *answers.gaps_part_runs ? "separate" : "one");
    return text;
}

TableAnswers table_answers_from(std::string_view text) {
    TableAnswers answers;
    while (!text.empty()) {
        const std::string_view word = text.substr(0, text.find(' '));
        text.remove_prefix(std::min(word.size() + 1, text.size()));
        const auto equals = word.find('=');
        if (equals == std::string_view::npos) continue;
        const std::string_view key = word.substr(0, equals), value = word.substr(equals + 1);
        if (key == "column") {
            std::size_t number = 0;
            const auto [at, error] = std::from_chars(value.data(), value.data() + value.size(), number);
            if (error != std::errc() || number == 0 || at == value.data() + value.size() || *at != ':') continue;
            const std::string_view rest(at + 1, static_cast<std::size_t>(value.data() + value.size() - at - 1));
            const std::string_view role = rest.substr(0, rest.find(':'));
            if (const auto known = table_role_from(role))
                answers.columns.push_back(
                    {number - 1, *known, role.size() < rest.size() ? std::string(rest.substr(role.size() + 1)) : std::string()});
        } else if (key == "dates") {
            answers.date_order = value == "month-first"  ? DateOrder::month_first
                                 : value == "year-first" ? DateOrder::year_first
                                                         : DateOrder::day_first;
        } else if (key == "decimal") {
            answers.decimal = value == "comma" ? ',' : '.';
        } else if (key == "register") {
            answers.register_unit = value;
        } else if (key == "elapsed") {
            answers.elapsed_unit = value;
        } else if (key == "gauge") {
            answers.gauge_is_share = value == "share";
        } else if (key == "times") {
            answers.times_are_elapsed = value == "elapsed";
        } else if (key == "runs") {
            answers.gaps_part_runs = value == "separate";
        }
    }
    return answers;
}

} // namespace ullage
