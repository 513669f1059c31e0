// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/load_list.h"

#include <gtest/gtest.h>

#include <limits>

namespace ullage {
namespace {

Appliance lamp() {
    Appliance made;
    made.name = "lamp";
    made.power_w = 9;
    made.hours_per_day = 5;
    made.night_hours = 3;
    return made;
}

TEST(LoadListCheck, a_usual_appliance_is_sound_and_a_list_may_be_empty) {
    EXPECT_TRUE(check(lamp()).ok());
    LoadList list;
    list.name = "show";
    EXPECT_TRUE(check(list).ok());
    list.name.clear();
    EXPECT_EQ(check(list).error().where, "name");
}

TEST(LoadListCheck, each_wrong_figure_is_named_with_its_appliance) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const auto where = [](auto change) {
        Appliance wrong = lamp();
        change(wrong);
        const Result<void> told = check(wrong);
        return told ? std::string("sound") : told.error().where.text();
    };
    EXPECT_EQ(where([](Appliance& a) { a.name.clear(); }), "name");
    EXPECT_EQ(where([](Appliance& a) { a.power_w.reset(); }), "lamp, power");
    EXPECT_EQ(where([](Appliance& a) { a.power_w = -1; }), "lamp, power");
    EXPECT_EQ(where([&](Appliance& a) { a.power_w = nan; }), "lamp, power");
    EXPECT_EQ(where([](Appliance& a) { a.duty = 0; }), "lamp, duty");
    EXPECT_EQ(where([](Appliance& a) { a.duty = 35; }), "lamp, duty");
    EXPECT_EQ(where([](Appliance& a) { a.measured = MeasuredUse{10, 0}; }), "lamp, measured use");
    EXPECT_EQ(where([](Appliance& a) { a.measured = MeasuredUse{100, 10}; }), "lamp, measured use") << "10 W on average, of 9 W";
    EXPECT_EQ(where([](Appliance& a) { a.hours_per_day = 24.5; }), "lamp, hours per day");
    EXPECT_EQ(where([](Appliance& a) { a.night_hours = 6; }), "lamp, hours at night");
    EXPECT_EQ(where([](Appliance& a) { a.start_peak_w = 8; }), "lamp, start");
    EXPECT_EQ(where([](Appliance& a) { a.count = 0; }), "lamp, how many");
}

TEST(LoadListCheck, what_was_measured_stands_for_power_and_duty) {
    Appliance cold = lamp();
    cold.power_w.reset();
    cold.measured = MeasuredUse{500, 24};
    ASSERT_TRUE(check(cold).ok());
    EXPECT_NEAR(mean_in_use_w(cold), 500.0 / 24, 1e-12);
    EXPECT_NEAR(running_w(cold), 500.0 / 24, 1e-12);
    cold.power_w = 60;
    EXPECT_NEAR(running_w(cold), 60, 1e-12);
}

} // namespace
} // namespace ullage
