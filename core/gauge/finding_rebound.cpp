// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "gauge/findings.h"

namespace ullage {
namespace {

constexpr double fault_from_pt = 5.0;

} // namespace

void find_rebound(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (evidence.record.run.kind == RunKind::charge) return;
    const Reading* before = nullptr;
    for (const Reading& reading : evidence.record.readings) {
        if (reading.withdrawn || !reading.values.gauge_percent) continue;
        if (before) {
            const double rose_pt = *reading.values.gauge_percent - *before->values.gauge_percent;
            if (rose_pt >= 2 * evidence.step_pt) {
                const std::string& zone = evidence.record.run.time_zone;
                Finding finding{FindingKind::rebound};
                finding.weight = rose_pt >= fault_from_pt ? Weight::fault : Weight::doubt;
                finding.sentence = "Gauge rose from " + gauge_text(*before->values.gauge_percent) + " to " +
                                   gauge_text(*reading.values.gauge_percent) + " between " + clock_text(before->values.time_ms, zone) + " and " +
                                   clock_text(reading.values.time_ms, zone) + " though nothing charged the unit.";
                finding.evidence = "rose by " + exact_text(rose_pt) + " pt; convicted from two gauge steps, " +
                                   exact_text(2 * evidence.step_pt) + " pt";
                finding.readings = {before->uuid, reading.uuid};
                finding.size = rose_pt;
                finding.size_unit = "pt";
                finding.statistic_name = "rise, pt";
                finding.statistic = rose_pt;
                finding.threshold = 2 * evidence.step_pt;
                findings.push_back(std::move(finding));
            }
        }
        before = &reading;
    }
}

} // namespace ullage
