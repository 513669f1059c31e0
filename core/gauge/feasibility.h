// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"
#include "gauge/evidence.h"

#include <string>
#include <vector>

namespace ullage {

/// The most that a battery can hold, as a multiple of its label.
inline constexpr double most_of_label = 1.10;

/// The least error that the gauge must have had somewhere.
struct GaugeFeasibility {
    Quantity least_error_pt;           ///< "least_gauge_error_pt", `at least`; 0 when some possible unit explains every reading
    double no_load_draw_w = 0;         ///< P* of a unit that needs no more than that; meaningless unless known
    std::vector<std::string> readings; ///< uuids of the readings that force it, in order of time; empty for 0
    std::string sentence;
};

/// Smallest worst-case gauge error over every physically possible unit: minimise e >= 0 over s0, x = 100/E*, y = 100 P*/E* subject to
///   |s_i - (s0 - x D_i - y t_i)| <= e + g/2 + 3 x u_i + y m  at every paired point,
///   x >= 100 / (1.10 rated (1 + a)),  y >= 0,  |s0 - s_first| <= g,
/// with D_i and t_i since the first paired point, g the gauge step, u_i the standard uncertainty of D_i without the gain, m the
/// doubt of a noted moment, a the meter's limit. A linear programme (numerics/linear_program.h). Without rated energy
/// or without the limit x >= 0 takes that place: a weaker bound that still holds. More than 2000 points are thinned evenly, which
/// can only lower the result. Not known: no drain, energy missing between readings, or fewer than 2 paired points.
/// Source: the program's own derivation; checked by brute force.
[[nodiscard]] GaugeFeasibility gauge_feasibility(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options = {});

} // namespace ullage
