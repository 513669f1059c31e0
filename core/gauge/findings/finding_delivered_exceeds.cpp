// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"
#include "gauge/findings/findings.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

/// A perfect charge-counting gauge shows up to 2.2 points more than the share of energy left (cell data set B0005 of NASA
/// Ames); that is no fault.
constexpr double charge_allowance = 0.022;

} // namespace

void find_delivered_exceeds(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    double rated_wh = evidence.record.unit.rated_energy_wh.value_or(0);
    const auto& meter = evidence.record.meter;
    if (evidence.record.run.kind != RunKind::drain || rated_wh <= 0 || !meter) return;
    const auto limit_percent = error_limit_percent(*meter);
    if (!limit_percent) return;
    // A full drain that gave more than the label tells that the label is too small, not that the gauge lags.
    if (evidence.energy.from_full_to_cut_off) rated_wh = std::max(rated_wh, evidence.energy.track.total_wh());
    const std::vector<PairedPoint>& points = evidence.energy.points;
    const double step_wh = evidence.register_step_wh;
    std::size_t worst = 0;
    double worst_excess_wh = 0;
    std::vector<std::size_t> guilty;
    const auto excess_at = [&](std::size_t i, double u_pairing_wh) {
        const double delivered_wh = points[i].delivered_wh - points.front().delivered_wh;
        const double u_wh = std::sqrt(std::pow(u_pairing_wh, 2) + step_wh * step_wh / 6);
        const double surely_wh = delivered_wh * (1 - *limit_percent / 100) - 2 * u_wh;
        const double implied_wh = rated_wh * (points.front().gauge_percent - points[i].gauge_percent) / 100;
        return surely_wh - implied_wh - rated_wh * (evidence.step_pt / 100 + charge_allowance);
    };
    const auto judge = [&](std::size_t from, std::size_t to) {
        // While the gauge stands still the last of the readings has delivered most: where even that is innocent with no doubt of its pairing, all
        // are.
        if (excess_at(to, 0) <= 0) return;
        for (std::size_t i = from; i <= to; ++i) {
            const double excess_wh = excess_at(i, points[i].u_pairing_wh);
            if (excess_wh <= 0) continue;
            guilty.push_back(i);
            if (excess_wh <= worst_excess_wh) continue;
            worst_excess_wh = excess_wh;
            worst = i;
        }
    };
    if (points.size() < 2) return;
    std::size_t from = 1;
    for (const std::size_t next : evidence.energy.gauge_changes) {
        if (next > from) judge(from, next - 1);
        from = next;
    }
    judge(from, points.size() - 1);
    if (guilty.empty()) return;
    const double delivered_wh = points[worst].delivered_wh - points.front().delivered_wh;
    const double implied_wh = rated_wh * (points.front().gauge_percent - points[worst].gauge_percent) / 100;
    Finding finding{FindingKind::delivered_exceeds_gauge_implied};
    finding.weight = Weight::doubt;
    finding.sentence =
        say(phrase("gauge", "At %1 shown, %2 had been delivered though the gauge implies %3: the gauge lags, or the battery holds more "
                            "than its label."),
            say_gauge(points[worst].gauge_percent), say_energy(delivered_wh), say_energy(implied_wh));
    finding.evidence =
        say(phrase("gauge", "beyond the meter's limit, the register step, one gauge step and %1 % for a gauge that counts charge by %2 at %3"),
            say_number(100 * charge_allowance, 1), say_energy(worst_excess_wh), evidence.clock_at(worst));
    const std::size_t count = std::min(guilty.size(), most_uuids);
    for (std::size_t k = 0; k < count; ++k) finding.readings.push_back(evidence.reading_uuid(guilty[k * guilty.size() / count]));
    finding.size = delivered_wh - implied_wh;
    finding.size_unit = "Wh";
    finding.statistic_name = "surely delivered beyond gauge-implied, Wh";
    finding.statistic = worst_excess_wh;
    finding.threshold = 0;
    findings.push_back(std::move(finding));
}

} // namespace ullage
