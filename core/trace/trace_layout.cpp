// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/trace_layout.h"

#include <charconv>
#include <utility>

namespace ullage {
namespace {

std::string number_text(int value) { return std::to_string(value); }

std::optional<int> number_from(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return value;
}

/// The value as one of an enumeration with `count` members.
template <class Enum>
std::optional<Enum> member_from(std::string_view text, int count) {
    const auto number = number_from(text);
    if (!number || *number < 0 || *number >= count) return std::nullopt;
    return static_cast<Enum>(*number);
}

void take_column(std::string_view text, LayoutAnswers& answers) {
    // ROLE:INDEX:UNIT
    const auto first = text.find(':');
    const auto second = text.find(':', first + 1);
    if (first == std::string_view::npos || second == std::string_view::npos) return;
    const auto role = role_from(text.substr(0, first));
    const auto index = number_from(text.substr(first + 1, second - first - 1));
    if (role && index && *index >= 0) answers.columns.push_back({*role, static_cast<std::size_t>(*index), std::string(text.substr(second + 1))});
}

void take_pair(std::string_view key, std::string_view value, LayoutAnswers& answers) {
    if (key == "column") take_column(value, answers);
    if (key == "order") answers.date_order = member_from<DateOrder>(value, 4);
    if (key == "time") answers.time_form = member_from<TimeForm>(value, 7);
    if (key == "encoding") answers.encoding = member_from<LogEncoding>(value, 4);
    const auto code = number_from(value);
    if (key == "decimal" && code) answers.decimal = static_cast<char>(*code);
    if (key == "grouping" && code) answers.grouping = static_cast<char>(*code);
    if (key == "delimiter" && code) answers.delimiter = static_cast<char>(*code);
}

} // namespace

std::optional<std::size_t> TraceLayout::column_of(ColumnRole role) const {
    for (std::size_t c = 0; c < columns.size(); ++c)
        if (columns[c].role == role) return c;
    return std::nullopt;
}

std::string answers_text(const LayoutAnswers& answers) {
    std::string text;
    const auto add = [&text](std::string_view key, const std::string& value) { text += (text.empty() ? "" : " ") + std::string(key) + "=" + value; };
    for (const LayoutAnswers::Column& column : answers.columns)
        add("column", std::string(role_text(column.role)) + ":" + number_text(static_cast<int>(column.index)) + ":" + column.unit);
    if (answers.date_order) add("order", number_text(static_cast<int>(*answers.date_order)));
    if (answers.time_form) add("time", number_text(static_cast<int>(*answers.time_form)));
    if (answers.encoding) add("encoding", number_text(static_cast<int>(*answers.encoding)));
    if (answers.decimal) add("decimal", number_text(*answers.decimal));
    if (answers.grouping) add("grouping", number_text(*answers.grouping));
    if (answers.delimiter) add("delimiter", number_text(*answers.delimiter));
    return text;
}

LayoutAnswers answers_from(std::string_view text) {
    LayoutAnswers answers;
    while (!text.empty()) {
        const auto blank = text.find(' ');
        const std::string_view pair = text.substr(0, blank);
        text.remove_prefix(blank == std::string_view::npos ? text.size() : blank + 1);
        const auto equals = pair.find('=');
        if (equals != std::string_view::npos) take_pair(pair.substr(0, equals), pair.substr(equals + 1), answers);
    }
    return answers;
}

LayoutAnswers answers_of(const TraceLayout& layout) {
    LayoutAnswers answers;
    for (std::size_t c = 0; c < layout.columns.size(); ++c)
        if (const LogColumn& column = layout.columns[c]; column.role == ColumnRole::unused) answers.columns.push_back({column.role, c, {}});
        else answers.columns.push_back({column.role, c, std::string(column.unit.name)});
    if (layout.date_order != DateOrder::unknown) answers.date_order = layout.date_order;
    answers.time_form = layout.time_form;
    answers.encoding = layout.encoding;
    answers.decimal = layout.decimal;
    if (layout.grouping != 0) answers.grouping = layout.grouping; // where there was none yet, there may be later
    answers.delimiter = layout.delimiter;
    return answers;
}

} // namespace ullage
