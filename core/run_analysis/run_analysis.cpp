// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_analysis/run_analysis.h"

#include "base/number.h"
#include "gauge/projection_doubt.h"
#include "meters_in_series/meters_in_series.h"
#include "numerics/distributions.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

Quantity gauge_implied(const RunRecord& record, const EnergyAnalysis& energy) {
    const double rated_wh = record.unit.rated_energy_wh.value_or(0);
    if (rated_wh <= 0) return not_known("gauge_implied_wh", "Wh", say(phrase("run_analysis", "the rated energy of the unit is not stated")));
    if (energy.points.size() < 2)
        return not_known("gauge_implied_wh", "Wh", say(phrase("run_analysis", "fewer than two gauge readings within the register's readings")));
    const double drop_pt = energy.points.front().gauge_percent - energy.points.back().gauge_percent;
    // Two readings of the gauge, each good to half a step: triangular.
    const double half_width_wh = rated_wh / 100 * record.unit.gauge_step_percent * (1 - std::sqrt(0.05));
    return known("gauge_implied_wh", "Wh", rated_wh * drop_pt / 100, half_width_wh, Kind::measured,
                 say(phrase("run_analysis", "rated energy × gauge drop of %1 points"), say_digits(exact_text(std::round(drop_pt * 100) / 100))));
}

void add_line(const GaugeAnalysis& gauge, std::vector<Quantity>& quantities) {
    if (!gauge.line) {
        quantities.push_back(not_known("line_slope", "Wh/Wh", gauge.line_reason));
        quantities.push_back(not_known("line_chi_square", "1", gauge.line_reason));
        return;
    }
    const LineFit& fit = gauge.line->fit;
    // Scatter beyond the stated resolution widens the interval; scatter below it never narrows it.
    const double scale = std::max(1.0, fit.residual_sd().value_or(1.0));
    const double factor = scale > 1 ? coverage_factor(0.95, static_cast<double>(fit.degrees_of_freedom)) : normal_quantile(0.975);
    quantities.push_back(
        known("line_slope", "Wh/Wh", fit.slope, factor * scale * fit.u_slope, Kind::measured,
              say(phrase("run_analysis", "delivered per gauge-implied energy, without the meter's gain; %1"), gauge.line->sentence)));
    quantities.push_back(
        known("line_chi_square", "1", fit.residual_sum, std::nullopt, Kind::measured,
              say_count(fit.degrees_of_freedom, phrases("run_analysis", "a test statistic, for %n degrees of freedom; it has no interval",
                                                        "a test statistic, for %n degree of freedom; it has no interval"))));
}

} // namespace

RunAnalysis analyse_run(const RunRecord& record, const MeasureOptions& options) {
    RunAnalysis analysis;
    analysis.energy = analyse_energy(record, options);
    if (!record.other_logs.empty())
        for (const MetersInSeries& pair : meters_in_series({&record}, options))
            for (const SeriesLoad& load : pair.loads) analysis.energy.log_sentence += Message(" ") + load.sentence;
    analysis.gauge = analyse_gauge(record, analysis.energy, options);
    lower_by_gauge_faults(record, analysis.gauge, analysis.energy);
    const EnergyAnalysis& energy = analysis.energy;
    analysis.quantities = {energy.delivered_wh,    energy.duration_h,         energy.mean_load_w,
                           energy.usable_fraction, energy.wh_per_gauge_point, gauge_implied(record, energy)};
    add_line(analysis.gauge, analysis.quantities);
    analysis.quantities.push_back(analysis.gauge.own_draw_w);
    analysis.quantities.push_back(analysis.gauge.own_energy_wh);
    analysis.quantities.push_back(analysis.gauge.least_error_pt);
    return analysis;
}

Message run_title(const RunRecord& record, const EnergyAnalysis& energy) {
    const Message kind = say_run_kind(record.run.kind);
    const bool has_readings = std::ranges::any_of(record.readings, [](const Reading& reading) { return !reading.withdrawn; });
    if (!has_readings) return say(phrase("run_analysis", "%1, no readings yet"), kind);
    const Message title = say_joined({kind, say_day(energy.start_ms, record.run.time_zone)}, " ");
    return energy.mean_load_w.value ? say_joined({title, say_measure(*energy.mean_load_w.value, 0, "W")}, ", ") : title;
}

} // namespace ullage
