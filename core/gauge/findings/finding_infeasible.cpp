// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "gauge/feasibility.h"
#include "gauge/findings_within.h"

#include <algorithm>

namespace ullage {
namespace {

/// A perfect charge-counting gauge bulges 2.2 points above the energy share (cell B0005, NASA Ames Battery Data Set); tied to
/// its first reading it needs up to 1.6 points of error, of which half a gauge step is granted anyway.
constexpr double charge_counting_pt = 1.6;

} // namespace

void find_infeasible(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (evidence.judgeable()) find_infeasible(evidence, gauge_feasibility(evidence.record, evidence.energy, evidence.options), findings);
}

void find_infeasible(const GaugeEvidence& evidence, const GaugeFeasibility& bound, std::vector<Finding>& findings) {
    if (!evidence.judgeable()) return;
    const double error_pt = bound.least_error_pt.value.value_or(0);
    const double threshold_pt = std::max({1.0, evidence.step_pt / 2, charge_counting_pt - evidence.step_pt / 2});
    if (error_pt <= threshold_pt) return;
    Finding finding{FindingKind::infeasible};
    finding.weight = Weight::fault;
    finding.sentence = bound.sentence;
    finding.evidence = "no unit with a no-load draw of 0 or more and a battery of at most 110 % of its label keeps the gauge within " +
                       fixed_text(error_pt, 1) + " pt at all of these readings; convicted beyond " + fixed_text(threshold_pt, 1) + " pt";
    finding.readings = bound.readings;
    finding.size = error_pt;
    finding.size_unit = "pt";
    finding.statistic_name = "least worst error, pt";
    finding.statistic = error_pt;
    finding.threshold = threshold_pt;
    findings.push_back(std::move(finding));
}

} // namespace ullage
