// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "claims/claims.h"
#include "formats/json/quantity_json.h"
#include "formats/tables/table.h"

namespace ullage {

/// Claim, measured, verdict, evidence: one row a claim.
[[nodiscard]] Table claims_table(const UnitClaims& claims);
/// The steps of load of a sustained-output or peak-output run.
[[nodiscard]] Table output_steps_table(const OutputRun& run);

/// {quantities: {charged_wh, charge_time_h, mean_charge_w, peak_charge_w, taper_h}, source, first_gauge_percent, last_gauge_percent,
/// taper_gauge_percent, ended_full, sentence}; source is "wall", "PV" or null.
[[nodiscard]] Json charge_json(const Run& run, const ChargeRun& charge);
/// {claimed_w, outcome, trips, resets, sentence, steps: [{from_h, to_h, load_w, gauge_used_pt, ended}]}.
[[nodiscard]] Json output_json(const OutputRun& run);
/// {checks: [{key, title, claimed, unit, measured, verdict, evidence, runs}], pv_charges: [{charged_wh, peak_charge_w, sentence,
/// panels: [{run, panel, charged_wh, peak_charge_w}]}], round_trip: {efficiency, boundary, sentence, cycles: [{charge_run, drain_run,
/// charged_wh, delivered_wh, ends, between_h}]}, own_draw: {output_on, output_off}}; each draw is {draw_w, per_day_wh, per_month_wh, cost_per_day,
/// cost_per_month, basis}. `measured`, `efficiency` and the draws are {value, lower, upper, unit, kind, reason}.
[[nodiscard]] Json unit_claims_json(const UnitClaims& claims);

} // namespace ullage
