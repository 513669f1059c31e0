// SPDX-License-Identifier: GPL-3.0-or-later
// Load lists as published, each with its source. Tolerance: sums of a few products of short decimals, so rounding only.
#include "sizing/load_totals.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

constexpr double rounding_wh = 1e-9;

Appliance appliance(const char* name, int count, double power_w, double hours_per_day) {
    Appliance made;
    made.name = name;
    made.count = count;
    made.power_w = power_w;
    made.hours_per_day = hours_per_day;
    return made;
}

LoadTotals totals_of(std::vector<Appliance> appliances) {
    LoadList list;
    list.name = "published";
    list.appliances = std::move(appliances);
    EXPECT_TRUE(check(list).ok());
    return load_totals(list);
}

// Source A: a published load list of a web tutorial on stand-alone systems (seen):
// 5 lamps x 15 W x 4 h = 300 Wh, TV 40 W x 5 h = 200 Wh, together 500 Wh a day.
TEST(PublishedLoadLists, lamps_and_a_set_of_a_tutorial_take_500_wh_a_day) {
    const LoadTotals totals = totals_of({appliance("lamp", 5, 15, 4), appliance("TV", 1, 40, 5)});
    EXPECT_NEAR(totals.appliances[0].daily_wh, 300, rounding_wh);
    EXPECT_NEAR(totals.appliances[1].daily_wh, 200, rounding_wh);
    EXPECT_NEAR(totals.daily_wh, 500, rounding_wh);
    EXPECT_NEAR(totals.mean_w, 500.0 / 24, rounding_wh);
}

// Source B: a published project sheet (seen): 10 fans x 36 W x 6 h = 2160 Wh, 10 lamps x 12 W x 6 h = 720 Wh,
// together 480 W and 2880 Wh. All run in the same 6 h, so that their mean while on is the sheet's 480 W.
TEST(PublishedLoadLists, fans_and_lamps_of_a_project_sheet_take_480_w_and_2880_wh) {
    const LoadTotals totals = totals_of({appliance("fan", 10, 36, 6), appliance("lamp", 10, 12, 6)});
    EXPECT_NEAR(totals.appliances[0].daily_wh, 2160, rounding_wh);
    EXPECT_NEAR(totals.appliances[1].daily_wh, 720, rounding_wh);
    EXPECT_NEAR(totals.running_w, 480, rounding_wh);
    EXPECT_NEAR(totals.daily_wh, 2880, rounding_wh);
    EXPECT_NEAR(totals.mean_on_w.value(), 480, rounding_wh);
    EXPECT_NEAR(totals.duty.value(), 1, 1e-12);
}

// Source D: a widely reproduced tutorial, common practice, no source: 18 W x 4 h + 60 W x 2 h + 75 W x 12 h = 1092 Wh a
// day; its inverter is chosen for 18 + 60 + 75 = 153 W. The tutorial's refrigerator runs 12 h of 24: here as a duty of one half.
TEST(PublishedLoadLists, lamp_fan_and_refrigerator_of_a_tutorial_take_1092_wh_and_153_w) {
    Appliance refrigerator = appliance("refrigerator", 1, 75, 24);
    refrigerator.duty = 0.5;
    refrigerator.always_connected = true;
    const LoadTotals totals = totals_of({appliance("lamp", 1, 18, 4), appliance("fan", 1, 60, 2), refrigerator});
    EXPECT_NEAR(totals.daily_wh, 1092, rounding_wh);
    EXPECT_NEAR(totals.running_w, 153, rounding_wh);
    EXPECT_NEAR(totals.peak_w, 153, rounding_wh) << "no start above the running power is stated";
    EXPECT_NEAR(totals.mean_w, 45.5, rounding_wh);
}

} // namespace
} // namespace ullage
