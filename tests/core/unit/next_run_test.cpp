// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/next_run.h"
#include "unit/unit_drift.h"

#include "core/unit/between_runs_samples.h"
#include "unit/between_runs_predict.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

/// Drains by an exact meter, so that intervals show nothing that no drain could narrow.
std::vector<RunRecord> exact_meter(const std::vector<double>& loads_w, std::uint64_t seed) {
    std::vector<RunSetup> setups;
    for (const double load_w : loads_w) {
        setups.push_back(specimen_drain(load_w));
        setups.back().meter->meter.limit_percent = 0;
    }
    return simulate_drains(setups, seed);
}

double mean_relative_square(const UnitFit& fit) {
    double sum = 0;
    int count = 0;
    for (double load_w = 20; load_w <= 601; load_w *= std::pow(30, 1.0 / 12), ++count) {
        const LoadPrediction prediction = predict_at(fit, specimen_claims(), load_w);
        const double part = prediction.deliverable_wh.half_width().value() / *prediction.deliverable_wh.value / fit.widening;
        sum += part * part;
    }
    return sum / count;
}

TEST(NextRun, the_proposed_drain_narrows_as_much_as_promised_and_more_than_a_repeat) {
    const UnitFit before = fit_unit(exact_meter({100, 300}, 1));
    const std::optional<NextRun> next = propose_next_run(before, specimen_claims());
    ASSERT_TRUE(next);
    EXPECT_NEAR(next->expected_run_time_h, specimen.run_time_h(next->load_w), 0.15 * specimen.run_time_h(next->load_w));
    const UnitFit after = fit_unit(exact_meter({100, 300, next->load_w}, 1));
    const double made = std::sqrt(mean_relative_square(before) / mean_relative_square(after));
    EXPECT_NEAR(made, next->shrink_factor, 0.15 * next->shrink_factor);
    const double repeated = std::sqrt(mean_relative_square(before) / mean_relative_square(fit_unit(exact_meter({100, 300, 300}, 1))));
    EXPECT_GT(made, 1.3 * repeated);
}

TEST(NextRun, after_a_single_drain_the_proposed_one_is_enough_for_an_answer) {
    for (const double load_w : {15.0, 64.0, 300.0, 1200.0}) {
        std::vector<double> loads_w{load_w};
        const std::optional<NextRun> next = propose_next_run(fit_unit(simulate_loads(loads_w, 3)), specimen_claims());
        ASSERT_TRUE(next) << load_w;
        EXPECT_GE(next->load_w, 10);
        EXPECT_LE(next->load_w, 1200);
        loads_w.push_back(next->load_w);
        EXPECT_TRUE(fit_unit(simulate_loads(loads_w, 3)).parameters) << load_w << " and " << next->load_w << " W";
    }
}

TEST(NextRun, nothing_is_proposed_without_a_drain_or_when_nothing_more_would_tell) {
    EXPECT_FALSE(propose_next_run(fit_unit({}), specimen_claims()));
    std::vector<double> loads_w;
    for (int i = 0; i < 25; ++i)
        for (const double load_w : {10.0, 100.0, 1200.0}) loads_w.push_back(load_w);
    EXPECT_FALSE(propose_next_run(fit_unit(simulate_loads(loads_w, 3)), specimen_claims()));
}

TEST(NextRun, no_run_of_over_a_day_is_proposed_while_a_shorter_one_narrows) {
    for (const std::vector<double>& loads_w : {std::vector<double>{100, 300}, {300}, {600, 1200}, {64, 200, 500}}) {
        const std::optional<NextRun> next = propose_next_run(fit_unit(exact_meter(loads_w, 1)), specimen_claims());
        ASSERT_TRUE(next) << loads_w[0];
        EXPECT_LE(next->expected_run_time_h, 24) << loads_w[0];
    }
}

std::vector<RunRecord> over_a_year(const std::vector<double>& loads_w, double lost_percent, std::uint64_t seed) {
    std::vector<RunSetup> setups;
    const double steps = static_cast<double>(loads_w.size()) - 1;
    for (const double load_w : loads_w) {
        setups.push_back(specimen_drain(load_w));
        const double share = static_cast<double>(setups.size() - 1) / steps;
        setups.back().physics.battery_wh *= 1 - lost_percent / 100 * share;
        setups.back().start_ms += static_cast<UtcMs>(share * 365 * 24 * ms_per_hour);
    }
    return simulate_drains(setups, seed);
}

TEST(Drift, a_unit_that_loses_eight_percent_in_a_year_is_found_to_age) {
    int found = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Drift drift = test_drift(fit_unit(over_a_year({64, 64, 64, 64, 64}, 8, seed)), specimen_claims());
        found += drift.significant && *drift.change_wh_per_day.value < 0;
    }
    EXPECT_GE(found, 285);
}

TEST(Drift, different_loads_do_not_pass_for_ageing_nor_does_scatter) {
    for (const std::vector<double>& loads_w : {std::vector<double>{64, 66, 64, 63}, {64, 300, 60, 250}, {400, 200, 100, 50}}) {
        int alarms = 0, covered = 0;
        for (std::uint64_t seed = 1; seed <= 300; ++seed) {
            const Drift drift = test_drift(fit_unit(over_a_year(loads_w, 0, seed)), specimen_claims());
            alarms += drift.significant;
            covered += covers(drift.change_wh_per_day, 0);
        }
        // A threshold of 1 % gives 3 in 300; 9 or more would come once in 260 times.
        EXPECT_LE(alarms, 8) << loads_w[1];
        EXPECT_GE(covered, 279) << loads_w[1];
    }
}

TEST(Drift, the_loss_of_energy_is_covered_whatever_the_loads) {
    int covered = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Drift drift = test_drift(fit_unit(over_a_year({64, 300, 60, 250, 90}, 6, seed)), specimen_claims());
        // The five drains are a quarter of a year and two days apart.
        covered += covers(drift.change_wh_per_day, -0.06 * specimen.deliverable_wh() / (365 + 8));
    }
    EXPECT_GE(covered, 279);
}

TEST(Drift, is_not_known_from_two_drains_or_from_one_day) {
    const Drift two = test_drift(fit_unit(over_a_year({64, 300}, 5, 1)), specimen_claims());
    EXPECT_EQ(two.change_wh_per_day.kind, Kind::not_known);
    EXPECT_FALSE(two.significant);
    std::vector<RunRecord> records = simulate_loads({700, 800, 900}, 1);
    for (RunRecord& record : records) {
        const UtcMs shift = record.readings.front().values.time_ms - records[0].readings.front().values.time_ms;
        for (Reading& reading : record.readings) reading.values.time_ms -= shift;
    }
    const Drift one_day = test_drift(fit_unit(records), specimen_claims());
    EXPECT_EQ(one_day.change_wh_per_day.reason, "all drains were made within a day");
}

} // namespace
} // namespace ullage::test
