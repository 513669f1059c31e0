// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/share_bounds.h"

#include "gauge/drain_series.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr std::size_t most_bounds = 2000;
constexpr double coverage_z = 3;

} // namespace

double share_tolerance_pt(double gauge_step_pt) { return std::max({1.0, gauge_step_pt / 2, 1.6 - gauge_step_pt / 2}); }

std::vector<ShareBound> share_bounds(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    std::vector<ShareBound> bounds;
    const double end_wh = energy.track.total_wh();
    if (!energy.from_full_to_cut_off || energy.track.energy_may_be_missing || end_wh <= 0) return bounds;
    const Quantity on_h = output_on_hours(energy);
    if (!on_h.value || !on_h.lower || !on_h.upper || *on_h.value <= 0) return bounds;
    const DrainSeries series = drain_series(record, energy, most_bounds);
    const double step_pt = std::max(record.unit.gauge_step_percent, 1e-3);
    const double u_step_wh = energy.register_step_wh * typical_correction(record.meter) / std::sqrt(12.0);
    const double u_minute_h = options.moment_doubt_min / 60 / std::sqrt(3.0);
    for (std::size_t i = 0; i < series.size(); ++i) {
        const double hours = series.on_hours[i], wh = series.delivered_wh[i];
        // Start and end are what the shares count from.
        if (wh <= 0 || hours <= 0 || wh >= end_wh || hours >= *on_h.upper) continue;
        ShareBound bound;
        bound.point = series.point[i];
        bound.delivered_share = wh / end_wh;
        bound.time_share = std::min(1.0, hours / *on_h.value);
        const double u_energy = std::hypot(series.u_wh[i], u_step_wh) / end_wh;
        // The run time holds its own interval; the reading's minute, and the energy of that minute, are added.
        const double u_time = u_minute_h / *on_h.value;
        const double u = coverage_z * std::hypot(u_energy, u_time);
        const double least_depth = std::min(bound.delivered_share, hours / *on_h.upper) - u;
        const double most_depth = std::max(bound.delivered_share, std::min(1.0, hours / *on_h.lower)) + u;
        const auto bulge_pt = [](double depth) { return charge_for_energy_pt * 4 * std::clamp(depth, 0.0, 1.0) * (1 - std::clamp(depth, 0.0, 1.0)); };
        const double most_bulge_pt =
            least_depth < 0.5 && most_depth > 0.5 ? charge_for_energy_pt : std::max(bulge_pt(least_depth), bulge_pt(most_depth));
        bound.least_percent = std::max(0.0, 100 * (1 - most_depth) - step_pt / 2);
        bound.most_percent = std::min(100.0, 100 * (1 - least_depth) + most_bulge_pt + step_pt / 2);
        const double shown = series.gauge_percent[i];
        bound.off_pt = shown > bound.most_percent ? shown - bound.most_percent : shown < bound.least_percent ? shown - bound.least_percent : 0.0;
        bounds.push_back(bound);
    }
    return bounds;
}

std::optional<ShareBound> worst_share_bound(const std::vector<ShareBound>& bounds) {
    const auto worst = std::ranges::max_element(bounds, {}, [](const ShareBound& bound) { return std::abs(bound.off_pt); });
    if (worst == bounds.end() || worst->off_pt == 0) return std::nullopt;
    return *worst;
}

} // namespace ullage
