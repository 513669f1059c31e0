// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "measure/energy_analysis.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// A stretch of a sustained-output or peak-output run with the output on and one load.
struct OutputStep {
    enum class End { load_changed, tripped, cut_off, run_ended, still_running };
    double from_h = 0, to_h = 0; ///< since the first reading
    Quantity watts;              ///< "step_load_w": energy over time or the mean of noted watts, whichever is known better
    std::optional<double> gauge_used_pt;
    End end = End::run_ended;

    [[nodiscard]] double hours() const { return to_h - from_h; }
};
/// "load changed", "tripped", "cut-off", "run ended", "still running": as files for machines have it.
[[nodiscard]] std::string_view output_end_text(OutputStep::End end);
/// The same for people.
[[nodiscard]] Message say_output_end(OutputStep::End end);

enum class OutputOutcome { held, tripped, not_reached, not_known };
/// "held", "tripped", "not reached", "not known": as files for machines have it.
[[nodiscard]] std::string_view output_outcome_text(OutputOutcome outcome);
/// The same for people.
[[nodiscard]] Message say_output_outcome(OutputOutcome outcome);

/// What a sustained-output or peak-output run says of the claim.
struct OutputRun {
    std::optional<double> claimed_w; ///< rated output or peak output; absent: not stated
    std::vector<OutputStep> steps;
    int trips = 0, resets = 0;
    OutputOutcome outcome = OutputOutcome::not_known;
    std::optional<std::size_t> deciding; ///< the step that decided
    bool beyond_claim = false;           ///< it tripped, but above the claim, which was not tried
    Message sentence;
};

/// How long a load at the rated output must stand to count as held: 0.25 h, as long as a load point of 10 CFR 430 Subpart B Appendix Y, 4.3.3. A
/// peak need only stand between two readings.
inline constexpr double sustained_hold_h = 0.25;

/// Steps begin and end at the marks "load changed", "output tripped", "output reset" and "cut-off". A step reaches the claim where the upper end of
/// its interval does. held: such a step stood long enough and did not trip. tripped: a step at or below the claim (by its lower end) tripped, or one
/// above it where none held. not reached: no step came so high. Interval of a step's load: meter gain, convolved with register step and noted
/// moments; noted watts take the meter's limit of energy for that of power, and their spread. Precondition: a run of one of the two kinds.
[[nodiscard]] OutputRun analyse_output(const RunRecord& record, const EnergyAnalysis& energy);

} // namespace ullage
