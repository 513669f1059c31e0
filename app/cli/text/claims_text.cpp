// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/claims_text.h"

#include "base/number.h"
#include "base/quantity.h"
#include "cli/text/quantities_text.h"
#include "formats/results/claims_output.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

namespace ullage {

namespace {

std::string charge_text(const RunRecord& record, const EnergyAnalysis& energy) {
    const ChargeRun charge = analyse_charge(record, energy);
    std::string text = "\nCharge: " + one_line(charge.sentence.text()) + '\n' +
                       quantities_text({charge.charged_wh, charge.charge_time_h, charge.mean_charge_w, charge.peak_charge_w, charge.taper_h});
    if (charge.taper_gauge_percent) text += fmt::format("  the power began to fall at a gauge of {} %\n", exact_text(*charge.taper_gauge_percent));
    return text;
}

std::string output_text(const RunRecord& record, const EnergyAnalysis& energy) {
    const OutputRun run = analyse_output(record, energy);
    return fmt::format("\nOutput: {}. {}\n  trips {}, resets {}\n\n", output_outcome_text(run.outcome), one_line(run.sentence.text()), run.trips,
                       run.resets) +
           table_text(output_steps_table(run), TableFormat::text);
}

std::string draw_text(const char* name, const StandingDraw& draw, const std::optional<EnergyPrice>& price) {
    if (draw.draw_w.kind == Kind::not_known) return fmt::format("  {}: not known: {}\n", name, one_line(draw.draw_w.reason.text()));
    std::string text = fmt::format("  {}: {} ({}), {} a day, {} a month; {}\n", name, quantity_text(draw.draw_w, 1), kind_text(draw.draw_w.kind),
                                   quantity_text(draw.per_day_wh, 0), quantity_text(draw.per_month_wh, 0), one_line(draw.draw_w.reason.text()));
    if (draw.cost_per_day && price)
        text += fmt::format("      {} {} a day, {} {} a month, {}\n", fixed_text(*draw.cost_per_day, 3), price->currency,
                            fixed_text(*draw.cost_per_month, 2), price->currency, draw.basis.text());
    return text;
}

} // namespace

std::string tested_text(const RunRecord& record, const EnergyAnalysis& energy) {
    if (record.run.kind == RunKind::charge) return charge_text(record, energy);
    if (record.run.kind == RunKind::sustained_output || record.run.kind == RunKind::peak_output) return output_text(record, energy);
    return {};
}

std::string unit_claims_text(const UnitClaims& claims, const std::optional<EnergyPrice>& price) {
    std::string text = '\n' + table_text(claims_table(claims), TableFormat::text) + '\n' + one_line(claims.round_trip.sentence.text()) + '\n';
    if (claims.round_trip.efficiency.value)
        text += "  " + one_line(claims.round_trip.boundary.text()) + "\n  " + one_line(claims.round_trip.efficiency.reason.text()) + '\n';
    for (const RoundTripCycle& cycle : claims.round_trip.cycles)
        text += fmt::format("  run {} put in {}, run {} gave back {}, {}\n", cycle.charge_number, energy_text(cycle.charged_wh), cycle.drain_number,
                            energy_text(cycle.delivered_wh), cycle.ends.text());
    for (const PvCharge& charge : claims.pv_charges) text += one_line(charge.sentence.text()) + '\n';
    text += "\nWhat the unit takes for itself\n" + draw_text("output on", claims.draws.output_on, price) +
            draw_text("output off", claims.draws.output_off, price);
    return text;
}

} // namespace ullage
