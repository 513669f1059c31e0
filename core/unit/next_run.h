// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "unit/between_runs.h"

#include <optional>

namespace ullage {

/// The drain that would tell most.
struct NextRun {
    double load_w = 0; ///< two significant digits
    double expected_run_time_h = 0;
    double shrink_factor = 1; ///< intervals of deliverable energy become this many times narrower, on average, without gains
};

/// Tries a hypothetical drain (same repeatability, a register step of 1 Wh, seen to the minute) at loads on a logarithmic grid
/// from 10 W to the rated output and proposes the one that leaves the least mean relative variance of deliverable energy over
/// 20 W to half the rated output (design of experiments by expected covariance, C⁻¹ + aaᵀ/sigma²). Gains are left out: no
/// further drain reduces them. Without a rated output the grid ends at twice the highest tested load or 200 W. A run expected
/// to last over 24 h is proposed only where no shorter one narrows. While E* and P* are not known only loads count whose run
/// time would differ at least twofold from one already made. Absent: no used drain, or nothing would narrow by 5 %.
[[nodiscard]] std::optional<NextRun> propose_next_run(const UnitFit& fit, const Unit& unit);

} // namespace ullage
