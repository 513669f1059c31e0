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
    EXPECT_EQ(quantity_text(limits("1", 0.9, 0.86, 0.95, Kind::measured)), "0.860 to 0.950");
    EXPECT_EQ(quantity_text(limits("h", std::nullopt, 12, 14, Kind::bracket)), "12.0 to 14.0 h");
    EXPECT_EQ(quantity_text(limits("h", 13, 12, 14, Kind::bracket)), "12.0 to 14.0 h");
    EXPECT_EQ(quantity_text(limits("1", 0.9, 0.86, 0.942, Kind::measured)), "0.900 ± 0.041") << "sides differ by 2 % only";
}

TEST(Quantity, a_single_limit_is_said_as_such) {
    EXPECT_EQ(quantity_text(limits("W", std::nullopt, std::nullopt, 12.5, Kind::bracket)), "at most 12.5 W");
    EXPECT_EQ(quantity_text(limits("W", std::nullopt, 12.5, std::nullopt, Kind::bracket)), "at least 12.5 W");
    EXPECT_EQ(quantity_text(limits("h", std::nullopt, 12, 12, Kind::bracket)), "12.0 h");
}

TEST(Quantity, a_share_is_read_in_percent_and_the_difference_of_two_in_points) {
    EXPECT_EQ(quantity_text(known("usable_fraction", "1", 0.69, 0.0066, Kind::measured)), "69.00 ± 0.66 %");
    EXPECT_EQ(quantity_text(known("round_trip_efficiency", "1", 0.8512, std::nullopt, Kind::measured), 3), "85.1 %");
    EXPECT_EQ(quantity_text(Quantity{"usable_fraction", "1", {}, 0.624, {}, Kind::at_least, {}}, 3), "at least 62.4 %");
    EXPECT_EQ(quantity_text(Quantity{"usable_fraction", "1", {}, 0.604, 0.715, Kind::bracket, {}}), "60 to 72 %");
    EXPECT_EQ(quantity_text(known("difference", "1", 0.14, 0.02, Kind::measured)), "14.0 ± 2.0 pt");
    EXPECT_EQ(quantity_text(known("rank", "1", 3, std::nullopt, Kind::measured), 0), "3") << "a count is no share";
}

TEST(Quantity, energies_are_read_in_kilowatt_hours_from_ten_on) {
    EXPECT_EQ(quantity_text(known("own_wh_per_month", "Wh", 10592, 1236.0, Kind::projected)), "10.6 ± 1.2 kWh");
    EXPECT_EQ(quantity_text(known("rated_wh", "Wh", 12288, std::nullopt, Kind::measured), 0), "12.288 kWh");
    EXPECT_EQ(quantity_text(known("rated_wh", "Wh", 12000, std::nullopt, Kind::measured), 0), "12 kWh");
    EXPECT_EQ(quantity_text(Quantity{"delivered_wh", "Wh", {}, 10400, {}, Kind::at_least, {}}, 0), "at least 10.4 kWh");
    EXPECT_EQ(quantity_text(Quantity{"delivered_wh", "Wh", {}, 9800, 11300, Kind::bracket, {}}), "9.8 to 11.3 kWh");
    EXPECT_EQ(quantity_text(known("delivered_wh", "Wh", 9990, 20.0, Kind::measured)), "9990 ± 20 Wh");
    EXPECT_EQ(energy_text(9999.6), "10 kWh") << "what rounds to 10 kWh";
}

TEST(Quantity, an_energy_without_interval_has_no_decimals_and_one_with_a_wide_one_no_false_digits) {
    EXPECT_EQ(quantity_text(known("delivered_wh", "Wh", 4314.04, std::nullopt, Kind::measured)), "4314 Wh");
    EXPECT_EQ(quantity_text(known("delivered_wh", "Wh", 4314.04, 123, Kind::measured)), "4310 ± 120 Wh");
    EXPECT_EQ(quantity_text(known("delivered_wh", "Wh", 4437, 123.0, Kind::at_least)), "at least 4310 Wh");
}

TEST(Quantity, parts_keep_value_interval_and_unit_apart) {
    const QuantityParts parts = quantity_parts(known("usable_fraction", "1", 0.752, 0.012, Kind::measured), 3);
    EXPECT_EQ(parts.value, "75.2");
    EXPECT_EQ(parts.interval, "± 1.2");
    EXPECT_EQ(parts.unit, "%");
    EXPECT_EQ(parts_as_they_are(known("delivered_wh", "Wh", 12000, std::nullopt, Kind::measured)).value, "12000") << "in the unit that it has";
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
