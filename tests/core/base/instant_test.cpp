// SPDX-License-Identifier: GPL-3.0-or-later
// Offsets and dates of clock changes: IANA time zone database (zones Europe/Vienna, Asia/Kathmandu,
// Australia/Lord_Howe, America/St_Johns). Form of date and time: ISO 8601-1:2019, 5.4.2, and the examples of
// RFC 3339, section 5.8.
#include "base/instant.h"

#include <gtest/gtest.h>

#include <random>

using namespace ullage;

namespace {

constexpr const char* vienna = "Europe/Vienna";

UtcMs at(std::string_view text, std::string_view zone = "UTC") {
    const auto parsed = parse_iso8601(text, zone);
    EXPECT_TRUE(parsed.ok()) << text << ": " << (parsed.ok() ? "" : parsed.error().sentence());
    return parsed.ok() ? parsed.value() : 0;
}

LocalTime local(int year, int month, int day, int hour, int minute) {
    LocalTime time;
    time.year = year, time.month = month, time.day = day, time.hour = hour, time.minute = minute;
    return time;
}

} // namespace

TEST(Instant, reads_the_examples_of_rfc_3339) {
    // 1985-04-12T23:20:50.52Z and 1996-12-19T16:39:57-08:00 = 1996-12-20T00:39:57Z; counts by POSIX's
    // formula.
    EXPECT_EQ(at("1985-04-12T23:20:50.52Z"), 482'196'050'520);
    EXPECT_EQ(at("1996-12-19T16:39:57-08:00"), at("1996-12-20T00:39:57Z"));
    EXPECT_EQ(at("1937-01-01T12:00:27.87+00:20"), at("1937-01-01T11:40:27.870Z"));
    EXPECT_EQ(at("1970-01-01T00:00Z"), 0);
}

TEST(Instant, accepts_each_form_of_offset_and_separator) {
    const UtcMs want = at("2027-05-14T16:00Z");
    for (const char* text :
         {"2027-05-14T18:00+02:00", "2027-05-14T18:00+0200", "2027-05-14T18:00+02", "2027-05-14 18:00:00+02:00", "2027-05-14T18:00:00.000+02:00",
          "2027-05-14T18:00:00,0+02", "2027-05-14t16:00z", "2027-05-14T18:00", "2027-05-14T13:30-02:30"})
        EXPECT_EQ(at(text, vienna), want) << text;
}

TEST(Instant, digits_beyond_milliseconds_are_cut_off) {
    EXPECT_EQ(at("2027-05-14T16:00:00.1239Z") - at("2027-05-14T16:00Z"), 123);
    EXPECT_EQ(at("2027-05-14T16:00:00.5Z") - at("2027-05-14T16:00Z"), 500);
}

TEST(Instant, refuses_text_of_another_form) {
    for (const char* text :
         {"", "2027", "2027-05-14", "14.05.2027 18:00", "2027-5-14T18:00", "2027-05-14T18", "2027-05-14T18:00:", "2027-05-14T18:00:00.",
          "2027-05-14T18:00+", "2027-05-14T18:00+2", "2027-05-14T18:00+02:0", "2027-05-14T18:00+02:00x", "2027-05-14T18:00Zx", "2027-05-14T18:00 ",
          " 2027-05-14T18:00", "2027-05-14T18:00+25:00", "2027-05-14T18:00+02:60", "2027-05-14x18:00", "2027-05-14T18:00\n"})
        EXPECT_FALSE(parse_iso8601(text, "UTC").ok()) << text;
}

TEST(Instant, refuses_dates_and_times_that_do_not_exist) {
    for (const char* text : {"2027-02-29T12:00Z", "2100-02-29T12:00Z", "2027-00-01T12:00Z", "2027-13-01T12:00Z", "2027-04-31T12:00Z",
                             "2027-04-00T12:00Z", "2027-04-01T24:00Z", "2027-04-01T12:60Z", "2027-04-01T12:00:60Z"}) {
        const auto parsed = parse_iso8601(text, "UTC");
        ASSERT_FALSE(parsed.ok()) << text;
        EXPECT_FALSE(parsed.error().remedy.empty()) << text;
    }
    EXPECT_TRUE(parse_iso8601("2028-02-29T12:00Z", "UTC").ok());
    EXPECT_TRUE(parse_iso8601("2000-02-29T12:00Z", "UTC").ok());
}

TEST(Instant, a_time_skipped_when_clocks_go_forward_is_refused) {
    // 2027-03-28, 02:00 becomes 03:00 in Europe/Vienna.
    for (Doubled doubled : {Doubled::refuse, Doubled::earlier, Doubled::later}) {
        const auto skipped = from_local(local(2027, 3, 28, 2, 30), vienna, doubled);
        ASSERT_FALSE(skipped.ok());
        EXPECT_NE(skipped.error().what.text().find("does not exist"), std::string::npos);
    }
    EXPECT_EQ(from_local(local(2027, 3, 28, 1, 59), vienna).value(), at("2027-03-28T00:59Z"));
    EXPECT_EQ(from_local(local(2027, 3, 28, 3, 0), vienna).value(), at("2027-03-28T01:00Z"));
}

TEST(Instant, a_doubled_time_is_refused_or_taken_as_asked) {
    // 2027-10-31, 03:00 becomes 02:00 in Europe/Vienna.
    const auto refused = from_local(local(2027, 10, 31, 2, 30), vienna);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().what.text().find("occurs twice"), std::string::npos);
    EXPECT_NE(refused.error().remedy.text().find("2027-10-31T02:30+02:00 or 2027-10-31T02:30+01:00"), std::string::npos);
    EXPECT_EQ(from_local(local(2027, 10, 31, 2, 30), vienna, Doubled::earlier).value(), at("2027-10-31T00:30Z"));
    EXPECT_EQ(from_local(local(2027, 10, 31, 2, 30), vienna, Doubled::later).value(), at("2027-10-31T01:30Z"));
    EXPECT_EQ(parse_iso8601("2027-10-31T02:30", vienna, Doubled::later).value(), at("2027-10-31T01:30Z"));
    EXPECT_EQ(from_local(local(2027, 10, 31, 3, 0), vienna).value(), at("2027-10-31T02:00Z"));
}

TEST(Instant, a_half_hour_clock_change_is_understood) {
    // Australia/Lord_Howe goes back by 30 minutes at 02:00 on 2027-04-04 (+11:00 to +10:30).
    const auto early = from_local(local(2027, 4, 4, 1, 45), "Australia/Lord_Howe", Doubled::earlier);
    const auto late = from_local(local(2027, 4, 4, 1, 45), "Australia/Lord_Howe", Doubled::later);
    ASSERT_TRUE(early.ok() && late.ok());
    EXPECT_EQ(late.value() - early.value(), 30 * 60'000);
    EXPECT_EQ(format_iso8601(late.value(), "Australia/Lord_Howe"), "2027-04-04T01:45+10:30");
}

TEST(Instant, local_time_has_weekday_and_offset) {
    const LocalTime time = to_local(at("2027-05-14T16:05:07.089Z"), "Asia/Kathmandu");
    EXPECT_EQ(time.year, 2027);
    EXPECT_EQ(time.month, 5);
    EXPECT_EQ(time.day, 14);
    EXPECT_EQ(time.hour, 21);
    EXPECT_EQ(time.minute, 50);
    EXPECT_EQ(time.second, 7);
    EXPECT_EQ(time.millisecond, 89);
    EXPECT_EQ(time.weekday, 5); // a Friday
    EXPECT_EQ(time.offset_minutes, 345);
}

TEST(Instant, before_the_epoch_milliseconds_stay_positive) {
    const LocalTime time = to_local(-1, "UTC");
    EXPECT_EQ(time.year, 1969);
    EXPECT_EQ(time.second, 59);
    EXPECT_EQ(time.millisecond, 999);
    EXPECT_EQ(format_iso8601(-1, "UTC"), "1969-12-31T23:59:59.999Z");
}

TEST(Instant, writes_only_what_is_not_zero) {
    const UtcMs time = at("2027-05-14T16:00Z");
    EXPECT_EQ(format_iso8601(time, vienna), "2027-05-14T18:00+02:00");
    EXPECT_EQ(format_iso8601(time, "UTC"), "2027-05-14T16:00Z");
    EXPECT_EQ(format_iso8601(time + 5000, vienna), "2027-05-14T18:00:05+02:00");
    EXPECT_EQ(format_iso8601(time + 5, "America/St_Johns"), "2027-05-14T13:30:00.005-02:30");
    EXPECT_EQ(format_iso8601(at("2027-01-14T16:00Z"), "Europe/London"), "2027-01-14T16:00+00:00");
}

TEST(Instant, an_unknown_zone_is_read_as_utc_but_refused_for_local_times) {
    for (const char* zone : {"", "Mars/Olympus", "localtime", "../../etc/passwd", "europe/vienna", "Europe"}) {
        EXPECT_FALSE(zone_exists(zone)) << zone;
        EXPECT_EQ(to_local(0, zone).hour, 0) << zone;
        EXPECT_EQ(format_iso8601(0, zone), "1970-01-01T00:00Z") << zone;
        const auto refused = from_local(local(2027, 1, 1, 0, 0), zone);
        ASSERT_FALSE(refused.ok()) << zone;
        EXPECT_NE(refused.error().what.text().find("no time zone"), std::string::npos);
        EXPECT_TRUE(parse_iso8601("2027-01-01T00:00Z", zone).ok()) << "an offset needs no zone";
    }
    for (const char* zone : {"UTC", "Etc/UTC", vienna, "Asia/Kathmandu", "Pacific/Apia"}) EXPECT_TRUE(zone_exists(zone)) << zone;
}

TEST(Instant, the_machines_zone_is_one_that_exists) { EXPECT_TRUE(zone_exists(machine_zone())); }

TEST(Instant, reading_what_was_written_gives_the_same_instant) {
    std::mt19937_64 random(20270514);
    const char* zones[] = {"UTC",         vienna, "Asia/Kathmandu", "America/St_Johns", "Australia/Lord_Howe", "Pacific/Apia", "Africa/Monrovia",
                           "Mars/Olympus"};
    std::uniform_int_distribution<UtcMs> any(earliest_ms, latest_ms), recent(at("1850-01-01T00:00Z"), at("2040-01-01T00:00Z"));
    for (int i = 0; i < 4000; ++i) {
        UtcMs time = i % 2 ? any(random) : recent(random);
        if (i % 3 == 0) time -= time % 60'000;
        for (const char* zone : zones) {
            const auto back = parse_iso8601(format_iso8601(time, zone), zone);
            ASSERT_TRUE(back.ok()) << format_iso8601(time, zone);
            ASSERT_EQ(back.value(), time) << zone;
        }
    }
}

TEST(Instant, every_minute_of_the_days_of_change_comes_back_from_its_local_time) {
    for (const char* day : {"2027-03-27T12:00Z", "2027-10-30T12:00Z"})
        for (UtcMs time = at(day); time < at(day) + 24 * 3'600'000; time += 60'000) {
            const LocalTime there = to_local(time, vienna);
            const UtcMs early = from_local(there, vienna, Doubled::earlier).value();
            const UtcMs late = from_local(there, vienna, Doubled::later).value();
            ASSERT_TRUE(early == time || late == time) << format_iso8601(time, vienna);
        }
}

TEST(Instant, years_are_limited_to_what_four_digits_and_the_calendar_allow) {
    EXPECT_EQ(at("1583-01-02T00:00Z"), earliest_ms);
    EXPECT_EQ(at("9999-12-30T23:59:59.999Z"), latest_ms);
    for (const char* text : {"1583-01-01T23:59Z", "1582-12-31T00:00Z", "0000-01-01T00:00Z", "9999-12-31T00:00Z"})
        EXPECT_FALSE(parse_iso8601(text, "UTC").ok()) << text;
    EXPECT_EQ(format_iso8601(std::numeric_limits<UtcMs>::max(), vienna), format_iso8601(latest_ms, vienna));
    EXPECT_EQ(format_iso8601(std::numeric_limits<UtcMs>::min(), vienna), format_iso8601(earliest_ms, vienna));
    LocalTime far;
    far.year = std::numeric_limits<int>::max();
    EXPECT_FALSE(from_local(far, vienna).ok());
    far.year = 2027, far.month = std::numeric_limits<int>::min();
    EXPECT_FALSE(from_local(far, vienna).ok());
    far.month = 257, far.day = 1; // would be January if cut to a byte
    EXPECT_FALSE(from_local(far, vienna).ok());
    far.month = 1, far.hour = -1;
    EXPECT_FALSE(from_local(far, vienna).ok());
}

TEST(Instant, short_texts_are_local) {
    const UtcMs time = at("2027-12-31T23:30Z");
    EXPECT_EQ(clock_text(time, vienna), "00:30");
    EXPECT_EQ(day_text(time, vienna), "1 January");
    EXPECT_EQ(date_text(time, vienna), "1 January 2028");
    EXPECT_EQ(date_text(time, "UTC"), "31 December 2027");
    EXPECT_EQ(day_text(at("2027-05-14T16:00Z"), "UTC"), "14 May");
}

TEST(Instant, durations_are_rounded_to_the_minute) {
    EXPECT_EQ(duration_text(14.6), "14 h 36 min");
    EXPECT_EQ(duration_text(0.5), "30 min");
    EXPECT_EQ(duration_text(0), "0 min");
    EXPECT_EQ(duration_text(1.9999), "2 h 0 min");
    EXPECT_EQ(duration_text(-1.5), "-1 h 30 min");
    EXPECT_EQ(duration_text(std::numeric_limits<double>::quiet_NaN()), "not known");
    EXPECT_EQ(hours_between(0, 5'400'000), 1.5);
}
