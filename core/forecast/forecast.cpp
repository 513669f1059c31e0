// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/forecast.h"

#include "forecast/inside/forecast_advice.h"
#include "forecast/inside/forecast_cut_off.h"
#include "forecast/inside/forecast_gauge.h"
#include "gauge/drain_series.h"
#include "gauge/feasibility.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr std::size_t most_points = 60;

/// The run as it stood at `now_ms`.
RunRecord as_of(const RunRecord& record, UtcMs now_ms) {
    RunRecord earlier = record;
    std::erase_if(earlier.readings, [now_ms](const Reading& reading) { return reading.values.time_ms > now_ms; });
    if (earlier.trace) std::erase_if(earlier.trace->points, [now_ms](const TracePoint& point) { return point.time_ms > now_ms; });
    return earlier;
}

void note_last_readings(const RunRecord& record, RunForecast& forecast) {
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        forecast.last_reading_ms = reading.values.time_ms;
        if (reading.values.gauge_percent) forecast.last_gauge_ms = reading.values.time_ms;
        if (reading.values.register_wh) forecast.last_register_ms = reading.values.time_ms;
    }
}

/// Why there is nothing to forecast; empty where there is.
std::string refusal(const RunRecord& record, const RunForecast& forecast) {
    if (record.run.kind != RunKind::drain && record.run.kind != RunKind::no_load_drain)
        return "only a drain or a no-load drain has a cut-off to forecast; this is a " + std::string(run_kind_text(record.run.kind)) + " run";
    if (record.run.end != RunEnd::still_running) return "the run has ended: " + std::string(run_end_text(record.run.end));
    if (!forecast.last_reading_ms) return "there are no readings yet";
    bool on = true;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        if (reading.values.mark == MarkKind::cut_off) return "the cut-off was seen; end the run";
        if (reading.values.mark == MarkKind::output_tripped) on = false;
        if (reading.values.mark == MarkKind::output_reset) on = true;
    }
    return on ? "" : "the output tripped and has not been switched on again; mark when it is";
}

/// Paired points with a register, else gauge readings against time alone.
void fill_trend(const RunRecord& record, const EnergyAnalysis& energy, bool has_register, TrendSetup& trend) {
    trend.started_full = record.run.started_full.value_or(false);
    trend.gauge_step_pt = record.unit.gauge_step_percent;
    const auto on_hours = [&](UtcMs time_ms) { return hours_between(energy.start_ms, time_ms) - tripped_hours(energy, time_ms); };
    if (has_register) {
        const DrainSeries series = drain_series(record, energy, most_points);
        for (std::size_t i = 0; i < series.size(); ++i)
            trend.points.push_back({series.gauge_percent[i], series.on_hours[i], series.delivered_wh[i], series.squared_w2h[i]});
        trend.end = {0, on_hours(energy.track.points.back().time_ms), energy.track.total_wh(), 0};
        trend.end.squared_w2h = energy.squares.up_to(energy.track, energy.track.points.size() - 1);
        if (record.unit.rated_energy_wh)
            trend.most_wh = most_of_label * *record.unit.rated_energy_wh * (1 + (record.meter ? record.meter->limit_percent.value_or(0) : 0) / 100);
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

UtcMs later(UtcMs from_ms, double hours) { return from_ms + static_cast<UtcMs>(std::llround(hours * ms_per_hour)); }

void fill(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, const MeasureOptions& options, RunForecast& forecast) {
    const bool has_register = energy.track.usable();
    TrendSetup trend;
    fill_trend(record, energy, has_register, trend);
    const FutureLoads loads(has_register ? load_steps(energy.track, record.run.end) : std::vector<LoadStep>{});
    const UtcMs base_ms = has_register ? energy.track.points.back().time_ms : forecast.last_gauge_ms.value_or(*forecast.last_reading_ms);
    const CutOffSetup setup{record, unit_fit, loads, trend, has_register, std::max(0.0, hours_between(base_ms, *forecast.last_reading_ms)), options};
    const CutOffForecast cut_off = forecast_cut_off(setup);
    forecast.cut_off_reason = cut_off.reason;
    forecast.basis = cut_off.basis;
    if (cut_off.hours)
        forecast.cut_off = {later(base_ms, cut_off.hours->lower), later(base_ms, cut_off.hours->middle), later(base_ms, cut_off.hours->upper)};
    if (const Result<GaugeSpeed> speed = gauge_speed(record, trend.points, loads, has_register)) forecast.gauge_speed = speed.value();
    else forecast.gauge_reason = speed.error().sentence();
    if (!forecast.gauge_speed) return;
    const double next_percent = forecast.gauge_speed->shown_percent - forecast.gauge_speed->step_pt;
    if (next_percent < -1e-9) {
        forecast.gauge_reason = "the gauge has no lower value to show";
        return;
    }
    forecast.next_step = gauge_drop_time(forecast, forecast.gauge_speed->step_pt);
    if (forecast.next_step) forecast.next_step_percent = next_percent;
    else forecast.gauge_reason = "the gauge falls so slowly that its next step may be more than a year away";
}

} // namespace

RunForecast forecast_run(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, UtcMs now_ms,
                         const MeasureOptions& options) {
    const bool later_readings = std::ranges::any_of(record.readings, [now_ms](const Reading& reading) { return reading.values.time_ms > now_ms; });
    if (later_readings) {
        const RunRecord earlier = as_of(record, now_ms);
        return forecast_run(earlier, analyse_energy(earlier, options), unit_fit, now_ms, options);
    }
    RunForecast forecast;
    forecast.as_of_ms = now_ms;
    note_last_readings(record, forecast);
    if (std::string reason = refusal(record, forecast); !reason.empty()) {
        forecast.cut_off_reason = forecast.gauge_reason = std::move(reason);
        return forecast;
    }
    fill(record, energy, unit_fit, options, forecast);
    forecast.advice = reading_advice(record, forecast);
    return forecast;
}

RunForecast forecast_at_last_reading(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, const MeasureOptions& options) {
    RunForecast last;
    note_last_readings(record, last);
    return forecast_run(record, energy, unit_fit, last.last_reading_ms.value_or(0), options);
}

} // namespace ullage
