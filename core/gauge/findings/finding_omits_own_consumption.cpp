// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/findings_within.h"
#include "gauge/loss_fit.h"

#include <algorithm>

namespace ullage {
namespace {

constexpr double most_share_of_load = 0.1;
constexpr double least_share_of_output = 0.004;
constexpr double least_plausible_w = 1.5;
constexpr double near_zero_share = 0.1; ///< of the threshold: as good as 0

} // namespace

void find_omits_own_consumption(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (evidence.judgeable()) find_omits_own_consumption(evidence, fit_losses(evidence.record, evidence.energy, evidence.options), findings);
}

void find_omits_own_consumption(const GaugeEvidence& evidence, const LossFit& fit, std::vector<Finding>& findings) {
    if (!evidence.judgeable()) return;
    const Quantity& draw = fit.no_load_draw_w;
    if (!draw.lower || !draw.upper) return;
    const double mean_w = evidence.delivered_wh / evidence.hours;
    const double plausible_w = std::max(least_plausible_w, least_share_of_output * evidence.record.unit.rated_output_w.value_or(0));
    const double threshold_w = std::min(most_share_of_load * mean_w, plausible_w);
    const double upper_w = std::max(0.0, *draw.upper);
    if (upper_w > threshold_w || *draw.lower > near_zero_share * threshold_w) return;
    Finding finding{FindingKind::omits_own_consumption};
    finding.weight = Weight::doubt;
    finding.sentence =
        say(phrase("gauge", "If the gauge is linear in stored energy, it probably does not count the unit's own consumption: it leaves room for "
                            "at most %1 W beside a mean load of %2 W."),
            say_number(upper_w, 1), say_number(mean_w, 0));
    finding.evidence =
        say(phrase("gauge", "fitted no-load draw %1, an interval that reaches 0 or nearly so; told when its upper end is at most %2 W"),
            say_quantity(draw), say_number(threshold_w, 1));
    finding.readings = evidence.reading_uuids(0, evidence.energy.points.size() - 1);
    finding.size = upper_w;
    finding.size_unit = "W";
    finding.statistic_name = "upper end of the fitted no-load draw, W";
    finding.statistic = upper_w;
    finding.threshold = threshold_w;
    findings.push_back(std::move(finding));
}

} // namespace ullage
