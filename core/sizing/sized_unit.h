// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "claims/claims.h"
#include "sizing/day_of_use.h"
#include "sizing/sizing_choices.h"
#include "unit/between_runs.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// What the answer for a unit rests on.
enum class SizingBasis {
    own_fit,     ///< its drains give E* and P*: a projection from measurements
    one_load,    ///< its drains were all at like loads; the no-load draw is taken as usual: an expectation
    expectation, ///< no drain that says anything: a share of the rated energy by common practice, no measurement
    none,        ///< neither drains nor a rated energy
};
/// "own drains", "expectation from one load", "expectation, not measured", "not known": as files for machines have it.
[[nodiscard]] std::string_view sizing_basis_text(SizingBasis basis);
/// The same for people.
[[nodiscard]] Message say_sizing_basis(SizingBasis basis);

/// Whether a claimed output carries a load.
enum class PowerFit { fits, only_apart, too_small, not_stated };
/// "fits", "fits if not all run at once", "too small", "not stated": as files for machines have it.
[[nodiscard]] std::string_view power_fit_text(PowerFit fit);
/// The same for people.
[[nodiscard]] Message say_power_fit(PowerFit fit);

/// How many units side by side carry a list for the days of autonomy asked for.
struct UnitsNeeded {
    std::optional<int> least; ///< by the upper limit of the days: fewer are too few
    std::optional<int> sure;  ///< by the lower limit: so many are enough
    Message reason;           ///< what decides, or why there is no number
};
/// "2", "2 to 3", "at least 2", "not known".
[[nodiscard]] Message say_units_needed(const UnitsNeeded& needed);
/// The same in the language in use.
[[nodiscard]] std::string units_needed_text(const UnitsNeeded& needed);

/// One unit against a load list.
struct SizedUnit {
    Unit unit;
    SizingBasis basis = SizingBasis::none;
    Quantity days;         ///< "days_of_autonomy": how many times one unit, full, serves the list of a day
    Quantity run_time_h;   ///< "run_time_h": hours of output on
    Quantity lasts_h;      ///< "lasts_h": by the clock until cut-off, from the least to the most favourable beginning and order of use
    Quantity days_left_on; ///< "days_output_left_on": days_of_autonomy where the output is never switched off
    UnitsNeeded units_needed;
    PowerFit output = PowerFit::not_stated; ///< rated output against all that runs
    PowerFit peak = PowerFit::not_stated;   ///< peak output (rated output where none is stated) against the highest start
    std::optional<int> units_by_rule;       ///< so many that their rated energy reaches battery_by_rule of the list and their own draws
    std::optional<UnitContent> content;     ///< absent for SizingBasis::none
    std::vector<Message> remarks;           ///< what must be said with it
};

/// Sizes one unit for a list. `fit` is that of all its runs; `claims`, where given, those of the same runs.
///
/// days = E*/(L + P*·H + s·(24 h − H) + c·S), with L Wh a day, H hours of output on, s the standby draw and S = ∫P² dt of a day: the balance of
/// core/unit/between_runs.h over whole days. Interval: that of predict_under(), and besides what the list does not say: whether appliances run
/// together or apart (H from LoadTotals::hours_on to hours_on_most, S from all together to a steady power), at which hour the unit begins, full, and
/// in which order things are used (OrderOfUse). The standby draw is that of `claims` (StandingDraws), with its interval; where no standby run tells
/// it, nothing is counted and that is remarked. Means over drains: a single one scatters by MeasureOptions::repeatability_percent besides.
/// Expectation: L is served from expected_lower to expected_upper of the rated energy, own draw included; kind `bracket`, no value.
///
/// Units side by side share the list evenly, except that the highest start falls to one of them and no appliance is split. `not known`: a list that
/// takes nothing, no basis, or a need that no number up to most_units meets.
/// Preconditions: check(list) and check(choices) are good.
[[nodiscard]] SizedUnit size_unit(const LoadList& list, const Unit& unit, const UnitFit& fit, const SizingChoices& choices,
                                  const UnitClaims* claims = nullptr);

} // namespace ullage
