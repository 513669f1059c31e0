// SPDX-License-Identifier: GPL-3.0-or-later
// The program that ships has a file beside it, the late part, with what stands on large libraries.
#include "shipped/shipped_fixture.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

/// Runs a copy of the program and of its late part, in a folder of their own.
class ShippedLatePart : public testing::Test {
protected:
    void SetUp() override {
        const char* const named = std::getenv("ULLAGE_PROGRAM");
        ASSERT_TRUE(named) << "run this through ctest";
        original_ = named;
        const fs::path program = original_;
        for (const auto& file : fs::directory_iterator(program.parent_path())) {
            const std::string name = file.path().filename().string();
            if (name.starts_with("libullage-late-") && name.ends_with(".so")) part_ = home_ / name;
        }
        ASSERT_FALSE(part_.empty()) << "no late part beside " << original_;
        fs::copy_file(program, home_ / "ullage");
        fs::copy_file(program.parent_path() / part_.filename(), part_);
        ::setenv("ULLAGE_PROGRAM", (home_ / "ullage").c_str(), 1);
        ASSERT_EQ(run_program(home_, {"import", logbook(), sample_file("01-tarrow-2k-drain-180-w.csv")}).code, 0);
    }
    void TearDown() override {
        if (!original_.empty()) ::setenv("ULLAGE_PROGRAM", original_.c_str(), 1);
    }

    [[nodiscard]] Ended make_workbook() const { return run_program(home_, {"export-readings", logbook(), "--format", "xlsx", "--output", table()}); }
    [[nodiscard]] std::string logbook() const { return (home_ / "book.ullage").string(); }
    [[nodiscard]] std::string table() const { return (home_ / "table.xlsx").string(); }

    std::string original_;
    TempFolder home_;
    fs::path part_;
};

TEST_F(ShippedLatePart, spares_a_start_the_libraries_that_it_stands_on) {
    const Ended listed = run_program(home_, {}, {{"LD_TRACE_LOADED_OBJECTS", "1"}}); // by the linker, in place of a start
    EXPECT_TRUE(contains(listed.out, "libQt6Widgets.so"));
    for (const char* library :
         {"libxlsxwriter.so", "libzip.so", "libxml2.so", "libexiv2.so", "libcrypto.so", "libQt6Network.so", "libQt6SerialBus.so"})
        EXPECT_FALSE(contains(listed.out, library)) << library;
}

TEST_F(ShippedLatePart, lets_a_program_start_that_binds_all_names_at_once) {
    EXPECT_EQ(run_program(home_, {"analyse", logbook()}, {{"LD_BIND_NOW", "1"}}).code, 0);
}

TEST_F(ShippedLatePart, is_found_beside_the_program_wherever_both_lie) {
    EXPECT_EQ(make_workbook().code, 0);
    EXPECT_FALSE(bytes_of(table()).empty());
}

TEST_F(ShippedLatePart, is_found_where_an_installation_puts_it) {
    fs::create_directories(home_ / "bin");
    fs::create_directories(home_.path() / "libexec" / "ullage");
    fs::rename(home_ / "ullage", home_.path() / "bin" / "ullage");
    fs::rename(part_, home_.path() / "libexec" / "ullage" / part_.filename());
    ::setenv("ULLAGE_PROGRAM", (home_.path() / "bin" / "ullage").c_str(), 1);
    EXPECT_EQ(make_workbook().code, 0);
}

TEST_F(ShippedLatePart, is_missed_at_once_and_not_after_hours_of_a_test) {
    fs::remove(part_);
    const Ended ended = run_program(home_, {"analyse", logbook()});
    EXPECT_NE(ended.code, 0);
    EXPECT_EQ(ended.err, "ullage: " + part_.string() + ": a part of the program is missing; install Ullage anew, all its files together\n");
}

TEST_F(ShippedLatePart, that_is_damaged_stops_what_needs_it_and_nothing_else) {
    std::ofstream(part_, std::ios::trunc) << "no library";
    const Ended ended = make_workbook();
    EXPECT_NE(ended.code, 0);
    EXPECT_TRUE(contains(ended.err, part_.string() + ": a part of the program cannot be loaded")) << ended.err;
    EXPECT_FALSE(fs::exists(table()));
    EXPECT_EQ(run_program(home_, {"analyse", logbook()}).code, 0);
}

TEST_F(ShippedLatePart, that_is_damaged_is_what_keeps_a_meter_from_being_read) {
    // The sample run, begun and not ended.
    std::ifstream sheet(sample_file("01-tarrow-2k-drain-180-w.csv"));
    std::ofstream running(home_ / "running.csv");
    for (std::string line; std::getline(sheet, line);) {
        if (line.starts_with("# end_noticed")) continue;
        running << (line.starts_with("# ended:") ? "# ended: still running" : line) << '\n';
        if (line.starts_with("2027-")) break;
    }
    running.close();
    const std::string live = (home_ / "live.ullage").string();
    ASSERT_EQ(run_program(home_, {"import", live, (home_ / "running.csv").string()}).code, 0);
    std::ofstream(part_, std::ios::trunc) << "no library";
    const Ended ended = run_program(home_, {"watch", live, "--unit", "Tarrow 2k", "--run", "1", "--kind", "http", "--address", "http://127.0.0.1:9/",
                                            "--read", "power body in W", "--for", "2"});
    EXPECT_TRUE(contains(ended.out + ended.err, part_.string() + ": a part of the program cannot be loaded")) << ended.out << ended.err;
}

} // namespace
} // namespace ullage::test
