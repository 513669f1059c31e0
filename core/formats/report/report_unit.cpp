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

/// "Of 5 claims: 3 hold, 1 not reached, 1 not tested."
Message claims_words(const UnitClaims& claims) {
    constexpr std::pair<ClaimVerdict, Phrase> verdicts[] = {
        {ClaimVerdict::holds, phrases("report", "%n hold", "%n hold")},
        {ClaimVerdict::not_reached, phrases("report", "%n not reached", "%n not reached")},
        {ClaimVerdict::does_not_hold, phrases("report", "%n not held", "%n not held")},
        {ClaimVerdict::not_decided, phrases("report", "%n not decided by this meter", "%n not decided by this meter")},
        {ClaimVerdict::not_tested, phrases("report", "%n not tested", "%n not tested")}};
    std::vector<Message> counts;
    long stated = 0;
    for (const auto& [verdict, words] : verdicts) {
        const auto count =
            std::ranges::count_if(claims.checks, [verdict = verdict](const ClaimCheck& check) { return check.claimed && check.verdict == verdict; });
        if (count == 0) continue;
        stated += count;
        counts.push_back(say_count(count, words));
    }
    if (stated == 0) return {};
    return say_count(stated, phrases("report", "Of %n claims: %1.", "Of %n claim: %1."), say_joined(counts, ", "));
}

/// The answer in a sentence.
Message energy_words(const ComparisonRow& row) {
    if (row.delivered_wh.kind == Kind::not_known) return say(phrase("report", "What it delivers is not known: %1."), row.delivered_wh.reason);
    Message clause = row.rated_wh.kind == Kind::not_known
                         ? say(phrase("report", "It delivers %1"), say_value(row.delivered_wh))
                         : say(phrase("report", "It delivers %1 of %2 rated"), say_value(row.delivered_wh), say_value(row.rated_wh));
    const auto add = [&clause](const Quantity& quantity, const Phrase& words) {
        if (quantity.kind != Kind::not_known) clause = say(words, clause, say_value(quantity));
    };
    add(row.usable_fraction, phrase("report", "%1, a usable fraction of %2"));
    add(row.mean_load_w, phrase("report", "%1, at a mean load of %2"));
    add(row.duration_h, phrase("report", "%1, in %2"));
    return say(phrase("report", "%1 (%2; %3)."), clause, row.run_title, say_kind(row.delivered_wh.kind));
}

void add_unit_summary(ReportBuilder& builder, const ReportedUnit& unit) {
    // The publisher's own words keep their numbers as they are.
    if (!unit.publisher.introduction.empty()) builder.report.blocks.emplace_back(ReportParagraph{{}, unit.publisher.introduction});
    builder.chapter(say(phrase("report", "In short")));
    const Comparison comparison = compared(unit, CompareRows::one_per_unit);
    if (comparison.rows.empty()) {
        builder.paragraph(say(phrase("report", "No drain of this unit has been noted, so what it delivers is not known.")));
    } else {
        const ComparisonRow& row = comparison.rows.front();
        const ComparisonAnswer answer = comparison_answer(comparison, compare_at(comparison, std::nullopt));
        for (const auto& sentence : answer.units) builder.paragraph(sentence);
        builder.paragraph(energy_words(row));
        ReportFigures figures;
        for (const Quantity* quantity : {&row.usable_fraction, &row.delivered_wh, &row.mean_load_w, &row.duration_h, &row.no_load_draw_w})
            if (quantity->kind != Kind::not_known) figures.figures.push_back(figure_of(*quantity, builder.form));
        builder.report.blocks.emplace_back(std::move(figures));
        builder.paragraph(say(phrase("report", "%1."), row.gauge_verdict), say(phrase("report", "Gauge")));
    }
    builder.paragraph(claims_words(*unit.claims), say(phrase("report", "Claims")));
    builder.paragraph(say(specimen_words));
    builder.picture(
        report_picture_key("vessel", unit_of(unit).uuid.text()),
        say(phrase("report",
                   "The unit as a vessel: its height is the rated energy, filled what was delivered, hatched what its own draw took where that "
                   "is known.")));
}

void add_claims(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter(say(phrase("report", "Claims against results")));
    UnitClaims claims = *unit.claims;
    std::erase_if(claims.checks, [](const ClaimCheck& check) { return !check.claimed; });
    Table table = claims_table(claims);
    table.title = {};
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
    table.remarks.push_back(say_what_intervals_are());
    builder.table(table);
}

void add_drains(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter(say(phrase("report", "Every drain, and what they say together")));
    add_drain_table(builder, unit);
    const UnitFit& fit = unit.analysis->fit;
    builder.paragraph(repeats_sentence(fit.repeats, fit.options), say(phrase("report", "Repeats")));
    builder.paragraph(builder.told(fit.sentence), say(phrase("report", "All drains together")));
    Table predictions = predictions_table(*unit.analysis);
    predictions.title = say(phrase("report", "Expected at other loads"));
    builder.table(predictions);
    builder.paragraph(unit.analysis->drift.sentence, say(phrase("report", "Drift")));
}

void add_curves(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter(say(phrase("report", "Curves")));
    const std::string& uuid = unit_of(unit).uuid.text();
    builder.picture(
        report_picture_key(report_usable_key, uuid),
        say(phrase("report",
                   "Usable fraction against load: the points are drains with their 95 % intervals, the line is what all of them say together.")));
    builder.picture(report_picture_key(report_run_time_key, uuid), say(phrase("report", "Run time against load, likewise.")));
    for (const ReportedRun& run : unit.runs)
        if (is_drain(run))
            builder.picture(report_picture_key("energy", run.record->run.uuid.text()),
                            say(phrase("report", "Delivered and gauge-implied energy, %1"), run_name(run)));
}

void add_gauge(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter(say(phrase("report", "Can the gauge be trusted?")));
    const std::string& uuid = unit_of(unit).uuid.text();
    builder.picture(
        report_picture_key(report_gauge_overlay_key, uuid),
        say(phrase("report",
                   "Gauge error against what was delivered, one curve for each drain from full to cut-off: above 0 the gauge shows too much.")));
    builder.paragraph(builder.told(unit.analysis->gauge_drift.sentence), say(phrase("report", "From run to run")));
    builder.picture(report_picture_key(report_gauge_drift_key, uuid),
                    say(phrase("report", "The gauge errors of the two drains that this is told by.")));
    for (const ReportedRun& run : unit.runs) {
        if (!is_drain(run)) continue;
        builder.section(run_name(run));
        add_findings(builder, run);
    }
}

void add_other_runs(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter(say(phrase("report", "Charges and outputs")));
    for (const ReportedRun& run : unit.runs) {
        const RunRecord& record = *run.record;
        if (record.run.kind == RunKind::charge) {
            builder.section(run_name(run));
            builder.paragraph(analyse_charge(record, run.analysis->energy).sentence);
        } else if (record.run.kind == RunKind::sustained_output || record.run.kind == RunKind::peak_output) {
            builder.section(run_name(run));
            const OutputRun output = analyse_output(record, run.analysis->energy);
            builder.paragraph(output.sentence);
            builder.table(output_steps_table(output));
        }
    }
    const RoundTrip& round_trip = unit.claims->round_trip;
    if (!round_trip.cycles.empty()) {
        builder.section(say(phrase("report", "Round trip")));
        builder.paragraph(round_trip.sentence);
        builder.paragraph(round_trip.boundary, say(phrase("report", "Counted")));
    }
}

void add_photos(ReportBuilder& builder, const ReportedUnit& unit) {
    builder.chapter(say(phrase("report", "Photos")));
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
    if (!publisher.name.empty()) builder.report.blocks.emplace_back(ReportParagraph{say(phrase("report", "Published by")), publisher.name});
    if (!publisher.licence.empty())
        builder.report.blocks.emplace_back(ReportParagraph{say(phrase("report", "Licence of this text")), publisher.licence});
}

void add_short_form(ReportBuilder& builder, const ReportedUnit& unit) {
    const std::string& uuid = unit_of(unit).uuid.text();
    add_claims(builder, unit);
    builder.chapter(say(phrase("report", "Every drain")));
    add_drain_table(builder, unit);
    builder.picture(
        report_picture_key(report_usable_key, uuid),
        say(phrase("report",
                   "Usable fraction against load: the points are drains with their 95 % intervals, the line is what all of them say together.")));
    builder.picture(report_picture_key(report_gauge_overlay_key, uuid),
                    say(phrase("report", "Gauge error against what was delivered, drain by drain: above 0 the gauge shows too much.")));
    builder.paragraph(say_joined({say(safety_line), say(phrase("safety", "Local electrical codes and a licensed electrician come first."))}, " "),
                      say(phrase("report", "Cautions")));
    builder.paragraph(say(phrase("report", "%1. The whole report holds method, budgets and readings."), builder.report.made),
                      say(phrase("report", "About this report")));
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
    const Message title = run_title(record, analysis.energy);
    const auto reading = std::ranges::find_if(record.readings, [&photo](const Reading& each) { return photo.reading_uuid == each.uuid; });
    if (reading == record.readings.end()) return say(phrase("report", "%1: %2"), title, photo.file_name);
    const ReadingValues& values = reading->values;
    std::vector<Message> shown;
    const auto add = [&shown](const Phrase& words, const std::optional<double>& value) {
        if (value) shown.push_back(say(words, say_digits(exact_text(*value))));
    };
    add(phrase("report", "gauge %1 %"), values.gauge_percent);
    add(phrase("report", "register %1 Wh"), values.register_wh);
    add(phrase("report", "meter %1 W"), values.meter_w);
    return say(phrase("report", "%1, %2 %3: %4"), title, say_date(values.time_ms, record.run.time_zone),
               clock_text(values.time_ms, record.run.time_zone), shown.empty() ? Message(photo.file_name) : say_joined(shown, ", "));
}

Report unit_report(const ReportedUnit& unit, const UnitReportChoice& choice, const ReportOptions& options) {
    ReportBuilder builder(unit.runs, options);
    const Unit& tested = unit_of(unit);
    const Message own_title = say(phrase("report", "%1: test report"), tested.name);
    builder.report.title = unit.publisher.title.empty() ? own_title : Message(unit.publisher.title);
    std::vector<Message> parts;
    if (!unit.publisher.title.empty()) parts.push_back(own_title);
    if (!tested.maker.empty()) parts.push_back(say(phrase("report", "maker %1"), tested.maker));
    parts.push_back(say_count(unit.runs.size(), phrases("report", "%n runs", "%n run")));
    if (!tested.serial_number.empty()) parts.push_back(say(phrase("report", "serial number %1"), tested.serial_number));
    builder.report.subtitle = say_joined(parts, "; ");
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
        builder.chapter(say(phrase("report", "Uncertainty budgets")));
        for (const ReportedRun& run : unit.runs)
            if (is_drain(run)) add_budget(builder, run);
    }
    if (wanted(UnitReportPart::method)) add_method(builder, unit.analysis->fit.options);
    if (wanted(UnitReportPart::readings)) {
        builder.chapter(say(phrase("report", "Readings")));
        for (const ReportedRun& run : unit.runs) add_readings(builder, run);
        add_amendments(builder, unit.runs);
    }
    add_cautions_and_about(builder);
    add_publisher(builder, unit);
    return std::move(builder.report);
}

} // namespace ullage
