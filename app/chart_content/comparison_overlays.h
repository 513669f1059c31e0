// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "comparison/fair_comparison.h"

#include <functional>

namespace ullage {

/// Units that one picture can still tell apart by colour and marker.
inline constexpr std::size_t most_overlaid = 6;

/// Gauge error against share delivered, one curve a row from full to cut-off, at most `most_overlaid` of them. `analysis` gives a run's analysis by
/// its uuid.
[[nodiscard]] ChartContent gauge_error_overlay(const Comparison& comparison, const std::function<const RunAnalysis&(const RunId&)>& analysis);

/// Usable fraction against load (logarithmic), one curve with band for each unit whose drains tell E* from P*, and its drains as points. The
/// common load of `fair`, if any, as a dotted line.
[[nodiscard]] ChartContent fraction_overlay(const Comparison& comparison, const FairComparison& fair);

} // namespace ullage
