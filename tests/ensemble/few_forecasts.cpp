// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/few_forecasts.h"

#include "forecast/forecast.h"

#include <cmath>

namespace ullage::test {
namespace {

Quantity cut_off_hours(const RunForecast& forecast, UtcMs from_ms) {
    if (!forecast.cut_off) return not_known("forecast_h", "h", forecast.cut_off_reason);
    Quantity result = known("forecast_h", "h", hours_between(from_ms, forecast.cut_off->estimate_ms), std::nullopt, Kind::bracket, {});
    result.lower = hours_between(from_ms, forecast.cut_off->lower_ms);
    result.upper = hours_between(from_ms, forecast.cut_off->upper_ms);
    return result;
}

Band forecast_band(double share) {
    Band band;
    band.most = 1;
    // Of a large unit under little load the gauge may not have fallen yet, or nothing shows on a coarse register.
    band.most_refused = share < 0.3 ? 0.10 : 0.03;
    band.reason = "allows for every common fault of a gauge, of which each has but one";
    return band;
}

} // namespace

RunSetup few_forecast(FewFamily family, int readings, double share, std::uint64_t seed) {
    RunSetup setup = few_readings_under(few_loads()[seed % few_loads().size()].second, seed);
    Random random(seed + 19);
    setup.gauge = few_family_gauge(family, setup, random);
    const double now_h = share * Discharge(setup.physics, setup.load).end_hours();
    spread_readings(readings, now_h, random, setup);
    setup.tester.end = RunEnd::still_running;
    setup.tester.stop_after_h = now_h;
    return setup;
}

UnitFit charged_before(ChargeBefore how, const RunSetup& setup, const SimulatedRun& run, std::uint64_t seed) {
    if (how == ChargeBefore::none) return {};
    Random random(seed + 29);
    const auto noted = [&](double hours_before, double gauge_percent, std::optional<double> register_wh) {
        Reading reading;
        reading.values.time_ms = setup.start_ms - static_cast<UtcMs>(hours_before * ms_per_hour);
        reading.values.gauge_percent = gauge_percent;
        reading.values.register_wh = register_wh;
        return reading;
    };
    RunRecord drain = run.record, charge = run.record;
    drain.readings = {noted(40, 100, std::nullopt), noted(30, 0, std::nullopt)};
    drain.run.end = RunEnd::found_off;
    charge.run.kind = RunKind::charge;
    charge.run.end = RunEnd::stopped_by_tester;
    const double meter = (1 + run.truth.gain_error_percent / 100) / setup.meter->meter.correction;
    const double charged_wh = run.truth.full_drain_wh / random.uniform(0.7, 0.9) * meter;
    if (how == ChargeBefore::to_full)
        charge.readings = {noted(20, 0, 100.0), noted(16, 100, 100 + std::floor(0.98 * charged_wh)), noted(15, 100, 100 + std::floor(charged_wh))};
    else charge.readings = {noted(20, 0, 100.0), noted(15, 100, 100 + std::floor(random.uniform(0.8, 1) * charged_wh))};
    return fit_unit({drain, charge});
}

void report_few_forecast(const std::string& name, double share, const RunSetup& setup, const SimulatedRun& run, Report& report,
                         const UnitFit& unit_fit) {
    const UtcMs now_ms = run.record.readings.back().values.time_ms;
    const RunForecast forecast = forecast_run(run.record, analyse_energy(run.record), unit_fit, now_ms);
    report.result(name, "cut-off at " + std::to_string(std::lround(100 * share)) + " %", cut_off_hours(forecast, now_ms),
                  run.truth.cut_off_hours - hours_between(setup.start_ms, now_ms), forecast_band(share));
}

} // namespace ullage::test
