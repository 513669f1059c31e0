// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/scenario.h"

#include <string>

namespace ullage::test {

/// A run of the sample scenario beside which a meter wrote a log.
struct LoggedRun {
    ScenarioRun run; ///< the log in sample-data/logs has the name of its run sheet
    std::string log; ///< as the meter writes it: a head, then local time, power and register of each row
};

/// After all other runs, in the night to 24 May: the Pelm 900 carries the cold box for drinks, which a thermostat switches, until the tester
/// stops it; a meter of its own logs power and register every ten seconds. Always the same.
[[nodiscard]] LoggedRun sample_logged_run();

} // namespace ullage::test
