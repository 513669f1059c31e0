// SPDX-License-Identifier: GPL-3.0-or-later
// The report of a comparison.
#include "comparison/comparison_answer.h"
#include "formats/report/inside/report_parts.h"
#include "formats/results/comparison_columns.h"
#include "formats/results/comparison_table.h"
#include "formats/results/unit_tables.h"
#include "formats/text/safety_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

constexpr std::size_t most_columns = 6; ///< beside the unit, that fit a page

/// The comparison in tables that fit a page, as even as they come: each begins with what tells the rows apart.
void add_comparison_tables(ReportBuilder& builder, const Comparison& comparison, const FairComparison& fair, const ReportOptions& options) {
    const Table all = comparison_table(comparison, fair);
    const std::vector<std::string> wanted = options.columns.empty() ? ready_columns(readers_set).value() : options.columns;
    std::vector<std::string> keys = columns_for(all, wanted);
    std::erase_if(keys, [](const std::string& key) { return key == "unit" || key == "run"; }); // row names tell both
    const std::vector<std::string> names = row_names(comparison);
    const std::size_t parts = std::max<std::size_t>(1, (keys.size() + most_columns - 1) / most_columns);
    for (std::size_t p = 0; p < parts; ++p) {
        std::vector<std::string> part{"unit"};
        part.insert(part.end(), keys.begin() + static_cast<std::ptrdiff_t>(p * keys.size() / parts),
                    keys.begin() + static_cast<std::ptrdiff_t>((p + 1) * keys.size() / parts));
        Table table = with_columns(all, part).value();
        for (std::size_t r = 0; r < table.rows.size(); ++r) table.rows[r].front() = names[r];
        table.title = p == 0 ? all.title : "The same, continued";
        table.remarks.clear(); // they stand in the summary
        builder.table(table);
    }
}

/// "at 120 W" or "as tested".
std::string where_text(const FairComparison& fair) { return fair.load ? "at " + common_load_text(*fair.load) : std::string("as tested"); }

void add_summary(ReportBuilder& builder, const Comparison& comparison, const FairComparison& fair, const ReportedPairs& pairs,
                 const ReportOptions& options) {
    builder.chapter("Summary");
    if (comparison.rows.empty()) builder.paragraph("There is no drain to compare.");
    const ComparisonAnswer answer = comparison_answer(comparison, fair);
    builder.paragraph(answer.order, answer.has_order || answer.units.empty() ? std::string() : "Caution");
    if (!answer.units.empty()) {
        ReportList list;
        for (const std::string& sentence : answer.units) list.items.push_back(builder.form.apply(sentence));
        builder.report.blocks.emplace_back(std::move(list));
    }
    add_comparison_tables(builder, comparison, fair, options);
    add_pairs_summary(builder, pairs);
    for (const auto* remarks : {&fair.remarks, &comparison.remarks})
        for (const Message& remark : *remarks) builder.paragraph(builder.told(remark.text()));
    builder.paragraph(std::string(specimen_words));
    builder.picture(
        std::string(report_vessels_key),
        fmt::format(
            "Units as vessels at one height scale, {}: the height is the rated energy, filled what {}, hatched what the unit's own draw takes "
            "where that is known.",
            where_text(fair), fair.load ? "is deliverable" : "was delivered"));
    builder.picture(
        std::string(report_bars_key),
        fair.load ? fmt::format("Usable fraction {} with its 95 % interval; grey where the unit is as tested, at another load.", where_text(fair))
                  : std::string("Usable fraction with its 95 % interval, each at the load of its run."));
}

void add_unit(ReportBuilder& builder, const UnitAnalysis& unit) {
    builder.section(unit.unit.name);
    builder.paragraph(repeats_sentence(unit.fit.repeats, unit.fit.options).text());
    builder.paragraph(builder.told(unit.fit.sentence));
    builder.table(predictions_table(unit));
    if (builder.own_affairs) builder.paragraph(unit.next_run_sentence, "Next run");
    builder.paragraph(unit.drift.sentence.text(), "Drift");
    builder.paragraph(builder.told(unit.gauge_drift.sentence.text()), "Gauge from run to run");
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
    add_summary(builder, comparison, fair, pairs, options);
    add_pairs(builder, fair, pairs);
    add_measured_with(builder, runs);
    builder.chapter("What all drains of each unit say together");
    for (const UnitAnalysis& unit : units) add_unit(builder, unit);
    add_not_known(builder, quantities_of(runs, units));
    builder.chapter("Charts");
    builder.picture(std::string(report_against_load_key),
                    "Usable fraction of the units against load: points are drains, lines what all drains of a unit say.");
    builder.picture(std::string(report_gauge_errors_key),
                    "Gauge errors of the units against what they had delivered: above 0 a gauge shows too much.");
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
