// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ensemble/few_readings.h"

#include <cstdint>
#include <string>

namespace ullage::test {

/// A full drain from a few readings, its end noted up to four minutes late or found off.
[[nodiscard]] RunSetup few_drain(FewFamily family, int readings, std::uint64_t seed);
/// The first doubt or fault of the gauge, in words; empty without one. A lone reading that is doubted is no accusation of the gauge.
[[nodiscard]] std::string gauge_accusation(const RunAnalysis& analysis);
/// Analyses such a run and reports delivered energy, run time, mean load, own draw, what was said of the gauge, and of the register.
void report_few_drain(const std::string& name, FewFamily family, const RunSetup& setup, const SimulatedRun& run, Report& report);

} // namespace ullage::test
