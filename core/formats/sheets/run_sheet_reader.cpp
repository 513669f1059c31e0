// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "base/utf8.h"
#include "formats/sheets/inside/sheet_preface.h"
#include "formats/sheets/run_sheet.h"
#include "formats/text/csv.h"
#include "formats/text/sheet_keys.h"
#include "formats/text/spreadsheet_text.h"
#include "model/limits.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <limits>

namespace ullage {

namespace {

constexpr std::size_t sheet_column_count = std::size(sheet_column_names);
constexpr std::size_t no_column = std::numeric_limits<std::size_t>::max();
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

Error bad(const Message& what, const Message& where, const Message& remedy) { return Error{Failure::bad_input, what, where, remedy}; }

Message place_of_line(long line) { return say(phrase("sheets", "line %1"), say_number(line)); }

Message place_of_column(long line, std::size_t column) {
    return say(phrase("sheets", "line %1, column %2"), say_number(line), say_number(column + 1));
}

Message cell_place(long line, std::size_t column, std::string_view name) {
    return say(phrase("sheets", "line %1, column %2 (%3)"), say_number(line), say_number(column + 1), name);
}

/// Refuses what is no UTF-8 text at all.
Result<void> check_encoding(std::string_view text) {
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return bad(say(phrase("sheets", "the file is empty")), {}, say(phrase("sheets", "choose a run sheet")));
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF"))
        return bad(say(phrase("sheets", "the file is encoded in UTF-16")), {}, say(phrase("sheets", "save it as UTF-8")));
    if (text.find('\0') != std::string_view::npos)
        return bad(say(phrase("sheets", "the file is no text")), {}, say(phrase("sheets", "choose a run sheet, a text file of lines and commas")));
    if (const auto position = first_bad_utf8(text)) {
        const std::string_view before = text.substr(0, *position);
        const auto line_break = before.rfind('\n');
        const std::string_view in_line = before.substr(line_break == std::string_view::npos ? 0 : line_break + 1);
        const auto characters = std::ranges::count_if(in_line, [](char c) { return (c & 0xC0) != 0x80; });
        return bad(say(phrase("sheets", "a byte is no UTF-8 character")),
                   say(phrase("sheets", "line %1, character %2"), say_number(1 + std::ranges::count(before, '\n')), say_number(characters + 1)),
                   say(phrase("sheets", "save the file as UTF-8")));
    }
    return {};
}

/// Refuses a table with other separators; looked for ahead of the preface, whose lines they would spoil.
Result<void> check_separator(std::string_view text) {
    long line_number = 0;
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(line.size() + 1, text.size()));
        ++line_number;
        if (trimmed(line).starts_with('#') || line.starts_with("\"#")) continue;
        if (line.find_first_not_of(" \t\r,;") == std::string_view::npos) continue;
        const char separator = foreign_separator(line);
        if (separator == '\0' || lower_case(line).find("time") == std::string::npos) return {};
        return bad(separator == ';' ? say(phrase("sheets", "the fields are separated by semicolons"))
                                    : say(phrase("sheets", "the fields are separated by tabs")),
                   place_of_line(line_number), say(phrase("sheets", "save the sheet with commas between the fields")));
    }
    return {};
}

/// Reads the header row and the rows below it into the record of the preface.
class TableReader {
public:
    TableReader(std::string_view text, SheetPreface preface)
        : csv_(text.substr(preface.table_at), preface.table_line), preface_(std::move(preface)),
          lines_(static_cast<std::size_t>(std::ranges::count(text, '\n'))) {}

    Result<SheetImport> read() {
        if (Result<void> done = read_header(); !done) return done.error();
        // As many as there are lines, so that a long sheet is not copied while it grows.
        preface_.record.readings.reserve(std::min(lines_, most_readings));
        CsvRecord row;
        for (;;) {
            const Result<bool> more = csv_.next(row);
            if (!more) return more.error();
            if (!more.value()) break;
            if (Result<void> done = take_row(row); !done) return done.error();
        }
        RunRecord& record = preface_.record;
        if (record.readings.empty()) preface_.notices.push_back(say(phrase("sheets", "the sheet has no readings")));
        if (!std::ranges::is_sorted(record.readings, {}, [](const Reading& r) { return r.values.time_ms; }))
            preface_.notices.push_back(say(phrase("sheets", "the rows are not in order of time; they are put in order")));
        sort_by_time(record.readings);
        return SheetImport{std::move(record), std::move(preface_.notices)};
    }

private:
    Result<void> read_header() {
        const Message remedy = say(phrase("sheets", "add the row `%1`"), "time,gauge_percent,register_wh,meter_w,display_w,mark,remark");
        const Message where = place_of_line(preface_.table_line);
        const Result<bool> more = csv_.next(header_);
        if (!more) return more.error();
        if (!more.value()) return bad(say(phrase("sheets", "there is no header row")), where, remedy);
        for (std::size_t column = 0; column < header_.fields.size(); ++column)
            if (Result<void> done = take_column(column); !done) return done.error();
        if (column_of_[std::size_t(SheetColumn::time)] == no_column)
            return bad(say(phrase("sheets", "there is no column `time`")), place_of_line(header_.line), remedy);
        return {};
    }

    Result<void> take_column(std::size_t column) {
        const std::string name = lower_case(trimmed(header_.fields[column]));
        // Columns without a name come from spreadsheets that fill the rows up; their cells have to be empty.
        if (name.empty()) return {};
        const Message where = place_of_column(header_.line, column);
        const auto known = std::ranges::find(sheet_column_names, std::string_view(name));
        if (known == std::end(sheet_column_names))
            return bad(say(phrase("sheets", "column `%1` is not known"), trimmed(header_.fields[column])), where,
                       say(phrase("sheets", "remove it; the columns are %1"), fmt::format("{}", fmt::join(sheet_column_names, ", "))));
        std::size_t& place = column_of_[std::size_t(known - std::begin(sheet_column_names))];
        if (place != no_column)
            return bad(say(phrase("sheets", "column `%1` stands twice, first as column %2"), name, say_number(place + 1)), where,
                       say(phrase("sheets", "remove one of the two")));
        place = column;
        return {};
    }

    /// The field of a column in a row; empty when the sheet has no such column.
    std::string_view field(const CsvRecord& row, SheetColumn column) const {
        const std::size_t place = column_of_[std::size_t(column)];
        return place == no_column ? std::string_view() : row.fields[place];
    }

    static Error in_line(Error error, const CsvRecord& row) {
        error.where = place_of_line(row.line);
        return error;
    }

    Error at_cell(Error error, const CsvRecord& row, SheetColumn column) const {
        error.where = cell_place(row.line, column_of_[std::size_t(column)], sheet_column_names[std::size_t(column)]);
        return error;
    }

    Result<void> take_row(const CsvRecord& row) {
        if (row.fields.size() == 1 && trimmed(row.fields[0]).empty()) return {};
        if (row.fields.size() != header_.fields.size()) return wrong_length(row);
        if (std::ranges::all_of(row.fields, [](const std::string& text) { return trimmed(text).empty(); })) {
            preface_.notices.push_back(say(phrase("sheets", "line %1: the row is empty; left out"), say_number(row.line)));
            return {};
        }
        for (std::size_t column = 0; column < row.fields.size(); ++column)
            if (trimmed(header_.fields[column]).empty() && !trimmed(row.fields[column]).empty())
                return bad(say(phrase("sheets", "`%1` stands in a column without a name"), row.fields[column]), place_of_column(row.line, column),
                           say(phrase("sheets", "name the column or remove the text")));

        Reading reading;
        reading.sequence = long(preface_.record.readings.size()) + 1;
        if (preface_.record.readings.size() == most_readings)
            return in_line(
                check_count({}, phrases("formats", "there are %n readings", "there is %n reading"), most_readings + 1, most_readings).error(), row);
        Result<UtcMs> time = read_time(row);
        if (!time) return at_cell(time.error(), row, SheetColumn::time);
        reading.values.time_ms = time.value();
        if (Result<void> possible = check_moment({}, time.value()); !possible) return at_cell(possible.error(), row, SheetColumn::time);
        reading.values.remark = unguarded_text(field(row, SheetColumn::remark));
        if (Result<void> good = check_text({}, reading.values.remark, longest_remark); !good) return at_cell(good.error(), row, SheetColumn::remark);
        if (Result<void> done = read_values(row, reading.values); !done) return done;
        preface_.record.readings.push_back(std::move(reading));
        return {};
    }

    Result<void> wrong_length(const CsvRecord& row) const {
        const Message where = place_of_line(row.line);
        if (trimmed(row.fields[0]).starts_with('#'))
            return bad(say(phrase("sheets", "a line with `#` stands below the header row")), where,
                       say(phrase("sheets", "move it above the header row or remove it")));
        return bad(say(phrase("sheets", "the row has %1, the header row has %2"),
                       say_count(row.fields.size(), phrases("sheets", "%n fields", "%n field")), say_number(header_.fields.size())),
                   where, say(phrase("sheets", "add or remove commas; a remark with commas needs quotes around it")));
    }

    Result<void> read_values(const CsvRecord& row, ReadingValues& values) const {
        struct Cell {
            SheetColumn column;
            std::optional<double>& value;
            double highest;
        };
        const Cell cells[] = {{SheetColumn::gauge_percent, values.gauge_percent, 100},
                              {SheetColumn::register_wh, values.register_wh, register_range.highest},
                              {SheetColumn::second_register_wh, values.second_register_wh, register_range.highest},
                              {SheetColumn::meter_w, values.meter_w, read_power_range.highest},
                              {SheetColumn::display_w, values.display_w, read_power_range.highest}};
        for (const Cell& cell : cells) {
            const std::string_view text = trimmed(field(row, cell.column));
            if (text.empty()) continue;
            const Result<double> number = parse_number(text);
            if (!number) return at_cell(number.error(), row, cell.column);
            if (number.value() < 0 || number.value() > cell.highest)
                return at_cell(bad(say(phrase("sheets", "`%1` is out of range"), text), {},
                                   say(phrase("sheets", "give 0 to %1"), say_digits(exact_text(cell.highest)))),
                               row, cell.column);
            cell.value = number.value();
        }
        const std::string_view mark = trimmed(field(row, SheetColumn::mark));
        if (mark.empty()) return {};
        values.mark = mark_from(lower_case(mark));
        if (values.mark) return {};
        std::vector<std::string_view> known;
        for (MarkKind kind : all_mark_kinds) known.push_back(mark_text(kind));
        return at_cell(bad(say(phrase("sheets", "`%1` is no mark"), mark), {},
                           say(phrase("sheets", "use one of: %1"), fmt::format("{}", fmt::join(known, ", ")))),
                       row, SheetColumn::mark);
    }

    /// The row's moment. Where clocks are put back, a local time is the earlier of its two moments unless
    /// that lies before the row above.
    Result<UtcMs> read_time(const CsvRecord& row) {
        const std::string_view text = trimmed(field(row, SheetColumn::time));
        const std::string& zone = preface_.record.run.time_zone;
        if (text.empty())
            return bad(say(phrase("sheets", "the row has no time")), {}, say(phrase("sheets", "give date and time, like 2027-05-14T18:00")));
        const Result<UtcMs> earlier = parse_iso8601(text, zone, Doubled::earlier);
        if (!earlier || !is_local(text)) return earlier;
        if (!preface_.zone_given)
            return bad(say(phrase("sheets", "`%1` has no offset, and the sheet names no time zone"), text), {},
                       say(phrase("sheets", "add Z or an offset such as +02:00, or a line `# time_zone: NAME`")));
        const Result<UtcMs> later = parse_iso8601(text, zone, Doubled::later);
        if (!later || later.value() == earlier.value()) return later;
        const auto& readings = preface_.record.readings;
        const bool take_later = !readings.empty() && earlier.value() < readings.back().values.time_ms;
        const UtcMs taken = take_later ? later.value() : earlier.value();
        preface_.notices.push_back(
            say(take_later ? phrase("sheets", "line %1: %2 occurs twice in %3; by the order of the rows it is read as the later, %4")
                           : phrase("sheets", "line %1: %2 occurs twice in %3; by the order of the rows it is read as the earlier, %4"),
                say_number(row.line), text, zone, format_iso8601(taken, zone)));
        return taken;
    }

    /// True when a time that can be read has neither `Z` nor an offset after its date.
    static bool is_local(std::string_view text) {
        return text.find_first_of("Zz+-", std::string_view("2027-05-14T").size()) == std::string_view::npos;
    }

    CsvReader csv_;
    SheetPreface preface_;
    std::size_t lines_;
    CsvRecord header_;
    std::array<std::size_t, sheet_column_count> column_of_ = [] {
        std::array<std::size_t, sheet_column_count> columns;
        columns.fill(no_column);
        return columns;
    }();
};

/// Names the file in an error's place.
Error in_source(Error error, const std::string& source) { return source.empty() ? error : within(std::move(error), source); }

} // namespace

Result<SheetImport> read_run_sheet(std::string_view text, const std::string& source) {
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    if (Result<void> checked = check_encoding(text); !checked) return in_source(checked.error(), source);
    if (Result<void> checked = check_separator(text); !checked) return in_source(checked.error(), source);
    Result<SheetPreface> preface = read_sheet_preface(text);
    if (!preface) return in_source(preface.error(), source);
    Result<SheetImport> import = TableReader(text, std::move(preface).value()).read();
    if (!import) return in_source(import.error(), source);
    return import;
}

} // namespace ullage
