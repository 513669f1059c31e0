// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/analysis_text.h"

#include "base/number.h"
#include "base/quantity.h"
#include "cli/text/quantities_text.h"
#include "formats/results/comparison_table.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

std::string heading(const RunRecord& record, const RunAnalysis& analysis) {
    std::string line = record.unit.name;
    if (!record.unit.maker.empty()) line += " (" + record.unit.maker + ")";
    line = one_line(fmt::format("{}, run {}: {}", line, record.number, run_title(record, analysis.energy).text()));
    std::string about = fmt::format("ended: {}", run_end_text(record.run.end));
    if (record.unit.rated_energy_wh) about += fmt::format("; rated {}", energy_text(*record.unit.rated_energy_wh));
    if (record.meter) about += "; meter " + record.meter->name;
    return line + '\n' + std::string(display_width(line), '=') + '\n' + one_line(about) + '\n';
}

std::string corrections_text(const RunRecord& record, const std::vector<RegisterCorrection>& register_corrections) {
    if (register_corrections.empty()) return {};
    std::string text = "\nAssumed of the register\n";
    for (const RegisterCorrection& register_correction : register_corrections) {
        const auto at = std::ranges::find(record.readings, register_correction.reading_uuid, &Reading::uuid);
        std::string line;
        if (at != record.readings.end()) line += format_iso8601(at->values.time_ms, record.run.time_zone) + ' ';
        line += fmt::format("{}: {}", register_correction_text(register_correction.kind), register_correction.reason.text());
        if (register_correction.missing_wh) line += fmt::format(" (about {} may be missing)", energy_text(*register_correction.missing_wh));
        text += "  " + one_line(line) + '\n';
    }
    return text;
}

std::string remarks_text(const std::vector<Message>& remarks) {
    std::string text = remarks.empty() ? "" : "\nOf the meter\n";
    for (const Message& remark : remarks) text += "  " + one_line(remark.text()) + '\n';
    return text;
}

std::string budget_text(const Budget& budget) {
    if (budget.lines.empty()) return {};
    Table table;
    table.title = "Uncertainty of the delivered energy";
    table.columns = {{"source", "source", {}, Content::text, 0},
                     {"shape", "shape", {}, Content::text, 0},
                     {"correlation", "correlation", {}, Content::text, 0},
                     {"evaluation", "type", {}, Content::text, 0},
                     {"degrees_of_freedom", "degrees of freedom", {}, Content::text, 0},
                     {"sensitivity", "sensitivity", {}, Content::text, 0},
                     {"standard_wh", "standard uncertainty", "Wh", Content::number, 2},
                     {"share", "share", "%", Content::number, 1}};
    const auto number = [](const char* unit, double value) { return known({}, unit, value, std::nullopt, Kind::measured); };
    for (const BudgetLine& line : budget.lines)
        table.rows.push_back({line.source.text(), say_shape(line).text(), say_correlation(line).text(), line.evaluation,
                              say_freedom(line.degrees_of_freedom).text(), say_sensitivity(line).text(), number("Wh", line.standard_wh),
                              number("%", 100 * line.share)});
    std::string half_width = budget.half_width_wh
                                 ? fmt::format("95 % interval ±{} Wh", fixed_text(*budget.half_width_wh, decimals_for(*budget.half_width_wh)))
                                 : std::string();
    if (!budget.half_width_method.empty()) half_width += (half_width.empty() ? "" : ": ") + budget.half_width_method;
    table.remarks = {fmt::format("{}; {}", say_combined_uncertainty(budget).text(), half_width)};
    return '\n' + table_text(table, TableFormat::text);
}

/// Where the energy went, and what one run says of it by its gauge.
std::string losses_text(const GaugeAnalysis& gauge, const LossSplit& split) {
    std::string text = "\nWhere the energy went\n";
    for (const Message* sentence : {&split.sentence, &gauge.losses.sentence, &gauge.feasibility.sentence})
        if (!sentence->empty()) text += "  " + one_line(sentence->text()) + '\n';
    return text;
}

std::string findings_text(const GaugeAnalysis& gauge) {
    std::string text = "\nGauge: " + one_line(gauge.verdict.text()) + '\n';
    for (const Finding& finding : gauge.findings) {
        text += fmt::format("  [{}] {}\n", weight_text(finding.weight), one_line(finding.sentence.text()));
        if (!finding.evidence.empty()) text += "      " + one_line(finding.evidence.text()) + '\n';
    }
    if (!gauge.sharpening.empty()) text += "  " + one_line(gauge.sharpening.text()) + '\n';
    return text;
}

} // namespace

std::string analysis_text(const RunRecord& record, const RunAnalysis& analysis, const LossSplit& split) {
    const std::string of_log = analysis.energy.log_sentence.text();
    std::string text = heading(record, analysis) + quantities_text(analysis.quantities) + (of_log.empty() ? "" : '\n' + one_line(of_log) + '\n') +
                       remarks_text(analysis.energy.meter_remarks) + corrections_text(record, analysis.energy.track.register_corrections) +
                       budget_text(analysis.energy.budget);
    if (!analysis.energy.intervals.empty()) {
        StreamedTable intervals = table_of_run(RunTable::intervals, record, analysis);
        intervals.title = "Intervals";
        text += '\n' + table_text(intervals, TableFormat::text);
    }
    return text + losses_text(analysis.gauge, split) + findings_text(analysis.gauge);
}

} // namespace ullage
