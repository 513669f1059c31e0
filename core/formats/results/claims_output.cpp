// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/claims_output.h"

#include "base/language.h"
#include "base/number.h"
#include "claims/decision_rule.h"
#include "formats/text/quantity_title.h"

#include <fmt/format.h>

namespace ullage {

namespace {

using Content = TableColumn::Content;

Message shown(const Quantity& quantity) {
    return quantity.kind == Kind::not_known ? Message("-") : say_quantity(quantity, quantity_decimals(quantity.key));
}

Json draw_json(const StandingDraw& draw) {
    return {{"draw_w", quantity_json(draw.draw_w)},
            {"per_day_wh", quantity_json(draw.per_day_wh)},
            {"per_month_wh", quantity_json(draw.per_month_wh)},
            {"cost_per_day", number_json(draw.cost_per_day)},
            {"cost_per_month", number_json(draw.cost_per_month)},
            {"basis", draw.basis}};
}

} // namespace

Table claims_table(const UnitClaims& claims) {
    Table table;
    table.title = say(phrase("results", "Claims against results"));
    table.columns = {{"title", say(phrase("results", "claim")), {}, Content::text, 0},
                     {"claimed", say(phrase("results", "claimed")), {}, Content::text, 0},
                     {"measured", say(phrase("results", "measured")), {}, Content::text, 0},
                     {"verdict", say(phrase("results", "verdict")), {}, Content::text, 0},
                     {"evidence", say(phrase("results", "evidence")), {}, Content::text, 0}};
    for (const ClaimCheck& check : claims.checks)
        table.rows.push_back({check.title, say_claimed(check), shown(check.measured), say_claim_verdict(check.verdict), check.evidence});
    table.remarks.emplace_back(decision_rule_text(claims.options));
    return table;
}

Table output_steps_table(const OutputRun& run) {
    Table table;
    table.title = say(phrase("results", "Steps of load"));
    table.columns = {{"from", say(phrase("results", "from")), "h", Content::text, 0},
                     {"held", say(phrase("results", "held")), "min", Content::text, 0},
                     {"load", say(phrase("results", "load")), {}, Content::text, 0},
                     {"gauge_used", say(phrase("results", "gauge used")), "pt", Content::text, 0},
                     {"ended", say(phrase("results", "ended")), {}, Content::text, 0}};
    for (const OutputStep& step : run.steps)
        table.rows.push_back({say_number(step.from_h, 2), say_number(60 * step.hours(), 0), shown(step.watts),
                              step.gauge_used_pt ? say_number(*step.gauge_used_pt, 0) : Message("-"), say_output_end(step.end)});
    return table;
}

Json charge_json(const Run& run, const ChargeRun& charge) {
    const SpeakingIn for_machines(english());
    Json quantities = Json::object();
    for (const Quantity* quantity : {&charge.charged_wh, &charge.charge_time_h, &charge.mean_charge_w, &charge.peak_charge_w, &charge.taper_h})
        quantities[quantity->key] = quantity_json(*quantity);
    Json source = nullptr;
    if (run.charge_source) source = std::string(charge_source_text(*run.charge_source));
    return {{"quantities", std::move(quantities)},
            {"source", std::move(source)},
            {"first_gauge_percent", number_json(charge.first_gauge_percent)},
            {"last_gauge_percent", number_json(charge.last_gauge_percent)},
            {"taper_gauge_percent", number_json(charge.taper_gauge_percent)},
            {"ended_full", charge.ended_full},
            {"sentence", charge.sentence}};
}

Json output_json(const OutputRun& run) {
    const SpeakingIn for_machines(english());
    Json steps = Json::array();
    for (const OutputStep& step : run.steps)
        steps.push_back({{"from_h", step.from_h},
                         {"to_h", step.to_h},
                         {"load_w", quantity_json(step.watts)},
                         {"gauge_used_pt", number_json(step.gauge_used_pt)},
                         {"ended", std::string(output_end_text(step.end))}});
    return {{"claimed_w", number_json(run.claimed_w)},
            {"outcome", std::string(output_outcome_text(run.outcome))},
            {"trips", run.trips},
            {"resets", run.resets},
            {"sentence", run.sentence},
            {"steps", std::move(steps)}};
}

Json unit_claims_json(const UnitClaims& claims) {
    const SpeakingIn for_machines(english());
    Json checks = Json::array();
    for (const ClaimCheck& check : claims.checks) {
        Json runs = Json::array();
        for (const RunId& run : check.run_uuids) runs.push_back(run.text());
        checks.push_back({{"key", check.key},
                          {"title", check.title},
                          {"claimed", number_json(check.claimed)},
                          {"unit", check.unit},
                          {"measured", quantity_json(check.measured)},
                          {"verdict", std::string(claim_verdict_text(check.verdict))},
                          {"evidence", check.evidence},
                          {"runs", std::move(runs)}});
    }
    Json cycles = Json::array();
    for (const RoundTripCycle& cycle : claims.round_trip.cycles)
        cycles.push_back({{"charge_run", cycle.charge_number},
                          {"drain_run", cycle.drain_number},
                          {"charged_wh", cycle.charged_wh},
                          {"delivered_wh", cycle.delivered_wh},
                          {"ends", cycle.ends},
                          {"between_h", cycle.between_h}});
    Json pv_charges = Json::array();
    for (const PvCharge& charge : claims.pv_charges) {
        Json panels = Json::array();
        for (const PanelShare& panel : charge.panels)
            panels.push_back({{"run", panel.run_number},
                              {"panel", panel.panel},
                              {"charged_wh", quantity_json(panel.charged_wh)},
                              {"peak_charge_w", quantity_json(panel.peak_charge_w)}});
        pv_charges.push_back({{"charged_wh", quantity_json(charge.charged_wh)},
                              {"peak_charge_w", quantity_json(charge.peak_charge_w)},
                              {"sentence", charge.sentence},
                              {"panels", std::move(panels)}});
    }
    return {{"checks", std::move(checks)},
            {"pv_charges", std::move(pv_charges)},
            {"round_trip",
             {{"efficiency", quantity_json(claims.round_trip.efficiency)},
              {"boundary", claims.round_trip.boundary},
              {"sentence", claims.round_trip.sentence},
              {"cycles", std::move(cycles)}}},
            {"own_draw", {{"output_on", draw_json(claims.draws.output_on)}, {"output_off", draw_json(claims.draws.output_off)}}}};
}

} // namespace ullage
