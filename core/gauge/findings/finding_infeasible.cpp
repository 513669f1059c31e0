// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/feasibility.h"
#include "gauge/findings_within.h"
#include "gauge/share_bounds.h"

namespace ullage {
void find_infeasible(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    find_infeasible(evidence, gauge_feasibility(evidence.record, evidence.energy, evidence.options), findings);
}

void find_infeasible(const GaugeEvidence& evidence, const GaugeFeasibility& bound, std::vector<Finding>& findings) {
    const double error_pt = bound.least_error_pt.value.value_or(0);
    const double threshold_pt = share_tolerance_pt(evidence.step_pt);
    if (error_pt <= threshold_pt) return;
    Finding finding{FindingKind::infeasible};
    finding.weight = Weight::fault;
    finding.sentence = bound.sentence;
    finding.evidence =
        say(phrase("gauge", "no unit with a no-load draw of 0 or more and a battery of at most 110 % of its label keeps the gauge within %1 pt "
                            "at all of these readings; threshold %2 pt"),
            say_number(error_pt, 1), say_number(threshold_pt, 1));
    finding.readings = bound.readings;
    finding.size = error_pt;
    finding.size_unit = "pt";
    finding.statistic_name = "least worst error, pt";
    finding.statistic = error_pt;
    finding.threshold = threshold_pt;
    findings.push_back(std::move(finding));
}

} // namespace ullage
