// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/end_doubts.h"
#include "support/record_builder.h"
#include "unit/unit_analysis.h"

#include <gtest/gtest.h>

#include <string>

namespace ullage::test {
namespace {

const UnitFit no_earlier_drains = fit_unit(std::vector<RunRecord>());

std::string said(RunRecord& record) {
    std::string all;
    for (const Message& doubt : end_doubts(record, no_earlier_drains)) all += doubt.text() + "\n";
    return all;
}

/// 90 W from 02:00 on, noted each hour, of which the gauge of a 1000 Wh unit makes 9 points.
RecordBuilder steady_hours(int hours) {
    RecordBuilder run;
    for (int h = 0; h <= hours; ++h) run.at(h, 100 - 9 * h, 90 * h);
    run.record().run.end_noticed_within_min.reset();
    return run;
}

TEST(EndDoubts, an_end_that_gauge_and_load_bear_out_is_not_questioned) {
    // 900 Wh of 1000 Wh and 10 % shown at 12:00; 45 Wh more are half an hour.
    RecordBuilder run = steady_hours(10);
    run.at(10.5, 5, 945, MarkKind::cut_off);
    EXPECT_EQ(said(run.record()), "");
}

TEST(EndDoubts, an_end_long_before_the_readings_let_it_be_expected_is_questioned_with_the_range) {
    // 64 % shown at 06:00 and off at 06:15: what is left would last for hours.
    RecordBuilder run = steady_hours(4);
    run.at(4.25, 64, 383, MarkKind::cut_off);
    EXPECT_NE(said(run.record()).find("06:15 is "), std::string::npos) << said(run.record());
    EXPECT_NE(said(run.record()).find("before the readings let the cut-off be expected"), std::string::npos) << said(run.record());
    run.record().run.end = RunEnd::stopped_by_tester;
    run.record().readings.back().values.mark.reset();
    EXPECT_EQ(said(run.record()), "") << "whoever stops a run says when";
}

TEST(EndDoubts, an_end_seen_later_than_a_steady_load_allows_is_questioned_and_one_found_later_is_not) {
    // 18 Wh after 12:00 are 12 minutes at 90 W; seen to go off at 12:45 it would have taken 67 Wh.
    RecordBuilder run = steady_hours(10);
    run.at(10.75, 8, 918, MarkKind::cut_off);
    EXPECT_NE(
        said(run.record()).find("by the 18 Wh that a steady load of 90 W took after the reading at 12:00 it went off about 12:12, not at 12:45"),
        std::string::npos)
        << said(run.record());
    run.record().run.end = RunEnd::found_off;
    run.record().readings.back().values.mark.reset();
    EXPECT_EQ(said(run.record()), "");
    run.record().run.end_noticed_within_min = 3;
    EXPECT_NE(said(run.record()).find("about 12:12, not at 12:45"), std::string::npos) << said(run.record());
}

TEST(EndDoubts, an_end_earlier_than_the_load_needs_for_what_the_register_took_is_questioned) {
    // 45 Wh after 12:00 are 30 minutes at 90 W, not 10.
    RecordBuilder run = steady_hours(10);
    run.at(10 + 10.0 / 60, 5, 945, MarkKind::cut_off);
    EXPECT_NE(said(run.record()).find("about 12:30, not at 12:10"), std::string::npos) << said(run.record());
}

} // namespace
} // namespace ullage::test
