// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/accounts.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

TwoAccounts accounts_of(const RunRecord& record) { return two_accounts(record, analyse_energy(record), fit_unit({})); }

/// A unit of 1480 Wh under 16.1 W, as the meter says at both readings: 34 % shown after 16 h with 258 Wh.
RecordBuilder after_16_hours() {
    RecordBuilder run;
    run.record().unit.rated_energy_wh = 1480;
    run.record().unit.rated_output_w = 1000;
    run.record().run.end = RunEnd::still_running;
    run.at(0, 100, 0).at(16, 34, 258);
    for (Reading& reading : run.record().readings) reading.values.meter_w = 16;
    return run;
}

TEST(TwoAccounts, tells_both_in_numbers_from_two_readings) {
    const TwoAccounts accounts = accounts_of(after_16_hours().record());
    ASSERT_TRUE(accounts.told) << accounts.reason;
    // Gauge right: 258 Wh for 66 points are 391 Wh, 26 % of the label, gone after 24.2 h; a unit of half to 110 % of its label takes the rest.
    EXPECT_FALSE(accounts.right.ruled_out) << accounts.right.evidence;
    EXPECT_LT(*accounts.right.usable_fraction.lower, 0.264);
    EXPECT_GT(*accounts.right.usable_fraction.upper, 0.264);
    EXPECT_LT(*accounts.right.usable_fraction.upper, 0.29);
    EXPECT_NEAR(*accounts.right.no_load_draw_w.lower, (0.66 * 740 - 258) / 16, 1.6);
    EXPECT_NEAR(*accounts.right.no_load_draw_w.upper, (0.66 * 1628 - 258) / 16, 4);
    EXPECT_LT(*accounts.right.hours_left.lower, 8.2);
    EXPECT_GT(*accounts.right.hours_left.upper, 8.2);
    EXPECT_LT(*accounts.right.hours_left.upper, 10);
    // Gauge wrong: the cut-off came 36 h later, with 579 Wh more; the gauge then showed 35 points too little.
    EXPECT_FALSE(accounts.wrong.ruled_out);
    EXPECT_LT(*accounts.wrong.hours_left.lower, 36);
    EXPECT_GT(*accounts.wrong.hours_left.upper, 36);
    EXPECT_LT(*accounts.wrong.to_come_wh.lower, 579);
    EXPECT_GT(*accounts.wrong.to_come_wh.upper, 579);
    EXPECT_LT(*accounts.wrong.gauge_error_pt.lower, -35);
    EXPECT_NE(accounts.decides.text().find("Still on at"), std::string::npos) << accounts.decides;
    ASSERT_TRUE(accounts.decide_from_ms);
    EXPECT_GT(*accounts.decide_from_ms, RecordBuilder::moment_ms(16));
}

TEST(TwoAccounts, a_gauge_that_falls_twice_too_fast_all_along_is_allowed_for) {
    RecordBuilder run; // as above, with a reading half way that lies on the same straight line
    run.record().unit.rated_energy_wh = 1480;
    run.record().unit.rated_output_w = 1000;
    run.record().run.end = RunEnd::still_running;
    run.at(0, 100, 0).at(8, 67, 129).at(16, 34, 258);
    const RunForecast forecast = forecast_at_last_reading(run.record(), analyse_energy(run.record()), fit_unit({}));
    ASSERT_TRUE(forecast.cut_off);
    EXPECT_GT(forecast.cut_off->upper_ms, RecordBuilder::moment_ms(52));
}

TEST(TwoAccounts, the_forecast_of_the_same_run_covers_what_came) {
    const RunRecord record = after_16_hours().record();
    const RunForecast forecast = forecast_at_last_reading(record, analyse_energy(record), fit_unit({}));
    ASSERT_TRUE(forecast.cut_off);
    EXPECT_LT(forecast.cut_off->lower_ms, RecordBuilder::moment_ms(52));
    EXPECT_GT(forecast.cut_off->upper_ms, RecordBuilder::moment_ms(52));
}

TEST(TwoAccounts, a_gauge_that_the_readings_rule_out_is_not_right) {
    RecordBuilder run; // 500 Wh of a 1000 Wh unit, and the gauge has hardly moved
    run.record().run.end = RunEnd::stopped_by_tester;
    run.at(0, 100, 0).at(2, 97, 200).at(4, 96, 400).at(5, 95, 500);
    const TwoAccounts accounts = accounts_of(run.record());
    ASSERT_TRUE(accounts.told) << accounts.reason;
    EXPECT_TRUE(accounts.right.ruled_out);
    EXPECT_FALSE(accounts.right.evidence.empty());
    EXPECT_FALSE(accounts.wrong.ruled_out);
    EXPECT_GT(*accounts.wrong.gauge_error_pt.lower, 20) << "it shows far too much";
    EXPECT_TRUE(accounts.decides.empty()) << "it is decided";
}

TEST(TwoAccounts, count_down_from_the_moment_that_they_are_read_at) {
    const RunRecord record = after_16_hours().record();
    const TwoAccounts accounts = accounts_of(record);
    const auto empty = [&](double hours_later) {
        return account_figures(accounts, accounts.right, record.run, accounts.from_ms + static_cast<UtcMs>(hours_later * ms_per_hour)).back();
    };
    EXPECT_TRUE(empty(0).value.text().starts_with("in 7")) << empty(0).value;
    EXPECT_TRUE(empty(2).value.text().starts_with("in 5")) << empty(2).value;
    // At most 10 h were left: 24 h later that is 14 h ago or more.
    EXPECT_TRUE(empty(24).value.text().starts_with("overdue by 1")) << empty(24).value;
    EXPECT_EQ(empty(2).note, empty(0).note) << "the clock stays";
}

TEST(TwoAccounts, of_a_stopped_drain_no_clock_is_named) {
    RecordBuilder run = after_16_hours();
    run.record().run.end = RunEnd::stopped_by_tester;
    const TwoAccounts accounts = accounts_of(run.record());
    ASSERT_TRUE(accounts.told);
    EXPECT_FALSE(accounts.decide_from_ms);
    EXPECT_NE(accounts.decides.text().find("further on at this load"), std::string::npos) << accounts.decides;
}

TEST(TwoAccounts, are_refused_with_the_reason_where_they_tell_nothing) {
    RecordBuilder ended = after_16_hours(), unlabelled = after_16_hours(), still, charge = after_16_hours();
    ended.record().run.end = RunEnd::cut_off_seen;
    unlabelled.record().unit.rated_energy_wh.reset();
    still.record().run.end = RunEnd::still_running;
    still.at(0, 100, 0).at(1, 100, 64);
    charge.record().run.kind = RunKind::charge;
    const std::pair<RunRecord, const char*> cases[] = {{ended.record(), "ended by cut-off"},
                                                       {unlabelled.record(), "rated energy"},
                                                       {still.record(), "has not fallen"},
                                                       {charge.record(), "charge run"}};
    for (const auto& [record, words] : cases) {
        const TwoAccounts accounts = accounts_of(record);
        EXPECT_FALSE(accounts.told);
        EXPECT_NE(accounts.reason.text().find(words), std::string::npos) << accounts.reason;
    }
}

} // namespace
} // namespace ullage::test
