// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/scenario_specimen.h"

#include "support/scenario_parts.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>

namespace ullage::test {

namespace {

CompanyUnit borrowed_tarrow() {
    CompanyUnit unit = tarrow_2k();
    unit.claims.uuid = UnitId("c2f8a610-93d7-4b1e-b0c4-e7d18a5f2001");
    unit.claims.name = "Tarrow 2k B";
    unit.claims.paid_price.reset();
    unit.claims.tags = {"lent"};
    unit.physics.battery_wh = 1839;
    unit.physics.p0_w = 10.4;
    return unit;
}

MeterSetup calibrated_meter() {
    MeterSetup meter;
    meter.meter.uuid = MeterId("4e9b7a32-58f1-4c6d-a2b7-1d0c9e8f0004");
    meter.meter.name = "Bench meter D";
    meter.meter.step_wh = 1;
    meter.meter.limit_percent = 1;
    meter.meter.span_wh = 999'999;
    meter.meter.points = {{60, 1.003, 0.3, 2}, {180, 1.002, 0.25, 2}, {600, 1.001, 0.25, 2}};
    meter.meter.certificate = {"D-0418", "2027-04-18", "weights and measures office of the county", "2028-04-18"};
    meter.meter.range_low_w = 20;
    meter.meter.range_high_w = 3000;
    meter.gain_error_percent = -0.18;
    meter.start_wh = 5120;
    return meter;
}

RunSetup borrowed_drain(int number, int day, double ambient_c, LoadProfile load, std::vector<PlannedReading> plan) {
    const CompanyUnit unit = borrowed_tarrow();
    RunSetup setup;
    setup.unit = unit.claims;
    setup.physics = unit.physics;
    setup.gauge = unit.gauge;
    setup.start_ms = may_2027(day, 9, 0);
    setup.time_zone = "Europe/Vienna";
    setup.repeatability_percent = 0.4;
    setup.meter = calibrated_meter();
    setup.load_words = "projector and sound, test reel in a loop";
    setup.ambient_c = ambient_c;
    setup.load = std::move(load);
    setup.tester.plan = std::move(plan);
    setup.tester.noticed_within_min = 3;
    setup.tester.first_remark = "start, full";
    setup.tester.last_remark = "picture gone, output off";
    setup.number = number;
    return setup;
}

/// Adds what `other`, in series with the run's meter, showed whenever that one was read.
void note_in_series(SimulatedRun& run, const MeterSetup& other, std::uint64_t seed) {
    Random random(seed);
    const SimulatedMeter meter(other, 0, random);
    run.record.second_meter = other.meter;
    run.record.run.second_meter_uuid = other.meter.uuid;
    for (std::size_t i = 0; i < run.record.readings.size(); ++i)
        if (auto& values = run.record.readings[i].values; values.register_wh)
            values.second_register_wh = meter.register_wh(run.truth.readings[i].delivered_wh);
}

} // namespace

std::vector<ScenarioRun> sample_specimen_runs() {
    std::vector<ScenarioRun> runs;
    double register_wh = calibrated_meter().start_wh;
    std::uint64_t seed = 4027;
    const auto add = [&](const char* file_name, RunSetup setup) {
        setup.meter->start_wh = register_wh;
        runs.push_back({file_name, simulate_run(setup, seed++)});
        register_wh = runs.back().simulated.record.readings.back().values.register_wh.value_or(register_wh) + 3;
    };
    add("13-tarrow-2k-b-drain-180-w.csv",
        borrowed_drain(
            1, 25, 20, LoadProfile::stepped({{3, 181}, {4, 179}, {2, 180}}),
            plan_of("09:00", {{"10:40", "grm"}, {"12:30", "gr", "lunch"}, {"14:55", "gr"}, {"16:10", "gr", "reel changed"}, {"17:25", "gr"}})));
    add("14-tarrow-2k-b-drain-180-w.csv", borrowed_drain(2, 27, 21, LoadProfile::stepped({{2, 182}, {5, 180}, {2, 179}}),
                                                         plan_of("09:00", {{"10:05", "grm", "socket meter B behind the bench meter"},
                                                                           {"11:50", "gr"},
                                                                           {"13:30", "gr"},
                                                                           {"15:20", "gr"},
                                                                           {"16:45", "gr"},
                                                                           {"17:30", "gr"}})));
    MeterSetup behind = socket_meter_b();
    behind.start_wh = 46'011; // after the runs and the charge that it measured before
    note_in_series(runs.back().simulated, behind, seed + 100);
    add("15-tarrow-2k-b-drain-180-w.csv",
        borrowed_drain(3, 29, 19, LoadProfile::stepped({{4, 180}, {3, 181}, {2, 179}}),
                       plan_of("09:00", {{"11:15", "gr", "alone today"}, {"14:00", "grm"}, {"16:30", "gr"}, {"17:20", "gr"}})));
    return runs;
}

} // namespace ullage::test
