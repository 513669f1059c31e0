// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/entry/entry_text.h"

#include <gtest/gtest.h>

#include <string>

using namespace ullage;

TEST(EntryText, energies_come_in_any_usual_writing) {
    for (const char* text : {"431", "431 Wh", "431Wh", "431 WH", " 431 wh ", "431.0", "431,0 Wh", "0.431 kWh", "0,431 kWh", "0,431kwh", ".431 KWH",
                             "431\xC2\xA0Wh", "431\xE2\x80\xAFWh", "+431", "431 W h"})
        EXPECT_EQ(parse_energy_wh(text).value(), 431) << text;
    // 1 Wh = 3600 J exactly (SI Brochure, 9th edition, table 8: 1 h = 3600 s).
    EXPECT_EQ(parse_energy_wh("3.6 MJ").value(), 1000);
    EXPECT_EQ(parse_energy_wh("36 kJ").value(), 10);
    EXPECT_EQ(parse_energy_wh("1.55MJ").value(), 1'550'000.0 / 3600);
    EXPECT_EQ(parse_energy_wh("7200 J").value(), 2);
    EXPECT_EQ(parse_energy_wh("0").value(), 0);
}

TEST(EntryText, signs_between_groups_of_three_digits_are_no_decimal_signs) {
    for (const char* text : {"1.234,5 Wh", "1,234.5 Wh", "1.234,5"}) EXPECT_EQ(parse_energy_wh(text).value(), 1234.5) << text;
    EXPECT_EQ(parse_energy_wh("1.234.567,8").value(), 1'234'567.8);
    EXPECT_EQ(parse_energy_wh("1.234 kWh").value(), 1234) << "one sign alone is the decimal sign";
}

TEST(EntryText, a_bare_number_is_what_the_meters_display_can_show) {
    EXPECT_EQ(parse_register_wh("2.033", 1).value(), 2033) << "no register of 1 Wh shows 2.033 Wh, one in kWh does";
    EXPECT_EQ(parse_register_wh("20,33", 10).value(), 20330);
    EXPECT_EQ(parse_register_wh("2033", 1).value(), 2033);
    EXPECT_EQ(parse_register_wh("431.5", 0.1).value(), 431.5);
    EXPECT_EQ(parse_register_wh("2.033 Wh", 1).value(), 2.033) << "a unit that was typed is meant";
    EXPECT_EQ(parse_register_wh("2.033", std::nullopt).value(), 2.033) << "no step is stated";
    EXPECT_EQ(parse_register_wh("0", 1).value(), 0);
    EXPECT_FALSE(parse_register_wh("2.033 kW", 1));
}

TEST(EntryText, a_change_of_unit_is_exact) {
    for (int wh = 1; wh < 20'000; ++wh) {
        std::string text = std::to_string(wh);
        text.insert(0, text.size() < 4 ? 4 - text.size() : 0, '0');
        text.insert(text.size() - 3, ".");
        ASSERT_EQ(parse_energy_wh(text + " kWh").value(), wh) << text;
    }
}

TEST(EntryText, gauge_and_power_know_their_units) {
    for (const char* text : {"69", "69%", "69 %", "69,0 %", "69 percent"}) EXPECT_EQ(parse_gauge_percent(text).value(), 69) << text;
    for (const char* text : {"64", "64 W", "64w", "0.064 kW", "0,064kW"}) EXPECT_EQ(parse_power_w(text).value(), 64) << text;
    EXPECT_EQ(parse_gauge_percent("0").value(), 0);
    EXPECT_EQ(parse_gauge_percent("100").value(), 100);
}

TEST(EntryText, what_cannot_be_meant_is_refused_with_what_was_expected) {
    for (const char* text :
         {"", " ", "abc", "Wh", "431 W", "431 kW", "-1", "1.23,4", "1,23.5", "1.234,5,6", "12.34.567,8", "4 31", "431 Wh 5", "1e5", "nan", "--4",
          "\xE2\x88\x92"
          "5",
          "431 ✓", "99999999999999999999999999999999999e9"}) {
        const auto energy = parse_energy_wh(text);
        ASSERT_FALSE(energy.ok()) << text;
        EXPECT_NE(energy.error().remedy.text().find("431 Wh"), std::string::npos) << text;
    }
    for (const char* text : {"", "101", "100.5 %", "-1", "-0.1 %", "69 W", "%", "x"}) EXPECT_FALSE(parse_gauge_percent(text).ok()) << text;
    for (const char* text : {"", "-64", "64 Wh", "64 %", "W"}) EXPECT_FALSE(parse_power_w(text).ok()) << text;
}
