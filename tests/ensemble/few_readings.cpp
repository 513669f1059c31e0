// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/few_readings.h"

#include <algorithm>
#include <cmath>

namespace ullage::test {

std::string few_family_name(FewFamily family) {
    switch (family) {
    case FewFamily::honest: return "honest gauge";
    case FewFamily::bent: return "bent by up to 25 pt";
    case FewFamily::ends_early: return "ends at up to 20 %";
    case FewFamily::lingers: return "lingers for up to 20 %";
    case FewFamily::offset: return "offset by up to 10 pt";
    case FewFamily::blind: return "blind to own consumption";
    case FewFamily::stuck: return "stuck for up to 20 pt";
    case FewFamily::jumping: return "stuck, then jumps";
    case FewFamily::rebounding: break;
    }
    return "rebounding by up to 8 pt";
}

GaugeLaw few_family_gauge(FewFamily family, const RunSetup& setup, Random& random) {
    GaugeLaw law;
    switch (family) {
    case FewFamily::honest:
        if (random.chance(0.5)) law.counts = GaugeCounts::charge;
        break;
    case FewFamily::bent: law.bend_pt = random.uniform(-25, 25); break;
    case FewFamily::ends_early: law.ends_at_percent = random.uniform(0, 20); break;
    case FewFamily::lingers:
        law.reserve_wh = random.uniform(0.005, 0.2) * Discharge(setup.physics, setup.load).nodes().back().delivered_wh;
        law.linger_percent = random.chance(0.5) ? 0 : 1;
        break;
    case FewFamily::offset: law.offset_pt = random.uniform(-10, 10); break;
    case FewFamily::blind: law.counts = GaugeCounts::delivered_energy; break;
    case FewFamily::stuck: law.sticks = {{random.uniform(30, 100), random.uniform(4, 20), random.uniform(4, 10)}}; break;
    case FewFamily::jumping: law.sticks = {{random.uniform(25, 100), random.uniform(4, 20), 0}}; break;
    case FewFamily::rebounding:
        law.rebound_pt = random.uniform(2, 8);
        law.rebound_drop_w = 40;
        break;
    }
    return law;
}

const std::vector<NamedLoad>& few_loads() {
    static const std::vector<NamedLoad> loads{
        {"constant", LoadProfile::constant(64)},
        {"trickle", LoadProfile::constant(16)},
        {"heavy", LoadProfile::constant(400)},
        {"fast cycling", LoadProfile::cycling(120, 10, 0.4, 0.4)},
        {"stepped early", LoadProfile::stepped({{1.2, 200}, {1, 50}})},
    };
    return loads;
}

RunSetup few_readings_under(const LoadProfile& load, std::uint64_t seed) {
    RunSetup setup = specimen_under(load, seed);
    Random random(seed * 31 + 7);
    setup.physics.b_per_w = setup.physics.a * random.uniform(0, 0.05) / *setup.unit.rated_output_w;
    setup.meter->meter.step_wh = random.chance(0.4) ? 10 : 1;
    setup.meter->start_wh = *setup.meter->meter.step_wh * std::floor(setup.meter->start_wh / *setup.meter->meter.step_wh);
    return setup;
}

void spread_readings(int readings, double until_h, Random& random, RunSetup& setup) {
    setup.tester.plan.clear();
    const int between = readings - 2;
    std::vector<double> hours;
    for (int i = 0; i < between; ++i) hours.push_back(until_h * (i + 1 + random.uniform(-0.35, 0.35)) / (between + 1));
    std::ranges::sort(hours);
    for (const double at : hours) {
        PlannedReading reading;
        reading.hours = at;
        setup.tester.plan.push_back(reading);
    }
    // An empty plan would read by the hour.
    if (hours.empty()) {
        setup.tester.interval_h = 2 * until_h;
        setup.tester.jitter = 0;
    }
}

} // namespace ullage::test
