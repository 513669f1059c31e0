// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/specimen.h"

#include "unit/between_runs_predict.h"

#include <functional>
#include <string>
#include <vector>

namespace ullage::test {
namespace {

/// Over all units within the bounds of the quadratic loss fit_unit covers a little more than 95 %; see its header.
Band unit_band() {
    Band band;
    band.most = 0.99;
    band.reason = "up to 99 %: the bounds of the quadratic loss are allowed for in full, which units between them do not need";
    return band;
}

Band refusal_band() {
    Band band;
    band.least_refused = 1;
    band.most_refused = 1;
    band.reason = "run times that differ by less than 1.5 times tell nothing apart";
    return band;
}

struct Drains {
    std::string name;
    std::vector<double> loads_w; ///< 0: a no-load drain
    bool two_meters = false;
    bool found_off = false;
    bool declines = false;
};

std::vector<Drains> all_drains() {
    return {{.name = "2 drains: 50, 300 W", .loads_w = {50, 300}},
            {.name = "4 drains: 25 to 600 W", .loads_w = {25, 80, 250, 600}},
            {.name = "no-load drain and 200 W", .loads_w = {0, 200}},
            {.name = "3 drains by two meters", .loads_w = {40, 90, 350}, .two_meters = true},
            {.name = "2 drains, one found off", .loads_w = {50, 300}, .found_off = true},
            {.name = "2 drains of close loads", .loads_w = {100, 120}, .declines = true}};
}

/// The drains of one unit, two days apart, with one gain error for each meter.
std::vector<RunRecord> simulate_unit(const Drains& drains, const RunSetup& unit, std::uint64_t seed) {
    Random random(seed + 11);
    const double gain = random.uniform(-1, 1), other_gain = random.uniform(-2, 2);
    std::vector<RunRecord> records;
    for (std::size_t i = 0; i < drains.loads_w.size(); ++i) {
        RunSetup setup = unit;
        setup.load = LoadProfile::constant(drains.loads_w[i]);
        setup.kind = drains.loads_w[i] > 0 ? RunKind::drain : RunKind::no_load_drain;
        setup.number = static_cast<int>(i) + 1;
        setup.start_ms += static_cast<UtcMs>(i) * 10 * 24 * 3'600'000;
        setup.meter->gain_error_percent = gain;
        if (drains.two_meters && i == 1) {
            setup.meter->meter.uuid = MeterId("other meter");
            setup.meter->meter.name = "Other meter";
            setup.meter->meter.limit_percent = 2;
            setup.meter->gain_error_percent = other_gain;
        }
        if (drains.found_off && i == 0) {
            setup.load = LoadProfile::stepped({{1, 30}, {1, 70}}, true); // so that the register cannot narrow the bracket
            setup.tester.end = RunEnd::found_off;
            setup.tester.found_after_h = random.uniform(0.1, 2.5);
        }
        setup.repeatability_percent = 0.5;
        read_each(0.08, setup);
        records.push_back(simulate_run(setup, seed * 16 + i).record);
    }
    return records;
}

} // namespace

void run_units(std::uint64_t seeds, Report& report) {
    constexpr double between_w = 120;
    std::uint64_t offset = 401'000'000;
    for (const Drains& drains : all_drains()) {
        const Band band = drains.declines ? refusal_band() : unit_band();
        for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
            RunSetup unit = specimen_under(LoadProfile::constant(100), seed);
            Random random(seed + 13);
            unit.physics.b_per_w = unit.physics.a * random.uniform(0, most_curvature) / *unit.unit.rated_output_w;
            const SimulatedUnit& truth = unit.physics;
            const UnitFit fit = fit_unit(simulate_unit(drains, unit, seed));
            const LoadPrediction prediction = predict_at(fit, unit.unit, between_w);
            report.result(drains.name, "E* between runs", fit.deliverable_at_no_time_cost_wh, truth.deliverable_wh(), band);
            report.result(drains.name, "P* between runs", fit.no_load_draw_w, truth.no_load_draw_w(), band);
            report.result(drains.name, "idle run time", fit.no_load_endurance_h, truth.run_time_h(0), band);
            report.result(drains.name, "deliverable at 120 W", prediction.deliverable_wh, truth.delivered_wh(between_w), band);
            report.result(drains.name, "run time at 120 W", prediction.run_time_h, truth.run_time_h(between_w), band);
        }
        offset += 1'000'000;
    }
}

} // namespace ullage::test
