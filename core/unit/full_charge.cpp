// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/full_charge.h"

#include "model/meter_gain.h"
#include "unit/drain_system.h"

#include <algorithm>

namespace ullage {
namespace {

constexpr double least_given_back = 0.5; ///< of what went in
constexpr double full_percent = 100;
/// A gauge may hang at full for a fifth of the energy on the way down, so it may show full as much too early on the way up (common practice, no
/// source).
constexpr double most_in_a_full_unit = 1 / 0.8;
constexpr double slow_share = 0.25; ///< of the power until then: a unit that takes in so little is full
constexpr double least_slow_h = 0.25;

bool ended_empty(const RunRecord& record) {
    return record.run.kind != RunKind::charge && (record.run.end == RunEnd::cut_off_seen || record.run.end == RunEnd::found_off);
}

bool ended_full(const RunRecord& charge) {
    std::optional<double> last;
    for (const Reading& reading : charge.readings)
        if (!reading.withdrawn && reading.values.gauge_percent) last = reading.values.gauge_percent;
    return last && *last >= full_percent;
}

/// What had gone in when the gauge first showed full, and whether little went in from then on. A charger left plugged in feeds the unit itself.
struct FirstFull {
    double charged_wh = 0;
    bool confirmed = false;
};

FirstFull first_full(const EnergyAnalysis& energy) {
    const auto full = std::ranges::find_if(energy.points, [](const PairedPoint& point) { return point.gauge_percent >= full_percent; });
    if (full == energy.points.end()) return {energy.track.total_wh(), false};
    const double until_h = hours_between(energy.track.points.front().time_ms, full->time_ms);
    const double after_h = hours_between(full->time_ms, energy.track.points.back().time_ms);
    const double after_wh = energy.track.total_wh() - full->delivered_wh;
    return {full->delivered_wh, until_h > 0 && after_h >= least_slow_h && after_wh / after_h <= slow_share * full->delivered_wh / until_h};
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
        if (!energy.track.usable() || energy.track.energy_may_be_missing || wh <= 0) continue;
        const double limit = (charge.meter ? error_limit_percent(*charge.meter).value_or(assumed_limit_percent) : assumed_limit_percent) / 100;
        const FirstFull full = first_full(energy);
        const double most_wh = (wh + 2 * energy.register_step_wh) * (1 + limit) * (full.confirmed ? 1 : most_in_a_full_unit);
        if (!found || most_wh < found->most_wh) found = FullCharge{charge.run.uuid, wh, least_given_back * full.charged_wh * (1 - limit), most_wh};
    }
    return found;
}

} // namespace ullage
