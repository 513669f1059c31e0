// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"
#include "gauge/findings/findings.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr double fault_from_share = 0.05; ///< of all that was delivered

} // namespace

void find_hidden_reserve(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (evidence.record.run.kind != RunKind::drain || evidence.energy.points.size() < 4) return;
    const std::vector<PairedPoint>& points = evidence.energy.points;
    // The last stretch at the bottom: a gauge that came back up has not been at its end.
    std::size_t first = points.size();
    while (first > 0 && points[first - 1].gauge_percent <= bottom_percent) --first;
    if (first == points.size() || first == 0) return;
    const double total_wh = evidence.energy.track.total_wh();
    const double at_least_wh = total_wh - points[first].delivered_wh;
    const double at_most_wh = total_wh - points[first - 1].delivered_wh;
    const double fall_pt = points.front().gauge_percent - points[first].gauge_percent;
    const double before_wh = points[first].delivered_wh - points.front().delivered_wh;
    if (fall_pt < 5 * evidence.step_pt || before_wh <= 0) return;

    // A gauge rounded to its step shows its bottom value over up to two points (or a step and a point) honestly.
    const double honest_pt = std::max(2.0, evidence.step_pt + bottom_percent);
    const double honest_wh = (1 + honest_slope_spread) * honest_pt * before_wh / fall_pt;
    const double step_wh = evidence.register_step_wh;
    const double u_wh = std::sqrt(std::pow(points[first].u_pairing_wh, 2) + step_wh * step_wh / 6);
    const double threshold_wh = honest_wh + 3 * u_wh;
    if (at_least_wh <= threshold_wh) return;

    Finding finding{FindingKind::hidden_reserve};
    finding.weight = at_least_wh - honest_wh > fault_from_share * total_wh ? Weight::fault : Weight::doubt;
    finding.sentence = say(phrase("gauge", "After the gauge had come down to %1, at least %2 and at most %3 more were delivered."),
                           say_gauge(points[first].gauge_percent), say_energy(at_least_wh), say_energy(at_most_wh));
    finding.evidence =
        say(phrase("gauge", "the rounding of the gauge explains up to %1; threshold %2"), say_energy(honest_wh), say_energy(threshold_wh));
    finding.readings = evidence.reading_uuids(first, points.size() - 1);
    finding.size = at_least_wh;
    finding.size_unit = "Wh";
    finding.statistic_name = "delivered at 1 % or less, Wh";
    finding.statistic = at_least_wh;
    finding.threshold = threshold_wh;
    findings.push_back(std::move(finding));
}

} // namespace ullage
