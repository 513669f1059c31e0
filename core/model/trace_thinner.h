// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/reading.h"
#include "model/run.h"
#include "model/run_trace.h"
#include "model/trace.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace ullage {

/// Times between samples beyond this are gaps: ten mean intervals of the trace (of several, the longest), at least 60 s.
[[nodiscard]] double gap_limit_s(std::span<const Trace> traces);

/// Keeps a RunTrace of samples that come in a stream, in order of time; memory does not grow with them.
///
/// The energy between two samples dt apart, taken as a trapezoid, is uncertain by what the power did between them. A step dP that falls anywhere in
/// dt gives the variance (dP dt)^2 / 12. Where a step is followed by one back, the load may switch faster than it is sampled: each
/// such pair adds |dP1 dP2| dt1 dt2 more, by which random samples of a load of two levels give the variance of their mean.
/// Own derivation; checked with simulated loads.
class TraceThinner {
public:
    static constexpr std::size_t spread_samples = 2000;

    /// `moments`: where samples before and after are kept, sorted here. Up to `spread` samples are kept evenly from `from_ms` to `to_ms`. Times
    /// between samples of power beyond `gap_limit_s` are gaps.
    TraceThinner(std::vector<UtcMs> moments, UtcMs from_ms, UtcMs to_ms, double gap_limit_s, std::size_t spread = spread_samples);
    /// For a run with these readings (at least one that is not withdrawn) and traces from `first_ms` to `last_ms`: samples about each noted moment
    /// and a minute either side of it, from ten minutes before the first reading to ten minutes after the last; to the last sample of a run still
    /// running, and of one found off whose log shows it on at the last noted moment: nobody noted its end.
    TraceThinner(const std::vector<Reading>& readings, RunEnd end, UtcMs first_ms, UtcMs last_ms, double gap_limit_s);

    /// Samples outside are of no use.
    [[nodiscard]] UtcMs from_ms() const { return from_ms_; }
    [[nodiscard]] UtcMs to_ms() const { return to_ms_; }
    void take(std::span<const TraceSample> samples);
    /// Nothing may be taken after it. Absent without samples.
    [[nodiscard]] std::optional<RunTrace> finish();

private:
    void add_power(const TraceSample& sample, TracePoint& sums);
    void note_step(double watts);
    bool wanted(const TraceSample& sample);
    bool jumps(const TraceSample& sample) const;
    bool ends_gap(const TraceSample& sample) const;
    bool beyond_the_end(const TraceSample& sample);
    void keep(const TracePoint& point);

    void set_grid(UtcMs from_ms, UtcMs to_ms, std::size_t spread);

    UtcMs from_ms_, to_ms_;
    std::optional<UtcMs> found_off_after_ms_; ///< the last noted moment of a run found off
    std::optional<bool> on_then_;             ///< whether it was on there, once that is known
    std::vector<UtcMs> moments_;
    std::size_t next_moment_ = 0;
    UtcMs grid_ms_ = 1, next_grid_ms_ = 0;
    double gap_limit_h_;
    RunTrace trace_;
    TracePoint sums_; ///< of the sample before
    bool any_ = false, before_kept_ = false, register_due_ = false;
    std::optional<TraceSample> power_before_;
    std::optional<TracePoint> register_before_; ///< the last sample with register, where that is not the sample before
    std::optional<double> register_wh_;
    double step_wh_before_ = 0; ///< dP dt of the step before
    long registers_ = 0, powers_ = 0, jumps_ = 0;
    double power_sum_w_ = 0;
    int decimals_ = 0;
};

} // namespace ullage
