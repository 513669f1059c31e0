// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/full_charge.h"

#include "model/meter_gain.h"
#include "unit/drain_system.h"

#include <algorithm>

namespace ullage {
namespace {

constexpr double least_given_back = 0.5; ///< of what went in
constexpr double full_percent = 100;

bool ended_empty(const RunRecord& record) {
    return record.run.kind != RunKind::charge && (record.run.end == RunEnd::cut_off_seen || record.run.end == RunEnd::found_off);
}

bool ended_full(const RunRecord& charge) {
    std::optional<double> last;
    for (const Reading& reading : charge.readings)
        if (!reading.withdrawn && reading.values.gauge_percent) last = reading.values.gauge_percent;
    return last && *last >= full_percent;
}

/// What had gone in when the gauge first showed full; a charger left plugged in feeds the unit itself from then on.
double wh_at_full(const EnergyAnalysis& energy) {
    for (const PairedPoint& point : energy.points)
        if (point.gauge_percent >= full_percent) return point.delivered_wh;
    return energy.track.total_wh();
}

} // namespace

std::optional<FullCharge> full_charge_of(const std::vector<const RunRecord*>& records, const std::vector<EnergyAnalysis>& energies) {
    std::optional<FullCharge> found;
    for (std::size_t i = 1; i < records.size(); ++i) {
        const RunRecord& charge = *records[i];
        const EnergyAnalysis& energy = energies[i];
        if (charge.run.kind != RunKind::charge || charge.run.end == RunEnd::still_running || !ended_empty(*records[i - 1]) || !ended_full(charge))
            continue;
        const double wh = energy.track.total_wh();
        if (!energy.track.usable() || energy.track.energy_may_be_missing || wh <= 0 || (found && wh >= found->charged_wh)) continue;
        const double limit = (charge.meter ? error_limit_percent(*charge.meter).value_or(assumed_limit_percent) : assumed_limit_percent) / 100;
        const double register_wh = 2 * energy.register_step_wh;
        found = FullCharge{charge.run.uuid, wh, least_given_back * wh_at_full(energy) * (1 - limit), (wh + register_wh) * (1 + limit)};
    }
    return found;
}

} // namespace ullage
