// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/forecast.h"

#include "forecast/inside/forecast_advice.h"
#include "forecast/inside/forecast_cut_off.h"
#include "forecast/inside/forecast_gauge.h"
#include "forecast/inside/outlook.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr std::size_t most_hand_readings = 500; ///< of more no single one overthrows a forecast

/// The run as it stood at `now_ms`.
RunRecord as_of(const RunRecord& record, UtcMs now_ms) {
    RunRecord earlier = record;
    std::erase_if(earlier.readings, [now_ms](const Reading& reading) { return reading.values.time_ms > now_ms; });
    if (earlier.trace) std::erase_if(earlier.trace->points, [now_ms](const TracePoint& point) { return point.time_ms > now_ms; });
    if (earlier.gauge_log) {
        std::erase_if(earlier.gauge_log->steps, [now_ms](const GaugeStep& step) { return step.to_ms > now_ms; });
        earlier.gauge_log->last_ms = std::min(earlier.gauge_log->last_ms, now_ms);
        const auto& steps = earlier.gauge_log->steps;
        earlier.gauge_log->last_percent = steps.empty() ? earlier.gauge_log->first_percent : steps.back().to_percent;
        if (earlier.gauge_log->first_ms > now_ms) earlier.gauge_log.reset();
    }
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

/// Why the kind of run has nothing to forecast; empty where it has.
Message no_cut_off_of(RunKind kind) {
    switch (kind) {
    case RunKind::drain:
    case RunKind::no_load_drain: break;
    case RunKind::charge: return say(phrase("forecast", "only a drain or a no-load drain has a cut-off to forecast; this is a charge run"));
    case RunKind::sustained_output:
        return say(phrase("forecast", "only a drain or a no-load drain has a cut-off to forecast; this is a sustained output run"));
    case RunKind::peak_output: return say(phrase("forecast", "only a drain or a no-load drain has a cut-off to forecast; this is a peak output run"));
    case RunKind::standby: return say(phrase("forecast", "only a drain or a no-load drain has a cut-off to forecast; this is a standby run"));
    }
    return {};
}

/// How the run has ended; empty while it is running.
Message ended_how(RunEnd end) {
    switch (end) {
    case RunEnd::still_running: break;
    case RunEnd::cut_off_seen: return say(phrase("forecast", "the run has ended: cut-off seen"));
    case RunEnd::found_off: return say(phrase("forecast", "the run has ended: found off"));
    case RunEnd::stopped_by_tester: return say(phrase("forecast", "the run has ended: stopped by tester"));
    }
    return {};
}

/// Why there is nothing to forecast; empty where there is.
Message refusal(const RunRecord& record, const RunForecast& forecast) {
    if (Message reason = no_cut_off_of(record.run.kind); !reason.empty()) return reason;
    if (Message ended = ended_how(record.run.end); !ended.empty()) return ended;
    if (!forecast.last_reading_ms) return say(phrase("forecast", "there are no readings yet"));
    bool on = true;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        if (reading.values.mark == MarkKind::cut_off) return say(phrase("forecast", "the cut-off was seen; end the run"));
        if (reading.values.mark == MarkKind::output_tripped) on = false;
        if (reading.values.mark == MarkKind::output_reset) on = true;
    }
    return on ? Message() : say(phrase("forecast", "the output tripped and has not been switched on again; mark when it is"));
}

UtcMs later(UtcMs from_ms, double hours) { return from_ms + static_cast<UtcMs>(std::llround(hours * ms_per_hour)); }

void fill(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, const MeasureOptions& options, RunForecast& forecast) {
    const Outlook outlook = outlook_of(record, energy, unit_fit, options);
    const auto& [trend, loads, has_register, base_ms] = outlook;
    const CutOffSetup setup{record, unit_fit, loads, trend, has_register, std::max(0.0, hours_between(base_ms, *forecast.last_reading_ms)), options};
    const CutOffForecast cut_off = forecast_cut_off(setup);
    forecast.cut_off_reason = cut_off.reason;
    forecast.basis = cut_off.basis;
    forecast.account = cut_off.account;
    if (cut_off.hours)
        forecast.cut_off = {later(base_ms, cut_off.hours->lower), later(base_ms, cut_off.hours->middle), later(base_ms, cut_off.hours->upper)};
    if (const Result<GaugeSpeed> speed = gauge_speed(record, energy, trend.points, loads, has_register)) forecast.gauge_speed = speed.value();
    else forecast.gauge_reason = speed.error().what;
    if (!forecast.gauge_speed) return;
    const double next_percent = forecast.gauge_speed->shown_percent - forecast.gauge_speed->step_pt;
    if (next_percent < -1e-9) {
        forecast.gauge_reason = say(phrase("forecast", "the gauge has no lower value to show"));
        return;
    }
    forecast.next_step = gauge_drop_time(forecast, forecast.gauge_speed->step_pt);
    if (forecast.next_step) forecast.next_step_percent = next_percent;
    else forecast.gauge_reason = say(phrase("forecast", "the gauge falls so slowly that its next step may be more than a year away"));
}

/// What was expected before the last reading, where that reading threw it over.
Message overthrown_by_last_reading(const RunRecord& record, const UnitFit& unit_fit, const RunForecast& forecast, const MeasureOptions& options) {
    if (!forecast.cut_off || record.readings.size() > most_hand_readings || record.trace || record.gauge_log) return {};
    const Reading *last = nullptr, *before = nullptr;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && (reading.values.gauge_percent || reading.values.register_wh)) {
            before = last;
            last = &reading;
        }
    if (!before || before->values.time_ms >= last->values.time_ms) return {};
    const RunRecord earlier_record = as_of(record, before->values.time_ms);
    RunForecast earlier;
    note_last_readings(earlier_record, earlier);
    if (!refusal(earlier_record, earlier).empty()) return {};
    fill(earlier_record, analyse_energy(earlier_record, options), unit_fit, options, earlier);
    if (!earlier.cut_off) return {};
    const ExpectedTime now = *forecast.cut_off, then = *earlier.cut_off;
    if (now.estimate_ms >= then.lower_ms && now.estimate_ms <= then.upper_ms) return {};
    return say(phrase("forecast", "The reading at %1 threw the forecast over: before it the cut-off was expected %2."),
               clock_text(last->values.time_ms, record.run.time_zone), say_expected_clock(then, last->values.time_ms, record.run.time_zone));
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
    if (const Message reason = refusal(record, forecast); !reason.empty()) {
        forecast.cut_off_reason = forecast.gauge_reason = reason;
        return forecast;
    }
    if (energy.gauge_log && energy.gauge_log->used)
        forecast.last_gauge_ms = std::max(forecast.last_gauge_ms.value_or(record.gauge_log->last_ms), record.gauge_log->last_ms);
    fill(record, energy, unit_fit, options, forecast);
    forecast.overthrown = overthrown_by_last_reading(record, unit_fit, forecast, options);
    forecast.advice = reading_advice(record, forecast);
    return forecast;
}

RunForecast forecast_at_last_reading(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, const MeasureOptions& options) {
    RunForecast last;
    note_last_readings(record, last);
    return forecast_run(record, energy, unit_fit, last.last_reading_ms.value_or(0), options);
}

} // namespace ullage
