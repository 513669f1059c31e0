// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"
#include "gauge/feasibility.h"
#include "gauge/findings/findings.h"

#include <algorithm>

namespace ullage {
namespace {

void judge(const GaugeEvidence& evidence, std::size_t from, std::size_t to, std::vector<Finding>& findings) {
    const double gauge = evidence.energy.points[from].gauge_percent;
    if (gauge <= bottom_percent) return;
    const GaugeEvidence::Fall honest = evidence.honest_fall(from, to);
    const double missed_pt = (1 - honest_slope_spread) * honest.least_pt;
    const double threshold_pt = 2 * evidence.step_pt + 3 * evidence.u_fall_pt(from, to);
    if (missed_pt <= threshold_pt) return;

    const double delivered_wh = evidence.energy.points[to].delivered_wh - evidence.energy.points[from].delivered_wh;
    const bool at_start = from == 0 && evidence.record.run.started_full.value_or(false);
    const std::optional<double> most_wh = most_held_wh(evidence.record.unit, evidence.energy.track.total_wh(), evidence.options);
    const bool impossible_for_label = most_wh && 100 * delivered_wh / *most_wh > evidence.step_pt + 3 * evidence.u_fall_pt(from, to);
    Finding finding{at_start ? FindingKind::held_at_full : FindingKind::stuck};
    finding.weight = missed_pt >= fault_from_pt || impossible_for_label ? Weight::fault : Weight::doubt;
    finding.sentence =
        say(at_start ? phrase("gauge", "Gauge held at %1 from %2 to %3 while %4 were delivered (about %5).")
                     : phrase("gauge", "Gauge stuck at %1 from %2 to %3 while %4 were delivered (about %5)."),
            say_gauge(gauge), evidence.clock_at(from), evidence.clock_at(to), say_energy(delivered_wh), say_points(honest.by_energy_pt));
    finding.evidence = say(phrase("gauge", "an accurate gauge would have fallen by at least %1 pt, whatever the no-load draw; threshold %2 pt"),
                           say_number(missed_pt, 1), say_number(threshold_pt, 1));
    finding.readings = evidence.reading_uuids(from, to);
    finding.size = honest.by_energy_pt;
    finding.size_unit = "pt";
    finding.statistic_name = "least honest fall, pt";
    finding.statistic = missed_pt;
    finding.threshold = threshold_pt;
    findings.push_back(std::move(finding));
}

} // namespace

void find_stuck(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (!evidence.judgeable()) return;
    const std::vector<PairedPoint>& points = evidence.energy.points;
    std::size_t from = 0;
    for (const std::size_t next : evidence.energy.gauge_changes) {
        if (next - 1 > from) judge(evidence, from, next - 1, findings);
        from = next;
    }
    if (points.size() - 1 > from) judge(evidence, from, points.size() - 1, findings);
}

} // namespace ullage
