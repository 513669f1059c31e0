// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ensemble/few_readings.h"
#include "unit/between_runs.h"

#include <cstdint>
#include <string>

namespace ullage::test {

/// A drain that has come so far, the last reading made now.
[[nodiscard]] RunSetup few_forecast(FewFamily family, int readings, double share, std::uint64_t seed);
/// The charge before a run that the logbook has.
enum class ChargeBefore {
    none,
    to_full,      ///< with a reading an hour later, when it took in little
    to_early_full ///< ended when its gauge said full, with 80 to 100 % of it in
};
/// What the logbook knows of a unit that was found off, nothing of its energy noted, and then charged: of a full charge 70 to 90 % comes out again.
[[nodiscard]] UnitFit charged_before(ChargeBefore how, const RunSetup& setup, const SimulatedRun& run, std::uint64_t seed);
/// Forecasts the cut-off from the last reading of such a run and reports whether its range holds the true one.
void report_few_forecast(const std::string& name, double share, const RunSetup& setup, const SimulatedRun& run, Report& report,
                         const UnitFit& unit_fit = {});

} // namespace ullage::test
