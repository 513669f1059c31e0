// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"
#include "support/source_dir.h"

#include <nlohmann/json.hpp>

#include <set>

namespace ullage::test {
namespace {

using Json = nlohmann::json;
using AnalyseCommand = Commands;

const Json& quantity(const Json& run, const std::string& key) {
    static const Json none;
    for (const Json& each : run.at("quantities"))
        if (each.at("key") == key) return each;
    ADD_FAILURE() << "no quantity " << key;
    return none;
}

TEST_F(AnalyseCommand, json_has_every_quantity_with_interval_kind_and_reason) {
    const Outcome outcome = run({"analyse", logbook(), "--format", "json"});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_EQ(outcome.out.find("NaN"), std::string::npos);
    const Json json = Json::parse(outcome.out);
    EXPECT_EQ(json.at("program"), "ullage");
    ASSERT_EQ(json.at("runs").size(), 3u);
    const Json& first = json["runs"][1];
    EXPECT_EQ(first.at("unit"), "Specimen");
    EXPECT_EQ(first.at("run"), 1);
    for (const Json& each : first.at("quantities")) {
        std::set<std::string> names;
        for (const auto& [name, value] : each.items()) names.insert(name);
        EXPECT_EQ(names, (std::set<std::string>{"key", "unit_label", "run", "value", "unit", "lower", "upper", "kind", "reason"}));
        EXPECT_EQ(each.at("unit_label"), "Specimen");
    }
    // 800 Wh of 1000 rated Wh by the register's own figures; the gain limit of 1 % alone makes the half-width 0.95 % of it.
    const Json& fraction = quantity(first, "usable_fraction");
    EXPECT_NEAR(fraction.at("value").get<double>(), 0.8, 1e-12);
    EXPECT_LT(fraction.at("lower").get<double>(), 0.8 - 0.0076);
    EXPECT_GT(fraction.at("upper").get<double>(), 0.8 + 0.0076);
    EXPECT_EQ(fraction.at("kind"), "measured");
    EXPECT_NEAR(quantity(first, "mean_load_w").at("value").get<double>(), 80, 1e-9);
    EXPECT_FALSE(first.at("budget").at("lines").empty());
    EXPECT_NEAR(first.at("budget").at("half_width_wh").get<double>(), (fraction["upper"].get<double>() - fraction["lower"].get<double>()) / 2 * 1000,
                1e-6);
}

/// The first seven rows of drain_sheet as a run that goes on: 100 to 40 % and 0 to 480 Wh in 6 h, so that 4 h are left.
std::string running_sheet() {
    std::string text = drain_sheet();
    text.replace(text.find("cut-off seen"), 12, "still running");
    return text.substr(0, text.find("2027-05-11T13:00Z"));
}

TEST_F(AnalyseCommand, a_running_drain_has_a_forecast_as_of_its_last_reading_in_text_and_json) {
    const std::string sheet = written("running.csv", running_sheet());
    const Outcome text = run({"analyse", sheet});
    ASSERT_EQ(text.code, exit_good) << text.err;
    EXPECT_NE(text.out.find("\nForecast as of 2027-05-11T12:00Z\n  cut-off: "), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("  gauge at 39 %: "), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("  Read register and gauge together near 20 %"), std::string::npos) << text.out;
    const Outcome outcome = run({"analyse", sheet, "--format", "json"});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    const Json forecast = Json::parse(outcome.out).at("runs")[0].at("forecast");
    EXPECT_EQ(forecast.at("as_of"), "2027-05-11T12:00Z");
    EXPECT_EQ(forecast.at("basis"), "this run's gauge");
    EXPECT_LT(forecast.at("cut_off").at("lower").get<std::string>(), "2027-05-11T16:00Z");
    EXPECT_GT(forecast.at("cut_off").at("upper").get<std::string>(), "2027-05-11T16:00Z");
    EXPECT_EQ(forecast.at("next_gauge_step").at("gauge_percent"), 39);
    EXPECT_FALSE(forecast.at("advice").empty());
}

TEST_F(AnalyseCommand, an_ended_run_has_no_forecast) {
    const std::string sheet = written("ended.csv", drain_sheet());
    EXPECT_EQ(run({"analyse", sheet}).out.find("Forecast"), std::string::npos);
    const Outcome outcome = run({"analyse", sheet, "--format", "json"});
    EXPECT_TRUE(Json::parse(outcome.out).at("runs")[0].at("forecast").is_null());
}

TEST_F(AnalyseCommand, json_of_a_run_that_says_nothing_has_null_and_a_reason) {
    const std::string sheet = written("a.csv", "# unit: Bare\n# run: drain\n# ended: still running\n# time_zone: UTC\n"
                                               "time,gauge_percent,register_wh,meter_w,display_w,mark,remark\n"
                                               "2027-05-11T06:00Z,100,,,,,\n");
    const Outcome outcome = run({"analyse", sheet, "--format", "json"});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    const Json json = Json::parse(outcome.out);
    for (const Json& each : json.at("runs")[0].at("quantities")) {
        EXPECT_TRUE(each.at("value").is_null()) << each;
        EXPECT_EQ(each.at("kind"), "not known");
        EXPECT_NE(each.at("reason"), "");
    }
}

TEST_F(AnalyseCommand, text_has_heading_quantities_budget_intervals_and_gauge) {
    const Outcome outcome = run({"analyse", logbook(), "--unit", "Specimen", "--run", "1"});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_EQ(outcome.out.rfind("Specimen (Invented Works), run 1: drain 11 May, 80 W\n=====", 0), 0u) << outcome.out;
    for (const char* part : {"delivered energy", "800.0 ± 7.7 Wh", "usable fraction", "measured", "Uncertainty of the delivered energy",
                             "rectangular", "Intervals", "2027-05-11T06:00:00Z", "Gauge: "})
        EXPECT_NE(outcome.out.find(part), std::string::npos) << part << " in\n" << outcome.out;
    for (const char* wrong : {"nan", "inf ", "run 2"}) EXPECT_EQ(outcome.out.find(wrong), std::string::npos) << wrong;
}

TEST_F(AnalyseCommand, a_finding_comes_with_weight_sentence_and_evidence) {
    // The gauge stays at 60 % over four hours and 320 Wh.
    std::string sheet = drain_sheet();
    for (const char* shown : {",50,400,", ",40,480,", ",30,560,"}) {
        std::string stuck = shown;
        stuck.replace(1, 2, "60");
        sheet.replace(sheet.find(shown), stuck.size(), stuck);
    }
    const std::string path = written("stuck.csv", sheet);
    const Outcome text = run({"analyse", path});
    ASSERT_EQ(text.code, exit_good) << text.err;
    const Json json = Json::parse(run({"analyse", path, "--format", "json"}).out);
    const Json& findings = json.at("runs")[0].at("findings");
    std::set<std::string> kinds;
    for (const Json& finding : findings) {
        kinds.insert(finding.at("kind"));
        EXPECT_FALSE(finding.at("readings").empty());
        for (const Json& reading : finding["readings"]) EXPECT_EQ(reading.at("time").get<std::string>().substr(0, 10), "2027-05-11");
        EXPECT_NE(text.out.find("[" + finding.at("weight").get<std::string>() + "] "), std::string::npos) << text.out;
        EXPECT_NE(on_one_line(text.out).find(on_one_line(finding.at("sentence").get<std::string>())), std::string::npos);
        EXPECT_NE(on_one_line(text.out).find(on_one_line(finding.at("evidence").get<std::string>())), std::string::npos);
    }
    EXPECT_EQ(kinds.count("stuck"), 1u) << findings;
}

TEST_F(AnalyseCommand, what_was_assumed_of_the_register_is_said) {
    std::string sheet = drain_sheet();
    sheet.replace(sheet.find(",50,400,"), 8, ",50,4000,");
    const std::string path = written("typo.csv", sheet);
    const Outcome text = run({"analyse", path});
    ASSERT_EQ(text.code, exit_good) << text.err;
    EXPECT_NE(text.out.find("Assumed of the register\n  2027-05-11T11:00Z typing error: "), std::string::npos) << text.out;
    const Json json = Json::parse(run({"analyse", path, "--format", "json"}).out);
    EXPECT_EQ(json.at("runs")[0].at("register_corrections")[0].at("kind"), "typing error");
}

TEST_F(AnalyseCommand, a_run_number_without_a_unit_is_refused_where_there_are_several) {
    const Outcome outcome = run({"analyse", logbook(), "--run", "1"});
    EXPECT_EQ(outcome.code, exit_bad_input);
    EXPECT_EQ(outcome.err, "ullage: --run: several units have runs; add --unit with one of `Other`, `Specimen`\n");
}

TEST_F(AnalyseCommand, all_drains_of_a_unit_stand_together_after_its_runs) {
    // 800 Wh in 10 h; twice the load delivers 880 Wh in 5.5 h, so each hour costs 80/4.5 W less what the quadratic loss takes.
    std::string quick = drain_sheet("Specimen", 12, 880);
    for (int step = 10; step >= 1; --step) {
        const int minutes = 6 * 60 + 33 * step;
        const std::string from = "T" + std::string(6 + step < 10 ? "0" : "") + std::to_string(6 + step) + ":00Z";
        const std::string to = "T" + std::string(minutes < 600 ? "0" : "") + std::to_string(minutes / 60) + ':' +
                               std::string(minutes % 60 < 10 ? "0" : "") + std::to_string(minutes % 60) + "Z";
        quick.replace(quick.find(from), from.size(), to);
    }
    std::string stopped = drain_sheet("Specimen", 13, 700);
    stopped.replace(stopped.find("cut-off seen"), 12, "stopped by tester");
    stopped.replace(stopped.rfind("cut-off"), 7, "");
    const std::string path = folder_ / "together.ullage";
    const Outcome imported = run({"import", path, written("1.csv", drain_sheet()), written("2.csv", quick), written("3.csv", stopped)});
    ASSERT_EQ(imported.code, exit_good) << imported.err;
    const Outcome text = run({"analyse", path});
    ASSERT_EQ(text.code, exit_good) << text.err;
    for (const char* part :
         {"All drains of Specimen together\n====", "Drains used", "Drains not used\n  run 3, ", "stopped before the cut-off",
          "Expected from full to cut-off", "Next run: ", "Drift: ", "Where the energy went\n  Of 1000 Wh rated: 800.0 ± 7.7 Wh delivered, about "})
        EXPECT_NE(text.out.find(part), std::string::npos) << part << " in\n" << text.out;
    const Json json = Json::parse(run({"analyse", path, "--format", "json"}).out);
    ASSERT_EQ(json.at("units").size(), 1u);
    const Json& unit = json["units"][0];
    EXPECT_EQ(unit.at("unit"), "Specimen");
    const Json& draw = quantity(unit, "no_load_draw_w");
    EXPECT_NEAR(draw.at("value").get<double>(), 80 / 4.5, 2);
    EXPECT_LT(draw.at("lower").get<double>(), draw.at("value").get<double>());
    ASSERT_EQ(unit.at("drains").size(), 3u);
    EXPECT_EQ(unit["drains"][0].at("used"), true);
    EXPECT_NEAR(unit["drains"][1].at("hours").get<double>(), 5.5, 1e-9);
    EXPECT_EQ(unit["drains"][2].at("used"), false);
    EXPECT_NE(unit["drains"][2].at("reason"), "");
    EXPECT_TRUE(unit["drains"][2].at("hours").is_null());
    ASSERT_GE(unit.at("predictions").size(), 3u);
    for (const Json& prediction : unit["predictions"])
        EXPECT_NEAR(prediction.at("deliverable_wh").at("value").get<double>(),
                    prediction.at("load_w").get<double>() * prediction.at("run_time_h").at("value").get<double>(), 1e-6);
    EXPECT_TRUE(unit.at("next_run").contains("load_w"));
    EXPECT_NE(unit.at("drift").at("sentence"), "");
    const Json& gauge = unit.at("gauge_drift");
    EXPECT_EQ(gauge.at("verdict"), "not known");
    EXPECT_TRUE(gauge.at("lead").is_null());
    EXPECT_EQ(gauge.at("curve_shift_pt").at("kind"), "not known");
    EXPECT_TRUE(gauge.at("comparisons").empty());
    EXPECT_NE(on_one_line(text.out).find("Gauge from run to run: " + gauge.at("sentence").get<std::string>()), std::string::npos) << text.out;
    // The loss split of a run takes its draw from all drains.
    const Json& split = json["runs"][0].at("loss_split");
    EXPECT_NEAR(split.at("quantities")[1].at("value").get<double>(), 10 * draw.at("value").get<double>(), 1e-6);
}

TEST_F(AnalyseCommand, one_run_is_shown_alone_but_its_losses_rest_on_all_drains) {
    const std::string path = logbook();
    const Outcome outcome = run({"analyse", path, "--unit", "Specimen", "--run", "1"});
    EXPECT_EQ(outcome.out.find("All drains of"), std::string::npos);
    // 10 h at 80 W twice: too alike.
    EXPECT_NE(on_one_line(outcome.out).find("the no-load draw is not known (the drains are too alike"), std::string::npos) << outcome.out;
}

TEST_F(AnalyseCommand, a_sheet_or_a_folder_of_sheets_needs_no_logbook) {
    const std::string path = logbook();
    const Outcome folder = run({"analyse", folder_.path().string()});
    EXPECT_EQ(folder.code, exit_good) << folder.err;
    EXPECT_EQ(folder.out, run({"analyse", path}).out);
    const Outcome sheet = run({"analyse", folder_ / "3.csv"});
    EXPECT_EQ(sheet.out, run({"analyse", path, "--unit", "Other"}).out);
}

TEST_F(AnalyseCommand, the_sample_runs_are_analysed_without_a_problem) {
    const Outcome outcome = run({"analyse", (test::source_dir() / "sample-data").string(), "--format", "json"});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_GE(Json::parse(outcome.out).at("runs").size(), 3u);
}

} // namespace
} // namespace ullage::test
