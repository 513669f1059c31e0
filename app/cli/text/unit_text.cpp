// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/unit_text.h"

#include "cli/text/quantities_text.h"
#include "formats/results/unit_tables.h"
#include "formats/tables/table.h"
#include "formats/text/table_unicode.h"
#include "unit/gauge_drift_words.h"

#include <fmt/format.h>

namespace ullage {

namespace {

using Content = TableColumn::Content;

std::string heading(const UnitAnalysis& analysis) {
    const std::string line = one_line(fmt::format("All drains of {} together", analysis.unit.name));
    const std::string repeats = one_line(repeats_sentence(analysis.fit.repeats, analysis.fit.options).text());
    return line + '\n' + std::string(display_width(line), '=') + '\n' + repeats + (repeats.empty() ? "" : "\n") + one_line(analysis.fit.sentence) +
           '\n';
}

Quantity plain(const char* unit, double value) { return known({}, unit, value, std::nullopt, Kind::measured); }

TableCell residual_cell(const DrainSummary& drain) {
    if (!drain.residual_wh) return std::string();
    return plain("Wh", *drain.residual_wh);
}

std::string used_text(const UnitFit& fit) {
    if (fit.used_drains == 0) return {};
    Table table;
    table.title = "Drains used";
    table.columns = {{"run", "run", {}, Content::text, 0},
                     {"title", "drain", {}, Content::text, 0},
                     {"mean_load_w", "mean load", "W", Content::number, 1},
                     {"hours", "time", "h", Content::number, 2},
                     {"delivered_wh", "delivered", "Wh", Content::number, 0},
                     {"residual_wh", "beyond the fit", "Wh", Content::number, 1}};
    for (const DrainSummary& drain : fit.drains)
        if (drain.used)
            table.rows.push_back({std::to_string(drain.run_number), drain.title, plain("W", drain.mean_load_w), plain("h", drain.hours),
                                  plain("Wh", drain.delivered_wh), residual_cell(drain)});
    return '\n' + table_text(table, TableFormat::text);
}

std::string unused_text(const UnitFit& fit) {
    std::string text;
    for (const DrainSummary& drain : fit.drains)
        if (!drain.used) text += "  " + one_line(fmt::format("run {}, {}: {}", drain.run_number, drain.title, drain.reason.text())) + '\n';
    return text.empty() ? text : "\nDrains not used\n" + text;
}

std::string predictions_text(const UnitAnalysis& analysis) {
    const Table table = predictions_table(analysis);
    return table.rows.empty() ? std::string() : '\n' + table_text(table, TableFormat::text);
}

std::string gauge_drift_text(const UnitAnalysis& analysis) {
    const GaugeDrift& drift = analysis.gauge_drift;
    std::string text = "Gauge from run to run: " + one_line(drift.sentence.text()) + '\n';
    if (!drift.lead) return text;
    text += "  " + one_line(wh_per_point_sentence(analysis.fit, drift.comparisons[*drift.lead]).text()) + '\n';
    Table table;
    table.title = "Full drains at like loads, run to run";
    table.columns = {{"runs", "runs", {}, Content::text, 0},
                     {"wh_per_gauge_point", "Wh per gauge point", "%", Content::quantity, 1},
                     {"energy", "energy", "%", Content::quantity, 1},
                     {"shift_pt", "gauge curve", "pt", Content::quantity, 1},
                     {"depth_percent", "at depth", "%", Content::number, 0},
                     {"p", "p of the curve", {}, Content::text, 0},
                     {"moved", "moved", {}, Content::text, 0}};
    for (const DrainComparison& pair : drift.comparisons)
        table.rows.push_back({fmt::format("{} to {}", analysis.fit.drains[pair.earlier].run_number, analysis.fit.drains[pair.later].run_number),
                              pair.wh_per_point.change_percent, pair.energy.change_percent,
                              known("shift_pt", "pt", pair.curve.size_pt, pair.curve.half_width_pt, Kind::measured),
                              plain("%", pair.curve.depth_percent), say_p(pair.adjusted_p).text(), std::string(pair.curve_moved ? "yes" : "no")});
    table.remarks = {"Changes of Wh per gauge point and of the energy are corrected for the loads."};
    return text + '\n' + table_text(table, TableFormat::text);
}

} // namespace

std::string unit_text(const UnitAnalysis& analysis) {
    const UnitFit& fit = analysis.fit;
    return heading(analysis) +
           quantities_text({fit.no_load_draw_w, fit.deliverable_at_no_time_cost_wh, fit.no_load_endurance_h, fit.curvature_per_w}) + used_text(fit) +
           unused_text(fit) + predictions_text(analysis) + "\nNext run: " + one_line(analysis.next_run_sentence) +
           "\nDrift: " + one_line(analysis.drift.sentence.text()) + '\n' + gauge_drift_text(analysis);
}

} // namespace ullage
