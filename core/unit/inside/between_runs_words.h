// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "unit/between_runs.h"

#include <vector>

namespace ullage {

/// Longest run time must exceed this many times the shortest before E* and P* count as known.
inline constexpr double run_time_ratio = 1.5;

/// Whether the used drains tell E* and P* apart.
[[nodiscard]] bool run_times_differ(const std::vector<DrainSummary>& used);

/// Fills the quantities and the sentence of a fit from its parameters, or with the reason why there are none: `failure` where the
/// fit itself failed, else too few or too like drains with a load to try. Precondition: drains, bounds and planning are filled.
void put_into_words(const Unit& unit, const Message& failure, UnitFit& fit);

} // namespace ullage
