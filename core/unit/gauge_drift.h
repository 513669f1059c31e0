// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "gauge_curves/curve_shift.h"
#include "unit/energy_ratio.h"
#include "unit/unit_drift.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// Two full drains of one unit at like loads.
struct DrainComparison {
    std::size_t earlier = 0, later = 0;                      ///< places in UnitFit::drains
    double earlier_wh_per_point = 0, later_wh_per_point = 0; ///< delivered, end to end
    RatioChange wh_per_point;                                ///< of those two, corrected for the loads
    RatioChange energy;                                      ///< of the energy, which no gauge takes part in
    CurveShift curve;
    double adjusted_p = 1;    ///< p of the curve times the number of comparisons (Bonferroni), at most 1
    bool curve_moved = false; ///< adjusted_p below the threshold, and the move is larger than the resolution
};

/// What moves from run to run.
enum class DriftVerdict { not_known, nothing_moves, energy_moves, gauge_drifts, both_move };
/// "not known", "nothing moves", "energy moves", "gauge drifts", "both move": as files for machines have it.
[[nodiscard]] std::string_view drift_verdict_text(DriftVerdict verdict);

/// Whether a gauge drifts from run to run, told apart from ageing.
struct GaugeDrift {
    DriftVerdict verdict = DriftVerdict::not_known;
    Message reason;                           ///< why it is not known; else empty
    std::vector<DrainComparison> comparisons; ///< each later drain with the earliest of like load, in order of time
    std::size_t like_pairs = 0;               ///< pairs at like loads that were tried, compared or not
    std::optional<std::size_t> lead;          ///< the comparison that the sentence tells: the least p of the curve
    Quantity shift_pt;                        ///< "gauge_curve_shift_pt": of the lead
    static constexpr double threshold = 0.001;
    Message sentence;
};

/// Compares the full drains of a unit run to run: each drain that has a gauge curve with the earliest one before it at a like
/// load and temperature (mean loads within like_load_ratio, shares of time within like_time_share, like_temperatures_c). Two things are tested: Wh
/// per gauge point (wh_per_point_change, threshold 1 %), and the gauge error curve against share delivered (compare_curves, GaugeDrift::threshold
/// after Bonferroni's correction for the number of comparisons).
///
/// Only the curve convicts the gauge: Wh per point falls with ageing too. The energy moves where `energy` (test_drift over all
/// drains) is significant; where that is not known, where the energy of the two drains of the lead differs (energy_change, 1
/// %). So E* that falls under an unmoved curve is ageing, and a curve that moves over an unmoved E* is the gauge. A move below
/// the resolution is not told, as roundings and the unknown P* may look like it. `not known`: fewer than two comparable full
/// drains; the reason says what is missing.
///
/// Accuracy, simulated (some twelve readings a drain, 1 % steps): honest gauges convicted in fewer than 1 % of units with two
/// to five drains; a curve moved by 2 pt under a steady load, and by twice the resolution under any, found in over 95 %.
[[nodiscard]] GaugeDrift test_gauge_drift(const UnitFit& fit, const Unit& unit, const Drift& energy);

} // namespace ullage
