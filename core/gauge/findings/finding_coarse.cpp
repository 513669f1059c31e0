// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/drain_series.h"
#include "gauge/findings_within.h"
#include "numerics/line_fit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace ullage {
namespace {

constexpr std::size_t most_coarse_points = 4000;
constexpr long least_drops = 4;
constexpr double most_chance = 1e-4;
constexpr double least_scatter = 0.7; ///< of G/sqrt(12)
constexpr int coarse_mixtures = 10;

struct StepsSeen {
    long factor = 0; ///< of the stated step; 0 where the values are no whole steps or never change
    long drops = 0;
};

StepsSeen steps_seen(const GaugeEvidence& evidence) {
    StepsSeen seen;
    const std::vector<PairedPoint>& points = evidence.energy.points;
    const double first = points.front().gauge_percent;
    long before = 0;
    for (const std::size_t change : evidence.energy.gauge_changes) {
        const double steps = (first - points[change].gauge_percent) / evidence.step_pt;
        const long whole = std::lround(steps);
        if (std::abs(steps - static_cast<double>(whole)) > 1e-6) return {};
        seen.factor = std::gcd(seen.factor, whole);
        seen.drops += whole > before;
        before = whole;
    }
    return seen;
}

/// Root mean square of the gauge about a straight one, for the no-load draw that leaves least.
double scatter_pt(const DrainSeries& series) {
    const double wh = series.delivered_wh.back() - series.delivered_wh.front();
    const double hours = series.on_hours.back() - series.on_hours.front();
    double least = std::numeric_limits<double>::infinity();
    for (int k = 0; k <= coarse_mixtures; ++k) {
        const double weight = static_cast<double>(k) / coarse_mixtures;
        std::vector<double> depth;
        for (std::size_t i = 0; i < series.size(); ++i)
            depth.push_back((1 - weight) * series.delivered_wh[i] / wh + weight * (hours > 0 ? series.on_hours[i] / hours : 0.0));
        if (const Result<LineFit> line = fit_line(depth, series.gauge_percent)) least = std::min(least, line.value().residual_sd().value_or(least));
    }
    return std::isfinite(least) ? least : 0;
}

} // namespace

void find_coarse(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (evidence.record.run.kind != RunKind::drain || !evidence.judgeable()) return;
    const StepsSeen seen = steps_seen(evidence);
    if (seen.factor < 2 || seen.drops < least_drops) return;
    const double chance = std::pow(1.0 / static_cast<double>(seen.factor), static_cast<double>(seen.drops));
    if (chance >= most_chance) return;
    const double seen_pt = static_cast<double>(seen.factor) * evidence.step_pt;
    const double threshold_pt = least_scatter * seen_pt / std::sqrt(12.0);
    const double scattered_pt = scatter_pt(drain_series(evidence.record, evidence.energy, most_coarse_points));
    if (scattered_pt < threshold_pt) return;
    Finding finding{FindingKind::coarse};
    finding.weight = Weight::doubt;
    finding.sentence = say(phrase("gauge", "Gauge moves in steps of %1, not of %2 as stated."), say_points(seen_pt), say_points(evidence.step_pt));
    finding.evidence = say_count(seen.drops,
                                 phrases("gauge",
                                         "all %n drops are multiples of %1, and the values scatter by %2 pt about a linear gauge, as such steps do; "
                                         "threshold %3 pt",
                                         "the %n drop is a multiple of %1, and the values scatter by %2 pt about a linear gauge, as such steps do; "
                                         "threshold %3 pt"),
                                 say_points(seen_pt), say_number(scattered_pt, 1), say_number(threshold_pt, 1));
    finding.readings = evidence.reading_uuids(0, evidence.energy.points.size() - 1);
    finding.size = seen_pt;
    finding.size_unit = "pt";
    finding.statistic_name = "scatter about a linear gauge, pt";
    finding.statistic = scattered_pt;
    finding.threshold = threshold_pt;
    findings.push_back(std::move(finding));
}

} // namespace ullage
