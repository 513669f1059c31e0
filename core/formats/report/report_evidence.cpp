// SPDX-License-Identifier: GPL-3.0-or-later
// What one run shows: assumptions, charts, findings, budget, readings.
#include "base/number.h"
#include "formats/report/inside/report_parts.h"
#include "formats/results/comparison_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

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

/// Readings that findings and assumptions of the register rest on; of a finding over a long stretch its ends.
std::set<ReadingId> readings_spoken_of(const RunAnalysis& analysis) {
    constexpr std::size_t long_stretch = 12;
    std::set<ReadingId> uuids;
    for (const RegisterCorrection& register_correction : analysis.energy.track.register_corrections) uuids.insert(register_correction.reading_uuid);
    for (const Finding& finding : analysis.gauge.findings) {
        if (finding.readings.empty()) continue;
        if (finding.readings.size() <= long_stretch) uuids.insert(finding.readings.begin(), finding.readings.end());
        else uuids.insert({finding.readings.front(), finding.readings.back()});
    }
    return uuids;
}

/// The record with all but some `most` readings put aside; how many there were in `total`. Those that tell something of their own always stay: the
/// first and the last, what has a mark, a remark or an amendment, and what a finding or an assumption rests on. The rest is spread evenly.
RunRecord thinned(const RunRecord& record, const RunAnalysis& analysis, std::size_t most, std::size_t& total) {
    std::vector<std::size_t> shown, plain;
    const std::set<ReadingId> spoken_of = readings_spoken_of(analysis);
    for (std::size_t r = 0; r < record.readings.size(); ++r)
        if (!record.readings[r].withdrawn) shown.push_back(r);
    total = shown.size();
    RunRecord part = record;
    if (total <= most) return part;
    for (const std::size_t r : shown) {
        Reading& reading = part.readings[r];
        const bool stays = r == shown.front() || r == shown.back() || reading.values.mark || !reading.values.remark.empty() || reading.version > 1 ||
                           spoken_of.contains(reading.uuid);
        reading.withdrawn = !stays;
        if (!stays) plain.push_back(r);
    }
    const std::size_t staying = total - plain.size(), room = most > staying ? most - staying : 0;
    for (std::size_t k = 0; k < room; ++k) part.readings[plain[(2 * k + 1) * plain.size() / (2 * room)]].withdrawn = false;
    return part;
}

void leave_out(Table& table, std::string_view key) {
    const auto at = std::ranges::find(table.columns, key, &TableColumn::key) - table.columns.begin();
    table.columns.erase(table.columns.begin() + at);
    for (TableRow& row : table.rows) row.erase(row.begin() + at);
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
    for (const RegisterCorrection& register_correction : run.analysis->energy.track.register_corrections) {
        const auto at = std::ranges::find(record.readings, register_correction.reading_uuid, &Reading::uuid);
        table.rows.push_back({at == record.readings.end() ? std::string() : local_text(at->values.time_ms, record.run.time_zone, false),
                              say_register_correction(register_correction.kind).text(), builder.form.apply(register_correction.reason.text()),
                              register_correction.missing_wh ? TableCell(plain("Wh", *register_correction.missing_wh)) : TableCell(std::string())});
    }
    builder.table(table);
}

void add_charts(ReportBuilder& builder, const ReportedRun& run) {
    const std::string& uuid = run.record->run.uuid.text();
    const std::string name = run_name(run);
    builder.picture(report_picture_key("energy", uuid), "Delivered and gauge-implied energy, " + name);
    builder.picture(report_picture_key("gauge_error", uuid), "Gauge error, " + name);
    builder.picture(report_picture_key("load", uuid), "Load, " + name);
}

void add_findings(ReportBuilder& builder, const ReportedRun& run) {
    const GaugeAnalysis& gauge = run.analysis->gauge;
    builder.paragraph(gauge.verdict.text(), "Gauge");
    ReportFindings findings;
    for (const Finding& finding : gauge.findings)
        findings.items.push_back({finding.weight, builder.form.apply(finding.sentence.text()), builder.form.apply(finding.evidence.text())});
    if (!findings.items.empty()) builder.report.blocks.emplace_back(std::move(findings));
    const bool said = std::ranges::any_of(gauge.findings, [](const Finding& finding) { return finding.kind == FindingKind::infeasible; });
    if (!said) builder.paragraph(gauge.feasibility.sentence.text());
    builder.paragraph(gauge.line ? gauge.line->sentence.text() : std::string());
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
                     {"evaluation", "type", {}, Content::text, 0},
                     {"degrees_of_freedom", "degrees of freedom", {}, Content::text, 0},
                     {"sensitivity", "sensitivity", {}, Content::text, 0},
                     {"standard_wh", "standard uncertainty", "Wh", Content::number, 2},
                     {"share", "share", "%", Content::number, 1}};
    for (const BudgetLine& line : budget.lines)
        table.rows.push_back({builder.form.apply(line.source.text()), say_shape(line).text(), say_correlation(line).text(), line.evaluation,
                              say_freedom(line.degrees_of_freedom).text(), builder.form.apply(say_sensitivity(line).text()),
                              plain("Wh", line.standard_wh), plain("%", 100 * line.share)});
    table.remarks.push_back(begin_sentence(say_combined_uncertainty(budget)).text() + ".");
    std::string half = budget.half_width_wh
                           ? fmt::format("95 % interval ± {} Wh", fixed_text(*budget.half_width_wh, decimals_for(*budget.half_width_wh)))
                           : std::string();
    if (!budget.half_width_method.empty()) half += (half.empty() ? "" : ": ") + budget.half_width_method;
    if (!half.empty()) table.remarks.push_back(half + '.');
    builder.table(table);
}

void add_readings(ReportBuilder& builder, const ReportedRun& run) {
    std::size_t total = 0;
    const RunRecord part = thinned(*run.record, *run.analysis, most_report_readings, total);
    Table table = readings_table(part, *run.analysis);
    if (table.rows.empty()) {
        builder.paragraph("No readings yet.", run_name(run));
        return;
    }
    if (!builder.own_affairs) leave_out(table, "remark");
    const std::string& zone = part.run.time_zone;
    std::vector<UtcMs> times;
    for (const Reading& reading : part.readings)
        if (!reading.withdrawn) times.push_back(reading.values.time_ms);
    const int offset = to_local(times.front(), zone).offset_minutes;
    const bool changes = std::ranges::any_of(times, [&](UtcMs time_ms) { return to_local(time_ms, zone).offset_minutes != offset; });
    for (std::size_t r = 0; r < std::min(times.size(), table.rows.size()); ++r) table.rows[r].front() = local_text(times[r], zone, changes);
    table.remarks.push_back("Times are local to " + zone + (changes ? ", with their offset." : " (" + offset_text(offset) + ")."));
    if (table.rows.size() < total)
        table.remarks.push_back(
            fmt::format("{} of {} readings. {} in between, of which there is nothing to tell, are left out, spread evenly; the run sheet "
                        "holds all of them.",
                        table.rows.size(), total, total - table.rows.size()));
    table.title = run_name(run);
    builder.table(table);
}

} // namespace ullage
