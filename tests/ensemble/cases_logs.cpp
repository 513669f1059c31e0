// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/specimen.h"
#include "support/simulated_log.h"

#include <cmath>
#include <string>

namespace ullage::test {
namespace {

/// Gauge by hand, the rest by the log.
RunSetup noted_gauge_only(const LoadProfile& load, std::uint64_t seed) {
    RunSetup setup = specimen_under(load, seed);
    setup.tester.without_register = 1;
    return setup;
}

void drop_registers(RunRecord& record) {
    for (Reading& reading : record.readings) reading.values.register_wh.reset();
}

LogSetup drawn_log(std::uint64_t seed, bool with_register) {
    Random random(seed + 77);
    LogSetup log;
    log.interval_s = random.uniform(2, 30);
    log.jitter = random.uniform(0, 0.3);
    log.with_register = with_register;
    log.with_power = !with_register || random.uniform(0, 1) < 0.5;
    log.power_step_w = random.uniform(0, 1) < 0.5 ? 0.1 : 1;
    log.register_start_wh = std::floor(random.uniform(0, 3000));
    return log;
}

Band log_band() {
    Band band = energy_band();
    band.reason += "; the steps of power are taken to err alike all the time and in the worst way";
    return band;
}

void each_load(std::uint64_t seeds, bool with_register, std::uint64_t offset, Report& report) {
    for (const auto& [load_name, load] : all_loads()) {
        const std::string name = std::string(with_register ? "log with register, " : "log of power, ") + load_name;
        for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
            const RunSetup setup = noted_gauge_only(load, seed);
            SimulatedRun run = simulate_run(setup, seed);
            drop_registers(run.record);
            give_log(run.record, simulated_log(setup, run, drawn_log(seed, with_register), seed));
            const RunAnalysis analysis = analyse_run(run.record);
            report.result(name, "delivered", analysis.energy.delivered_wh, run.truth.delivered_wh, log_band());
            report.honest(name, !first_accusation(analysis).empty(), first_accusation(analysis));
        }
        offset += 1'000'000;
    }
}

/// The register zeroed in the log, without a mark.
void zeroed(std::uint64_t seeds, Report& report) {
    const std::string name = "log with register, zeroed";
    for (std::uint64_t seed = 371'000'000; seed < 371'000'000 + seeds; ++seed) {
        const RunSetup setup = noted_gauge_only(LoadProfile::constant(90), seed);
        SimulatedRun run = simulate_run(setup, seed);
        drop_registers(run.record);
        LogSetup log = drawn_log(seed, true);
        log.zeroed_h = {run.truth.output_on_h * Random(seed + 5).uniform(0.2, 0.8)};
        give_log(run.record, simulated_log(setup, run, log, seed));
        const RunAnalysis analysis = analyse_run(run.record);
        report.result(name, "delivered", analysis.energy.delivered_wh, run.truth.delivered_wh, log_band());
    }
}

/// A log of power alone without rows for some time: what is stated is the least.
void with_a_gap(std::uint64_t seeds, Report& report) {
    const std::string name = "log of power, a gap";
    Band band;
    band.most = 1;
    band.least = 0.975;
    band.reason = "a lower limit";
    for (std::uint64_t seed = 372'000'000; seed < 372'000'000 + seeds; ++seed) {
        const RunSetup setup = noted_gauge_only(LoadProfile::constant(90), seed);
        SimulatedRun run = simulate_run(setup, seed);
        drop_registers(run.record);
        LogSetup log = drawn_log(seed, false);
        Random random(seed + 5);
        const double from_h = run.truth.output_on_h * random.uniform(0.1, 0.7);
        log.gaps_h = {{from_h, from_h + random.uniform(0.2, 1.5)}};
        give_log(run.record, simulated_log(setup, run, log, seed));
        report.result(name, "delivered", analyse_run(run.record).energy.delivered_wh, run.truth.delivered_wh, band);
    }
}

} // namespace

void run_logs(std::uint64_t seeds, Report& report) {
    each_load(seeds, true, 351'000'000, report);
    each_load(seeds, false, 361'000'000, report);
    zeroed(seeds, report);
    with_a_gap(seeds, report);
}

} // namespace ullage::test
