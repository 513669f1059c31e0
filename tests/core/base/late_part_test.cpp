// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/late_part.h"
#include "support/has_text.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <dlfcn.h>
#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <string>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

constinit LateFunction<int()> never_entered;
constinit LateFunction<int()> answer;
int forty_two() { return 42; }
const LateEntry answer_entry(answer, &forty_two);

void write(const fs::path& file, const std::string& bytes) { std::ofstream(file, std::ios::binary) << bytes; }

/// A library that this test has loaded already stands for the late part.
fs::path some_library() {
    Dl_info found{};
    const auto function = static_cast<std::string (*)(fmt::string_view, fmt::format_args)>(&fmt::vformat);
    return ::dladdr(reinterpret_cast<const void*>(function), &found) != 0 ? fs::path(found.dli_fname) : fs::path();
}

TEST(LatePart, a_function_that_is_linked_in_is_found_without_it) { EXPECT_EQ(answer.get().value()(), 42); }

TEST(LatePart, where_it_is_missing_the_first_place_is_named_and_what_to_do) {
    const TempFolder folder;
    const auto held = hold_late_part({folder / "here.so", folder / "there.so"});
    ASSERT_FALSE(held);
    EXPECT_EQ(held.error().failure, Failure::not_found);
    EXPECT_TRUE(contains(held.error().sentence(), (folder / "here.so").string() + ": a part of the program is missing; install Ullage anew"));
}

TEST(LatePart, that_lies_there_but_cannot_be_opened_is_not_called_missing) {
    const TempFolder folder;
    write(folder / "file", "no folder");
    const auto held = hold_late_part({folder.path() / "file" / "late.so", folder / "absent.so"});
    ASSERT_FALSE(held);
    EXPECT_EQ(held.error().failure, Failure::io);
    EXPECT_TRUE(contains(held.error().sentence(), "late.so: a part of the program cannot be opened ("));
}

TEST(LatePart, what_is_no_library_is_told_each_time_and_gives_no_function) {
    const TempFolder folder;
    write(folder / "late.so", "no library");
    ASSERT_TRUE(hold_late_part({folder / "absent.so", folder / "late.so"}));
    for (int times = 0; times < 2; ++times) {
        const auto got = never_entered.get();
        ASSERT_FALSE(got);
        EXPECT_EQ(got.error().failure, Failure::damaged);
        EXPECT_TRUE(contains(got.error().sentence(), "late.so: a part of the program cannot be loaded ("));
    }
}

TEST(LatePart, a_program_that_is_replaced_while_it_runs_goes_on_with_the_part_that_it_was_made_with) {
    const TempFolder folder;
    ASSERT_FALSE(some_library().empty());
    fs::copy_file(some_library(), folder / "late.so");
    ASSERT_TRUE(hold_late_part({folder / "late.so"}));
    write(folder / "new.so", "no library");
    fs::rename(folder / "new.so", folder / "late.so");
    EXPECT_TRUE(load_late_part());
    // It is no part of ours, though.
    const auto got = never_entered.get();
    ASSERT_FALSE(got);
    EXPECT_TRUE(contains(got.error().sentence(), "late.so: a part of the program is of another version; install Ullage anew"));
}

} // namespace
} // namespace ullage::test
