// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/few_readings.h"

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

/// One kind of forecast: a family of gauges on labels that hold so many times what they say.
struct ForecastCase {
    FewFamily family;
    int readings;
    double share;
    double label_error = 1; ///< the label says so many times the truth
};

void forecast_runs(const ForecastCase& each, std::uint64_t from_seed, std::uint64_t seeds, Report& report) {
    std::string name = few_family_name(each.family) + ", " + std::to_string(each.readings) + " readings";
    if (each.label_error != 1) name += each.label_error < 1 ? ", label 15 % too small" : ", label 15 % too large";
    for (std::uint64_t seed = from_seed; seed < from_seed + seeds; ++seed) {
        const auto& [load_name, load] = few_loads()[seed % few_loads().size()];
        RunSetup setup = few_readings_under(load, seed);
        Random random(seed + 19);
        setup.gauge = few_family_gauge(each.family, setup, random);
        const double now_h = each.share * Discharge(setup.physics, setup.load).end_hours();
        spread_readings(each.readings, now_h, random, setup);
        setup.tester.end = RunEnd::still_running;
        setup.tester.stop_after_h = now_h;
        *setup.unit.rated_energy_wh *= each.label_error;
        const SimulatedRun run = simulate_run(setup, seed);
        const UtcMs now_ms = run.record.readings.back().values.time_ms;
        const RunForecast forecast = forecast_run(run.record, analyse_energy(run.record), UnitFit{}, now_ms);
        report.result(name, "cut-off at " + std::to_string(std::lround(100 * each.share)) + " %", cut_off_hours(forecast, now_ms),
                      run.truth.cut_off_hours - hours_between(setup.start_ms, now_ms), forecast_band(each.share));
    }
}

} // namespace

void run_few_forecasts(std::uint64_t seeds, Report& report) {
    std::uint64_t from_seed = 601'000'000;
    const auto run = [&](const ForecastCase& each) {
        forecast_runs(each, from_seed, seeds, report);
        from_seed += 1'000'000;
    };
    for (const FewFamily family : few_families)
        for (const int readings : {2, 3, 5, 20})
            for (const double share : {0.2, 0.5, 0.8}) run({family, readings, share});
    // Labels err too.
    for (const double label_error : {1 / 1.15, 1.15})
        for (const FewFamily family : {FewFamily::honest, FewFamily::bent, FewFamily::blind})
            for (const int readings : {3, 20})
                for (const double share : {0.2, 0.5, 0.8}) run({family, readings, share, label_error});
}

} // namespace ullage::test
