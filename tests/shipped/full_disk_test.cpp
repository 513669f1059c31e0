// SPDX-License-Identifier: GPL-3.0-or-later
// Every command that writes, where what it writes does not fit: on a file system that is really full, and into a device that takes nothing.
#include "shipped/shipped_fixture.h"
#include "shipped/small_file_system.h"

#include <algorithm>
#include <filesystem>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;
using Words = std::vector<std::string>;

class ShippedOnAFullDisk : public Shipped {
protected:
    /// Commands that write one file, each with the ending of that file.
    static std::vector<std::pair<Words, std::string>> writers() {
        std::vector<std::pair<Words, std::string>> all;
        for (const char* format : {"text", "csv", "markdown", "html", "xlsx", "json", "latex"})
            all.push_back({{"compare", logbook(), "--format", format}, format});
        all.push_back({{"export-readings", logbook(), "--format", "xlsx"}, "xlsx"});
        all.push_back({{"export-sheet", logbook(), "--unit", "Pelm 900", "--run", "4"}, "csv"});
        for (const char* form : {"pdf", "html"}) {
            all.push_back({{"report", logbook(), "--run", "Osk 1200/4"}, form});
            all.push_back({{"report", logbook(), "--compare", "--at-load", "120"}, form});
        }
        all.push_back({{"report", logbook(), "--size", "Show night"}, "pdf"});
        all.push_back({{"report", logbook(), "--pv", sample_file("pv-tarrow-2k-roof.txt")}, "html"});
        return all;
    }

    static Words with(Words words, const Words& more) {
        words.insert(words.end(), more.begin(), more.end());
        return words;
    }

    /// It failed with one line that tells that the disk is full.
    static void expect_no_room(const Ended& ended) {
        EXPECT_EQ(ended.signal, 0);
        EXPECT_EQ(ended.code, 1);
        EXPECT_EQ(ended.out, "");
        EXPECT_EQ(std::ranges::count(ended.err, '\n'), 1) << ended.err;
        EXPECT_TRUE(ended.err.starts_with("ullage: ") && contains(ended.err, "no room left on the disk")) << ended.err;
    }
};

TEST_F(ShippedOnAFullDisk, a_file_that_does_not_fit_is_refused_in_one_line_and_leaves_nothing) {
    const fs::path folder = home() / "small";
    SmallFileSystem disk(folder);
    ASSERT_EQ(disk.trouble(), "") << "run the tests as an administrator, or where user namespaces are allowed";
    int number = 0;
    for (const auto& [words, ending] : writers()) {
        SCOPED_TRACE(testing::PrintToString(words));
        const std::string name = std::to_string(++number) + '.' + ending;
        const std::size_t whole = written(words, "whole/" + name).size();
        // Not a byte is free, or half of what is needed.
        for (const std::size_t room : {std::size_t{0}, std::min(whole, SmallFileSystem::bytes) / 2}) {
            disk.leave(room);
            expect_no_room(run_program(home(), with(words, {"--output", folder / name})));
            EXPECT_EQ(disk.entries(), 0U) << "with room for " << room << " bytes of " << whole;
        }
    }
}

TEST_F(ShippedOnAFullDisk, pictures_are_whole_or_absent_and_the_first_that_does_not_fit_is_told) {
    const fs::path folder = home() / "small";
    SmallFileSystem disk(folder);
    ASSERT_EQ(disk.trouble(), "") << "run the tests as an administrator, or where user namespaces are allowed";
    const Words draw{"pictures", logbook(), "--comparison-only"};
    good(with(draw, {"--into", file("whole-pictures")}));
    std::vector<std::pair<std::string, std::size_t>> whole;
    for (const auto& entry : fs::directory_iterator(file("whole-pictures"))) whole.emplace_back(entry.path().filename().string(), entry.file_size());
    const std::size_t smallest = std::ranges::min_element(whole, {}, &std::pair<std::string, std::size_t>::second)->second;
    ASSERT_LT(2 * smallest, SmallFileSystem::bytes);
    for (const std::size_t room : {std::size_t{0}, std::size_t{8192}, SmallFileSystem::bytes / 4}) {
        SCOPED_TRACE("with room for " + std::to_string(room) + " bytes");
        disk.leave(room);
        expect_no_room(run_program(home(), with(draw, {"--into", folder})));
        std::size_t drawn = 0;
        for (const auto& [name, size] : whole) {
            if (!fs::exists(folder / name)) continue;
            ++drawn;
            EXPECT_EQ(bytes_of(folder / name), bytes_of(file("whole-pictures/" + name))) << name;
        }
        EXPECT_EQ(disk.entries(), drawn) << "something else was left";
        EXPECT_LT(drawn, whole.size());
        EXPECT_EQ(drawn > 0, room > 100'000) << "the last room is there for some of them";
    }
}

TEST_F(ShippedOnAFullDisk, a_folder_that_does_not_fit_leaves_nothing) {
    const fs::path folder = home() / "small";
    SmallFileSystem disk(folder);
    ASSERT_EQ(disk.trouble(), "") << "run the tests as an administrator, or where user namespaces are allowed";
    for (const std::size_t room : {std::size_t{0}, std::size_t{8192}, std::size_t{65536}}) {
        disk.leave(room);
        expect_no_room(run_program(home(), {"export-folder", logbook(), "--into", folder / "out"}));
        EXPECT_EQ(disk.entries(), 0U) << "with room for " << room << " bytes";
    }
}

TEST_F(ShippedOnAFullDisk, a_full_temporary_folder_spoils_no_file) {
    const fs::path folder = home() / "small";
    SmallFileSystem disk(folder);
    ASSERT_EQ(disk.trouble(), "") << "run the tests as an administrator, or where user namespaces are allowed";
    fs::create_directories(file("elsewhere"));
    disk.leave(0);
    for (const auto& [words, ending] : std::vector<std::pair<Words, std::string>>{{{"export-readings", logbook(), "--format", "xlsx"}, "xlsx"},
                                                                                  {{"report", logbook(), "--run", "Osk 1200/4"}, "pdf"},
                                                                                  {{"report", logbook(), "--run", "Osk 1200/4"}, "html"}}) {
        SCOPED_TRACE(testing::PrintToString(words));
        const std::string name = "elsewhere/temporary." + ending;
        const Ended ended = run_program(home(), with(words, {"--output", file(name)}), {{"TMPDIR", folder.string()}});
        if (ended.code != 0) {
            expect_no_room(ended);
            EXPECT_FALSE(fs::exists(file(name)));
            continue;
        }
        EXPECT_EQ(ended.err, "");
        EXPECT_NEAR(static_cast<double>(fs::file_size(file(name))), static_cast<double>(written(words, "elsewhere/usual." + ending).size()), 64)
            << name;
    }
}

TEST_F(ShippedOnAFullDisk, a_device_that_takes_nothing_is_no_place_for_a_file_and_a_result_that_cannot_be_told_is_an_error) {
    for (const Words& words : {Words{"report", logbook(), "--run", "Osk 1200/4", "--output", file("told.pdf"), "--force"},
                               Words{"report", logbook(), "--run", "Osk 1200/4", "--output", file("told.html"), "--force"}, Words{"report", "--help"},
                               Words{"pictures", logbook(), "--comparison-only", "--into", file("told"), "--force"}, Words{"pictures", "--help"}}) {
        const Ended ended = run_program(home(), words, {}, "/dev/full");
        EXPECT_EQ(ended.code, 1) << testing::PrintToString(words);
        EXPECT_EQ(std::ranges::count(ended.err, '\n'), 1) << ended.err;
        EXPECT_TRUE(contains(ended.err, "standard output")) << ended.err;
    }
    // The files themselves are there and whole.
    EXPECT_TRUE(contains(bytes_of(file("told.html")), "</html>"));
    EXPECT_TRUE(contains(bytes_of(file("told.pdf")), "%%EOF"));
    fs::create_symlink("/dev/full", file("link.pdf"));
    fs::create_symlink("/dev/full", file("link.html"));
    fs::create_directories(file("links"));
    fs::create_symlink("/dev/full", file("links/comparison-vessels.png"));
    for (const Words& words : {Words{"report", logbook(), "--compare", "--output", file("link.pdf"), "--force"},
                               Words{"report", logbook(), "--compare", "--output", file("link.html"), "--force"},
                               Words{"pictures", logbook(), "--comparison-only", "--into", file("links"), "--force"}}) {
        const Ended ended = run_program(home(), words);
        EXPECT_EQ(ended.code, 1) << testing::PrintToString(words);
        EXPECT_EQ(std::ranges::count(ended.err, '\n'), 1) << ended.err;
    }
    EXPECT_TRUE(fs::is_character_file("/dev/full"));
    EXPECT_EQ(std::distance(fs::directory_iterator(file("links")), fs::directory_iterator()), 1) << "no picture is drawn before all names are free";
}

} // namespace
} // namespace ullage::test
