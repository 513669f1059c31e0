// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "unit/between_runs.h"

#include <optional>

namespace ullage {

/// Whether the energy of a unit moves with time.
struct Drift {
    Quantity change_wh_per_day;      ///< "change_wh_per_day" of E*; negative: the unit ages
    std::optional<double> statistic; ///< change / its standard uncertainty
    std::optional<double> p_value;   ///< two-sided
    static constexpr double threshold = 0.01;
    bool significant = false; ///< p_value below the threshold
    Message sentence;
};

/// Tests whether the drains of a fit, corrected for their loads, move with the days: a term d·days joins the balance (so what P* and c
/// may explain is taken off first, which a slope through residuals would not do) and d is held against its uncertainty. Like
/// loads will do: a P* that the drains do not settle is held within what is usual, 0 to 3 % of the rated output (common practice, no source). The
/// distribution is normal, or Student's t where the drains refute their known uncertainties
/// (disagreement_of; effective degrees of freedom by JCGM 100:2008, G.4.1). `not known`: fewer than three used drains, all within a
/// day, or loads that changed in step with time. Of drains at unlike temperatures those count that are most within like_temperatures_c; the rest are
/// left out and said to be. A change of E* is ageing; a gauge that drifts does not touch it, as no gauge takes part.
[[nodiscard]] Drift test_drift(const UnitFit& fit, const Unit& unit);

} // namespace ullage
