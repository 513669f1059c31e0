// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"

#include "support/source_dir.h"

#include <nlohmann/json.hpp>

namespace ullage::test {
namespace {

using Json = nlohmann::json;

std::string sample(const char* name) { return (source_dir() / "sample-data" / name).string(); }

class SizeCommand : public Commands {
protected:
    static std::string show_night() { return sample("load-lists/show-night.csv"); }
    static const Json& of_unit(const Json& sizing, const std::string& name) {
        for (const Json& unit : sizing.at("units"))
            if (unit.at("unit") == name) return unit;
        throw std::runtime_error("no unit " + name);
    }
};

TEST_F(SizeCommand, the_samples_are_sized_for_the_night_of_a_show) {
    const Outcome outcome = run({"size", sample(""), "--load-list", show_night(), "--format", "json", "--autonomy-days", "2"});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    const Json json = Json::parse(outcome.out);
    const double daily_wh = json["totals"]["daily_wh"];
    EXPECT_NEAR(daily_wh, 412.5 + 86.4 + 144 + 61 / 2.4 * 5 + 374.4, 1e-9);
    // Truth of the samples (tests/support/scenario_parts.cpp): the Pelm 900 has 809 Wh and takes 42.6 W + 1.12 times the load. The cold box
    // keeps the output on all day, so that its own draw alone would empty it within a day: no number of them carries the list for two.
    const Json& pelm = of_unit(json, "Pelm 900");
    EXPECT_EQ(pelm["basis"], "own drains");
    const Json& days = pelm["quantities"][0];
    EXPECT_EQ(days["key"], "days_of_autonomy");
    const double truth = 809 / (1.12 * daily_wh + 24 * 42.6);
    EXPECT_NEAR(days["value"].get<double>(), truth, 0.02 * truth);
    EXPECT_LT(days["lower"].get<double>(), truth);
    EXPECT_GT(days["upper"].get<double>(), truth);
    EXPECT_TRUE(pelm["units_needed"]["sure"].is_null());
    EXPECT_NE(pelm["units_needed"]["reason"].get<std::string>().find("own draw empties them before"), std::string::npos);
    EXPECT_EQ(of_unit(json, "Tarrow 2k")["basis"], "expectation from one load") << "one full drain";
    EXPECT_EQ(of_unit(json, "Osk 1200")["output"], "fits");
    EXPECT_GE(of_unit(json, "Osk 1200")["units_needed"]["sure"].get<int>(), 2);
    EXPECT_GE(pelm["course"]["points"].size(), 73u);
    // Its own draw of a day weighs on the battery and the array as the list does.
    const double own_wh = pelm["needs"]["own_wh"].get<double>(), own_truth_wh = 24 * 42.6 / 1.12; // P* = p0/a
    EXPECT_NEAR(own_wh, own_truth_wh, 0.05 * own_truth_wh);
    EXPECT_NEAR(pelm["needs"]["battery"]["nameplate_wh"].get<double>(), 2 * (daily_wh + own_wh) / 0.9 / 0.8 * 1.15, 1e-6);
    EXPECT_NEAR(json["list_needs"]["battery"]["nameplate_wh"].get<double>(), 2 * daily_wh / 0.9 / 0.8 * 1.15, 1e-6);
}

TEST_F(SizeCommand, text_names_bases_units_needed_assumptions_and_cautions) {
    const Outcome outcome = run({"size", sample(""), "--load-list", show_night()});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    for (const char* words : {"Sizing for the load list Show night", "own drains", "units for 1 day: ", "battery, nameplate", "Assumed", "Cautions",
                              "Never connect the outputs of several units"})
        EXPECT_NE(outcome.out.find(words), std::string::npos) << words;
}

TEST_F(SizeCommand, a_unit_that_nobody_tested_stands_with_the_stated_expectation) {
    const std::string path = logbook();
    const std::string list = written("lamp.csv", "# load_list: Lamp\nname,power_w,hours_per_day\nlamp,40,5\n");
    std::string sheet = drain_sheet("Untested", 14, 850);
    sheet.replace(sheet.find("# started_full: yes"), 19, "# started_full: no"); // says nothing of the whole
    ASSERT_EQ(run({"import", path, written("4.csv", sheet)}).code, exit_good);
    const Json json = Json::parse(run({"size", path, "--load-list", list, "--unit", "Untested", "--expect-lower", "0.7", "--format", "json"}).out);
    const Json& unit = of_unit(json, "Untested");
    EXPECT_EQ(unit["basis"], "expectation, not measured");
    EXPECT_NEAR(unit["quantities"][0]["lower"].get<double>(), 700.0 / 200, 1e-9);
    EXPECT_NEAR(unit["quantities"][0]["upper"].get<double>(), 800.0 / 200, 1e-9);
    EXPECT_EQ(json["units"].size(), 1u);
}

TEST_F(SizeCommand, tables_go_out_in_every_format) {
    const std::string months = "1,1.5,3,4,5,6,6,5,4,2.5,1.2,0.9";
    const std::string path = (folder_ / "months.csv").string();
    const Outcome outcome =
        run({"size", sample(""), "--load-list", show_night(), "--month-sun-hours", months, "--table", "months", "--output", path});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_NE(file_text(path).find("Pelm 900,December,"), std::string::npos);
    const Outcome units = run({"size", sample(""), "--load-list", show_night(), "--format", "markdown"});
    EXPECT_NE(units.out.find("| Osk 1200"), std::string::npos);
    const Json course = Json::parse(run({"size", sample(""), "--load-list", show_night(), "--table", "course", "--format", "json"}).out);
    EXPECT_GE(course["rows"].size(), 3u * 73);
}

TEST_F(SizeCommand, what_cannot_be_is_refused_in_one_line) {
    const std::vector<std::vector<std::string>> bad{{"size", sample(""), "--load-list", show_night(), "--derating", "1.4"},
                                                    {"size", sample(""), "--load-list", show_night(), "--units", "0"},
                                                    {"size", sample(""), "--load-list", show_night(), "--unit", "Nobody"},
                                                    {"size", sample(""), "--load-list", show_night(), "--table", "months"},
                                                    {"size", sample(""), "--load-list", "Show night"},
                                                    {"size", (folder_ / "none.ullage").string(), "--load-list", show_night()}};
    for (const auto& arguments : bad) {
        const Outcome outcome = run(arguments);
        EXPECT_EQ(outcome.code, exit_bad_input) << arguments.back();
        expect_one_line(outcome.err);
    }
    EXPECT_EQ(run({"size", sample(""), "--load-list", show_night(), "--month-sun-hours", "1,2"}).code, exit_usage);
}

} // namespace
} // namespace ullage::test
