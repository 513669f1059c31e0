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
        finding.sentence =
            say(phrase("gauge", "Gauge rose from %1 to %2 between %3 and %4 though nothing charged the unit."), say_gauge(rise.before_percent),
                say_gauge(rise.after_percent), clock_text(rise.before_ms, zone), clock_text(rise.after_ms, zone));
        finding.evidence = say(phrase("gauge", "rose by %1 pt; threshold two gauge steps, %2 pt"), say_digits(exact_text(rose_pt)),
                               say_digits(exact_text(2 * evidence.step_pt)));
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
