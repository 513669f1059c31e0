// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "model/ids.h"
#include "run_analysis/charge_run.h"
#include "run_analysis/output_run.h"
#include "run_analysis/pv_charge.h"
#include "unit/standby_draw.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage {

enum class ClaimVerdict { holds, does_not_hold, not_reached, not_decided, not_tested };
/// "holds", "does not hold", "not reached", "not decided by this meter", "not tested": as files for machines have it.
[[nodiscard]] std::string_view claim_verdict_text(ClaimVerdict verdict);
/// The same for people.
[[nodiscard]] Message say_claim_verdict(ClaimVerdict verdict);

/// One claim of the maker against what the runs say.
struct ClaimCheck {
    std::string key; ///< "rated_energy_wh", "rated_output_w", "peak_output_w", "charge_time_h", "pv_max_w"
    Message title;
    std::string unit;
    std::optional<double> claimed; ///< absent: not stated
    Quantity measured;
    ClaimVerdict verdict = ClaimVerdict::not_tested;
    Message evidence; ///< a sentence with the run
    std::vector<RunId> run_uuids;
};

/// "1200 Wh", "12 kWh", "not stated".
[[nodiscard]] Message say_claimed(const ClaimCheck& check);

/// All that the runs of one unit say of its claims beside the usable fraction.
struct UnitClaims {
    std::vector<ClaimCheck> checks;
    RoundTrip round_trip; ///< panels that charged together close no cycle
    std::vector<PvCharge> pv_charges;
    StandingDraws draws;
    MeasureOptions options; ///< by which they were judged
};

/// Each by the one decision rule (decision_rule.h), and of several results by their mean, never by the best. Rated energy: the mean of the drains
/// that stand for the unit (repeat_means), else of a drain of which less is known; where its interval lies below the claim it is `not reached`, since
/// energy inside the battery that never reaches the socket is not measured. Outputs: see analyse_output(); a held step `holds` where its load's
/// interval lies above the claim, a tripped one `does not hold` where it lies at or below; where runs say both it is not decided. Charge time: the
/// mean of the charges from cut-off (or a gauge of at most one step) to full that are not from PV. PV power: the highest power of charges from PV, of
/// all panels of one together; below the claim it is `not reached`. `records`: the runs of one unit in order of time; `fit` that of the same runs,
/// whose options hold here too.
[[nodiscard]] UnitClaims check_claims(const Unit& unit, const UnitRuns& records, const UnitFit& fit, const std::optional<EnergyPrice>& price = {});

} // namespace ullage
