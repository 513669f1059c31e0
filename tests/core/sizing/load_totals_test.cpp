// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/load_totals.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

Appliance appliance(const char* name, double power_w, double hours_per_day, int count = 1) {
    Appliance made;
    made.name = name;
    made.power_w = power_w;
    made.hours_per_day = hours_per_day;
    made.count = count;
    return made;
}

LoadList list_of(std::vector<Appliance> appliances) {
    LoadList list;
    list.name = "list";
    list.appliances = std::move(appliances);
    return list;
}

Appliance refrigerator() {
    Appliance made = appliance("refrigerator", 60, 24);
    made.duty = 0.35;
    made.night_hours = 10;
    made.always_connected = true;
    return made;
}

TEST(LoadTotals, an_empty_list_takes_nothing_and_has_no_duty) {
    const LoadTotals totals = load_totals(list_of({}));
    EXPECT_EQ(totals.daily_wh, 0);
    EXPECT_EQ(totals.peak_w, 0);
    EXPECT_FALSE(totals.mean_on_w || totals.duty || totals.night_share);
    EXPECT_FALSE(common_load_of(list_of({})));
}

// constructed: 60 W running 35 % of the time, unit always on: mean load 21 W.
TEST(LoadTotals, a_refrigerator_that_cycles_takes_its_power_times_its_duty) {
    const LoadTotals totals = load_totals(list_of({refrigerator()}));
    EXPECT_NEAR(totals.mean_w, 21, 1e-12);
    EXPECT_NEAR(totals.mean_on_w.value(), 21, 1e-12);
    EXPECT_NEAR(totals.duty.value(), 0.35, 1e-12);
    EXPECT_NEAR(totals.daily_wh, 504, 1e-12);
    EXPECT_NEAR(totals.night_share.value(), 10.0 / 24, 1e-12);
}

TEST(LoadTotals, measured_energy_over_hours_goes_before_the_duty) {
    Appliance measured = refrigerator();
    measured.measured = MeasuredUse{500, 24};
    const LoadTotals totals = load_totals(list_of({measured}));
    EXPECT_NEAR(totals.daily_wh, 500, 1e-9);
    EXPECT_NEAR(totals.running_w, 60, 1e-12);
    EXPECT_NEAR(totals.duty.value(), 500.0 / 24 / 60, 1e-12);
    measured.power_w.reset();
    EXPECT_NEAR(load_totals(list_of({measured})).running_w, 500.0 / 24, 1e-12) << "its mean stands for a power that nobody gave";
}

TEST(LoadTotals, the_peak_is_all_that_runs_and_the_largest_surcharge_of_one_start) {
    Appliance pump = appliance("pump", 200, 1, 2);
    pump.start_peak_w = 700;
    Appliance cold = refrigerator();
    cold.start_peak_w = 300;
    const LoadTotals totals = load_totals(list_of({pump, cold, appliance("lamp", 9, 5, 4)}));
    EXPECT_NEAR(totals.running_w, 400 + 60 + 36, 1e-12);
    EXPECT_NEAR(totals.peak_w, 496 + 500, 1e-12) << "one of the two pumps starts last";
}

TEST(LoadTotals, day_and_night_share_the_energy) {
    Appliance lamp = appliance("lamp", 10, 6);
    lamp.night_hours = 2;
    const LoadTotals totals = load_totals(list_of({lamp, appliance("fan", 40, 1)}));
    EXPECT_NEAR(totals.night_wh, 20, 1e-12);
    EXPECT_NEAR(totals.night_share.value(), 0.2, 1e-12);
}

TEST(LoadTotals, the_output_is_on_for_the_longest_use_by_day_and_by_night_unless_something_is_always_connected) {
    Appliance lamp = appliance("lamp", 10, 6);
    lamp.night_hours = 6;
    Appliance fan = appliance("fan", 40, 5);
    const LoadTotals apart = load_totals(list_of({lamp, fan}));
    EXPECT_NEAR(apart.hours_on, 11, 1e-12) << "6 h by night and 5 h by day";
    EXPECT_NEAR(apart.mean_on_w.value(), 260.0 / 11, 1e-12);
    EXPECT_NEAR(apart.hours_on_most, 11, 1e-12);
    fan.night_hours = 4;
    const LoadTotals together = load_totals(list_of({lamp, fan}));
    EXPECT_NEAR(together.hours_on, 7, 1e-12);
    EXPECT_NEAR(together.hours_on_most, 11, 1e-12);
    fan.always_connected = true;
    EXPECT_NEAR(load_totals(list_of({lamp, fan})).hours_on, 24, 1e-12);
}

TEST(LoadTotals, a_list_as_a_common_load_has_its_mean_while_on_and_its_name) {
    const LoadList list = list_of({refrigerator(), appliance("lamp", 20, 6)});
    const LoadTotals totals = load_totals(list);
    const CommonLoad load = common_load_of(list).value();
    EXPECT_NEAR(load.mean_w(), totals.mean_on_w.value(), 1e-12);
    EXPECT_NEAR(load.power_w, 80, 1e-12);
    EXPECT_EQ(load.name, "list");
}

} // namespace
} // namespace ullage
