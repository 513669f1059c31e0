// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/stand_alone_rules.h"

#include <gtest/gtest.h>

#include <limits>

namespace ullage {
namespace {

TEST(StandAloneRules, each_month_with_stated_sun_has_its_energy_and_margin) {
    SizingChoices choices;
    choices.array_w = 300;
    choices.month_sun_hours[0] = 2;
    choices.month_sun_hours[6] = 6;
    const PvArray array = pv_array(600, choices);
    EXPECT_NEAR(array.by_rule_w, 1.2 * 666.6666667 / 3, 1e-6);
    EXPECT_NEAR(array.daily_wh, 900, 1e-9);
    const std::vector<PvMonth> months = pv_months(array, choices);
    ASSERT_EQ(months.size(), 2U);
    EXPECT_EQ(months[0].month, 1);
    EXPECT_NEAR(months[0].daily_wh, 450, 1e-9);
    EXPECT_NEAR(months[0].margin_wh, 450 - 600 / 0.9, 1e-9) << "a dark month misses the need";
    EXPECT_NEAR(months[0].array_to_load.value(), 0.675, 1e-9);
    EXPECT_EQ(months[1].month, 7);
    EXPECT_NEAR(months[1].margin_wh, 1350 - 600 / 0.9, 1e-9);
}

TEST(StandAloneRules, a_load_of_nothing_needs_no_array_and_has_no_ratio) {
    EXPECT_EQ(pv_array(0, {}).by_rule_w, 0);
    EXPECT_FALSE(pv_array(0, {}).array_to_load);
    EXPECT_EQ(battery_by_rule(0, {}).nameplate_wh, 0);
}

TEST(SizingChoices, a_number_out_of_range_is_named_with_what_it_may_be) {
    EXPECT_TRUE(check(SizingChoices{}).ok());
    SizingChoices choices;
    choices.derating = 1.2;
    ASSERT_FALSE(check(choices).ok());
    EXPECT_EQ(check(choices).error().sentence(), "derating: 1.2 is out of range; state a number above 0 to 1");
    choices = {};
    choices.peak_sun_hours = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(check(choices).error().where, "peak-sun hours");
    choices = {};
    choices.month_sun_hours[11] = 16;
    EXPECT_EQ(check(choices).error().where, "peak-sun hours of month 12");
    choices = {};
    choices.expected_lower = 0.9;
    EXPECT_FALSE(check(choices).ok());
}

} // namespace
} // namespace ullage
