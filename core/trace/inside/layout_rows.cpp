// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/inside/layout_rows.h"

#include <algorithm>
#include <cctype>
#include <map>

namespace ullage {
namespace {

constexpr std::string_view delimiters = "\t;|, ";

using Fields = std::vector<std::string>;

Fields fields_of(std::string_view line, char delimiter) {
    std::vector<std::string_view> views;
    std::vector<std::string> scratch;
    if (!split_fields(line, delimiter, views, scratch)) return {};
    return {views.begin(), views.end()};
}

std::size_t readable(const Fields& fields) { return static_cast<std::size_t>(std::ranges::count_if(fields, is_data_cell)); }

/// A row of data has a time or a value: half of its cells or more can be read and not all of them are empty.
bool is_data_row(const Fields& fields) {
    const auto filled = std::ranges::count_if(fields, [](const std::string& cell) { return !says_nothing(cell); });
    const auto read_and_filled = std::ranges::count_if(fields, [](const std::string& cell) { return !says_nothing(cell) && is_data_cell(cell); });
    return read_and_filled > 0 && 2 * read_and_filled >= filled;
}

struct Trial {
    char delimiter = 0;
    std::size_t usual = 0; ///< fields of the most rows of data
    double share = 0;      ///< of the cells that can be read
};

Trial try_delimiter(const std::vector<std::string>& lines, char delimiter) {
    Trial trial{delimiter, 0, 0};
    std::map<std::size_t, std::size_t> counts;
    std::size_t cells = 0, read = 0;
    for (const std::string& line : lines) {
        if (line.empty() || is_comment(line)) continue;
        const Fields fields = fields_of(line, delimiter);
        if (fields.empty()) continue;
        // Headers are read by no delimiter; a line that the delimiter does not split tells against it.
        if (fields.size() > 1 && readable(fields) == 0) continue;
        cells += fields.size();
        read += fields.size() > 1 ? readable(fields) : 0;
        if (fields.size() > 1 && is_data_row(fields)) ++counts[fields.size()];
    }
    std::size_t most = 0;
    for (const auto& [size, count] : counts)
        if (count > most) {
            most = count;
            trial.usual = size;
        }
    trial.share = cells == 0 || most == 0 ? 0 : static_cast<double>(read) / static_cast<double>(cells);
    return trial;
}

bool is_units_row(const Fields& fields) {
    std::size_t named = 0;
    for (std::string_view cell : fields) {
        while (!cell.empty() && (cell.front() == '(' || cell.front() == '[')) cell.remove_prefix(1);
        while (!cell.empty() && (cell.back() == ')' || cell.back() == ']')) cell.remove_suffix(1);
        if (cell.empty() || cell == "-") continue;
        if (!unit_named(cell)) return false;
        ++named;
    }
    return named > 0;
}

} // namespace

bool is_comment(std::string_view line) { return line.starts_with('#') || line.starts_with("//"); }

bool is_data_cell(std::string_view cell) {
    if (says_nothing(cell)) return true;
    LogNumber number;
    for (const char decimal : {'.', ','})
        for (const char grouping : {'\0', decimal == '.' ? ',' : '.'})
            if (read_number(cell, decimal, grouping, number) && (number.suffix.empty() || unit_named(number.suffix))) return true;
    DateParts date;
    ClockParts clock;
    if (read_date_time(cell, date, clock) || read_clock(cell, false, clock)) return true;
    return read_date(cell, date) && cell.empty();
}

Result<LayoutRows> find_rows(const std::vector<std::string>& lines, std::optional<char> delimiter) {
    const Error no_rows{Failure::bad_input,
                        say(phrase("trace", "no row of data was found: no line has a time and a value")),
                        {},
                        say(phrase("trace", "check that this is a log as text (CSV or the like), or name its delimiter"))};
    Trial best;
    for (const char candidate : delimiters) {
        if (delimiter && *delimiter != candidate) continue;
        const Trial trial = try_delimiter(lines, candidate);
        if (trial.usual > 1 && trial.share > best.share + 0.02) best = trial;
    }
    if (best.usual < 2) return no_rows;
    LayoutRows rows;
    rows.delimiter = best.delimiter;
    std::size_t first = 0;
    for (; first < lines.size(); ++first) {
        if (is_comment(lines[first])) continue;
        const Fields fields = fields_of(lines[first], best.delimiter);
        if (fields.size() == best.usual && is_data_row(fields)) break;
    }
    if (first == lines.size()) return no_rows;
    rows.first_data_line = static_cast<long>(first) + 1;
    std::size_t header = first;
    while (header > 0 && lines[header - 1].empty()) --header;
    if (header > 0) {
        std::string line = lines[header - 1];
        // Some logs mark their header as a comment.
        if (is_comment(line)) line.erase(0, line.find_first_not_of("#/ \t") == std::string::npos ? line.size() : line.find_first_not_of("#/ \t"));
        Fields fields = fields_of(line, best.delimiter);
        const bool fits = fields.size() == best.usual || (fields.size() + 1 == best.usual || fields.size() == best.usual + 1);
        if (fits && fields.size() > 1) {
            --header;
            if (is_units_row(fields) && header > 0) {
                Fields names = fields_of(lines[header - 1], best.delimiter);
                if (names.size() == fields.size()) {
                    rows.units_row = std::move(fields);
                    fields = std::move(names);
                    --header;
                }
            }
            rows.header_line = lines[header];
            rows.header = std::move(fields);
        }
    }
    for (std::size_t i = 0; i < (rows.header.empty() ? first : header); ++i)
        if (!lines[i].empty()) rows.preface.push_back(lines[i]);
    for (std::size_t i = first; i < lines.size(); ++i) {
        Fields fields = fields_of(lines[i], best.delimiter);
        if (fields.size() == best.usual) rows.data.push_back(std::move(fields));
    }
    return rows;
}

} // namespace ullage
