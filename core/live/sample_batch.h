// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/trace.h"

#include <cstddef>
#include <cstdint>
#include <deque>
#include <vector>

namespace ullage {

/// Samples on their way into the logbook: they are due after 3 s or 1,000 samples, whichever comes first. With the second until the logbook is
/// settled they are in the file itself within 5 s. What cannot be written stays, up to 200,000 samples (five and a half hours at 10 a second); of
/// more the oldest go, counted.
class SampleBatch {
public:
    static constexpr std::size_t due_samples = 1000, most_samples = 200'000;
    static constexpr std::int64_t due_after_ms = 3000;

    void add(const TraceSample& sample, std::int64_t steady_ms);
    [[nodiscard]] bool due(std::int64_t steady_ms) const;
    [[nodiscard]] const std::deque<TraceSample>& samples() const { return samples_; }
    /// The first `count` have been written.
    void written(std::size_t count, std::int64_t steady_ms);
    /// They could not be: due again in 3 s.
    void put_off(std::int64_t steady_ms);
    [[nodiscard]] long lost() const { return lost_; }

private:
    std::deque<TraceSample> samples_;
    std::int64_t since_ms_ = 0; ///< of the oldest
    bool waits_ = false;        ///< put off: the number of samples alone makes it due no more
    long lost_ = 0;
};

} // namespace ullage
