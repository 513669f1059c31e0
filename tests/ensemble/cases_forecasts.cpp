// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/specimen.h"

#include "forecast/forecast.h"

#include <cmath>
#include <string>
#include <vector>

namespace ullage::test {
namespace {

constexpr std::array<double, 5> shares{0.2, 0.4, 0.6, 0.8, 0.9};

/// Kinds of gauge with their faults drawn by the seed; sizes as they are common (see forecast_trend.h).
enum class GaugeSort { honest, bent, ends_early, lingers, offset, blind };
constexpr GaugeSort all_sorts[] = {GaugeSort::honest,  GaugeSort::bent,   GaugeSort::ends_early,
                                   GaugeSort::lingers, GaugeSort::offset, GaugeSort::blind};

std::string sort_name(GaugeSort sort) {
    switch (sort) {
    case GaugeSort::honest: return "honest gauge";
    case GaugeSort::bent: return "gauge bent by up to 12 pt";
    case GaugeSort::ends_early: return "gauge ends at up to 8 %";
    case GaugeSort::lingers: return "gauge lingers for up to 70 Wh";
    case GaugeSort::offset: return "gauge offset by up to 8 pt";
    case GaugeSort::blind: break;
    }
    return "gauge blind to own consumption";
}

GaugeLaw gauge_of(GaugeSort sort, Random& random) {
    GaugeLaw law;
    switch (sort) {
    case GaugeSort::honest:
        if (random.chance(0.5)) law.counts = GaugeCounts::charge;
        break;
    case GaugeSort::bent: law.bend_pt = random.uniform(-12, 12); break;
    case GaugeSort::ends_early: law.ends_at_percent = random.uniform(0, 8); break;
    case GaugeSort::lingers: law.reserve_wh = random.uniform(1, 70); break;
    case GaugeSort::offset: law.offset_pt = random.uniform(-8, 8); break;
    case GaugeSort::blind: law.counts = GaugeCounts::delivered_energy; break;
    }
    return law;
}

/// Loads that keep to what they have shown by a fifth of the drain: only such can be forecast.
const std::vector<NamedLoad>& foreseeable_loads() {
    static const std::vector<NamedLoad> loads{
        {"constant", LoadProfile::constant(64)},
        {"fast cycling", LoadProfile::cycling(120, 10, 0.4, 0.4)},
        {"slow cycling", LoadProfile::cycling(200, 40, 1.5, 0.3)},
        {"stepped early", LoadProfile::stepped({{1.2, 200}, {1, 50}})},
    };
    return loads;
}

/// What the unit's other drains say: one of a like load, or two of loads far apart, by the meter of the run; a third has none.
UnitFit earlier_fit(const RunSetup& unit, std::uint64_t seed, std::size_t drains) {
    std::vector<RunRecord> records;
    const std::array<double, 2> loads_w{70, 300};
    for (std::size_t i = 0; i < drains; ++i) {
        RunSetup setup = unit;
        setup.load = LoadProfile::constant(loads_w[i]);
        setup.repeatability_percent = 0.5;
        setup.start_ms -= static_cast<UtcMs>(drains - i) * 5 * 24 * 3'600'000;
        read_each(0.08, setup);
        records.push_back(simulate_run(setup, seed * 16 + i).record);
    }
    return fit_unit(records);
}

Quantity hours_quantity(const std::optional<ExpectedTime>& time, UtcMs from_ms, const std::string& reason) {
    if (!time) return not_known("forecast_h", "h", reason);
    Quantity result = known("forecast_h", "h", hours_between(from_ms, time->estimate_ms), std::nullopt, Kind::bracket, reason);
    result.lower = hours_between(from_ms, time->lower_ms);
    result.upper = hours_between(from_ms, time->upper_ms);
    return result;
}

/// When the gauge first shows less than at the last reading, h from the start; the end of the drain where it never does.
double next_step_hours(const RunSetup& setup, const SimulatedRun& run) {
    const Discharge discharge(run.truth.physics, setup.load);
    const SimulatedGauge gauge(setup.gauge, run.truth.physics, discharge);
    const double shown = *run.record.readings.back().values.gauge_percent;
    return gauge.hours_at_percent(shown - setup.gauge.step_percent / 2 - 1e-9);
}

Band cut_off_band(double share, bool earlier) {
    Band band;
    band.most = 1;
    band.most_refused = share < 0.3 && !earlier ? 0.05 : 0.02;
    band.reason = "over 98 %: allows for every common fault of a gauge, of which each has but one";
    return band;
}

void forecast_at_each_share(RunSetup setup, std::uint64_t seed, std::size_t drains, const std::vector<std::string>& names, Report& report) {
    setup.repeatability_percent = 0.5;
    setup.meter->gain_error_percent = Random(seed + 5).uniform(-1, 1);
    const UnitFit fit = earlier_fit(setup, seed, drains);
    const double end_h = Discharge(setup.physics, setup.load).end_hours();
    setup.tester.end = RunEnd::still_running;
    for (const double share : shares) {
        setup.tester.stop_after_h = share * end_h;
        const SimulatedRun run = simulate_run(setup, seed);
        if (run.truth.cut_off) continue;
        const UtcMs now_ms = run.record.readings.back().values.time_ms;
        const RunForecast forecast = forecast_run(run.record, analyse_energy(run.record), fit, now_ms);
        const double now_h = hours_between(setup.start_ms, now_ms);
        const std::string at = " at " + std::to_string(std::lround(100 * share)) + " %";
        for (const std::string& name : names) {
            report.result(name, "cut-off" + at, hours_quantity(forecast.cut_off, now_ms, forecast.cut_off_reason), run.truth.cut_off_hours - now_h,
                          cut_off_band(share, drains > 0));
            if (drains > 0) continue;
            const double step_h = next_step_hours(setup, run);
            if (step_h < run.truth.cut_off_hours)
                report.result(name, "next gauge step" + at, hours_quantity(forecast.next_step, now_ms, forecast.gauge_reason), step_h - now_h,
                              cut_off_band(share, false));
        }
    }
}

} // namespace

void run_forecasts(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 501'000'000;
    for (const bool earlier : {false, true})
        for (const GaugeSort sort : all_sorts) {
            for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                const auto& [load_name, load] = foreseeable_loads()[seed % foreseeable_loads().size()];
                RunSetup setup = specimen_under(load, seed);
                Random random(seed + 19);
                setup.physics.b_per_w = setup.physics.a * random.uniform(0, most_curvature) / *setup.unit.rated_output_w;
                setup.gauge = gauge_of(sort, random);
                const std::string with = earlier ? ", earlier drains" : "";
                forecast_at_each_share(setup, seed, earlier ? 1 + seed / 4 % 2 : 0, {sort_name(sort) + with, load_name + with, "all" + with}, report);
            }
            offset += 1'000'000;
        }
}

} // namespace ullage::test
