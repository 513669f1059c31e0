// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"

#include <gtest/gtest.h>

#include <limits>

using namespace ullage;

namespace {

Quantity limits(std::string unit, std::optional<double> value, std::optional<double> lower, std::optional<double> upper, Kind kind) {
    return Quantity{"x", std::move(unit), value, lower, upper, kind, {}};
}

} // namespace

TEST(Quantity, measured_and_projected_show_value_and_half_width) {
    EXPECT_EQ(quantity_text(known("delivered_wh", "Wh", 893.2, 17.1, Kind::measured)), "893 ± 17 Wh");
    EXPECT_EQ(quantity_text(known("usable", "1", 0.7812, 0.0161, Kind::projected)), "0.781 ± 0.016");
    EXPECT_EQ(quantity_text(known("load_w", "W", 64.23, std::nullopt, Kind::measured, "no uncertainty stated")), "64.2 W");
    EXPECT_EQ(quantity_text(known("load_w", "W", 64.23, std::nullopt, Kind::measured, "no uncertainty stated"), 0), "64 W");
}

TEST(Quantity, at_least_shows_the_bound) {
    EXPECT_EQ(quantity_text(known("stored_wh", "Wh", 400, std::nullopt, Kind::at_least), 0), "at least 400 Wh");
    EXPECT_EQ(quantity_text(known("stored_wh", "Wh", 417, 17.0, Kind::at_least), 0), "at least 400 Wh");
    EXPECT_EQ(quantity_text(limits("Wh", std::nullopt, 400, std::nullopt, Kind::at_least), 0), "at least 400 Wh");
}

TEST(Quantity, brackets_and_lopsided_intervals_are_ranges) {
    EXPECT_EQ(quantity_text(limits("1", 0.9, 0.86, 0.95, Kind::measured)), "0.86 to 0.95");
    EXPECT_EQ(quantity_text(limits("h", std::nullopt, 12, 14, Kind::bracket)), "12.0 to 14.0 h");
    EXPECT_EQ(quantity_text(limits("h", 13, 12, 14, Kind::bracket)), "12.0 to 14.0 h");
    EXPECT_EQ(quantity_text(limits("1", 0.9, 0.86, 0.942, Kind::measured)), "0.900 ± 0.041") << "sides differ by 2 % only";
}

TEST(Quantity, a_single_limit_is_said_as_such) {
    EXPECT_EQ(quantity_text(limits("Wh", std::nullopt, std::nullopt, 12.5, Kind::bracket)), "at most 12.5 Wh");
    EXPECT_EQ(quantity_text(limits("Wh", std::nullopt, 12.5, std::nullopt, Kind::bracket)), "at least 12.5 Wh");
    EXPECT_EQ(quantity_text(limits("h", std::nullopt, 12, 12, Kind::bracket)), "12.0 h");
}

TEST(Quantity, what_is_not_known_shows_no_number) {
    const Quantity nothing = not_known("no_load_w", "W", "only one load was tested");
    EXPECT_EQ(quantity_text(nothing), "not known");
    EXPECT_FALSE(nothing.value || nothing.lower || nothing.upper || nothing.half_width());
    EXPECT_EQ(nothing.reason, "only one load was tested");
    EXPECT_EQ(quantity_text(limits("W", std::numeric_limits<double>::quiet_NaN(), {}, {}, Kind::measured)), "not known");
    EXPECT_EQ(quantity_text(limits("W", {}, {}, {}, Kind::measured)), "not known");
}

TEST(Quantity, a_symmetric_interval_has_its_half_width) {
    const Quantity quantity = known("d", "Wh", 100, 4.0, Kind::measured);
    EXPECT_EQ(*quantity.lower, 96);
    EXPECT_EQ(*quantity.upper, 104);
    EXPECT_EQ(*quantity.half_width(), 4);
}

TEST(Quantity, kinds_have_their_words) {
    EXPECT_EQ(kind_text(Kind::measured), "measured");
    EXPECT_EQ(kind_text(Kind::projected), "projected");
    EXPECT_EQ(kind_text(Kind::at_least), "at least");
    EXPECT_EQ(kind_text(Kind::bracket), "bracket");
    EXPECT_EQ(kind_text(Kind::not_known), "not known");
}
