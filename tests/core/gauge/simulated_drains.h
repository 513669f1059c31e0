// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/findings_within.h"
#include "support/simulator.h"

#include <algorithm>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace ullage::test {

/// A simulated full drain of a unit with 1050 Wh on its label, a register of 1 Wh steps and a reading about every 0.8 h. The
/// unit's losses are drawn by the seed: own draw 6 to 16 W, 5 to 20 % with the load, quadratic part up to 0.08 of the load at rated output.
inline RunSetup drain_under(const LoadProfile& load, int seed) {
    RunSetup setup;
    setup.unit.name = "Specimen";
    setup.unit.rated_energy_wh = 1050;
    setup.unit.rated_output_w = 1200;
    Random random(static_cast<std::uint64_t>(seed) * 7919);
    setup.physics.battery_wh = 1000;
    setup.physics.p0_w = random.uniform(6, 16);
    setup.physics.a = random.uniform(1.05, 1.2);
    setup.physics.b_per_w = setup.physics.a * random.uniform(0, 0.08) / 1200;
    setup.load = load;
    setup.meter->meter.step_wh = 1;
    setup.meter->meter.limit_percent = 1;
    setup.tester.interval_h = 0.8;
    setup.tester.jitter = 0.4;
    return setup;
}

using NamedLoad = std::pair<std::string, LoadProfile>;

/// Loads that tell time and energy apart.
inline std::vector<NamedLoad> varying_loads() {
    return {{"slow cycling", LoadProfile::cycling(200, 10, 3, 0.3)},
            {"stepped", LoadProfile::stepped({{2, 220}, {9, 25}}, true)},
            {"idle nights", LoadProfile::stepped({{3, 110}, {8, 0}}, true)}};
}

/// Loads that do not: steady, or cycling faster than they are read.
inline std::vector<NamedLoad> steady_loads() {
    return {{"constant", LoadProfile::constant(64)}, {"fast cycling", LoadProfile::cycling(120, 10, 0.9, 0.4)}};
}

inline std::vector<NamedLoad> all_loads() {
    std::vector<NamedLoad> loads = varying_loads();
    for (NamedLoad& load : steady_loads()) loads.push_back(std::move(load));
    loads.emplace_back("heavy", LoadProfile::constant(400));
    return loads;
}

/// What the findings of findings_within.h say of a run.
inline std::vector<Finding> findings_within(const RunRecord& record) {
    const EnergyAnalysis energy = analyse_energy(record);
    const MeasureOptions options;
    const GaugeEvidence evidence = gather_evidence(record, energy, options);
    std::vector<Finding> findings;
    find_bent(evidence, findings);
    find_coarse(evidence, findings);
    find_found_off(evidence, findings);
    find_infeasible(evidence, findings);
    find_omits_own_consumption(evidence, findings);
    return findings;
}

inline const Finding* finding_of(const std::vector<Finding>& findings, FindingKind kind) {
    const auto place = std::ranges::find(findings, kind, &Finding::kind);
    return place == findings.end() ? nullptr : &*place;
}

} // namespace ullage::test
