// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/scenario_log.h"

#include "model/trace.h"
#include "support/scenario_parts.h"
#include "support/simulated_log.h"

#include "base/instant.h"

#include <fmt/format.h>

#include <cmath>

namespace ullage::test {

namespace {

MeterSetup logging_meter() {
    MeterSetup meter;
    meter.meter.uuid = MeterId("4e9b7a32-58f1-4c6d-a2b7-1d0c9e8f0003");
    meter.meter.name = "Logging meter C";
    meter.meter.step_wh = 0.1;
    meter.meter.limit_percent = 1;
    meter.meter.span_wh = 9999.9;
    meter.gain_error_percent = -0.3;
    meter.start_wh = 318.4;
    return meter;
}

RunSetup pelm_with_cold_box() {
    const CompanyUnit pelm = pelm_900();
    RunSetup setup;
    setup.unit = pelm.claims;
    setup.physics = pelm.physics;
    setup.gauge = pelm.gauge;
    setup.start_ms = may_2027(23, 21, 0);
    setup.time_zone = "Europe/Vienna";
    setup.repeatability_percent = 0.25;
    setup.meter = logging_meter();
    setup.load_words = "cold box for drinks, overnight";
    setup.ambient_c = 14;
    setup.number = 4;
    setup.load = LoadProfile::cycling(52.3, 0.6, 0.42, 0.31);
    setup.tester.first_remark = "start, full; the meter logs";
    setup.tester.plan = plan_of("21:00", {{"21:40", "g"},
                                          {"22:25", "g"},
                                          {"23:10", "gr", "before bed"},
                                          {"23:50", "g"},
                                          {"01:20", "g", "night watch"},
                                          {"02:10", "g"},
                                          {"03:05", "gr", "night watch"},
                                          {"04:15", "g"},
                                          {"05:00", "g"},
                                          {"05:45", "g"}});
    setup.tester.end = RunEnd::stopped_by_tester;
    setup.tester.stop_after_h = 9.5;
    setup.tester.last_remark = "drinks out, box off";
    return setup;
}

std::string log_text(const std::vector<TraceSample>& samples, const std::string& zone) {
    std::string text = "time,power W,energy Wh\n";
    for (const TraceSample& sample : samples) {
        const LocalTime local = to_local(sample.time_ms, zone);
        text += fmt::format("{:04}-{:02}-{:02} {:02}:{:02}:{:02},{:.1f},{:.1f}\n", local.year, local.month, local.day, local.hour, local.minute,
                            local.second, sample.power_w.value(), sample.register_wh.value());
    }
    return text;
}

} // namespace

LoggedRun sample_logged_run() {
    const RunSetup setup = pelm_with_cold_box();
    LoggedRun logged{{"12-pelm-900-drain-logged.csv", simulate_run(setup, 1928)}, {}};
    // Tenths have no exact binary form: what the display shows is the nearest double, not a multiple of one.
    for (Reading& reading : logged.run.simulated.record.readings)
        if (auto& register_wh = reading.values.register_wh) register_wh = std::round(*register_wh * 10) / 10;
    LogSetup log;
    log.register_step_wh = setup.meter->meter.step_wh.value();
    log.register_start_wh = setup.meter->start_wh;
    logged.log = log_text(simulated_log(setup, logged.run.simulated, log, 1929), setup.time_zone);
    return logged;
}

} // namespace ullage::test
