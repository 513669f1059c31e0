// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/options.h"
#include "model/run_record.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace ullage {

/// What one meter of a run says of the energy at moments: for holding two meters against each other.
struct LoggedEnergy {
    std::vector<UtcMs> times_ms; ///< of samples kept, or of registers noted by hand; they rise
    std::vector<double> wh;      ///< corrected by what is stated of the meter, never falling
    std::vector<PowerGap> gaps;  ///< nothing is counted in them, or energy may be missing
    bool noted_by_hand = false;
    double step_wh = 0;      ///< of its register, corrected; 0 where power was integrated
    double clock_u_s = 0;    ///< standard uncertainty of its clock's offset
    double u_whole_wh = 0;   ///< of integrated power: what it did between samples, over all of it
    double step_half_wh = 0; ///< of integrated power: half-width of what its steps may hide, over all of it

    /// Straight between the times; the ends beyond them. Precondition: not empty.
    [[nodiscard]] double at(UtcMs time_ms) const;
    /// Whether a gap of more than two minutes reaches into a stretch.
    [[nodiscard]] bool has_gap(UtcMs from_ms, UtcMs to_ms) const;
    /// Variance of the energy of a stretch from the meter's steps and samples, Wh2.
    [[nodiscard]] double variance_wh2(double stretch_wh) const;
};

/// Of the run's own meter: by its log, else by its registers noted by hand. Absent where neither tells, or the log is another meter's.
[[nodiscard]] std::optional<LoggedEnergy> logged_energy(const RunRecord& record, const MeasureOptions& options = {});
/// By the log of another meter of the run. Precondition: log < record.other_logs.size().
[[nodiscard]] std::optional<LoggedEnergy> logged_energy_of_other(const RunRecord& record, std::size_t log, const MeasureOptions& options = {});

/// Half-width of what two clocks that were set by the same notes may be apart, s; at least half a minute, as each was set by hand.
[[nodiscard]] double clocks_apart_s(double first_offset_u_s, double second_offset_u_s);

} // namespace ullage
