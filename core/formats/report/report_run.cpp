// SPDX-License-Identifier: GPL-3.0-or-later
// The report of one run.
#include "base/number.h"
#include "base/quantity.h"
#include "forecast/accounts.h"
#include "formats/report/inside/report_parts.h"
#include "formats/text/quantity_title.h"
#include "formats/text/safety_words.h"
#include "unit/loss_split.h"

#include <fmt/format.h>

namespace ullage {

namespace {

using Content = TableColumn::Content;

std::string how_it_ended(const Run& run) {
    const bool full = run.started_full.value_or(false);
    switch (run.end) {
    case RunEnd::cut_off_seen: return full ? "from full to its cut-off" : "down to its cut-off";
    case RunEnd::found_off: return full ? "from full until it was found off" : "until it was found off";
    case RunEnd::stopped_by_tester: return "until the tester stopped it";
    case RunEnd::still_running: return "so far; the run is still open";
    }
    return {};
}

/// The run in one sentence or two.
std::string summary_sentence(const RunRecord& record, const EnergyAnalysis& energy) {
    std::string text;
    const bool drain = record.run.kind == RunKind::drain || record.run.kind == RunKind::no_load_drain;
    if (energy.delivered_wh.kind == Kind::not_known)
        text = fmt::format("What {} {} is not known: {}", record.unit.name, drain ? "delivered" : "took", energy.delivered_wh.reason.text());
    else
        text = drain ? fmt::format("{} delivered {}", record.unit.name, value_text(energy.delivered_wh))
                     : fmt::format("In this {} run of {} the meter counted {}", run_kind_text(record.run.kind), record.unit.name,
                                   value_text(energy.delivered_wh));
    if (drain && record.unit.rated_energy_wh) text += fmt::format(" (rated {})", energy_text(*record.unit.rated_energy_wh));
    if (drain) text += ' ' + how_it_ended(record.run);
    if (energy.mean_load_w.kind != Kind::not_known) text += ", at a mean load of " + value_text(energy.mean_load_w);
    if (energy.duration_h.kind != Kind::not_known) text += ", in " + value_text(energy.duration_h);
    text += '.';
    if (record.run.kind != RunKind::drain) return text;
    if (energy.usable_fraction.kind == Kind::not_known) return text + " The usable fraction is not known: " + energy.usable_fraction.reason + ".";
    return text +
           fmt::format(" That is {} of its label ({}), at this load.", value_text(energy.usable_fraction), kind_text(energy.usable_fraction.kind));
}

void add_summary(ReportBuilder& builder, const ReportedRun& run, const LossSplit& split) {
    const EnergyAnalysis& energy = run.analysis->energy;
    builder.chapter("Summary");
    builder.paragraph(summary_sentence(*run.record, energy));
    ReportFigures figures;
    for (const Quantity* quantity :
         {&energy.usable_fraction, &energy.delivered_wh, &energy.mean_load_w, &energy.duration_h, &energy.wh_per_gauge_point})
        figures.figures.push_back(figure_of(*quantity, builder.form));
    builder.report.blocks.emplace_back(std::move(figures));
    builder.paragraph(run.analysis->gauge.verdict.text(), "Gauge");
    if (builder.own_affairs) builder.paragraph(run.analysis->gauge.sharpening.text(), "To know more");
    builder.paragraph(split.sentence.text(), "Where the energy went");
    builder.paragraph(std::string(specimen_words));
    builder.picture(
        report_picture_key("vessel", run.record->run.uuid.text()),
        "The unit as a vessel: its height is the rated energy, filled what was delivered, hatched what its own draw took where that is known.");
}

void add_results(ReportBuilder& builder, const std::vector<NamedQuantity>& quantities) {
    builder.chapter("Results");
    Table table;
    for (const char* title : {"result", "value", "status"}) table.columns.push_back({title, title, {}, Content::text, 0});
    for (const auto& [whose, quantity] : quantities)
        table.rows.push_back({quantity_title(quantity.key), builder.form.apply(value_text(quantity)), std::string(kind_text(quantity.kind))});
    table.remarks.push_back("After ± stands half the width of an interval meant to cover 95 %.");
    builder.table(table);
}

/// What a drain that did not reach its cut-off says, told twice.
void add_accounts(ReportBuilder& builder, const ReportedRun& run, const UnitFit& unit_fit) {
    const std::vector<std::string> lines =
        texts(account_lines(two_accounts(*run.record, run.analysis->energy, unit_fit, unit_fit.options), run.record->run));
    if (lines.empty()) return;
    builder.chapter("Gauge right, gauge wrong");
    for (const std::string& line : lines) builder.paragraph(line);
}

} // namespace

Report run_report(const ReportedRun& run, const UnitFit& unit_fit, const ReportOptions& options) {
    ReportBuilder builder({run}, options);
    const RunRecord& record = *run.record;
    builder.report.title = run_name(run);
    builder.report.subtitle = fmt::format("Test report of run {}{}", record.number, record.unit.maker.empty() ? "" : "; maker " + record.unit.maker);
    const LossSplit split = split_losses(record, *run.analysis, unit_fit);
    std::vector<NamedQuantity> quantities;
    for (const Quantity& quantity : run.analysis->quantities) quantities.push_back({{}, quantity});
    for (const Quantity* quantity : {&split.undelivered_wh, &split.no_load_taken_wh, &split.rest_wh}) quantities.push_back({{}, *quantity});

    add_summary(builder, run, split);
    add_accounts(builder, run, unit_fit);
    add_measured_with(builder, {run});
    add_results(builder, quantities);
    builder.paragraph(run.analysis->energy.log_sentence.text(), record.gauge_log || !record.other_logs.empty() ? "Logs" : "Log of the meter");
    for (const Message& remark : run.analysis->energy.meter_remarks) builder.paragraph(remark.text(), "Meter");
    add_assumed_of_register(builder, run);
    builder.paragraph(repeats_sentence(unit_fit.repeats, unit_fit.options).text(), "Repeats");
    builder.paragraph(builder.told(unit_fit.sentence), "All drains of this unit together");
    add_not_known(builder, quantities);
    builder.chapter("Charts");
    add_charts(builder, run);
    builder.chapter("Findings");
    add_findings(builder, run);
    builder.paragraph(run.analysis->gauge.losses.sentence.text());
    builder.chapter("Uncertainty budget");
    add_budget(builder, run);
    add_method(builder, unit_fit.options);
    builder.chapter("Readings");
    add_readings(builder, run);
    add_amendments(builder, {run});
    add_cautions_and_about(builder);
    return std::move(builder.report);
}

} // namespace ullage
