// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "gauge/findings/findings.h"

#include <utility>

namespace ullage {

void find_rebound(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (evidence.record.run.kind == RunKind::charge) return;
    const std::string& zone = evidence.record.run.time_zone;
    for (const GaugeRise& rise : evidence.energy.rises) {
        const double rose_pt = rise.after_percent - rise.before_percent;
        Finding finding{FindingKind::rebound};
        finding.weight = rose_pt >= fault_from_pt ? Weight::fault : Weight::doubt;
        finding.sentence = "Gauge rose from " + gauge_text(rise.before_percent) + " to " + gauge_text(rise.after_percent) + " between " +
                           clock_text(rise.before_ms, zone) + " and " + clock_text(rise.after_ms, zone) + " though nothing charged the unit.";
        finding.evidence = "rose by " + exact_text(rose_pt) + " pt; threshold two gauge steps, " + exact_text(2 * evidence.step_pt) + " pt";
        for (const auto& [reading, time_ms] : {std::pair(rise.before, rise.before_ms), std::pair(rise.after, rise.after_ms)}) {
            PairedPoint point;
            point.reading = reading;
            point.time_ms = time_ms;
            const ReadingId& uuid = reading_uuid_at(evidence.record, point);
            if (finding.readings.empty() || finding.readings.back() != uuid) finding.readings.push_back(uuid);
        }
        finding.size = rose_pt;
        finding.size_unit = "pt";
        finding.statistic_name = "rise, pt";
        finding.statistic = rose_pt;
        finding.threshold = 2 * evidence.step_pt;
        findings.push_back(std::move(finding));
    }
}

} // namespace ullage
