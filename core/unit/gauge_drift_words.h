// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "unit/gauge_drift.h"

namespace ullage {

/// Fills shift, reason and sentence of a drift from its verdict, comparisons and lead. `curves`: drains that have a gauge curve.
void put_into_words(const UnitFit& fit, const Drift& energy, std::size_t curves, GaugeDrift& drift);

/// "Wh per gauge point from run 1 to run 4: 9.31 to 8.62, −7.2 ± 1.3 % corrected for the loads (p 0.0001): more than chance."
[[nodiscard]] Message wh_per_point_sentence(const UnitFit& fit, const DrainComparison& pair);

/// "p 0.012", "p < 0.0001".
[[nodiscard]] Message say_p(double p_value);

} // namespace ullage
