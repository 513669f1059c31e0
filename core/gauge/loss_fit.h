// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "gauge/drain_series.h"
#include "gauge/evidence.h"

#include <cstddef>
#include <string>

namespace ullage {

/// Where the energy goes, as far as one run can tell if its gauge is linear in stored energy.
struct LossFit {
    /// "no_load_draw_w": P* = alpha/beta, the unit's own draw seen from the socket, W.
    Quantity no_load_draw_w;
    /// "zero_time_energy_wh": E* = 100/beta, what would reach the socket before the unit's own consumption, Wh.
    Quantity zero_time_energy_wh;
    double covariance_w_wh = 0; ///< of the two, W Wh, with gain and curvature; meaningless unless known()
    double start_percent = 0;   ///< fitted s0; meaningless unless known()
    double residual_ratio = 0;  ///< root of chi-square per degree of freedom; 0 where nothing was fitted
    double separable_share = 0; ///< see drain_series.h; 0 where that was not formed
    std::size_t points = 0;     ///< used by the fit
    /// Why the values should not be taken at their word though they could be fitted; empty where nothing speaks against them: the gauge follows the
    /// load (what it shows beyond the fit goes with the load of the half, two or six hours before, or rises where the load falls), or, of a full
    /// drain, its readings do not lead from 100 % at the start to 0 % at the cut-off within 1.5 points and half a step.
    Message doubt;
    /// What a gauge that is not quite linear would change: one that counts charge (2.2 points above at half), and one that follows
    /// the load in one of these ways by 2.5 points, or as far as the readings allow, whichever changes the most; half-widths. 2.5 points are what
    /// simulated gauges that rebound by 2 to 8 points kept from being seen (tests/ensemble, part few-runs).
    double shape_draw_w = 0, shape_energy_wh = 0;
    Message sentence; ///< begins "If the gauge is linear in stored energy"

    [[nodiscard]] bool known() const { return no_load_draw_w.kind != Kind::not_known; }
};

/// A steady load lets no fit tell time from energy. Below this separable share P* and E* are refused. Two things set it: a
/// battery's own voltage slope makes a share of 0.023 of a constant current (cell B0005, NASA Ames Battery Data Set), and a
/// charge-counting gauge would turn that into any loss at all; and in simulated drains (1000 Wh, 12 W own draw, mean load 65 W, some 15
/// readings of 1 % steps) the 95 % interval of P* is ±7 W at 0.06, ±3.6 W at 0.11 and ±2.2 W at 0.18: below 0.05 it would be as
/// wide as what it is to tell.
inline constexpr double least_separable_share = 0.05;

/// The spread of energy that is not linear in time must exceed so many times what register step, pairing and noted minutes make of a steady load: a
/// coarse register under a steady load looks like a varying one.
inline constexpr double least_spread_over_noise = 3;

/// MeasureOptions::most_quadratic_loss over the rated output, 1/W; without one over the highest mean load between two points of the series.
[[nodiscard]] double most_curvature_per_w(const RunRecord& record, const DrainSeries& series, const MeasureOptions& options);

/// Fits s = s0 - alpha t_on - beta (D + c Q), Q the integral of P squared, to the cumulative paired points of a drain by weighted least
/// squares; sigma of a point: gauge step g/sqrt(12), beta u(D), alpha u(t). P* = alpha/beta, E* = 100/beta by the law of propagation
/// with covariance (JCGM 100:2008, 5.2), u scaled up where chi-square per degree of freedom exceeds 1. Readings that share a
/// rounding, because the gauge has not moved for want of a fall or they lie closer than its steps, weigh together like one. c is not
/// fitted: two loads that alternate give
/// Q = (P1 + P2) D - P1 P2 t exactly. It is set to the middle of 0 to MeasureOptions::most_quadratic_loss / rated output (without one: / the
/// highest mean load), and what the limits would change is a rectangular part, as is the meter's gain limit (of both P* and E*,
/// one common factor). The wider of the two rectangles is convolved with the rest (half_width_of_sum).
/// Without a stated gain
/// limit there are values and no intervals, and the reason says so.
///
/// Refused, with its reason: a run that is no drain; no meter; energy missing between readings; fewer than 6 paired points; any rise of
/// the gauge; a fall below 15 gauge steps; a separable share below least_separable_share (steady load), or a spread below
/// least_spread_over_noise; residuals above 1.7 times
/// their sigma (g/sqrt(12) where gauge and register were read together), or a bulge over the fitted depth of more than 0.5 points
/// and 3 standard uncertainties: the gauge is not linear; no fall with energy. A bulge that the run cannot tell from losses (one slow
/// change of load) passes: hence the "if". Source: loss polynomial as above; linear model: the program's own derivation, checked with simulated
/// units.
[[nodiscard]] LossFit fit_losses(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options = {});

} // namespace ullage
