// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room trace.
#pragma once

#include "trace/trace_reader.h"

namespace ullage {

/// Holds back a few hundred samples so that rows out of order find their place, and watches for gaps.
class RowOrder {
public:
    RowOrder(const SampleSink& sink, std::optional<double> gap_limit_s, TraceTally& tally) : sink_(sink), gap_limit_s_(gap_limit_s), tally_(tally) {
        pending_.reserve(kept + block);
    }

    /// What is odd about the sample, if anything; one that is left out is not kept.
    Result<std::optional<RowTrouble>> take(const TraceSample& sample);
    /// Hands over what is held; a row before it that comes later is out of order.
    Result<void> hand_over_all();
    /// hand_over_all(), and judges the gaps of a short log. Call once, at the end.
    Result<void> finish();

private:
    static constexpr std::size_t kept = 256, block = 4096, watched = 64;

    Result<void> hand_over(std::size_t count);
    void watch(UtcMs from, UtcMs to);
    void judge(const TraceGap& interval);
    void settle_limit();

    const SampleSink& sink_;
    std::optional<double> gap_limit_s_;
    TraceTally& tally_;
    std::vector<TraceSample> pending_;
    std::vector<TraceGap> first_intervals_;
    std::optional<TraceSample> handed_; ///< last
    bool limit_settled_ = false;
};

} // namespace ullage
