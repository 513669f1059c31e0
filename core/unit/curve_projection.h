// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "run_analysis/run_analysis.h"
#include "unit/between_runs.h"

#include <optional>

namespace ullage {

/// A depth with its limits (95 %), percent.
struct DepthInterval {
    double value = 0, lower = 0, upper = 0;
};

/// The depth at which a gauge curve shows `gauge_percent`, for a unit with that no-load draw: the middle of all depths at which
/// it does. The limits hold every depth at which it may: the reading's own rounding (rectangular, half of `step_pt`) and that
/// of the curve's readings, and what an uneven gauge may do between two readings (CurveOverDepth::leeway_at). Where the gauge
/// sticks they hold the whole stretch. Absent: the curve ends above that level.
[[nodiscard]] std::optional<DepthInterval> depth_at_level(const GaugeCurve& curve, double gauge_percent, double step_pt, double no_load_draw_w,
                                                          double coverage = 0.95);

/// Usable fraction of a partial drain through the gauge curve of another run: D / (z_b − z_a) / rated energy, where z_a and z_b
/// are the depths at which the curve shows what the gauge showed first and last (0 for a run that started full). Takes the
/// place of the honest gauge that usable_fraction (usable.h) assumes; instead it assumes that the gauge has not changed since
/// that run.
///
/// Interval: limits of both depths and what P* (`fit`, else 0 to what is usual) changes in them, each side in quadrature;
/// register, pairing; the meter's gain (that of the other run cancels) convolved as a rectangle. Asymmetric. Absent without a
/// stated error limit.
///
/// The curve: that of the latest used drain of `fit` that began before this run. Absent (nothing to replace): the run has no
/// projected fraction, or there is no such curve. Where the gauge rose on the way the value is no larger than the run's own projection, and there as
/// where energy may be missing within, the interval holds that of the own one. `not known`, with the reason: the curve ends above the last reading,
/// or leaves more than ±25 %.
[[nodiscard]] std::optional<Quantity> fraction_through_curve(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& fit);

/// Puts fraction_through_curve in the place of the run's own projection, in `analysis.energy` and in `analysis.quantities`, and
/// notes in `analysis.curve_run_uuid` whose curve it was; where there is none changes nothing. `fit`: of all runs of the unit.
void project_through_curve(const RunRecord& record, const UnitFit& fit, RunAnalysis& analysis);

} // namespace ullage
