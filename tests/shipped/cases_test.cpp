// SPDX-License-Identifier: GPL-3.0-or-later
// Cases worked out by hand, answered by the program from the sheets in tests/shipped/cases; the derivations stand beside these.
#include "shipped/program.h"
#include "support/has_text.h"
#include "support/source_dir.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace ullage::test {
namespace {

using Json = nlohmann::json;

std::string case_file(const char* name) { return (source_dir() / "tests/shipped/cases" / name).string(); }

std::string said(const std::vector<std::string>& args) {
    const TempFolder home;
    const Ended ended = run_program(home, args);
    EXPECT_EQ(ended.code, 0) << ended.err;
    return ended.out;
}

TEST(ShippedCases, a_string_of_which_five_figures_are_stated_does_not_fit_before_the_others_are_known) {
    const std::string text = said({"pv-check", case_file("pv-five-figures.txt")});
    EXPECT_TRUE(contains(text,
                         "Verdict: not known: Vmp, Imp and Isc of the module, hottest temperature of the place, start voltage, current limit and "
                         "power limit of the PV input are missing\n"))
        << text;
    EXPECT_FALSE(contains(text, "Verdict: fits"));
    const Json read = Json::parse(said({"pv-check", case_file("pv-five-figures.txt"), "--format", "json"}));
    EXPECT_EQ(read["verdict_key"], "not_known");
    EXPECT_EQ(read["missing"].size(), 7U);
    EXPECT_EQ(read["comparisons"][0]["outcome"], "inside");
}

TEST(ShippedCases, twenty_ampere_into_fifteen_is_for_the_maker_to_answer_and_no_clipping) {
    const std::string text = said({"pv-check", case_file("pv-current-above.txt")});
    EXPECT_TRUE(contains(text, "Verdict: ask before connecting\nDo not connect before the maker has been asked")) << text;
    EXPECT_FALSE(contains(text, "fits"));
    // 26 A withstood, 20 A in operation: still more than it is made for. 25 A withstood: a danger.
    EXPECT_TRUE(contains(said({"pv-check", case_file("pv-current-above.txt"), "--pv-short-circuit-a", "26"}), "Verdict: ask before connecting\n"));
    EXPECT_TRUE(
        contains(said({"pv-check", case_file("pv-current-above.txt"), "--pv-short-circuit-a", "25"}), "Verdict: EXCEEDS THE SHORT-CIRCUIT LIMIT\n"));
}

TEST(ShippedCases, a_voltage_closer_to_its_limit_than_the_tolerance_is_not_called_inside) {
    const Json read = Json::parse(said({"pv-check", case_file("pv-close-to-limit.txt"), "--format", "json"}));
    EXPECT_EQ(read["verdict"], "too close to call: voltage when cold");
    EXPECT_EQ(read["comparisons"][0]["outcome"], "too close to call");
    EXPECT_NEAR(read["comparisons"][0]["margin"].get<double>(), 0.595, 0.001);
    EXPECT_NEAR(read["comparisons"][0]["worst"].get<double>(), 61.187, 0.001);
}

TEST(ShippedCases, three_strings_are_told_that_each_needs_its_own_fuse) {
    EXPECT_TRUE(contains(said({"pv-check", case_file("pv-close-to-limit.txt"), "--parallel", "3"}), "each needs its own fuse"));
}

TEST(ShippedCases, a_router_on_a_thirsty_unit_is_given_the_array_that_carries_both) {
    const std::string sheets = case_file("router"), list = case_file("router-list.csv");
    const Json read = Json::parse(said({"size", sheets, "--load-list", list, "--format", "json"}));
    const Json& unit = read["units"][0];
    EXPECT_EQ(unit["basis"], "own drains");
    const Json& needs = unit["needs"];
    // The drains give the own draw within 0.5 W: 12 Wh a day, 5 W of array.
    EXPECT_NEAR(needs["load_wh"].get<double>(), 288, 1e-9);
    EXPECT_NEAR(needs["own_wh"].get<double>(), 348, 12);
    EXPECT_NEAR(needs["array"]["by_rule_w"].get<double>(), 282.7, 5.4);
    EXPECT_NEAR(unit["quantities"][0]["value"].get<double>(), 850.0 / 636, 0.03);
    EXPECT_TRUE(unit["course"]["empty_with_pv_h"].is_null());
    EXPECT_TRUE(contains(said({"size", sheets, "--load-list", list}), "never empty with PV of 28"));
}

TEST(ShippedCases, a_router_with_the_array_for_its_list_alone_runs_empty_and_the_day_is_told) {
    const Json read =
        Json::parse(said({"size", case_file("router"), "--load-list", case_file("router-list.csv"), "--array", "128", "--format", "json"}));
    const Json& course = read["units"][0]["course"];
    EXPECT_NEAR(course["empty_with_pv_h"].get<double>(), 71.2, 1.5);
    EXPECT_GT(course["unserved_wh"].get<double>(), 0);
    const std::string text = said({"size", case_file("router"), "--load-list", case_file("router-list.csv"), "--array", "128"});
    EXPECT_TRUE(contains(text, "empty on day ")) << text;
    EXPECT_FALSE(contains(text, "never empty"));
}

} // namespace
} // namespace ullage::test
