// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sizing/sizing_samples.h"
#include "support/has_text.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

TEST(ChargeCourse, the_sun_brings_half_of_its_energy_by_noon_and_nothing_in_the_dark) {
    EXPECT_NEAR(daylight_share(0, 12, 12), 0.5, 1e-12);
    EXPECT_NEAR(daylight_share(0, 24, 12), 1, 1e-12);
    EXPECT_NEAR(daylight_share(0, 6, 12), 0, 1e-12);
    EXPECT_NEAR(daylight_share(18, 24, 12), 0, 1e-12);
    EXPECT_NEAR(daylight_share(8, 16, 12), 0.8660254038, 1e-9) << "cos 30°: from 2/12 to 10/12 of the half sine";
}

TEST(ChargeCourse, without_sun_a_steady_list_empties_the_unit_when_its_days_are_over) {
    const LoadList list = sized_list({cycling_refrigerator()});
    const SizedUnit sized = size_unit(list, sized_specimen(), exact_fit(), {});
    const ChargeCourse course = charge_course(load_totals(list), sized, {}).value();
    ASSERT_EQ(course.points.size(), 73U);
    EXPECT_EQ(course.points.front().without_pv_percent, 100);
    EXPECT_NEAR(course.points[12].without_pv_percent, 100 * (1 - 12 / 37.571444), 1e-4);
    EXPECT_NEAR(course.empty_without_pv_h.value(), 37.571444, 1e-4);
    EXPECT_EQ(course.points.back().without_pv_percent, 0);
    SizingChoices pair;
    pair.units = 2;
    const ChargeCourse two = charge_course(load_totals(list), sized, pair).value();
    EXPECT_NEAR(two.empty_without_pv_h.value(), 24 * 2 * 919.94635 / (504 + 2 * 24 * 3.4852547), 1e-3) << "twice the content, twice the own draw";
}

TEST(ChargeCourse, an_array_by_the_rule_carries_the_list_and_a_weak_input_clips_it) {
    const LoadList list = sized_list({cycling_refrigerator()});
    SizingChoices choices;
    const SizedUnit sized = size_unit(list, sized_specimen(), exact_fit(), choices);
    // 1.2 × 504/0.9 = 672 Wh a day to the battery, 604.8 Wh at the socket, against 587.6 Wh that list and own draw take.
    const ChargeCourse course = charge_course(load_totals(list), sized, choices).value();
    EXPECT_FALSE(course.empty_with_pv_h);
    EXPECT_EQ(course.unserved_wh, 0);
    EXPECT_EQ(course.clipped_wh, 0);
    SizedUnit weak = sized;
    weak.unit.pv_max_w = 20;
    const ChargeCourse clipped = charge_course(load_totals(list), weak, choices).value();
    EXPECT_GT(clipped.clipped_wh, 3 * (672 - 12 * 20) - 1);
    EXPECT_TRUE(clipped.empty_with_pv_h);
    // What is not served: the list of three days less what content and PV paid for, less the part that the own draw took.
    EXPECT_GT(clipped.unserved_wh, 0);
    EXPECT_LT(clipped.unserved_wh, 3 * 504.0);
}

TEST(ChargeCourse, energy_is_neither_made_nor_lost) {
    const LoadList list = sized_list({cycling_refrigerator(), sized_appliance("lamp", 30, 5, 5)});
    SizingChoices choices;
    choices.array_w = 300;
    const SizedUnit sized = size_unit(list, sized_specimen(), exact_fit(), choices);
    const LoadTotals totals = load_totals(list);
    const ChargeCourse course = charge_course(totals, sized, choices).value();
    ASSERT_FALSE(course.empty_with_pv_h);
    const double gained_wh = (3 * 300 * 4 * 0.75 - course.surplus_wh - course.clipped_wh) * 0.9;
    const double spent_wh = 3 * (totals.daily_wh + 24 * 3.4852547);
    const double left_wh = 919.94635 * course.points.back().with_pv_percent / 100;
    EXPECT_NEAR(919.94635 + gained_wh - spent_wh, left_wh, 1e-3);
    EXPECT_GT(course.surplus_wh, 0) << "the first days begin full";
}

TEST(ChargeCourse, night_use_falls_into_the_night_of_the_list) {
    const LoadList list = sized_list({sized_appliance("lamp", 10, 6, 6)});
    const SizedUnit sized = size_unit(list, sized_specimen(), exact_fit(), {});
    const ChargeCourse course = charge_course(load_totals(list), sized, {}).value();
    EXPECT_LT(course.points[6].without_pv_percent, 100);
    EXPECT_NEAR(course.points[6].without_pv_percent, course.points[18].without_pv_percent, 1e-12) << "nothing by day: the output is off";
    EXPECT_LT(course.points[24].without_pv_percent, course.points[18].without_pv_percent);
}

TEST(Sizing, assumptions_are_said_and_cautions_name_what_can_hurt) {
    const Unit untested = sized_specimen();
    const UnitFit none;
    Unit limited = sized_specimen();
    limited.pv_max_w = 100;
    const Sizing sizing = size_for(sized_list({sized_appliance("lamp", 50, 10, 10)}), {{&untested, &none, nullptr}, {&limited, &none, nullptr}}, {});
    const auto says = [&](const char* words) {
        return std::ranges::any_of(sizing.remarks, [&](const std::string& remark) { return contains(remark, words); });
    };
    EXPECT_TRUE(says("The output is on for 10.0 h a day"));
    EXPECT_TRUE(says("an expectation, not a measurement"));
    EXPECT_TRUE(says("takes at most 100 W of the array's 222 W"));
    const auto cautions = sizing_cautions();
    EXPECT_TRUE(std::ranges::any_of(cautions, [](const std::string& words) { return contains(words, "licensed electrician"); }));
}

} // namespace
} // namespace ullage::test
