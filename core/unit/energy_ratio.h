// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"
#include "unit/between_runs.h"

#include <optional>
#include <string>

namespace ullage {

/// A change from one drain to a later one, in percent, and whether it is more than chance.
struct RatioChange {
    Quantity change_percent;         ///< 100 (later/earlier − 1)
    std::optional<double> statistic; ///< ln(later/earlier) / its standard uncertainty
    std::optional<double> p_value;   ///< two-sided, normal
    bool significant = false;        ///< p_value below the threshold given
};

/// Change of the energy E = D + P*·T + c·Q from one used drain to a later one: what time and load cost is added back, so that
/// loads which are a little unlike do not pass for a change. P* is that of the fit, else what is usual (usual_no_load_draw); c
/// the middle of its bounds. Standard uncertainty of ln E: register, pairing and repeatability of each drain, P* and c by what
/// they change in the ratio, and the meters' gains, which cancel where both drains had one meter but for the share of P*T. `not
/// known`: two meters, and the limit of one is not stated. Key "energy_change_percent".
[[nodiscard]] RatioChange energy_change(const DrainSummary& earlier, const DrainSummary& later, const UnitFit& fit, const Unit& unit,
                                        double threshold);

/// The same for E per point that the gauge fell from its first to its last reading, with the rounding of two readings of each
/// (triangular). Precondition: both drains have a gauge curve. Key "wh_per_gauge_point_change_percent".
[[nodiscard]] RatioChange wh_per_point_change(const DrainSummary& earlier, const DrainSummary& later, const UnitFit& fit, const Unit& unit,
                                              double threshold);

} // namespace ullage
