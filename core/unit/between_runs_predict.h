// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "unit/between_runs.h"
#include "unit/common_load.h"

#include <vector>

namespace ullage {

/// From this factor beyond the tested loads on a prediction rests on the shape of the loss polynomial more than on drains (the program's own rule).
inline constexpr double most_beyond_factor = 1.5;

/// What a unit will do under a steady load, from full to cut-off.
struct LoadPrediction {
    double load_w = 0;
    Quantity deliverable_wh;          ///< "deliverable_wh"
    Quantity usable_fraction;         ///< "usable_fraction": deliverable / rated energy
    Quantity run_time_h;              ///< "run_time_h"
    bool within_tested_loads = false; ///< see predict_under
    /// By which factor the load's mean or its power while on lies beyond the tested ones, the larger; 1 within. Infinite above a no-load drain alone.
    double beyond_factor = 1;

    /// So far beyond the tested loads that the figures rank nothing and resolve nothing.
    [[nodiscard]] bool is_far_beyond() const { return beyond_factor > most_beyond_factor; }
};

/// Predicts T = E*/(P + P* + c·P²) and D = P·T at a load (from E* = P·T + P*·T + c·P²·T). Bands: delta method on 1/T, which is
/// linear in P* and so stays right where P* is poorly known, with the parameters' covariance and the gains (half_width_along).
/// They are bands of the mean over drains at this load; the repeatability of a single new drain is not in them, and the reason says so.
/// Kind `projected`, between or beyond the tested loads (in the reason). `not known`: no parameters, a load that is not above 0 W or is above
/// the rated output. `at least`: the interval has no upper end.
[[nodiscard]] LoadPrediction predict_at(const UnitFit& fit, const Unit& unit, double load_w);

/// The same under a load that is switched: T = E*/(P·duty + P* + c·P²·duty), its mean power counting as the load; `not known` also where the
/// power while on is above the rated output, or the duty is not above 0 and at most 1. Within the tested loads are a mean among the drains'
/// mean loads and a power while on among their powers (UnitFit::lowest_power_w): the no-load draw acts by the mean, the quadratic loss by
/// the square, so a drain at 40 W all the time tells little of 400 W for a tenth of it. The reason names what lies beyond.
[[nodiscard]] LoadPrediction predict_under(const UnitFit& fit, const Unit& unit, const CommonLoad& load);

/// Where the run time under `load` comes from, as 1/T = f(E*, P*, c): its gradient over the parameters. Precondition: the fit has parameters.
[[nodiscard]] std::array<double, 3> rate_gradient(const UnitParameters& parameters, const CommonLoad& load);

/// One prediction for each load.
[[nodiscard]] std::vector<LoadPrediction> predict_curve(const UnitFit& fit, const Unit& unit, const std::vector<double>& loads_w);

} // namespace ullage
