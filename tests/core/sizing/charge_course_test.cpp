// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sizing/sizing_samples.h"
#include "support/has_text.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage::test {
namespace {

/// With the array that the rule asks of the list and the unit's own draw.
ChargeCourse course_of(const LoadList& list, const SizedUnit& sized, const SizingChoices& choices) {
    const LoadTotals totals = load_totals(list);
    return charge_course(totals, sized, choices, daily_needs(totals, sized.unit, sized.content, choices).array.daily_wh).value();
}

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
    const ChargeCourse course = course_of(list, sized, {});
    ASSERT_EQ(course.points.size(), 73U);
    EXPECT_EQ(course.points.front().without_pv_percent, 100);
    EXPECT_NEAR(course.points[12].without_pv_percent, 100 * (1 - 12 / 37.571444), 1e-4);
    EXPECT_NEAR(course.empty_without_pv_h.value(), 37.571444, 1e-4);
    EXPECT_EQ(course.points.back().without_pv_percent, 0);
    SizingChoices pair;
    pair.units = 2;
    const ChargeCourse two = course_of(list, sized, pair);
    EXPECT_NEAR(two.empty_without_pv_h.value(), 24 * 2 * 919.94635 / (504 + 2 * 24 * 3.4852547), 1e-3) << "twice the content, twice the own draw";
}

TEST(ChargeCourse, an_array_by_the_rule_carries_the_list_and_a_weak_input_clips_it) {
    const LoadList list = sized_list({cycling_refrigerator()});
    SizingChoices choices;
    const SizedUnit sized = size_unit(list, sized_specimen(), exact_fit(), choices);
    // 1.2 × (504 + 24 × 3.4852547)/0.9 = 783.53 Wh a day to the battery.
    const ChargeCourse course = course_of(list, sized, choices);
    EXPECT_FALSE(course.empty_with_pv_h);
    EXPECT_EQ(course.unserved_wh, 0);
    EXPECT_EQ(course.clipped_wh, 0);
    SizedUnit weak = sized;
    weak.unit.pv_max_w = 20;
    const ChargeCourse clipped = course_of(list, weak, choices);
    EXPECT_GT(clipped.clipped_wh, 783.53 - 12 * 20 - 0.01);
    EXPECT_TRUE(clipped.empty_with_pv_h);
    // What is not served of a day: the list less what PV paid for, less the part that the own draw took.
    EXPECT_GT(clipped.unserved_wh, 0);
    EXPECT_LT(clipped.unserved_wh, 504.0);
}

TEST(ChargeCourse, a_day_that_repeats_spends_what_it_gains) {
    const LoadList list = sized_list({cycling_refrigerator(), sized_appliance("lamp", 30, 5, 5)});
    SizingChoices choices;
    choices.array_w = 300;
    const SizedUnit sized = size_unit(list, sized_specimen(), exact_fit(), choices);
    const ChargeCourse course = course_of(list, sized, choices);
    ASSERT_FALSE(course.empty_with_pv_h);
    EXPECT_NEAR((300 * 4 * 0.75 - course.surplus_wh - course.clipped_wh) * 0.9, load_totals(list).daily_wh + 24 * 3.4852547, 1e-3);
    EXPECT_GT(course.surplus_wh, 0);
    EXPECT_LE(course.alike_from_day, 2) << "full within the first day";
    EXPECT_NEAR(course.points[48].with_pv_percent, course.points[72].with_pv_percent, 1e-9);
}

// A router of 12 W on a unit of 1000 Wh whose own draw is 14.5 W, both all day: 288 + 348 = 636 Wh a day. Of 850 Wh at the socket they leave 214 Wh.
UnitFit router_fit() {
    UnitFit fit = exact_fit();
    fit.parameters->e_star_wh = 850;
    fit.parameters->p_star_w = 14.5;
    fit.lowest_load_w = fit.lowest_power_w = 5;
    return fit;
}

LoadList router_list() {
    Appliance router = sized_appliance("router", 12, 24, 12);
    router.always_connected = true;
    return sized_list({router});
}

TEST(ChargeCourse, the_array_pays_for_the_own_draw_of_every_hour_that_the_output_is_on) {
    const Unit specimen = sized_specimen();
    const UnitFit fit = router_fit();
    const Sizing sizing = size_for(router_list(), {{&specimen, &fit, nullptr}}, {});
    const DailyNeeds& needs = sizing.needs.front();
    EXPECT_NEAR(needs.load_wh, 288, 1e-9);
    EXPECT_NEAR(needs.own_wh, 348, 1e-9);
    EXPECT_NEAR(needs.array.by_rule_w, 1.2 * 636 / 0.9 / (4 * 0.75), 1e-9); // 282.7 W
    EXPECT_NEAR(sizing.list_needs.array.by_rule_w, 128, 1e-9) << "the list alone";
    EXPECT_NEAR(sizing.units.front().days.value.value(), 850.0 / 636, 1e-9) << "days rest on the same balance";
    EXPECT_FALSE(sizing.courses.front()->empty_with_pv_h);
    EXPECT_FALSE(sizing.courses.front()->lower_empty_with_pv_h);
}

TEST(ChargeCourse, an_array_for_the_list_alone_lets_the_unit_run_empty_and_the_day_is_named_however_late) {
    const Unit specimen = sized_specimen();
    const UnitFit fit = router_fit();
    SizingChoices choices;
    choices.array_w = 128; // brings 128 × 4 × 0.75 × 0.9 = 345.6 Wh of the 636 Wh of a day
    const Sizing sizing = size_for(router_list(), {{&specimen, &fit, nullptr}}, choices);
    const ChargeCourse& course = *sizing.courses.front();
    // 290.4 Wh go each day, and nothing is lost to a full unit, as the night makes room. After two days 269.2 Wh are left; at sunset of the third
    // 269.2 − 18 × 26.5 + 345.6 = 137.8 Wh, which last another 5.2 h.
    ASSERT_TRUE(course.empty_with_pv_h);
    EXPECT_NEAR(*course.empty_with_pv_h, 71.2, 1e-9);
    EXPECT_NEAR(course.points[48].with_pv_percent, 100 * 269.2 / 850, 1e-6);
    EXPECT_GT(course.unserved_wh, 0);
    // Short by 1 Wh a day, from 850 Wh: the lowest hour of a day is at sunrise, and the first that is empty lies more than a year ahead.
    choices.array_w = 635 / (4 * 0.75 * 0.9);
    const Sizing nearly = size_for(router_list(), {{&specimen, &fit, nullptr}}, choices);
    const ChargeCourse& slow = *nearly.courses.front();
    ASSERT_TRUE(slow.empty_with_pv_h) << "never empty would be untrue";
    EXPECT_GT(*slow.empty_with_pv_h, 365 * 24);
    EXPECT_EQ(slow.points.size(), 24U * most_shown_days + 1);
    // The same, hour by hour and without leaps.
    const DayOfUse use(nearly.totals, *nearly.units.front().content, 1, 12);
    double content_wh = 850;
    int hour = 0;
    for (; content_wh > 0 && hour < 24 * 2000; ++hour) {
        const double of_day = hour % 24;
        content_wh = std::min(850.0, content_wh + 635 * daylight_share(of_day, of_day + 1, 12) - use.spent_wh(of_day, of_day + 1));
    }
    EXPECT_NEAR(*slow.empty_with_pv_h, hour, 1);
}

TEST(ChargeCourse, a_unit_whose_own_draw_nobody_measured_has_the_least_array_and_says_so) {
    const Unit untested = sized_specimen();
    const UnitFit none;
    const Sizing sizing = size_for(router_list(), {{&untested, &none, nullptr}}, {});
    EXPECT_FALSE(sizing.needs.front().own_draw_known);
    ASSERT_FALSE(sizing.units.front().remarks.empty());
    EXPECT_TRUE(contains(sizing.units.front().remarks.front(), "not measured and not counted"));
    // A no-load drain tells it where no full drain does.
    UnitClaims claims;
    claims.draws.output_on.draw_w = known("no_load_draw_w", "W", 14.5, 2, Kind::projected, "");
    const Sizing told = size_for(router_list(), {{&untested, &none, &claims}}, {});
    EXPECT_NEAR(told.needs.front().array.by_rule_w, 1.2 * 636 / 0.9 / 3, 1e-9);
    EXPECT_TRUE(told.needs.front().own_draw_known);
}

TEST(ChargeCourse, night_use_falls_into_the_night_of_the_list) {
    const LoadList list = sized_list({sized_appliance("lamp", 10, 6, 6)});
    const SizedUnit sized = size_unit(list, sized_specimen(), exact_fit(), {});
    const ChargeCourse course = course_of(list, sized, {});
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
