// SPDX-License-Identifier: GPL-3.0-or-later
// The report of a comparison.
#include "comparison/comparison_answer.h"
#include "formats/report/inside/report_parts.h"
#include "formats/results/comparison_columns.h"
#include "formats/results/comparison_table.h"
#include "formats/results/unit_tables.h"
#include "formats/text/safety_words.h"

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
    const auto names = row_names(comparison);
    const std::size_t parts = std::max<std::size_t>(1, (keys.size() + most_columns - 1) / most_columns);
    for (std::size_t p = 0; p < parts; ++p) {
        std::vector<std::string> part{"unit"};
        part.insert(part.end(), keys.begin() + static_cast<std::ptrdiff_t>(p * keys.size() / parts),
                    keys.begin() + static_cast<std::ptrdiff_t>((p + 1) * keys.size() / parts));
        Table table = with_columns(all, part).value();
        for (std::size_t r = 0; r < table.rows.size(); ++r) table.rows[r].front() = Message(names[r]);
        table.title = p == 0 ? all.title : say(phrase("report", "The same, continued"));
        table.remarks.clear(); // they stand in the summary
        builder.table(table);
    }
}

void add_summary(ReportBuilder& builder, const Comparison& comparison, const FairComparison& fair, const ReportedPairs& pairs,
                 const ReportOptions& options) {
    builder.chapter(say(phrase("report", "Summary")));
    if (comparison.rows.empty()) builder.paragraph(say(phrase("report", "There is no drain to compare.")));
    const ComparisonAnswer answer = comparison_answer(comparison, fair);
    builder.paragraph(answer.order, answer.has_order || answer.units.empty() ? Message() : say(phrase("report", "Caution")));
    builder.list({answer.units.begin(), answer.units.end()});
    add_comparison_tables(builder, comparison, fair, options);
    add_pairs_summary(builder, pairs);
    for (const auto* remarks : {&fair.remarks, &comparison.remarks})
        for (const Message& remark : *remarks) builder.paragraph(builder.told(remark));
    builder.paragraph(say(specimen_words));
    builder.picture(
        std::string(report_vessels_key),
        fair.load
            ? say(phrase("report",
                         "Units as vessels at one height scale, at %1: the height is the rated energy, filled what is deliverable, hatched what "
                         "the unit's own draw takes where that is known."),
                  say_common_load(*fair.load))
            : say(phrase("report",
                         "Units as vessels at one height scale, as tested: the height is the rated energy, filled what was delivered, hatched "
                         "what the unit's own draw takes where that is known.")));
    builder.picture(std::string(report_bars_key),
                    fair.load
                        ? say(phrase("report", "Usable fraction at %1 with its 95 % interval; grey where the unit is as tested, at another load."),
                              say_common_load(*fair.load))
                        : say(phrase("report", "Usable fraction with its 95 % interval, each at the load of its run.")));
}

void add_unit(ReportBuilder& builder, const UnitAnalysis& unit) {
    builder.section(unit.unit.name);
    builder.paragraph(repeats_sentence(unit.fit.repeats, unit.fit.options));
    builder.paragraph(builder.told(unit.fit.sentence));
    builder.table(predictions_table(unit));
    if (builder.own_affairs) builder.paragraph(unit.next_run_sentence, say(phrase("report", "Next run")));
    builder.paragraph(unit.drift.sentence, say(phrase("report", "Drift")));
    builder.paragraph(builder.told(unit.gauge_drift.sentence), say(phrase("report", "Gauge from run to run")));
}

std::vector<NamedQuantity> quantities_of(const std::vector<ReportedRun>& runs, const std::vector<UnitAnalysis>& units) {
    std::vector<NamedQuantity> quantities;
    for (const ReportedRun& run : runs)
        for (const Quantity& quantity : run.analysis->quantities) quantities.push_back({run_name(run), quantity});
    for (const UnitAnalysis& unit : units)
        for (const Quantity* quantity : {&unit.fit.no_load_draw_w, &unit.fit.deliverable_at_no_time_cost_wh, &unit.fit.no_load_endurance_h})
            quantities.push_back({say(phrase("report", "%1, all drains"), unit.unit.name), *quantity});
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
    std::vector<Message> names;
    for (const UnitAnalysis& unit : units) names.emplace_back(unit.unit.name);
    builder.report.title = builder.text(fair.load ? say(phrase("report", "Comparison of storage units at %1"), say_common_load(*fair.load))
                                                  : say(phrase("report", "Comparison of storage units as tested")));
    builder.report.subtitle = say_joined(names, ", ");

    const ReportedPairs pairs = reported_pairs(comparison, fair);
    add_summary(builder, comparison, fair, pairs, options);
    add_pairs(builder, fair, pairs);
    add_measured_with(builder, runs);
    builder.chapter(say(phrase("report", "What all drains of each unit say together")));
    for (const UnitAnalysis& unit : units) add_unit(builder, unit);
    add_not_known(builder, quantities_of(runs, units));
    builder.chapter(say(phrase("report", "Charts")));
    builder.picture(std::string(report_against_load_key),
                    say(phrase("report", "Usable fraction of the units against load: points are drains, lines what all drains of a unit say.")));
    builder.picture(std::string(report_gauge_errors_key),
                    say(phrase("report", "Gauge errors of the units against what they had delivered: above 0 a gauge shows too much.")));
    for (const ReportedRun& run : runs) add_charts(builder, run);
    builder.chapter(say(phrase("report", "Findings")));
    for (const ReportedRun& run : runs) {
        builder.section(run_name(run));
        add_findings(builder, run);
        add_assumed_of_register(builder, run);
    }
    builder.chapter(say(phrase("report", "Uncertainty budgets")));
    for (const ReportedRun& run : runs) add_budget(builder, run);
    add_method(builder, comparison.fits.empty() ? MeasureOptions() : comparison.fits.front().options);
    builder.chapter(say(phrase("report", "Readings")));
    for (const ReportedRun& run : runs) add_readings(builder, run);
    add_amendments(builder, runs);
    add_cautions_and_about(builder);
    return std::move(builder.report);
}

} // namespace ullage
