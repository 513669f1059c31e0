// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/inside/gauge_law.h"

#include <array>
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
    /// E* of a unit of this label lies within these, before the readings; absent without a label.
    std::optional<double> least_wh{}, most_wh{};
};

/// E* that a forecast allows for, as shares of the rated energy (common practice, no source; the upper one is MeasureOptions::most_of_label).
inline constexpr double least_of_label = 0.50;
/// The upper one is soft, as labels err: beyond it the prior falls by e for each such share of it (common practice, no source).
inline constexpr double label_softness = 0.03;
inline constexpr double softly_up_to = 1.3; ///< times the most that the label allows: nothing holds more

/// An amount that may be left to be taken (D + P*·t + c·Q, socket Wh), what the unit then takes itself, and its weight: in all, and by each family of
/// gauge.
struct LeftWeight {
    double left_wh = 0;
    OwnDraw draw;
    double weight = 0;
    std::array<double, gauge_families> by_family{};
};

/// The posterior over unit and gauge law, on a grid of amounts left (even in their logarithm, as little may be left) for each of the draws.
///
/// Prior: E* even from least_wh to most_wh (or to 1.1 times what has been taken where that is more), beyond falling by e for each label_softness of
/// that up to 1.3 times it; without a label flat in log E* up to 30 times what has been taken (Jeffreys 1946, from memory). Gauge laws: family_priors
/// (gauge_law.h). A run that did not start full begins at the depth where the law gives its first reading. Likelihood of a reading: normal about the
/// law with step/√12 and 0.9 points of shape that the laws do not have; 1 in 50 says nothing (mistyped, or rebounding after a load). Under `unknown`
/// each reading but that of a full start is as likely as any other. Of more than 16 readings so many are taken, evenly, as errors of shape do not
/// average out. Sum of all weights is 1; empty where nothing has been taken or no unit fits. Numerical part checked against a fine grid (JCGM
/// 101:2008, 5.9, in place of random draws).
[[nodiscard]] std::vector<LeftWeight> left_by_trend(const TrendSetup& setup, const std::vector<OwnDraw>& draws);

/// An error of the gauge at the last reading that an accurate one may have, points.
inline constexpr double right_within_pt = 3;

/// What the gauge shows too much at its last reading (below 0: too little), points, where so much is left. Precondition: setup.points is not empty.
[[nodiscard]] double gauge_error_at_last_pt(const TrendSetup& setup, const LeftWeight& left);

/// The families that the readings leave plausible: their share of the posterior.
[[nodiscard]] std::array<double, gauge_families> family_shares(const std::vector<LeftWeight>& lefts);

} // namespace ullage
