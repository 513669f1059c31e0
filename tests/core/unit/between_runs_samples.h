// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/simulator.h"
#include "unit/between_runs.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace ullage::test {

/// A unit with a moderate draw and a quadratic loss within what is common practice (c = 3.6e-5 of at most 4.2e-5 1/W).
inline const SimulatedUnit specimen{.battery_wh = 1000, .p0_w = 12, .a = 1.12, .b_per_w = 4e-5};

inline Unit specimen_claims() {
    Unit unit;
    unit.uuid = UnitId("specimen");
    unit.name = "Specimen";
    unit.rated_energy_wh = 1050;
    unit.rated_output_w = 1200;
    return unit;
}

/// One full drain of the specimen under a steady load (0: no-load drain) with some twelve readings, by a meter of ±1 %.
inline RunSetup specimen_drain(double load_w) {
    RunSetup setup;
    setup.unit = specimen_claims();
    setup.physics = specimen;
    setup.load = LoadProfile::constant(load_w);
    setup.kind = load_w > 0 ? RunKind::drain : RunKind::no_load_drain;
    setup.meter->meter.uuid = MeterId("meter");
    setup.meter->meter.name = "Meter";
    setup.meter->meter.step_wh = 1;
    setup.meter->meter.limit_percent = 1;
    setup.meter->meter.load_part_percent = 0; // calibrated at its loads
    setup.tester.interval_h = specimen.run_time_h(load_w) / 12;
    setup.repeatability_percent = 0.5;
    return setup;
}

/// Simulates the setups one after the other with one gain error for each meter, drawn within its limit. A day apart.
inline std::vector<RunRecord> simulate_drains(std::vector<RunSetup> setups, std::uint64_t seed) {
    Random random(seed);
    std::vector<std::pair<MeterId, double>> gains;
    std::vector<RunRecord> records;
    for (RunSetup& setup : setups) {
        const MeterId& meter = setup.meter->meter.uuid;
        std::optional<double> gain;
        for (const auto& [uuid, percent] : gains)
            if (uuid == meter) gain = percent;
        if (!gain) {
            const double limit = setup.meter->meter.limit_percent.value_or(1);
            gains.emplace_back(meter, random.uniform(-limit, limit));
            gain = gains.back().second;
        }
        setup.meter->gain_error_percent = gain;
        setup.start_ms += static_cast<UtcMs>(records.size()) * 48 * 3'600'000;
        setup.number = static_cast<int>(records.size()) + 1;
        records.push_back(simulate_run(setup, 1000 * seed + records.size()).record);
    }
    return records;
}

inline std::vector<RunRecord> simulate_loads(const std::vector<double>& loads_w, std::uint64_t seed) {
    std::vector<RunSetup> setups;
    for (const double load_w : loads_w) setups.push_back(specimen_drain(load_w));
    return simulate_drains(std::move(setups), seed);
}

inline bool covers(const Quantity& quantity, double truth) {
    return quantity.lower && *quantity.lower <= truth && (!quantity.upper || truth <= *quantity.upper);
}

} // namespace ullage::test
