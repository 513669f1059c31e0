// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/simulator_run.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace ullage::test {

/// The log that a meter writes of a simulated run.
struct LogSetup {
    double interval_s = 10;
    double jitter = 0; ///< each interval longer or shorter by up to this share
    bool with_register = true, with_power = true;
    double register_step_wh = 1; ///< truncated
    double power_step_w = 0.1;   ///< rounded
    double register_start_wh = 0;
    double before_s = 200, after_s = 200;          ///< beyond start and cut-off
    double behind_s = 0;                           ///< the clock of the log
    std::vector<std::pair<double, double>> gaps_h; ///< without rows, hours since the start
    std::vector<double> zeroed_h;                  ///< the register is set to 0, hours since the start
};

/// The samples of the log. Before the start and after the cut-off no power flows. The meter's gain error is that of the run.
[[nodiscard]] std::vector<TraceSample> simulated_log(const RunSetup& setup, const SimulatedRun& run, const LogSetup& log, std::uint64_t seed);

/// Gives a record what a logbook makes of such samples.
void give_log(RunRecord& record, const std::vector<TraceSample>& samples, double offset_u_s = 0);

} // namespace ullage::test
