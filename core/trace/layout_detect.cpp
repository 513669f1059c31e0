// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/inside/layout_columns.h"
#include "trace/inside/layout_rows.h"
#include "trace/trace_layout.h"

#include <fmt/format.h>

#include <algorithm>
#include <sstream>

namespace ullage {
namespace {

constexpr std::size_t most_lines = 500;

std::vector<std::string> lines_of(std::string_view beginning, LogEncoding encoding) {
    std::istringstream in{std::string(beginning)};
    LogLines reader(in, encoding);
    std::vector<std::string> lines;
    std::string_view line;
    while (lines.size() < most_lines && reader.next(line)) lines.emplace_back(line);
    return lines;
}

std::string signature_of(const LayoutRows& rows, std::size_t columns) {
    if (rows.header.empty()) return fmt::format("no header, {} columns, delimiter {}", columns, static_cast<int>(rows.delimiter));
    return rows.header_line;
}

} // namespace

Result<TraceDetection> detect_layout(std::string_view beginning, const LayoutAnswers& given, const std::map<std::string, LayoutAnswers>& remembered) {
    TraceDetection detection;
    TraceLayout& layout = detection.layout;
    layout.encoding = given.encoding.value_or(detect_encoding(beginning));
    const Result<LayoutRows> found = find_rows(lines_of(beginning, layout.encoding), given.delimiter);
    if (!found) return found.error();
    const LayoutRows& rows = found.value();
    layout.delimiter = rows.delimiter;
    layout.first_data_line = rows.first_data_line;
    detection.preface = rows.preface;
    layout.columns.resize(rows.data.front().size());
    detection.signature = signature_of(rows, layout.columns.size());

    LayoutAnswers answers = given;
    if (const auto known = remembered.find(detection.signature); known != remembered.end()) {
        const LayoutAnswers& kept = known->second;
        if (answers.columns.empty()) answers.columns = kept.columns;
        if (!answers.date_order) answers.date_order = kept.date_order;
        if (!answers.time_form) answers.time_form = kept.time_form;
        if (!answers.decimal) answers.decimal = kept.decimal;
        detection.notes.push_back(say(phrase("trace", "read as the last log with this header")));
    }
    settle_numbers(rows, answers, detection);
    const std::vector<ColumnContent> contents = contents_of(rows, layout);
    if (auto named = settle_columns(rows, contents, answers, detection); !named) return named.error();
    settle_times(rows, contents, answers, detection);
    return detection;
}

} // namespace ullage
