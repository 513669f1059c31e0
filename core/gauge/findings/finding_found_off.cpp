// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/findings_within.h"

#include <algorithm>

namespace ullage {

void find_found_off(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    const RunRecord& record = evidence.record;
    if (record.run.end != RunEnd::found_off) return;
    const Reading* last = nullptr;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        if (reading.values.mark == MarkKind::cut_off) return;
        last = &reading;
    }
    if (!last) return;
    const Quantity& duration = evidence.energy.duration_h;
    Finding finding{FindingKind::found_off_without_mark};
    finding.weight = Weight::note;
    finding.sentence = say(phrase("gauge", "Output was found off at %1; nobody saw when it went off, so the run time is a bracket."),
                           clock_text(last->values.time_ms, record.run.time_zone));
    finding.evidence = duration.reason.empty() ? say(phrase("gauge", "run time %1"), say_quantity(duration))
                                               : say(phrase("gauge", "run time %1: %2"), say_quantity(duration), duration.reason);
    finding.readings = {last->uuid};
    finding.size = 2 * duration.half_width().value_or(0);
    finding.size_unit = "h";
    finding.statistic_name = "width of the bracket, h";
    finding.statistic = finding.size;
    finding.threshold = 0;
    findings.push_back(std::move(finding));
}

} // namespace ullage
