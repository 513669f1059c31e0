// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/unit_text.h"

#include "cli/text/command_parts.h"
#include "cli/text/quantities_text.h"
#include "formats/results/unit_tables.h"
#include "formats/tables/table.h"
#include "formats/text/table_unicode.h"
#include "unit/gauge_drift_words.h"

namespace ullage {

namespace {

using Content = TableColumn::Content;

std::string heading(const UnitAnalysis& analysis) {
    const std::string line = one_line(say(phrase("commands", "All drains of %1 together"), analysis.unit.name).text());
    const Message repeats = repeats_sentence(analysis.fit.repeats, analysis.fit.options);
    return line + '\n' + std::string(display_width(line), '=') + '\n' + (repeats.empty() ? std::string() : line_of(repeats)) +
           line_of(analysis.fit.sentence);
}

Quantity plain(const char* unit, double value) { return known({}, unit, value, std::nullopt, Kind::measured); }

TableCell residual_cell(const DrainSummary& drain) {
    if (!drain.residual_wh) return Message();
    return plain("Wh", *drain.residual_wh);
}

std::string used_text(const UnitFit& fit) {
    if (fit.used_drains == 0) return {};
    Table table;
    table.title = say(phrase("commands", "Drains used"));
    table.columns = {{"run", say(phrase("commands", "run")), {}, Content::text, 0},
                     {"title", say(phrase("commands", "drain")), {}, Content::text, 0},
                     {"mean_load_w", say(phrase("commands", "mean load")), "W", Content::number, 1},
                     {"hours", say(phrase("commands", "time")), "h", Content::number, 2},
                     {"delivered_wh", say(phrase("commands", "delivered")), "Wh", Content::number, 0},
                     {"residual_wh", say(phrase("commands", "beyond the fit")), "Wh", Content::number, 1}};
    for (const DrainSummary& drain : fit.drains)
        if (drain.used)
            table.rows.push_back({say_number(drain.run_number), Message(drain.title), plain("W", drain.mean_load_w), plain("h", drain.hours),
                                  plain("Wh", drain.delivered_wh), residual_cell(drain)});
    return '\n' + table_text(table, TableFormat::text);
}

std::string unused_text(const UnitFit& fit) {
    std::string text;
    for (const DrainSummary& drain : fit.drains)
        if (!drain.used) text += "  " + line_of(say(phrase("commands", "run %1, %2: %3"), say_number(drain.run_number), drain.title, drain.reason));
    return text.empty() ? text : '\n' + line_of(say(phrase("commands", "Drains not used"))) + text;
}

std::string predictions_text(const UnitAnalysis& analysis) {
    const Table table = predictions_table(analysis);
    return table.rows.empty() ? std::string() : '\n' + table_text(table, TableFormat::text);
}

std::string gauge_drift_text(const UnitAnalysis& analysis) {
    const GaugeDrift& drift = analysis.gauge_drift;
    std::string text = line_of(say(phrase("commands", "Gauge from run to run: %1"), drift.sentence));
    if (!drift.lead) return text;
    text += "  " + line_of(wh_per_point_sentence(analysis.fit, drift.comparisons[*drift.lead]));
    Table table;
    table.title = say(phrase("commands", "Full drains at like loads, run to run"));
    table.columns = {{"runs", say(phrase("commands", "runs")), {}, Content::text, 0},
                     {"wh_per_gauge_point", say(phrase("commands", "Wh per gauge point")), "%", Content::quantity, 1},
                     {"energy", say(phrase("commands", "energy")), "%", Content::quantity, 1},
                     {"shift_pt", say(phrase("commands", "gauge curve")), "pt", Content::quantity, 1},
                     {"depth_percent", say(phrase("commands", "at depth")), "%", Content::number, 0},
                     {"p", say(phrase("commands", "p of the curve")), {}, Content::text, 0},
                     {"moved", say(phrase("commands", "moved")), {}, Content::text, 0}};
    for (const DrainComparison& pair : drift.comparisons)
        table.rows.push_back({say(phrase("commands", "%1 to %2"), say_number(analysis.fit.drains[pair.earlier].run_number),
                                  say_number(analysis.fit.drains[pair.later].run_number)),
                              pair.wh_per_point.change_percent, pair.energy.change_percent,
                              known("shift_pt", "pt", pair.curve.size_pt, pair.curve.half_width_pt, Kind::measured),
                              plain("%", pair.curve.depth_percent), say_p(pair.adjusted_p),
                              pair.curve_moved ? say(phrase("commands", "yes")) : say(phrase("commands", "no"))});
    table.remarks = {say(phrase("commands", "Changes of Wh per gauge point and of the energy are corrected for the loads."))};
    return text + '\n' + table_text(table, TableFormat::text);
}

} // namespace

std::string unit_text(const UnitAnalysis& analysis) {
    const UnitFit& fit = analysis.fit;
    return heading(analysis) +
           quantities_text({fit.no_load_draw_w, fit.deliverable_at_no_time_cost_wh, fit.no_load_endurance_h, fit.curvature_per_w}) + used_text(fit) +
           unused_text(fit) + predictions_text(analysis) + '\n' + line_of(say(phrase("commands", "Next run: %1"), analysis.next_run_sentence)) +
           line_of(say(phrase("commands", "Drift: %1"), analysis.drift.sentence)) + gauge_drift_text(analysis);
}

} // namespace ullage
