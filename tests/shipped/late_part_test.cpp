// SPDX-License-Identifier: GPL-3.0-or-later
// The program that ships has a file beside it, the late part, with what stands on large libraries. Under sanitizers all is linked in.
#include "shipped/shipped_fixture.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

/// Runs a copy of the program and of its late part, in a folder of their own.
class ShippedLatePart : public testing::Test {
protected:
    void SetUp() override {
        const fs::path program = original_;
        for (const auto& file : fs::directory_iterator(program.parent_path()))
            if (file.path().filename().string().starts_with("libullage-late-")) part_ = home_ / file.path().filename().string();
        if (part_.empty()) GTEST_SKIP() << "all is linked in";
        fs::copy_file(program, home_ / "ullage");
        fs::copy_file(program.parent_path() / part_.filename(), part_);
        ::setenv("ULLAGE_PROGRAM", (home_ / "ullage").c_str(), 1);
        ASSERT_EQ(run_program(home_, {"import", logbook(), sample_file("01-tarrow-2k-drain-180-w.csv")}).code, 0);
    }
    void TearDown() override { ::setenv("ULLAGE_PROGRAM", original_.c_str(), 1); }

    [[nodiscard]] Ended make_workbook() const { return run_program(home_, {"export-readings", logbook(), "--format", "xlsx", "--output", table()}); }
    [[nodiscard]] std::string logbook() const { return (home_ / "book.ullage").string(); }
    [[nodiscard]] std::string table() const { return (home_ / "table.xlsx").string(); }

    const std::string original_ = std::getenv("ULLAGE_PROGRAM");
    TempFolder home_;
    fs::path part_;
};

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

} // namespace
} // namespace ullage::test
