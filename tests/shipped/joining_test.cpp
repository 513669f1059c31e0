// SPDX-License-Identifier: GPL-3.0-or-later
// Copies of a logbook and the joining of two, by the program as shipped.
#include "shipped/shipped_fixture.h"
#include "shipped/small_file_system.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

class ShippedJoining : public Shipped {};

TEST_F(ShippedJoining, a_new_logbook_that_is_joined_with_the_sample_logbook_says_the_same_as_that) {
    const std::string book = file("joined.ullage");
    good({"import", book, sample_file("02-pelm-900-drain-64-w.csv")});
    for (const char* format : {"csv", "markdown", "html", "xlsx", "json", "latex"})
        EXPECT_GT(written({"join", book, logbook(), "--dry-run", "--format", format}, std::string("join.") + format).size(), 100U) << format;
    const std::string told = good({"join", book, logbook()}).out;
    EXPECT_TRUE(contains(told, "came in")) << told;
    EXPECT_TRUE(contains(told, "there is a unit Pelm 900 already, which is not the same one")) << "made from the same sheet, but not a copy";
    const Json joined = Json::parse(good({"analyse", book, "--format", "json"}).out);
    const Json sample = Json::parse(good({"analyse", logbook(), "--format", "json"}).out);
    EXPECT_EQ(joined["runs"].size(), sample["runs"].size() + 1);
    EXPECT_TRUE(contains(good({"join", book, logbook()}).out, "has all that the other has already"));
}

TEST_F(ShippedJoining, a_copy_of_the_day_is_a_whole_logbook_and_what_does_not_fit_is_absent) {
    const fs::path folder = home() / "small";
    SmallFileSystem disk(folder);
    ASSERT_EQ(disk.trouble(), "") << "run the tests as an administrator, or where user namespaces are allowed";
    const std::string told = good({"backup", logbook(), "--into", home().path().string()}).out;
    const std::string copy = told.substr(told.find("copied to ") + 10, told.find('\n') - told.find("copied to ") - 10);
    EXPECT_EQ(good({"analyse", copy, "--format", "json"}).out, good({"analyse", logbook(), "--format", "json"}).out);
    EXPECT_TRUE(contains(good({"backup", logbook(), "--list"}).out, copy));
    for (const std::size_t room : {std::size_t{0}, std::size_t{65536}}) {
        disk.leave(room);
        const Ended ended = run_program(home(), {"backup", logbook(), "--into", folder});
        EXPECT_EQ(ended.code, 1) << "with room for " << room;
        EXPECT_EQ(ended.out, "");
        EXPECT_EQ(std::ranges::count(ended.err, '\n'), 1) << ended.err;
        EXPECT_TRUE(contains(ended.err, "disk")) << ended.err;
        EXPECT_EQ(disk.entries(), 0U) << ended.err;
    }
}

} // namespace
} // namespace ullage::test
