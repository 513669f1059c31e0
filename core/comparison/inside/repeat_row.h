// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room comparison.
#pragma once

#include "comparison/comparison.h"

#include <vector>

namespace ullage {

/// Puts a mean of repeated drains in place of the figures of the one drain that `row` was made from: energy, fraction, load, duration, Wh per gauge
/// point and the prices and masses that follow. `energies` are those of the mean's drains, in its order. Load, duration and Wh per gauge point are
/// the means of the drains' with the mean of their half-widths, which is never narrower than the mean's own. Precondition: two drains or more.
void put_repeats(const RepeatMean& mean, const std::vector<const EnergyAnalysis*>& energies, ComparisonRow& row);

/// Widens the energy of a row of one drain, and what follows from it, by how well drains repeat: it stands alone for its unit. Precondition: the row
/// has its mean.
void put_alone(ComparisonRow& row);

/// What the row is the mean of, and how its drains scatter.
void put_repeat_count(const RepeatMean& mean, ComparisonRow& row);

/// delivered/rated of the row's unit; "usable_fraction", `not known` without a rated energy.
[[nodiscard]] Quantity fraction_of_rated(const Unit& unit, const Quantity& energy_wh);

} // namespace ullage
