// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/load_list_table.h"
#include "formats/sheets/load_list_file.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

const std::string show_night = "# load_list: Show night\n"
                               "# remark: without the fan\\,\n"
                               "name,power_w,duty,measured_wh,measured_hours,hours_per_day,night_hours,start_peak_w,how_many,always_connected\n"
                               "projector,240.5,1,,,3,2.5,310,1,no\n"
                               "\"cold box, \"\"blue\"\"\",,1,412.25,23.5,24,10,,2,yes\n";

TEST(LoadListFile, reads_what_it_wrote_byte_for_byte) {
    const Result<LoadList> list = read_load_list(show_night, "show.csv");
    ASSERT_TRUE(list.ok()) << list.error().sentence();
    EXPECT_EQ(list.value().name, "Show night");
    EXPECT_EQ(list.value().remark, "without the fan,");
    ASSERT_EQ(list.value().appliances.size(), 2u);
    EXPECT_EQ(list.value().appliances[1].name, "cold box, \"blue\"");
    EXPECT_EQ(list.value().appliances[1].measured, (MeasuredUse{412.25, 23.5}));
    EXPECT_TRUE(list.value().appliances[1].always_connected);
    EXPECT_EQ(write_load_list(list.value()), show_night);
}

TEST(LoadListFile, columns_may_stand_in_any_order_and_most_may_be_missing) {
    const Result<LoadList> list = read_load_list("\xEF\xBB\xBF# Load_List: short\r\n\r\nHours_per_day,name,power_w\r\n5,lamp,9\r\n", {});
    ASSERT_TRUE(list.ok()) << list.error().sentence();
    const Appliance& lamp = list.value().appliances.at(0);
    EXPECT_EQ(list.value().name, "short") << "without the carriage return";
    EXPECT_EQ(lamp.duty, 1);
    EXPECT_EQ(lamp.count, 1);
    EXPECT_EQ(lamp.night_hours, 0);
    EXPECT_FALSE(lamp.always_connected);
}

TEST(LoadListFile, a_name_that_looks_like_a_formula_is_guarded_in_its_cell_and_comes_back) {
    LoadList list = read_load_list(show_night, {}).value();
    list.appliances.resize(1);
    list.appliances[0].name = "=1+2";
    const std::string text = write_load_list(list);
    EXPECT_NE(text.find("\n'=1+2,"), std::string::npos) << text;
    EXPECT_EQ(read_load_list(text, {}).value().appliances.at(0).name, "=1+2");
}

TEST(LoadListFile, what_is_wrong_is_told_with_its_file_and_line) {
    const auto told = [](const std::string& text) {
        const Result<LoadList> list = read_load_list(text, "x.csv");
        return list ? std::string("read") : list.error().sentence();
    };
    const std::string head = "# load_list: x\nname,power_w,hours_per_day\n";
    EXPECT_EQ(told(head + "lamp,9,5\n"), "read");
    EXPECT_EQ(told(head), "read") << "a list without appliances yet";
    EXPECT_NE(told("name,power_w,hours_per_day\n").find("load_list: NAME"), std::string::npos);
    EXPECT_NE(told("# unit: x\n").find("x.csv, line 1"), std::string::npos);
    EXPECT_NE(told("# load_list: x\n").find("header row is missing"), std::string::npos);
    EXPECT_NE(told("# load_list: x\nname,watts\n").find("`watts`"), std::string::npos);
    EXPECT_NE(told("# load_list: x\nname,power_w\n").find("`hours_per_day` is missing"), std::string::npos);
    EXPECT_NE(told(head + "lamp,nine,5\n").find("line 3, column `power_w`"), std::string::npos);
    EXPECT_NE(told(head + "lamp,9,25\n").find("line 3, lamp, hours per day"), std::string::npos);
    EXPECT_NE(told(head + "lamp,9\n").find("2 fields"), std::string::npos);
    EXPECT_NE(told(head + "l\xFFmp,9,5\n").find("UTF-8"), std::string::npos);
}

TEST(LoadListTable, lines_and_their_sum_carry_the_totals) {
    const Table table = load_list_table(read_load_list(show_night, {}).value());
    ASSERT_EQ(table.rows.size(), 3u);
    const auto column = [&](const char* key) {
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            if (table.columns[i].key == key) return i;
        return table.columns.size();
    };
    const auto value = [&](std::size_t row, const char* key) { return std::get<Quantity>(table.rows[row].at(column(key))).value.value_or(-1); };
    EXPECT_NEAR(value(0, "daily_wh"), 721.5, 1e-9);
    EXPECT_NEAR(value(1, "daily_wh"), 2 * 412.25 / 23.5 * 24, 1e-9);
    EXPECT_NEAR(value(2, "daily_wh"), value(0, "daily_wh") + value(1, "daily_wh"), 1e-9);
    EXPECT_NEAR(value(2, "start_peak_w"), 240.5 + 2 * 412.25 / 23.5 + 69.5, 1e-9);
    EXPECT_EQ(value(1, "power_w"), -1) << "nobody stated it";
}

TEST(LoadListTable, a_list_that_takes_nothing_has_shares_that_are_not_known) {
    LoadList empty;
    empty.name = "later";
    const Table table = load_lists_table({empty});
    ASSERT_EQ(table.rows.size(), 1u);
    EXPECT_FALSE(std::get<Quantity>(table.rows[0].back()).value);
    EXPECT_EQ(std::get<Quantity>(table.rows[0][2]).value, 0);
}

} // namespace
} // namespace ullage
