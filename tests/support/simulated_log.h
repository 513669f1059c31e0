// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/trace.h"
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
    std::optional<double> gain_error_percent{};    ///< of another meter than the run's
};

/// The samples of the log. Before the start and after the cut-off no power flows. The meter's gain error is that of the run.
[[nodiscard]] std::vector<TraceSample> simulated_log(const RunSetup& setup, const SimulatedRun& run, const LogSetup& log, std::uint64_t seed);

/// The log that a unit writes of its own gauge, and of its output power.
struct GaugeLogSetup {
    double interval_s = 30;
    double after_s = 60;        ///< beyond the end of the run, when its gauge stands still
    double behind_s = 0;        ///< its clock
    double drop_outs = 0;       ///< share of the rows in which the gauge is 0, 255 or blank, in turn
    double flicker_pt = 0;      ///< noise of the gauge before it is rounded, standard deviation
    double output_error = 0.05; ///< relative, of what it says of its output power
    std::vector<std::pair<double, double>> gaps_h = {};
};
[[nodiscard]] std::vector<TraceSample> simulated_gauge_log(const RunSetup& setup, const SimulatedRun& run, const GaugeLogSetup& log,
                                                           std::uint64_t seed);

/// Gives a record what a logbook makes of such samples, whose clock was set right but for `offset_u_s` (0: it was told).
void give_gauge_log(RunRecord& record, std::vector<TraceSample> samples, UtcMs offset_ms = 0, double offset_u_s = 0);
/// As give_log(), of a further meter.
void give_other_log(RunRecord& record, const Meter& meter, const std::vector<TraceSample>& samples, double offset_u_s = 0);

/// Gives a record what a logbook makes of such samples.
void give_log(RunRecord& record, const std::vector<TraceSample>& samples, double offset_u_s = 0);

} // namespace ullage::test
