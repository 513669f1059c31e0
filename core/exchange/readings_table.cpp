// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/comparison_table.h"

#include "base/instant.h"
#include "exchange/table_method.h"

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableColumn number_column(std::string key, std::string title, std::string unit, int decimals) {
    return {std::move(key), std::move(title), std::move(unit), Content::number, decimals};
}

/// A plain number; an empty text where there is none, as most readings note only some of the parts.
TableCell number_cell(const TableColumn& column, std::optional<double> value) {
    if (!value) return std::string();
    return known(column.key, column.unit, *value, std::nullopt, Kind::measured);
}

TableColumn instant_column(std::string key, std::string title) {
    return {std::move(key), std::move(title), {}, Content::text, 0, true, true};
}

/// ISO 8601 with seconds also where they are 0, as xsd:dateTimeStamp asks.
std::string instant_text(UtcMs time_ms, const std::string& zone) {
    constexpr std::size_t minutes_end = std::string_view("2027-05-14T18:00").size();
    std::string text = format_iso8601(time_ms, zone);
    if (text.size() > minutes_end && text[minutes_end] != ':') text.insert(minutes_end, ":00");
    return text;
}

std::string title_of(const RunRecord& record, const RunAnalysis& analysis) {
    return record.unit.name + ", " + run_title(record, analysis.energy);
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
    if (error == nullptr) return std::string();
    return Quantity{"gauge_error_pt", "pt", error->error_pt, error->lower_pt, error->upper_pt, Kind::measured, {}};
}

} // namespace

Table readings_table(const RunRecord& record, const RunAnalysis& analysis) {
    Table table;
    table.title = "Readings of " + title_of(record, analysis);
    table.columns = {instant_column("time", "time"),
                     number_column("gauge_percent", "gauge", "%", 0),
                     number_column("register_wh", "register", "Wh", 1),
                     number_column("delivered_wh", "delivered", "Wh", 1),
                     number_column("load_since_w", "load since", "W", 1),
                     {"gauge_error_pt", "gauge error", "pt", Content::quantity, 1},
                     {"mark", "mark", {}, Content::text, 0},
                     {"remark", "remark", {}, Content::text, 0}};
    const RegisterTrack& track = analysis.energy.track;
    const auto point_of = by_reading(track.points, record.readings.size(), [](const RegisterPoint& point) { return point.reading; });
    const auto error_of = by_reading(analysis.gauge.errors, record.readings.size(), [&](const GaugeErrorPoint& error) {
        return error.point < analysis.energy.points.size() ? analysis.energy.points[error.point].reading : record.readings.size();
    });
    table.rows.reserve(record.readings.size());
    for (std::size_t r = 0; r < record.readings.size(); ++r) {
        if (record.readings[r].withdrawn) continue;
        const ReadingValues& values = record.readings[r].values;
        const RegisterPoint* point = point_of[r];
        table.rows.push_back({instant_text(values.time_ms, record.run.time_zone),
                              number_cell(table.columns[1], values.gauge_percent),
                              number_cell(table.columns[2], values.register_wh),
                              number_cell(table.columns[3], point ? std::optional(point->delivered_wh)
                                                                  : std::nullopt),
                              number_cell(table.columns[4], point ? load_since(track, static_cast<std::size_t>(point - track.points.data())) : std::nullopt),
                              gauge_error_cell(error_of[r]),
                              values.mark ? std::string(mark_text(*values.mark)) : std::string(),
                              values.remark});
    }
    if (!analysis.gauge.errors.empty())
        table.remarks.push_back("Gauge error against " + std::string(error_basis_text(analysis.gauge.basis)) + ".");
    table.method = readings_method();
    return table;
}

Table intervals_table(const RunRecord& record, const RunAnalysis& analysis) {
    Table table;
    table.title = "Intervals of " + title_of(record, analysis);
    table.columns = {instant_column("from", "from"),
                     instant_column("to", "to"),
                     number_column("hours", "time", "h", 2),
                     number_column("gauge_drop_pt", "gauge drop", "pt", 1),
                     number_column("gauge_implied_wh", "gauge-implied", "Wh", 1),
                     number_column("delivered_wh", "delivered", "Wh", 1),
                     number_column("ratio", "delivered / gauge-implied", "1", 3),
                     number_column("mean_w", "mean load", "W", 1),
                     number_column("wh_per_point", "energy per point", "Wh/pt", 2)};
    const auto& points = analysis.energy.points;
    for (const IntervalRow& row : analysis.energy.intervals) {
        if (row.from >= points.size() || row.to >= points.size()) continue;
        table.rows.push_back({instant_text(points[row.from].time_ms, record.run.time_zone),
                              instant_text(points[row.to].time_ms, record.run.time_zone),
                              number_cell(table.columns[2], row.hours), number_cell(table.columns[3], row.gauge_drop_pt),
                              number_cell(table.columns[4], row.gauge_implied_wh),
                              number_cell(table.columns[5], row.delivered_wh), number_cell(table.columns[6], row.ratio),
                              number_cell(table.columns[7], row.mean_w), number_cell(table.columns[8], row.wh_per_point)});
    }
    table.method = intervals_method();
    return table;
}

} // namespace ullage
