// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/register.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// One line of an uncertainty budget.
struct BudgetLine {
    std::string source;      ///< e.g. "meter gain, limit ±1 %"
    std::string shape;       ///< "rectangular", "rectangular, one-sided", "triangular", "normal"
    std::string correlation; ///< "common to all readings of this meter", "independent"
    double standard_wh = 0;
    double share = 0; ///< of the combined variance, 0 to 1
};

/// The budget of one delivered energy (JCGM 100:2008, clauses 4.3 and 5.1).
struct Budget {
    std::vector<BudgetLine> lines;
    double combined_standard_wh = 0;
    std::optional<double> half_width_wh; ///< of the 95 % interval; absent while the meter's error limit is not stated
    std::string half_width_method;       ///< words for how it was formed, or why it is absent
    double gain_half_width_wh = 0;       ///< of the rectangular gain part
    double independent_wh = 0;           ///< standard uncertainty of all but the gain
    double unread_mean_wh = 0;           ///< mean of what may have flowed in short gaps, not added to the delivered energy
};

/// Budget of `delivered_wh` from a register track. Gain: rectangular, a D / 100 half-width. Register step q: for each
/// segment two readings, q/sqrt(6) together whether rounded or truncated; a segment that begins with a register set
/// to 0 has q/sqrt(3) instead, as truncation would read low. Without a stated step the finest decimal place noted is used and said.
/// The 95 % half-width convolves the rectangular gain with the rest, taken as normal (half_width_of_sum): checked against the adaptive procedure
/// of JCGM 101:2008, 7.9; where the two readings of the register are all that counts it is 3 % too wide, where they equal the gain 0.4 % too narrow.
///
/// By a log (RegisterTrack::log): the step is that of its register, or of its power over all the time, with the variance of what the power did
/// between samples; and a line holds the doubt of the noted start and end with the interpolation between samples.
///
/// Short gaps without register (RegisterTrack::short_gaps): the energy that flowed then, somewhere in 0 .. L with L its most_wh, is not added,
/// as nothing measured it. Each line holds its root mean square about 0; the half-width takes its mean, the sum of L/2, as an effect that is
/// not corrected for (added as it is; JCGM 100:2008, F.2.4.5, from memory) and L/sqrt(12) among the independent parts.
[[nodiscard]] Budget energy_budget(const RunRecord& record, const RegisterTrack& track, double delivered_wh, const MeasureOptions& options = {});

/// The register step in Wh: as stated for the meter, else the finest decimal place that the readings show (at most 1 Wh).
[[nodiscard]] double register_step_wh(const RunRecord& record);

} // namespace ullage
