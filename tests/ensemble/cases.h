// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ensemble/report.h"

#include <cstdint>

namespace ullage::test {

inline constexpr double most_curvature = 0.05; ///< of simulated losses, over the rated output, as in fit_unit

// Each adds its cases to the report, `seeds` simulated runs (or units) to each case; every case has seeds of its own.

/// Honest gauges under all loads: energy, fraction, duration, mean load, the losses seen within one run; coarse meters; partial runs; found off.
void run_loads(std::uint64_t seeds, Report& report);
/// Honest gauges of other makes that must be left in peace, and gauges with faults that must be found.
void run_gauges(std::uint64_t seeds, Report& report);
/// Resets, rollovers, swaps, typing errors, sparse and one-sided readings.
void run_registers(std::uint64_t seeds, Report& report);
/// Delivered energy by the log of a meter: register or integrated power, under all loads; zeroed, and with gaps.
void run_logs(std::uint64_t seeds, Report& report);
/// Several drains of one unit.
void run_units(std::uint64_t seeds, Report& report);
/// Forecasts of cut-off and next gauge step at several shares of a drain.
void run_forecasts(std::uint64_t seeds, Report& report);
/// Forecasts from two to twenty readings, of gauges with every common fault at its full size.
void run_few_forecasts(std::uint64_t seeds, Report& report);
/// Full drains of two to twenty readings, their end noted late or found off, with gauges of every common fault; mistyped readings of honest ones.
void run_few_runs(std::uint64_t seeds, Report& report);
/// The same drains and forecasts beside a log of 1, 10 or 60 s.
void run_few_logs(std::uint64_t seeds, Report& report);
/// Gauges that drift from run to run and gauges that do not, ageing units, and partial drains through an earlier gauge curve.
void run_drift(std::uint64_t seeds, Report& report);

} // namespace ullage::test
