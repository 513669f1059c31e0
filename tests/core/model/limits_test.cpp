// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/limits.h"

#include "model/load_list.h"
#include "model/tags.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace ullage {
namespace {

std::string sentence_of(const Result<void>& result) { return result ? std::string("good") : result.error().sentence(); }

TEST(Limits, a_number_out_of_range_is_refused_with_field_value_range_and_what_to_do) {
    EXPECT_EQ(sentence_of(check_number("rated energy", 2e9, rated_energy_range)),
              "rated energy: 2000000000 Wh is out of range; give 0.000001 to 1000000000 Wh, or leave it empty");
    EXPECT_EQ(sentence_of(check_number("price", -1.0, price_range)), "price: -1 is out of range; give 0 to 1000000000000, or leave it empty");
    EXPECT_TRUE(check_number("price", 0.0, price_range).ok());
    EXPECT_TRUE(check_number("price", std::nullopt, price_range).ok());
    for (const double value : {std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(), std::nan("")})
        EXPECT_EQ(check_number("gauge", value, gauge_range).error().what, "the value is no finite number");
}

TEST(Limits, a_text_is_counted_in_characters_not_in_bytes) {
    std::string text;
    for (int i = 0; i < 20; ++i) text += "≈";
    EXPECT_TRUE(check_text("name", text, 20).ok());
    EXPECT_EQ(sentence_of(check_text("name", text, 19)), "name: the text has 20 characters; give at most 19");
}

TEST(Limits, a_text_that_is_no_utf_8_is_refused_with_the_place_of_the_byte) {
    EXPECT_EQ(check_text("name", "ab\xff", 9).error().what, "byte 3 of the text is no UTF-8 character");
    EXPECT_FALSE(check_text("name", "\xed\xa0\x80", 9).ok()) << "half of a surrogate pair";
}

TEST(Limits, moments_lie_in_the_years_1900_to_2199) {
    EXPECT_EQ(format_iso8601(earliest_moment_ms, "UTC"), "1900-01-01T00:00Z");
    EXPECT_EQ(format_iso8601(latest_moment_ms, "UTC"), "2199-12-31T23:59:59.999Z");
    EXPECT_TRUE(check_moment("time", earliest_moment_ms).ok());
    EXPECT_EQ(sentence_of(check_moment("time", latest_moment_ms + 1)),
              "time: 2200-01-01T00:00Z is out of range; give a date in the years 1900 to 2199");
    EXPECT_FALSE(check_moment("time", std::numeric_limits<UtcMs>::max()).ok());
    EXPECT_FALSE(check_moment("time", std::numeric_limits<UtcMs>::min()).ok());
}

TEST(Limits, a_load_list_has_a_bounded_number_of_appliances_and_bounded_texts) {
    Appliance lamp;
    lamp.name = "lamp";
    lamp.power_w = 5;
    lamp.hours_per_day = 4;
    LoadList list;
    list.name = "tent";
    list.appliances.assign(most_appliances, lamp);
    EXPECT_TRUE(check(list).ok());
    list.appliances.push_back(lamp);
    EXPECT_EQ(sentence_of(check(list)), "load list: there are 10001 appliances; keep at most 10000");
    list.appliances.clear();
    list.remark.assign(longest_remark + 1, 'x');
    EXPECT_FALSE(check(list).ok());
    lamp.name.assign(longest_name + 1, 'x');
    EXPECT_FALSE(check(lamp).ok());
}

TEST(Limits, a_unit_has_a_bounded_number_of_tags) {
    std::string text;
    for (std::size_t i = 0; i < most_tags; ++i) text += "t" + std::to_string(i) + ";";
    EXPECT_EQ(tags_from(text).value().size(), most_tags);
    const auto beyond = tags_from(text + "one more");
    ASSERT_FALSE(beyond.ok());
    EXPECT_EQ(beyond.error().remedy, "keep at most 200");
}

} // namespace
} // namespace ullage
