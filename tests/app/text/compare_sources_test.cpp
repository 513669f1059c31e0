// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <map>
#include <set>

namespace ullage::test {
namespace {

using Json = nlohmann::json;

/// Several sources in one comparison.
class CompareSources : public Commands {
protected:
    /// A logbook of that name with one full drain.
    std::string logbook_with(const std::string& name, const std::string& unit, int day, int last_register_wh) {
        const std::string path = folder_ / name;
        const Outcome outcome = run({"import", path, written(name + ".csv", drain_sheet(unit, day, last_register_wh))});
        EXPECT_EQ(outcome.code, exit_good) << outcome.err;
        std::filesystem::remove(folder_ / (name + ".csv"));
        return path;
    }

    std::string folder_of_sheets(const std::string& name, const std::map<std::string, std::string>& sheets) {
        std::filesystem::create_directories(folder_ / name);
        for (const auto& [file, text] : sheets) written(name + "/" + file, text);
        return folder_ / name;
    }

    static std::map<std::string, std::string> logbook_by_unit(const Json& json) {
        std::map<std::string, std::string> found;
        for (const Json& row : json.at("rows")) found[row.at("unit")] = row.value("logbook", "");
        return found;
    }

    static Json compared(std::vector<std::string> args) {
        args.insert(args.begin(), "compare");
        args.insert(args.end(), {"--format", "json"});
        const Outcome outcome = run(args);
        EXPECT_EQ(outcome.code, exit_good) << outcome.err;
        return Json::parse(outcome.out);
    }
};

TEST_F(CompareSources, logbooks_sheets_and_folders_stand_in_one_comparison_and_rows_say_from_which) {
    const std::string a = logbook_with("a.ullage", "Alder", 11, 800), b = logbook_with("b.ullage", "Birch", 12, 820);
    const std::string folder = folder_of_sheets("loose", {{"1.csv", drain_sheet("Cedar", 13, 840)}, {"2.csv", drain_sheet("Dogwood", 14, 860)}});
    const std::string sheet = written("more.csv", drain_sheet("Elder", 15, 880));
    const std::map<std::string, std::string> expected{
        {"Alder", "a.ullage"}, {"Birch", "b.ullage"}, {"Cedar", "loose"}, {"Dogwood", "loose"}, {"Elder", "more.csv"}};
    EXPECT_EQ(logbook_by_unit(compared({a, b, folder + "/", sheet})), expected);
}

TEST_F(CompareSources, a_folder_of_run_sheets_is_compared_without_a_logbook) {
    const std::string folder = folder_of_sheets("loose", {{"1.csv", drain_sheet("Cedar", 13, 840)}, {"2.csv", drain_sheet("Dogwood", 14, 860)}});
    const Json json = compared({folder});
    ASSERT_EQ(json.at("rows").size(), 2U);
    EXPECT_NEAR(json["rows"][0]["usable_fraction"]["value"].get<double>(), 0.84, 1e-12);
    EXPECT_FALSE(json["rows"][0].contains("logbook")) << "a single source needs no name";
    std::set<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) names.insert(entry.path().filename());
    EXPECT_EQ(names, (std::set<std::string>{"1.csv", "2.csv"})) << "nothing is left beside the sheets";
}

TEST_F(CompareSources, logbooks_that_are_only_compared_stay_byte_for_byte) {
    const std::string a = logbook_with("a.ullage", "Alder", 11, 800), b = logbook_with("b.ullage", "Birch", 12, 820);
    const std::string before_a = file_text(a), before_b = file_text(b);
    compared({a, b});
    EXPECT_EQ(file_text(a), before_a);
    EXPECT_EQ(file_text(b), before_b);
}

TEST_F(CompareSources, a_copy_of_a_logbook_adds_nothing_and_that_is_said) {
    const std::string a = logbook_with("a.ullage", "Alder", 11, 800);
    std::filesystem::copy_file(a, folder_ / "copy.ullage");
    const Outcome outcome = run({"compare", a, folder_ / "copy.ullage", "--format", "json"});
    ASSERT_EQ(outcome.code, exit_good);
    EXPECT_EQ(Json::parse(outcome.out).at("rows").size(), 1U);
    expect_one_line(outcome.err);
    EXPECT_NE(outcome.err.find("1 run is both in a.ullage and in copy.ullage"), std::string::npos) << outcome.err;
}

TEST_F(CompareSources, a_sheet_that_the_logbook_holds_already_counts_once_and_a_new_one_joins_its_unit) {
    const std::string a = logbook_with("a.ullage", "Alder", 11, 800);
    const std::string known = written("known.csv", drain_sheet("Alder", 11, 800)), fresh = written("fresh.csv", drain_sheet("Alder", 16, 790));
    EXPECT_EQ(compared({a, known, "--every-drain"}).at("rows").size(), 1U);
    EXPECT_EQ(compared({a, known, fresh, "--every-drain"}).at("rows").size(), 2U);
    EXPECT_EQ(compared({a, known, fresh}).at("rows").size(), 1U) << "one maker and one name: the same unit, as with import";
}

TEST_F(CompareSources, a_source_that_cannot_be_read_is_named_and_nothing_is_compared) {
    const std::string a = logbook_with("a.ullage", "Alder", 11, 800);
    const Outcome outcome = run({"compare", a, folder_ / "missing.ullage"});
    EXPECT_EQ(outcome.code, exit_bad_input);
    expect_one_line(outcome.err);
    EXPECT_NE(outcome.err.find("missing.ullage"), std::string::npos);
    EXPECT_TRUE(outcome.out.empty());
}

TEST_F(CompareSources, two_logbooks_of_one_file_name_are_told_apart_by_their_paths) {
    std::filesystem::create_directories(folder_ / "x");
    std::filesystem::create_directories(folder_ / "y");
    const std::string a = logbook_with("x/bench.ullage", "Alder", 11, 800), b = logbook_with("y/bench.ullage", "Birch", 12, 820);
    EXPECT_EQ(logbook_by_unit(compared({a, b})), (std::map<std::string, std::string>{{"Alder", a}, {"Birch", b}}));
}

TEST_F(CompareSources, an_option_between_two_sources_takes_no_source_for_itself) {
    const std::string a = logbook_with("a.ullage", "Alder", 11, 800), b = logbook_with("b.ullage", "Birch", 12, 820);
    EXPECT_EQ(compared({a, "--maker", "Invented Works", b}).at("rows").size(), 2U);
}

} // namespace
} // namespace ullage::test
