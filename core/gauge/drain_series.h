// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/energy_analysis.h"

#include <cstddef>
#include <vector>

namespace ullage {

/// The paired points of one drain as columns for a fit; all of one length, in order of time.
struct DrainSeries {
    std::vector<std::size_t> point; ///< index into EnergyAnalysis::points
    std::vector<double> gauge_percent;
    std::vector<double> on_hours;     ///< hours since the first reading in which the output was on
    std::vector<double> delivered_wh; ///< since the first register reading
    std::vector<double> u_wh;         ///< standard uncertainty of delivered_wh without the gain: pairing, and q/sqrt(12) of a register step q
    std::vector<double> squared_w2h;  ///< integral of P squared; a load that varies between two register readings counts with its mean

    [[nodiscard]] std::size_t size() const { return point.size(); }
    void reserve(std::size_t count);
};

/// Columns of at most `most_points` paired points, spread evenly over the run, the first and the last among them. Precondition:
/// most_points >= 2. A gauge has some hundred steps at most, so that thousands of points hold nothing that some thousand do not.
[[nodiscard]] DrainSeries drain_series(const RunRecord& record, const EnergyAnalysis& energy, std::size_t most_points);

/// Hours up to `until_ms` in which the output was off between the marks "output tripped" and "output reset": then the unit
/// takes nothing for its output. A trip without a reset lasts to the end.
[[nodiscard]] double tripped_hours(const EnergyAnalysis& energy, UtcMs until_ms);

/// Hours with the output on: duration_h less what was tripped within it; what trips after the end of the output, at a try to start it again, does not
/// count. What the no-load draw acts over. Kind and reason are those of duration_h; `not known` where no time is left.
[[nodiscard]] Quantity output_on_hours(const EnergyAnalysis& energy);

/// How far the loads of a drain tell time and energy apart: root mean square of what a straight line in time leaves of the delivered
/// energy, as a share of the spread (root mean square about the mean) of the energy itself. 0 under a steady load; 0 for fewer than 3 points
/// or none delivered.
[[nodiscard]] double separable_share(const DrainSeries& series);

/// What register steps, pairing and the minute of each note make of a steady load's energy about a straight line in time: root mean square, Wh.
[[nodiscard]] double steady_noise_wh(const DrainSeries& series, double moment_doubt_h);
/// Root mean square of what a straight line in time leaves of the delivered energy, Wh; 0 for fewer than 3 points.
[[nodiscard]] double spread_beyond_time_wh(const DrainSeries& series);

} // namespace ullage
