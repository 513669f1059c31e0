// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "model/ids.h"

#include <optional>
#include <vector>

namespace ullage {

/// A sample of a trace that was kept, with what the samples up to it add up to since the first one of the run.
struct TracePoint {
    UtcMs time_ms = 0;
    std::optional<double> register_wh;
    std::optional<double> power_w;
    double energy_wh = 0;   ///< power integrated by trapezoid, gaps left out
    double square_w2h = 0;  ///< the integral of P squared, power taken as straight between samples, gaps left out
    double covered_h = 0;   ///< time between samples that are no gap apart
    double sampled_wh2 = 0; ///< variance of energy_wh from what the power did between samples, see TraceThinner
};

/// A time without samples of power that is longer than the limit.
struct PowerGap {
    UtcMs from_ms = 0, to_ms = 0;
};

/// What an analysis needs of the traces of a run: few samples, in order of time, where the readings were noted and where the register falls or jumps,
/// beside some thousand spread evenly.
struct RunTrace {
    std::optional<MeterId> meter_uuid;
    std::vector<TracePoint> points;
    bool has_register = false, has_power = false; ///< at least two samples of it
    double peak_w = 0;
    double power_step_w = 0;    ///< finest decimal place that the power shows, 1 W to 0.001 W
    std::vector<PowerGap> gaps; ///< the first thousand
    double offset_u_s = 0;      ///< standard uncertainty of the clock offset, the largest of the traces; 0 where it was given or none was needed
    std::optional<UtcMs> last_on_ms, off_ms; ///< the last sample above a twentieth of the mean power, and the one after it
    UtcMs longest_off_ms = 0;                ///< between two samples above it that follow each other
    /// Of a run found off: the output was on at the last noted moment, so that the log goes on and tells the end.
    bool on_past_notes = false;
};

} // namespace ullage
