// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "measure/budget.h"
#include "measure/cut_off_moment.h"
#include "measure/load_squares.h"
#include "measure/pairing.h"
#include "measure/register.h"
#include "measure/run_scan.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What the gauge of a log gave an analysis.
struct GaugeLogUse {
    bool used = false;
    long steps = 0;                  ///< of the gauge, paired with metered energy
    long compared = 0, agreeing = 0; ///< gauge readings noted by hand within the log
    double clock_half_s = 0;         ///< half-width of the doubt of its clock against that of the metered energy
    Message sentence;
};

/// From the readings of one run to its delivered energy: everything that needs no judgement of the gauge.
struct EnergyAnalysis {
    MeasureOptions options; ///< that it went by, for whatever else is worked out from it
    RegisterTrack track;
    std::vector<PairedPoint> points;
    std::vector<IntervalRow> intervals;
    std::vector<std::size_t> gauge_changes; ///< the paired points whose gauge differs from that of the point before
    std::vector<GaugeRise> rises;           ///< of the gauge by at least two of its steps, paired or not
    std::vector<OffSpan> output_off;
    std::optional<CutOffMoment> cut_off; ///< of a run that ended by it
    LoadSquares squares;                 ///< along `track`
    double register_step_wh = 1;         ///< see register_step_wh() of the budget
    Budget budget;
    std::vector<Message> meter_remarks; ///< where a run goes beyond what its meters are made or calibrated for, see meter_remarks()
    Message log_sentence;               ///< what logs of the meter and of the gauge say beside the readings; empty without one
    UtcMs start_ms = 0;                 ///< first reading; meaningless without readings
    bool from_full_to_cut_off = false;
    Quantity delivered_wh;                  ///< "delivered_wh"; `at least` where energy may be missing
    Quantity duration_h;                    ///< "duration_h"; `bracket` for a run found off
    Quantity mean_load_w;                   ///< "mean_load_w"
    Quantity usable_fraction;               ///< "usable_fraction", see usable.h
    Quantity wh_per_gauge_point;            ///< "wh_per_gauge_point", end to end
    std::optional<GaugeLogUse> gauge_log{}; ///< of a run with a log of its gauge; its steps then stand among `points`
    /// What was shown at moments: gauge readings, and where a log is used both ends of each of its values in place of its steps. Empty without one:
    /// then `points` are that.
    std::vector<PairedPoint> shown{};
};

/// Runs register unwrapping (by the log of a meter where there is one that tells, see log_track.h), pairing, budget and usable fraction on one run.
/// Never fails: what cannot be known says so.
[[nodiscard]] EnergyAnalysis analyse_energy(const RunRecord& record, const MeasureOptions& options = {});

/// Time from the first reading to the end of the output: to `cut_off` of a run that ended by it, with the doubt of its noted start; else to the last
/// reading, of a run still running to the last sample of its meter's log. `bracket` for a run found off, unless a log saw it go off.
[[nodiscard]] Quantity run_duration(const RunRecord& record, const RunScan& scan, const std::optional<CutOffMoment>& cut_off,
                                    const MeasureOptions& options = {});

/// The same energy without the gauge reading of one paired point: for the question whether that reading alone is at odds with the rest. `from` and
/// `to` of intervals count the points that are left. Precondition: point < energy.points.size().
[[nodiscard]] EnergyAnalysis without_gauge_reading(const RunRecord& record, const EnergyAnalysis& energy, std::size_t point);

} // namespace ullage
