// SPDX-License-Identifier: GPL-3.0-or-later
// A running drain whose unit logs its gauge, beside the same drain with the hand readings alone.
#include "forecast/forecast.h"
#include "model/trace.h"
#include "support/seeds.h"
#include "support/simulated_log.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace ullage::test {
namespace {

/// Gauges as bad as they are: honest, counting charge, bent either way, ending early, lingering, offset, blind to own consumption, sticking.
GaugeLaw gauge_law(int sort, Random& random) {
    GaugeLaw law;
    switch (sort) {
    case 0: break;
    case 1: law.counts = GaugeCounts::charge; break;
    case 2: law.bend_pt = random.uniform(-12, 12); break;
    case 3: law.ends_at_percent = random.uniform(0, 8); break;
    case 4: law.reserve_wh = random.uniform(1, 70); break;
    case 5: law.offset_pt = random.uniform(-8, 8); break;
    case 6: law.counts = GaugeCounts::delivered_energy; break;
    default: law.sticks = {{random.uniform(30, 80), random.uniform(3, 12), random.uniform(0, 5)}}; break;
    }
    return law;
}
constexpr int gauge_sorts = 8;

struct Running {
    RunSetup setup;
    SimulatedRun run;
};

/// Stopped in the midst of its drain, with three notes; the unit's clock was set right to some 20 s.
Running running(int sort, double share, int seed) {
    Random random(static_cast<std::uint64_t>(seed) * 7919 + static_cast<std::uint64_t>(sort));
    RunSetup setup;
    setup.unit.name = "Specimen";
    setup.unit.rated_energy_wh = 1050;
    setup.unit.rated_output_w = 1200;
    setup.physics = {random.uniform(850, 1050), random.uniform(6, 16), random.uniform(1.05, 1.2), 3e-5};
    setup.gauge = gauge_law(sort, random);
    setup.load = LoadProfile::cycling(150, 30, 0.5, 0.4);
    setup.meter->meter.step_wh = 1;
    setup.meter->meter.limit_percent = 1;
    const double lasts_h = Discharge(setup.physics, setup.load, 0).end_hours();
    setup.tester.end = RunEnd::still_running;
    setup.tester.stop_after_h = share * lasts_h;
    setup.tester.interval_h = share * lasts_h / 2.2;
    Running result{setup, simulate_run(setup, static_cast<std::uint64_t>(seed))};
    LogSetup meter;
    meter.after_s = 0;
    give_log(result.run.record, simulated_log(setup, result.run, meter, static_cast<std::uint64_t>(seed)));
    return result;
}

RunForecast forecast_with_logs(const RunRecord& record) { return forecast_at_last_reading(record, analyse_energy(record), fit_unit({})); }

TEST(GaugeLogForecast, its_range_covers_for_every_sort_of_gauge_and_is_narrower_than_that_of_the_notes) {
    constexpr int seeds = simulated_runs(25);
    constexpr std::array<double, 3> shares{0.3, 0.6, 0.85};
    double width_h = 0, notes_width_h = 0;
    int asked = 0, covered_all = 0;
    for (int sort = 0; sort < gauge_sorts; ++sort) {
        int covered = 0, told = 0;
        for (const double share : shares)
            for (int seed = 1; seed <= seeds; ++seed) {
                Running drain = running(sort, share, seed);
                RunRecord& record = drain.run.record;
                const RunForecast by_notes = forecast_with_logs(record);
                GaugeLogSetup log;
                log.after_s = 0;
                log.behind_s = seed % 2 == 0 ? 20 : -20;
                log.drop_outs = 0.02;
                log.flicker_pt = 0.1;
                give_gauge_log(record, simulated_gauge_log(drain.setup, drain.run, log, static_cast<std::uint64_t>(seed)));
                const RunForecast by_log = forecast_with_logs(record);
                if (!by_log.cut_off || !by_notes.cut_off) continue;
                const UtcMs truth_ms = drain.setup.start_ms + static_cast<UtcMs>(std::llround(drain.run.truth.cut_off_hours * ms_per_hour));
                ++told;
                covered += truth_ms >= by_log.cut_off->lower_ms && truth_ms <= by_log.cut_off->upper_ms;
                width_h += hours_between(by_log.cut_off->lower_ms, by_log.cut_off->upper_ms);
                notes_width_h += hours_between(by_notes.cut_off->lower_ms, by_notes.cut_off->upper_ms);
            }
        EXPECT_GE(told, seeds * 2) << sort;
        EXPECT_GE(covered * 100, told * 90) << "sort " << sort << ": " << covered << " of " << told;
        asked += told;
        covered_all += covered;
    }
    EXPECT_GE(covered_all * 100, asked * 93) << covered_all << " of " << asked;
    EXPECT_LT(width_h, 0.98 * notes_width_h) << "most of the range is what gauges may do, which no log settles";
}

TEST(GaugeLogForecast, the_next_step_is_told_from_the_sample_at_which_the_last_one_came) {
    int covered = 0, narrower = 0, asked = 0;
    for (int seed = 1; seed <= 40; ++seed) {
        Running drain = running(0, 0.6, seed);
        RunRecord& record = drain.run.record;
        const RunForecast by_notes = forecast_with_logs(record);
        GaugeLogSetup log;
        log.after_s = 0;
        const std::vector<TraceSample> samples = simulated_gauge_log(drain.setup, drain.run, log, static_cast<std::uint64_t>(seed));
        give_gauge_log(record, samples);
        record.gauge_log->own_clock = false;
        const RunForecast by_log = forecast_with_logs(record);
        ASSERT_TRUE(by_log.next_step && by_notes.next_step) << by_log.gauge_reason;
        const Discharge discharge(drain.run.truth.physics, drain.setup.load);
        const SimulatedGauge gauge(drain.setup.gauge, drain.run.truth.physics, discharge);
        const double step_h = gauge.hours_at_percent(by_log.gauge_speed->shown_percent - 0.5);
        const double lower_h = hours_between(drain.setup.start_ms, by_log.next_step->lower_ms);
        const double upper_h = hours_between(drain.setup.start_ms, by_log.next_step->upper_ms);
        ++asked;
        covered += step_h >= lower_h - 0.01 && step_h <= upper_h + 0.01;
        narrower += upper_h - lower_h <= hours_between(by_notes.next_step->lower_ms, by_notes.next_step->upper_ms) + 1e-6;
    }
    EXPECT_GE(covered * 100, asked * 90) << covered << " of " << asked;
    EXPECT_GE(narrower * 100, asked * 70) << narrower;
}

} // namespace
} // namespace ullage::test
