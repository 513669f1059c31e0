// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/findings_within.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

Message outside_sentence(const GaugeEvidence& evidence, const ShareBound& bound) {
    const std::string clock = evidence.clock_at(bound.point);
    const Message shown = say_gauge(evidence.energy.points[bound.point].gauge_percent), off = say_points(std::floor(std::abs(bound.off_pt)));
    const Message energy = say_number(100 * bound.delivered_share, 0), time = say_number(100 * bound.time_share, 0);
    const bool too_much = bound.off_pt > 0;
    if (energy == time && too_much)
        return say(phrase("gauge", "At %1 the gauge showed %2, at least %3 too much: %4 % of the energy and of the time of this drain had gone."),
                   clock, shown, off, energy);
    if (energy == time)
        return say(phrase("gauge", "At %1 the gauge showed %2, at least %3 too little: %4 % of the energy and of the time of this drain had gone."),
                   clock, shown, off, energy);
    if (too_much)
        return say(
            phrase("gauge", "At %1 the gauge showed %2, at least %3 too much: %4 % of the energy and %5 % of the time of this drain had gone."),
            clock, shown, off, energy, time);
    return say(phrase("gauge", "At %1 the gauge showed %2, at least %3 too little: %4 % of the energy and %5 % of the time of this drain had gone."),
               clock, shown, off, energy, time);
}

} // namespace

void find_outside_shares(const GaugeEvidence& evidence, const std::vector<ShareBound>& bounds, std::vector<Finding>& findings) {
    const std::optional<ShareBound> worst = worst_share_bound(bounds);
    const double threshold_pt = std::max(least_size_pt, 2 * evidence.step_pt);
    if (!worst || std::abs(worst->off_pt) < threshold_pt) return;
    const double size_pt = std::abs(worst->off_pt);
    Finding finding{FindingKind::outside_shares};
    finding.weight = size_pt >= fault_from_pt ? Weight::fault : Weight::doubt;
    finding.sentence = outside_sentence(evidence, *worst);
    finding.evidence = say(phrase("gauge", "whatever the unit takes for itself, an accurate gauge shows %1 to %2 % then; threshold %3 pt outside"),
                           say_number(worst->least_percent, 0), say_number(worst->most_percent, 0), say_number(threshold_pt, 1));
    finding.readings = {evidence.reading_uuid(worst->point)};
    finding.size = size_pt;
    finding.size_unit = "pt";
    finding.statistic_name = "outside of what shares of energy and time allow, pt";
    finding.statistic = size_pt;
    finding.threshold = threshold_pt;
    findings.push_back(std::move(finding));
}

} // namespace ullage
