// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/outlook.h"

#include "gauge/drain_series.h"
#include "model/meter_gain.h"

#include <algorithm>

namespace ullage {
namespace {

constexpr std::size_t most_points = 60;
constexpr std::size_t most_logged_points = 12; ///< of a log: their errors about a law are common to neighbours, not each its own

/// The meter's error limit, a share of 1.
double run_limit(const RunRecord& record) { return (record.meter ? error_limit_percent(*record.meter).value_or(0) : 0) / 100; }

/// Paired points with a register, else gauge readings against time alone.
void fill_trend(const RunRecord& record, const EnergyAnalysis& energy, bool has_register, const MeasureOptions& options, TrendSetup& trend) {
    trend.started_full = record.run.started_full.value_or(false);
    trend.gauge_step_pt = record.unit.gauge_step_percent;
    const auto on_hours = [&](UtcMs time_ms) { return hours_between(energy.start_ms, time_ms) - tripped_hours(energy, time_ms); };
    if (has_register) {
        const DrainSeries series = drain_series(record, energy, energy.gauge_log && energy.gauge_log->used ? most_logged_points : most_points);
        for (std::size_t i = 0; i < series.size(); ++i)
            trend.points.push_back({series.gauge_percent[i], series.on_hours[i], series.delivered_wh[i], series.squared_w2h[i]});
        trend.end = {0, on_hours(energy.track.points.back().time_ms), energy.track.total_wh(), 0};
        trend.end.squared_w2h = energy.squares.up_to(energy.track, energy.track.points.size() - 1);
        if (record.unit.rated_energy_wh) trend.least_wh = least_of_label * *record.unit.rated_energy_wh;
        if (record.unit.rated_energy_wh) trend.most_wh = options.most_of_label * *record.unit.rated_energy_wh * (1 + run_limit(record));
        return;
    }
    std::vector<const Reading*> shown;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.gauge_percent) shown.push_back(&reading);
    for (std::size_t k = 0, count = std::min(most_points, shown.size()); k < count; ++k) {
        const ReadingValues& values = shown[count == 1 ? 0 : k * (shown.size() - 1) / (count - 1)]->values;
        trend.points.push_back({*values.gauge_percent, on_hours(values.time_ms), 0, 0});
    }
    if (!shown.empty()) {
        trend.end.on_hours = trend.points.back().on_hours;
        return;
    }
    // Notes of the time alone still tell how long it has run.
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn) trend.end.on_hours = std::max(trend.end.on_hours, on_hours(reading.values.time_ms));
}

/// What went in is a measurement and the label a word, so where they contradict each other the charge stands.
void hold_within(const FullCharge& charge, double limit, TrendSetup& trend) {
    const double least_wh = charge.least_wh * (1 - limit), most_wh = charge.most_wh * (1 + limit);
    const bool contradicted = trend.most_wh && (most_wh <= *trend.least_wh || least_wh >= *trend.most_wh);
    trend.least_wh = trend.least_wh && !contradicted ? std::max(*trend.least_wh, least_wh) : least_wh;
    trend.most_wh = trend.most_wh && !contradicted ? std::min(*trend.most_wh, most_wh) : most_wh;
}

std::vector<double> noted_powers(const RunRecord& record) {
    std::vector<double> watts;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.meter_w) watts.push_back(*reading.values.meter_w);
    return watts;
}

/// The last reading of the gauge, else of anything.
UtcMs last_looked_ms(const RunRecord& record) {
    UtcMs gauge_ms = 0, any_ms = 0;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        any_ms = reading.values.time_ms;
        if (reading.values.gauge_percent) gauge_ms = any_ms;
    }
    return gauge_ms != 0 ? gauge_ms : any_ms;
}

} // namespace

Outlook outlook_of(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, const MeasureOptions& options) {
    const bool has_register = energy.track.usable();
    Outlook outlook{{},
                    FutureLoads(has_register ? load_steps(energy.track, record.run.end) : std::vector<LoadStep>{}, noted_powers(record)),
                    has_register,
                    has_register ? energy.track.points.back().time_ms : last_looked_ms(record)};
    fill_trend(record, energy, has_register, options, outlook.trend);
    if (has_register && unit_fit.full_charge) hold_within(*unit_fit.full_charge, run_limit(record), outlook.trend);
    return outlook;
}

} // namespace ullage
