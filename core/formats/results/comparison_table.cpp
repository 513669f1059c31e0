// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/comparison_table.h"

#include "base/number.h"
#include "comparison/comparison_answer.h"
#include "comparison/specimens.h"
#include "formats/results/comparison_columns.h"
#include "formats/results/table_method.h"
#include "formats/text/quantity_title.h"
#include "model/tags.h"
#include "unit/advice.h"

#include <algorithm>
#include <iterator>
#include <numeric>
#include <set>
#include <string_view>
#include <variant>

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableColumn text_column(std::string_view key, const Phrase& title) { return {std::string(key), say(title), {}, Content::text, 0}; }

TableColumn figure_column(std::string_view key, std::string_view unit, Content content = Content::quantity) {
    return {std::string(key), quantity_title(key), std::string(unit), content, quantity_decimals(key)};
}

/// A warranty is a claim: a number without interval.
Quantity warranty_of(const Unit& unit) {
    return unit.warranty_years ? known("warranty_years", "a", *unit.warranty_years, std::nullopt, Kind::measured,
                                       say(phrase("results", "the maker's claim, not measured")))
                               : not_known("warranty_years", "a", say(phrase("results", "the warranty is not stated")));
}

Quantity under_key(Quantity quantity, std::string_view key) {
    quantity.key = key;
    return quantity;
}

/// What a row at one load rests on; a unit that is not there with its own load.
Message basis_words(const Comparison& comparison, const FairComparison& fair, std::size_t row) {
    const Message basis = based_on_text(comparison, fair, row);
    const std::optional<double>& load_w = comparison.rows[row].mean_load_w.value;
    if (!fair.load || fair.rows[row].standing != Standing::as_tested) return basis;
    return load_w ? say(phrase("results", "as tested at %1 W: %2"), say_number(*load_w, 0), basis) : say(phrase("results", "as tested: %1"), basis);
}

Message standing_words(const FairRow& row) {
    const Message standing = say_standing(row.standing);
    return row.standing == Standing::as_tested ? say(phrase("results", "%1: %2"), standing, without_advice(row.reason)) : standing;
}

/// All that a row of the table is made from.
struct RowSource {
    const ComparisonRow& tested;
    const FairRow& fair; ///< at the common load, where there is one
    const Quantity& rank;
    Message basis;
};

/// Which comparisons have a column.
enum class StandsIn { all, of_several_logbooks, at_one_load };

enum class ColumnUse {
    plain,
    identifies,    ///< see TableColumn
    may_be_unused, ///< of some units only: where no row has it the column may be left out
    own,           ///< the same, and the tester's own affair
};

/// What a column takes from a row: a figure of either part as it is, or what a function makes of them.
using CellSource = std::variant<Quantity ComparisonRow::*, Quantity FairRow::*, TableCell (*)(const RowSource& row)>;

/// How a column is called, what it holds, where it stands and what it takes. A figure is called and written as its quantity (quantity_title.h).
struct ComparisonColumn {
    std::string_view key;
    Phrase title; ///< of a text
    Content content;
    StandsIn stands_in;
    ColumnUse use;
    CellSource source;
};

constexpr ComparisonColumn all_columns[] = {
    {"unit", phrase("results", "unit"), Content::text, StandsIn::all, ColumnUse::identifies,
     [](const RowSource& row) -> TableCell { return Message(row.tested.unit.name); }},
    {"maker", phrase("results", "maker"), Content::text, StandsIn::all, ColumnUse::identifies,
     [](const RowSource& row) -> TableCell { return Message(row.tested.unit.maker); }},
    {"logbook", phrase("results", "logbook"), Content::text, StandsIn::of_several_logbooks, ColumnUse::identifies,
     [](const RowSource& row) -> TableCell { return Message(row.tested.source); }},
    {"run", phrase("results", "run"), Content::text, StandsIn::all, ColumnUse::identifies,
     [](const RowSource& row) -> TableCell { return Message(row.tested.run_title); }},
    {"rank", {}, Content::number, StandsIn::all, ColumnUse::plain, [](const RowSource& row) -> TableCell { return row.rank; }},
    {"rated_wh", {}, Content::number, StandsIn::all, ColumnUse::plain, &ComparisonRow::rated_wh},
    {"deliverable_wh", {}, Content::quantity, StandsIn::at_one_load, ColumnUse::plain, &FairRow::deliverable_wh},
    {"usable_fraction_at_load",
     {},
     Content::quantity,
     StandsIn::at_one_load,
     ColumnUse::plain,
     [](const RowSource& row) -> TableCell { return under_key(row.fair.usable_fraction, "usable_fraction_at_load"); }},
    {"run_time_h", {}, Content::quantity, StandsIn::at_one_load, ColumnUse::plain, &FairRow::run_time_h},
    {"based_on", phrase("results", "based on"), Content::text, StandsIn::at_one_load, ColumnUse::plain,
     [](const RowSource& row) -> TableCell { return row.basis; }},
    {"standing", phrase("results", "basis"), Content::text, StandsIn::at_one_load, ColumnUse::plain,
     [](const RowSource& row) -> TableCell { return standing_words(row.fair); }},
    {"delivered_wh", {}, Content::quantity, StandsIn::all, ColumnUse::plain, &ComparisonRow::delivered_wh},
    {"usable_fraction", {}, Content::quantity, StandsIn::all, ColumnUse::plain, &ComparisonRow::usable_fraction},
    {"repeats", {}, Content::number, StandsIn::all, ColumnUse::plain, &ComparisonRow::repeats},
    {"scatter_percent", {}, Content::number, StandsIn::all, ColumnUse::may_be_unused, &ComparisonRow::scatter_percent},
    {"mean_load_w", {}, Content::quantity, StandsIn::all, ColumnUse::plain, &ComparisonRow::mean_load_w},
    {"duration_h", {}, Content::quantity, StandsIn::all, ColumnUse::plain, &ComparisonRow::duration_h},
    {"wh_per_gauge_point", {}, Content::quantity, StandsIn::all, ColumnUse::plain, &ComparisonRow::wh_per_gauge_point},
    {"no_load_draw_w", {}, Content::quantity, StandsIn::all, ColumnUse::plain, &ComparisonRow::no_load_draw_w},
    {"gauge_verdict", phrase("results", "gauge"), Content::text, StandsIn::all, ColumnUse::plain,
     [](const RowSource& row) -> TableCell { return Message(row.tested.gauge_verdict); }},
    {"price_per_rated_kwh", {}, Content::number, StandsIn::all, ColumnUse::plain, &ComparisonRow::price_per_rated_kwh},
    {"price_per_delivered_kwh", {}, Content::quantity, StandsIn::all, ColumnUse::plain, &FairRow::price_per_delivered_kwh},
    {"paid_per_rated_kwh", {}, Content::number, StandsIn::all, ColumnUse::own, &ComparisonRow::paid_per_rated_kwh},
    {"paid_per_delivered_kwh", {}, Content::quantity, StandsIn::all, ColumnUse::own, &FairRow::paid_per_delivered_kwh},
    {"wh_per_kg", {}, Content::quantity, StandsIn::all, ColumnUse::plain, &FairRow::wh_per_kg},
    {"charge_time_h", {}, Content::quantity, StandsIn::all, ColumnUse::may_be_unused, &ComparisonRow::charge_time_h},
    {"round_trip_efficiency", {}, Content::quantity, StandsIn::all, ColumnUse::may_be_unused, &ComparisonRow::round_trip_efficiency},
    {"held_output_w", {}, Content::quantity, StandsIn::all, ColumnUse::may_be_unused, &ComparisonRow::held_output_w},
    {"held_peak_output_w", {}, Content::quantity, StandsIn::all, ColumnUse::may_be_unused, &ComparisonRow::held_peak_output_w},
    {"standby_draw_w", {}, Content::quantity, StandsIn::all, ColumnUse::may_be_unused, &ComparisonRow::standby_draw_w},
    {"warranty_years",
     {},
     Content::number,
     StandsIn::all,
     ColumnUse::plain,
     [](const RowSource& row) -> TableCell { return warranty_of(row.tested.unit); }},
    {"meter", phrase("results", "meter"), Content::text, StandsIn::all, ColumnUse::plain,
     [](const RowSource& row) -> TableCell {
         return row.tested.meter_name.empty() ? say(phrase("results", "not stated")) : Message(row.tested.meter_name);
     }},
    {"tags", phrase("results", "tags"), Content::text, StandsIn::all, ColumnUse::own,
     [](const RowSource& row) -> TableCell { return Message(tags_text(row.tested.unit.tags, "; ")); }},
};

TableCell cell_of(const ComparisonColumn& column, const RowSource& row) {
    if (const auto* tested = std::get_if<Quantity ComparisonRow::*>(&column.source)) return row.tested.*(*tested);
    if (const auto* fair = std::get_if<Quantity FairRow::*>(&column.source)) return row.fair.*(*fair);
    return std::get<TableCell (*)(const RowSource&)>(column.source)(row);
}

/// What a table tells goes out: advice to the tester stays home.
TableCell for_readers(TableCell cell) {
    if (auto* figure = std::get_if<Quantity>(&cell)) figure->reason = without_advice(figure->reason);
    return cell;
}

TableColumn head_of(const ComparisonColumn& column) {
    if (column.content != Content::text) return figure_column(column.key, quantity_unit(column.key), column.content);
    TableColumn head = text_column(column.key, column.title);
    head.identifies = column.use == ColumnUse::identifies;
    return head;
}

std::vector<const ComparisonColumn*> columns_of(const Comparison& comparison, const FairComparison& fair) {
    std::vector<const ComparisonColumn*> columns;
    for (const ComparisonColumn& column : all_columns) {
        if (column.stands_in == StandsIn::of_several_logbooks && !comparison.several_sources) continue;
        if (column.stands_in == StandsIn::at_one_load && !fair.load) continue;
        columns.push_back(&column);
    }
    return columns;
}

Message pairs_title(const FairComparison& fair, PairFigure figure) {
    const bool of_fraction = figure == PairFigure::usable_fraction;
    if (fair.load && of_fraction) return say(phrase("results", "Differences between units at %1"), say_common_load(*fair.load));
    if (of_fraction) return say(phrase("results", "Differences between units as tested"));
    const Message what = quantity_title(pair_figure_key(figure));
    return fair.load ? say(phrase("results", "Differences between units in %1 at %2"), what, say_common_load(*fair.load))
                     : say(phrase("results", "Differences between units in %1 as tested"), what);
}

/// All units of a comparison go by the same.
MeasureOptions options_of(const Comparison& comparison) { return comparison.fits.empty() ? MeasureOptions() : comparison.fits.front().options; }

} // namespace

Table comparison_table(const Comparison& comparison) { return comparison_table(comparison, compare_at(comparison, std::nullopt)); }

Table comparison_table(const Comparison& comparison, const FairComparison& unranked) {
    FairComparison fair = unranked;
    put_ranks(comparison, fair); // both the column and the answer ask for them
    Table table;
    table.title = fair.load ? say(phrase("results", "Comparison of units at %1"), say_common_load(*fair.load))
                            : say(phrase("results", "Comparison of units as tested"));
    const auto columns = columns_of(comparison, fair);
    for (const ComparisonColumn* column : columns) table.columns.push_back(head_of(*column));
    table.rows.reserve(comparison.rows.size());
    for (std::size_t i = 0; i < comparison.rows.size(); ++i) {
        const RowSource row{comparison.rows[i], fair.rows[i], *fair.rows[i].rank, basis_words(comparison, fair, i)};
        auto& cells = table.rows.emplace_back();
        cells.reserve(columns.size());
        for (const ComparisonColumn* column : columns) cells.push_back(for_readers(cell_of(*column, row)));
    }
    const ComparisonAnswer answer = comparison_answer(comparison, fair);
    if (!answer.order.empty()) table.answer.push_back(answer.order);
    table.answer.insert(table.answer.end(), answer.units.begin(), answer.units.end());
    for (const Message& remark : fair.remarks) table.remarks.push_back(without_advice(remark));
    table.remarks.insert(table.remarks.end(), comparison.remarks.begin(), comparison.remarks.end());
    for (const ModelSample& sample : model_samples(comparison, fair))
        if (sample.specimens > 1) table.remarks.push_back(sample.sentence);
    for (const Message& left_out : comparison.left_out) table.remarks.push_back(say(phrase("results", "Left out: %1"), left_out));
    table.method = comparison_method(options_of(comparison));
    return table;
}

std::vector<ColumnName> comparison_columns() {
    std::vector<ColumnName> names;
    for (const ComparisonColumn& column : all_columns) {
        const TableColumn head = head_of(column);
        names.push_back({head.key, head.title, column.use == ColumnUse::own});
    }
    return names;
}

bool is_unused(const Table& table, std::size_t column) {
    const auto* const known = std::ranges::find(all_columns, std::string_view(table.columns[column].key), &ComparisonColumn::key);
    if (known == std::end(all_columns) || (known->use != ColumnUse::may_be_unused && known->use != ColumnUse::own)) return false;
    return std::ranges::none_of(table.rows, [column](const std::vector<TableCell>& row) {
        const auto* figure = std::get_if<Quantity>(&row[column]);
        return figure ? figure->kind != Kind::not_known : !std::get<Message>(row[column]).empty();
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
    table.title = pairs_title(fair, figure);
    const auto pairs = compare_pairs(comparison, fair, rows, figure);
    const std::string unit = pairs.empty() ? std::string("1") : pairs.front().difference.unit;
    table.columns = {text_column("first", phrase("results", "first")),
                     text_column("second", phrase("results", "second")),
                     figure_column("difference", unit),
                     text_column("verdict", phrase("results", "verdict")),
                     text_column("shared_meter", phrase("results", "one meter")),
                     text_column("reason", phrase("results", "reason"))};
    const auto names = row_names(comparison);
    for (const PairVerdict& pair : pairs)
        table.rows.push_back({Message(names[pair.first]), Message(names[pair.second]), pair.difference, say_pair_verdict(pair),
                              pair.shared_meter ? say(phrase("results", "yes")) : say(phrase("results", "no")), pair.difference.reason});
    table.remarks.push_back(say(phrase("results", "Resolved: the 95 % interval of the difference does not hold 0.")));
    if (rows.size() < comparison.rows.size())
        table.remarks.push_back(say(phrase("results", "Between %1 of %2 rows: those with the largest usable fraction."), say_number(rows.size()),
                                    say_number(comparison.rows.size())));
    table.method = comparison_method(options_of(comparison));
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
            std::vector<Message> known;
            for (const TableColumn& column : table.columns) known.emplace_back(column.key);
            return Error{Failure::bad_input, say(phrase("results", "there is no column \"%1\""), key), say(phrase("results", "columns")),
                         say(phrase("results", "choose from %1"), say_joined(known, ", "))};
        }
        if (!taken.insert(key).second)
            return Error{Failure::bad_input, say(phrase("results", "the column \"%1\" is named twice"), key), say(phrase("results", "columns")),
                         say(phrase("results", "name it once"))};
        chosen.columns.push_back(*found);
        const auto place = static_cast<std::size_t>(found - table.columns.begin());
        for (std::size_t row = 0; row < table.rows.size(); ++row) chosen.rows[row].push_back(table.rows[row][place]);
    }
    return chosen;
}

} // namespace ullage
