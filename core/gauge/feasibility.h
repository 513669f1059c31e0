// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "gauge/evidence.h"
#include "model/ids.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// The most that the battery of this run is taken to hold, Wh at the socket: MeasureOptions::most_of_label times the label, or times what it has
/// given
/// (`delivered_wh`) where that is more; absent without a rated energy.
[[nodiscard]] std::optional<double> most_held_wh(const Unit& unit, double delivered_wh, const MeasureOptions& options);

/// The least error that the gauge must have had somewhere.
struct GaugeFeasibility {
    Quantity least_error_pt;         ///< "least_gauge_error_pt", `at least`; 0 when some possible unit explains every reading
    double no_load_draw_w = 0;       ///< P* of a unit that needs no more than that; meaningless unless known
    std::vector<ReadingId> readings; ///< that force it, in order of time; empty for 0
    Message sentence;
};

/// Smallest worst-case gauge error over every physically possible unit: minimise e >= 0 over s0, x = 100/E*, y = 100 P*/E*, z = 100 c/E* subject to
///   |s_i - (s0 - x D_i - y t_i - z Q_i)| <= e + g/2 + 3 x u_i + y m  at every paired point, and above by b_i more,
///   x >= 100 / (most_held_wh (1 + a)),  y >= 0,  0 <= z <= x MeasureOptions::most_quadratic_loss/rated output,  |s0 - s_first| <= g,
/// with D_i, t_i and Q_i = integral of P squared since the first paired point, g the gauge step, u_i the standard uncertainty of D_i without the
/// gain, m the doubt of a noted moment, a the meter's limit; b_i what a perfect charge-counting gauge shows above the energy share at s_i
/// (charge_for_energy_pt). Without a rated output the highest mean load takes its place. A linear programme (numerics/linear_program.h). Without
/// rated energy or without the limit x >= 0 takes that place: a weaker bound that still holds. More than 2000 points are thinned evenly, which can
/// only lower the result. Not known: no drain, energy missing between readings, or fewer than 2 paired points. Source: the program's own derivation;
/// checked by brute force.
[[nodiscard]] GaugeFeasibility gauge_feasibility(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options = {});

} // namespace ullage
