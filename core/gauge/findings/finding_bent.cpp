// SPDX-License-Identifier: GPL-3.0-or-later
// The depth z of a unit with no-load draw P* is a mean of the share of energy and the share of time; its weight stands for P*.
#include "base/number.h"
#include "gauge/drain_series.h"
#include "gauge/findings_within.h"
#include "numerics/segmented_fit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace ullage {
namespace {

constexpr std::size_t most_bend_points = 1000;
constexpr std::size_t least_bend_points = 8;
constexpr int bend_mixtures = 20;
constexpr double convicting_p = 0.001;
constexpr double rounding_margin = 1.3; ///< chance in the scatter of some 15 roundings
constexpr double least_explained = 0.6; ///< of what one line leaves: else the gauge is jagged, not bent
constexpr double least_slope_ratio = (1 + honest_slope_spread) * (1 + honest_slope_spread);

/// Both descriptions of the gauge over one depth; absent where no break can be fitted.
std::optional<SegmentedFit> fit_over(const DrainSeries& series, const GaugeEvidence& evidence, double time_weight) {
    const double wh = series.delivered_wh.back() - series.delivered_wh.front();
    const double hours = series.on_hours.back() - series.on_hours.front();
    std::vector<double> depth, sigma;
    for (std::size_t i = 0; i < series.size(); ++i) {
        depth.push_back((1 - time_weight) * (series.delivered_wh[i] - series.delivered_wh.front()) / wh +
                        time_weight * (series.on_hours[i] - series.on_hours.front()) / hours);
        sigma.push_back(std::hypot(evidence.step_pt / std::sqrt(12.0), evidence.fall_pt * (1 - time_weight) * series.u_wh[i] / wh));
    }
    const Result<SegmentedFit> fitted = fit_segmented(depth, series.gauge_percent, sigma);
    if (!fitted) return std::nullopt;
    return fitted.value();
}

/// How far the break lies above the straight line between the ends, points.
double hump_pt(const SegmentedFit& fit) { return fit.level_at_break - (fit.at(0) + (fit.at(1) - fit.at(0)) * fit.break_x); }

bool convicts(const SegmentedFit& fit, double least_line_sum, double step_pt) {
    // A hump of h points leaves h/sqrt(12) about its best line, and roundings theirs: the draw may be one that hides most of it.
    const double scatter_pt = std::sqrt(least_line_sum / static_cast<double>(fit.points - 2)) * step_pt / std::sqrt(12.0);
    if (scatter_pt < std::hypot(least_size_pt, rounding_margin * step_pt) / std::sqrt(12.0)) return false;
    const double gentle = -std::max(fit.slope_before, fit.slope_after), steep = -std::min(fit.slope_before, fit.slope_after);
    return fit.p_value < convicting_p && fit.residual_sum <= (1 - least_explained) * least_line_sum &&
           (gentle <= 0 || steep >= least_slope_ratio * gentle) && std::abs(hump_pt(fit)) >= std::max(least_size_pt, 2 * step_pt);
}

Message say_slope_ratio(const SegmentedFit& fit) {
    const double gentle = -std::max(fit.slope_before, fit.slope_after), steep = -std::min(fit.slope_before, fit.slope_after);
    return gentle > 0.01 * steep ? say_number(steep / gentle, 2) : say(phrase("gauge", "above 100"));
}

Message bent_sentence(const GaugeEvidence& evidence, const SegmentedFit& fit, std::size_t place) {
    const Message size = say_points(std::abs(hump_pt(fit))), level = say_gauge(std::round(fit.level_at_break)), time = evidence.clock_at(place);
    const bool more = hump_pt(fit) > 0, faster_before = fit.slope_before < fit.slope_after;
    if (more && faster_before)
        return say(
            phrase("gauge", "Gauge is bent: it shows up to %1 more than a straight one, most at about %2 (%3), and falls faster before than after."),
            size, level, time);
    if (more)
        return say(phrase("gauge", "Gauge is bent: it shows up to %1 more than a straight one, most at about %2 (%3), "
                                   "and falls more slowly before than after."),
                   size, level, time);
    if (faster_before)
        return say(
            phrase("gauge", "Gauge is bent: it shows up to %1 less than a straight one, most at about %2 (%3), and falls faster before than after."),
            size, level, time);
    return say(phrase("gauge", "Gauge is bent: it shows up to %1 less than a straight one, most at about %2 (%3), "
                               "and falls more slowly before than after."),
               size, level, time);
}

/// The point whose gauge is nearest to a level.
std::size_t point_at_level(const DrainSeries& series, double level) {
    const auto nearest = std::ranges::min_element(series.gauge_percent, {}, [&](double percent) { return std::abs(percent - level); });
    return series.point[static_cast<std::size_t>(nearest - series.gauge_percent.begin())];
}

} // namespace

void find_bent(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    if (evidence.record.run.kind != RunKind::drain || !evidence.judgeable() || evidence.energy.track.missing_inside) return;
    const DrainSeries series = drain_series(evidence.record, evidence.energy, most_bend_points);
    if (series.size() < least_bend_points || series.on_hours.back() <= series.on_hours.front()) return;
    std::optional<SegmentedFit> best;
    double least_line_sum = std::numeric_limits<double>::infinity();
    for (int k = 0; k <= bend_mixtures; ++k) {
        const auto found = fit_over(series, evidence, static_cast<double>(k) / bend_mixtures);
        if (!found) continue;
        least_line_sum = std::min(least_line_sum, found->line_residual_sum);
        if (!best || found->residual_sum < best->residual_sum) best = found;
    }
    if (!best || !convicts(*best, least_line_sum, evidence.step_pt)) return;
    const SegmentedFit& fit = *best;
    const double size_pt = std::abs(hump_pt(fit));
    const std::size_t place = point_at_level(series, fit.level_at_break);
    Finding finding{FindingKind::bent};
    finding.weight = size_pt >= fault_from_pt ? Weight::fault : Weight::doubt;
    finding.sentence = bent_sentence(evidence, fit, place);
    finding.evidence =
        say(phrase("gauge", "two lines with slopes in the ratio %1 instead of one, p %2; no no-load draw makes the readings as straight: "
                            "at best one line leaves %3 times as much"),
            say_slope_ratio(fit), fit.p_value < 1e-6 ? say_digits("< 0.000001") : say_number(fit.p_value, 6),
            say_number(least_line_sum / std::max(fit.residual_sum, 1e-12), 1));
    finding.readings = {evidence.reading_uuid(series.point.front()), evidence.reading_uuid(place), evidence.reading_uuid(series.point.back())};
    finding.size = size_pt;
    finding.size_unit = "pt";
    finding.statistic_name = "p of one straight line";
    finding.statistic = fit.p_value;
    finding.threshold = convicting_p;
    findings.push_back(std::move(finding));
}

} // namespace ullage
