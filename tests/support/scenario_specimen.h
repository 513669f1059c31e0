// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/scenario.h"

#include <vector>

namespace ullage::test {

/// At the end of May the company borrows a second Tarrow 2k and drains it three times as sample_scenario() drained its own, with few readings, a
/// meter that was calibrated, and in one run socket meter B in series with it. Always the same.
[[nodiscard]] std::vector<ScenarioRun> sample_specimen_runs();

} // namespace ullage::test
