// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/run_record.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

TEST(LastShown, a_log_of_the_gauge_goes_on_after_the_notes_while_the_run_goes_on) {
    RunRecord record;
    EXPECT_FALSE(last_shown_percent(record));
    Reading reading;
    reading.values.time_ms = 1000;
    reading.values.gauge_percent = 90;
    record.readings.push_back(reading);
    reading.values.time_ms = 3000;
    reading.values.gauge_percent = 50;
    reading.withdrawn = true;
    record.readings.push_back(reading);
    EXPECT_EQ(last_shown_percent(record), 90.0) << "what was withdrawn does not count";
    record.gauge_log.emplace();
    record.gauge_log->samples = 5;
    record.gauge_log->last_ms = 2000;
    record.gauge_log->last_percent = 82;
    EXPECT_EQ(last_shown_percent(record), 82.0);
    record.gauge_log->last_ms = 500;
    EXPECT_EQ(last_shown_percent(record), 90.0) << "the note is the later one";
    record.gauge_log->last_ms = 2000;
    record.run.end = RunEnd::cut_off_seen;
    EXPECT_EQ(last_shown_percent(record), 90.0) << "a log may go on after the end of a run";
}

} // namespace
} // namespace ullage
