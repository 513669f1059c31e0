// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/load_list_table.h"

#include "sizing/load_totals.h"

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableColumn load_text_column(const char* key, const Phrase& title, bool identifies = false) {
    TableColumn column{key, say(title), {}, Content::text, 0};
    column.identifies = identifies;
    return column;
}

TableColumn load_figure_column(const char* key, const Phrase& title, const char* unit, int decimals) {
    return {key, say(title), unit, Content::number, decimals};
}

/// A figure that the tester gave, or a sum of such: no interval.
Quantity stated(const TableColumn& column, std::optional<double> value) {
    return value ? known(column.key, column.unit, *value, std::nullopt, Kind::measured, say(phrase("results", "stated in the load list")))
                 : not_known(column.key, column.unit, say(phrase("results", "not stated")));
}

Message yes_no(bool value) { return value ? say(phrase("results", "yes")) : say(phrase("results", "no")); }

std::vector<Message> words_of(const LoadTotals& totals) {
    if (!totals.mean_on_w) return {say(phrase("results", "It takes nothing yet."))};
    return {say(phrase("results", "At most %1 W: all %2 W running and the largest start-up extra."), say_number(totals.peak_w, 0),
                say_number(totals.running_w, 0)),
            say(totals.always_connected
                    ? phrase("results", "%1 W on average while the output is on, %2 h a day, since something is always connected.")
                    : phrase("results", "%1 W on average while the output is on, %2 h a day: the longest use by day and the longest by night."),
                say_number(*totals.mean_on_w, 1), say_number(totals.hours_on, 1))};
}

} // namespace

Table load_list_table(const LoadList& list) {
    const LoadTotals totals = load_totals(list);
    Table table;
    table.title = say(phrase("results", "Load list %1"), list.name);
    table.columns = {load_text_column("name", phrase("results", "appliance")),
                     load_figure_column("how_many", phrase("results", "how many"), "1", 0),
                     load_figure_column("power_w", phrase("results", "power while on"), "W", 0),
                     load_figure_column("mean_in_use_w", phrase("results", "mean in use"), "W", 1),
                     load_figure_column("hours_per_day", phrase("results", "hours per day"), "h", 1),
                     load_figure_column("night_hours", phrase("results", "of these at night"), "h", 1),
                     load_figure_column("start_peak_w", phrase("results", "highest at start"), "W", 0),
                     load_figure_column("daily_wh", phrase("results", "energy per day"), "Wh", 0),
                     load_figure_column("night_wh", phrase("results", "of this at night"), "Wh", 0),
                     load_text_column("always_connected", phrase("results", "always connected"))};
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
    sum.emplace_back(say(phrase("results", "together, over 24 h")));
    for (std::size_t column = 0; column < std::size(sums); ++column) sum.emplace_back(stated(table.columns[column + 1], sums[column]));
    sum.emplace_back(yes_no(totals.always_connected));
    table.remarks = words_of(totals);
    if (!list.remark.empty()) table.remarks.emplace_back(list.remark);
    return table;
}

Table load_lists_table(const std::vector<LoadList>& lists) {
    Table table;
    table.title = say(phrase("results", "Load lists"));
    table.columns = {load_text_column("list", phrase("results", "load list"), true),
                     load_figure_column("appliances", phrase("results", "appliances"), "1", 0),
                     load_figure_column("daily_wh", phrase("results", "energy per day"), "Wh", 0),
                     load_figure_column("mean_w", phrase("results", "mean over the day"), "W", 1),
                     load_figure_column("hours_on_h", phrase("results", "output on"), "h", 1),
                     load_figure_column("mean_on_w", phrase("results", "mean while on"), "W", 1),
                     load_figure_column("duty", phrase("results", "duty while on"), "1", 3),
                     load_figure_column("running_w", phrase("results", "all running"), "W", 0),
                     load_figure_column("peak_w", phrase("results", "at most"), "W", 0),
                     load_figure_column("day_share", phrase("results", "share by day"), "1", 3),
                     load_figure_column("night_share", phrase("results", "share at night"), "1", 3)};
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
    table.remarks = {
        say(phrase("results", "At most: all that runs and the largest start-up extra, one appliance starting while all others run.")),
        say(phrase("results", "Output on: the longest use by day and the longest by night, or 24 h where something is always connected."))};
    return table;
}

} // namespace ullage
