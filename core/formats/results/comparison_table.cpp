// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/comparison_table.h"

#include "formats/results/table_method.h"
#include "formats/text/quantity_title.h"
#include "model/tags.h"

#include <algorithm>
#include <functional>
#include <numeric>
#include <set>

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableColumn text_column(std::string key, std::string title) { return {std::move(key), std::move(title), {}, Content::text, 0}; }

TableColumn identifying(TableColumn column) {
    column.identifies = true;
    return column;
}

TableColumn figure_column(std::string key, std::string unit, Content content = Content::quantity) {
    std::string title = quantity_title(key);
    const int decimals = quantity_decimals(key);
    return {std::move(key), std::move(title), std::move(unit), content, decimals};
}

/// A warranty is a claim: a number without interval.
Quantity warranty_of(const Unit& unit) {
    return unit.warranty_years ? known("warranty_years", "a", *unit.warranty_years, std::nullopt, Kind::measured, "the maker's claim, not measured")
                               : not_known("warranty_years", "a", "the warranty is not stated");
}

Quantity under_key(Quantity quantity, std::string key) {
    quantity.key = std::move(key);
    return quantity;
}

/// One column and what stands in it for row i.
struct Column {
    TableColumn head;
    std::function<TableCell(std::size_t)> cell;
};

std::vector<Column> columns_of(const Comparison& comparison, const FairComparison& fair, const std::vector<Quantity>& ranks) {
    const auto& rows = comparison.rows;
    const auto text = [&](std::string key, std::string title, auto of) { return Column{text_column(std::move(key), std::move(title)), of}; };
    const auto name = [&](std::string key, std::string title, auto of) {
        return Column{identifying(text_column(std::move(key), std::move(title))), of};
    };
    const auto figure = [&](std::string key, std::string unit, auto of, Content content = Content::quantity) {
        return Column{figure_column(std::move(key), std::move(unit), content), of};
    };
    std::vector<Column> columns{name("unit", "unit", [&](std::size_t i) { return rows[i].unit.name; }),
                                name("maker", "maker", [&](std::size_t i) { return rows[i].unit.maker; }),
                                name("run", "run", [&](std::size_t i) { return rows[i].run_title; }),
                                figure(
                                    "rank", "1", [&](std::size_t i) { return ranks[i]; }, Content::number),
                                figure(
                                    "rated_wh", "Wh", [&](std::size_t i) { return rows[i].rated_wh; }, Content::number)};
    if (comparison.several_sources) columns.insert(columns.begin() + 2, name("logbook", "logbook", [&](std::size_t i) { return rows[i].source; }));
    if (fair.load) {
        columns.push_back(figure("deliverable_wh", "Wh", [&](std::size_t i) { return fair.rows[i].deliverable_wh; }));
        columns.push_back(figure("usable_fraction_at_load", "1",
                                 [&](std::size_t i) { return under_key(fair.rows[i].usable_fraction, "usable_fraction_at_load"); }));
        columns.push_back(figure("run_time_h", "h", [&](std::size_t i) { return fair.rows[i].run_time_h; }));
        columns.push_back(text("standing", "at this load", [&](std::size_t i) {
            const FairRow& row = fair.rows[i];
            return std::string(standing_text(row.standing)) + (row.standing == Standing::as_tested ? ": " + row.reason : std::string());
        }));
    }
    // Prices have no unit in common: each cell names its currency.
    for (Column& column : std::vector<Column>{
             figure("delivered_wh", "Wh", [&](std::size_t i) { return rows[i].delivered_wh; }),
             figure("usable_fraction", "1", [&](std::size_t i) { return rows[i].usable_fraction; }),
             figure("mean_load_w", "W", [&](std::size_t i) { return rows[i].mean_load_w; }),
             figure("duration_h", "h", [&](std::size_t i) { return rows[i].duration_h; }),
             figure("wh_per_gauge_point", "Wh/pt", [&](std::size_t i) { return rows[i].wh_per_gauge_point; }),
             figure("no_load_draw_w", "W", [&](std::size_t i) { return rows[i].no_load_draw_w; }),
             text("gauge_verdict", "gauge", [&](std::size_t i) { return rows[i].gauge_verdict; }),
             figure(
                 "price_per_rated_kwh", "", [&](std::size_t i) { return rows[i].price_per_rated_kwh; }, Content::number),
             figure("price_per_delivered_kwh", "", [&](std::size_t i) { return fair.rows[i].price_per_delivered_kwh; }),
             figure(
                 "paid_per_rated_kwh", "", [&](std::size_t i) { return rows[i].paid_per_rated_kwh; }, Content::number),
             figure("paid_per_delivered_kwh", "", [&](std::size_t i) { return fair.rows[i].paid_per_delivered_kwh; }),
             figure("wh_per_kg", "Wh/kg", [&](std::size_t i) { return fair.rows[i].wh_per_kg; }),
             figure("charge_time_h", "h", [&](std::size_t i) { return rows[i].charge_time_h; }),
             figure("round_trip_efficiency", "1", [&](std::size_t i) { return rows[i].round_trip_efficiency; }),
             figure("held_output_w", "W", [&](std::size_t i) { return rows[i].held_output_w; }),
             figure("held_peak_output_w", "W", [&](std::size_t i) { return rows[i].held_peak_output_w; }),
             figure("standby_draw_w", "W", [&](std::size_t i) { return rows[i].standby_draw_w; }),
             figure(
                 "warranty_years", "a", [&](std::size_t i) { return warranty_of(rows[i].unit); }, Content::number),
             text("meter", "meter", [&](std::size_t i) { return rows[i].meter_name.empty() ? std::string("not stated") : rows[i].meter_name; }),
             text("tags", "tags", [&](std::size_t i) { return tags_text(rows[i].unit.tags, "; "); })})
        columns.push_back(std::move(column));
    return columns;
}

std::string verdict_text(const PairVerdict& pair) {
    if (pair.difference.kind == Kind::not_known) return "not known";
    return pair.resolved ? "resolved" : "not resolved";
}

} // namespace

Table comparison_table(const Comparison& comparison) { return comparison_table(comparison, compare_at(comparison, std::nullopt)); }

Table comparison_table(const Comparison& comparison, const FairComparison& fair) {
    Table table;
    table.title = fair.load ? "Comparison of units at " + common_load_text(*fair.load) : std::string("Comparison of units as tested");
    const std::vector<Quantity> ranks = fair_ranks(comparison, fair);
    const std::vector<Column> columns = columns_of(comparison, fair, ranks);
    for (const Column& column : columns) table.columns.push_back(column.head);
    for (std::size_t i = 0; i < comparison.rows.size(); ++i) {
        auto& cells = table.rows.emplace_back();
        for (const Column& column : columns) cells.push_back(column.cell(i));
    }
    table.remarks = fair.remarks;
    table.remarks.insert(table.remarks.end(), comparison.remarks.begin(), comparison.remarks.end());
    for (const std::string& left_out : comparison.left_out) table.remarks.push_back("Left out: " + left_out);
    table.method = comparison_method();
    return table;
}

bool is_unused(const Table& table, std::size_t column) {
    const std::string& key = table.columns[column].key;
    constexpr std::string_view of_some[] = {"paid_per_rated_kwh", "paid_per_delivered_kwh", "charge_time_h",  "round_trip_efficiency",
                                            "held_output_w",      "held_peak_output_w",     "standby_draw_w", "tags"};
    if (!std::ranges::count(of_some, key)) return false;
    return std::ranges::none_of(table.rows, [column](const std::vector<TableCell>& row) {
        const auto* figure = std::get_if<Quantity>(&row[column]);
        return figure ? figure->kind != Kind::not_known : !std::get<std::string>(row[column]).empty();
    });
}

Table without_unused(const Table& table) {
    std::vector<std::string> keys;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        if (!is_unused(table, i)) keys.push_back(table.columns[i].key);
    return with_columns(table, keys).value();
}

Table pairs_table(const Comparison& comparison, const FairComparison& fair, PairFigure figure) {
    std::vector<std::size_t> rows(comparison.rows.size());
    std::iota(rows.begin(), rows.end(), std::size_t{0});
    return pairs_table(comparison, fair, rows, figure);
}

Table pairs_table(const Comparison& comparison, const FairComparison& fair, const std::vector<std::size_t>& rows, PairFigure figure) {
    Table table;
    const std::string what = figure == PairFigure::usable_fraction ? std::string() : " in " + quantity_title(pair_figure_key(figure));
    table.title = "Differences between units" + what + (fair.load ? " at " + common_load_text(*fair.load) : std::string(" as tested"));
    const auto pairs = compare_pairs(comparison, fair, rows, figure);
    const std::string unit = pairs.empty() ? std::string("1") : pairs.front().difference.unit;
    table.columns = {text_column("first", "first"),     text_column("second", "second"),          figure_column("difference", unit),
                     text_column("verdict", "verdict"), text_column("shared_meter", "one meter"), text_column("reason", "reason")};
    const std::vector<std::string> names = row_names(comparison);
    for (const PairVerdict& pair : pairs)
        table.rows.push_back({names[pair.first], names[pair.second], pair.difference, verdict_text(pair),
                              std::string(pair.shared_meter ? "yes" : "no"), pair.difference.reason});
    table.remarks.push_back("Resolved: the 95 % interval of the difference does not hold 0.");
    if (rows.size() < comparison.rows.size())
        table.remarks.push_back("Between " + std::to_string(rows.size()) + " of " + std::to_string(comparison.rows.size()) +
                                " rows: those with the largest usable fraction.");
    table.method = comparison_method();
    return table;
}

Result<Table> with_columns(const Table& table, const std::vector<std::string>& keys) {
    Table chosen = table;
    chosen.columns.clear();
    chosen.rows.assign(table.rows.size(), {});
    std::set<std::string> taken;
    for (const std::string& key : keys) {
        const auto found = std::ranges::find(table.columns, key, &TableColumn::key);
        if (found == table.columns.end()) {
            std::string known;
            for (const TableColumn& column : table.columns) known += (known.empty() ? "" : ", ") + column.key;
            return Error{Failure::bad_input, "there is no column \"" + key + "\"", "columns", "choose from " + known};
        }
        if (!taken.insert(key).second) return Error{Failure::bad_input, "the column \"" + key + "\" is named twice", "columns", "name it once"};
        chosen.columns.push_back(*found);
        const auto place = static_cast<std::size_t>(found - table.columns.begin());
        for (std::size_t row = 0; row < table.rows.size(); ++row) chosen.rows[row].push_back(table.rows[row][place]);
    }
    return chosen;
}

} // namespace ullage
