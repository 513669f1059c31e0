// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <limits>
#include <random>

using namespace ullage;

TEST(Number, point_and_comma_are_decimal_signs) {
    EXPECT_EQ(parse_number("431").value(), 431);
    EXPECT_EQ(parse_number("0.431").value(), 0.431);
    EXPECT_EQ(parse_number("0,431").value(), 0.431);
    EXPECT_EQ(parse_number("-12,5").value(), -12.5);
    EXPECT_EQ(parse_number("+7").value(), 7);
    EXPECT_EQ(parse_number(".5").value(), 0.5);
    EXPECT_EQ(parse_number("1.5e-9").value(), 1.5e-9);
    EXPECT_EQ(parse_number("1,234").value(), 1.234); // never a group of thousands
}

TEST(Number, digit_grouping_is_refused_as_ambiguous) {
    for (const char* text : {"1.234,5", "1,234.5", "1.234.567", "1,234,567", "1..5"}) {
        const auto parsed = parse_number(text);
        ASSERT_FALSE(parsed.ok()) << text;
        EXPECT_NE(parsed.error().what.text().find("more than one way"), std::string::npos) << text;
        EXPECT_FALSE(parsed.error().remedy.empty());
    }
}

TEST(Number, anything_else_is_refused) {
    for (const char* text : {"",    " ",   "abc", "12 ", " 12", "1 234", "1'234", "12Wh", "inf", "nan",   "-inf",   "infinity", "0x10", "--5",
                             "+-5", "++5", "-",   "+",   ".",   ",",     "e5",    "1e",   "1e+", "1e999", "-1e999", "1e5.5",    "5-3",  "１２"})
        EXPECT_FALSE(parse_number(text).ok()) << text;
}

TEST(Number, exact_text_is_short_and_without_exponent_in_the_range_of_use) {
    EXPECT_EQ(exact_text(0), "0");
    EXPECT_EQ(exact_text(-0.0), "0");
    EXPECT_EQ(exact_text(0.1), "0.1");
    EXPECT_EQ(exact_text(431), "431");
    EXPECT_EQ(exact_text(-12.5), "-12.5");
    EXPECT_EQ(exact_text(1e-6), "0.000001");
    EXPECT_EQ(exact_text(0.1 + 0.2), "0.30000000000000004");
    EXPECT_EQ(exact_text(999'999'999'999'999.0), "999999999999999");
    EXPECT_EQ(exact_text(1e14).find_first_of("eE"), std::string::npos);
}

TEST(Number, exact_text_reads_back_as_the_same_double) {
    std::mt19937_64 random(1);
    int checked = 0;
    while (checked < 20'000) {
        const double value = std::bit_cast<double>(random());
        if (!std::isfinite(value)) continue;
        const auto back = parse_number(exact_text(value));
        ASSERT_TRUE(back.ok()) << exact_text(value);
        ASSERT_EQ(back.value(), value);
        ++checked;
    }
    for (double value : {std::numeric_limits<double>::max(), std::numeric_limits<double>::min(), std::numeric_limits<double>::denorm_min(),
                         std::numeric_limits<double>::lowest(), 1e15, 9.99e-7})
        EXPECT_EQ(parse_number(exact_text(value)).value(), value);
    std::uniform_real_distribution<double> exponent(-6, 15);
    for (int i = 0; i < 20'000; ++i) {
        const double value = std::pow(10.0, exponent(random));
        if (value < 1e-6 || value >= 1e15) continue;
        const std::string text = exact_text(value);
        ASSERT_EQ(text.find_first_of("eE"), std::string::npos) << text;
        ASSERT_EQ(parse_number(text).value(), value);
    }
}

TEST(Number, fixed_text_rounds_half_to_even_and_knows_no_minus_zero) {
    EXPECT_EQ(fixed_text(0.5, 0), "0");
    EXPECT_EQ(fixed_text(1.5, 0), "2");
    EXPECT_EQ(fixed_text(2.5, 0), "2");
    EXPECT_EQ(fixed_text(0.125, 2), "0.12");
    EXPECT_EQ(fixed_text(2.675, 2), "2.67"); // the double lies below 2.675
    EXPECT_EQ(fixed_text(-0.001, 2), "0.00");
    EXPECT_EQ(fixed_text(-0.4, 0), "0");
    EXPECT_EQ(fixed_text(-0.006, 2), "-0.01");
    EXPECT_EQ(fixed_text(1236, -2), "1200");
    EXPECT_EQ(fixed_text(1e300, 2).size(), 304u);
}

TEST(Number, an_uncertainty_shows_two_significant_digits) {
    // JCGM 100:2008, 7.2.6: "it usually suffices to quote U to at most two significant digits"; its example
    // rounds m_S = 100.02147 g with u = 0.35 mg to 100.02147 g, five decimals.
    EXPECT_EQ(decimals_for(0.00035), 5);
    EXPECT_EQ(decimals_for(17), 0);
    EXPECT_EQ(decimals_for(172), -1);
    EXPECT_EQ(decimals_for(1236), -2);
    EXPECT_EQ(decimals_for(1.7), 1);
    EXPECT_EQ(decimals_for(0.016), 3);
    EXPECT_EQ(decimals_for(0.0996), 2); // is 0.10
    EXPECT_EQ(decimals_for(9.96), 0);   // is 10
    EXPECT_EQ(decimals_for(9.94), 1);
    EXPECT_EQ(decimals_for(10), 0);
}

TEST(Number, value_and_half_width_are_rounded_alike) {
    EXPECT_EQ(with_interval_text(100.02147, 0.00035, 1), "100.02147 ± 0.00035");
    EXPECT_EQ(with_interval_text(893.4, 17.2, 1), "893 ± 17");
    EXPECT_EQ(with_interval_text(0.7812, 0.0161, 1), "0.781 ± 0.016");
    EXPECT_EQ(with_interval_text(4314, 123, 1), "4310 ± 120");
    EXPECT_EQ(with_interval_text(893.44, std::nullopt, 1), "893.4");
    EXPECT_EQ(with_interval_text(893.44, 0.0, 1), "893.4");
    EXPECT_EQ(with_interval_text(893.44, std::numeric_limits<double>::infinity(), 1), "893.4");
}

TEST(Number, counts_have_their_noun) {
    EXPECT_EQ(count_text(1, "reading", "readings"), "1 reading");
    EXPECT_EQ(count_text(0, "reading", "readings"), "0 readings");
    EXPECT_EQ(count_text(3, "reading", "readings"), "3 readings");
}

TEST(Number, trimming_takes_blanks_of_both_ends_only) {
    EXPECT_EQ(trimmed(" \ta b\t "), "a b");
    EXPECT_EQ(trimmed("a"), "a");
    EXPECT_EQ(trimmed(" \t "), "");
    EXPECT_EQ(trimmed("\na\n"), "\na\n");
}
