// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/specimen.h"

#include <cmath>

namespace ullage::test {
namespace {

Band fraction_on_one_rounding() {
    Band band;
    band.most = 1;
    band.reason = "two rounded gauge readings are allowed for; a gauge that starts full shows 100 % exactly, so that only one is rounded";
    return band;
}

Band bracket_band() {
    Band band;
    band.most = 1;
    band.reason = "a bracket holds all that is possible";
    return band;
}

/// P* and E* seen within one run.
Band within_band(bool steady) {
    Band band;
    band.most = 1;
    // A bracket stands in for a value that is refused; a steady load has no value at all.
    band.most_refused = steady ? 0 : 0.05;
    band.reason =
        "a bracket where the load does not tell time from energy (steady loads) or the readings are too few; what a quadratic loss between 0 and "
        "its bound would change is allowed for in full, which most units do not need";
    return band;
}

void add_energy(const std::string& name, const SimulatedRun& run, const RunAnalysis& analysis, Report& report) {
    report.result(name, "delivered", analysis.energy.delivered_wh, run.truth.delivered_wh, energy_band());
    if (run.truth.cut_off && run.truth.usable_fraction)
        report.result(name, "usable fraction", analysis.energy.usable_fraction, *run.truth.usable_fraction, energy_band());
}

/// A value where the load tells time from energy, else the bracket from energy alone.
void add_within(const std::string& name, const std::string& words, const Quantity& quantity, double truth, bool steady, Report& report) {
    if (quantity.kind != Kind::bracket) report.result(name, words, quantity, truth, within_band(steady));
    else report.result(name, words + ", bracket", quantity, truth, bracket_band());
}

void honest_under_each_load(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 1'000'000;
    for (const auto& [load_name, load] : all_loads()) {
        const bool steady = load_name == "constant" || load_name == "fast cycling" || load_name == "heavy";
        for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
            RunSetup setup = specimen_under(load, seed);
            if (!steady) read_each(0.03, setup);
            const SimulatedRun run = simulate_run(setup, seed);
            const RunAnalysis analysis = analyse_run(run.record);
            add_energy(load_name, run, analysis, report);
            report.result(load_name, "duration", analysis.energy.duration_h, run.truth.output_on_h, duration_band());
            add_within(load_name, "P* within the run", analysis.gauge.own_draw_w, run.truth.no_load_draw_w, steady, report);
            add_within(load_name, "E* within the run", analysis.gauge.own_energy_wh, run.truth.deliverable_wh, steady, report);
        }
        offset += 1'000'000;
    }
}

void coarse_meter(std::uint64_t seeds, Report& report) {
    for (const Steps steps : {Steps::truncated, Steps::rounded}) {
        const std::string name = steps == Steps::truncated ? "10 Wh steps, truncated" : "10 Wh steps, rounded";
        const std::uint64_t offset = steps == Steps::truncated ? 11'000'000 : 12'000'000;
        for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
            RunSetup setup = specimen_under(LoadProfile::constant(64), seed);
            setup.meter->meter.step_wh = 10;
            setup.meter->meter.limit_percent = 0.5;
            setup.meter->start_wh = 10 * std::floor(setup.meter->start_wh / 10);
            setup.meter->steps = steps;
            const SimulatedRun run = simulate_run(setup, seed);
            add_energy(name, run, analyse_run(run.record), report);
        }
    }
}

void partial_runs(std::uint64_t seeds, Report& report) {
    for (const bool from_full : {true, false}) {
        const std::string name = from_full ? "partial, from full" : "partial, from within";
        const std::uint64_t offset = from_full ? 21'000'000 : 22'000'000;
        for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
            RunSetup setup = specimen_under(LoadProfile::constant(64), seed);
            Random random(seed + 5);
            if (!from_full) setup.start_depth = random.uniform(0.05, 0.3);
            const double whole_h = Discharge(setup.physics, setup.load).end_hours();
            setup.tester.end = RunEnd::stopped_by_tester;
            setup.tester.stop_after_h = whole_h * random.uniform(0.3, 0.6);
            const SimulatedRun run = simulate_run(setup, seed);
            const RunAnalysis analysis = analyse_run(run.record);
            const double truth = setup.physics.delivered_wh(64) / *setup.unit.rated_energy_wh;
            report.result(name, "delivered", analysis.energy.delivered_wh, run.truth.delivered_wh, energy_band());
            report.result(name, from_full ? "projected fraction, from full" : "projected fraction", analysis.energy.usable_fraction, truth,
                          from_full ? fraction_on_one_rounding() : Band{});
        }
    }
}

void found_off(std::uint64_t seeds, Report& report) {
    for (const bool steady : {true, false}) {
        const std::string name = steady ? "found off, steady load" : "found off, varying load";
        const std::uint64_t offset = steady ? 31'000'000 : 32'000'000;
        for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
            RunSetup setup = specimen_under(steady ? LoadProfile::constant(64) : LoadProfile::stepped({{1, 30}, {1, 110}}, true), seed);
            Random random(seed + 9);
            setup.tester.end = RunEnd::found_off;
            setup.tester.found_after_h = random.uniform(0.1, 6);
            const SimulatedRun run = simulate_run(setup, seed);
            const RunAnalysis analysis = analyse_run(run.record);
            add_energy(name, run, analysis, report);
            report.result(name, "duration, bracket", analysis.energy.duration_h, run.truth.cut_off_hours, bracket_band());
            report.honest(name, !first_accusation(analysis).empty(), first_accusation(analysis));
        }
    }
}

} // namespace

void run_loads(std::uint64_t seeds, Report& report) {
    honest_under_each_load(seeds, report);
    coarse_meter(seeds, report);
    partial_runs(seeds, report);
    found_off(seeds, report);
}

} // namespace ullage::test
