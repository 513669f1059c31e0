// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/table_reading_text.h"

#include "base/number.h"
#include "cli/text/command_parts.h"

#include <algorithm>

namespace ullage {

namespace {

constexpr std::size_t shown_left_rows = 20;

/// "register 0 to 930 Wh"; nothing where no reading has one.
Message span_of_values(const ForeignRun& run, std::optional<double> ReadingValues::*part, const Phrase& words) {
    std::optional<double> first, last;
    for (const ReadingValues& values : run.readings) {
        if (!(values.*part)) continue;
        if (!first) first = values.*part;
        last = values.*part;
    }
    return first ? say(words, say_digits(exact_text(*first)), say_digits(exact_text(*last))) : Message();
}

std::string read_as(const TableReading& reading, const std::string& form, const std::string& sheet) {
    std::vector<Message> parts{form};
    if (!sheet.empty()) parts.push_back(say(phrase("commands", "sheet %1"), sheet));
    if (reading.head_row > 0) parts.push_back(say(phrase("commands", "head in row %1"), say_number(reading.head_row)));
    return line_of(say(phrase("commands", "Read as: %1"), say_joined(parts, ", ")));
}

std::string column_line(std::size_t number, const TableReading::Column& column) {
    Message role = say_table_role(column.role);
    if (!column.unit.empty()) role = say(phrase("commands", "%1 in %2"), role, column.unit);
    if (!column.why.empty()) role = say(phrase("commands", "%1 (%2)"), role, column.why);
    return "  " + line_of(column.title.empty() ? say(phrase("commands", "column %1: %2"), say_number(number), role)
                                               : say(phrase("commands", "column %1 `%2`: %3"), say_number(number), column.title, role));
}

std::string run_line(std::size_t number, const ForeignRun& run, const std::string& zone) {
    std::vector<Message> parts{
        say(phrase("commands", "rows %1 to %2"), say_number(run.first_row), say_number(run.last_row)),
        say_count(run.readings.size(), phrases("commands", "%n readings", "%n reading")),
        say(phrase("commands", "%1 to %2"), format_iso8601(run.readings.front().time_ms, zone), format_iso8601(run.readings.back().time_ms, zone))};
    for (const Message& span : {span_of_values(run, &ReadingValues::gauge_percent, phrase("commands", "gauge %1 to %2 %")),
                                span_of_values(run, &ReadingValues::register_wh, phrase("commands", "register %1 to %2 Wh"))})
        if (!span.empty()) parts.push_back(span);
    if (run.cut_off) parts.push_back(say(phrase("commands", "cut-off noted")));
    const Message all = say_joined(parts, ", ");
    return line_of(run.title.empty() ? say(phrase("commands", "Run %1: %2"), say_number(number), all)
                                     : say(phrase("commands", "Run %1 `%2`: %3"), say_number(number), run.title, all));
}

} // namespace

std::string_view table_question_option(TableQuestion question) {
    switch (question) {
    case TableQuestion::columns: return "--map";
    case TableQuestion::date_order: return "--date-order";
    case TableQuestion::decimal_sign: return "--decimal";
    case TableQuestion::register_unit: return "--register-unit";
    case TableQuestion::elapsed_unit: return "--elapsed-unit";
    case TableQuestion::gauge_share: return "--gauge";
    case TableQuestion::clock_meaning: return "--times";
    case TableQuestion::year: return "--year";
    case TableQuestion::start: return "--start";
    case TableQuestion::runs: return "--runs";
    }
    return "";
}

std::string table_reading_text(const TableReading& reading, const std::string& form, const std::string& sheet, const std::string& zone) {
    std::string text = read_as(reading, form, sheet);
    for (std::size_t c = 0; c < reading.columns.size(); ++c) {
        const TableReading::Column& column = reading.columns[c];
        if (!column.title.empty() || column.role != TableRole::unused) text += column_line(c + 1, column);
    }
    for (const Message& note : reading.notes) text += line_of(say(phrase("commands", "Note: %1"), note));
    for (const OpenTableQuestion& question : reading.questions)
        text += line_of(question.choices.empty() ? say(phrase("commands", "Open: %1"), question.words)
                                                 : say(phrase("commands", "Open: %1 (%2?)"), question.words,
                                                       say_alternatives({question.choices.begin(), question.choices.end()})));
    for (std::size_t i = 0; i < std::min(shown_left_rows, reading.not_taken.size()); ++i) {
        const RowNotTaken& row = reading.not_taken[i];
        text += "  " + line_of(say(row.in_part ? phrase("commands", "row %1 taken in part: %2") : phrase("commands", "row %1 left out: %2"),
                                   say_number(row.row), row.reason));
    }
    if (reading.not_taken.size() > shown_left_rows)
        text += "  " + line_of(say_count(reading.not_taken.size() - shown_left_rows, phrases("commands", "and %n more rows", "and %n more rows")));
    for (std::size_t i = 0; i < reading.runs.size(); ++i)
        if (!reading.runs[i].readings.empty()) text += run_line(i + 1, reading.runs[i], zone);
    return text;
}

} // namespace ullage
