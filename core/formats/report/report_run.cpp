// SPDX-License-Identifier: GPL-3.0-or-later
// The report of one run.
#include "base/number.h"
#include "base/quantity.h"
#include "forecast/accounts.h"
#include "formats/report/inside/report_parts.h"
#include "formats/text/quantity_title.h"
#include "formats/text/safety_words.h"
#include "unit/loss_split.h"

namespace ullage {

namespace {

using Content = TableColumn::Content;

/// The clause of what was delivered with how the run ended behind it.
Message with_end(const Message& delivered, const Run& run) {
    const bool full = run.started_full.value_or(false);
    switch (run.end) {
    case RunEnd::cut_off_seen:
        return full ? say(phrase("report", "%1 from full to its cut-off"), delivered) : say(phrase("report", "%1 down to its cut-off"), delivered);
    case RunEnd::found_off:
        return full ? say(phrase("report", "%1 from full until it was found off"), delivered)
                    : say(phrase("report", "%1 until it was found off"), delivered);
    case RunEnd::stopped_by_tester: return say(phrase("report", "%1 until the tester stopped it"), delivered);
    case RunEnd::still_running: return say(phrase("report", "%1 so far; the run is still open"), delivered);
    }
    return delivered;
}

/// What the meter counted in a run that is no drain.
Phrase counted_words(RunKind kind) {
    switch (kind) {
    case RunKind::charge: return phrase("report", "In this charge run of %1 the meter counted %2");
    case RunKind::sustained_output: return phrase("report", "In this sustained output run of %1 the meter counted %2");
    case RunKind::peak_output: return phrase("report", "In this peak output run of %1 the meter counted %2");
    case RunKind::standby: return phrase("report", "In this standby run of %1 the meter counted %2");
    case RunKind::drain:
    case RunKind::no_load_drain: break;
    }
    return phrase("report", "%1 delivered %2");
}

/// The run in one sentence or two.
Message summary_sentence(const RunRecord& record, const EnergyAnalysis& energy) {
    const bool drain = record.run.kind == RunKind::drain || record.run.kind == RunKind::no_load_drain;
    Message clause = energy.delivered_wh.kind != Kind::not_known
                         ? say(counted_words(record.run.kind), record.unit.name, say_value(energy.delivered_wh))
                         : say(drain ? phrase("report", "What %1 delivered is not known: %2") : phrase("report", "What %1 took is not known: %2"),
                               record.unit.name, energy.delivered_wh.reason);
    if (drain && record.unit.rated_energy_wh) clause = say(phrase("report", "%1 (rated %2)"), clause, say_energy(*record.unit.rated_energy_wh));
    if (drain) clause = with_end(clause, record.run);
    if (energy.mean_load_w.kind != Kind::not_known) clause = say(phrase("report", "%1, at a mean load of %2"), clause, say_value(energy.mean_load_w));
    if (energy.duration_h.kind != Kind::not_known) clause = say(phrase("report", "%1, in %2"), clause, say_value(energy.duration_h));
    const Message sentence = say(phrase("report", "%1."), clause);
    if (record.run.kind != RunKind::drain) return sentence;
    const Quantity& fraction = energy.usable_fraction;
    return say_joined({sentence, fraction.kind == Kind::not_known ? say(phrase("report", "The usable fraction is not known: %1."), fraction.reason)
                                                                  : say(phrase("report", "That is %1 of its label (%2), at this load."),
                                                                        say_value(fraction), say_kind(fraction.kind))},
                      " ");
}

void add_summary(ReportBuilder& builder, const ReportedRun& run, const LossSplit& split) {
    const EnergyAnalysis& energy = run.analysis->energy;
    builder.chapter(say(phrase("report", "Summary")));
    builder.paragraph(summary_sentence(*run.record, energy));
    ReportFigures figures;
    for (const Quantity* quantity :
         {&energy.usable_fraction, &energy.delivered_wh, &energy.mean_load_w, &energy.duration_h, &energy.wh_per_gauge_point})
        figures.figures.push_back(figure_of(*quantity, builder.form));
    builder.report.blocks.emplace_back(std::move(figures));
    builder.paragraph(run.analysis->gauge.verdict, say(phrase("report", "Gauge")));
    if (builder.own_affairs) builder.paragraph(run.analysis->gauge.sharpening, say(phrase("report", "To know more")));
    builder.paragraph(split.sentence, say(phrase("report", "Where the energy went")));
    builder.paragraph(say(specimen_words));
    builder.picture(
        report_picture_key("vessel", run.record->run.uuid.text()),
        say(phrase(
            "report",
            "The unit as a vessel: its height is the rated energy, filled what was delivered, hatched what its own draw took where that is known.")));
}

void add_results(ReportBuilder& builder, const std::vector<NamedQuantity>& quantities) {
    builder.chapter(say(phrase("report", "Results")));
    Table table;
    table.columns = {{"result", say(phrase("report", "result")), {}, Content::text, 0},
                     {"value", say(phrase("report", "value")), {}, Content::text, 0},
                     {"status", say(phrase("report", "status")), {}, Content::text, 0}};
    for (const auto& [whose, quantity] : quantities)
        table.rows.push_back({quantity_title(quantity.key), Message(builder.text(say_value(quantity))), say_kind(quantity.kind)});
    table.remarks.push_back(say_what_intervals_are());
    builder.table(table);
}

/// What a drain that did not reach its cut-off says, told twice.
void add_accounts(ReportBuilder& builder, const ReportedRun& run, const UnitFit& unit_fit) {
    const std::vector<Message> lines = account_lines(two_accounts(*run.record, run.analysis->energy, unit_fit, unit_fit.options), run.record->run);
    if (lines.empty()) return;
    builder.chapter(say(phrase("report", "Gauge right, gauge wrong")));
    for (const Message& line : lines) builder.paragraph(line);
}

} // namespace

Report run_report(const ReportedRun& run, const UnitFit& unit_fit, const ReportOptions& options) {
    ReportBuilder builder({run}, options);
    const RunRecord& record = *run.record;
    builder.report.title = run_name(run);
    builder.report.subtitle = record.unit.maker.empty()
                                  ? say(phrase("report", "Test report of run %1"), say_number(record.number))
                                  : say(phrase("report", "Test report of run %1; maker %2"), say_number(record.number), record.unit.maker);
    const LossSplit split = split_losses(record, *run.analysis, unit_fit);
    std::vector<NamedQuantity> quantities;
    for (const Quantity& quantity : run.analysis->quantities) quantities.push_back({{}, quantity});
    for (const Quantity* quantity : {&split.undelivered_wh, &split.no_load_taken_wh, &split.rest_wh}) quantities.push_back({{}, *quantity});

    add_summary(builder, run, split);
    add_accounts(builder, run, unit_fit);
    add_measured_with(builder, {run});
    add_results(builder, quantities);
    builder.paragraph(run.analysis->energy.log_sentence,
                      record.gauge_log || !record.other_logs.empty() ? say(phrase("report", "Logs")) : say(phrase("report", "Log of the meter")));
    for (const auto& remark : run.analysis->energy.meter_remarks) builder.paragraph(remark, say(phrase("report", "Meter")));
    add_assumed_of_register(builder, run);
    builder.paragraph(repeats_sentence(unit_fit.repeats, unit_fit.options), say(phrase("report", "Repeats")));
    builder.paragraph(builder.told(unit_fit.sentence), say(phrase("report", "All drains of this unit together")));
    add_not_known(builder, quantities);
    builder.chapter(say(phrase("report", "Charts")));
    add_charts(builder, run);
    builder.chapter(say(phrase("report", "Findings")));
    add_findings(builder, run);
    builder.paragraph(run.analysis->gauge.losses.sentence);
    builder.chapter(say(phrase("report", "Uncertainty budget")));
    add_budget(builder, run);
    add_method(builder, unit_fit.options);
    builder.chapter(say(phrase("report", "Readings")));
    add_readings(builder, run);
    add_amendments(builder, {run});
    add_cautions_and_about(builder);
    return std::move(builder.report);
}

} // namespace ullage
