// SPDX-License-Identifier: GPL-3.0-or-later
// Sizings against a simulation of the same unit under the same list, which knows neither fit nor sizing: every change of load is followed exactly.
// Drains by a meter of ±1 %, repeatability 0.5 %, the quadratic loss drawn within its bounds.
#include "core/sizing/sizing_samples.h"
#include "core/unit/between_runs_samples.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

constexpr int seeds = 300;
/// 95 % of 300 seeds less 2.3 standard deviations of chance; as in between_runs_coverage_test.cpp.
constexpr int least_covered = seeds * 92 / 100;

/// `watts` for some hours of each day from `from_h` of the clock on, seen by a unit that begins at `start_h`.
LoadProfile daily_use(double watts, double from_h, double hours, double start_h) {
    const double from = std::fmod(from_h - start_h + 48, 24), to = from + hours;
    if (to <= 24) return LoadProfile::stepped({{from, 0}, {hours, watts}, {24 - to, 0}}, true);
    return LoadProfile::stepped({{to - 24, watts}, {24 - hours, 0}, {24 - from, watts}}, true);
}

SimulatedUnit specimen_of(Random& random) {
    SimulatedUnit truth = specimen;
    truth.b_per_w = truth.a * random.uniform(0, 0.05 / *specimen_claims().rated_output_w);
    return truth;
}

UnitFit fit_of(const SimulatedUnit& truth, std::uint64_t seed) {
    std::vector<RunSetup> setups{specimen_drain(50), specimen_drain(300)};
    for (RunSetup& setup : setups) setup.physics = truth;
    return fit_unit(simulate_drains(std::move(setups), seed));
}

TEST(SizingCoverage, a_household_is_carried_for_as_long_as_the_sizing_says_whenever_it_begins_and_uses_things) {
    Appliance lamps = sized_appliance("lamp", 9, 5, 5, 4), screen = sized_appliance("screen", 80, 3, 1);
    const LoadList list = sized_list({cycling_refrigerator(), lamps, screen});
    const double daily_wh = load_totals(list).daily_wh;
    ASSERT_NEAR(daily_wh, 504 + 180 + 240, 1e-9);
    int served = 0, lasting = 0, sharper_than_a_day = 0;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        Random random(seed + 900);
        const SimulatedUnit truth = specimen_of(random);
        const SizedUnit sized = size_unit(list, specimen_claims(), fit_of(truth, seed), {});
        // Somewhere within its hours: lamps in the night from 18:00 to 06:00, the screen for 2 h by day and 1 h at night.
        const double start_h = random.uniform(0, 24);
        const LoadProfile load = LoadProfile::mixed(
            LoadProfile::mixed(LoadProfile::cycling(60, 0, 0.7, 0.35), daily_use(36, random.uniform(18, 25), 5, start_h)),
            LoadProfile::mixed(daily_use(80, random.uniform(6, 16), 2, start_h), daily_use(80, random.uniform(18, 29), 1, start_h)));
        const Discharge drain(truth, load);
        ASSERT_TRUE(drain.reaches_cut_off());
        served += covers(sized.days, drain.at(drain.end_hours()).delivered_wh / daily_wh);
        lasting += covers(sized.lasts_h, drain.end_hours());
        sharper_than_a_day += *sized.lasts_h.upper - *sized.lasts_h.lower < 24;
    }
    EXPECT_GE(served, least_covered);
    EXPECT_GE(lasting, least_covered);
    EXPECT_EQ(sharper_than_a_day, seeds) << "an interval of a whole day would be no forecast";
}

TEST(SizingCoverage, a_steady_list_has_an_interval_that_is_neither_too_narrow_nor_too_wide) {
    Appliance pump = sized_appliance("pump", 40, 24, 12);
    pump.always_connected = true;
    const LoadList list = sized_list({pump});
    int days = 0, hours = 0;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        Random random(seed + 1700);
        const SimulatedUnit truth = specimen_of(random);
        const SizedUnit sized = size_unit(list, specimen_claims(), fit_of(truth, seed), {});
        days += covers(sized.days, truth.run_time_h(40) / 24);
        hours += covers(sized.lasts_h, truth.run_time_h(40));
    }
    // Upper end: the bounds of c are wider than most units need, as in between_runs_coverage_test.cpp.
    for (const int covered : {days, hours}) {
        EXPECT_GE(covered, least_covered);
        EXPECT_LE(covered, seeds * 995 / 1000);
    }
}

TEST(SizingCoverage, a_unit_drained_at_one_load_is_within_its_wider_expectation) {
    const LoadList list = sized_list({cycling_refrigerator()});
    int covered = 0;
    double wider = 0;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        Random random(seed + 2600);
        SimulatedUnit truth = specimen_of(random);
        truth.p0_w = truth.a * random.uniform(0, 36); // what is usual: 0 to 3 % of 1200 W
        RunSetup setup = specimen_drain(120);
        setup.physics = truth;
        setup.tester.interval_h = truth.run_time_h(120) / 12;
        const SizedUnit sized = size_unit(list, specimen_claims(), fit_unit(simulate_drains({setup}, seed)), {});
        ASSERT_EQ(sized.basis, SizingBasis::one_load);
        covered += covers(sized.days, truth.run_time_h(21) / 24);
        wider += *sized.days.lower / *sized.days.value / seeds;
    }
    EXPECT_GE(covered, least_covered);
    EXPECT_LT(wider, 0.8) << "what is not known must show";
}

} // namespace
} // namespace ullage::test
