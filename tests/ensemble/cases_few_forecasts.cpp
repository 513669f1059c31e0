// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/few_forecasts.h"

#include <string>

namespace ullage::test {
namespace {

/// One kind of forecast: a family of gauges on labels that hold so many times what they say.
struct ForecastCase {
    FewFamily family;
    int readings;
    double share;
    double label_error = 1; ///< the label says so many times the truth
    ChargeBefore charge = ChargeBefore::none;
};

void forecast_runs(const ForecastCase& each, std::uint64_t from_seed, std::uint64_t seeds, Report& report) {
    std::string name = few_family_name(each.family) + ", " + std::to_string(each.readings) + " readings";
    if (each.label_error != 1) name += each.label_error < 1 ? ", label 15 % too small" : ", label 15 % too large";
    if (each.charge == ChargeBefore::to_full) name += ", charged before";
    if (each.charge == ChargeBefore::to_early_full) name += ", charged before until its gauge said full";
    for (std::uint64_t seed = from_seed; seed < from_seed + seeds; ++seed) {
        RunSetup setup = few_forecast(each.family, each.readings, each.share, seed);
        *setup.unit.rated_energy_wh *= each.label_error;
        const SimulatedRun run = simulate_run(setup, seed);
        report_few_forecast(name, each.share, setup, run, report, charged_before(each.charge, setup, run, seed));
    }
}

} // namespace

void run_few_forecasts(std::uint64_t seeds, Report& report) {
    std::uint64_t from_seed = 601'000'000;
    const auto run = [&](const ForecastCase& each) {
        forecast_runs(each, from_seed, seeds, report);
        from_seed += 1'000'000;
    };
    for (const FewFamily family : few_families)
        for (const int readings : {2, 3, 5, 20})
            for (const double share : {0.2, 0.5, 0.8}) run({family, readings, share});
    for (const FewFamily family : few_families)
        for (const int readings : {3, 20})
            for (const double share : {0.2, 0.5, 0.8}) run({family, readings, share, 1, ChargeBefore::to_full});
    for (const FewFamily family : few_families)
        for (const int readings : {3, 20}) run({family, readings, 0.5, 1, ChargeBefore::to_early_full});
    // Labels err too.
    for (const double label_error : {1 / 1.15, 1.15})
        for (const FewFamily family : {FewFamily::honest, FewFamily::bent, FewFamily::blind})
            for (const int readings : {3, 20})
                for (const double share : {0.2, 0.5, 0.8}) run({family, readings, share, label_error});
}

} // namespace ullage::test
