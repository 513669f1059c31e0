// SPDX-License-Identifier: GPL-3.0-or-later
// The gauge noted a few times, while a meter writes a log each 1, 10 or 60 s.
#include "ensemble/cases.h"
#include "ensemble/few_drains.h"
#include "ensemble/few_forecasts.h"
#include "support/simulated_log.h"

#include <array>
#include <cmath>
#include <string>

namespace ullage::test {
namespace {

constexpr std::array intervals_s{1.0, 10.0, 60.0};
constexpr std::array reading_counts{2, 3, 5, 20};

std::string each_s(double interval_s) { return ", log each " + std::to_string(std::lround(interval_s)) + " s"; }

/// A log of register, of power, or of both, on the register's own step. Its clock was set by hand, well or badly.
void write_log(const RunSetup& setup, double interval_s, std::uint64_t seed, SimulatedRun& run) {
    Random random(seed + 61);
    LogSetup log;
    log.interval_s = interval_s;
    log.jitter = random.uniform(0, 0.2);
    log.with_register = random.chance(0.6);
    log.with_power = !log.with_register || random.chance(0.5);
    log.register_step_wh = *setup.meter->meter.step_wh;
    log.power_step_w = random.chance(0.5) ? 0.1 : 1;
    log.register_start_wh = std::floor(random.uniform(0, 3000));
    if (setup.tester.end == RunEnd::still_running) log.after_s = 0; // power still flows at its end
    constexpr double clock_limit_s = 20;
    const bool clock_doubtful = random.chance(0.5);
    log.behind_s = clock_doubtful ? random.uniform(-clock_limit_s, clock_limit_s) : 0;
    // Beside a log many write down the gauge alone.
    if (random.chance(0.5))
        for (Reading& reading : run.record.readings) reading.values.register_wh.reset();
    give_log(run.record, simulated_log(setup, run, log, seed), clock_doubtful ? clock_limit_s / std::sqrt(3.0) : 0);
}

void drains(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 801'000'000;
    for (const FewFamily family : few_families)
        for (const double interval_s : intervals_s)
            for (const int readings : reading_counts) {
                const std::string name = few_family_name(family) + ", " + std::to_string(readings) + " readings" + each_s(interval_s);
                for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                    const RunSetup setup = few_drain(family, readings, seed);
                    SimulatedRun run = simulate_run(setup, seed);
                    write_log(setup, interval_s, seed, run);
                    report_few_drain(name, family, setup, run, report);
                }
                offset += 1'000'000;
            }
}

void forecasts(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 951'000'000;
    for (const FewFamily family : few_families)
        for (const double interval_s : intervals_s)
            for (const double share : {0.2, 0.5, 0.8}) {
                for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                    const int readings = reading_counts[seed % reading_counts.size()];
                    const RunSetup setup = few_forecast(family, readings, share, seed);
                    SimulatedRun run = simulate_run(setup, seed);
                    write_log(setup, interval_s, seed, run);
                    report_few_forecast(few_family_name(family) + each_s(interval_s), share, setup, run, report);
                }
                offset += 1'000'000;
            }
}

} // namespace

void run_few_logs(std::uint64_t seeds, Report& report) {
    drains(seeds, report);
    forecasts(seeds, report);
}

} // namespace ullage::test
