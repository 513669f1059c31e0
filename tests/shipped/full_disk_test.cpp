// SPDX-License-Identifier: GPL-3.0-or-later
// Every command that writes, where what it writes does not fit: on a file system that is really full, and into a device that takes nothing.
#include "base/clock.h"
#include "shipped/bench_meter.h"
#include "shipped/shipped_fixture.h"
#include "shipped/small_file_system.h"
#include "store/logbook.h"

#include <algorithm>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <set>
#include <string_view>
#include <thread>

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

    /// A small logbook, of which a tour is short.
    static std::string sheet_logbook() {
        const std::string path = file("sheet.ullage");
        if (!fs::exists(path)) good({"import", path, sample_file("01-tarrow-2k-drain-180-w.csv")});
        return path;
    }

    static std::set<std::string> names_in(const std::string& folder) {
        std::set<std::string> names;
        for (const auto& entry : fs::directory_iterator(folder)) names.insert(entry.path().filename().string());
        return names;
    }

    /// It failed with one line that tells that its words went nowhere, and what is done all the same; of a path its beginning.
    static void expect_lost(const Ended& ended, const std::string& but) {
        EXPECT_EQ(ended.signal, 0);
        EXPECT_EQ(ended.code, 1);
        EXPECT_EQ(std::ranges::count(ended.err, '\n'), 1) << ended.err;
        const std::string begin = "ullage: standard output: the result could not be written; check where it goes to";
        EXPECT_TRUE(ended.err.starts_with(begin + but)) << ended.err << "instead of\n" << begin + but;
        EXPECT_EQ(contains(ended.err.substr(std::min(begin.size(), ended.err.size())), ";"), !but.empty()) << ended.err;
    }

    static constexpr std::string_view end_of_png{"IEND\xAE\x42\x60\x82"};

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

TEST_F(ShippedOnAFullDisk, pages_of_a_tour_are_whole_or_absent_and_only_those_that_are_there_are_told) {
    const fs::path folder = home() / "small";
    SmallFileSystem disk(folder);
    ASSERT_EQ(disk.trouble(), "") << "run the tests as an administrator, or where user namespaces are allowed";
    for (const std::size_t room : {std::size_t{0}, std::size_t{8192}, SmallFileSystem::bytes / 2}) {
        SCOPED_TRACE("with room for " + std::to_string(room) + " bytes");
        disk.leave(room);
        // What fills the disk lies there too, and a tour wants an empty folder.
        const Ended ended = run_program(home(), {"tour", logbook(), "--into", folder / "pages"});
        EXPECT_EQ(ended.code, 1);
        EXPECT_EQ(std::ranges::count(ended.err, '\n'), 1) << ended.err;
        EXPECT_TRUE(ended.err.starts_with("ullage: ") && contains(ended.err, "no room left on the disk")) << ended.err;
        std::ptrdiff_t pages = 0;
        if (fs::exists(folder / "pages"))
            for (const auto& entry : fs::directory_iterator(folder / "pages")) {
                ++pages;
                EXPECT_TRUE(bytes_of(entry.path()).ends_with(end_of_png)) << entry.path();
            }
        EXPECT_EQ(pages, std::ranges::count(ended.out, '\n')) << ended.out;
        EXPECT_EQ(pages > 0, room > 100'000) << "the last room is there for some of them";
    }
}

TEST_F(ShippedOnAFullDisk, logbooks_that_are_joined_are_told_so_where_the_table_of_it_does_not_fit) {
    const fs::path folder = home() / "small";
    SmallFileSystem disk(folder);
    ASSERT_EQ(disk.trouble(), "") << "run the tests as an administrator, or where user namespaces are allowed";
    const std::string other = running_logbook("other");
    for (const char* form : {"json", "csv", "xlsx"}) {
        const std::string here = file(std::string("joined-") + form + ".ullage");
        good({"import", here, sample_file("01-tarrow-2k-drain-180-w.csv")});
        disk.leave(0);
        const Ended ended = run_program(home(), {"join", here, other, "--output", folder / (std::string("told.") + form)});
        expect_no_room(ended);
        EXPECT_TRUE(ended.err.ends_with("; what came in is in the logbook: " + here + '\n')) << ended.err;
        EXPECT_EQ(disk.entries(), 0U);
        EXPECT_TRUE(contains(good({"analyse", here}).out, "Lantern 900"));
    }
}

TEST_F(ShippedOnAFullDisk, what_is_made_is_told_complete_where_the_result_cannot_be_told) {
    const std::string sheet = sample_file("01-tarrow-2k-drain-180-w.csv"), log = sample_file("logs/12-pelm-900-drain-logged.csv");
    const std::string book = file("told.ullage"), other = running_logbook("joined"), copies = file("copies");
    const auto report = [](const char* form, const char* name) { return Words{"report", logbook(), "--run", form, "--output", file(name)}; };
    fs::create_directories(copies);
    const std::vector<std::pair<Words, std::string>> all{
        {{"import", book, sheet, sample_file("12-pelm-900-drain-logged.csv")}, "what could be imported is in the logbook: " + book},
        {{"import-trace", log, "--logbook", book, "--unit", "Pelm 900", "--run", "1"}, "the samples are in the logbook"},
        {{"import-loads", sample_file("load-lists/show-night.csv"), "--logbook", book}, "what could be imported is in the logbook: " + book},
        {{"join", book, other}, "what came in is in the logbook: " + book},
        {{"export-folder", book, "--into", file("all")}, "the folder is complete: " + file("all")},
        {{"backup", book, "--into", copies}, "the copy is complete: " + copies},
        {report("Osk 1200/4", "told.pdf"), "the report is complete: " + file("told.pdf")},
        {report("Osk 1200/4", "told.html"), "the report is complete: " + file("told.html")},
        {with(report("Osk 1200/4", "files.html"), {"--with-files"}), "the report and the files beside it are complete: " + file("files.html")},
        {{"pictures", logbook(), "--comparison-only", "--into", file("told")}, "the pictures in " + file("told") + " are complete"},
        {{"tour", sheet_logbook(), "--into", file("pages-told")}, "the pictures in " + file("pages-told") + " are complete"}};
    for (const auto& [words, told] : all) {
        SCOPED_TRACE(testing::PrintToString(words));
        expect_lost(run_program(home(), words, {}, "/dev/full"), "; " + told);
    }
    for (const char* command : {"report", "pictures", "tour", "watch", "--man-page"})
        expect_lost(run_program(home(), command[0] == '-' ? Words{command} : Words{command, "--help"}, {}, "/dev/full"), "");
    expect_lost(run_program(home(), {"tour", sheet_logbook()}, {}, "/dev/full"), "");
    // And so it is.
    const std::string analysis = good({"analyse", book}).out;
    for (const char* part : {"Tarrow 2k", "Pelm 900", "Lantern 900", "Load by the log"}) EXPECT_TRUE(contains(analysis, part)) << part;
    EXPECT_TRUE(contains(good({"loads", "--logbook", book}).out, "Show night"));
    good({"import", file("again.ullage"), file("all")});
    EXPECT_EQ(good({"analyse", fs::directory_iterator(copies)->path()}).out, analysis);
    EXPECT_TRUE(contains(bytes_of(file("told.pdf")), "%%EOF"));
    good(with(report("Osk 1200/4", "heard.html"), {"--with-files"}));
    good({"pictures", logbook(), "--comparison-only", "--into", file("heard")});
    good({"tour", sheet_logbook(), "--into", file("pages-heard")});
    for (const char* name : {"told.html", "files.html"}) EXPECT_EQ(bytes_of(file(name)).size(), bytes_of(file("heard.html")).size()) << name;
    for (const auto& [told, heard] :
         std::vector<std::pair<std::string, std::string>>{{"files-files", "heard-files"}, {"told", "heard"}, {"pages-told", "pages-heard"}}) {
        EXPECT_FALSE(names_in(file(heard)).empty()) << heard;
        EXPECT_EQ(names_in(file(told)), names_in(file(heard)));
        for (const std::string& name : names_in(file(told))) {
            const bool png = name.ends_with(".png");
            EXPECT_TRUE(!png || bytes_of(file(told + '/' + name)).ends_with(end_of_png)) << name;
        }
    }
}

TEST_F(ShippedOnAFullDisk, a_watch_that_is_no_longer_heard_ends_and_tells_once_how_far_its_samples_are_in_the_logbook) {
    const std::string book = running_logbook("unheard");
    BenchMeter meter;
    PseudoTerminal screen;
    ASSERT_EQ(meter.trouble() + screen.trouble(), "");
    const Words watch{"watch", book, "--run", "1", "--kind", "lines", "--address", meter.device(), "--read", "register column 1", "--keep"};
    expect_lost(run_program(home(), watch, {}, "/dev/full"), "; the source is kept with the meter");
    Program heard(home(), {"watch", book, "--for", "60"}, {}, screen.device());
    const SystemClock clock;
    const auto traces_there = [&] { return Logbook::open(book, OpenMode::read_only, clock).value().traces().value(); };
    while (heard.runs() && traces_there().empty()) std::this_thread::sleep_for(std::chrono::milliseconds(100));
    screen.hang_up();
    meter.unplug(); // which is something to tell
    const Ended ended = heard.end();
    const std::vector<Trace> traces = traces_there();
    ASSERT_EQ(traces.size(), 1U);
    expect_lost(ended, "; the samples of Lantern 900 run 1 to " + format_iso8601(traces[0].last_ms, "UTC") + " are in the logbook");
}

TEST_F(ShippedOnAFullDisk, a_watch_whose_last_samples_do_not_fit_tells_how_far_those_before_are_in_the_logbook) {
    const fs::path folder = home() / "small";
    SmallFileSystem disk(folder);
    ASSERT_EQ(disk.trouble(), "") << "run the tests as an administrator, or where user namespaces are allowed";
    disk.leave(SmallFileSystem::bytes);
    const std::string book = running_logbook("small/watched");
    BenchMeter meter;
    ASSERT_EQ(meter.trouble(), "");
    const SystemClock clock;
    const auto traces_there = [&] { return Logbook::open(book, OpenMode::read_only, clock).value().traces().value(); };
    Program watch(home(), {"watch", book, "--run", "1", "--kind", "lines", "--address", meter.device(), "--read", "register column 1"});
    while (watch.runs() && traces_there().empty()) std::this_thread::sleep_for(std::chrono::milliseconds(100));
    // Until those are in the file itself, and others wait for their turn.
    std::this_thread::sleep_for(std::chrono::milliseconds(1500));
    const std::string page(4096, 'x');
    for (std::ofstream filling(folder / "filling", std::ios::binary); filling << page << std::flush;) {}
    watch.send(SIGTERM);
    const Ended ended = watch.end();
    EXPECT_EQ(ended.code, 1);
    const std::string told = format_iso8601(traces_there().front().last_ms, "UTC");
    EXPECT_TRUE(contains(ended.err, "; the samples of Lantern 900 run 1 to " + told + " are in the logbook\n")) << ended.err;
}

TEST_F(ShippedOnAFullDisk, a_device_that_takes_nothing_is_no_place_for_a_file) {
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
