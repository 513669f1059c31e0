// SPDX-License-Identifier: GPL-3.0-or-later
// Meaning of the tags: CIPA DC-008-2019 (Exif 2.32), 4.6.5 (DateTimeOriginal, SubSecTimeOriginal, OffsetTimeOriginal).
#include "formats/entry/photo_time.h"

#include "support/photo_bytes.h"

#include <gtest/gtest.h>

#include <random>

namespace ullage {
namespace {

using namespace test;

const std::string zone = "Europe/Vienna";
constexpr UtcMs at_16_utc = 1'810'310'400'000; // 2027-05-14T16:00:00Z

std::optional<PhotoMoment> jpeg_time(const std::string& date, const std::string& offset = {}, const std::string& fraction = {}) {
    return photo_time(jpeg_with_exif(bare_jpeg(), exif_block(date, offset, fraction)), zone);
}

TEST(PhotoTime, an_offset_of_the_camera_beats_the_zone_of_the_run) {
    EXPECT_EQ(jpeg_time("2027:05:14 21:30:00", "+05:30"), (PhotoMoment{at_16_utc, false}));
    EXPECT_EQ(jpeg_time("2027:05:14 09:00:00", "-07:00"), (PhotoMoment{at_16_utc, false}));
}

TEST(PhotoTime, without_an_offset_the_time_is_local_to_the_run_and_marked_as_assumed) {
    EXPECT_EQ(jpeg_time("2027:05:14 18:00:00"), (PhotoMoment{at_16_utc, true}));
    // Blank-filled when unknown.
    EXPECT_EQ(jpeg_time("2027:05:14 18:00:00", "   :  "), (PhotoMoment{at_16_utc, true}));
}

TEST(PhotoTime, the_fraction_of_the_second_counts_by_its_digits) {
    EXPECT_EQ(jpeg_time("2027:05:14 18:00:12", "+02:00", "25"), (PhotoMoment{at_16_utc + 12'250, false}));
    EXPECT_EQ(jpeg_time("2027:05:14 18:00:12", "+02:00", "007"), (PhotoMoment{at_16_utc + 12'007, false}));
    EXPECT_EQ(jpeg_time("2027:05:14 18:00:12", "+02:00", "    "), (PhotoMoment{at_16_utc + 12'000, false}));
}

TEST(PhotoTime, a_png_tells_its_time_too) {
    // PNG keeps the block in an eXIf chunk (PNG specification, third edition, 11.3.4.5).
    const std::string chunk = png_chunk("eXIf", exif_block("2027:05:14 18:00:00", "+02:00"));
    EXPECT_EQ(photo_time(bare_png(8, 8, chunk), zone), (PhotoMoment{at_16_utc, false}));
}

TEST(PhotoTime, a_blank_zero_or_impossible_time_is_no_time) {
    for (const char* date :
         {"    :  :     :  :  ", "0000:00:00 00:00:00", "2027:02:30 10:00:00", "2027:05:14 25:00:00", "2027-05-14 18:00:00", "soon", ""})
        EXPECT_EQ(jpeg_time(date), std::nullopt) << date;
}

TEST(PhotoTime, a_local_time_that_the_zone_skips_or_has_twice_is_no_time) {
    EXPECT_EQ(jpeg_time("2027:03:28 02:30:00"), std::nullopt);
    EXPECT_EQ(jpeg_time("2027:10:31 02:30:00"), std::nullopt);
    EXPECT_TRUE(jpeg_time("2027:10:31 02:30:00", "+01:00"));
}

TEST(PhotoTime, a_photo_without_tags_has_no_time) {
    EXPECT_EQ(photo_time(bare_jpeg(), zone), std::nullopt);
    EXPECT_EQ(photo_time(bare_png(), zone), std::nullopt);
    EXPECT_EQ(photo_time({}, zone), std::nullopt);
    EXPECT_EQ(photo_time("no picture at all", zone), std::nullopt);
}

TEST(PhotoTime, bytes_cut_off_or_spoilt_anywhere_do_no_harm_and_nothing_is_said_of_them_on_the_terminal) {
    testing::internal::CaptureStderr();
    const std::string chunk = png_chunk("eXIf", exif_block("2027:05:14 18:00:00", "+02:00", "25"));
    for (const std::string& whole : {jpeg_with_exif(bare_jpeg(8, 8, 40), exif_block("2027:05:14 18:00:00", "+02:00", "25")), bare_png(8, 8, chunk)}) {
        int told = 0;
        for (std::size_t length = 0; length <= whole.size(); ++length)
            told += photo_time(std::string_view(whole).substr(0, length), zone).has_value() ? 1 : 0;
        EXPECT_GE(told, 1); // the whole one at least
        std::mt19937 random(20270514);
        for (int round = 0; round < 3000; ++round) {
            std::string spoilt = whole;
            for (int i = 0; i < 3; ++i) spoilt[random() % spoilt.size()] = static_cast<char>(random() & 0xff);
            const auto moment = photo_time(spoilt, zone);
            if (moment) {
                EXPECT_GE(moment->time_ms, earliest_ms);
                EXPECT_LE(moment->time_ms, latest_ms);
            }
        }
    }
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
}

} // namespace
} // namespace ullage
