// SPDX-License-Identifier: GPL-3.0-or-later
// The window of the program as users get it: every page, and the same logbook again at the next start.
#include "shipped/shipped_fixture.h"
#include "store/recorder_of.h"

#include <algorithm>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <sstream>
#include <thread>

namespace ullage::test {
namespace {

/// Waits until the window holds the logbook, so that no other program may record into it, and has written down that it does.
bool holds_logbook(Program& window, const TempFolder& home, const std::string& logbook) {
    const auto until = std::chrono::steady_clock::now() + std::chrono::minutes(2);
    while (window.runs() && std::chrono::steady_clock::now() < until) {
        const bool noted = contains(bytes_of(home / ".config/ullage/ullage.ini"), logbook);
        if (noted && is_recorded_into(logbook)) return true;
        std::this_thread::sleep_for(std::chrono::milliseconds(50));
    }
    return false;
}

TEST_F(Shipped, shows_every_page_of_the_window_and_opens_the_same_logbook_again) {
    const std::string pages = good({"tour", logbook(), "--into", file("pages")}).out;
    for (const char* page : {"Running tests", "Osk 1200, drain", "Pelm 900, drain 23 May", "Tarrow 2k", ", charge", "sustained output", "peak output",
                             "Logging meter C", "Show night", "Comparison", "PV input", "Sizing", ", Log", ", Budget", ", Claims tested"})
        EXPECT_TRUE(contains(pages, page)) << page << " is not among\n" << pages;
    EXPECT_FALSE(contains(pages, "says:")) << pages;
    std::ptrdiff_t pictures = 0;
    for (const auto& entry : std::filesystem::directory_iterator(file("pages"))) {
        ++pictures;
        EXPECT_GT(entry.file_size(), 20'000U) << entry.path() << " shows hardly anything";
    }
    EXPECT_EQ(pictures, std::ranges::count(pages, '\n'));
    EXPECT_EQ(good({"tour", logbook(), "--dark"}).out, pages) << "the second time, and dark, the same logbook has the same pages";
    const std::string large = good({"tour", logbook(), "--text-percent", "200", "--width-px", "1920", "--height-px", "1080"}).out;
    EXPECT_TRUE(contains(large, "Comparison, Differences") && !contains(large, "says:")) << large;
    const Ended full = run_program(home(), {"tour", logbook(), "--into", file("pages")});
    EXPECT_EQ(full.code, 1) << "a folder with files in it is not written into";
    EXPECT_TRUE(contains(full.err, "not empty"));
}

TEST_F(Shipped, says_why_a_tour_finds_no_logbook) {
    const Ended missing = run_program(home(), {"tour", file("absent.ullage")});
    EXPECT_EQ(missing.code, 1);
    EXPECT_EQ(std::ranges::count(missing.err, '\n'), 1) << missing.err;
    EXPECT_EQ(run_program(home(), {"tour"}).code, 2);
}

TEST_F(Shipped, stays_open_on_a_logbook_and_reopens_it_by_itself_at_the_next_start) {
    for (const auto& args : {std::vector<std::string>{logbook()}, std::vector<std::string>{}}) {
        Program window(home(), args, {{"QT_QPA_PLATFORM", "offscreen"}});
        EXPECT_TRUE(holds_logbook(window, home(), logbook()));
        window.send(SIGTERM);
        const Ended ended = window.end();
        EXPECT_EQ(ended.signal, SIGTERM) << "exit code " << ended.code;
        EXPECT_EQ(ended.out + ended.err, "");
    }
    good({"analyse", logbook()});
}

} // namespace
} // namespace ullage::test
