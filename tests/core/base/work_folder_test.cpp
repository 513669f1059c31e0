// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/work_folder.h"

#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <csignal>
#include <fstream>
#include <sys/wait.h>
#include <unistd.h>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

TEST(WorkFolder, goes_with_all_that_is_in_it_at_the_end_of_its_scope) {
    const TempFolder folder;
    {
        const auto work = WorkFolder::make(folder.path());
        ASSERT_TRUE(work.ok());
        std::ofstream(work.value() / "file") << "x";
        EXPECT_EQ(fs::status(work.value().path()).permissions(), fs::perms::owner_all);
    }
    EXPECT_TRUE(fs::is_empty(folder.path()));
}

TEST(WorkFolder, is_swept_once_its_process_has_died_and_not_before) {
    const TempFolder folder;
    int ready[2];
    ASSERT_EQ(::pipe(ready), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        const auto work = WorkFolder::make(folder.path());
        std::ofstream(work.value() / "file") << "x";
        (void)!::write(ready[1], "r", 1);
        ::pause();
    }
    char byte = 0;
    ASSERT_EQ(::read(ready[0], &byte, 1), 1);
    EXPECT_EQ(sweep_work_folders(folder.path()), 0u) << "its process lives";
    EXPECT_FALSE(fs::is_empty(folder.path()));
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    EXPECT_EQ(sweep_work_folders(folder.path()), 1u);
    EXPECT_TRUE(fs::is_empty(folder.path()));
    ::close(ready[0]);
    ::close(ready[1]);
}

TEST(WorkFolder, who_writes_many_files_into_a_folder_goes_through_it_once) {
    const TempFolder folder;
    const auto left = folder / ".ullage-12345678-1234-4234-8234-123456789012.part";
    fs::create_directory(left);
    sweep_work_folders_once(folder.path());
    EXPECT_FALSE(fs::exists(left));
    fs::create_directory(left);
    sweep_work_folders_once(folder / ".");
    EXPECT_TRUE(fs::exists(left));
}

TEST(WorkFolder, sweeping_leaves_what_has_another_name_or_is_no_folder) {
    const TempFolder folder;
    const std::string uuid = "12345678-1234-4234-8234-123456789012";
    for (const std::string& name : {".ullage-" + uuid, std::string(".ullage-mine.part"), std::string("notes.part")})
        fs::create_directory(folder / name);
    std::ofstream(folder / (".ullage-" + uuid + ".part")) << "a file of this name";
    EXPECT_EQ(sweep_work_folders(folder.path()), 0u);
    EXPECT_EQ(std::distance(fs::directory_iterator(folder.path()), {}), 4);
}

TEST(WorkFolder, a_folder_that_is_not_there_is_named) {
    const TempFolder folder;
    const auto work = WorkFolder::make(folder / "none");
    ASSERT_FALSE(work.ok());
    EXPECT_EQ(work.error().failure, Failure::io);
    EXPECT_EQ(work.error().where, (folder / "none").string());
}

} // namespace
} // namespace ullage::test
