// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/few_drains.h"

#include <string>

namespace ullage::test {
namespace {

void drains_of_each_family(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 701'000'000;
    for (const FewFamily family : few_families)
        for (const int readings : {2, 3, 5, 20}) {
            const std::string name = few_family_name(family) + ", " + std::to_string(readings) + " readings";
            for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                const RunSetup setup = few_drain(family, readings, seed);
                report_few_drain(name, family, setup, simulate_run(setup, seed), report);
            }
            offset += 1'000'000;
        }
}

void slips_in_honest_gauges(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 751'000'000;
    for (const int readings : {3, 5, 8, 20}) {
        const std::string name = "gauge reading mistyped, " + std::to_string(readings) + " readings";
        for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
            RunSetup setup = few_drain(FewFamily::honest, readings, seed);
            SimulatedRun run = simulate_run(setup, seed);
            Random random(seed + 41);
            auto& noted = run.record.readings;
            auto& gauge = noted[1 + random.index(noted.size() - 2)].values.gauge_percent;
            if (!gauge) continue;
            const double slip = mistyped(*gauge, 3, random);
            if (slip > 100) continue; // refused at entry
            gauge = slip;
            const RunAnalysis analysis = analyse_run(run.record);
            report.honest(name, !gauge_accusation(analysis).empty(), gauge_accusation(analysis));
        }
        offset += 1'000'000;
    }
}

} // namespace

void run_few_runs(std::uint64_t seeds, Report& report) {
    drains_of_each_family(seeds, report);
    slips_in_honest_gauges(seeds, report);
}

} // namespace ullage::test
