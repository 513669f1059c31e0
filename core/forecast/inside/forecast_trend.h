// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace ullage {

/// A gauge reading with what had been taken by then.
struct TrendPoint {
    double gauge_percent = 0;
    double on_hours = 0;     ///< hours of output on, since the start
    double delivered_wh = 0; ///< since the start
    double squared_w2h = 0;  ///< ∫P² dt
};

/// What the unit takes besides the load: P* + c·P².
struct OwnDraw {
    double no_load_w = 0;
    double curvature_per_w = 0;
};

/// All that a run's trend says of what is left.
struct TrendSetup {
    std::vector<TrendPoint> points; ///< in order of time; not empty
    TrendPoint end;                 ///< last moment at which taken energy is known; its gauge is not looked at
    bool started_full = false;
    double gauge_step_pt = 1;
    std::optional<double> most_wh; ///< no unit of this label holds more (E*)
};

/// An amount that may be left to be taken (D + P*·t + c·Q, socket Wh), what the unit then takes itself, and its weight.
struct LeftWeight {
    double left_wh = 0;
    OwnDraw draw;
    double weight = 0;
};

/// Amounts left for each of the draws, on a grid that is fine near 0, weighted by how likely the gauge's readings then are and by
/// a prior that is flat in log E* up to most_wh (without it to 30 times what has been taken): a scale parameter of which nothing
/// is known (Jeffreys 1946, from memory). Not normalised. Empty where nothing has been taken, or more than most_wh.
///
/// Likelihood: the mean over the ways in which gauges commonly are not straight in stored energy (common practice, no source;
/// each alone, with some bend):
///   bent (40 %): s = 100(1 − q) + 4b·q(1 − q), b of −14 to 14 points (charge-counting gauges: 2.2, see reference_depth.h);
///   ends early or lingers (25 %): would show z of −10 to 10 points at cut-off (below 0: it has come to its lowest value before);
///   offset (25 %): by o of −10 to 10 points, shown within 0 to 100;
///   blind to own consumption (10 %): s = 100(1 − D/E*);
/// q = taken/E* is the depth; large b, z and o are rarer than small ones (a triangle). A run that did not start full begins at
/// the depth where the law gives its first reading. Errors about a law: normal, step/√12 and 0.8 points of shape that the laws do
/// not have; more than 15 readings weigh as 15, as errors of shape do not average out. Where no law fits (a gauge that sticks,
/// jumps or rebounds), errors are widened until the best does (Birge 1932, from memory): wide, but such gauges are beyond this.
[[nodiscard]] std::vector<LeftWeight> left_by_trend(const TrendSetup& setup, const std::vector<OwnDraw>& draws);

} // namespace ullage
