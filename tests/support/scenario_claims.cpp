// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/scenario_claims.h"

#include "support/scenario.h"
#include "support/scenario_parts.h"

#include <cmath>

namespace ullage::test {

namespace {

/// What the charger draws while the unit is `share` full: flat, then falling to a quarter.
double charger_w(double share) {
    constexpr double flat_w = 420, taper_from = 0.85;
    return share < taper_from ? flat_w : flat_w * (1 - 0.75 * (share - taper_from) / (1 - taper_from));
}

Reading note(UtcMs time_ms, std::optional<double> gauge_percent, std::optional<double> register_wh, std::optional<double> meter_w,
             const char* remark = "", std::optional<MarkKind> mark = std::nullopt) {
    Reading reading;
    reading.values = {time_ms, gauge_percent, register_wh, meter_w, std::nullopt, mark, remark};
    return reading;
}

RunRecord of_osk(RunKind kind, const MeterSetup& meter, int number) {
    RunRecord record;
    record.unit = osk_1200().claims;
    record.meter = meter.meter;
    record.run.kind = kind;
    record.run.end = RunEnd::stopped_by_tester;
    record.run.time_zone = "Europe/Vienna";
    record.number = number;
    return record;
}

double last_register(const MeterSetup& meter) {
    double register_wh = meter.start_wh;
    for (const ScenarioRun& run : sample_scenario())
        if (run.simulated.record.meter->name == meter.meter.name)
            for (const Reading& reading : run.simulated.record.readings) register_wh = reading.values.register_wh.value_or(register_wh);
    return register_wh;
}

RunRecord charge() {
    constexpr double battery_wh = 1101, charger_efficiency = 0.90, gain = 1 - 0.009, step_h = 1.0 / 3600;
    const MeterSetup meter = socket_meter_b();
    RunRecord record = of_osk(RunKind::charge, meter, 4);
    record.run.started_full = false;
    record.run.charge_source = ChargeSource::wall;
    record.run.load = "the unit's own charger at the wall of the village hall";
    record.run.ambient_c = 17;
    const UtcMs start_ms = may_2027(19, 8, 30);
    const double start_wh = last_register(meter) + 3;
    double wall_wh = 0, hours = 0, share = 0;
    int next_min = 0;
    bool over = false;
    while (!over) {
        over = share >= 1;
        if (hours * 60 + 1e-6 >= next_min || over) {
            const bool watched = next_min % 40 == 0 || over;
            record.readings.push_back(note(start_ms + std::llround(std::ceil(hours * 60 - 1e-6)) * 60'000, std::floor(100 * share),
                                           std::floor(start_wh + gain * wall_wh),
                                           watched ? std::optional(std::round(gain * charger_w(share))) : std::nullopt,
                                           next_min == 0 ? "off since the night, charger plugged in"
                                           : over        ? "shows full, charger out"
                                                         : ""));
            next_min += 20;
        }
        wall_wh += charger_w(share) * step_h;
        share = std::min(1.0, wall_wh * charger_efficiency / battery_wh);
        hours += step_h;
    }
    return record;
}

/// Loads one after the other, each held for `minutes`; the register of meter A and the gauge follow.
struct Held {
    double watts;
    int minutes;
    const char* remark;
    std::optional<MarkKind> mark; ///< in its first row
};

RunRecord carried(RunKind kind, int number, UtcMs start_ms, double start_wh, const std::vector<Held>& loads, int every_min) {
    constexpr double deliverable_wh = 1006, no_load_w = 14, gain = 1 + 0.004;
    RunRecord record = of_osk(kind, socket_meter_a(), number);
    record.run.started_full = true;
    double out_wh = 0, taken_wh = 0;
    UtcMs time_ms = start_ms;
    const auto gauge = [&] { return std::ceil(100 * (1 - taken_wh / deliverable_wh)); };
    const auto shown = [&] { return std::floor(start_wh + gain * out_wh); };
    for (const Held& load : loads) {
        record.readings.push_back(
            note(time_ms, gauge(), shown(), load.watts > 0 ? std::optional(std::round(gain * load.watts)) : std::nullopt, load.remark, load.mark));
        for (int done = 0; done < load.minutes;) {
            const int minutes = std::min(every_min, load.minutes - done);
            done += minutes;
            out_wh += load.watts * minutes / 60.0;
            taken_wh += (load.watts + no_load_w) * minutes / 60.0;
            time_ms += minutes * 60'000;
            if (done < load.minutes) record.readings.push_back(note(time_ms, gauge(), shown(), std::round(gain * load.watts)));
        }
    }
    return record;
}

RunRecord sustained(double start_wh) {
    using enum MarkKind;
    RunRecord record = carried(RunKind::sustained_output, 5, may_2027(20, 10, 0), start_wh,
                               {{400, 20, "start, full; work lights", {}},
                                {700, 20, "water boiler on low", load_changed},
                                {1004, 30, "boiler on high, at the rated output", load_changed},
                                {0, 0, "taken off, case warm, fan loud", load_changed}},
                               10);
    record.run.load = "work lights and a water boiler, beside it all the time";
    record.run.ambient_c = 18;
    return record;
}

RunRecord peak(double start_wh) {
    using enum MarkKind;
    RunRecord record = carried(RunKind::peak_output, 6, may_2027(21, 10, 0), start_wh,
                               {{1000, 4, "start, full; boiler on high", {}},
                                {1500, 3, "second boiler", load_changed},
                                {2012, 2, "heater for a moment", load_changed},
                                {2210, 1, "and the work lights", load_changed},
                                {0, 3, "output off by itself", output_tripped},
                                {400, 4, "on again, work lights only", output_reset},
                                {400, 0, "enough", {}}},
                               1);
    record.run.load = "two water boilers, a heater and work lights, switched on one by one";
    record.run.ambient_c = 18;
    return record;
}

} // namespace

std::vector<ClaimRun> sample_claim_runs() {
    const RunRecord steady = sustained(last_register(socket_meter_a()) + 3);
    const double later_wh = *steady.readings.back().values.register_wh + 3;
    return {{"09-osk-1200-charge.csv", charge()}, {"10-osk-1200-sustained-output.csv", steady}, {"11-osk-1200-peak-output.csv", peak(later_wh)}};
}

} // namespace ullage::test
