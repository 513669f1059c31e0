// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/run_record.h"
#include "support/simulator_gauge.h"
#include "support/simulator_meter.h"
#include "support/simulator_tester.h"
#include "support/simulator_unit.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace ullage::test {

/// What may go wrong with the register or the notes of it.
enum class FaultKind {
    reset_with_mark,    ///< a row "meter zeroed" at that moment, with the register read after
    reset_without_mark, ///< between two readings; nobody noticed
    swap_with_mark,     ///< a row "meter swapped", with the new meter's register
    swap_without_mark,
    typing_error, ///< the first register reading at or after that moment is noted wrongly (never that after cut-off)
};

/// A fault to plant. It is left out when its moment is not within the run (see RunTruth::faults for those planted).
struct FaultSetup {
    FaultKind kind = FaultKind::reset_without_mark;
    double hours = 0;
    bool read_before = true;                  ///< marked ones: the old register is noted in a row of the same moment
    std::optional<MeterSetup> new_meter = {}; ///< swaps: required
    double least_wh = 20;                     ///< typing error: by at least this much
    std::string remark = {};                  ///< of the marked row
};

/// One simulated run: of a drain or no-load drain, from `start_depth` of the battery taken (0: full).
struct RunSetup {
    Unit unit; ///< claims, as the tester notes them
    SimulatedUnit physics;
    GaugeLaw gauge; ///< its step is independent of Unit::gauge_step_percent, which is what the tester believes
    LoadProfile load = LoadProfile::constant(100);
    std::optional<MeterSetup> meter = MeterSetup{}; ///< absent: no register readings
    TesterSetup tester;
    std::vector<FaultSetup> faults;
    RunKind kind = RunKind::drain;
    double start_depth = 0;
    /// Standard deviation of the battery's energy from run to run.
    double repeatability_percent = 0;
    UtcMs start_ms = 1'810'310'400'000; ///< 2027-05-14T16:00:00Z
    std::string time_zone = "UTC";
    std::string load_words = "simulated";
    std::optional<double> ambient_c;
    int number = 1;
};

/// What was true when a reading was taken.
struct ReadingTruth {
    double hours = 0; ///< the true moment since the start
    double delivered_wh = 0;
    double stored_percent = 0; ///< of this run's full battery, left
    double gauge_percent = 0;  ///< by the gauge's law, before noise and steps
    double load_w = 0;
};

/// A fault that is in the record, between (or at) which readings (places in RunRecord::readings) and moments.
struct PlantedFault {
    FaultKind kind = FaultKind::reset_without_mark;
    double hours = 0;
    std::size_t before = 0;       ///< last reading with a register before it; for a typing error the reading itself
    std::size_t after = 0;        ///< first reading with a register after it; for a typing error the reading itself
    UtcMs from_ms = 0, to_ms = 0; ///< noted moments of those two
    double right_wh = 0;          ///< typing error: what the register showed
    double noted_wh = 0;          ///< typing error: what stands in the record
    /// Delivered, but not in any register difference of the record. Of a reset or swap without a mark only what had
    /// been delivered since the reading before.
    double unread_wh = 0;
};

/// The truth of a run. E*, P* and c as in simulator_unit.h, of this run's battery.
struct RunTruth {
    SimulatedUnit physics;
    double deliverable_wh = 0;
    double no_load_draw_w = 0;
    double curvature_per_w = 0;
    double delivered_wh = 0;  ///< from the first to the last reading
    double output_on_h = 0;   ///< from the first reading to the last or the cut-off, if that came first
    double squared_w2h = 0;   ///< ∫P² dt over that time
    bool cut_off = false;     ///< the unit switched off within the run
    double cut_off_hours = 0; ///< when it did or would have done
    double full_drain_wh = 0; ///< delivered if drained to cut-off under this load
    double gauge_at_cut_off_percent = 0;
    double gain_error_percent = 0;         ///< of the first meter
    std::optional<double> usable_fraction; ///< full_drain_wh / rated, for a run that started full
    std::vector<ReadingTruth> readings;    ///< one for each of the record's
    std::vector<PlantedFault> faults;
    std::vector<StuckSpan> stuck;
    std::optional<double> lingers_from_hours;
};

struct SimulatedRun {
    RunRecord record;
    RunTruth truth;
};

/// Simulates a run; the same setup and seed give the same run. Takes some tens of microseconds for a day's drain.
/// Preconditions: those of the parts; swaps have a new meter; faults of a run with a meter only.
[[nodiscard]] SimulatedRun simulate_run(const RunSetup& setup, std::uint64_t seed);

} // namespace ullage::test
