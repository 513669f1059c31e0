// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "gauge/findings_within.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

std::string share_range_text(const ShareBound& bound) {
    const std::string energy = fixed_text(100 * bound.delivered_share, 0), time = fixed_text(100 * bound.time_share, 0);
    return energy == time ? energy + " % of the energy and of the time" : energy + " % of the energy and " + time + " % of the time";
}

} // namespace

void find_outside_shares(const GaugeEvidence& evidence, const std::vector<ShareBound>& bounds, std::vector<Finding>& findings) {
    const std::optional<ShareBound> worst = worst_share_bound(bounds);
    const double threshold_pt = std::max(least_size_pt, 2 * evidence.step_pt);
    if (!worst || std::abs(worst->off_pt) < threshold_pt) return;
    const double size_pt = std::abs(worst->off_pt);
    Finding finding{FindingKind::outside_shares};
    finding.weight = size_pt >= fault_from_pt ? Weight::fault : Weight::doubt;
    finding.sentence = "At " + evidence.clock_at(worst->point) + " the gauge showed " +
                       gauge_text(evidence.energy.points[worst->point].gauge_percent) + ", at least " + points_text(std::floor(size_pt)) +
                       (worst->off_pt > 0 ? " too much" : " too little") + ": " + share_range_text(*worst) + " of this drain had gone.";
    finding.evidence = "whatever the unit takes for itself, an accurate gauge shows " + fixed_text(worst->least_percent, 0) + " to " +
                       fixed_text(worst->most_percent, 0) + " % then; threshold " + fixed_text(threshold_pt, 1) + " pt outside";
    finding.readings = {evidence.reading_uuid(worst->point)};
    finding.size = size_pt;
    finding.size_unit = "pt";
    finding.statistic_name = "outside of what shares of energy and time allow, pt";
    finding.statistic = size_pt;
    finding.threshold = threshold_pt;
    findings.push_back(std::move(finding));
}

} // namespace ullage
