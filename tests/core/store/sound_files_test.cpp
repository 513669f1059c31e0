// SPDX-License-Identifier: GPL-3.0-or-later
// A full check of a file is remembered until anything touches it.
#include "samples.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <chrono>
#include <cstdlib>
#include <fcntl.h>
#include <sys/stat.h>
#include <thread>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

class SoundFiles : public testing::Test {
protected:
    SoundFiles() {
        if (const char* before = std::getenv("XDG_STATE_HOME")) before_ = before;
        ::setenv("XDG_STATE_HOME", (folder / "state").c_str(), 1);
        write_logbook(path);
        rest();
        fs::remove_all(folder / "state"); // whoever closed it on a slow disk knew it to be sound
    }
    ~SoundFiles() override {
        if (before_) ::setenv("XDG_STATE_HOME", before_->c_str(), 1);
        else ::unsetenv("XDG_STATE_HOME");
    }
    /// Until the coarse clock of file times has moved on.
    static void rest() { std::this_thread::sleep_for(std::chrono::milliseconds(40)); }
    [[nodiscard]] bool checked_in_full(OpenMode mode) const {
        FakeClock slow;
        slow.make_each_measurement_take_s(2.5);
        const Logbook logbook = take(Logbook::open(path, mode, slow));
        EXPECT_EQ(logbook.opening_check().seconds, logbook.opening_check().full ? 2.5 : 0);
        return logbook.opening_check().full;
    }

    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";

private:
    std::optional<std::string> before_;
};

TEST_F(SoundFiles, a_file_is_checked_from_end_to_end_once_and_not_again_while_nothing_touches_it) {
    EXPECT_TRUE(checked_in_full(OpenMode::read_only));
    for (const OpenMode mode : {OpenMode::read_only, OpenMode::record, OpenMode::read_only}) EXPECT_FALSE(checked_in_full(mode));
}

TEST_F(SoundFiles, a_copy_is_another_file_and_checked_anew) {
    EXPECT_TRUE(checked_in_full(OpenMode::read_only));
    fs::copy_file(path, folder / "b.ullage");
    EXPECT_TRUE(take(Logbook::open(folder / "b.ullage", OpenMode::read_only, clock)).opening_check().full);
}

TEST_F(SoundFiles, damage_is_found_even_where_the_time_of_the_file_was_set_back) {
    EXPECT_TRUE(checked_in_full(OpenMode::read_only));
    struct stat before {};
    ASSERT_EQ(::stat(path.c_str(), &before), 0);
    {
        // In a row of a reading, which opening does not read without the check.
        const std::size_t at = folder_bytes(folder.path()).at("a.ullage").find(sample_values().remark);
        ASSERT_NE(at, std::string::npos);
        std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
        file.seekp(static_cast<std::streamoff>(at));
        file << '\xFF';
    }
    const struct timespec times[] = {before.st_atim, before.st_mtim};
    ASSERT_EQ(::utimensat(AT_FDCWD, path.c_str(), times, 0), 0);
    EXPECT_EQ(failure_of(Logbook::open(path, OpenMode::read_only, clock)), Failure::damaged);
}

TEST_F(SoundFiles, what_a_crash_left_beside_one_is_checked) {
    EXPECT_TRUE(checked_in_full(OpenMode::read_only));
    {
        const TempFolder aside;
        fs::copy_file(path, aside / "a");
        SQLite::Database writer((aside / "a").string(), SQLite::OPEN_READWRITE);
        writer.exec("UPDATE units SET rated_energy_wh = -5");
        fs::copy_file(aside / "a-wal", path.string() + "-wal");
    }
    EXPECT_EQ(failure_of(Logbook::open(path, OpenMode::read_only, clock)), Failure::damaged);
}

TEST_F(SoundFiles, a_list_that_cannot_be_read_or_written_only_costs_the_check) {
    fs::remove_all(folder / "state");
    write_bytes(folder / "state", "no folder");
    for (int i = 0; i < 2; ++i) EXPECT_TRUE(checked_in_full(OpenMode::read_only));
    fs::remove(folder / "state");
    fs::create_directories(folder / "state/ullage");
    write_bytes(folder / "state/ullage/sound-logbooks", "1 2 three\n\x01\xff");
    EXPECT_TRUE(checked_in_full(OpenMode::read_only));
    EXPECT_FALSE(checked_in_full(OpenMode::read_only));
}

} // namespace
} // namespace ullage
