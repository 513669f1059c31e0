// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/reading_due.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <limits>

namespace ullage::test {
namespace {

/// A running drain with its last reading at 4 h (gauge 60 %, 10 points an hour) and a cut-off forecast for 8 to 10 h.
struct Bench {
    Bench() {
        record.run.end = RunEnd::still_running;
        forecast.as_of_ms = RecordBuilder::moment_ms(4.2);
        forecast.last_reading_ms = forecast.last_gauge_ms = forecast.last_register_ms = RecordBuilder::moment_ms(4);
        forecast.cut_off = ExpectedTime{RecordBuilder::moment_ms(8), RecordBuilder::moment_ms(9), RecordBuilder::moment_ms(10)};
        forecast.gauge_speed = GaugeSpeed{RecordBuilder::moment_ms(4), 60, 1, 9, 10, 11, 0, 1};
    }
    RunRecord record;
    RunForecast forecast;
};

TEST(ReadingDue, an_interval_runs_from_the_last_reading) {
    const Bench bench;
    const ReadingDue due = next_reading_due(bench.record, bench.forecast, {.every_min = 30, .gauge_drop_pt = {}, .before_cut_off_min = {}});
    EXPECT_EQ(due.due_ms, RecordBuilder::moment_ms(4.5));
    EXPECT_EQ(due.because, DueBecause::interval);
    EXPECT_EQ(due.why, "30 min after the last reading");
}

TEST(ReadingDue, a_gauge_drop_is_due_when_it_should_have_happened) {
    const Bench bench;
    const ReadingDue due = next_reading_due(bench.record, bench.forecast, {.every_min = {}, .gauge_drop_pt = 10, .before_cut_off_min = {}});
    ASSERT_TRUE(due.due_ms);
    EXPECT_NEAR(hours_between(RecordBuilder::moment_ms(4), *due.due_ms), 0.95, 0.03); // the step below 51 % after half a step
    EXPECT_EQ(due.because, DueBecause::gauge_drop);
}

TEST(ReadingDue, a_gauge_drop_without_a_moment_says_whether_it_cannot_be_or_is_too_far_away) {
    Bench bench;
    const auto why = [&bench](double drop_pt) {
        return next_reading_due(bench.record, bench.forecast, {.every_min = {}, .gauge_drop_pt = drop_pt, .before_cut_off_min = {}}).why;
    };
    EXPECT_EQ(why(80), "the gauge cannot fall by another 80 points");
    bench.forecast.gauge_speed = GaugeSpeed{RecordBuilder::moment_ms(4), 60, 1, 0.0009, 0.001, 0.0011, 0, 1};
    EXPECT_EQ(why(20), "the gauge falls so slowly that 20 points less may be more than a year away");
}

TEST(ReadingDue, the_cut_off_counts_from_its_lower_end_until_it_has_been_read_there) {
    Bench bench;
    const ReadingRule rule{.every_min = {}, .gauge_drop_pt = {}, .before_cut_off_min = 45};
    EXPECT_EQ(next_reading_due(bench.record, bench.forecast, rule).due_ms, RecordBuilder::moment_ms(7.25));
    bench.forecast.last_reading_ms = RecordBuilder::moment_ms(7.3);
    const ReadingDue after = next_reading_due(bench.record, bench.forecast, rule);
    EXPECT_FALSE(after.due_ms);
    EXPECT_FALSE(after.why.empty());
}

TEST(ReadingDue, the_earliest_of_several_parts_wins) {
    const Bench bench;
    EXPECT_EQ(next_reading_due(bench.record, bench.forecast, {.every_min = 180, .gauge_drop_pt = 5, .before_cut_off_min = 30}).because,
              DueBecause::gauge_drop);
    EXPECT_EQ(next_reading_due(bench.record, bench.forecast, {.every_min = 20, .gauge_drop_pt = 5, .before_cut_off_min = 30}).because,
              DueBecause::interval);
    EXPECT_EQ(next_reading_due(bench.record, bench.forecast, {.every_min = 300, .gauge_drop_pt = 50, .before_cut_off_min = 60}).because,
              DueBecause::cut_off);
}

TEST(ReadingDue, a_part_the_forecast_cannot_serve_leaves_the_others_standing) {
    Bench bench;
    bench.forecast.cut_off.reset();
    bench.forecast.cut_off_reason = "nothing has been delivered yet";
    EXPECT_EQ(next_reading_due(bench.record, bench.forecast, {.every_min = 60, .gauge_drop_pt = 80, .before_cut_off_min = 30}).due_ms,
              RecordBuilder::moment_ms(5));
    const ReadingDue none = next_reading_due(bench.record, bench.forecast, {.every_min = {}, .gauge_drop_pt = {}, .before_cut_off_min = 30});
    EXPECT_FALSE(none.due_ms);
    EXPECT_EQ(none.why, "nothing has been delivered yet");
}

TEST(ReadingDue, nothing_is_due_without_a_rule_a_reading_or_a_running_run) {
    Bench bench;
    const ReadingRule rule{.every_min = 30, .gauge_drop_pt = {}, .before_cut_off_min = {}};
    EXPECT_EQ(next_reading_due(bench.record, bench.forecast, {}).why, "no reminder is set");
    bench.forecast.last_reading_ms.reset();
    EXPECT_FALSE(next_reading_due(bench.record, bench.forecast, rule).due_ms);
    bench.record.run.end = RunEnd::cut_off_seen;
    EXPECT_EQ(next_reading_due(bench.record, bench.forecast, rule).why, "the run has ended");
}

TEST(ReadingDue, numbers_that_make_no_sense_are_left_out) {
    const Bench bench;
    for (const double wrong : {0.0, -5.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(), 1e300})
        EXPECT_FALSE(next_reading_due(bench.record, bench.forecast, {.every_min = wrong, .gauge_drop_pt = wrong, .before_cut_off_min = {}}).due_ms)
            << wrong;
}

TEST(ReadingDue, overdue_counts_from_the_moment_due) {
    const ReadingDue due{RecordBuilder::moment_ms(4.5), DueBecause::interval, {}};
    EXPECT_EQ(overdue_min(due, RecordBuilder::moment_ms(4)), 0);
    EXPECT_NEAR(*overdue_min(due, RecordBuilder::moment_ms(4.75)), 15, 1e-9);
    EXPECT_FALSE(overdue_min({}, RecordBuilder::moment_ms(4)));
}

} // namespace
} // namespace ullage::test
