// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/table_reading_text.h"

#include "base/number.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

constexpr std::size_t shown_left_rows = 20;

/// "register 0 to 930 Wh"; nothing where no reading has one.
std::string span_of_values(const ForeignRun& run, std::optional<double> ReadingValues::*part, std::string_view name, std::string_view unit) {
    std::optional<double> first, last;
    for (const ReadingValues& values : run.readings) {
        if (!(values.*part)) continue;
        if (!first) first = values.*part;
        last = values.*part;
    }
    return first ? fmt::format(", {} {} to {} {}", name, exact_text(*first), exact_text(*last), unit) : std::string();
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
    std::string text = one_line(fmt::format("Read as: {}{}{}", form, sheet.empty() ? "" : ", sheet " + sheet,
                                            reading.head_row > 0 ? fmt::format(", head in row {}", reading.head_row) : "")) +
                       '\n';
    for (std::size_t c = 0; c < reading.columns.size(); ++c) {
        const TableReading::Column& column = reading.columns[c];
        if (column.title.empty() && column.role == TableRole::unused) continue;
        text +=
            one_line(fmt::format("  column {}{}: {}{}{}", c + 1, column.title.empty() ? "" : " `" + column.title + "`", table_role_text(column.role),
                                 column.unit.empty() ? "" : " in " + column.unit, column.why.empty() ? "" : " (" + column.why.text() + ")")) +
            '\n';
    }
    for (const Message& note : reading.notes) text += one_line("Note: " + note.text()) + '\n';
    for (const OpenTableQuestion& question : reading.questions)
        text += one_line(fmt::format("Open: {}{}", question.words.text(),
                                     question.choices.empty() ? "" : fmt::format(" ({}?)", fmt::join(question.choices, " or ")))) +
                '\n';
    for (std::size_t i = 0; i < std::min(shown_left_rows, reading.not_taken.size()); ++i) {
        const RowNotTaken& row = reading.not_taken[i];
        text += one_line(fmt::format("  row {} {}: {}", row.row, row.in_part ? "taken in part" : "left out", row.reason.text())) + '\n';
    }
    if (reading.not_taken.size() > shown_left_rows) text += fmt::format("  and {} more rows\n", reading.not_taken.size() - shown_left_rows);
    for (std::size_t i = 0; i < reading.runs.size(); ++i) {
        const ForeignRun& run = reading.runs[i];
        if (run.readings.empty()) continue;
        text += one_line(fmt::format("Run {}{}: rows {} to {}, {}, {} to {}{}{}{}", i + 1, run.title.empty() ? "" : " `" + run.title + "`",
                                     run.first_row, run.last_row, count_text(static_cast<long>(run.readings.size()), "reading", "readings"),
                                     format_iso8601(run.readings.front().time_ms, zone), format_iso8601(run.readings.back().time_ms, zone),
                                     span_of_values(run, &ReadingValues::gauge_percent, "gauge", "%"),
                                     span_of_values(run, &ReadingValues::register_wh, "register", "Wh"), run.cut_off ? ", cut-off noted" : "")) +
                '\n';
    }
    return text;
}

} // namespace ullage
