// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/forecast.h"

#include "forecast/near_moment.h"
#include "support/record_builder.h"
#include "support/simulator.h"

#include <gtest/gtest.h>

#include <string>

namespace ullage::test {
namespace {

constexpr UtcMs hour_ms = 3'600'000;

/// A running drain at 80 W that would last ten hours, with a gauge that tells the truth, read each half hour up to `hours`.
RecordBuilder steady_until(double hours) {
    RecordBuilder builder;
    builder.record().run.end = RunEnd::still_running;
    for (double t = 0; t <= hours + 1e-9; t += 0.5) builder.at(t, 100 - 10 * t, 80 * t);
    return builder;
}

/// The same run to its end, as an earlier drain.
RunRecord earlier_drain(double lasts_h = 10) {
    RecordBuilder builder;
    for (int i = 0; i < 10; ++i) builder.at(lasts_h * i / 10, 100 - 10 * i, 80 * lasts_h * i / 10);
    builder.at(lasts_h, 0, 80 * lasts_h, MarkKind::cut_off);
    builder.record().run.uuid = RunId("earlier");
    return builder.record();
}

RunForecast forecast_of(const RunRecord& record, const UnitFit& fit = fit_unit({})) {
    return forecast_at_last_reading(record, analyse_energy(record), fit);
}

double width_h(const ExpectedTime& time) { return hours_between(time.lower_ms, time.upper_ms); }

TEST(Forecast, a_steady_drain_is_expected_to_end_where_its_gauge_runs_out) {
    const RunForecast forecast = forecast_of(steady_until(6).record());
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    EXPECT_EQ(forecast.basis, ForecastBasis::trend);
    EXPECT_GE(forecast.cut_off->lower_ms, RecordBuilder::moment_ms(6));
    EXPECT_LT(forecast.cut_off->lower_ms, RecordBuilder::moment_ms(10));
    EXPECT_GT(forecast.cut_off->upper_ms, RecordBuilder::moment_ms(10));
    EXPECT_NEAR(hours_between(RecordBuilder::moment_ms(10), forecast.cut_off->estimate_ms), 0, 0.6);
    EXPECT_NE(forecast.cut_off_reason.text().find("sticks, jumps"), std::string::npos) << forecast.cut_off_reason;
}

TEST(Forecast, says_which_account_of_the_gauge_its_range_rests_on) {
    const RunForecast early = forecast_of(steady_until(4).record());
    EXPECT_EQ(early.account, ForecastAccount::whichever);
    EXPECT_NE(early.cut_off_reason.text().find("holds whether the gauge is right or wrong"), std::string::npos) << early.cut_off_reason;
    EXPECT_NE(early.cut_off_reason.text().find("falls too fast"), std::string::npos) << "among what it allows for";
    RecordBuilder unmoved;
    unmoved.record().run.end = RunEnd::still_running;
    unmoved.at(0, 100, 0).at(0.5, 100, 40);
    const RunForecast by_drains = forecast_of(unmoved.record(), fit_unit({earlier_drain()}));
    EXPECT_EQ(by_drains.account, ForecastAccount::whichever) << "the gauge has told nothing yet";
    EXPECT_NE(by_drains.cut_off_reason.text().find("asks no gauge"), std::string::npos) << by_drains.cut_off_reason;
    const RunForecast agreed = forecast_of(steady_until(4).record(), fit_unit({earlier_drain()}));
    EXPECT_EQ(agreed.account, ForecastAccount::right) << agreed.cut_off_reason;
    EXPECT_NE(agreed.cut_off_reason.text().find("holds if the gauge is right"), std::string::npos) << agreed.cut_off_reason;
    // 25 points an hour at 80 W: right, it would be a battery of 320 Wh, or of 440 Wh with 30 W of own draw; a label of 1000 Wh means 500 Wh at
    // least.
    RecordBuilder hasty;
    hasty.record().run.end = RunEnd::still_running;
    hasty.record().unit.rated_energy_wh = 1000;
    for (double t = 0; t <= 3.5 + 1e-9; t += 0.5) hasty.at(t, 100 - 25 * t, 80 * t);
    const RunForecast wrong = forecast_of(hasty.record());
    ASSERT_TRUE(wrong.cut_off);
    EXPECT_EQ(wrong.account, ForecastAccount::wrong) << wrong.cut_off_reason;
    EXPECT_NE(wrong.cut_off_reason.text().find("holds if the gauge is wrong"), std::string::npos) << wrong.cut_off_reason;
}

/// Found off with nothing noted of its energy, then charged from there to full, its charger left plugged in for `plugged_wh`.
UnitFit charged_with(double charged_wh, double plugged_wh = 0) {
    RecordBuilder drained;
    drained.at(-40, 100, std::nullopt).at(-30, std::nullopt, std::nullopt, MarkKind::cut_off);
    drained.record().run.uuid = RunId("drained");
    RecordBuilder charge;
    charge.record().run.uuid = RunId("charge");
    charge.record().run.kind = RunKind::charge;
    charge.record().run.end = RunEnd::stopped_by_tester;
    charge.at(-20, 0, 5000).at(-16, 100, 5000 + charged_wh);
    if (plugged_wh > 0) charge.at(-1, 100, 5000 + charged_wh + plugged_wh);
    return fit_unit({drained.record(), charge.record()});
}

TEST(Forecast, what_an_earlier_charge_put_in_bounds_what_is_left) {
    RecordBuilder unmoved; // 240 Wh have gone, the gauge hangs at full
    unmoved.record().run.end = RunEnd::still_running;
    unmoved.at(0, 100, 0).at(1.5, 100, 120).at(3, 100, 240);
    const RunForecast by_label = forecast_of(unmoved.record());
    const RunForecast charged = forecast_of(unmoved.record(), charged_with(700, 20));
    ASSERT_TRUE(by_label.cut_off && charged.cut_off) << charged.cut_off_reason;
    EXPECT_EQ(charged.basis, ForecastBasis::label);
    EXPECT_LT(width_h(*charged.cut_off), width_h(*by_label.cut_off));
    EXPECT_LE(hours_between(RecordBuilder::moment_ms(0), charged.cut_off->upper_ms), 1.1 * 720 / 80) << "no unit gives more than it got";
    EXPECT_NE(charged.cut_off_reason.text().find("the 720 Wh that an earlier charge from cut-off to full took in"), std::string::npos)
        << charged.cut_off_reason;
    // Of a unit without a label it is all that is known.
    unmoved.record().unit.rated_energy_wh.reset();
    EXPECT_FALSE(forecast_of(unmoved.record()).cut_off);
    const RunForecast alone = forecast_of(unmoved.record(), charged_with(700));
    ASSERT_TRUE(alone.cut_off) << alone.cut_off_reason;
    EXPECT_NE(alone.cut_off_reason.text().find("from what the unit was charged with"), std::string::npos) << alone.cut_off_reason;
}

TEST(Forecast, a_charge_that_ended_with_the_first_full_may_have_ended_early) {
    RecordBuilder unmoved; // 240 Wh have gone, the gauge hangs at full
    unmoved.record().run.end = RunEnd::still_running;
    unmoved.at(0, 100, 0).at(1.5, 100, 120).at(3, 100, 240);
    const RunForecast by_label = forecast_of(unmoved.record());
    // Stopped there; gone on as fast as before; gone on slowly.
    const UnitFit at_once = charged_with(600), as_fast = charged_with(400, 100 * 15), watched = charged_with(600, 10);
    ASSERT_TRUE(at_once.full_charge && as_fast.full_charge && watched.full_charge);
    EXPECT_NEAR(at_once.full_charge->most_wh / watched.full_charge->most_wh, 1.25 * 600 / 610, 0.01);
    EXPECT_GT(as_fast.full_charge->most_wh, 1.2 * 1900);
    // A unit that holds 750 Wh, of which 600 were in when its gauge said full, is still covered.
    const RunForecast stopped = forecast_of(unmoved.record(), at_once), full = forecast_of(unmoved.record(), watched);
    ASSERT_TRUE(by_label.cut_off && stopped.cut_off && full.cut_off);
    EXPECT_GT(stopped.cut_off->upper_ms, full.cut_off->upper_ms);
    EXPECT_LE(stopped.cut_off->upper_ms, by_label.cut_off->upper_ms);
}

TEST(Forecast, a_charge_that_contradicts_the_label_stands_against_it) {
    RecordBuilder run;
    run.record().run.end = RunEnd::still_running;
    run.at(0, 100, 0).at(1.5, 95, 120).at(3, 88, 240);
    // A third of the label went in: it cannot hold half of it.
    const RunForecast small = forecast_of(run.record(), charged_with(340, 5));
    ASSERT_TRUE(small.cut_off) << small.cut_off_reason;
    EXPECT_LT(hours_between(RecordBuilder::moment_ms(0), small.cut_off->upper_ms), 1.2 * 345 / 80);
    // What a charger feeds into a full unit for days says nothing of what it holds.
    const RunForecast left_plugged = forecast_of(run.record(), charged_with(700, 3000)), plain = forecast_of(run.record());
    ASSERT_TRUE(left_plugged.cut_off && plain.cut_off);
    EXPECT_NEAR(hours_between(left_plugged.cut_off->upper_ms, plain.cut_off->upper_ms), 0, 0.1);
}

TEST(Forecast, the_range_narrows_toward_the_end) {
    double before_h = 1e9;
    for (const double hours : {2.0, 4.0, 6.0, 8.0, 9.0}) {
        const RunForecast forecast = forecast_of(steady_until(hours).record());
        ASSERT_TRUE(forecast.cut_off) << hours;
        EXPECT_LT(width_h(*forecast.cut_off), before_h) << hours;
        before_h = width_h(*forecast.cut_off);
    }
}

TEST(Forecast, a_label_limits_how_long_it_may_last) {
    RecordBuilder builder = steady_until(2);
    builder.record().unit.rated_energy_wh = 850;
    const RunForecast limited = forecast_of(builder.record());
    builder.record().unit.rated_energy_wh.reset();
    const RunForecast unlimited = forecast_of(builder.record());
    ASSERT_TRUE(limited.cut_off && unlimited.cut_off);
    EXPECT_LT(limited.cut_off->upper_ms, unlimited.cut_off->upper_ms);
    EXPECT_LE(limited.cut_off->upper_ms, RecordBuilder::moment_ms(850 * 1.1 * 1.01 / 80 + 0.1));
}

TEST(Forecast, an_earlier_drain_of_like_load_tells_far_more_than_the_gauge) {
    const RunRecord record = steady_until(4).record();
    const RunForecast alone = forecast_of(record);
    const RunForecast with = forecast_of(record, fit_unit({earlier_drain()}));
    ASSERT_TRUE(alone.cut_off && with.cut_off);
    EXPECT_EQ(with.basis, ForecastBasis::both);
    EXPECT_LT(width_h(*with.cut_off), 0.25 * width_h(*alone.cut_off));
    EXPECT_LT(with.cut_off->lower_ms, RecordBuilder::moment_ms(10));
    EXPECT_GT(with.cut_off->upper_ms, RecordBuilder::moment_ms(10));
}

TEST(Forecast, an_earlier_drain_tells_before_the_gauge_has_moved) {
    RecordBuilder builder;
    builder.record().run.end = RunEnd::still_running;
    builder.at(0, 100, 0).at(0.5, 100, 40).at(1, 100, 80);
    const RunForecast forecast = forecast_of(builder.record(), fit_unit({earlier_drain()}));
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    EXPECT_EQ(forecast.basis, ForecastBasis::earlier_drains);
    EXPECT_FALSE(forecast.gauge_speed);
    EXPECT_FALSE(forecast.gauge_reason.empty());
}

TEST(Forecast, where_gauge_and_earlier_drains_disagree_the_range_holds_both) {
    RecordBuilder builder; // 80 W for three hours, and the gauge is nearly down: an aged unit, or a gauge gone wrong
    builder.record().run.end = RunEnd::still_running;
    for (int i = 0; i <= 6; ++i) builder.at(0.5 * i, 100 - 15 * i, 40 * i);
    const RunForecast forecast = forecast_of(builder.record(), fit_unit({earlier_drain(20)}));
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    EXPECT_EQ(forecast.basis, ForecastBasis::disagreeing);
    EXPECT_LT(forecast.cut_off->lower_ms, RecordBuilder::moment_ms(9)); // half of the label at 80 W lasts 6 h
    EXPECT_GT(forecast.cut_off->upper_ms, RecordBuilder::moment_ms(19));
    EXPECT_NE(forecast.cut_off_reason.text().find("disagree"), std::string::npos);
}

TEST(Forecast, readings_after_the_asked_moment_are_not_looked_at) {
    const RunRecord whole = steady_until(8).record(), half = steady_until(4).record();
    const RunForecast as_of = forecast_run(whole, analyse_energy(whole), fit_unit({}), RecordBuilder::moment_ms(4));
    const RunForecast then = forecast_of(half);
    ASSERT_TRUE(as_of.cut_off && then.cut_off);
    EXPECT_EQ(as_of.cut_off->lower_ms, then.cut_off->lower_ms);
    EXPECT_EQ(as_of.cut_off->upper_ms, then.cut_off->upper_ms);
    EXPECT_EQ(as_of.last_reading_ms, RecordBuilder::moment_ms(4));
}

TEST(Forecast, an_output_seen_on_later_than_the_last_register_reading_moves_the_lower_end) {
    RecordBuilder builder = steady_until(8);
    builder.at(9.5, 5, {});
    const RunForecast forecast = forecast_of(builder.record());
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    EXPECT_GE(forecast.cut_off->lower_ms, RecordBuilder::moment_ms(9.5));
    ASSERT_FALSE(forecast.advice.empty());
}

TEST(Forecast, after_a_step_of_the_load_it_allows_for_both_loads_and_says_what_it_cannot_foresee) {
    RecordBuilder builder; // 200 W for 1.5 h, then 50 W
    builder.record().run.end = RunEnd::still_running;
    for (int i = 0; i <= 3; ++i) builder.at(0.5 * i, 100 - 12 * i, 100 * i);
    for (int i = 1; i <= 4; ++i) builder.at(1.5 + 0.5 * i, 64 - 3.0 * i, 300 + 25 * i);
    const RunForecast forecast = forecast_of(builder.record());
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    EXPECT_NE(forecast.cut_off_reason.text().find("stays near 50 W"), std::string::npos) << forecast.cut_off_reason;
    EXPECT_NE(forecast.cut_off_reason.text().find("a step yet to come cannot be foreseen"), std::string::npos);
    // At 50 W some 430 Wh last 8.7 h; at the mean of 114 W under 4 h.
    EXPECT_GT(forecast.cut_off->upper_ms, RecordBuilder::moment_ms(3.5 + 8));
    EXPECT_LT(forecast.cut_off->lower_ms, RecordBuilder::moment_ms(3.5 + 4.5));
}

TEST(Forecast, without_a_register_time_stands_for_energy) {
    RecordBuilder builder;
    builder.record().run.end = RunEnd::still_running;
    for (int i = 0; i <= 12; ++i) builder.at(0.5 * i, 100 - 5 * i, {});
    const RunForecast forecast = forecast_of(builder.record());
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    EXPECT_NEAR(hours_between(RecordBuilder::moment_ms(10), forecast.cut_off->estimate_ms), 0, 0.8);
    EXPECT_NE(forecast.cut_off_reason.text().find("time alone"), std::string::npos);
    EXPECT_NE(forecast.advice.front().sentence.text().find("register has not been read"), std::string::npos) << forecast.advice.front().sentence;
}

TEST(Forecast, a_run_noted_by_time_alone_is_forecast_by_the_hours_that_it_has_run) {
    RecordBuilder builder;
    builder.record().run.end = RunEnd::still_running;
    for (int i = 0; i <= 7; ++i) builder.at(i, {}, {});
    RecordBuilder idle;
    idle.record().run.kind = RunKind::no_load_drain;
    idle.record().run.uuid = RunId("earlier");
    idle.at(0, 100, {}).at(19, 0, {}, MarkKind::cut_off);
    builder.record().run.kind = RunKind::no_load_drain;
    const RunForecast by_time = forecast_of(builder.record(), fit_unit({idle.record(), earlier_drain()}));
    ASSERT_TRUE(by_time.cut_off) << by_time.cut_off_reason;
    EXPECT_NEAR(hours_between(RecordBuilder::moment_ms(19), by_time.cut_off->estimate_ms), 0, 1);
}

TEST(Forecast, before_the_gauge_has_fallen_the_label_alone_gives_a_range) {
    RecordBuilder builder;
    builder.record().run.end = RunEnd::still_running;
    builder.at(0, 100, 0).at(0.5, 100, 40).at(1, 100, 80);
    const RunForecast forecast = forecast_of(builder.record());
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    EXPECT_EQ(forecast.basis, ForecastBasis::label);
    // Between half and 1.1 times the label of 1000 Wh at 80 W: after 4 h at the earliest, as the unit may take up to 45 W for itself, and 14 h at
    // most.
    EXPECT_GT(forecast.cut_off->lower_ms, RecordBuilder::moment_ms(3.5));
    EXPECT_LT(forecast.cut_off->upper_ms, RecordBuilder::moment_ms(14.2));
    EXPECT_NE(forecast.cut_off_reason.text().find("label alone"), std::string::npos) << forecast.cut_off_reason;
}

TEST(Forecast, a_reading_that_throws_the_forecast_over_is_said_to) {
    const UnitFit fit = fit_unit({earlier_drain()}); // off after ten hours
    RecordBuilder builder = steady_until(9);
    EXPECT_TRUE(forecast_of(builder.record(), fit).overthrown.empty());
    builder.at(12, 20, 960); // and still on
    const RunForecast forecast = forecast_of(builder.record(), fit);
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    EXPECT_NE(forecast.overthrown.text().find("The reading at 14:00 threw the forecast over: before it the cut-off was expected"), std::string::npos)
        << forecast.overthrown;
}

struct Refusal {
    const char* words;
    RunRecord record;
};

TEST(Forecast, refuses_with_the_reason_what_has_no_cut_off_to_forecast) {
    RecordBuilder charge = steady_until(4), ended = steady_until(4), tripped = steady_until(4), empty, still = steady_until(0), idle, flat;
    charge.record().run.kind = RunKind::charge;
    ended.record().run.end = RunEnd::stopped_by_tester;
    tripped.at(4.5, 55, 360, MarkKind::output_tripped);
    for (RecordBuilder* builder : {&empty, &idle, &flat}) builder->record().run.end = RunEnd::still_running;
    idle.at(0, 100, 5).at(1, 90, 5).at(2, 80, 5);
    flat.at(0, 100, 0).at(1, 100, 80);
    flat.record().unit.rated_energy_wh.reset();
    const Refusal refusals[] = {{"charge run", charge.record()},  {"has ended", ended.record()},      {"tripped", tripped.record()},
                                {"no readings", empty.record()},  {"together twice", still.record()}, {"nothing has been delivered", idle.record()},
                                {"has not fallen", flat.record()}};
    for (const Refusal& refusal : refusals) {
        const RunForecast forecast = forecast_of(refusal.record);
        EXPECT_FALSE(forecast.cut_off) << refusal.words;
        EXPECT_NE(forecast.cut_off_reason.text().find(refusal.words), std::string::npos) << refusal.words << ": " << forecast.cut_off_reason;
    }
}

TEST(Forecast, the_next_gauge_step_lies_a_step_or_less_ahead) {
    const RunForecast forecast = forecast_of(steady_until(4).record()); // 60 %, 10 points an hour
    ASSERT_TRUE(forecast.gauge_speed && forecast.next_step);
    EXPECT_EQ(forecast.next_step_percent, 59);
    EXPECT_NEAR(forecast.gauge_speed->estimate_pt_per_h, 10, 0.01);
    EXPECT_GE(forecast.next_step->lower_ms, RecordBuilder::moment_ms(4));
    EXPECT_LT(forecast.next_step->upper_ms, RecordBuilder::moment_ms(4.15));
    const auto drop = gauge_drop_time(forecast, 20);
    ASSERT_TRUE(drop);
    EXPECT_NEAR(hours_between(RecordBuilder::moment_ms(6), drop->estimate_ms), 0, 0.1);
    EXPECT_LT(drop->lower_ms, RecordBuilder::moment_ms(5.95));
    EXPECT_GT(drop->upper_ms, RecordBuilder::moment_ms(5.98));
}

TEST(Forecast, without_a_next_gauge_step_it_says_whether_there_is_none_or_it_is_too_far_away) {
    RecordBuilder slow; // a no-load drain of a very frugal unit: a point in 200 days
    slow.record().run.end = RunEnd::still_running;
    slow.record().run.kind = RunKind::no_load_drain;
    slow.at(0, 100, 0).at(24.0 * 200, 99, 0);
    const RunForecast far = forecast_of(slow.record());
    ASSERT_TRUE(far.gauge_speed) << far.gauge_reason;
    EXPECT_FALSE(far.next_step);
    EXPECT_EQ(far.gauge_reason, "the gauge falls so slowly that its next step may be more than a year away");

    const RunForecast empty = forecast_of(steady_until(10).record()); // the gauge shows 0 %
    ASSERT_TRUE(empty.gauge_speed) << empty.gauge_reason;
    EXPECT_FALSE(empty.next_step);
    EXPECT_EQ(empty.gauge_reason, "the gauge has no lower value to show");
}

TEST(Forecast, a_drop_below_empty_or_of_nothing_has_no_time) {
    const RunForecast forecast = forecast_of(steady_until(4).record());
    EXPECT_FALSE(gauge_drop_time(forecast, 61));
    EXPECT_TRUE(gauge_drop_time(forecast, 60));
    EXPECT_FALSE(gauge_drop_time(forecast, 0));
    EXPECT_FALSE(gauge_drop_time(forecast, -5));
    EXPECT_FALSE(gauge_drop_time(RunForecast{}, 5));
}

TEST(Forecast, advice_names_the_channel_left_out_and_the_pair_that_tells_most) {
    RecordBuilder builder = steady_until(4);
    builder.at(5, 50, {});
    const RunForecast forecast = forecast_of(builder.record());
    ASSERT_GE(forecast.advice.size(), 3U);
    EXPECT_EQ(forecast.advice[0].sentence, "The register has not been read since 06:00 (1 h 0 min), the gauge has: read both together.");
    EXPECT_NE(forecast.advice[1].sentence.text().find("Read register and gauge together near 20 %"), std::string::npos)
        << forecast.advice[1].sentence;
    ASSERT_TRUE(forecast.advice[1].at_ms);
    EXPECT_NEAR(hours_between(RecordBuilder::moment_ms(8), *forecast.advice[1].at_ms), 0, 0.3);
    EXPECT_NE(forecast.advice[2].sentence.text().find("Read often from"), std::string::npos) << forecast.advice[2].sentence;
}

TEST(Forecast, a_cut_off_past_its_range_is_the_first_thing_to_look_at) {
    const RunRecord record = steady_until(9).record();
    const RunForecast forecast = forecast_run(record, analyse_energy(record), fit_unit({}), RecordBuilder::moment_ms(30));
    ASSERT_TRUE(forecast.cut_off);
    EXPECT_NE(forecast.advice.front().sentence.text().find("look whether the output is still on"), std::string::npos);
    EXPECT_TRUE(expected_hours_text(*forecast.cut_off, forecast.as_of_ms).starts_with("overdue by ")) << "both ends have passed";
}

TEST(Forecast, ranges_read_as_clock_times_and_hours) {
    const UtcMs now = RecordBuilder::start_ms; // 11 May, 02:00
    const ExpectedTime soon{now + 3 * hour_ms, now + 4 * hour_ms, now + hour_ms * 9 / 2};
    EXPECT_EQ(expected_clock_text(soon, now, "UTC"), "05:00 to 06:30");
    EXPECT_EQ(expected_hours_text(soon, now), "in 3.0 to 4.5 h");
    EXPECT_EQ(expected_clock_text({soon.lower_ms, soon.estimate_ms, now + 23 * hour_ms}, now, "UTC"), "05:00 to Wed 01:00") << "past midnight";
    EXPECT_EQ(expected_clock_text({now + 22 * hour_ms, soon.estimate_ms, now + 23 * hour_ms}, now, "UTC"), "Wed 00:00 to 01:00");
    EXPECT_EQ(near_moment_text(now - 3 * hour_ms, now, "UTC"), "Mon 23:00");
    EXPECT_EQ(near_moment_text(now + 7 * 24 * hour_ms, now, "UTC"), "18 May 02:00");
    const ExpectedTime later{now + 20 * hour_ms, now + 24 * hour_ms, now + 30 * hour_ms};
    EXPECT_EQ(expected_clock_text(later, now, "UTC"), "11 May 22:00 to 12 May 08:00");
    EXPECT_EQ(expected_hours_text(later, now), "in 20 to 30 h");
    EXPECT_EQ(expected_hours_text({now + 19 * hour_ms, now + 19 * hour_ms, now + 19 * hour_ms + hour_ms / 3}, now), "in 19.0 to 19.3 h");
    const ExpectedTime minutes{now + hour_ms / 4, now + hour_ms / 3, now + hour_ms / 2};
    EXPECT_EQ(expected_hours_text(minutes, now), "in 15 to 30 min");
    EXPECT_EQ(expected_hours_text(soon, now + 3 * hour_ms), "within 1.5 h");
    EXPECT_EQ(expected_hours_text(soon, now + 5 * hour_ms), "overdue by 30 min");
    EXPECT_EQ(expected_hours_text(soon, now + 8 * hour_ms), "overdue by 3.5 h");
}

/// The ensemble holds all kinds of gauges and loads against the range (tests/ensemble); this is the same in small.
TEST(Forecast, the_range_covers_simulated_drains_with_bent_gauges) {
    int covered = 0;
    constexpr int runs = 30;
    for (int seed = 0; seed < runs; ++seed) {
        RunSetup setup;
        setup.unit.rated_energy_wh = 1050;
        setup.unit.rated_output_w = 1200;
        setup.load = LoadProfile::constant(64);
        setup.meter->meter.step_wh = 1;
        setup.meter->meter.limit_percent = 1;
        setup.gauge.bend_pt = -12 + 24.0 * seed / (runs - 1);
        setup.tester.end = RunEnd::still_running;
        setup.tester.stop_after_h = 0.6 * Discharge(setup.physics, setup.load).end_hours();
        const SimulatedRun run = simulate_run(setup, static_cast<std::uint64_t>(seed) + 1);
        const RunForecast forecast = forecast_of(run.record);
        ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
        const UtcMs truth = setup.start_ms + static_cast<UtcMs>(run.truth.cut_off_hours * ms_per_hour);
        covered += forecast.cut_off->lower_ms <= truth && truth <= forecast.cut_off->upper_ms;
    }
    EXPECT_GE(covered, 26); // 95 %; fewer than 26 of 30 has a chance below 0.5 %
}

} // namespace
} // namespace ullage::test
