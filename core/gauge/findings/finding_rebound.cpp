// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "gauge/findings/findings.h"

namespace ullage {

void find_rebound(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (evidence.record.run.kind == RunKind::charge) return;
    const std::string& zone = evidence.record.run.time_zone;
    for (const GaugeRise& rise : evidence.energy.rises) {
        const Reading& before = evidence.record.readings[rise.before];
        const Reading& after = evidence.record.readings[rise.after];
        const double rose_pt = *after.values.gauge_percent - *before.values.gauge_percent;
        Finding finding{FindingKind::rebound};
        finding.weight = rose_pt >= fault_from_pt ? Weight::fault : Weight::doubt;
        finding.sentence = "Gauge rose from " + gauge_text(*before.values.gauge_percent) + " to " + gauge_text(*after.values.gauge_percent) +
                           " between " + clock_text(before.values.time_ms, zone) + " and " + clock_text(after.values.time_ms, zone) +
                           " though nothing charged the unit.";
        finding.evidence = "rose by " + exact_text(rose_pt) + " pt; threshold two gauge steps, " + exact_text(2 * evidence.step_pt) + " pt";
        finding.readings = {before.uuid, after.uuid};
        finding.size = rose_pt;
        finding.size_unit = "pt";
        finding.statistic_name = "rise, pt";
        finding.statistic = rose_pt;
        finding.threshold = 2 * evidence.step_pt;
        findings.push_back(std::move(finding));
    }
}

} // namespace ullage
