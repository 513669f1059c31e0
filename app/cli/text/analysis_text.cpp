// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/analysis_text.h"

#include "base/number.h"
#include "base/quantity.h"
#include "cli/text/command_parts.h"
#include "cli/text/quantities_text.h"
#include "formats/results/comparison_table.h"
#include "formats/text/table_unicode.h"

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

std::string heading(const RunRecord& record, const RunAnalysis& analysis) {
    const Message unit =
        record.unit.maker.empty() ? Message(record.unit.name) : say(phrase("commands", "%1 (%2)"), record.unit.name, record.unit.maker);
    const std::string line =
        one_line(say(phrase("commands", "%1, run %2: %3"), unit, say_number(record.number), run_title(record, analysis.energy)).text());
    std::vector<Message> about{say(phrase("commands", "ended: %1"), say_run_end(record.run.end))};
    if (record.unit.rated_energy_wh) about.push_back(say(phrase("commands", "rated %1"), say_energy(*record.unit.rated_energy_wh)));
    if (record.meter) about.push_back(say(phrase("commands", "meter %1"), record.meter->name));
    return line + '\n' + std::string(display_width(line), '=') + '\n' + line_of(say_joined(about, "; "));
}

std::string corrections_text(const RunRecord& record, const std::vector<RegisterCorrection>& register_corrections) {
    if (register_corrections.empty()) return {};
    std::string text = '\n' + line_of(say(phrase("commands", "Assumed of the register")));
    for (const RegisterCorrection& register_correction : register_corrections) {
        const auto at = std::ranges::find(record.readings, register_correction.reading_uuid, &Reading::uuid);
        Message line = say(phrase("commands", "%1: %2"), say_register_correction(register_correction.kind), register_correction.reason);
        if (register_correction.missing_wh)
            line = say(phrase("commands", "%1 (about %2 may be missing)"), line, say_energy(*register_correction.missing_wh));
        if (at != record.readings.end()) line = Message(format_iso8601(at->values.time_ms, record.run.time_zone) + ' ') + line;
        text += "  " + line_of(line);
    }
    return text;
}

std::string remarks_text(const std::vector<Message>& remarks) {
    std::string text = remarks.empty() ? std::string() : '\n' + line_of(say(phrase("commands", "Of the meter")));
    for (const Message& remark : remarks) text += "  " + line_of(remark);
    return text;
}

std::string budget_text(const Budget& budget) {
    if (budget.lines.empty()) return {};
    Table table;
    table.title = say(phrase("commands", "Uncertainty of the delivered energy"));
    table.columns = {{"source", say(phrase("commands", "source")), {}, Content::text, 0},
                     {"shape", say(phrase("commands", "shape")), {}, Content::text, 0},
                     {"correlation", say(phrase("commands", "correlation")), {}, Content::text, 0},
                     {"evaluation", say(phrase("commands", "type")), {}, Content::text, 0},
                     {"degrees_of_freedom", say(phrase("commands", "degrees of freedom")), {}, Content::text, 0},
                     {"sensitivity", say(phrase("commands", "sensitivity")), {}, Content::text, 0},
                     {"standard_wh", say(phrase("commands", "standard uncertainty")), "Wh", Content::number, 2},
                     {"share", say(phrase("commands", "share")), "%", Content::number, 1}};
    const auto number = [](const char* unit, double value) { return known({}, unit, value, std::nullopt, Kind::measured); };
    for (const BudgetLine& line : budget.lines)
        table.rows.push_back({line.source, say_shape(line), say_correlation(line), Message(line.evaluation), say_freedom(line.degrees_of_freedom),
                              say_sensitivity(line), number("Wh", line.standard_wh), number("%", 100 * line.share)});
    std::vector<Message> clauses{say_combined_uncertainty(budget)};
    if (budget.half_width_wh) {
        const Message half = say_number(*budget.half_width_wh, decimals_for(*budget.half_width_wh));
        clauses.push_back(budget.half_width_method.empty() ? say(phrase("commands", "95 % interval ±%1 Wh"), half)
                                                           : say(phrase("commands", "95 % interval ±%1 Wh: %2"), half, budget.half_width_method));
    } else {
        clauses.push_back(budget.half_width_method);
    }
    table.remarks = {say_joined(clauses, "; ")};
    return '\n' + table_text(table, TableFormat::text);
}

/// Where the energy went, and what one run says of it by its gauge.
std::string losses_text(const GaugeAnalysis& gauge, const LossSplit& split) {
    std::string text = '\n' + line_of(say(phrase("commands", "Where the energy went")));
    for (const Message* sentence : {&split.sentence, &gauge.losses.sentence, &gauge.feasibility.sentence})
        if (!sentence->empty()) text += "  " + line_of(*sentence);
    return text;
}

std::string findings_text(const GaugeAnalysis& gauge) {
    std::string text = '\n' + line_of(say(phrase("commands", "Gauge: %1"), gauge.verdict));
    for (const Finding& finding : gauge.findings) {
        text += "  " + line_of(say(phrase("commands", "[%1] %2"), say_weight(finding.weight), finding.sentence));
        if (!finding.evidence.empty()) text += "      " + line_of(finding.evidence);
    }
    if (!gauge.sharpening.empty()) text += "  " + line_of(gauge.sharpening);
    return text;
}

} // namespace

std::string analysis_text(const RunRecord& record, const RunAnalysis& analysis, const LossSplit& split) {
    const Message& of_log = analysis.energy.log_sentence;
    std::string text = heading(record, analysis) + quantities_text(analysis.quantities) + (of_log.empty() ? "" : '\n' + line_of(of_log)) +
                       remarks_text(analysis.energy.meter_remarks) + corrections_text(record, analysis.energy.track.register_corrections) +
                       budget_text(analysis.energy.budget);
    if (!analysis.energy.intervals.empty()) {
        StreamedTable intervals = table_of_run(RunTable::intervals, record, analysis);
        intervals.title = say(phrase("commands", "Intervals"));
        text += '\n' + table_text(intervals, TableFormat::text);
    }
    return text + losses_text(analysis.gauge, split) + findings_text(analysis.gauge);
}

} // namespace ullage
