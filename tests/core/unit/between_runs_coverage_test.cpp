// SPDX-License-Identifier: GPL-3.0-or-later
// Intervals against the truth of simulated units: gain drawn within ±1 %, repeatability 0.5 %, register in steps of 1 Wh, the
// quadratic loss drawn within its bounds.
#include "core/unit/between_runs_samples.h"
#include "unit/between_runs_predict.h"

#include <gtest/gtest.h>

#include <functional>

namespace ullage::test {
namespace {

constexpr int seeds = 300;

struct Coverage {
    int e_star = 0, p_star = 0, endurance = 0, between = 0, run_time = 0;
};

using MakeSetups = std::function<std::vector<RunSetup>(std::uint64_t)>;
constexpr double highest_curvature_per_w = 0.05 / 1200; ///< at the rated output of the specimen

std::vector<RunSetup> at_loads(const std::vector<double>& loads_w) {
    std::vector<RunSetup> setups;
    for (const double load_w : loads_w) setups.push_back(specimen_drain(load_w));
    return setups;
}

/// `curvature_per_w` absent: drawn uniformly within the bounds.
Coverage coverage_of(const MakeSetups& make, std::optional<double> curvature_per_w = std::nullopt) {
    constexpr double between_w = 120;
    Coverage hits;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        Random random(seed + 5000);
        SimulatedUnit truth = specimen;
        truth.b_per_w = truth.a * curvature_per_w.value_or(random.uniform(0, highest_curvature_per_w));
        std::vector<RunSetup> setups = make(seed);
        for (RunSetup& setup : setups) setup.physics = truth;
        const UnitFit fit = fit_unit(simulate_drains(std::move(setups), seed));
        const LoadPrediction prediction = predict_at(fit, specimen_claims(), between_w);
        hits.e_star += covers(fit.deliverable_at_no_time_cost_wh, truth.deliverable_wh());
        hits.p_star += covers(fit.no_load_draw_w, truth.no_load_draw_w());
        hits.endurance += covers(fit.no_load_endurance_h, truth.run_time_h(0));
        hits.between += covers(prediction.deliverable_wh, truth.delivered_wh(between_w));
        hits.run_time += covers(prediction.run_time_h, truth.run_time_h(between_w));
    }
    return hits;
}

/// 93 to 99.5 % of the seeds: what is asked of 95 % intervals, and a little above where the bounds of c, which are wider than most
/// units need, carry weight.
void expect_honest(const char* name, const Coverage& hits, int least = seeds * 93 / 100) {
    const int most = seeds * 995 / 1000;
    for (const auto& [what, count] : {std::pair{"E*", hits.e_star},
                                      {"P*", hits.p_star},
                                      {"E*/P*", hits.endurance},
                                      {"D at 120 W", hits.between},
                                      {"T at 120 W", hits.run_time}}) {
        EXPECT_GE(count, least) << name << ", " << what;
        EXPECT_LE(count, most) << name << ", " << what;
    }
}

TEST(BetweenRunsCoverage, two_drains_cover_the_truth_as_often_as_they_claim) {
    expect_honest("two drains", coverage_of([](std::uint64_t) { return at_loads({50, 300}); }));
}

TEST(BetweenRunsCoverage, four_drains_cover_the_truth_as_often_as_they_claim) {
    expect_honest("four drains", coverage_of([](std::uint64_t) { return at_loads({25, 80, 250, 600}); }));
}

TEST(BetweenRunsCoverage, a_no_load_drain_and_a_drain_cover_the_truth_as_often_as_they_claim) {
    expect_honest("idle and 200 W", coverage_of([](std::uint64_t) { return at_loads({0, 200}); }));
}

TEST(BetweenRunsCoverage, drains_by_two_meters_cover_the_truth_as_often_as_they_claim) {
    expect_honest("two meters", coverage_of([](std::uint64_t) {
                      std::vector<RunSetup> setups{specimen_drain(40), specimen_drain(90), specimen_drain(350)};
                      setups[1].meter->meter.uuid = MeterId("other meter");
                      setups[1].meter->meter.limit_percent = 2;
                      return setups;
                  }));
}

TEST(BetweenRunsCoverage, drains_found_off_cover_the_truth_as_often_as_they_claim) {
    expect_honest("found off", coverage_of([](std::uint64_t seed) {
                      std::vector<RunSetup> setups{specimen_drain(50), specimen_drain(300)};
                      Random random(seed + 77);
                      // A load that changes, so that the register cannot narrow the bracket; found at any time within it.
                      setups[0].load = LoadProfile::stepped({{1, 30}, {1, 70}}, true);
                      setups[0].tester.end = RunEnd::found_off;
                      setups[0].tester.found_after_h = random.uniform(0.1, 2.5);
                      return setups;
                  }));
}

TEST(BetweenRunsCoverage, a_unit_at_either_bound_of_the_curvature_is_still_covered) {
    // The worst units for the bounds: they cost up to 3 % of coverage (92 % over 2000 seeds), less 1.6 % for chance in 300.
    for (const double curvature_per_w : {0.0, highest_curvature_per_w})
        expect_honest(curvature_per_w > 0 ? "upper bound" : "no curvature",
                      coverage_of(
                          [](std::uint64_t) {
                              return at_loads({25, 80, 250, 600});
                          },
                          curvature_per_w),
                      seeds * 905 / 1000);
}

TEST(BetweenRunsCoverage, scatter_beyond_the_stated_repeatability_widens_the_intervals) {
    int covered = 0, widened = 0;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        std::vector<RunSetup> setups;
        for (const double load_w : {25.0, 25.0, 80.0, 80.0, 250.0, 250.0, 600.0, 600.0}) {
            setups.push_back(specimen_drain(load_w));
            setups.back().repeatability_percent = 2;
        }
        const UnitFit fit = fit_unit(simulate_drains(setups, seed));
        covered += covers(fit.no_load_draw_w, specimen.no_load_draw_w());
        widened += fit.widening > 1.5;
    }
    // Four times the stated repeatability: without widening the interval of P* would cover in under half of the cases.
    EXPECT_GE(covered, seeds * 93 / 100);
    EXPECT_GE(widened, seeds * 95 / 100);
}

} // namespace
} // namespace ullage::test
