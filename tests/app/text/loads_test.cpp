// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"

#include "support/source_dir.h"

#include <nlohmann/json.hpp>

namespace ullage::test {
namespace {

using Json = nlohmann::json;
using LoadsCommand = Commands;

std::string sample_list() { return (source_dir() / "sample-data" / "load-lists" / "show-night.csv").string(); }

TEST_F(LoadsCommand, a_file_is_printed_with_its_lines_and_their_sum) {
    const Outcome outcome = run({"loads", sample_list(), "--format", "json"});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    const Json json = Json::parse(outcome.out);
    ASSERT_EQ(json.at("rows").size(), 6u);
    double sum_wh = 0;
    for (std::size_t i = 0; i < 5; ++i) sum_wh += json["rows"][i]["daily_wh"]["value"].get<double>();
    EXPECT_NEAR(json["rows"][5]["daily_wh"]["value"].get<double>(), sum_wh, 1e-9);
    // 165 W x 2.5 h + 48 W x 0.6 x 3 h + 4 x 9 W x 4 h + 61 Wh / 2.4 h x 5 h + 52 W x 0.3 x 24 h.
    EXPECT_NEAR(sum_wh, 412.5 + 86.4 + 144 + 61 / 2.4 * 5 + 374.4, 1e-9);
    EXPECT_EQ(json["rows"][5]["start_peak_w"]["value"].get<double>(), 165 + 48 + 36 + 38 + 52 + 88) << "the cold box starts last";
}

TEST_F(LoadsCommand, lists_go_into_a_logbook_once_and_come_out_as_the_same_file) {
    const std::string path = (folder_ / "bench.ullage").string();
    const Outcome first = run({"import-loads", sample_list(), "--logbook", path});
    ASSERT_EQ(first.code, exit_good) << first.err;
    EXPECT_NE(first.out.find("Show night"), std::string::npos);
    const Outcome again = run({"import-loads", sample_list(), "--logbook", path});
    EXPECT_EQ(again.code, exit_good);
    EXPECT_NE(again.out.find("left out"), std::string::npos);
    const Json json = Json::parse(run({"loads", "--logbook", path, "--format", "json"}).out);
    ASSERT_EQ(json.at("rows").size(), 1u);
    EXPECT_EQ(json["rows"][0]["list"], "Show night");
    EXPECT_EQ(json["rows"][0]["hours_on_h"]["value"], 24);
    EXPECT_EQ(run({"loads", "--logbook", path, "--list", "show night", "--sheet"}).out, file_text(sample_list()));
}

TEST_F(LoadsCommand, another_list_of_a_known_name_is_refused_and_the_rest_go_in) {
    const std::string path = (folder_ / "bench.ullage").string();
    const std::string other = written("other.csv", "# load_list: Show night\nname,power_w,hours_per_day\nlamp,9,5\n");
    const std::string third = written("third.csv", "# load_list: Quiet day\nname,power_w,hours_per_day\nlamp,9,5\n");
    const Outcome outcome = run({"import-loads", sample_list(), other, third, "--logbook", path});
    EXPECT_EQ(outcome.code, exit_bad_input);
    expect_one_line(outcome.err);
    EXPECT_NE(outcome.err.find("other.csv"), std::string::npos);
    EXPECT_EQ(Json::parse(run({"loads", "--logbook", path, "--format", "json"}).out).at("rows").size(), 2u);
}

TEST_F(LoadsCommand, a_wrong_line_a_missing_list_and_wrong_usage_are_told_in_one_line) {
    const Outcome wrong = run({"loads", written("x.csv", "# load_list: x\nname,power_w,hours_per_day\nlamp,nine,5\n")});
    EXPECT_EQ(wrong.code, exit_bad_input);
    expect_one_line(wrong.err);
    EXPECT_NE(wrong.err.find("line 3"), std::string::npos);
    const std::string path = (folder_ / "bench.ullage").string();
    ASSERT_EQ(run({"import-loads", sample_list(), "--logbook", path}).code, exit_good);
    const Outcome missing = run({"loads", "--logbook", path, "--list", "other"});
    EXPECT_EQ(missing.code, exit_bad_input);
    EXPECT_NE(missing.err.find("Show night"), std::string::npos) << "it names those there are";
    EXPECT_EQ(run({"loads"}).code, exit_usage);
    EXPECT_EQ(run({"loads", sample_list(), "--logbook", path}).code, exit_usage);
}

TEST_F(LoadsCommand, units_are_compared_at_the_load_of_a_list_from_a_file_or_the_logbook) {
    const std::string samples = (source_dir() / "sample-data").string();
    const Json from_file = Json::parse(run({"compare", samples, "--load-list", sample_list(), "--format", "json"}).out);
    EXPECT_NE(from_file.at("title").get<std::string>().find("Show night"), std::string::npos);
    const double mean_w = Json::parse(run({"loads", sample_list(), "--format", "json"}).out)["rows"][5]["daily_wh"]["value"].get<double>() / 24;
    const Json at_mean = Json::parse(run({"compare", samples, "--at-load", std::to_string(mean_w), "--format", "json"}).out);
    for (std::size_t i = 0; i < 3; ++i) {
        const Json &listed = from_file["rows"][i]["run_time_h"]["value"], &steady = at_mean["rows"][i]["run_time_h"]["value"];
        // The list's bursts cost a little more by the quadratic loss than its mean would, and nothing else differs.
        EXPECT_NEAR(listed.get<double>(), steady.get<double>(), 0.03 * steady.get<double>()) << i;
    }
    const std::string path = logbook();
    ASSERT_EQ(run({"import-loads", sample_list(), "--logbook", path}).code, exit_good);
    const Outcome named = run({"compare", path, "--load-list", "Show night"});
    EXPECT_EQ(named.code, exit_good) << named.err;
    const Outcome wrong = run({"compare", path, "--load-list", "No such"});
    EXPECT_EQ(wrong.code, exit_bad_input);
    expect_one_line(wrong.err);
    EXPECT_EQ(run({"compare", path, "--load-list", "Show night", "--at-load", "50"}).code, exit_usage);
    EXPECT_EQ(run({"compare", path, "--load-list", written("e.csv", "# load_list: e\nname,hours_per_day\n")}).code, exit_bad_input);
}

} // namespace
} // namespace ullage::test
