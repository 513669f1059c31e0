// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/specimen.h"

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

namespace ullage::test {
namespace {

/// A gauge that is right, in a way of its own: nobody may accuse it.
struct HonestGauge {
    std::string name;
    GaugeLaw law;
    double stated_step_percent = 1;
};

std::vector<HonestGauge> honest_gauges() {
    std::vector<HonestGauge> gauges{
        {"energy-counting", {}}, {"charge-counting", {}}, {"noisy by 0.3 pt", {}}, {"5 % steps, stated", {}, 5}, {"20 % steps, stated", {}, 20}};
    gauges[1].law.counts = GaugeCounts::charge;
    gauges[2].law.noise_pt = 0.3;
    gauges[3].law.step_percent = 5;
    gauges[4].law.step_percent = 20;
    return gauges;
}

void leave_honest_gauges_in_peace(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 101'000'000;
    for (const HonestGauge& gauge : honest_gauges())
        for (const auto& [load_name, load] : all_loads()) {
            for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                RunSetup setup = specimen_under(load, seed);
                setup.gauge = gauge.law;
                setup.unit.gauge_step_percent = gauge.stated_step_percent;
                const RunAnalysis analysis = analyse_run(simulate_run(setup, seed).record);
                const std::string accusation = first_accusation(analysis);
                report.honest("honest: " + gauge.name, !accusation.empty(), load_name + ": " + accusation);
            }
            offset += 1'000'000;
        }
}

/// A fault of at least twice what the readings resolve (two gauge steps, the interval between two readings, or the threshold of the
/// finding), planted under a load and with readings that show it, and the findings any of which names it.
struct PlantedGauge {
    std::string name;
    GaugeLaw law;
    LoadProfile load = LoadProfile::constant(64);
    double read_share = 0.08;
    std::vector<FindingKind> names_it;
};

PlantedGauge planted(std::string name, FindingKind kind, const std::function<void(GaugeLaw&)>& change) {
    PlantedGauge result;
    result.name = std::move(name);
    result.names_it = {kind};
    change(result.law);
    return result;
}

std::vector<PlantedGauge> planted_gauges() {
    std::vector<PlantedGauge> gauges;
    gauges.push_back(planted("stuck for 12 pt, read each 4 pt", FindingKind::stuck, [](GaugeLaw& law) { law.sticks = {{71, 12, 3}}; }));
    gauges.back().read_share = 0.04;
    gauges.push_back(planted("jumps by 10 pt, read each 4 pt", FindingKind::jump, [](GaugeLaw& law) { law.sticks = {{64, 10, 0}}; }));
    gauges.back().read_share = 0.04;
    gauges.push_back(planted("held at full for 12 pt, read each 4 pt", FindingKind::held_at_full, [](GaugeLaw& law) {
        law.sticks = {{100, 12, 20}};
    }));
    gauges.back().read_share = 0.04;
    gauges.push_back(planted("stuck for 25 pt: infeasible", FindingKind::infeasible, [](GaugeLaw& law) { law.sticks = {{71, 25, 0}}; }));
    gauges.back().names_it.push_back(FindingKind::outside_shares); // the larger of the two bounds is told
    for (const auto& [load_name, load] : all_loads()) {
        gauges.push_back(planted("bent by 12 pt, " + load_name, FindingKind::bent, [](GaugeLaw& law) { law.bend_pt = 12; }));
        // Two heavy hours before nine light ones look much like a bend, so that some are called wrong whatever the losses instead.
        if (load_name == "stepped") gauges.back().names_it.push_back(FindingKind::infeasible);
        gauges.back().load = load;
        gauges.back().read_share = 0.04; // a load of long periods needs more readings to tell its shape from the gauge's
    }
    gauges.push_back(planted("bent by -12 pt, constant", FindingKind::bent, [](GaugeLaw& law) { law.bend_pt = -12; }));
    gauges.push_back(planted("offset by +8 pt", FindingKind::stopped_early, [](GaugeLaw& law) { law.offset_pt = 8; }));
    gauges.push_back(planted("offset by -8 pt, closing readings", FindingKind::hidden_reserve, [](GaugeLaw& law) { law.offset_pt = -8; }));
    gauges.back().read_share = 0.03;
    gauges.push_back(planted("ends at 8 %", FindingKind::stopped_early, [](GaugeLaw& law) { law.ends_at_percent = 8; }));
    gauges.push_back(planted("lingers: 70 Wh at 1 %", FindingKind::hidden_reserve, [](GaugeLaw& law) { law.reserve_wh = 70; }));
    gauges.back().read_share = 0.03;
    gauges.push_back(planted("rebounds by 8 pt", FindingKind::rebound, [](GaugeLaw& law) {
        law.rebound_pt = 8;
        law.rebound_fades_h = 6;
    }));
    gauges.back().load = LoadProfile::stepped({{3, 220}, {2, 20}}, true);
    gauges.back().read_share = 0.02;
    gauges.push_back(planted("5 % steps, stated as 1 %", FindingKind::coarse, [](GaugeLaw& law) { law.step_percent = 5; }));
    gauges.back().read_share = 0.03;
    gauges.push_back(planted("20 % steps, stated as 1 %", FindingKind::coarse, [](GaugeLaw& law) { law.step_percent = 20; }));
    gauges.back().read_share = 0.03;
    for (const std::size_t load : {std::size_t{1}, std::size_t{2}}) {
        gauges.push_back(planted("blind to own consumption, " + varying_loads()[load].first, FindingKind::omits_own_consumption,
                                 [](GaugeLaw& law) { law.counts = GaugeCounts::delivered_energy; }));
        gauges.back().load = varying_loads()[load].second;
        // Not denser: such a gauge has no quadratic part at all, the end of what the loss fit allows for, and an interval that is nearly all
        // that allowance (0.95 of the limit) would leave the end out.
        gauges.back().read_share = 0.03;
    }
    return gauges;
}

void find_planted_gauges(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 201'000'000;
    for (const PlantedGauge& gauge : planted_gauges()) {
        for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
            RunSetup setup = specimen_under(gauge.load, seed);
            setup.gauge = gauge.law;
            read_each(gauge.read_share, setup);
            const RunAnalysis analysis = analyse_run(simulate_run(setup, seed).record);
            const bool found = std::ranges::any_of(gauge.names_it, [&](FindingKind kind) { return has_finding(analysis, kind); });
            std::string names;
            for (const FindingKind kind : gauge.names_it) names += (names.empty() ? "" : " or ") + std::string(finding_key(kind));
            report.planted(gauge.name, names, found,
                           "seed " + std::to_string(seed) + ", no-load draw within the run " +
                               quantity_text(quantity_of(analysis, "no_load_draw_w")) + ", " + analysis.gauge.verdict);
        }
        offset += 1'000'000;
    }
}

} // namespace

void run_gauges(std::uint64_t seeds, Report& report) {
    leave_honest_gauges_in_peace(seeds, report);
    find_planted_gauges(seeds, report);
}

} // namespace ullage::test
