// SPDX-License-Identifier: GPL-3.0-or-later
// What one run shows: assumptions, charts, findings, budget, readings.
#include "base/number.h"
#include "exchange/comparison_table.h"
#include "exchange/report_parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

Quantity plain(const char* unit, double value) { return known({}, unit, value, std::nullopt, Kind::measured); }

std::string offset_text(int minutes) {
    return fmt::format("UTC{}{:02}:{:02}", minutes < 0 ? "−" : "+", std::abs(minutes) / 60, std::abs(minutes) % 60);
}

/// "2027-05-14 18:00", with seconds where they are not 0.
std::string local_text(UtcMs time_ms, const std::string& zone, bool with_offset) {
    const LocalTime local = to_local(time_ms, zone);
    std::string text = fmt::format("{:04}-{:02}-{:02} {:02}:{:02}", local.year, local.month, local.day, local.hour, local.minute);
    if (local.second != 0) text += fmt::format(":{:02}", local.second);
    return with_offset ? text + ' ' + offset_text(local.offset_minutes) : text;
}

/// The record with all but at most `most` readings, spread evenly, put aside; how many there were in `total`.
RunRecord thinned(const RunRecord& record, std::size_t most, std::size_t& total) {
    std::vector<std::size_t> shown;
    for (std::size_t r = 0; r < record.readings.size(); ++r)
        if (!record.readings[r].withdrawn) shown.push_back(r);
    total = shown.size();
    RunRecord part = record;
    if (total <= most) return part;
    for (Reading& reading : part.readings) reading.withdrawn = true;
    for (std::size_t k = 0; k < most; ++k) part.readings[shown[k * (total - 1) / (most - 1)]].withdrawn = false;
    return part;
}

} // namespace

void add_assumed_of_register(ReportBuilder& builder, const ReportedRun& run) {
    const RunRecord& record = *run.record;
    Table table;
    table.title = "Assumed of the register";
    table.columns = {{"time", "reading of", {}, Content::text, 0},
                     {"what", "read as", {}, Content::text, 0},
                     {"reason", "reason", {}, Content::text, 0},
                     {"missing_wh", "may be missing", "Wh", Content::number, 0}};
    for (const Mend& mend : run.analysis->energy.track.mends) {
        const auto at = std::ranges::find(record.readings, mend.reading_uuid, &Reading::uuid);
        table.rows.push_back({at == record.readings.end() ? std::string() : local_text(at->values.time_ms, record.run.time_zone, false),
                              std::string(mend_text(mend.kind)), builder.form.apply(mend.reason),
                              mend.missing_wh ? TableCell(plain("Wh", *mend.missing_wh)) : TableCell(std::string())});
    }
    builder.table(table);
}

void add_charts(ReportBuilder& builder, const ReportedRun& run) {
    const std::string& uuid = run.record->run.uuid;
    const std::string name = run_name(run);
    builder.picture(report_picture_key("energy", uuid), "Delivered and gauge-implied energy, " + name);
    builder.picture(report_picture_key("gauge_error", uuid), "Gauge error, " + name);
    builder.picture(report_picture_key("load", uuid), "Load, " + name);
}

void add_findings(ReportBuilder& builder, const ReportedRun& run) {
    const GaugeAnalysis& gauge = run.analysis->gauge;
    builder.paragraph(gauge.verdict, "Gauge");
    ReportFindings findings;
    for (const Finding& finding : gauge.findings)
        findings.items.push_back({finding.weight, builder.form.apply(finding.sentence), builder.form.apply(finding.evidence)});
    if (!findings.items.empty()) builder.report.blocks.emplace_back(std::move(findings));
    const bool said = std::ranges::any_of(gauge.findings, [](const Finding& finding) { return finding.kind == FindingKind::infeasible; });
    if (!said) builder.paragraph(gauge.feasibility.sentence);
    builder.paragraph(gauge.line ? gauge.line->sentence : std::string());
}

void add_budget(ReportBuilder& builder, const ReportedRun& run) {
    const Budget& budget = run.analysis->energy.budget;
    if (budget.lines.empty()) {
        builder.paragraph("There is no delivered energy to state an uncertainty of.", run_name(run));
        return;
    }
    Table table;
    table.title = "Delivered energy of " + run_name(run);
    table.columns = {{"source", "source", {}, Content::text, 0},
                     {"shape", "shape", {}, Content::text, 0},
                     {"correlation", "correlation", {}, Content::text, 0},
                     {"standard_wh", "standard uncertainty", "Wh", Content::number, 2},
                     {"share", "share", "%", Content::number, 1}};
    for (const BudgetLine& line : budget.lines)
        table.rows.push_back({builder.form.apply(line.source), line.shape, line.correlation, plain("Wh", line.standard_wh), plain("%", 100 * line.share)});
    table.remarks.push_back(fmt::format("Combined standard uncertainty {} Wh.", fixed_text(budget.combined_standard_wh, 2)));
    std::string half = budget.half_width_wh ? fmt::format("95 % interval ± {} Wh", with_interval_text(*budget.half_width_wh, {}, 1)) : std::string();
    if (!budget.half_width_method.empty()) half += (half.empty() ? "" : ": ") + budget.half_width_method;
    if (!half.empty()) table.remarks.push_back(half + '.');
    builder.table(table);
}

void add_readings(ReportBuilder& builder, const ReportedRun& run) {
    std::size_t total = 0;
    const RunRecord part = thinned(*run.record, most_report_readings, total);
    Table table = readings_table(part, *run.analysis);
    if (table.rows.empty()) {
        builder.paragraph("No readings yet.", run_name(run));
        return;
    }
    const std::string& zone = part.run.time_zone;
    std::vector<UtcMs> times;
    for (const Reading& reading : part.readings)
        if (!reading.withdrawn) times.push_back(reading.values.time_ms);
    const int offset = to_local(times.front(), zone).offset_minutes;
    const bool changes = std::ranges::any_of(times, [&](UtcMs time_ms) { return to_local(time_ms, zone).offset_minutes != offset; });
    for (std::size_t r = 0; r < std::min(times.size(), table.rows.size()); ++r) table.rows[r].front() = local_text(times[r], zone, changes);
    table.remarks.push_back("Times are local to " + zone + (changes ? ", with their offset." : " (" + offset_text(offset) + ")."));
    if (table.rows.size() < total)
        table.remarks.push_back(fmt::format("{} of {} readings, spread evenly; the run sheet holds all of them.", table.rows.size(), total));
    table.title = run_name(run);
    builder.table(table);
}

} // namespace ullage
