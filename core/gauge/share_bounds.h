// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/evidence.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace ullage {

/// A perfect charge-counting gauge sits up to so much above the energy share, at half (cell B0005, NASA Ames Battery Data Set).
inline constexpr double charge_for_energy_pt = 2.2;

/// What an accurate gauge could have shown at one reading of a drain from full to cut-off.
struct ShareBound {
    std::size_t point = 0;                      ///< index into EnergyAnalysis::points
    double delivered_share = 0, time_share = 0; ///< of the whole drain, 0 to 1
    double least_percent = 0, most_percent = 0; ///< what an accurate gauge shows, at least and at most
    double off_pt = 0;                          ///< how far the reading lies outside: above 0 it shows too much, below too little, 0 within
};

/// The stored depth at a moment of a full drain is (D + P*·t)/(D_end + P*·T): for every P* of 0 or more between the share of the energy delivered and
/// the share of the time with the output on. One reading between start and cut-off is enough to hold a gauge against that, and under a steady load
/// the two shares meet.
///
/// The range is widened by three standard uncertainties of either share (register steps, pairing, the minute of the reading, the moment of cut-off;
/// the meter's gain cancels), by half a gauge step, and above by what a charge-counting gauge may show more (charge_for_energy_pt·4q(1 − q)).
/// One for each paired point between start and cut-off; empty for any other run, where energy may be missing, or without a known run time. Of more
/// than 2000 points so many, spread evenly. Source: the program's own derivation; checked against simulated units.
[[nodiscard]] std::vector<ShareBound> share_bounds(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options = {});

/// The bound that its reading lies farthest outside of; absent where all lie within.
[[nodiscard]] std::optional<ShareBound> worst_share_bound(const std::vector<ShareBound>& bounds);

/// What an accurate gauge needs of tolerance beyond the linear programme's (feasibility.h): 1 point, half a step, or 1.6 points less half a step, as
/// the charge_for_energy_pt of a gauge that is tied to its first reading come to.
[[nodiscard]] double share_tolerance_pt(double gauge_step_pt);

} // namespace ullage
