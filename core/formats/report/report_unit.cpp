// SPDX-License-Identifier: GPL-3.0-or-later
// The report of one unit, for readers.
#include "formats/report/report_unit.h"

#include "base/instant.h"
#include "base/number.h"
#include "comparison/comparison_answer.h"
#include "comparison/fair_comparison.h"
#include "formats/report/inside/report_parts.h"
#include "formats/results/claims_output.h"
#include "formats/results/comparison_table.h"
#include "formats/results/unit_tables.h"
#include "formats/text/quantity_title.h"
#include "formats/text/safety_words.h"
#include "run_analysis/charge_run.h"
#include "run_analysis/output_run.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>

namespace ullage {

namespace {

using Content = TableColumn::Content;

constexpr std::pair<UnitReportPart, std::string_view> part_keys[] = {
    {UnitReportPart::claims, "claims"}, {UnitReportPart::drains, "drains"}, {UnitReportPart::curves, "curves"},
    {UnitReportPart::gauge, "gauge"},   {UnitReportPart::photos, "photos"}, {UnitReportPart::other_runs, "other-runs"},
    {UnitReportPart::budget, "budget"}, {UnitReportPart::method, "method"}, {UnitReportPart::readings, "readings"}};

const Unit& unit_of(const ReportedUnit& unit) { return unit.analysis->unit; }

bool is_drain(const ReportedRun& run) { return run.record->run.kind == RunKind::drain || run.record->run.kind == RunKind::no_load_drain; }

Comparison compared(const ReportedUnit& unit, CompareRows rows) {
    UnitRuns records;
    for (const ReportedRun& run : unit.runs) records.push_back(run.record);
    return compare_as_tested(records, rows, unit.analysis->fit.options);
}

/// "5 claims: 3 hold, 1 is not reached, 1 not tested."
std::string claims_words(const UnitClaims& claims) {
    constexpr std::pair<ClaimVerdict, const char*> verdicts[] = {{ClaimVerdict::holds, "hold"},
                                                                 {ClaimVerdict::not_reached, "not reached"},
                                                                 {ClaimVerdict::does_not_hold, "not held"},
                                                                 {ClaimVerdict::not_decided, "not decided by this meter"},
                                                                 {ClaimVerdict::not_tested, "not tested"}};
    std::string words;
    long stated = 0;
    for (const auto& [verdict, word] : verdicts) {
        const auto count =
            std::ranges::count_if(claims.checks, [verdict = verdict](const ClaimCheck& check) { return check.claimed && check.verdict == verdict; });
        if (count == 0) continue;
        stated += count;
        words += fmt::format("{}{} {}", words.empty() ? "" : ", ", count, word);
    }
    return stated == 0 ? std::string() : fmt::format("Of {}: {}.", count_text(stated, "claim", "claims"), words);
}

/// The answer in a sentence.
std::string energy_words(const ComparisonRow& row) {
    if (row.delivered_wh.kind == Kind::not_known) return "What it delivers is not known: " + row.delivered_wh.reason + ".";
    std::string words = "It delivers " + value_text(row.delivered_wh);
    if (row.rated_wh.kind != Kind::not_known) words += fmt::format(" of {} rated", value_text(row.rated_wh));
    if (row.usable_fraction.kind != Kind::not_known) words += fmt::format(", a usable fraction of {}", value_text(row.usable_fraction));
    if (row.mean_load_w.kind != Kind::not_known) words += ", at a mean load of " + value_text(row.mean_load_w);
    if (row.duration_h.kind != Kind::not_known) words += ", in " + value_text(row.duration_h);
    return words + fmt::format(" ({}; {}).", row.run_title.text(), kind_text(row.delivered_wh.kind));
}

void add_unit_summary(ReportBuilder& builder, const ReportedUnit& unit) {
    // The publisher's own words keep their numbers as they are.
    if (!unit.publisher.introduction.empty()) builder.report.blocks.emplace_back(ReportParagraph{{}, unit.publisher.introduction});
    builder.chapter("In short");
    const Comparison comparison = compared(unit, CompareRows::one_per_unit);
    if (comparison.rows.empty()) {
        builder.paragraph("No drain of this unit has been noted, so what it delivers is not known.");
    } else {
        const ComparisonRow& row = comparison.rows.front();
        for (const Message& sentence : comparison_answer(comparison, compare_at(comparison, std::nullopt)).units) builder.paragraph(sentence.text());
        builder.paragraph(energy_words(row));
        ReportFigures figures;
        for (const Quantity* quantity : {&row.usable_fraction, &row.delivered_wh, &row.mean_load_w, &row.duration_h, &row.no_load_draw_w})
            if (quantity->kind != Kind::not_known) figures.figures.push_back(figure_of(*quantity, builder.form));
        builder.report.blocks.emplace_back(std::move(figures));
        builder.paragraph(row.gauge_verdict.text() + ".", "Gauge");
    }
    builder.paragraph(claims_words(*unit.claims), "Claims");
    builder.paragraph(std::string(specimen_words));
    builder.picture(report_picture_key("vessel", unit_of(unit).uuid.text()),
                    "The unit as a vessel: its height is the rated energy, filled what was delivered, "
                    "hatched what its own draw took where that is known.");
}

void add_claims(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter("Claims against results");
    UnitClaims claims = *unit.claims;
    std::erase_if(claims.checks, [](const ClaimCheck& check) { return !check.claimed; });
    Table table = claims_table(claims);
    table.title.clear();
    builder.table(table);
}

/// The columns of every drain that a reader compares them by.
void add_drain_table(ReportBuilder& builder, const ReportedUnit& unit) {
    const Comparison comparison = compared(unit, CompareRows::every_drain);
    const Table whole = comparison_table(comparison, compare_at(comparison, std::nullopt));
    constexpr std::array<std::string_view, 6> keys{"run", "mean_load_w", "delivered_wh", "usable_fraction", "duration_h", "gauge_verdict"};
    Table table;
    std::vector<std::size_t> taken;
    for (const std::string_view key : keys) {
        const auto at = std::ranges::find(whole.columns, key, &TableColumn::key);
        if (at == whole.columns.end()) continue;
        taken.push_back(static_cast<std::size_t>(at - whole.columns.begin()));
        table.columns.push_back(*at);
    }
    for (const TableRow& row : whole.rows) {
        auto& cells = table.rows.emplace_back();
        for (const std::size_t column : taken) cells.push_back(cell_at(row, column));
    }
    table.remarks.push_back("After ± stands half the width of an interval meant to cover 95 %.");
    builder.table(table);
}

void add_drains(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter("Every drain, and what they say together");
    add_drain_table(builder, unit);
    const UnitFit& fit = unit.analysis->fit;
    builder.paragraph(repeats_sentence(fit.repeats, fit.options).text(), "Repeats");
    builder.paragraph(builder.told(fit.sentence), "All drains together");
    Table predictions = predictions_table(*unit.analysis);
    predictions.title = "Expected at other loads";
    builder.table(predictions);
    builder.paragraph(unit.analysis->drift.sentence.text(), "Drift");
}

void add_curves(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter("Curves");
    const std::string& uuid = unit_of(unit).uuid.text();
    builder.picture(report_picture_key(report_usable_key, uuid),
                    "Usable fraction against load: the points are drains with their 95 % intervals, the line is what all of them say together.");
    builder.picture(report_picture_key(report_run_time_key, uuid), "Run time against load, likewise.");
    for (const ReportedRun& run : unit.runs)
        if (is_drain(run))
            builder.picture(report_picture_key("energy", run.record->run.uuid.text()), "Delivered and gauge-implied energy, " + run_name(run));
}

void add_gauge(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter("Can the gauge be trusted?");
    const std::string& uuid = unit_of(unit).uuid.text();
    builder.picture(report_picture_key(report_gauge_overlay_key, uuid),
                    "Gauge error against what was delivered, one curve for each drain from full to cut-off: above 0 the gauge shows too much.");
    builder.paragraph(builder.told(unit.analysis->gauge_drift.sentence), "From run to run");
    builder.picture(report_picture_key(report_gauge_drift_key, uuid), "The gauge errors of the two drains that this is told by.");
    for (const ReportedRun& run : unit.runs) {
        if (!is_drain(run)) continue;
        builder.section(run_name(run));
        add_findings(builder, run);
    }
}

void add_other_runs(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter("Charges and outputs");
    for (const ReportedRun& run : unit.runs) {
        const RunRecord& record = *run.record;
        if (record.run.kind == RunKind::charge) {
            builder.section(run_name(run));
            builder.paragraph(analyse_charge(record, run.analysis->energy).sentence.text());
        } else if (record.run.kind == RunKind::sustained_output || record.run.kind == RunKind::peak_output) {
            builder.section(run_name(run));
            const OutputRun output = analyse_output(record, run.analysis->energy);
            builder.paragraph(output.sentence.text());
            builder.table(output_steps_table(output));
        }
    }
    const RoundTrip& round_trip = unit.claims->round_trip;
    if (!round_trip.cycles.empty()) {
        builder.section("Round trip");
        builder.paragraph(round_trip.sentence.text());
        builder.paragraph(round_trip.boundary.text(), "Counted");
    }
}

void add_photos(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter("Photos");
    for (const ReportedPhoto& photo : unit.photos) builder.picture(photo.uuid.text(), photo.caption);
}

std::vector<NamedQuantity> quantities_of(const ReportedUnit& unit) {
    const UnitFit& fit = unit.analysis->fit;
    std::vector<NamedQuantity> quantities;
    for (const Quantity* quantity : {&fit.no_load_draw_w, &fit.deliverable_at_no_time_cost_wh, &fit.no_load_endurance_h})
        quantities.push_back({{}, *quantity});
    return quantities;
}

void add_publisher(ReportBuilder& builder, const ReportedUnit& unit) {
    const Publisher& publisher = unit.publisher;
    if (!publisher.name.empty()) builder.report.blocks.emplace_back(ReportParagraph{"Published by", publisher.name});
    if (!publisher.licence.empty()) builder.report.blocks.emplace_back(ReportParagraph{"Licence of this text", publisher.licence});
}

void add_short_form(ReportBuilder& builder, const ReportedUnit& unit) {
    const std::string& uuid = unit_of(unit).uuid.text();
    add_claims(builder, unit);
    builder.chapter("Every drain");
    add_drain_table(builder, unit);
    builder.picture(report_picture_key(report_usable_key, uuid),
                    "Usable fraction against load: the points are drains with their 95 % intervals, the line is what all of them say together.");
    builder.picture(report_picture_key(report_gauge_overlay_key, uuid),
                    "Gauge error against what was delivered, drain by drain: above 0 the gauge shows too much.");
    builder.paragraph(std::string(safety_line) + " Local electrical codes and a licensed electrician come first.", "Cautions");
    builder.paragraph(builder.report.made + ". The whole report holds method, budgets and readings.", "About this report");
}

} // namespace

std::string_view unit_report_part_key(UnitReportPart part) {
    return std::ranges::find(part_keys, part, &std::pair<UnitReportPart, std::string_view>::first)->second;
}

std::optional<UnitReportPart> unit_report_part_from(std::string_view key) {
    const auto* known = std::ranges::find(part_keys, key, &std::pair<UnitReportPart, std::string_view>::second);
    return known == std::end(part_keys) ? std::nullopt : std::optional(known->first);
}

std::string photo_caption(const RunRecord& record, const RunAnalysis& analysis, const Photo& photo) {
    std::string caption = run_title(record, analysis.energy);
    const auto reading = std::ranges::find_if(record.readings, [&photo](const Reading& each) { return photo.reading_uuid == each.uuid; });
    if (reading == record.readings.end()) return caption + ": " + photo.file_name;
    const ReadingValues& values = reading->values;
    caption += fmt::format(", {} {}:", date_text(values.time_ms, record.run.time_zone), clock_text(values.time_ms, record.run.time_zone));
    std::string shown;
    const auto add = [&shown](const char* what, const std::optional<double>& value, const char* unit) {
        if (value) shown += fmt::format("{}{} {} {}", shown.empty() ? " " : ", ", what, exact_text(*value), unit);
    };
    add("gauge", values.gauge_percent, "%");
    add("register", values.register_wh, "Wh");
    add("meter", values.meter_w, "W");
    return shown.empty() ? caption + ' ' + photo.file_name : caption + shown;
}

Report unit_report(const ReportedUnit& unit, const UnitReportChoice& choice, const ReportOptions& options) {
    ReportBuilder builder(unit.runs, options);
    const Unit& tested = unit_of(unit);
    const std::string own_title = tested.name + ": test report";
    builder.report.title = unit.publisher.title.empty() ? own_title : unit.publisher.title;
    for (const std::string& part :
         {unit.publisher.title.empty() ? std::string() : own_title, tested.maker.empty() ? std::string() : "maker " + tested.maker,
          count_text(static_cast<long>(unit.runs.size()), "run", "runs"),
          tested.serial_number.empty() ? std::string() : "serial number " + tested.serial_number})
        if (!part.empty()) builder.report.subtitle += (builder.report.subtitle.empty() ? "" : "; ") + part;
    add_unit_summary(builder, unit);
    if (choice.in_short) {
        add_short_form(builder, unit);
        add_publisher(builder, unit);
        return std::move(builder.report);
    }
    const auto wanted = [&choice](UnitReportPart part) { return choice.parts.contains(part); };
    if (wanted(UnitReportPart::claims)) add_claims(builder, unit);
    if (wanted(UnitReportPart::drains)) add_drains(builder, unit);
    if (wanted(UnitReportPart::curves)) add_curves(builder, unit);
    if (wanted(UnitReportPart::gauge)) add_gauge(builder, unit);
    if (wanted(UnitReportPart::photos)) add_photos(builder, unit);
    if (wanted(UnitReportPart::other_runs)) add_other_runs(builder, unit);
    add_measured_with(builder, unit.runs);
    add_not_known(builder, quantities_of(unit));
    if (wanted(UnitReportPart::budget)) {
        builder.chapter("Uncertainty budgets");
        for (const ReportedRun& run : unit.runs)
            if (is_drain(run)) add_budget(builder, run);
    }
    if (wanted(UnitReportPart::method)) add_method(builder, unit.analysis->fit.options);
    if (wanted(UnitReportPart::readings)) {
        builder.chapter("Readings");
        for (const ReportedRun& run : unit.runs) add_readings(builder, run);
        add_amendments(builder, unit.runs);
    }
    add_cautions_and_about(builder);
    add_publisher(builder, unit);
    return std::move(builder.report);
}

} // namespace ullage
