// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room trace: what estimate_clock_offset() gathers from a log in one pass.
#pragma once

#include "model/run_record.h"
#include "model/trace.h"

#include <cstddef>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace ullage {

/// Times of the log between which its register passed the value of a hand reading.
struct Crossing {
    std::size_t reading = 0; ///< index into the values given
    UtcMs from_ms = 0, to_ms = 0;
};

/// Gathers when a register passes given values. Memory grows with the values and with the resets of the register (1000 at most are followed).
class CrossingFinder {
public:
    /// Each value counts as passed from half a step below it to a step above.
    CrossingFinder(const std::vector<double>& values_wh, double step_wh);
    void take(std::span<const TraceSample> samples);
    [[nodiscard]] const std::vector<Crossing>& crossings() const { return crossings_; }

private:
    struct Level {
        double wh = 0;
        std::size_t value = 0;
    };
    void start(double register_wh);

    std::vector<Level> lows_, highs_; ///< in order of energy
    std::vector<std::optional<UtcMs>> reached_ms_;
    std::size_t low_ = 0, high_ = 0;
    std::optional<std::pair<UtcMs, double>> before_;
    long resets_ = 0;
    std::vector<Crossing> crossings_;
};

/// A sudden change of power between two samples.
struct PowerStep {
    UtcMs from_ms = 0, to_ms = 0;
    double change_w = 0;
};

/// Gathers the steps of power, of a log without it of the unit's output power (at least 5 W and a fifth of the larger side), and the last moment with
/// load.
class StepFinder {
public:
    static constexpr std::size_t most_steps = 4096;

    void take(std::span<const TraceSample> samples);
    /// Empty where there are more than most_steps: a load that cycles by itself tells nothing.
    [[nodiscard]] const std::vector<PowerStep>& steps() const { return steps_; }
    /// From the last sample above a twentieth of the mean load to the next one; absent without load. Where the log ends under load, as one does whose
    /// meter dies with the output, to one usual interval after its end, if it is as long as `least_ms`.
    [[nodiscard]] std::optional<PowerStep> last_fall(UtcMs least_ms) const;

private:
    std::vector<PowerStep> steps_;
    bool too_many_ = false;
    std::optional<TraceSample> before_;
    double before_w_ = 0, sum_w_ = 0;
    long count_ = 0;
    UtcMs first_ms_ = 0;
    std::optional<UtcMs> last_on_ms_, off_ms_;
    double last_on_w_ = 0;
};

} // namespace ullage
