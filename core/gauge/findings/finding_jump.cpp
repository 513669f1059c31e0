// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/findings/findings.h"

#include <algorithm>

namespace ullage {
namespace {

double excess_pt(const GaugeEvidence& evidence, std::size_t from) {
    const std::vector<PairedPoint>& points = evidence.energy.points;
    const double fell_pt = points[from].gauge_percent - points[from + 1].gauge_percent;
    const double honest_pt = (1 + honest_slope_spread) * evidence.honest_fall(from, from + 1).most_pt;
    const double threshold_pt = 2 * evidence.step_pt + 3 * evidence.u_fall_pt(from, from + 1);
    return fell_pt >= jump_steepness * honest_pt ? fell_pt - honest_pt - threshold_pt : -1.0;
}

} // namespace

void find_jump(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (!evidence.judgeable()) return;
    const std::vector<PairedPoint>& points = evidence.energy.points;
    std::size_t judged = 0; // up to this point
    for (const std::size_t change : evidence.energy.gauge_changes) {
        const std::size_t from = change - 1;
        if (from < judged || excess_pt(evidence, from) <= 0) continue;
        std::size_t to = from + 1;
        while (to + 1 < points.size() && excess_pt(evidence, to) > 0) ++to;

        const GaugeEvidence::Fall honest = evidence.honest_fall(from, to);
        const double fell_pt = points[from].gauge_percent - points[to].gauge_percent;
        Finding finding{FindingKind::jump};
        finding.statistic = fell_pt - (1 + honest_slope_spread) * honest.most_pt;
        finding.threshold = 2 * evidence.step_pt + 3 * evidence.u_fall_pt(from, to);
        finding.size = fell_pt - honest.by_energy_pt;
        finding.size_unit = "pt";
        finding.weight = finding.statistic >= fault_from_pt ? Weight::fault : Weight::doubt;
        finding.sentence = say(phrase("gauge", "Gauge fell from %1 to %2 between %3 and %4, where energy and time explain at most %5."),
                               say_gauge(points[from].gauge_percent), say_gauge(points[to].gauge_percent), evidence.clock_at(from),
                               evidence.clock_at(to), say_points(honest.most_pt));
        finding.statistic_name = "fall beyond the steepest honest one, pt";
        finding.evidence = say(phrase("gauge", "fell by %1 pt more than the steepest accurate gauge, whatever the no-load draw; threshold %2 pt"),
                               say_number(finding.statistic, 1), say_number(finding.threshold, 1));
        finding.readings = evidence.reading_uuids(from, to);
        findings.push_back(std::move(finding));
        judged = to;
    }
}

} // namespace ullage
