// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/projection_doubt.h"

#include "measure/usable.h"

#include <algorithm>
#include <iterator>
#include <vector>

namespace ullage {
namespace {

/// A fault of the gauge as a projection feels it.
struct ProjectionFault {
    double size_pt = 0;
    bool whole = false; ///< no possible unit explains the readings
};

ProjectionFault worst_fault(const std::vector<Finding>& findings) {
    ProjectionFault worst;
    for (const Finding& finding : findings) {
        const bool counts = finding.kind == FindingKind::infeasible || finding.kind == FindingKind::stuck || finding.kind == FindingKind::jump ||
                            finding.kind == FindingKind::bent || finding.kind == FindingKind::held_at_full;
        if (finding.weight != Weight::fault || !counts) continue;
        worst.size_pt = std::max(worst.size_pt, finding.size);
        worst.whole = worst.whole || finding.kind == FindingKind::infeasible;
    }
    return worst;
}

} // namespace

void lower_by_gauge_faults(const RunRecord& record, const GaugeAnalysis& gauge, EnergyAnalysis& energy) {
    Quantity& fraction = energy.usable_fraction;
    if (fraction.kind != Kind::projected || !fraction.value || energy.points.size() < 2) return;
    const ProjectionFault fault = worst_fault(gauge.findings);
    if (fault.size_pt <= 0) return;
    const double rated_wh = *record.unit.rated_energy_wh;
    const double fell_pt = energy.points.front().gauge_percent - energy.points.back().gauge_percent;
    const double less = fell_pt / (fell_pt + fault.size_pt);
    const double floor =
        std::max(0.0, energy.track.total_wh() - energy.track.missing_estimate_wh - energy.budget.half_width_wh.value_or(0)) / rated_wh;
    const double most = most_held_wh(record.unit, energy.track.total_wh(), energy.options).value_or(rated_wh) / rated_wh;

    fraction.value = std::max(floor, *fraction.value * less);
    if (fault.whole) fraction.value = std::min(*fraction.value, most);
    if (fraction.lower && fraction.upper) {
        fraction.lower = fault.whole ? floor : std::max(std::min(floor, *fraction.lower), *fraction.lower * less);
        const double more = fell_pt > 2 * fault.size_pt ? fell_pt / (fell_pt - fault.size_pt) : 2.0;
        fraction.upper = fault.whole ? most : std::max(*fraction.value, std::min(std::max(most, *fraction.upper), *fraction.upper * more));
    }
    std::vector<Message> clauses{
        say(fault.whole
                ? phrase("gauge", "the gauge is at fault by about %1 points, so that anything from what was delivered to what the label holds may be")
                : phrase("gauge", "the gauge is at fault by about %1 points, which this allows for"),
            say_number(fault.size_pt, 0))};
    std::ranges::copy(projection_remarks(record, energy.track, energy.points, energy.budget), std::back_inserter(clauses));
    fraction.reason = say_joined(clauses, "; ");
}

EnergyAnalysis analyse_judged_energy(const RunRecord& record, const MeasureOptions& options) {
    EnergyAnalysis energy = analyse_energy(record, options);
    if (energy.usable_fraction.kind == Kind::projected) lower_by_gauge_faults(record, analyse_gauge(record, energy, options), energy);
    return energy;
}

} // namespace ullage
