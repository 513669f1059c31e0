// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/specimen.h"

#include "gauge/loss_fit.h"

#include <algorithm>
#include <cmath>

namespace ullage::test {

RunSetup specimen_under(const LoadProfile& load, std::uint64_t seed) {
    RunSetup setup;
    setup.unit.uuid = UnitId("specimen");
    setup.unit.name = "Specimen";
    setup.unit.rated_energy_wh = 1050;
    setup.unit.rated_output_w = 1200;
    Random random(seed * 7919 + 17);
    setup.physics.battery_wh = random.uniform(900, 1050);
    setup.physics.p0_w = random.uniform(6, 16);
    setup.physics.a = random.uniform(1.05, 1.2);
    setup.physics.b_per_w = setup.physics.a * random.uniform(0, MeasureOptions().most_quadratic_loss) / *setup.unit.rated_output_w;
    setup.load = load;
    setup.meter->meter.uuid = MeterId("meter");
    setup.meter->meter.name = "Meter";
    setup.meter->meter.step_wh = 1;
    setup.meter->meter.limit_percent = 1;
    // Each unit is met somewhere in the life of its meter's register.
    setup.meter->start_wh = std::floor(random.uniform(0, 5000));
    setup.tester.jitter = 0.4;
    read_each(0.08, setup);
    return setup;
}

void read_each(double share, RunSetup& setup) { setup.tester.interval_h = share * Discharge(setup.physics, setup.load).end_hours(); }

const std::vector<NamedLoad>& varying_loads() {
    static const std::vector<NamedLoad> loads{
        {"slow cycling", LoadProfile::cycling(200, 10, 3, 0.3)},
        {"stepped", LoadProfile::stepped({{2, 220}, {9, 25}}, true)},
        {"idle nights", LoadProfile::stepped({{3, 110}, {8, 0}}, true)},
        {"mixed", LoadProfile::mixed(LoadProfile::cycling(70, 5, 0.8, 0.35), LoadProfile::stepped({{2.5, 180}, {6, 0}}, true))},
    };
    return loads;
}

const std::vector<NamedLoad>& steady_loads() {
    static const std::vector<NamedLoad> loads{
        {"constant", LoadProfile::constant(64)},
        {"fast cycling", LoadProfile::cycling(120, 10, 0.4, 0.4)},
        {"heavy", LoadProfile::constant(400)},
    };
    return loads;
}

std::vector<NamedLoad> all_loads() {
    std::vector<NamedLoad> loads = steady_loads();
    loads.insert(loads.end(), varying_loads().begin(), varying_loads().end());
    return loads;
}

bool has_finding(const RunAnalysis& analysis, FindingKind kind) {
    return std::ranges::any_of(analysis.gauge.findings, [kind](const Finding& finding) { return finding.kind == kind; });
}

std::string first_accusation(const RunAnalysis& analysis) {
    for (const Finding& finding : analysis.gauge.findings)
        if (finding.weight != Weight::note) return finding.sentence + " (" + finding.evidence + ")";
    return {};
}

const Quantity& quantity_of(const RunAnalysis& analysis, std::string_view key) {
    return *std::ranges::find(analysis.quantities, key, &Quantity::key);
}

Band energy_band() { return {}; }

Band duration_band() {
    Band band;
    band.most = 1;
    band.reason = "stated for two moments that are each good to a minute; the simulated tester starts on the minute and notes the end to half a "
                  "minute, well within it";
    return band;
}

} // namespace ullage::test
