// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/reference_depth.h"

#include "gauge/drain_series.h"
#include "gauge/inside/error_curve.h"
#include "model/meter_gain.h"
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr std::size_t most_depths = 10'000;

/// `value` with a symmetric half-width and what other limits would make of it, in quadrature on their side.
Banded banded(double value, double half_width, double below, double above) {
    return {value, value - std::hypot(half_width, below), value + std::hypot(half_width, above)};
}

/// Run time with the output on: value and limits.
struct OnTime {
    double value_h = 0, lower_h = 0, upper_h = 0;
};

std::optional<OnTime> on_time(const EnergyAnalysis& energy) {
    const Quantity on_h = output_on_hours(energy);
    if (!on_h.value) return std::nullopt;
    OnTime time{*on_h.value, on_h.lower.value_or(*on_h.value), on_h.upper.value_or(*on_h.value)};
    if (time.lower_h <= 0) return std::nullopt;
    return time;
}

/// Stored depth in percent for a draw and a run time.
double stored_percent(double wh, double hours, double end_wh, double draw_w, double end_h) {
    return 100 * (wh + draw_w * hours) / (end_wh + draw_w * end_h);
}

} // namespace

Result<std::vector<ReferenceDepth>> reference_depths(const RunRecord& record, const EnergyAnalysis& energy, const std::optional<NoLoadDraw>& draw,
                                                     const MeasureOptions& options) {
    const double end_wh = energy.track.total_wh();
    if (error_basis(energy) != ErrorBasis::delivered_depth || energy.points.empty())
        return Error{Failure::refused,
                     say(phrase("gauge", "the run is no complete drain from full to cut-off, so nothing says how deep it was")),
                     {},
                     say(phrase("gauge", "make a run that starts full and ends by cut-off"))};
    if (draw && !(std::isfinite(draw->value_w) && draw->lower_w <= draw->value_w && draw->value_w <= draw->upper_w && std::isfinite(draw->lower_w) &&
                  std::isfinite(draw->upper_w)))
        return Error{Failure::bad_input,
                     say(phrase("gauge", "the no-load draw does not lie within its limits")),
                     {},
                     say(phrase("gauge", "give value, lower and upper limit in W"))};
    const std::optional<OnTime> time = on_time(energy);
    const DrainSeries series = drain_series(record, energy, most_depths);
    std::vector<ReferenceDepth> depths;
    depths.reserve(series.size());
    // u_wh holds one register step; the other belongs to the start of the register.
    const double step_wh = energy.register_step_wh * typical_correction(record.meter);
    // Readings of both at once differ in nothing that the bands depend on: formed anew only where that changes.
    double known_u_wh = -1, known_gauge_pt = 0, depth_half_pt = 0, error_half_pt = 0;
    for (std::size_t i = 0; i < series.size(); ++i) {
        const PairedPoint& point = energy.points[series.point[i]];
        const double wh = point.delivered_wh;
        const double gauge_pt = point.gauge_half_pt.value_or(record.unit.gauge_step_percent / 2);
        if (series.u_wh[i] != known_u_wh || gauge_pt != known_gauge_pt) {
            known_u_wh = series.u_wh[i];
            known_gauge_pt = gauge_pt;
            const double u_pt = 100 * std::sqrt(known_u_wh * known_u_wh + step_wh * step_wh / 12) / end_wh;
            depth_half_pt = half_width_of_sum(0, u_pt, options.coverage);
            error_half_pt = half_width_of_sum(gauge_pt, u_pt, options.coverage);
        }
        ReferenceDepth depth;
        depth.point = series.point[i];
        depth.hours = point.hours;
        depth.delivered_percent = banded(100 * wh / end_wh, depth_half_pt, 0, 0);
        depth.delivered_error_pt = banded(point.gauge_percent - 100 + depth.delivered_percent.value, error_half_pt, 0, 0);
        if (draw && time) {
            const double on_h = series.on_hours[i], draw_w = std::max(0.0, draw->value_w);
            const double value = stored_percent(wh, on_h, end_wh, draw_w, time->value_h);
            const auto shift = [&](double w, double end_h) {
                return stored_percent(wh, on_h, end_wh, std::max(0.0, w), std::max(end_h, on_h)) - value;
            };
            const double shifts[] = {shift(draw->lower_w, time->value_h), shift(draw->upper_w, time->value_h)};
            const double time_shifts[] = {shift(draw_w, time->lower_h), shift(draw_w, time->upper_h)};
            const auto side = [&](double sign) {
                const auto most = [sign](const double(&s)[2]) { return std::max({0.0, sign * s[0], sign * s[1]}); };
                return std::hypot(most(shifts), most(time_shifts));
            };
            depth.stored_percent = banded(value, depth_half_pt, side(-1), side(1));
            depth.stored_error_pt = banded(point.gauge_percent - 100 + value, error_half_pt, side(-1), side(1));
        }
        depths.push_back(depth);
    }
    return depths;
}

} // namespace ullage
