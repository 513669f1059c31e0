// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sizing/sizing_samples.h"
#include "sizing/daily_needs.h"
#include "support/has_text.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

// constructed: refrigerator 60 W running 35 % of the time, unit always on: 21 W on average, 37.571444 h, 789.000 Wh.
TEST(SizedUnit, a_refrigerator_runs_from_a_unit_as_long_as_its_balance_says) {
    const SizedUnit sized = size_unit(sized_list({cycling_refrigerator()}), sized_specimen(), exact_fit(), {});
    EXPECT_EQ(sized.basis, SizingBasis::own_fit);
    EXPECT_NEAR(sized.run_time_h.value.value(), 37.571444, 1e-5);
    EXPECT_NEAR(sized.days.value.value(), 37.571444 / 24, 1e-6);
    EXPECT_EQ(sized.days.kind, Kind::projected);
    EXPECT_NEAR(sized.days.value.value() * 504, 789.0, 1e-3);
    // Always the same draw: by the clock it lasts as long whenever it begins.
    EXPECT_NEAR(sized.lasts_h.lower.value(), 37.571444, 1e-5);
    EXPECT_NEAR(sized.lasts_h.upper.value(), 37.571444, 1e-5);
}

TEST(SizedUnit, a_lamp_at_night_lasts_by_the_clock_from_when_it_is_lit_at_once_to_when_the_unit_waits_for_the_night) {
    // 10 h of 50 W a night take (50 + P*)·10 = 534.853 Wh of 919.947 Wh: 1.72001 nights. After a first night 385.094 Wh are left for
    // 7.20001 h: soonest 24 + 7.2 h from lighting the lamp.
    const SizedUnit sized = size_unit(sized_list({sized_appliance("lamp", 50, 10, 10)}), sized_specimen(), exact_fit(), {});
    EXPECT_NEAR(sized.days.value.value(), 17.2 / 10, 1e-6) << "17.200 h at 50 W";
    EXPECT_NEAR(sized.run_time_h.value.value(), 17.2, 1e-5);
    EXPECT_NEAR(sized.lasts_h.lower.value(), 24 + 7.2, 1e-4);
    // Longest: begun at dawn, the light falls into the last 10 h of the night: 24 h, then 12 h of day, 2 h of dark and 7.2 h of light.
    EXPECT_NEAR(sized.lasts_h.upper.value(), 24 + 12 + 2 + 7.2, 1e-4);
    EXPECT_NEAR(sized.days_left_on.value.value(), 919.9463 / (500 + 24 * 3.485255), 1e-4);
}

TEST(SizedUnit, appliances_used_apart_keep_the_output_on_for_longer_which_the_interval_holds) {
    const LoadList list = sized_list({sized_appliance("fan", 30, 6), sized_appliance("radio", 30, 6)});
    const SizedUnit sized = size_unit(list, sized_specimen(), exact_fit(), {});
    const double together = 919.94635 / (360 + 6 * 3.4852547), apart = 919.94635 / (360 + 12 * 3.4852547);
    EXPECT_NEAR(sized.days.value.value(), together, 1e-4);
    EXPECT_LE(sized.days.lower.value(), apart + 1e-4);
    EXPECT_GE(sized.days.upper.value(), together - 1e-4);
    EXPECT_LT(apart, together * 0.96);
}

// 500 Wh of lamp in 10 h, own draw 3.485255 W for these and 2 W standby for the other 14 h: 919.94635/(500 + 34.85255 + 28) = 1.63444 days.
TEST(SizedUnit, what_it_takes_while_its_output_is_off_is_spent_too) {
    UnitClaims claims;
    claims.draws.output_off.draw_w = known("standby_draw_w", "W", 2, 0.5, Kind::measured, "");
    const LoadList list = sized_list({sized_appliance("lamp", 50, 10, 10)});
    const SizedUnit sized = size_unit(list, sized_specimen(), exact_fit(), {}, &claims);
    EXPECT_NEAR(sized.days.value.value(), 919.94635 / 562.85255, 1e-4);
    EXPECT_LT(sized.days.lower.value(), 919.94635 / (534.85255 + 14 * 2.5) + 1e-4) << "the draw's own interval";
    const DailyNeeds needs = daily_needs(load_totals(list), sized.unit, sized.content, {});
    EXPECT_NEAR(needs.own_wh, 62.85255, 1e-4);
    EXPECT_TRUE(needs.own_draw_known);
    EXPECT_NEAR(sized.days_left_on.value.value(), 919.9463 / (500 + 24 * 3.485255), 1e-4) << "left on, it is never in standby";
    EXPECT_LT(sized.lasts_h.upper.value(), size_unit(list, sized_specimen(), exact_fit(), {}).lasts_h.upper.value());
    const SizedUnit silent = size_unit(list, sized_specimen(), exact_fit(), {});
    EXPECT_FALSE(daily_needs(load_totals(list), silent.unit, silent.content, {}).own_draw_known);
    ASSERT_FALSE(silent.remarks.empty());
    EXPECT_TRUE(contains(silent.remarks.front(), "make a standby run"));
}

// Rated 1000 Wh; 504 Wh of list and 83.646 Wh of own draw each: by the rule k = 1.15/(0.9 × 0.8) = 1.59722 Wh a watt-hour and day. For 3 days N units
// need 3k (504 + 83.646 N) <= 1000 N: N >= 2415.0/599.2 = 4.03, where the list alone would ask for three.
TEST(SizedUnit, units_by_the_battery_rule_carry_their_own_draw_too) {
    SizingChoices choices;
    choices.autonomy_days = 3;
    EXPECT_EQ(size_unit(sized_list({cycling_refrigerator()}), sized_specimen(), exact_fit(), choices).units_by_rule, 5);
    choices.autonomy_days = 9;
    EXPECT_FALSE(size_unit(sized_list({cycling_refrigerator()}), sized_specimen(), exact_fit(), choices).units_by_rule)
        << "9k × 83.6 Wh exceed 1000 Wh";
}

TEST(SizedUnit, an_untested_unit_stands_with_the_expected_share_and_says_that_nobody_measured_it) {
    const SizedUnit sized = size_unit(sized_list({sized_appliance("lamp", 50, 10)}), sized_specimen(), UnitFit(), {});
    EXPECT_EQ(sized.basis, SizingBasis::expectation);
    EXPECT_FALSE(sized.days.value);
    EXPECT_NEAR(sized.days.lower.value(), 1.5, 1e-12) << "75 % of 1000 Wh for 500 Wh a day";
    EXPECT_NEAR(sized.days.upper.value(), 1.6, 1e-12);
    EXPECT_EQ(sized.days.kind, Kind::bracket);
    EXPECT_TRUE(contains(sized.days.reason, "an expectation, not a measurement: 75 to 80 % of the rated energy"));
    Unit unnamed = sized_specimen();
    unnamed.rated_energy_wh.reset();
    EXPECT_EQ(size_unit(sized_list({sized_appliance("lamp", 50, 10)}), unnamed, UnitFit(), {}).days.kind, Kind::not_known);
}

TEST(SizedUnit, so_many_units_are_needed_that_even_their_least_days_reach_those_asked_for) {
    SizingChoices choices;
    choices.autonomy_days = 3;
    const LoadList list = sized_list({sized_appliance("lamp", 50, 10)});
    const SizedUnit expected = size_unit(list, sized_specimen(), UnitFit(), choices);
    EXPECT_EQ(expected.units_needed.least, 2) << "at 80 % two hold 3.2 days";
    EXPECT_EQ(expected.units_needed.sure, 2) << "at 75 % two hold 3.0 days";
    choices.autonomy_days = 3.1;
    EXPECT_EQ(units_needed_text(size_unit(list, sized_specimen(), UnitFit(), choices).units_needed), "2 to 3");
    // Each further unit brings its own draw: N·919.95/(504 + N·83.65) days, 4.98 for five.
    choices.autonomy_days = 5;
    const SizedUnit fitted = size_unit(sized_list({cycling_refrigerator()}), sized_specimen(), exact_fit(), choices);
    EXPECT_EQ(fitted.units_needed.sure, 6);
}

TEST(SizedUnit, a_unit_whose_own_draw_empties_it_sooner_is_never_enough) {
    SizingChoices choices;
    choices.autonomy_days = 30; // E*/(24·P*) is 11 days
    const SizedUnit sized = size_unit(sized_list({cycling_refrigerator()}), sized_specimen(), exact_fit(), choices);
    EXPECT_EQ(units_needed_text(sized.units_needed), "not known");
    EXPECT_TRUE(contains(sized.units_needed.reason, "their own draw empties them before"));
}

TEST(SizedUnit, outputs_and_starts_are_held_against_their_claims) {
    const auto fits = [](std::vector<Appliance> appliances) {
        return size_unit(sized_list(std::move(appliances)), sized_specimen(), exact_fit(), {});
    };
    Appliance pump = sized_appliance("pump", 600, 0.5);
    pump.start_peak_w = 1900;
    EXPECT_EQ(fits({pump}).output, PowerFit::fits);
    EXPECT_EQ(fits({pump}).peak, PowerFit::fits);
    const SizedUnit both = fits({pump, sized_appliance("kettle", 900, 0.1)});
    EXPECT_EQ(both.output, PowerFit::only_apart) << "1500 W of 1000 W, far less on average";
    EXPECT_EQ(both.peak, PowerFit::only_apart) << "2800 W of 2000 W, the pump alone starts with 1900 W";
    EXPECT_GE(both.units_needed.sure.value(), 3) << "750 W and a surcharge of 1300 W are above 2000 W on each of two";
    const SizedUnit welder = fits({sized_appliance("welder", 1200, 0.5)});
    EXPECT_EQ(welder.output, PowerFit::too_small);
    EXPECT_TRUE(contains(welder.units_needed.reason, "welder alone takes 1200 W, above the rated output of 1000 W"));
    Unit silent = sized_specimen();
    silent.rated_output_w.reset();
    silent.peak_output_w.reset();
    EXPECT_EQ(size_unit(sized_list({pump}), silent, exact_fit(), {}).output, PowerFit::not_stated);
}

TEST(SizedUnit, a_claim_that_a_run_refuted_is_said_with_the_sizing) {
    UnitClaims claims;
    claims.checks.push_back({"peak_output_w", "peak output", "W", 2000, {}, ClaimVerdict::does_not_hold, "tripped at 1500 W", {}});
    const SizedUnit sized = size_unit(sized_list({cycling_refrigerator()}), sized_specimen(), exact_fit(), {}, &claims);
    ASSERT_EQ(sized.remarks.size(), 1U);
    EXPECT_EQ(sized.remarks[0], "the claim does not hold: tripped at 1500 W");
}

TEST(SizedUnit, a_list_that_takes_nothing_has_no_days) {
    const SizedUnit sized = size_unit(sized_list({}), sized_specimen(), exact_fit(), {});
    EXPECT_EQ(sized.days.kind, Kind::not_known);
    EXPECT_EQ(sized.days.reason, "the load list takes nothing");
    EXPECT_FALSE(charge_course(load_totals(sized_list({})), sized, {}, 0));
}

} // namespace
} // namespace ullage::test
