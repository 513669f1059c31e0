// SPDX-License-Identifier: GPL-3.0-or-later
// The report of a comparison.
#include "formats/report/inside/report_parts.h"
#include "formats/results/comparison_table.h"
#include "formats/results/unit_tables.h"
#include "formats/text/safety_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

using Keys = std::vector<std::string_view>;

constexpr std::size_t most_columns = 6; ///< beside the unit, that fit a page

/// Columns that stand together in a table, by key; the rest follows in tables of most_columns.
std::vector<Keys> leading_tables(const FairComparison& fair) {
    const Keys tested{"run", "rated_wh", "delivered_wh", "usable_fraction", "mean_load_w", "duration_h"};
    if (!fair.load) return {tested};
    return {{"rated_wh", "deliverable_wh", "usable_fraction_at_load", "run_time_h", "standing"},
            {"run", "delivered_wh", "usable_fraction", "mean_load_w", "duration_h"}};
}

/// The comparison in tables that fit a page: each begins with what tells the rows apart.
void add_comparison_tables(ReportBuilder& builder, const Comparison& comparison, const FairComparison& fair) {
    Table whole = without_unused(comparison_table(comparison, fair));
    const std::vector<std::string> names = row_names(comparison);
    const auto place_of = [&whole](std::string_view key) {
        return static_cast<std::size_t>(std::ranges::find(whole.columns, key, &TableColumn::key) - whole.columns.begin());
    };
    const std::size_t unit = place_of("unit");
    for (std::size_t r = 0; r < whole.rows.size(); ++r) whole.rows[r][unit] = names[r];
    std::vector<std::vector<std::size_t>> parts;
    std::vector<bool> taken(whole.columns.size(), false);
    for (const std::string_view apart : {"unit", "maker"}) // the maker stands with the units
        if (place_of(apart) < taken.size()) taken[place_of(apart)] = true;
    const std::vector<Keys> leading = leading_tables(fair);
    for (const Keys& keys : leading) {
        auto& part = parts.emplace_back();
        for (const std::string_view key : keys) {
            if (place_of(key) == taken.size()) continue; // empty in every row
            part.push_back(place_of(key));
            taken[part.back()] = true;
        }
    }
    bool full = true;
    for (std::size_t c = 0; c < whole.columns.size(); ++c) {
        if (taken[c]) continue;
        if (full) parts.emplace_back();
        parts.back().push_back(c);
        full = parts.back().size() == most_columns;
    }
    for (std::size_t p = 0; p < parts.size(); ++p) {
        parts[p].insert(parts[p].begin(), unit);
        Table table;
        if (p == 0) table.title = whole.title;
        else if (p < leading.size()) table.title = "The same as tested";
        for (const std::size_t c : parts[p]) table.columns.push_back(whole.columns[c]);
        for (const auto& row : whole.rows) {
            auto& cells = table.rows.emplace_back();
            for (const std::size_t c : parts[p]) cells.push_back(cell_at(row, c));
        }
        if (p + 1 == parts.size()) table.remarks = whole.remarks;
        builder.table(table);
    }
}

/// "at 120 W" or "as tested".
std::string where_text(const FairComparison& fair) { return fair.load ? "at " + common_load_text(*fair.load) : std::string("as tested"); }

std::string energy_text(const ComparisonRow& row, const FairRow& at, const FairComparison& fair) {
    const bool tested = at.standing == Standing::as_tested;
    const std::string apart = fair.load && tested ? "shown as tested, not moved to that load: " : "";
    if (at.usable_fraction.kind == Kind::not_known) return apart + "usable fraction not known: " + at.usable_fraction.reason;
    return apart + fmt::format("usable fraction {} ({}), {} {} of {} rated", value_text(at.usable_fraction),
                               tested ? kind_text(at.usable_fraction.kind) : standing_text(at.standing), tested ? "delivered" : "deliverable",
                               value_text(at.deliverable_wh), value_text(row.rated_wh));
}

void add_summary(ReportBuilder& builder, const Comparison& comparison, const FairComparison& fair, const ReportedPairs& pairs) {
    builder.chapter("Summary");
    ReportList list;
    for (const std::size_t r : fair_order(fair)) {
        const ComparisonRow& row = comparison.rows[r];
        const std::string name = fmt::format("{} ({}): ", row.unit.name, row.run_title);
        list.items.push_back(name + builder.form.apply(energy_text(row, fair.rows[r], fair) + "; gauge: " + row.gauge_verdict) + '.');
    }
    if (list.items.empty()) {
        builder.paragraph("There is no drain to compare.");
    } else {
        const bool any_apart = fair.load && std::ranges::count(fair.rows, Standing::as_tested, &FairRow::standing) > 0;
        builder.paragraph(fmt::format("The units {}, the largest usable fraction first{}:", where_text(fair),
                                      any_apart ? "; then those that stand as tested, at another load" : ""));
        builder.report.blocks.emplace_back(std::move(list));
    }
    add_pairs_summary(builder, pairs);
    for (const auto* remarks : {&fair.remarks, &comparison.remarks})
        for (const std::string& remark : *remarks) builder.paragraph(remark);
    builder.paragraph(std::string(specimen_words));
    builder.picture(
        std::string(report_vessels_key),
        fmt::format(
            "Units as vessels at one height scale, {}: the height is the rated energy, filled what {}, hatched what the unit's own draw takes "
            "where that is known.",
            where_text(fair), fair.load ? "is deliverable" : "was delivered"));
    builder.picture(std::string(report_bars_key),
                    fair.load ? fmt::format("Usable fraction {} with its 95 % interval; grey where the unit stands as tested.", where_text(fair))
                              : std::string("Usable fraction with its 95 % interval, each at the load of its run."));
}

void add_unit(ReportBuilder& builder, const UnitAnalysis& unit) {
    builder.section(unit.unit.name);
    builder.paragraph(repeats_sentence(unit.fit.repeats, unit.fit.options));
    builder.paragraph(unit.fit.sentence);
    builder.table(predictions_table(unit));
    builder.paragraph(unit.next_run_sentence, "Next run");
    builder.paragraph(unit.drift.sentence, "Drift");
    builder.paragraph(unit.gauge_drift.sentence, "Gauge from run to run");
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
    return comparison_report(comparison, compare_at(comparison, std::nullopt), runs, units, options);
}

Report comparison_report(const Comparison& comparison, const FairComparison& fair, const std::vector<ReportedRun>& runs,
                         const std::vector<UnitAnalysis>& units, const ReportOptions& options) {
    ReportBuilder builder(runs, options);
    std::string names;
    for (const UnitAnalysis& unit : units) names += (names.empty() ? "" : ", ") + unit.unit.name;
    builder.report.title = "Comparison of storage units " + builder.form.apply(where_text(fair));
    builder.report.subtitle = names;

    const ReportedPairs pairs = reported_pairs(comparison, fair);
    add_summary(builder, comparison, fair, pairs);
    builder.chapter("Comparison");
    add_comparison_tables(builder, comparison, fair);
    add_pairs(builder, fair, pairs);
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
    add_method(builder, comparison.fits.empty() ? MeasureOptions() : comparison.fits.front().options);
    builder.chapter("Readings");
    for (const ReportedRun& run : runs) add_readings(builder, run);
    add_amendments(builder, runs);
    add_cautions_and_about(builder);
    return std::move(builder.report);
}

} // namespace ullage
