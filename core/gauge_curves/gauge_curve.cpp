// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge_curves/gauge_curve.h"

#include "gauge/drain_series.h"
#include "gauge/evidence.h"
#include "gauge/findings_within.h"
#include "measure/usable.h"
#include "model/meter_gain.h"
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace ullage {
namespace {

constexpr std::size_t most_read = 10'000;
constexpr double least_spacing_steps = 1.5;
constexpr double least_spacing_percent = 0.5;
constexpr std::size_t least_points = 6;
constexpr double least_curve_steps = 5;
constexpr double least_known_hours = 0.02; ///< relative standard uncertainty of the run time
constexpr double normal_median = 0.6745;   ///< median of |x| of a standard normal x

Error no_curve(const Message& reason) { return Error{Failure::refused, reason, {}, say(phrase("gauge_curves", "read the gauge more often"))}; }

/// The gauge's step: readings may show a coarser one than is stated.
double step_of(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    std::vector<Finding> findings;
    find_coarse(gather_evidence(record, energy, options), findings);
    return findings.empty() ? record.unit.gauge_step_percent : std::max(record.unit.gauge_step_percent, findings.front().size);
}

} // namespace

std::vector<double> GaugeCurve::depths(double no_load_draw_w) const {
    std::vector<double> percents;
    percents.reserve(points.size());
    const double whole_wh = total_wh + no_load_draw_w * total_h;
    for (const GaugeCurvePoint& point : points) percents.push_back(100 * (point.delivered_wh + no_load_draw_w * point.on_hours) / whole_wh);
    return percents;
}

double GaugeCurve::error_pt(std::size_t point) const { return points[point].gauge_percent - 100 + 100 * points[point].delivered_wh / total_wh; }

double GaugeCurve::error_half_width_pt(std::size_t point, double coverage) const {
    return half_width_of_sum(step_pt / 2, 100 * std::hypot(points[point].u_wh, u_register_wh) / total_wh, coverage);
}

Result<GaugeCurve> read_gauge_curve(const RunRecord& record, const EnergyAnalysis& energy, double total_h, double u_total_h,
                                    const MeasureOptions& options) {
    if (!is_full_drain(record)) return no_curve(say(phrase("gauge_curves", "it is no drain from full to cut-off")));
    if (energy.track.energy_may_be_missing || energy.track.total_wh() <= 0 || total_h <= 0)
        return no_curve(say(phrase("gauge_curves", "not all of its energy was read")));
    if (u_total_h > least_known_hours * total_h) return no_curve(say(phrase("gauge_curves", "when its output went off is not known well enough")));
    GaugeCurve curve;
    curve.step_pt = step_of(record, energy, options);
    curve.total_wh = energy.track.total_wh();
    curve.total_h = total_h;
    curve.u_register_wh = energy.register_step_wh * typical_correction(record.meter) / std::sqrt(12.0);
    const double spacing_wh = std::max(least_spacing_steps * curve.step_pt, least_spacing_percent) / 100 * curve.total_wh;
    const DrainSeries series = drain_series(record, energy, most_read);
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (series.on_hours[i] > total_h + 2 * u_total_h) break;
        const bool last = i + 1 == series.size();
        const double gone_wh = curve.points.empty() ? spacing_wh : series.delivered_wh[i] - curve.points.back().delivered_wh;
        if (gone_wh < (last ? 1e-6 * curve.total_wh : spacing_wh)) continue;
        curve.points.push_back({series.gauge_percent[i], series.delivered_wh[i], std::min(series.on_hours[i], total_h), series.u_wh[i]});
    }
    if (curve.points.size() < least_points) return no_curve(say(phrase("gauge_curves", "its gauge was read at fewer than six depths")));
    if (curve.fall_pt() < least_curve_steps * curve.step_pt) return no_curve(say(phrase("gauge_curves", "its gauge fell by less than five steps")));
    return curve;
}

CurveOverDepth::CurveOverDepth(const GaugeCurve& curve, double no_load_draw_w)
    : curve_(&curve), depths_(curve.depths(no_load_draw_w)), bends_(curve.points.size(), 0.0) {
    std::vector<double> scatter;
    for (std::size_t i = 1; i + 1 < depths_.size(); ++i) {
        const double share = (depths_[i] - depths_[i - 1]) / (depths_[i + 1] - depths_[i - 1]);
        const double line = (1 - share) * curve.points[i - 1].gauge_percent + share * curve.points[i + 1].gauge_percent;
        bends_[i] = std::abs(curve.points[i].gauge_percent - line);
        scatter.push_back(bends_[i] / std::sqrt(1 + (1 - share) * (1 - share) + share * share));
    }
    // The median keeps one kink from passing for noise everywhere.
    const auto middle = scatter.begin() + static_cast<std::ptrdiff_t>(scatter.size() / 2);
    std::ranges::nth_element(scatter, middle);
    u_reading_pt_ = std::max(curve.step_pt / std::sqrt(12.0), *middle / normal_median);
}

double CurveOverDepth::unevenness() const {
    double sum = 0;
    for (const double bend_pt : bends_) sum += bend_pt * bend_pt;
    return sum;
}

CurveOverDepth::Place CurveOverDepth::place(double depth_percent) const {
    if (depth_percent <= depths_.front()) return {};
    if (depth_percent >= depths_.back()) return {depths_.size() - 2, 1};
    const auto after = std::ranges::upper_bound(depths_, depth_percent);
    const auto point = static_cast<std::size_t>(after - depths_.begin()) - 1;
    return {point, (depth_percent - depths_[point]) / (depths_[point + 1] - depths_[point])};
}

double CurveOverDepth::gauge_at(const Place& at) const {
    return (1 - at.share) * curve_->points[at.point].gauge_percent + at.share * curve_->points[at.point + 1].gauge_percent;
}

double CurveOverDepth::leeway_at(const Place& at) const {
    if (at.share <= 0 || at.share >= 1) return 0;
    const double bend_pt = std::max(bends_[at.point], bends_[at.point + 1]);
    const double fall_pt = std::abs(curve_->points[at.point].gauge_percent - curve_->points[at.point + 1].gauge_percent);
    return std::clamp(2 * (bend_pt - curve_->step_pt), 0.0, fall_pt);
}

} // namespace ullage
