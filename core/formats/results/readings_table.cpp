// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/comparison_table.h"

#include "base/instant.h"
#include "base/number.h"
#include "formats/results/table_method.h"

#include <algorithm>
#include <cstddef>

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableColumn number_column(std::string key, const Phrase& title, std::string unit, int decimals) {
    TableColumn column{std::move(key), say(title), std::move(unit), Content::number, decimals};
    column.as_noted = true;
    return column;
}

/// A plain number; an empty text where there is none, as most readings note only some of the parts.
TableCell number_cell(const TableColumn& column, std::optional<double> value) {
    if (!value) return Message();
    return known(column.key, column.unit, *value, std::nullopt, Kind::measured);
}

TableColumn instant_column(std::string key, const Phrase& title) { return {std::move(key), say(title), {}, Content::text, 0, true, true}; }

/// ISO 8601 with seconds also where they are 0, as xsd:dateTimeStamp asks.
std::string instant_text(UtcMs time_ms, const std::string& zone) {
    constexpr std::size_t minutes_end = std::string_view("2027-05-14T18:00").size();
    std::string text = format_iso8601(time_ms, zone);
    if (text.size() > minutes_end && text[minutes_end] != ':') text.insert(minutes_end, ":00");
    return text;
}

Message title_of(const RunRecord& record, const RunAnalysis& analysis) {
    return say(phrase("results", "%1, %2"), record.unit.name, run_title(record, analysis.energy));
}

/// By reading, the first of `things` that belongs to it; nullptr for one without.
template <class Thing, class ReadingOf>
std::vector<const Thing*> by_reading(const std::vector<Thing>& things, std::size_t readings, ReadingOf reading_of) {
    std::vector<const Thing*> found(readings, nullptr);
    for (const Thing& thing : things) {
        const std::size_t reading = reading_of(thing);
        if (reading < readings && found[reading] == nullptr) found[reading] = &thing;
    }
    return found;
}

std::optional<double> load_since(const RegisterTrack& track, std::size_t point) {
    if (point == 0) return std::nullopt;
    const double hours = hours_between(track.points[point - 1].time_ms, track.points[point].time_ms);
    if (hours <= 0) return std::nullopt;
    return (track.points[point].delivered_wh - track.points[point - 1].delivered_wh) / hours;
}

TableCell gauge_error_cell(const GaugeErrorPoint* error) {
    if (error == nullptr) return Message();
    return Quantity{"gauge_error_pt", "pt", error->error_pt, error->lower_pt, error->upper_pt, Kind::measured, {}};
}

/// What only some runs note: it stands after everything that is of every run, and only where it was noted.
struct NotedToo {
    std::string_view key;
    Phrase title;
    std::string_view unit;
    std::optional<double> ReadingValues::*part;
    int decimals;
};
constexpr NotedToo all_noted_too[] = {{"second_register_wh", phrase("results", "second register"), "Wh", &ReadingValues::second_register_wh, 1},
                                      {"meter_w", phrase("results", "power on the meter"), "W", &ReadingValues::meter_w, 1},
                                      {"display_w", phrase("results", "power shown by the unit"), "W", &ReadingValues::display_w, 1}};
using Noted = std::vector<const NotedToo*>;

Noted noted_too(const std::vector<const RunRecord*>& records) {
    Noted noted;
    for (const NotedToo& each : all_noted_too)
        if (std::ranges::any_of(records, [&each](const RunRecord* record) {
                return std::ranges::any_of(record->readings,
                                           [&each](const Reading& reading) { return !reading.withdrawn && reading.values.*each.part; });
            }))
            noted.push_back(&each);
    return noted;
}

std::vector<TableColumn> readings_columns(const Noted& noted) {
    std::vector<TableColumn> columns{instant_column("time", phrase("results", "time")),
                                     number_column("gauge_percent", phrase("results", "gauge"), "%", 0),
                                     number_column("register_wh", phrase("results", "register"), "Wh", 1),
                                     number_column("delivered_wh", phrase("results", "delivered"), "Wh", 1),
                                     number_column("load_since_w", phrase("results", "load since"), "W", 1),
                                     {"gauge_error_pt", say(phrase("results", "gauge error")), "pt", Content::quantity, 1},
                                     {"mark", say(phrase("results", "mark")), {}, Content::text, 0},
                                     {"remark", say(phrase("results", "remark")), {}, Content::text, 0}};
    for (const NotedToo* each : noted) columns.push_back(number_column(std::string(each->key), each->title, std::string(each->unit), each->decimals));
    return columns;
}

std::vector<TableColumn> intervals_columns() {
    return {instant_column("from", phrase("results", "from")),
            instant_column("to", phrase("results", "to")),
            number_column("hours", phrase("results", "time"), "h", 2),
            number_column("gauge_drop_pt", phrase("results", "gauge drop"), "pt", 1),
            number_column("gauge_implied_wh", phrase("results", "gauge-implied"), "Wh", 1),
            number_column("delivered_wh", phrase("results", "delivered"), "Wh", 1),
            number_column("ratio", phrase("results", "delivered / gauge-implied"), "1", 3),
            number_column("mean_w", phrase("results", "mean load"), "W", 1),
            number_column("wh_per_point", phrase("results", "energy per point"), "Wh/pt", 2)};
}

bool each_reading(const Noted& noted, const TableRow& lead, const RunRecord& record, const RunAnalysis& analysis, const RowTaker& take) {
    const std::vector<TableColumn> columns = readings_columns(noted);
    const RegisterTrack& track = analysis.energy.track;
    const auto point_of = by_reading(track.points, record.readings.size(), [](const RegisterPoint& point) { return point.reading; });
    const auto error_of = by_reading(analysis.gauge.errors, record.readings.size(), [&](const GaugeErrorPoint& error) {
        return error.point < analysis.energy.points.size() ? analysis.energy.points[error.point].reading : record.readings.size();
    });
    TableRow row = lead;
    row.resize(lead.size() + columns.size());
    const auto cells = row.begin() + static_cast<std::ptrdiff_t>(lead.size());
    for (std::size_t r = 0; r < record.readings.size(); ++r) {
        if (record.readings[r].withdrawn) continue;
        const ReadingValues& values = record.readings[r].values;
        const RegisterPoint* point = point_of[r];
        cells[0] = Message(instant_text(values.time_ms, record.run.time_zone));
        cells[1] = number_cell(columns[1], values.gauge_percent);
        cells[2] = number_cell(columns[2], values.register_wh);
        cells[3] = number_cell(columns[3], point ? std::optional(point->delivered_wh) : std::nullopt);
        cells[4] = number_cell(columns[4], point ? load_since(track, static_cast<std::size_t>(point - track.points.data())) : std::nullopt);
        cells[5] = gauge_error_cell(error_of[r]);
        cells[6] = values.mark ? say_mark(*values.mark) : Message();
        cells[7] = Message(values.remark);
        for (std::size_t n = 0; n < noted.size(); ++n)
            cells[static_cast<std::ptrdiff_t>(8 + n)] = number_cell(columns[8 + n], values.*noted[n]->part);
        if (!take(row)) return false;
    }
    return true;
}

bool each_interval(const TableRow& lead, const RunRecord& record, const RunAnalysis& analysis, const RowTaker& take) {
    const std::vector<TableColumn> columns = intervals_columns();
    const auto& points = analysis.energy.points;
    TableRow row = lead;
    row.resize(lead.size() + columns.size());
    const auto cells = row.begin() + static_cast<std::ptrdiff_t>(lead.size());
    for (const IntervalRow& interval : analysis.energy.intervals) {
        if (interval.from >= points.size() || interval.to >= points.size()) continue;
        cells[0] = Message(instant_text(points[interval.from].time_ms, record.run.time_zone));
        cells[1] = Message(instant_text(points[interval.to].time_ms, record.run.time_zone));
        cells[2] = number_cell(columns[2], interval.hours);
        cells[3] = number_cell(columns[3], interval.gauge_drop_pt);
        cells[4] = number_cell(columns[4], interval.gauge_implied_wh);
        cells[5] = number_cell(columns[5], interval.delivered_wh);
        cells[6] = number_cell(columns[6], interval.ratio);
        cells[7] = number_cell(columns[7], interval.mean_w);
        cells[8] = number_cell(columns[8], interval.wh_per_point);
        if (!take(row)) return false;
    }
    return true;
}

/// Points of a log of the gauge: its steps, and what stands in for notes.
bool is_gauge_step(const EnergyAnalysis& energy, const GaugeErrorPoint& error) {
    return error.point < energy.points.size() && energy.points[error.point].reading == no_reading;
}

std::vector<TableColumn> gauge_steps_columns() {
    return {instant_column("time", phrase("results", "time")),
            number_column("gauge_percent", phrase("results", "gauge"), "%", 1),
            number_column("delivered_wh", phrase("results", "delivered"), "Wh", 1),
            {"gauge_error_pt", say(phrase("results", "gauge error")), "pt", Content::quantity, 1}};
}

bool each_gauge_step(const TableRow& lead, const RunRecord& record, const RunAnalysis& analysis, const RowTaker& take) {
    const std::vector<TableColumn> columns = gauge_steps_columns();
    TableRow row = lead;
    row.resize(lead.size() + columns.size());
    const auto cells = row.begin() + static_cast<std::ptrdiff_t>(lead.size());
    for (const GaugeErrorPoint& error : analysis.gauge.errors) {
        if (!is_gauge_step(analysis.energy, error)) continue;
        const PairedPoint& point = analysis.energy.points[error.point];
        cells[0] = Message(instant_text(point.time_ms, record.run.time_zone));
        cells[1] = number_cell(columns[1], point.gauge_percent);
        cells[2] = number_cell(columns[2], point.delivered_wh);
        cells[3] = gauge_error_cell(&error);
        if (!take(row)) return false;
    }
    return true;
}

std::size_t count_of_rows(RunTable which, const RunRecord& record, const RunAnalysis& analysis) {
    if (which == RunTable::readings) return static_cast<std::size_t>(std::ranges::count(record.readings, false, &Reading::withdrawn));
    if (which == RunTable::gauge_steps)
        return static_cast<std::size_t>(
            std::ranges::count_if(analysis.gauge.errors, [&](const GaugeErrorPoint& error) { return is_gauge_step(analysis.energy, error); }));
    const std::size_t points = analysis.energy.points.size();
    return static_cast<std::size_t>(std::ranges::count_if(
        analysis.energy.intervals, [points](const IntervalRow& interval) { return interval.from < points && interval.to < points; }));
}

bool each_row_of(RunTable which, const Noted& noted, const TableRow& lead, const RunRecord& record, const RunAnalysis& analysis,
                 const RowTaker& take) {
    switch (which) {
    case RunTable::readings: return each_reading(noted, lead, record, analysis, take);
    case RunTable::intervals: return each_interval(lead, record, analysis, take);
    case RunTable::gauge_steps: break;
    }
    return each_gauge_step(lead, record, analysis, take);
}

std::vector<Message> remarks_of(RunTable which, const RunAnalysis& analysis) {
    if (which == RunTable::intervals || analysis.gauge.errors.empty()) return {};
    return {say(phrase("results", "Gauge error against %1."), say_error_basis(analysis.gauge.basis))};
}

/// `of` is a run, or a count of runs.
Message title_for(RunTable which, const Message& of) {
    if (which == RunTable::gauge_steps) return say(phrase("results", "Gauge steps by the log of %1"), of);
    return which == RunTable::readings ? say(phrase("results", "Readings of %1"), of) : say(phrase("results", "Intervals of %1"), of);
}

StreamedTable bare_table(RunTable which, const Noted& noted) {
    StreamedTable table;
    table.columns = which == RunTable::readings    ? readings_columns(noted)
                    : which == RunTable::intervals ? intervals_columns()
                                                   : gauge_steps_columns();
    table.method = which == RunTable::readings ? readings_method() : which == RunTable::intervals ? intervals_method() : gauge_steps_method();
    return table;
}

} // namespace

StreamedTable table_of_run(RunTable which, const RunRecord& record, const RunAnalysis& analysis) {
    const Noted noted = noted_too({&record});
    StreamedTable table = bare_table(which, noted);
    table.title = title_for(which, title_of(record, analysis));
    table.remarks = remarks_of(which, analysis);
    table.row_count = count_of_rows(which, record, analysis);
    table.each_row = [which, noted, &record, &analysis](const RowTaker& take) { return each_row_of(which, noted, {}, record, analysis, take); };
    return table;
}

StreamedTable table_of_runs(RunTable which, const std::vector<const RunRecord*>& records, const std::vector<const RunAnalysis*>& analyses) {
    const Noted noted = noted_too(records);
    StreamedTable table = bare_table(which, noted);
    table.columns.insert(table.columns.begin(), {{"unit", say(phrase("results", "unit")), {}, Content::text, 0, true},
                                                 {"maker", say(phrase("results", "maker")), {}, Content::text, 0, true},
                                                 {"run", say(phrase("results", "run")), "1", Content::number, 0, true}});
    table.title = title_for(which, say_count(records.size(), phrases("results", "%n runs", "%n run")));
    for (std::size_t r = 0; r < records.size(); ++r) {
        const RunRecord& record = *records[r];
        table.row_count += count_of_rows(which, record, *analyses[r]);
        for (const Message& remark : remarks_of(which, *analyses[r]))
            table.remarks.push_back(say(phrase("results", "%1, run %2: %3"), record.unit.name, say_number(record.number), remark));
    }
    table.each_row = [which, noted, records, analyses](const RowTaker& take) {
        for (std::size_t r = 0; r < records.size(); ++r) {
            const RunRecord& record = *records[r];
            const TableRow lead{Message(record.unit.name), Message(record.unit.maker),
                                known("run", "1", record.number, std::nullopt, Kind::measured)};
            if (!each_row_of(which, noted, lead, record, *analyses[r], take)) return false;
        }
        return true;
    };
    return table;
}

Table readings_table(const RunRecord& record, const RunAnalysis& analysis) { return collected(table_of_run(RunTable::readings, record, analysis)); }

Table intervals_table(const RunRecord& record, const RunAnalysis& analysis) { return collected(table_of_run(RunTable::intervals, record, analysis)); }

} // namespace ullage
