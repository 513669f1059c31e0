// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "charts/vessel_row.h"
#include "comparison/fair_comparison.h"
#include "sizing/sizing_choices.h"

namespace ullage {

/// Fractions of rated energy between which units are commonly seen, as the tester has it.
struct ExpectationBand {
    double lower_fraction = expected_lower_fraction, upper_fraction = expected_upper_fraction;
};

/// The units of a comparison as vessels at one height scale, in the order of fair_order(); at the common load of `fair` where it has one.
[[nodiscard]] VesselRowContent comparison_vessels(const Comparison& comparison, const FairComparison& fair, const ExpectationBand& band = {});
[[nodiscard]] VesselRowContent comparison_vessels(const Comparison& comparison); ///< as tested

/// Usable fraction of each row as a bar with its interval, before the expectation band. A unit that stands as tested beside units moved to the
/// common load says so.
[[nodiscard]] BarContent comparison_bars(const Comparison& comparison, const FairComparison& fair, const ExpectationBand& band = {});
[[nodiscard]] BarContent comparison_bars(const Comparison& comparison); ///< as tested

/// One unit's vessel from its row.
[[nodiscard]] VesselData vessel_of(const ComparisonRow& row);

} // namespace ullage
