// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/loss_fit.h"

namespace ullage {

/// A value of P* or E* is worth printing where its half-width is at most this share of it; else a bracket says more.
inline constexpr double most_printed_share = 0.5;

/// "no_load_draw_w" of one run. The fit's value (loss_fit.h), its interval widened by what a gauge that is not quite linear would change, where
/// nothing speaks against it (LossFit::doubt), its half-width is at most most_printed_share of it, its value within what energy
/// alone allows, to which its interval is cut. Else, from energy alone, a `bracket`:
///  - a drain from full to cut-off: 0 to (h·R − D)/T, h·R the most that a battery of this label holds (most_held_wh), T hours with the output on;
///  - any other drain, if the gauge is right over it: (u·E* − D)/t with u the share of the content that the gauge fell by, and E* from D/u to h·R.
///  Then the
///    gauge's step at either end and 2.2 points for charge against energy are allowed for.
/// The larger of h·R and what the run delivered counts, and the meter's limit is allowed for. `not known` without rated energy or limit, for another
/// kind of run, where energy is missing, or where nothing was delivered.
[[nodiscard]] Quantity own_draw_bracket(const RunRecord& record, const EnergyAnalysis& energy, const LossFit& fit,
                                        const MeasureOptions& options = {});

/// "zero_time_energy_wh" likewise: the fit's value, else from what was delivered to h·R.
[[nodiscard]] Quantity own_energy_bracket(const RunRecord& record, const EnergyAnalysis& energy, const LossFit& fit,
                                          const MeasureOptions& options = {});

/// Both in a sentence for people: the fit's values, the bracket, or why neither is known.
[[nodiscard]] Message own_draw_sentence(const Quantity& own_draw_w, const Quantity& own_energy_wh, const LossFit& fit);

} // namespace ullage
