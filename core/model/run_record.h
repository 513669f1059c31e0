// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/gauge_log.h"
#include "model/meter.h"
#include "model/reading.h"
#include "model/run.h"
#include "model/run_trace.h"
#include "model/unit.h"

#include <memory>
#include <optional>
#include <vector>

namespace ullage {

/// What the logs of one further meter say, beside those of the run's own.
struct MeterLog {
    std::optional<Meter> meter;
    RunTrace trace;
};

/// A run with all that belongs to it: what a run sheet carries and what an analysis needs.
/// `readings` are in order of time (ties by entry) and include withdrawn ones, which analyses and sheets leave out.
struct RunRecord {
    Unit unit;
    std::optional<Meter> meter;
    Run run;
    std::vector<Reading> readings;
    std::optional<RunTrace> trace; ///< of the logs of the run's own meter, or where it has none of the first other; sheets carry none
    int number = 1;                ///< 1, 2, … within the unit, in order of the first reading
    std::optional<Meter> second_meter{};
    std::optional<GaugeLog> gauge_log{}; ///< what logs say of the unit's gauge
    std::vector<MeterLog> other_logs{};  ///< of meters other than that of `trace`, in order of their first sample
};

/// What the gauge of a run showed last, percent: as noted, or of a run still running by a log of it that goes on after that. Absent where it was
/// never read.
[[nodiscard]] std::optional<double> last_shown_percent(const RunRecord& record);

/// Runs by address, such as those of one unit; the records must outlive them.
using UnitRuns = std::vector<const RunRecord*>;
/// Runs that several threads may hold: replaced, never altered.
using SharedRuns = std::vector<std::shared_ptr<const RunRecord>>;

[[nodiscard]] UnitRuns addresses_of(const std::vector<RunRecord>& records);
[[nodiscard]] UnitRuns addresses_of(const SharedRuns& runs);
[[nodiscard]] SharedRuns shared(std::vector<RunRecord> records); ///< without a copy

} // namespace ullage
