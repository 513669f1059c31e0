// SPDX-License-Identifier: GPL-3.0-or-later
// The report of a comparison.
#include "exchange/comparison_table.h"
#include "exchange/report_parts.h"
#include "exchange/safety_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

/// Columns that stand together in the first table; the rest follows in tables of as many.
constexpr std::string_view first_columns[] = {"run", "rated_wh", "delivered_wh", "usable_fraction", "mean_load_w", "duration_h"};

/// The comparison in tables that fit a page: each begins with the unit.
void add_comparison_tables(ReportBuilder& builder, const Comparison& comparison) {
    const Table whole = without_unused(comparison_table(comparison));
    std::vector<std::size_t> first, rest;
    std::size_t unit = 0;
    for (std::size_t c = 0; c < whole.columns.size(); ++c) {
        const std::string& key = whole.columns[c].key;
        if (key == "unit") unit = c;
        else if (std::ranges::find(first_columns, key) != std::end(first_columns)) first.push_back(c);
        else if (key != "maker") rest.push_back(c); // stands with the units
    }
    std::vector<std::vector<std::size_t>> parts{first};
    for (std::size_t from = 0; from < rest.size(); from += std::size(first_columns))
        parts.emplace_back(rest.begin() + static_cast<std::ptrdiff_t>(from),
                           rest.begin() + static_cast<std::ptrdiff_t>(std::min(rest.size(), from + std::size(first_columns))));
    for (std::size_t p = 0; p < parts.size(); ++p) {
        parts[p].insert(parts[p].begin(), unit);
        Table table;
        table.title = p == 0 ? whole.title : std::string();
        for (const std::size_t c : parts[p]) table.columns.push_back(whole.columns[c]);
        for (const auto& row : whole.rows) {
            auto& cells = table.rows.emplace_back();
            for (const std::size_t c : parts[p]) cells.push_back(cell_at(row, c));
        }
        if (p + 1 == parts.size()) table.remarks = whole.remarks;
        builder.table(table);
    }
}

void add_summary(ReportBuilder& builder, const Comparison& comparison) {
    builder.chapter("Summary");
    std::vector<const ComparisonRow*> rows;
    for (const ComparisonRow& row : comparison.rows) rows.push_back(&row);
    std::ranges::stable_sort(rows, [](const ComparisonRow* a, const ComparisonRow* b) {
        return a->usable_fraction.value.value_or(-1) > b->usable_fraction.value.value_or(-1);
    });
    ReportList list;
    for (const ComparisonRow* row : rows) {
        const std::string name = fmt::format("{} ({}): ", row->unit.name, row->run_title);
        const std::string energy = row->usable_fraction.kind == Kind::not_known
                                       ? "usable fraction not known: " + row->usable_fraction.reason
                                       : fmt::format("usable fraction {} ({}), delivered {} of {} rated", value_text(row->usable_fraction),
                                                     kind_text(row->usable_fraction.kind), value_text(row->delivered_wh), value_text(row->rated_wh));
        list.items.push_back(name + builder.form.apply(energy + "; gauge: " + row->gauge_verdict) + '.');
    }
    if (list.items.empty()) builder.paragraph("There is no drain to compare.");
    else builder.report.blocks.emplace_back(std::move(list));
    for (const std::string& remark : comparison.remarks) builder.paragraph(remark);
    builder.paragraph(safety_words().back());
    builder.picture(std::string(report_vessels_key),
                    "Units as vessels at one height scale: the height is the rated energy, filled what was delivered, hatched what the unit's own draw took where that is known.");
    builder.picture(std::string(report_bars_key), "Usable fraction with its 95 % interval, each at the load of its run.");
}

void add_unit(ReportBuilder& builder, const UnitAnalysis& unit) {
    builder.section(unit.unit.name);
    builder.paragraph(unit.fit.sentence);
    Table table;
    table.columns = {{"load_w", "load", "W", Content::number, 0},
                     {"deliverable_wh", "deliverable", "Wh", Content::quantity, 0},
                     {"usable_fraction", "usable fraction", {}, Content::quantity, 3},
                     {"run_time_h", "run time", "h", Content::quantity, 1},
                     {"basis", "tested loads", {}, Content::text, 0}};
    if (unit.fit.parameters)
        for (const LoadPrediction& prediction : unit.predictions)
            table.rows.push_back({known("load_w", "W", prediction.load_w, std::nullopt, Kind::measured), prediction.deliverable_wh,
                                  prediction.usable_fraction, prediction.run_time_h,
                                  std::string(prediction.within_tested_loads ? "between" : "beyond")});
    builder.table(table);
    builder.paragraph(unit.next_run_sentence, "Next run");
    builder.paragraph(unit.drift.sentence, "Drift");
}

std::vector<NamedQuantity> quantities_of(const std::vector<ReportedRun>& runs, const std::vector<UnitAnalysis>& units) {
    std::vector<NamedQuantity> quantities;
    for (const ReportedRun& run : runs)
        for (const Quantity& quantity : run.analysis->quantities) quantities.push_back({run_name(run), quantity});
    for (const UnitAnalysis& unit : units)
        for (const Quantity* quantity : {&unit.fit.no_load_draw_w, &unit.fit.deliverable_at_no_time_cost_wh, &unit.fit.no_load_endurance_h})
            quantities.push_back({unit.unit.name + ", all drains", *quantity});
    return quantities;
}

} // namespace

Report comparison_report(const Comparison& comparison, const std::vector<ReportedRun>& runs, const std::vector<UnitAnalysis>& units,
                         const ReportOptions& options) {
    ReportBuilder builder(runs, options);
    std::string names;
    for (const UnitAnalysis& unit : units) names += (names.empty() ? "" : ", ") + unit.unit.name;
    builder.report.title = "Comparison of storage units";
    builder.report.subtitle = names;

    add_summary(builder, comparison);
    builder.chapter("Comparison");
    add_comparison_tables(builder, comparison);
    add_measured_with(builder, runs);
    builder.chapter("What all drains of each unit say together");
    for (const UnitAnalysis& unit : units) add_unit(builder, unit);
    add_not_known(builder, quantities_of(runs, units));
    builder.chapter("Charts");
    for (const ReportedRun& run : runs) add_charts(builder, run);
    builder.chapter("Findings");
    for (const ReportedRun& run : runs) {
        builder.section(run_name(run));
        add_findings(builder, run);
        add_assumed_of_register(builder, run);
    }
    builder.chapter("Uncertainty budgets");
    for (const ReportedRun& run : runs) add_budget(builder, run);
    add_method(builder);
    builder.chapter("Readings");
    for (const ReportedRun& run : runs) add_readings(builder, run);
    add_amendments(builder, runs);
    add_cautions_and_about(builder);
    return std::move(builder.report);
}

} // namespace ullage
