// SPDX-License-Identifier: GPL-3.0-or-later
// Clock changes of Europe/Vienna in 2027 (IANA time zone database): 28 March 02:00 to 03:00, 31 October 03:00
// to 02:00.
#include "formats/entry/entry_text.h"

#include <gtest/gtest.h>

#include <string>

using namespace ullage;

namespace {

constexpr const char* vienna = "Europe/Vienna";

/// What is understood by `text` at `now`, written in Vienna's time; the error's `what` where it is refused.
std::string understood(std::string_view text, std::string_view now, const char* zone = vienna) {
    const auto moment = parse_moment(text, parse_iso8601(now, zone).value(), zone);
    return moment ? format_iso8601(moment.value(), zone) : moment.error().what.text();
}

void expect_refused(std::string_view text, std::string_view now, std::string_view why) {
    const auto moment = parse_moment(text, parse_iso8601(now, vienna).value(), vienna);
    ASSERT_FALSE(moment.ok()) << text;
    EXPECT_NE(moment.error().what.text().find(why), std::string::npos) << moment.error().what;
    EXPECT_FALSE(moment.error().remedy.empty());
}

} // namespace

TEST(EntryMoment, nothing_means_now_in_whole_seconds) {
    EXPECT_EQ(understood("", "2027-05-15T02:41:07.900"), "2027-05-15T02:41:07+02:00");
    EXPECT_EQ(understood("  ", "2027-05-15T02:41"), "2027-05-15T02:41+02:00");
}

TEST(EntryMoment, a_time_of_day_is_the_latest_that_is_past) {
    EXPECT_EQ(understood("02:40", "2027-05-15T02:41"), "2027-05-15T02:40+02:00");
    EXPECT_EQ(understood("2:40", "2027-05-15T02:41"), "2027-05-15T02:40+02:00");
    EXPECT_EQ(understood("02:40:30", "2027-05-15T02:41"), "2027-05-15T02:40:30+02:00");
    EXPECT_EQ(understood("23:50", "2027-05-15T02:41"), "2027-05-14T23:50+02:00");
    EXPECT_EQ(understood("23:50", "2027-01-01T00:10"), "2026-12-31T23:50+01:00");
}

TEST(EntryMoment, a_time_of_day_is_understood_as_people_write_it) {
    for (const char* text : {"0530", "05.30", "5.30", "5:30 am", "5:30am", "05:30 AM"})
        EXPECT_EQ(understood(text, "2027-05-15T09:41"), "2027-05-15T05:30+02:00") << text;
    EXPECT_EQ(understood("21.22", "2027-05-15T22:00"), "2027-05-15T21:22+02:00");
    EXPECT_EQ(understood("9:22 pm", "2027-05-15T22:00"), "2027-05-15T21:22+02:00");
    EXPECT_EQ(understood("12:05 am", "2027-05-15T22:00"), "2027-05-15T00:05+02:00");
    EXPECT_EQ(understood("12:05 pm", "2027-05-15T22:00"), "2027-05-15T12:05+02:00");
    EXPECT_EQ(understood("yesterday 3:05 am", "2027-05-15T22:00"), "2027-05-14T03:05+02:00");
}

TEST(EntryMoment, a_time_just_ahead_is_meant_as_typed) {
    EXPECT_EQ(understood("02:51", "2027-05-15T02:41"), "2027-05-15T02:51+02:00");
    EXPECT_EQ(understood("02:52", "2027-05-15T02:41"), "2027-05-14T02:52+02:00");
    EXPECT_EQ(understood("00:03", "2027-05-15T23:57"), "2027-05-16T00:03+02:00");
}

TEST(EntryMoment, a_span_is_counted_back_from_now) {
    EXPECT_EQ(understood("-10m", "2027-05-15T02:41:30"), "2027-05-15T02:31:30+02:00");
    EXPECT_EQ(understood("-1h30m", "2027-05-15T02:41"), "2027-05-15T01:11+02:00");
    EXPECT_EQ(understood("-2h", "2027-05-15T02:41"), "2027-05-15T00:41+02:00");
    EXPECT_EQ(understood("- 1 H 30 min", "2027-05-15T02:41"), "2027-05-15T01:11+02:00");
    EXPECT_EQ(understood("\xE2\x88\x92"
                         "10m",
                         "2027-05-15T02:41"),
              "2027-05-15T02:31+02:00");
    EXPECT_EQ(understood("-2h", "2027-03-28T04:00"), "2027-03-28T01:00+01:00") << "across the clock change";
}

TEST(EntryMoment, now_today_and_ago_are_words_of_the_tired) {
    EXPECT_EQ(understood("now", "2027-05-15T02:41:07.900"), "2027-05-15T02:41:07+02:00");
    EXPECT_EQ(understood("today 02:40", "2027-05-15T02:41"), "2027-05-15T02:40+02:00");
    EXPECT_EQ(understood("Today 00:01", "2027-05-15T00:02"), "2027-05-15T00:01+02:00");
    EXPECT_EQ(understood("10 min ago", "2027-05-15T02:41"), "2027-05-15T02:31+02:00");
    EXPECT_EQ(understood("1 h 30 m ago", "2027-05-15T00:41"), "2027-05-14T23:11+02:00");
    EXPECT_EQ(understood("2h ago", "2027-10-31T04:00"), "2027-10-31T02:00+01:00") << "across the clock change";
    expect_refused("today", "2027-05-15T02:41", "is no moment");
    expect_refused("ago", "2027-05-15T02:41", "is no moment");
    expect_refused("ten min ago", "2027-05-15T02:41", "is no moment");
}

TEST(EntryMoment, days_can_be_named) {
    EXPECT_EQ(understood("yesterday 23:50", "2027-05-15T02:41"), "2027-05-14T23:50+02:00");
    EXPECT_EQ(understood("Yesterday  1:05", "2027-03-01T12:00"), "2027-02-28T01:05+01:00");
    EXPECT_EQ(understood("14 May 23:50", "2027-05-15T02:41"), "2027-05-14T23:50+02:00");
    EXPECT_EQ(understood("14 may 2025 23:50", "2027-05-15T02:41"), "2025-05-14T23:50+02:00");
    EXPECT_EQ(understood("31 Dec 23:50", "2027-01-01T02:41"), "2026-12-31T23:50+01:00");
    EXPECT_EQ(understood("3 sept 23:50", "2027-05-15T02:41"), "2026-09-03T23:50+02:00");
    EXPECT_EQ(understood("29 Feb 12:00", "2027-05-15T02:41"), "2024-02-29T12:00+01:00");
    EXPECT_EQ(understood("29 Feb 12:00", "2028-02-28T12:00"), "2024-02-29T12:00+01:00");
    EXPECT_EQ(understood("29 Feb 12:00", "2028-03-01T12:00"), "2028-02-29T12:00+01:00");
}

TEST(EntryMoment, iso_dates_are_taken_with_and_without_offset) {
    EXPECT_EQ(understood("2027-05-14T18:00", "2027-05-15T02:41"), "2027-05-14T18:00+02:00");
    EXPECT_EQ(understood("2027-05-14 18:00:05", "2027-05-15T02:41"), "2027-05-14T18:00:05+02:00");
    EXPECT_EQ(understood("2027-05-14T18:00Z", "2027-05-15T02:41"), "2027-05-14T20:00+02:00");
}

TEST(EntryMoment, a_skipped_time_is_refused) {
    for (const char* text : {"02:30", "28 March 02:30", "28 Mar 2027 02:30", "2027-03-28T02:30"})
        expect_refused(text, "2027-03-28T12:00", "does not exist");
    expect_refused("yesterday 02:30", "2027-03-29T12:00", "does not exist");
    EXPECT_EQ(understood("02:30", "2027-03-28T01:00"), "2027-03-27T02:30+01:00") << "before the change yesterday's is meant";
    EXPECT_EQ(understood("02:30", "2027-03-29T12:00"), "2027-03-29T02:30+02:00");
}

TEST(EntryMoment, of_a_doubled_time_the_later_is_meant_once_it_is_past) {
    EXPECT_EQ(understood("02:30", "2027-10-31T12:00"), "2027-10-31T02:30+01:00");
    EXPECT_EQ(understood("02:30", "2027-10-31T02:40+01:00"), "2027-10-31T02:30+01:00");
    EXPECT_EQ(understood("02:30", "2027-10-31T02:40+02:00"), "2027-10-31T02:30+02:00");
    EXPECT_EQ(understood("02:50", "2027-10-31T02:05+01:00"), "2027-10-31T02:50+02:00");
    EXPECT_EQ(understood("31 Oct 02:30", "2027-10-31T12:00"), "2027-10-31T02:30+01:00");
    EXPECT_EQ(understood("2027-10-31T02:30", "2027-10-31T02:40+02:00"), "2027-10-31T02:30+02:00");
    EXPECT_EQ(understood("yesterday 02:30", "2027-11-01T12:00"), "2027-10-31T02:30+01:00");
}

TEST(EntryMoment, every_minute_of_the_days_of_change_is_understood_as_past_and_with_the_typed_clock) {
    for (const char* day : {"2027-03-28T00:00Z", "2027-10-31T00:00Z"})
        for (int minute = 0; minute < 24 * 60; ++minute) {
            const UtcMs now = parse_iso8601(day, "UTC").value() + minute * 60'000;
            const auto moment = parse_moment(clock_text(now, vienna), now, vienna);
            ASSERT_TRUE(moment.ok());
            ASSERT_EQ(moment.value(), now) << format_iso8601(now, vienna);
        }
}

TEST(EntryMoment, anything_else_is_refused_with_examples) {
    for (const char* text : {"x",
                             "2",
                             "2:4",
                             "02:40x",
                             "-",
                             "-10",
                             "-m",
                             "-10x",
                             "-10m5h",
                             "-1h2h",
                             "-1m2m",
                             "tomorrow 10:00",
                             "yesterday",
                             "yesterday x",
                             "14 May",
                             "May 14 23:50",
                             "14 Ma 23:50",
                             "14 Mai 23:50",
                             "14 May 27 23:50",
                             "a b c d e",
                             "14 May 2027 x 23:50",
                             "-9999999h",
                             ":",
                             "::"})
        expect_refused(text, "2027-05-15T02:41", "`" + std::string(text) + "` is no moment");
    expect_refused("24:00", "2027-05-15T02:41", "no time of day");
    expect_refused("12:60", "2027-05-15T02:41", "no time of day");
    expect_refused("31 April 12:00", "2027-05-15T02:41", "no date of the calendar");
    expect_refused("2027-13-01T12:00", "2027-05-15T02:41", "no date of the calendar");
    expect_refused("-9000h", "2027-05-15T02:41", "more than a year ago");
}

TEST(EntryMoment, an_unknown_zone_is_said_to_be_unknown) {
    const auto moment = parse_moment("02:40", 0, "Mars/Olympus");
    ASSERT_FALSE(moment.ok());
    EXPECT_NE(moment.error().what.text().find("no time zone"), std::string::npos);
}
