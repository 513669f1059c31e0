// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/load_list_table.h"

#include "base/number.h"
#include "sizing/load_totals.h"

#include <fmt/format.h>

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableColumn text_column(const char* key, const char* title, bool identifies = false) {
    TableColumn column{key, title, {}, Content::text, 0};
    column.identifies = identifies;
    return column;
}

TableColumn figure_column(const char* key, const char* title, const char* unit, int decimals) {
    return {key, title, unit, Content::number, decimals};
}

/// A figure that the tester gave, or a sum of such: no interval.
Quantity stated(const TableColumn& column, std::optional<double> value) {
    return value ? known(column.key, column.unit, *value, std::nullopt, Kind::measured, "stated in the load list")
                 : not_known(column.key, column.unit, "not stated");
}

std::string yes_no(bool value) { return value ? "yes" : "no"; }

std::vector<std::string> words_of(const LoadTotals& totals) {
    if (!totals.mean_on_w) return {"It takes nothing yet."};
    return {
        fmt::format("At most {} W: all {} W running and the largest start-up extra.", fixed_text(totals.peak_w, 0), fixed_text(totals.running_w, 0)),
        fmt::format("{} W on average while the output is on, {} h a day{}.", fixed_text(*totals.mean_on_w, 1), fixed_text(totals.hours_on, 1),
                    totals.always_connected ? ", since something is always connected" : ": the longest use by day and the longest by night")};
}

} // namespace

Table load_list_table(const LoadList& list) {
    const LoadTotals totals = load_totals(list);
    Table table;
    table.title = "Load list " + list.name;
    table.columns = {text_column("name", "appliance"),
                     figure_column("how_many", "how many", "1", 0),
                     figure_column("power_w", "power while on", "W", 0),
                     figure_column("mean_in_use_w", "mean in use", "W", 1),
                     figure_column("hours_per_day", "hours per day", "h", 1),
                     figure_column("night_hours", "of these at night", "h", 1),
                     figure_column("start_peak_w", "highest at start", "W", 0),
                     figure_column("daily_wh", "energy per day", "Wh", 0),
                     figure_column("night_wh", "of this at night", "Wh", 0),
                     text_column("always_connected", "always connected")};
    for (std::size_t i = 0; i < list.appliances.size(); ++i) {
        const Appliance& one = list.appliances[i];
        const std::optional<double> figures[] = {one.count,
                                                 one.power_w,
                                                 mean_in_use_w(one),
                                                 one.hours_per_day,
                                                 one.night_hours,
                                                 one.start_peak_w,
                                                 totals.appliances[i].daily_wh,
                                                 totals.appliances[i].night_wh};
        auto& row = table.rows.emplace_back();
        row.emplace_back(one.name);
        for (std::size_t column = 0; column < std::size(figures); ++column) row.emplace_back(stated(table.columns[column + 1], figures[column]));
        row.emplace_back(yes_no(one.always_connected));
    }
    int count = 0;
    for (const Appliance& one : list.appliances) count += one.count;
    const std::optional<double> sums[] = {count, totals.running_w, totals.mean_w, 24, {}, totals.peak_w, totals.daily_wh, totals.night_wh};
    auto& sum = table.rows.emplace_back();
    sum.emplace_back(std::string("together, over 24 h"));
    for (std::size_t column = 0; column < std::size(sums); ++column) sum.emplace_back(stated(table.columns[column + 1], sums[column]));
    sum.emplace_back(yes_no(totals.always_connected));
    table.remarks = words_of(totals);
    if (!list.remark.empty()) table.remarks.push_back(list.remark);
    return table;
}

Table load_lists_table(const std::vector<LoadList>& lists) {
    Table table;
    table.title = "Load lists";
    table.columns = {text_column("list", "load list", true),
                     figure_column("appliances", "appliances", "1", 0),
                     figure_column("daily_wh", "energy per day", "Wh", 0),
                     figure_column("mean_w", "mean over the day", "W", 1),
                     figure_column("hours_on_h", "output on", "h", 1),
                     figure_column("mean_on_w", "mean while on", "W", 1),
                     figure_column("duty", "duty while on", "1", 3),
                     figure_column("running_w", "all running", "W", 0),
                     figure_column("peak_w", "at most", "W", 0),
                     figure_column("day_share", "share by day", "1", 3),
                     figure_column("night_share", "share at night", "1", 3)};
    for (const LoadList& list : lists) {
        const LoadTotals totals = load_totals(list);
        int count = 0;
        for (const Appliance& one : list.appliances) count += one.count;
        const std::optional<double> day_share = totals.night_share ? std::optional(1 - *totals.night_share) : std::nullopt;
        const std::optional<double> figures[] = {count,       totals.daily_wh,  totals.mean_w, totals.hours_on, totals.mean_on_w,
                                                 totals.duty, totals.running_w, totals.peak_w, day_share,       totals.night_share};
        auto& row = table.rows.emplace_back();
        row.emplace_back(list.name);
        for (std::size_t column = 0; column < std::size(figures); ++column) row.emplace_back(stated(table.columns[column + 1], figures[column]));
    }
    table.remarks.push_back("At most: all that runs and the largest start-up extra, one appliance starting while all others run.");
    table.remarks.push_back("Output on: the longest use by day and the longest by night, or 24 h where something is always connected.");
    return table;
}

} // namespace ullage
