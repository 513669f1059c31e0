// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/inside/error_curve.h"

#include "model/meter_gain.h"
#include "numerics/monte_carlo.h"

#include <cmath>

namespace ullage {

Message say_error_basis(ErrorBasis basis) {
    return basis == ErrorBasis::delivered_depth ? say(phrase("gauge", "share delivered")) : say(phrase("gauge", "rated energy"));
}

ErrorBasis error_basis(const EnergyAnalysis& energy) {
    return energy.from_full_to_cut_off && !energy.track.energy_may_be_missing && energy.track.total_wh() > 0 ? ErrorBasis::delivered_depth
                                                                                                             : ErrorBasis::rated_energy;
}

std::vector<GaugeErrorPoint> gauge_error_curve(const RunRecord& record, const EnergyAnalysis& energy, ErrorBasis basis,
                                               const MeasureOptions& options) {
    std::vector<GaugeErrorPoint> curve;
    const bool by_depth = basis == ErrorBasis::delivered_depth;
    const double whole_wh = by_depth ? energy.track.total_wh() : record.unit.rated_energy_wh.value_or(0);
    if (whole_wh <= 0 || energy.points.empty()) return curve;
    const double step_wh = energy.register_step_wh;
    const double limit = record.meter ? error_limit_percent(*record.meter).value_or(0) / 100 : 0.0;
    const double origin_wh = by_depth ? 0.0 : energy.points.front().delivered_wh;
    const double full_percent = by_depth ? 100.0 : energy.points.front().gauge_percent;
    curve.reserve(energy.points.size());
    // Readings of both at once differ in nothing that the band depends on: formed anew only where its argument changes.
    double known_pairing_wh = -1, known_gain_pt = 0, known_gauge_pt = 0, known_half_width_pt = 0;
    for (std::size_t i = 0; i < energy.points.size(); ++i) {
        const PairedPoint& point = energy.points[i];
        GaugeErrorPoint error;
        error.point = i;
        error.hours = point.hours;
        error.depth_percent = 100 * (point.delivered_wh - origin_wh) / whole_wh;
        error.error_pt = point.gauge_percent - (full_percent - error.depth_percent);
        const double gain_pt = by_depth ? 0.0 : limit * std::abs(error.depth_percent);
        const double gauge_pt = point.gauge_half_pt.value_or(record.unit.gauge_step_percent / 2);
        if (point.u_pairing_wh != known_pairing_wh || gain_pt != known_gain_pt || gauge_pt != known_gauge_pt) {
            known_gauge_pt = gauge_pt;
            known_pairing_wh = point.u_pairing_wh;
            known_gain_pt = gain_pt;
            const double energy_pt = 100 * std::sqrt(point.u_pairing_wh * point.u_pairing_wh + step_wh * step_wh / 6) / whole_wh;
            known_half_width_pt = half_width_of_sum(gauge_pt, std::hypot(energy_pt, gain_pt / std::sqrt(3.0)), options.coverage);
        }
        error.lower_pt = error.error_pt - known_half_width_pt;
        error.upper_pt = error.error_pt + known_half_width_pt;
        curve.push_back(error);
    }
    return curve;
}

} // namespace ullage
