// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/scenario.h"

#include "support/scenario_parts.h"

#include <fmt/format.h>

#include <cstdint>
#include <utility>

namespace ullage::test {

namespace {

RunSetup started(const CompanyUnit& unit, UtcMs start_ms) {
    RunSetup setup;
    setup.unit = unit.claims;
    setup.physics = unit.physics;
    setup.gauge = unit.gauge;
    setup.start_ms = start_ms;
    setup.time_zone = "Europe/Vienna";
    setup.repeatability_percent = 0.25;
    setup.tester.display_error_percent = 1.5;
    setup.tester.first_with_powers = true;
    setup.tester.first_remark = "start, full";
    return setup;
}

RunSetup tarrow_full() {
    RunSetup setup = started(tarrow_2k(), may_2027(6, 9, 0));
    setup.meter = socket_meter_b();
    setup.load_words = "projector and sound, test reel in a loop";
    setup.ambient_c = 19;
    setup.load = LoadProfile::stepped({{1.5, 181}, {2, 179}, {1.5, 182}, {2, 178}, {1, 181}, {1, 180}});
    setup.tester.plan = plan_of("09:00", {{"09:30", "gr"},
                                          {"10:02", "gr"},
                                          {"10:31", "grm"},
                                          {"11:00", "gr", "second reel"},
                                          {"11:34", "gr"},
                                          {"12:05", "g", "lunch, gauge only"},
                                          {"12:40", "gr"},
                                          {"13:10", "grmd"},
                                          {"13:45", "gr", "third reel"},
                                          {"14:20", "gr"},
                                          {"14:52", "r"},
                                          {"15:21", "grd"},
                                          {"15:50", "gr", "reel changed"},
                                          {"16:20", "gr"},
                                          {"16:48", "gr"},
                                          {"17:10", "grm"},
                                          {"17:28", "gr"},
                                          {"17:42", "gr"},
                                          {"17:50", "gr"}});
    setup.tester.last_remark = "picture gone, output off";
    return setup;
}

RunSetup pelm_slow() {
    RunSetup setup = started(pelm_900(), may_2027(9, 8, 30));
    setup.meter = socket_meter_a();
    setup.load_words = "ticket-desk laptop and two work lights";
    setup.ambient_c = 21;
    setup.load = LoadProfile::stepped({{1.2, 65}, {1.1, 62}, {0.9, 66}}, true);
    setup.tester.plan = plan_of("08:30", {{"08:55", "gr"},
                                          {"09:20", "grm", "ticket desk only"},
                                          {"09:50", "gr"},
                                          {"10:21", "gr"},
                                          {"10:50", "grd"},
                                          {"11:20", "gr", "lights up for the fitters"},
                                          {"11:48", "gr"},
                                          {"12:20", "r", "gauge not read"},
                                          {"12:50", "gr"},
                                          {"13:21", "grmd"},
                                          {"13:50", "gr"},
                                          {"14:15", "gr"},
                                          {"14:40", "gr", "laptop charging"},
                                          {"15:00", "gr"},
                                          {"15:15", "gr"},
                                          {"15:25", "gr"}});
    setup.tester.last_remark = "lights out at 9 %";
    return setup;
}

RunSetup pelm_idle() {
    RunSetup setup = started(pelm_900(), may_2027(10, 12, 30));
    setup.meter = socket_meter_a();
    setup.kind = RunKind::no_load_drain;
    setup.load_words = "output on, nothing connected";
    setup.ambient_c = 20;
    setup.load = LoadProfile::idle();
    setup.tester.plan = plan_of("12:30", {{"13:30", "gr"},
                                          {"14:30", "gr"},
                                          {"15:45", "g"},
                                          {"17:00", "grd"},
                                          {"18:10", "gr"},
                                          {"19:30", "g", "before the show"},
                                          {"22:15", "gr", "after the show"},
                                          {"23:40", "g"},
                                          {"01:30", "gr", "night watch"},
                                          {"03:30", "g", "night watch"},
                                          {"05:30", "gr", "night watch"},
                                          {"06:20", "g"},
                                          {"06:55", "gr"},
                                          {"07:10", "g"}});
    setup.tester.last_remark = "display dark";
    return setup;
}

RunSetup pelm_fast() {
    RunSetup setup = started(pelm_900(), may_2027(11, 19, 0));
    setup.meter = socket_meter_a();
    setup.load_words = "projector, sound and work lights";
    setup.ambient_c = 18;
    setup.load = LoadProfile::stepped({{0.5, 243}, {0.7, 238}, {0.6, 241}, {0.4, 237}, {1, 240}});
    setup.tester.plan = plan_of("19:00", {{"19:10", "gr"},
                                          {"19:21", "grm", "film on"},
                                          {"19:32", "gr"},
                                          {"19:44", "gr"},
                                          {"19:55", "grd"},
                                          {"20:06", "gr"},
                                          {"20:17", "gr", "second reel"},
                                          {"20:28", "gr"},
                                          {"20:40", "gr"},
                                          {"20:51", "grm"},
                                          {"21:02", "gr"},
                                          {"21:13", "gr"},
                                          {"21:22", "gr"},
                                          {"21:29", "gr"}});
    setup.tester.last_remark = "went off in the last act, 9 % shown";
    return setup;
}

RunSetup osk_fast() {
    CompanyUnit unit = osk_1200();
    unit.gauge.sticks = {{.at_percent = 71, .hold_pt = 7, .catch_up_pt = 20}};
    RunSetup setup = started(unit, may_2027(12, 19, 15));
    setup.meter = socket_meter_a();
    setup.load_words = "projector, sound, work lights and ticket desk";
    setup.ambient_c = 17;
    setup.load = LoadProfile::stepped({{0.6, 312}, {0.8, 308}, {0.7, 311}, {1, 309}});
    setup.tester.plan = plan_of("19:15", {{"19:25", "gr"},
                                          {"19:36", "grm", "film on"},
                                          {"19:48", "gr"},
                                          {"20:00", "gr"},
                                          {"20:08", "gr"},
                                          {"20:16", "gr", "gauge not moving"},
                                          {"20:24", "gr"},
                                          {"20:35", "grd"},
                                          {"20:46", "gr", "second reel"},
                                          {"20:58", "gr"},
                                          {"21:10", "gr"},
                                          {"21:22", "grm"},
                                          {"21:35", "gr"},
                                          {"21:47", "gr"},
                                          {"22:00", "gr", "credits"},
                                          {"22:10", "gr"},
                                          {"22:17", "gr"}});
    setup.tester.last_remark = "off while packing up";
    return setup;
}

RunSetup osk_slow() {
    CompanyUnit unit = osk_1200();
    unit.gauge.sticks = {{.at_percent = 71, .hold_pt = 17, .catch_up_pt = 36}};
    RunSetup setup = started(unit, may_2027(14, 18, 0));
    setup.meter = socket_meter_a();
    setup.load_words = "work lights and ticket-desk laptop, overnight";
    setup.ambient_c = 16;
    setup.load = LoadProfile::stepped({{1.5, 65}, {1.6, 63}, {1.4, 64}, {1.1, 66}, {1.4, 62}}, true);
    setup.tester.plan = plan_of("18:00", {{"18:31", "gr"},
                                          {"19:06", "grmd"},
                                          {"19:50", "gr"},
                                          {"20:36", "gr", "film on"},
                                          {"21:20", "gr"},
                                          {"21:45", "gr"},
                                          {"22:06", "gr", "second reel"},
                                          {"22:35", "gr", "still 71"},
                                          {"23:05", "g", "gauge only"},
                                          {"23:30", "grm"},
                                          {"00:10", "gr"},
                                          {"00:40", "gr"},
                                          {"01:11", "gr", "night watch"},
                                          {"01:45", "gr"},
                                          {"02:23", "gr"},
                                          {"02:50", "gr", "night watch"},
                                          {"03:30", "r", "too dark for the gauge"},
                                          {"04:10", "gr"},
                                          {"04:53", "grd"},
                                          {"05:25", "gr"},
                                          {"05:55", "gr"},
                                          {"06:20", "gr"},
                                          {"06:40", "gr"}});
    setup.tester.last_remark = "lights out";
    return setup;
}

RunSetup tarrow_stopped() {
    RunSetup setup = started(tarrow_2k(), may_2027(16, 18, 30));
    setup.meter = socket_meter_b();
    setup.load_words = "ticket desk and film by turns";
    setup.ambient_c = 15;
    setup.load = LoadProfile::stepped({{1.25, 46}, {1.0, 238}, {0.5, 92}, {1.25, 236}, {1.5, 74}, {1.5, 242}});
    setup.tester.plan = plan_of("18:30", {{"19:00", "gr", "ticket desk only"},
                                          {"19:25", "gr"},
                                          {"19:45", "grmdL", "film on"},
                                          {"20:05", "gr"},
                                          {"20:25", "gr"},
                                          {"20:45", "grmL", "interval, lights up"},
                                          {"21:15", "grL", "second reel"},
                                          {"21:40", "gr"},
                                          {"22:05", "grd"},
                                          {"22:30", "grL", "show over, ticket desk and work lights"},
                                          {"23:00", "gr"},
                                          {"23:40", "gr"},
                                          {"00:00", "grmL", "late show"},
                                          {"00:25", "gr"}});
    setup.faults = {{.kind = FaultKind::reset_with_mark,
                     .hours = 4.75, // 23:15
                     .read_before = true,
                     .remark = "zeroed for the village's own count"}};
    setup.tester.end = RunEnd::stopped_by_tester;
    setup.tester.stop_after_h = 6.35;
    setup.tester.last_remark = "stopped, rain, the tent comes down";
    return setup;
}

RunSetup osk_found_off() {
    CompanyUnit unit = osk_1200();
    unit.gauge.sticks = {{.at_percent = 71, .hold_pt = 14, .catch_up_pt = 30}};
    RunSetup setup = started(unit, may_2027(18, 21, 30));
    setup.meter = socket_meter_b();
    setup.load_words = "work lights round the tent all night";
    setup.ambient_c = 13;
    setup.load = LoadProfile::constant(110);
    setup.tester.plan = plan_of("21:30", {{"22:00", "gr"},
                                          {"22:30", "grm"},
                                          {"23:00", "gr"},
                                          {"23:30", "gr"},
                                          {"00:00", "gr", "gauge at 71"},
                                          {"00:30", "grd", "night watch"},
                                          {"01:00", "gr"},
                                          {"01:30", "gr"},
                                          {"02:05", "gr", "night watch"},
                                          {"02:40", "gr"},
                                          {"03:20", "gr"},
                                          {"04:00", "gr", "last round"},
                                          {"04:50", "gr", "woken by rain"}});
    setup.tester.end = RunEnd::found_off;
    setup.tester.found_after_h = 1.4;
    setup.tester.last_remark = "found off at breakfast";
    return setup;
}

} // namespace

std::vector<ScenarioRun> sample_scenario() {
    struct Planned {
        const char* file_name;
        RunSetup setup;
        int number;
    };
    std::vector<Planned> planned;
    planned.push_back({"01-tarrow-2k-drain-180-w.csv", tarrow_full(), 1});
    planned.push_back({"02-pelm-900-drain-64-w.csv", pelm_slow(), 1});
    planned.push_back({"03-pelm-900-no-load-drain.csv", pelm_idle(), 2});
    planned.push_back({"04-pelm-900-drain-240-w.csv", pelm_fast(), 3});
    planned.push_back({"05-osk-1200-drain-310-w.csv", osk_fast(), 1});
    planned.push_back({"06-osk-1200-drain-64-w.csv", osk_slow(), 2});
    planned.push_back({"07-tarrow-2k-drain-stopped.csv", tarrow_stopped(), 2});
    planned.push_back({"08-osk-1200-drain-found-off.csv", osk_found_off(), 3});

    std::vector<ScenarioRun> runs;
    double register_a_wh = socket_meter_a().start_wh;
    double register_b_wh = socket_meter_b().start_wh;
    std::uint64_t seed = 1927; // any would do; the sheets under sample-data come from this one
    for (Planned& plan : planned) {
        const bool is_a = plan.setup.meter->meter.name == socket_meter_a().meter.name;
        double& register_wh = is_a ? register_a_wh : register_b_wh;
        plan.setup.meter->start_wh = register_wh;
        plan.setup.number = plan.number;
        ScenarioRun run{plan.file_name, simulate_run(plan.setup, seed++)};
        // Between the runs the meter hangs on a charger for a while.
        register_wh = run.simulated.record.readings.back().values.register_wh.value_or(register_wh) + 3;
        runs.push_back(std::move(run));
    }
    return runs;
}

std::pair<std::string, LoadList> sample_load_list() {
    LoadList list;
    list.name = "Show night";
    list.remark = "one show after dark, away from mains until noon";
    const auto add = [&list](const char* name, double power_w, double hours, double night_hours, int count = 1) -> Appliance& {
        Appliance& made = list.appliances.emplace_back();
        made.name = name;
        made.power_w = power_w;
        made.hours_per_day = hours;
        made.night_hours = night_hours;
        made.count = count;
        return made;
    };
    add("projector", 165, 2.5, 2.5).start_peak_w = 210;
    add("sound", 48, 3, 2.5).duty = 0.6;
    add("work light", 9, 4, 3, 4);
    add("ticket-desk laptop", 38, 5, 1.5).measured = MeasuredUse{61, 2.4};
    Appliance& box = add("cold box for drinks", 52, 24, 10);
    box.duty = 0.3;
    box.start_peak_w = 140;
    box.always_connected = true;
    return {"show-night.csv", list};
}

std::string truth_table(const std::vector<ScenarioRun>& runs) {
    std::string text = "| run sheet | E\\* Wh | P\\* W | delivered Wh | output on h | to cut-off Wh | usable fraction | "
                       "gauge at cut-off % | meter gain error % |\n"
                       "| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |\n";
    for (const ScenarioRun& run : runs) {
        const RunTruth& truth = run.simulated.truth;
        const std::string fraction = truth.usable_fraction ? fmt::format("{:.4f}", *truth.usable_fraction) : "";
        text += fmt::format("| {} | {:.1f} | {:.2f} | {:.1f} | {:.3f} | {:.1f} | {} | {:.1f} | {:+.1f} |\n", run.file_name, truth.deliverable_wh,
                            truth.no_load_draw_w, truth.delivered_wh, truth.output_on_h, truth.full_drain_wh, fraction,
                            truth.gauge_at_cut_off_percent, truth.gain_error_percent);
    }
    return text;
}

} // namespace ullage::test
