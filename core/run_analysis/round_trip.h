// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "measure/energy_analysis.h"
#include "model/ids.h"

#include <string>
#include <vector>

namespace ullage {

/// One closed cycle: what went in and what came out between two equal states of the unit.
struct RoundTripCycle {
    RunId charge_uuid, drain_uuid; ///< runs
    int charge_number = 0, drain_number = 0;
    double charged_wh = 0, delivered_wh = 0;
    double u_charged_wh = 0, u_delivered_wh = 0; ///< standard uncertainties of everything but the meters' gains
    double u_ends = 0;                           ///< relative, of the equality of the two ends; 0 for cut-off and full
    std::string charge_meter, drain_meter;       ///< uuids, or a key of the run's own for two meters; empty where none is stated
    std::optional<double> charge_limit_percent, drain_limit_percent;
    double charge_w = 0, drain_w = 0;                       ///< mean powers
    double charge_load_part_wh = 0, drain_load_part_wh = 0; ///< half-widths of the meters' errors that are each power's own
    double after_full_wh = 0;                               ///< of charged_wh, taken after the gauge first showed full, the charger still plugged in
    std::optional<ChargeSource> source;
    Message ends;         ///< "from cut-off to full and back", "from full to cut-off and back", "from 40 to 90 % and back by the gauge"
    double between_h = 0; ///< time that the unit stood between its two runs
};

/// Round-trip efficiency of a unit: sum of the delivered energies over sum of the charged ones, over all closed cycles (protocol PNNL-22010
/// Rev. 2, from memory; the mean of the cycles' ratios is another number).
struct RoundTrip {
    std::vector<RoundTripCycle> cycles;
    Quantity efficiency; ///< "round_trip_efficiency", a fraction
    Message boundary;    ///< between which points it counts and what is inside
    Message sentence;
};

/// Finds the closed cycles among the runs of one unit (in order of time; others than charges and drains in between break a cycle): a charge that
/// ends full after a run that ended by cut-off, or from a gauge of at most one step, with the full drain after it; else a full drain with the charge
/// to full after it; else a charge and the drain beside it whose gauge ends are equal, at least 20 points apart. A run belongs to one cycle at most.
/// Runs with energy missing close none. `energies` belong to `records` one by one.
///
/// Interval: the gain of meter m counts with its share of the delivered less its share of the charged energy, so that it cancels where one meter
/// did both at like powers; at powers that differ by more than a factor of two the part of its error that is each power's own does not. The largest
/// of those rectangular parts is convolved with all others. What went in after the gauge first showed full (a charger left plugged in) is counted
/// half, its rectangle added, and makes the result a `bracket`. "Full" and "cut-off" repeat only as well as drains do, so each cycle carries the
/// repeatability of the options, independent of the other cycles; a pooled one with Student's t of its degrees of freedom. Without a limit of a meter
/// that counts there is no interval, and without a meter stated no gain cancels.
[[nodiscard]] RoundTrip round_trip(const UnitRuns& records, const std::vector<EnergyAnalysis>& energies, const MeasureOptions& options = {});

/// The same from given cycles.
[[nodiscard]] RoundTrip round_trip_of(std::vector<RoundTripCycle> cycles, const MeasureOptions& options = {});

} // namespace ullage
