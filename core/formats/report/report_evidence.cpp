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
    table.title = say(phrase("report", "Assumed of the register"));
    table.columns = {{"time", say(phrase("report", "reading of")), {}, Content::text, 0},
                     {"what", say(phrase("report", "read as")), {}, Content::text, 0},
                     {"reason", say(phrase("report", "reason")), {}, Content::text, 0},
                     {"missing_wh", say(phrase("report", "may be missing")), "Wh", Content::number, 0}};
    for (const RegisterCorrection& register_correction : run.analysis->energy.track.register_corrections) {
        const auto at = std::ranges::find(record.readings, register_correction.reading_uuid, &Reading::uuid);
        table.rows.push_back({at == record.readings.end() ? Message() : Message(local_text(at->values.time_ms, record.run.time_zone, false)),
                              say_register_correction(register_correction.kind), Message(builder.text(register_correction.reason)),
                              register_correction.missing_wh ? TableCell(plain("Wh", *register_correction.missing_wh)) : TableCell(Message())});
    }
    builder.table(table);
}

void add_charts(ReportBuilder& builder, const ReportedRun& run) {
    const std::string& uuid = run.record->run.uuid.text();
    const Message name = run_name(run);
    builder.picture(report_picture_key("energy", uuid), say(phrase("report", "Delivered and gauge-implied energy, %1"), name));
    builder.picture(report_picture_key("gauge_error", uuid), say(phrase("report", "Gauge error, %1"), name));
    builder.picture(report_picture_key("load", uuid), say(phrase("report", "Load, %1"), name));
}

void add_findings(ReportBuilder& builder, const ReportedRun& run) {
    const GaugeAnalysis& gauge = run.analysis->gauge;
    builder.paragraph(gauge.verdict, say(phrase("report", "Gauge")));
    ReportFindings findings;
    for (const Finding& finding : gauge.findings)
        findings.items.push_back({finding.weight, builder.text(finding.sentence), builder.text(finding.evidence)});
    if (!findings.items.empty()) builder.report.blocks.emplace_back(std::move(findings));
    const bool said = std::ranges::any_of(gauge.findings, [](const Finding& finding) { return finding.kind == FindingKind::infeasible; });
    if (!said) builder.paragraph(gauge.feasibility.sentence);
    builder.paragraph(gauge.line ? gauge.line->sentence : Message());
}

void add_budget(ReportBuilder& builder, const ReportedRun& run) {
    const Budget& budget = run.analysis->energy.budget;
    if (budget.lines.empty()) {
        builder.paragraph(say(phrase("report", "There is no delivered energy to state an uncertainty of.")), run_name(run));
        return;
    }
    Table table;
    table.title = say(phrase("report", "Delivered energy of %1"), run_name(run));
    table.columns = {{"source", say(phrase("report", "source")), {}, Content::text, 0},
                     {"shape", say(phrase("report", "shape")), {}, Content::text, 0},
                     {"correlation", say(phrase("report", "correlation")), {}, Content::text, 0},
                     {"evaluation", say(phrase("report", "type")), {}, Content::text, 0},
                     {"degrees_of_freedom", say(phrase("report", "degrees of freedom")), {}, Content::text, 0},
                     {"sensitivity", say(phrase("report", "sensitivity")), {}, Content::text, 0},
                     {"standard_wh", say(phrase("report", "standard uncertainty")), "Wh", Content::number, 2},
                     {"share", say(phrase("report", "share")), "%", Content::number, 1}};
    for (const BudgetLine& line : budget.lines)
        table.rows.push_back({Message(builder.text(line.source)), say_shape(line), say_correlation(line), Message(line.evaluation),
                              say_freedom(line.degrees_of_freedom), Message(builder.text(say_sensitivity(line))), plain("Wh", line.standard_wh),
                              plain("%", 100 * line.share)});
    table.remarks.push_back(say(phrase("report", "%1."), begin_sentence(say_combined_uncertainty(budget))));
    const Message& method = budget.half_width_method;
    if (budget.half_width_wh) {
        const Message half = say_number(*budget.half_width_wh, decimals_for(*budget.half_width_wh));
        table.remarks.push_back(method.empty() ? say(phrase("report", "95 % interval ± %1 Wh."), half)
                                               : say(phrase("report", "95 % interval ± %1 Wh: %2."), half, method));
    } else if (!method.empty()) {
        table.remarks.push_back(say(phrase("report", "%1."), method));
    }
    builder.table(table);
}

void add_readings(ReportBuilder& builder, const ReportedRun& run) {
    std::size_t total = 0;
    const RunRecord part = thinned(*run.record, *run.analysis, most_report_readings, total);
    Table table = readings_table(part, *run.analysis);
    if (table.rows.empty()) {
        builder.paragraph(say(phrase("report", "No readings yet.")), run_name(run));
        return;
    }
    if (!builder.own_affairs) leave_out(table, "remark");
    const std::string& zone = part.run.time_zone;
    std::vector<UtcMs> times;
    for (const Reading& reading : part.readings)
        if (!reading.withdrawn) times.push_back(reading.values.time_ms);
    const int offset = to_local(times.front(), zone).offset_minutes;
    const bool changes = std::ranges::any_of(times, [&](UtcMs time_ms) { return to_local(time_ms, zone).offset_minutes != offset; });
    for (std::size_t r = 0; r < std::min(times.size(), table.rows.size()); ++r) table.rows[r].front() = Message(local_text(times[r], zone, changes));
    table.remarks.push_back(changes ? say(phrase("report", "Times are local to %1, with their offset."), zone)
                                    : say(phrase("report", "Times are local to %1 (%2)."), zone, offset_text(offset)));
    if (table.rows.size() < total)
        table.remarks.push_back(say(
            phrase("report", "%1 of %2 readings. %3 in between, of which there is nothing to tell, are left out, spread evenly; the run sheet holds "
                             "all of them."),
            say_number(table.rows.size()), say_number(total), say_number(total - table.rows.size())));
    table.title = run_name(run);
    builder.table(table);
}

} // namespace ullage
