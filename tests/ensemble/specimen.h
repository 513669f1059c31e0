// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ensemble/report.h"
#include "run_analysis/run_analysis.h"
#include "support/simulator.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ullage::test {

/// A full drain of a unit of 1050 Wh and 1200 W by its label, with what differs from unit to unit drawn by the seed: battery 900 to 1050 Wh, own
/// draw 6 to 16 W, 5 to 20 % lost with the load, the quadratic loss within the bounds of loss_fit.h. A meter of ±1 % and 1 Wh steps whose gain error
/// is drawn within its limit; a reading about each twelfth of the time, noted to the minute; an accurate gauge of 1 % steps.
[[nodiscard]] RunSetup specimen_under(const LoadProfile& load, std::uint64_t seed);

/// Readings about each `share` of the drain (0.08: some twelve).
void read_each(double share, RunSetup& setup);

using NamedLoad = std::pair<std::string, LoadProfile>;

/// Loads that tell time and energy apart.
[[nodiscard]] const std::vector<NamedLoad>& varying_loads();
/// Loads that do not: steady, or cycling faster than they are read.
[[nodiscard]] const std::vector<NamedLoad>& steady_loads();
[[nodiscard]] std::vector<NamedLoad> all_loads();

[[nodiscard]] bool has_finding(const RunAnalysis& analysis, FindingKind kind);
/// The first doubt or fault, in words; empty without one.
[[nodiscard]] std::string first_accusation(const RunAnalysis& analysis);
/// A result by its key; every key of RunAnalysis::quantities is there.
[[nodiscard]] const Quantity& quantity_of(const RunAnalysis& analysis, std::string_view key);

/// Of a half-width that is mostly a rectangular gain: it covers 95 %, as 0.95 of the limit does.
[[nodiscard]] Band energy_band();
/// Times are stated for two moments that are each good to a minute; simulated ones are good to half a minute, the start exact.
[[nodiscard]] Band duration_band();

} // namespace ullage::test
