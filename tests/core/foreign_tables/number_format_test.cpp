// SPDX-License-Identifier: GPL-3.0-or-later
// Examples of ECMA-376 Part 1, 18.17.4.1 and 18.17.4.3, of the date systems, and number formats by 18.8.30 and 18.8.31.
#include "foreign_tables/number_format.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

using Shows = NumberFormat::Shows;

TEST(DateSystems, the_examples_of_the_standard_for_1900) {
    const NumberFormat day{Shows::day, {}}, moment{Shows::moment, {}};
    EXPECT_EQ(stored_number_text(-2338, day, DateSystem::from_1900), "1893-08-05");
    EXPECT_EQ(stored_number_text(2, day, DateSystem::from_1900), "1900-01-01");
    EXPECT_EQ(stored_number_text(3687, day, DateSystem::from_1900), "1910-02-03");
    EXPECT_EQ(stored_number_text(38749, day, DateSystem::from_1900), "2006-02-01");
    EXPECT_EQ(stored_number_text(3687.4207639, moment, DateSystem::from_1900), "1910-02-03 10:05:54");
    EXPECT_EQ(stored_number_text(2958464.9999884, moment, DateSystem::from_1900), "9999-12-30 23:59:59");
}

TEST(DateSystems, the_examples_of_the_standard_for_1904) {
    const NumberFormat day{Shows::day, {}}, moment{Shows::moment, {}};
    EXPECT_EQ(stored_number_text(-3800, day, DateSystem::from_1904), "1893-08-05");
    EXPECT_EQ(stored_number_text(0, day, DateSystem::from_1904), "1904-01-01");
    EXPECT_EQ(stored_number_text(2225, day, DateSystem::from_1904), "1910-02-03");
    EXPECT_EQ(stored_number_text(37287, day, DateSystem::from_1904), "2006-02-01");
    EXPECT_EQ(stored_number_text(2225.4207639, moment, DateSystem::from_1904), "1910-02-03 10:05:54");
    EXPECT_EQ(stored_number_text(0.5, moment, DateSystem::from_1904), "1904-01-01 12:00:00");
}

TEST(DateSystems, the_times_of_the_standard) {
    const NumberFormat clock{Shows::clock, {}};
    EXPECT_EQ(stored_number_text(0, clock, DateSystem::from_1900), "00:00:00");
    EXPECT_EQ(stored_number_text(0.0000115, clock, DateSystem::from_1900), "00:00:01");
    EXPECT_EQ(stored_number_text(0.4207639, clock, DateSystem::from_1900), "10:05:54");
    EXPECT_EQ(stored_number_text(0.5, clock, DateSystem::from_1900), "12:00:00");
    EXPECT_EQ(stored_number_text(0.9999884, clock, DateSystem::from_1900), "23:59:59");
}

TEST(NumberFormats, tell_days_times_durations_percent_and_units) {
    const auto shows = [](const char* code) { return number_format_of(code).shows; };
    EXPECT_EQ(shows("General"), Shows::number);
    EXPECT_EQ(shows("0.00"), Shows::number);
    EXPECT_EQ(shows("#,##0.00_);[Red](#,##0.00)"), Shows::number);
    EXPECT_EQ(shows("0.0%"), Shows::percent);
    EXPECT_EQ(shows("dd/mm/yyyy"), Shows::day);
    EXPECT_EQ(shows("mmm-yy"), Shows::day);
    EXPECT_EQ(shows("[$-407]d. mmmm yyyy"), Shows::day);
    EXPECT_EQ(shows("m/d/yy h:mm"), Shows::moment);
    EXPECT_EQ(shows("h:mm AM/PM"), Shows::clock);
    EXPECT_EQ(shows("mm:ss.0"), Shows::clock);
    EXPECT_EQ(shows("[h]:mm:ss"), Shows::duration);
    EXPECT_EQ(shows("0.0\" days\""), Shows::number);
    EXPECT_EQ(number_format_of("0.000\" kWh\"").unit, "kWh");
    EXPECT_EQ(number_format_of("0.0\" days\"").unit, "");
    EXPECT_EQ(built_in_format(14).shows, Shows::day);
    EXPECT_EQ(built_in_format(22).shows, Shows::moment);
    EXPECT_EQ(built_in_format(10).shows, Shows::percent);
    EXPECT_EQ(built_in_format(46).shows, Shows::duration);
    EXPECT_EQ(built_in_format(2).shows, Shows::number);
}

TEST(NumberFormats, values_stand_as_stored_without_digits_that_the_file_lacks) {
    EXPECT_EQ(stored_number_text(0.07, {Shows::percent, {}}, DateSystem::from_1900), "7 %");
    EXPECT_EQ(stored_number_text(0.695, {Shows::percent, {}}, DateSystem::from_1900), "69.5 %");
    EXPECT_EQ(stored_number_text(0.43, {Shows::number, "kWh"}, DateSystem::from_1900), "0.43 kWh");
    EXPECT_EQ(stored_number_text(1.1041666666666667, {Shows::duration, {}}, DateSystem::from_1900), "26:30:00");
    EXPECT_EQ(stored_number_text(1e300, {Shows::day, {}}, DateSystem::from_1900), std::nullopt);
}

} // namespace
} // namespace ullage::test
