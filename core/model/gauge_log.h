// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"

#include <optional>
#include <vector>

namespace ullage {

/// A change of the gauge in a log, from one whole percent to another: the last sample before it and the first after it. Where the gauge flickers
/// between the two, the last sample before the flicker and the first after it.
struct GaugeStep {
    UtcMs from_ms = 0, to_ms = 0;
    double from_percent = 0, to_percent = 0; ///< as shown at the two
};

/// The gauge of a run as logs of the unit tell it: thousands of samples as their steps.
struct GaugeLog {
    std::vector<GaugeStep> steps; ///< in order of time, the first `GaugeThinner::most_steps`
    UtcMs first_ms = 0, last_ms = 0;
    double first_percent = 0, last_percent = 0;
    double resolution_pt = 1; ///< finest decimal place that it shows: 1, 0.1, 0.01 or 0.001 points
    long samples = 0;         ///< with a gauge that was believed
    long doubted = 0;         ///< above 100 %, or a drop-out: see GaugeThinner
    bool own_clock = true;    ///< written by another clock than the run's metered energy; else in the rows of the meter's own log
    bool calmed = false;      ///< it flickered by more than a step: medians were taken
    double offset_u_s = 0;    ///< standard uncertainty of the clock offset, where it was estimated

    /// What it showed at a moment within first_ms and last_ms; of one within a step what it showed before. Absent outside.
    [[nodiscard]] std::optional<double> shown_at(UtcMs time_ms) const;
};

} // namespace ullage
