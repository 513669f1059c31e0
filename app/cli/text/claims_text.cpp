// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/claims_text.h"

#include "base/number.h"
#include "base/quantity.h"
#include "cli/text/command_parts.h"
#include "cli/text/quantities_text.h"
#include "formats/results/claims_output.h"

namespace ullage {

namespace {

std::string charge_text(const RunRecord& record, const EnergyAnalysis& energy) {
    const ChargeRun charge = analyse_charge(record, energy);
    std::string text = '\n' + line_of(say(phrase("commands", "Charge: %1"), charge.sentence)) +
                       quantities_text({charge.charged_wh, charge.charge_time_h, charge.mean_charge_w, charge.peak_charge_w, charge.taper_h});
    if (charge.taper_gauge_percent)
        text += "  " +
                line_of(say(phrase("commands", "the power began to fall at a gauge of %1 %"), say_digits(exact_text(*charge.taper_gauge_percent))));
    return text;
}

std::string output_text(const RunRecord& record, const EnergyAnalysis& energy) {
    const OutputRun run = analyse_output(record, energy);
    return '\n' + line_of(say(phrase("commands", "Output: %1. %2"), say_output_outcome(run.outcome), run.sentence)) + "  " +
           line_of(say(phrase("commands", "trips %1, resets %2"), say_number(run.trips), say_number(run.resets))) + '\n' +
           table_text(output_steps_table(run), TableFormat::text);
}

std::string draw_text(const Message& name, const StandingDraw& draw, const std::optional<EnergyPrice>& price) {
    if (draw.draw_w.kind == Kind::not_known) return "  " + line_of(say(phrase("commands", "%1: not known: %2"), name, draw.draw_w.reason));
    std::string text =
        "  " + line_of(say(phrase("commands", "%1: %2 (%3), %4 a day, %5 a month; %6"), name, say_quantity(draw.draw_w, 1),
                           say_kind(draw.draw_w.kind), say_quantity(draw.per_day_wh, 0), say_quantity(draw.per_month_wh, 0), draw.draw_w.reason));
    if (draw.cost_per_day && price)
        text += "      " + line_of(say(phrase("commands", "%1 %2 a day, %3 %2 a month, %4"), say_number(*draw.cost_per_day, 3), price->currency,
                                       say_number(*draw.cost_per_month, 2), draw.basis));
    return text;
}

} // namespace

std::string tested_text(const RunRecord& record, const EnergyAnalysis& energy) {
    if (record.run.kind == RunKind::charge) return charge_text(record, energy);
    if (record.run.kind == RunKind::sustained_output || record.run.kind == RunKind::peak_output) return output_text(record, energy);
    return {};
}

std::string unit_claims_text(const UnitClaims& claims, const std::optional<EnergyPrice>& price) {
    std::string text = '\n' + table_text(claims_table(claims), TableFormat::text) + '\n' + line_of(claims.round_trip.sentence);
    if (claims.round_trip.efficiency.value) text += "  " + line_of(claims.round_trip.boundary) + "  " + line_of(claims.round_trip.efficiency.reason);
    for (const RoundTripCycle& cycle : claims.round_trip.cycles)
        text += "  " + line_of(say(phrase("commands", "run %1 put in %2, run %3 gave back %4, %5"), say_number(cycle.charge_number),
                                   say_energy(cycle.charged_wh), say_number(cycle.drain_number), say_energy(cycle.delivered_wh), cycle.ends));
    for (const PvCharge& charge : claims.pv_charges) text += line_of(charge.sentence);
    text += '\n' + line_of(say(phrase("commands", "What the unit takes for itself"))) +
            draw_text(say(phrase("commands", "output on")), claims.draws.output_on, price) +
            draw_text(say(phrase("commands", "output off")), claims.draws.output_off, price);
    return text;
}

} // namespace ullage
