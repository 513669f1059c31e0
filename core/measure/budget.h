// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/register.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// One line of an uncertainty budget.
struct BudgetLine {
    Message source;          ///< e.g. "meter gain, limit ±1 %"
    std::string shape;       ///< "rectangular", "rectangular, one-sided", "triangular", "normal"
    std::string correlation; ///< "common to all readings of this meter", "independent"
    double standard_wh = 0;
    double share = 0;                           ///< of the combined variance, 0 to 1
    std::string evaluation = "B";               ///< type "A", from repeated observations, or "B", from anything else (JCGM 100:2008, 4.2 and 4.3)
    std::optional<double> degrees_of_freedom{}; ///< absent: infinite, for a limit or an uncertainty taken as known (JCGM 100:2008, G.4.3)
    double input_u = 0;                         ///< standard uncertainty of what the line is about, in `input_unit`
    std::string input_unit{};                   ///< "%", "Wh"
    double sensitivity = 0;                     ///< Wh for one `input_unit`: standard_wh = sensitivity × input_u (JCGM 100:2008, 5.1.3)
};

/// The budget of one delivered energy (JCGM 100:2008, clauses 4.3 and 5.1).
struct Budget {
    std::vector<BudgetLine> lines;
    double combined_standard_wh = 0;
    std::optional<double> half_width_wh;     ///< of the 95 % interval; absent while the meter's error limit is not stated
    Message half_width_method;               ///< words for how it was formed, or why it is absent
    double gain_half_width_wh = 0;           ///< of the gain: its rectangle, or one that holds 95 % where its normal part does
    std::optional<double> gain_percent;      ///< the same, % of the energy; absent while no error limit is stated
    double independent_wh = 0;               ///< standard uncertainty of all but the gain
    double unread_mean_wh = 0;               ///< mean of what may have flowed in short gaps, not added to the delivered energy
    std::optional<double> coverage_factor{}; ///< k: half_width_wh over combined_standard_wh
    /// Welch–Satterthwaite (JCGM 100:2008, G.4.1); absent: infinite, as every line has infinitely many.
    std::optional<double> effective_degrees_of_freedom{};
};

/// Budget of `delivered_wh` from a register track. Gain, a line for each meter that measured some of it (RegisterTrack::meters): rectangular with a
/// half-width of a D / 100 where its error limit is stated, normal with D U / (100 k) where a certificate states U and k. Register step q: for each
/// segment two readings, q/sqrt(6) together whether rounded or truncated; a segment that begins with a register set
/// to 0 has q/sqrt(3) instead, as truncation would read low. Without a stated step that which register_step() finds is used and said.
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

/// BudgetLine::shape and ::correlation for people; the line itself has them as files for machines do.
[[nodiscard]] Message say_shape(const BudgetLine& line);
[[nodiscard]] Message say_correlation(const BudgetLine& line);
/// "∞", or the number with one decimal.
[[nodiscard]] Message say_freedom(const std::optional<double>& degrees_of_freedom);
/// "8.93 Wh/%", "1 Wh/Wh".
[[nodiscard]] Message say_sensitivity(const BudgetLine& line);
/// "combined standard uncertainty 3.20 Wh, k = 1.65, effective degrees of freedom ∞"; the first alone without an interval.
[[nodiscard]] Message say_combined_uncertainty(const Budget& budget);

/// A meter's register step and where it comes from.
struct RegisterStep {
    double wh = 1;
    bool stated = false; ///< for the meter
    bool found = false;  ///< all readings are multiples of it, and too many for chance
};

/// The register step: as stated for the meter. Else the largest of 1, 2, 5 × 10^n Wh of which all readings are multiples, where readings of a
/// register as fine as their finest decimal place (at most 1 Wh) would be so by chance once in a hundred times or less: n readings that differ
/// from each other and from 0 are multiples of m such places by chance (1/m)^n (common practice, no source). Three such readings do not
/// show a step above 10 Wh, fewer none. Else that finest decimal place.
[[nodiscard]] RegisterStep register_step(const RunRecord& record);
[[nodiscard]] double register_step_wh(const RunRecord& record);

} // namespace ullage
