// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/specimen.h"

#include "unit/curve_projection.h"
#include "unit/unit_analysis.h"

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

namespace ullage::test {
namespace {

using ScaledLoad = std::function<LoadProfile(double)>;

struct NamedScaledLoad {
    std::string name;
    ScaledLoad load;
};

/// Loads of which each drain gets a little more or less.
const std::vector<NamedScaledLoad>& scaled_loads() {
    static const std::vector<NamedScaledLoad> loads{
        {"constant", [](double k) { return LoadProfile::constant(64 * k); }},
        {"slow cycling", [](double k) { return LoadProfile::cycling(200 * k, 10 * k, 3, 0.3); }},
        {"stepped",
         [](double k) {
             return LoadProfile::stepped({{2, 220 * k}, {9, 25 * k}}, true);
         }},
        {"idle nights",
         [](double k) {
             return LoadProfile::stepped({{3, 110 * k}, {8, 0}}, true);
         }},
    };
    return loads;
}

/// The rows of the report: a steady load must not hide what changing ones do.
std::string shape_of(const NamedScaledLoad& load) { return load.name == "constant" ? ", steady load" : ", changing loads"; }

/// What a unit is like at its last drain, to which it comes evenly from the first.
struct Life {
    double battery_lost_percent = 0;
    std::function<void(GaugeLaw&, double)> drift = [](GaugeLaw&, double) {}; ///< share of its life, 0 to 1
};

/// Drains of one unit over a year, at loads of 0.9 to 1.1 times the plan; half of the units are met by a second meter in the last drain.
std::vector<RunRecord> live(const NamedScaledLoad& load, const GaugeLaw& law, double stated_step_percent, const Life& life, int drains,
                            std::uint64_t seed) {
    RunSetup unit = specimen_under(load.load(1), seed);
    Random random(seed + 17);
    const double gain = random.uniform(-1, 1), other_gain = random.uniform(-1, 1);
    const bool two_meters = random.chance(0.5);
    std::vector<RunRecord> records;
    for (int i = 0; i < drains; ++i) {
        const double share = static_cast<double>(i) / (drains - 1);
        RunSetup setup = unit;
        setup.load = load.load(random.uniform(0.9, 1.1));
        setup.gauge = law;
        setup.unit.gauge_step_percent = stated_step_percent;
        life.drift(setup.gauge, share);
        setup.physics.battery_wh *= 1 - life.battery_lost_percent / 100 * share;
        setup.number = i + 1;
        setup.start_ms += static_cast<UtcMs>(share * 365 * 24 * ms_per_hour);
        setup.meter->gain_error_percent = gain;
        if (two_meters && i + 1 == drains) {
            setup.meter->meter.uuid = MeterId("other meter");
            setup.meter->gain_error_percent = other_gain;
        }
        setup.repeatability_percent = 0.5;
        read_each(0.08, setup);
        records.push_back(simulate_run(setup, seed * 16 + static_cast<std::uint64_t>(i)).record);
    }
    return records;
}

UnitAnalysis analyse(const std::vector<RunRecord>& records) { return analyse_unit(records.front().unit, fit_unit(records)); }

bool drifts(const UnitAnalysis& unit) {
    return unit.gauge_drift.verdict == DriftVerdict::gauge_drifts || unit.gauge_drift.verdict == DriftVerdict::both_move;
}

void leave_steady_gauges_in_peace(std::uint64_t seeds, Report& report) {
    struct Steady {
        std::string name;
        GaugeLaw law = {};
        double stated_step_percent = 1;
        Life life = {};
        int drains = 3;
    };
    std::vector<Steady> gauges{
        {"two drains", {}, 1, {}, 2},     {"five drains", {}, 1, {}, 5}, {"unit ages by 8 %", {}, 1, {.battery_lost_percent = 8}, 4},
        {"charge-counting", {}},          {"noisy by 0.3 pt", {}},       {"5 % steps, stated", {}, 5},
        {"bent by 12 pt ever since", {}}, {"sticks ever since", {}}};
    gauges[3].law.counts = GaugeCounts::charge;
    gauges[4].law.noise_pt = 0.3;
    gauges[5].law.step_percent = 5;
    gauges[6].law.bend_pt = 12;
    gauges[7].law.sticks = {{71, 12, 3}};
    std::uint64_t offset = 501'000'000;
    for (const Steady& gauge : gauges)
        for (const NamedScaledLoad& load : scaled_loads()) {
            for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                const UnitAnalysis unit = analyse(live(load, gauge.law, gauge.stated_step_percent, gauge.life, gauge.drains, seed));
                if (unit.gauge_drift.verdict == DriftVerdict::not_known) continue;
                report.honest("no drift: " + gauge.name + shape_of(load), drifts(unit),
                              load.name + ", seed " + std::to_string(seed) + ": " + unit.gauge_drift.sentence);
            }
            offset += 1'000'000;
        }
}

/// Whether the first drain and the last were compared, at a resolution of `pt` or better: the drift planted is twice that.
bool resolves(const GaugeDrift& drift, std::size_t last, double pt) {
    return std::ranges::any_of(
        drift.comparisons, [&](const DrainComparison& pair) { return pair.earlier == 0 && pair.later == last && pair.curve.resolution_pt <= pt; });
}

void find_planted_drift(std::uint64_t seeds, Report& report) {
    struct Drifting {
        std::string name;
        Life life;
    };
    const std::vector<Drifting> gauges{
        {"drifts by 3 pt at half", {0, [](GaugeLaw& law, double share) { law.bend_pt = 3 * share; }}},
        {"drifts by -3 pt at half, unit ages by 8 %", {8, [](GaugeLaw& law, double share) { law.bend_pt = -3 * share; }}},
        {"drifts from 0 to 4 % at cut-off", {0, [](GaugeLaw& law, double share) { law.ends_at_percent = 4 * share; }}},
    };
    std::uint64_t offset = 601'000'000;
    for (const Drifting& gauge : gauges)
        for (const NamedScaledLoad& load : scaled_loads()) {
            for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                const UnitAnalysis unit = analyse(live(load, {}, 1, gauge.life, 3, seed));
                if (!resolves(unit.gauge_drift, 2, 1.5)) continue;
                report.planted(gauge.name + shape_of(load), "gauge drift", drifts(unit),
                               load.name + ", seed " + std::to_string(seed) + ": " + unit.gauge_drift.sentence);
            }
            offset += 1'000'000;
        }
}

/// An ageing unit with an accurate gauge must be called ageing, and ageing alone.
void tell_ageing(std::uint64_t seeds, Report& report) {
    const std::uint64_t offset = 701'000'000;
    for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
        const UnitAnalysis unit = analyse(live(scaled_loads()[0], {}, 1, {.battery_lost_percent = 10}, 5, seed));
        report.planted("unit ages by 10 %, gauge honest", "energy moves", unit.gauge_drift.verdict == DriftVerdict::energy_moves,
                       "seed " + std::to_string(seed) + ": " + unit.gauge_drift.sentence);
    }
}

/// A bent gauge: half a drain, through the curve of an earlier full drain.
void project_partial_drains(std::uint64_t seeds, Report& report) {
    Band band;
    band.most = 1;
    band.reason = "through a gauge curve up to 100 %: the limits of a depth hold all that two roundings and an uneven gauge may do";
    std::uint64_t offset = 801'000'000;
    for (const double bend_pt : {0.0, 12.0, -12.0})
        for (const NamedScaledLoad& load : {scaled_loads()[0], scaled_loads()[1]}) {
            for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                RunSetup full = specimen_under(load.load(1), seed);
                full.gauge.bend_pt = bend_pt;
                RunSetup part = full;
                full.meter->gain_error_percent = Random(seed + 19).uniform(-1, 1);
                part.meter->gain_error_percent = full.meter->gain_error_percent;
                part.load = LoadProfile::constant(64 * Random(seed + 23).uniform(0.8, 2));
                read_each(0.08, part);
                part.tester.end = RunEnd::stopped_by_tester;
                part.tester.stop_at_percent = Random(seed + 29).uniform(35, 65);
                part.start_ms += 48 * static_cast<UtcMs>(ms_per_hour);
                part.number = 2;
                const SimulatedRun partial = simulate_run(part, 2 * seed + 1);
                const std::vector<RunRecord> records{simulate_run(full, 2 * seed).record, partial.record};
                RunAnalysis analysis = analyse_run(partial.record);
                project_through_curve(partial.record, fit_unit(records), analysis);
                report.result("half a drain, bent by " + std::to_string(static_cast<int>(bend_pt)) + " pt, curve: " + load.name, "projected fraction",
                              analysis.energy.usable_fraction, partial.truth.usable_fraction.value(), band);
            }
            offset += 1'000'000;
        }
}

} // namespace

void run_drift(std::uint64_t seeds, Report& report) {
    leave_steady_gauges_in_peace(seeds, report);
    find_planted_drift(seeds, report);
    tell_ageing(seeds, report);
    project_partial_drains(seeds, report);
}

} // namespace ullage::test
