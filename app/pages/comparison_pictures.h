// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "charts/vessel_row.h"
#include "fleet/comparison.h"

namespace ullage {

/// What is commonly seen at the socket, as fractions of rated energy (common practice, no source).
inline constexpr double expected_lower_fraction = 0.75, expected_upper_fraction = 0.80;

/// The units of a comparison as vessels at one height scale, the largest usable fraction first.
[[nodiscard]] VesselRowContent comparison_vessels(const Comparison& comparison);

/// Usable fraction of each row as a bar with its interval, before the expectation band.
[[nodiscard]] BarContent comparison_bars(const Comparison& comparison);

/// One unit's vessel from its row.
[[nodiscard]] VesselData vessel_of(const ComparisonRow& row);

} // namespace ullage
