// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/reading.h"
#include "model/run.h"
#include "support/simulator_gauge.h"
#include "support/simulator_random.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::test {

/// One walk to the bench.
struct PlannedReading {
    double hours = 0; ///< since the start of the run
    bool gauge = true;
    bool meter_register = true;
    bool meter_w = false;
    bool display_w = false;
    /// Load changed (then read a second after the noted moment), output tripped or output reset; faults bring marks of
    /// their own. A mark only notes: what the load does is the profile's affair.
    std::optional<MarkKind> mark;
    std::string remark;
};

/// A stretch of time without readings, hours since the start.
struct Gap {
    double from_hours = 0;
    double to_hours = 0;
};

/// How a simulated tester works. The first reading is at the start of the run, the last at its end.
struct TesterSetup {
    /// The readings between start and end; empty: every `interval_h`, each interval longer or shorter by up to the share
    /// `jitter`.
    std::vector<PlannedReading> plan;
    double interval_h = 1;
    double jitter = 0.2;
    std::vector<Gap> gaps;
    /// Once the gauge is at or below this, every `closing_interval_h`.
    std::optional<double> closing_below_percent;
    double closing_interval_h = 0.25;
    /// Shares of generated readings without a part, or with an extra one. A reading that would have neither keeps its gauge.
    double without_gauge = 0;
    double without_register = 0;
    double with_meter_w = 0;
    double with_display_w = 0;

    RunEnd end = RunEnd::cut_off_seen;
    double found_after_h = 1;                     ///< found off: so long after the cut-off
    double end_late_min = 0;                      ///< cut-off seen: noted so many minutes after it
    std::optional<double> noticed_within_min = 0; ///< as the run states it; absent: not stated
    std::optional<double> stop_after_h;           ///< stopped by tester or still running: the last reading is at this time
    std::optional<double> stop_at_percent;        ///< or when the gauge comes to this
    std::string first_remark;
    std::string last_remark;
    bool first_with_powers = false; ///< meter and display power in the first reading
    /// Moments are noted to this; each reading is truly taken within half of it around the noted moment, but the start
    /// is exact. 0: to the millisecond and exact.
    double moment_step_s = 60;
    double display_error_percent = 0; ///< of the unit's own display of power
};

/// The readings to take after the start and before `end_hours`, in order of time.
[[nodiscard]] std::vector<PlannedReading> readings_to_take(const TesterSetup& tester, const SimulatedGauge& gauge, double end_hours, Random& random);

/// When the last reading is due, hours since the start: never after the cut-off unless the unit is found off.
[[nodiscard]] double last_reading_hours(const TesterSetup& tester, const SimulatedGauge& gauge, const Discharge& discharge);

} // namespace ullage::test
