// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "run_analysis/round_trip.h"
#include "unit/between_runs.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What energy costs; absent in what it yields where it is not stated.
struct EnergyPrice {
    double per_kwh = 0;
    std::string currency; ///< may be empty
};

/// A power that the unit takes for itself, and what that comes to.
struct StandingDraw {
    Quantity draw_w;                                    ///< "no_load_draw_w" (output on) or "standby_draw_w" (output off)
    Quantity per_day_wh, per_month_wh;                  ///< "own_wh_per_day", "own_wh_per_month"; a month of 365.25/12 days
    std::optional<double> cost_per_day, cost_per_month; ///< in the price's currency
    Message basis;                                      ///< what the cost leaves out or puts in
};

/// Draws with the output on and off of one unit, from its runs in order of time.
///
/// Output on: the no-load draw of the unit's fit, else rated energy × gauge drop / hours of the latest no-load drain. Output off, from standby runs:
/// the energy of the charge that came next and brought a unit that had stood full back to full, over the hours from the standby's start to the
/// charge's, at the meter before the unit with the charging loss inside; else rated energy × gauge drop / hours, which assumes an accurate gauge.
/// Costs: what is not measured before the charger is divided by the round trip where that is known, else the charging loss is left out and said.
struct StandingDraws {
    StandingDraw output_on, output_off;
};
[[nodiscard]] StandingDraws own_draws(const UnitRuns& records, const std::vector<EnergyAnalysis>& energies, const UnitFit& fit, const RoundTrip& trip,
                                      const std::optional<EnergyPrice>& price);

} // namespace ullage
