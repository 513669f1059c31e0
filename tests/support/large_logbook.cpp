// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/large_logbook.h"

#include "store/logbook.h"
#include "support/simulator.h"

#include <cmath>
#include <string>
#include <utility>
#include <vector>

namespace ullage::test {

namespace {

constexpr int meters = 3;

MeterSetup meter_number(int number) {
    MeterSetup setup;
    setup.meter.name = "Socket meter " + std::string(1, static_cast<char>('A' + number));
    setup.meter.step_wh = 1;
    setup.meter.limit_percent = 1;
    setup.meter.span_wh = 99'999;
    setup.gain_error_percent = 0.3 * (number - 1);
    setup.start_wh = 1000;
    return setup;
}

/// A unit whose battery, losses and label are drawn; no two are alike.
RunSetup unit_number(int number, Random& random) {
    RunSetup setup;
    const double rated_wh = 100 * std::round(random.uniform(3, 30));
    setup.unit.name = "Unit " + std::to_string(10'000 + number).substr(1);
    setup.unit.maker = "Maker " + std::to_string(number % 20);
    setup.unit.rated_energy_wh = rated_wh;
    setup.unit.rated_output_w = rated_wh;
    setup.unit.price = std::round(rated_wh * random.uniform(0.4, 0.9));
    setup.unit.currency = "EUR";
    setup.unit.mass_kg = rated_wh / random.uniform(70, 110);
    setup.unit.tags = {number % 2 == 0 ? "bought" : "lent"};
    setup.physics = {
        .battery_wh = rated_wh * random.uniform(0.88, 1.0), .p0_w = random.uniform(5, 25), .a = random.uniform(1.06, 1.14), .b_per_w = 1e-5};
    setup.repeatability_percent = 0.3;
    return setup;
}

} // namespace

Result<void> make_large_logbook(const std::filesystem::path& path, int units, int runs_each, int readings_each) {
    const SystemClock clock;
    // In memory no run waits for a disk; the copy is the same file.
    auto logbook = Logbook::in_memory(clock);
    if (!logbook) return logbook.error();
    Random random(5);
    constexpr UtcMs day_ms = 86'400'000;
    std::vector<MeterSetup> setups;
    for (int number = 0; number < meters; ++number) setups.push_back(meter_number(number));
    for (int unit = 0; unit < units; ++unit) {
        RunSetup setup = unit_number(unit, random);
        setup.meter = setups[static_cast<std::size_t>(unit % meters)];
        const UtcMs first_ms = setup.start_ms;
        for (int run = 0; run < runs_each; ++run) {
            const double share = 0.03 * std::pow(20.0, runs_each > 1 ? static_cast<double>(run) / (runs_each - 1) : 0.5);
            const double load_w = share * *setup.unit.rated_output_w;
            setup.load = LoadProfile::constant(load_w);
            setup.load_words = std::to_string(static_cast<int>(load_w)) + " W";
            setup.tester.interval_h = setup.physics.run_time_h(load_w) / readings_each;
            setup.start_ms = first_ms + 4 * day_ms * run;
            RunRecord record = simulate_run(setup, static_cast<std::uint64_t>(1000 * unit + run)).record;
            if (const auto brought = logbook.value().import_run(record); !brought) return brought.error();
        }
    }
    return logbook.value().save_copy(path);
}

} // namespace ullage::test
