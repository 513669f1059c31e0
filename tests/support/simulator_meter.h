// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/meter.h"
#include "support/simulator_gauge.h"
#include "support/simulator_random.h"

#include <optional>

namespace ullage::test {

/// What a simulated meter is. Its register advances by delivered energy · (1 + gain error) / correction.
struct MeterSetup {
    Meter meter; ///< as the tester describes it: step, limit, span, correction
    /// How much too far the register advances; absent: drawn uniformly within the stated limit (0 without one).
    std::optional<double> gain_error_percent;
    Steps steps = Steps::truncated;
    double start_wh = 0;
    /// Zeroed at the start: the register begins on an edge of its step, not somewhere within it.
    bool zeroed_at_start = false;
    double power_step_w = 1; ///< of its display of power
};

/// A meter during one drain.
class SimulatedMeter {
public:
    /// Draws the gain error where it is not given, and where within its step the register begins.
    /// `delivered_wh` is what had been delivered when the meter was connected.
    SimulatedMeter(const MeterSetup& setup, double delivered_wh, Random& random);

    [[nodiscard]] double gain_error_percent() const { return gain_error_percent_; }
    /// The register when `delivered_wh` has been delivered since the start of the drain.
    [[nodiscard]] double register_wh(double delivered_wh) const;
    /// The display of power.
    [[nodiscard]] double power_w(double load_w) const;
    /// Sets the register to 0 at that moment.
    void zero(double delivered_wh);

private:
    MeterSetup setup_;
    double gain_error_percent_ = 0;
    double origin_wh_ = 0; ///< register, exactly, at `origin_delivered_wh_`
    double origin_delivered_wh_ = 0;
};

/// Chooses a slip of the pen for a register value: two digits changed over, one left out, or one written twice;
/// differs from `value` by at least `least_wh`.
[[nodiscard]] double mistyped(double value_wh, double least_wh, Random& random);

} // namespace ullage::test
