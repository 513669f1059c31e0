// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup.h"

#include "faulty_disk.h"
#include "samples.h"
#include "support/child_process.h"
#include "support/photo_bytes.h"

#include <atomic>
#include <set>
#include <sys/wait.h>
#include <thread>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

constexpr UtcMs day_ms = 24 * 3'600'000LL;

/// The names of the files of a folder.
std::set<std::string> names_in(const fs::path& folder) {
    std::set<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder)) names.insert(entry.path().filename().string());
    return names;
}

/// Records a reading, so that the file differs from its copies.
void go_on(const fs::path& path, const RunId& run) {
    const FakeClock clock;
    take(take(Logbook::open(path, OpenMode::record, clock)).record(run, sample_values()));
}

TEST(Backup, is_a_logbook_of_the_day_beside_the_logbook_with_all_that_it_holds) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "bench.ullage");
    {
        Logbook book = take(Logbook::open(folder / "bench.ullage", OpenMode::record, clock));
        take(book.add_photo(run, {}, {"a.jpg", bare_jpeg(8, 8, 50'000), {}}));
    }
    const std::string before = folder_bytes(folder.path()).at("bench.ullage");
    const auto made = take(back_up(folder / "bench.ullage", {}, clock));
    EXPECT_EQ(made.copy, folder / "bench.2027-05-14.ullage-copy");
    EXPECT_EQ(names_in(folder.path()), (std::set<std::string>{"bench.2027-05-14.ullage-copy", "bench.ullage"}));
    EXPECT_EQ(folder_bytes(folder.path()).at("bench.ullage"), before);
    const Logbook copy = take(Logbook::open(*made.copy, OpenMode::read_only, clock));
    const Logbook original = take(Logbook::open(folder / "bench.ullage", OpenMode::read_only, clock));
    EXPECT_EQ(take(copy.readings(run)), take(original.readings(run)));
    EXPECT_EQ(take(copy.photos(run)), take(original.photos(run)));
}

TEST(Backup, is_due_when_the_logbook_differs_from_its_newest_copy_and_while_it_is_open_once_a_day) {
    const TempFolder folder;
    FakeClock clock;
    const fs::path path = folder / "bench.ullage";
    const RunId run = write_logbook(path);
    const auto due = [&](BackupMoment moment) { return backup_due(path, {}, clock.now_ms(), moment); };
    EXPECT_TRUE(due(BackupMoment::opened_or_closed));
    EXPECT_TRUE(due(BackupMoment::while_open));
    take(back_up(path, {}, clock));
    EXPECT_FALSE(due(BackupMoment::opened_or_closed));
    clock.advance_ms(day_ms);
    EXPECT_FALSE(due(BackupMoment::while_open)) << "nothing has changed since";
    clock.advance_ms(-day_ms);
    go_on(path, run);
    EXPECT_TRUE(due(BackupMoment::opened_or_closed));
    EXPECT_FALSE(due(BackupMoment::while_open)) << "there is a copy of today";
    clock.advance_ms(day_ms);
    EXPECT_TRUE(due(BackupMoment::while_open));
    EXPECT_FALSE(backup_due(folder / "none.ullage", {}, clock.now_ms(), BackupMoment::opened_or_closed));
}

TEST(Backup, of_a_day_replaces_the_earlier_one_of_that_day) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "bench.ullage";
    const RunId run = write_logbook(path);
    take(back_up(path, {}, clock));
    go_on(path, run);
    const auto again = take(back_up(path, {}, clock));
    EXPECT_EQ(backup_copies(path, {}).size(), 1U);
    EXPECT_EQ(take(take(Logbook::open(*again.copy, OpenMode::read_only, clock)).readings(run)).size(), 4U);
}

TEST(Backup, is_kept_for_its_days_and_the_newest_however_old_it_is) {
    const TempFolder folder;
    FakeClock clock;
    const fs::path path = folder / "bench.ullage";
    const RunId run = write_logbook(path);
    const BackupPlace place{{}, 3};
    for (int day = 0; day < 6; ++day) {
        go_on(path, run);
        EXPECT_EQ(take(back_up(path, place, clock)).removed, day > 3 ? 1U : 0U) << "day " << day;
        clock.advance_ms(day_ms);
    }
    const auto copies = backup_copies(path, place);
    ASSERT_EQ(copies.size(), 4U);
    EXPECT_EQ(copies.front().day, "2027-05-19");
    EXPECT_EQ(copies.back().day, "2027-05-16");
    clock.advance_ms(100 * day_ms);
    go_on(path, run);
    EXPECT_EQ(take(back_up(path, place, clock)).removed, 4U);
    EXPECT_EQ(backup_copies(path, place).size(), 1U);
}

TEST(Backup, never_removes_or_replaces_what_is_no_copy_of_this_logbook_whatever_its_name) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "bench.ullage";
    const RunId run = write_logbook(path);
    write_logbook(folder / "stranger.ullage");
    fs::copy_file(folder / "stranger.ullage", folder / "bench.2020-01-01.ullage-copy");
    write_bytes(folder / "bench.2020-01-02.ullage-copy", "a note of mine");
    write_bytes(folder / "bench.2020-13-99.ullage-copy", "no day");
    fs::copy_file(path, folder / "bench.2020-01-03.ullage-copy"); // of this logbook, as it stood once
    go_on(path, run);
    EXPECT_EQ(take(back_up(path, {{}, 1}, clock)).removed, 1U);
    EXPECT_EQ(names_in(folder.path()),
              (std::set<std::string>{"bench.2020-01-01.ullage-copy", "bench.2020-01-02.ullage-copy", "bench.2020-13-99.ullage-copy",
                                     "bench.2027-05-14.ullage-copy", "bench.ullage", "stranger.ullage"}));
    for (const char* bytes : {"a note of mine", ""}) {
        write_bytes(folder / "bench.2027-05-14.ullage-copy", bytes);
        const auto refused = back_up(path, {}, clock);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().what, "a file of the copy's name is no copy of this logbook");
        EXPECT_EQ(folder_bytes(folder.path()).at("bench.2027-05-14.ullage-copy"), bytes);
    }
    fs::remove(folder / "bench.2027-05-14.ullage-copy");
    fs::copy_file(folder / "stranger.ullage", folder / "bench.2027-05-14.ullage-copy");
    EXPECT_EQ(failure_of(back_up(path, {}, clock)), Failure::refused);
}

TEST(Backup, in_one_folder_keeps_logbooks_of_one_name_apart) {
    const TempFolder folder;
    const FakeClock clock;
    for (const char* name : {"one", "two", "copies"}) fs::create_directory(folder / name);
    write_logbook(folder / "one" / "bench.ullage");
    fs::copy_file(folder / "one" / "bench.ullage", folder / "two" / "bench.ullage");
    const BackupPlace place{folder / "copies", 30};
    const auto one = take(back_up(folder / "one" / "bench.ullage", place, clock));
    const auto two = take(back_up(folder / "two" / "bench.ullage", place, clock));
    EXPECT_NE(one.copy, two.copy);
    EXPECT_EQ(backup_copies(folder / "one" / "bench.ullage", place).front().path, one.copy);
    EXPECT_EQ(backup_copies(folder / "two" / "bench.ullage", place).size(), 1U);
    EXPECT_EQ(names_in(folder / "one").size(), 1U) << "nothing beside the logbook";
}

TEST(Backup, of_a_logbook_that_holds_nothing_is_not_made) {
    const TempFolder folder;
    const FakeClock clock;
    take(Logbook::create(folder / "new.ullage", clock));
    EXPECT_EQ(take(back_up(folder / "new.ullage", {}, clock)).copy, std::nullopt);
    EXPECT_EQ(names_in(folder.path()).size(), 1U);
}

TEST(Backup, of_a_logbook_that_is_being_recorded_into_has_all_that_was_recorded_and_keeps_nobody_waiting) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "bench.ullage";
    const RunId run = write_logbook(path, 0);
    Logbook recording = take(Logbook::open(path, OpenMode::record, clock));
    std::atomic<bool> ended = false;
    std::atomic<int> copies = 0;
    std::jthread copier([&] {
        while (!ended) {
            const auto made = back_up(path, {}, clock);
            EXPECT_TRUE(made) << made.error().sentence();
            ++copies;
        }
    });
    // Each reading is on the disk when the call returns, whatever the copier is at.
    for (int i = 0; i < 300 || copies < 2; ++i) take(recording.record(run, sample_values(clock.now_ms() + i)));
    ended = true;
    copier.join();
    const auto last = take(back_up(path, {}, clock));
    EXPECT_EQ(take(take(Logbook::open(*last.copy, OpenMode::read_only, clock)).readings(run)).size(), take(recording.readings(run)).size());
    EXPECT_EQ(recording.displaced(), std::nullopt);
}

TEST(Backup, on_a_full_disk_is_absent_and_says_so_and_the_earlier_copy_stays) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "bench.ullage";
    const RunId run = write_logbook(path);
    take(back_up(path, {}, clock));
    const std::string earlier = folder_bytes(folder.path()).at("bench.2027-05-14.ullage-copy");
    go_on(path, run);
    FaultyDisk disk;
    int refusals = 0;
    for (long room = 0; room < 150'000; room += 25'000) {
        disk.leave_room(room);
        const auto made = back_up(path, {}, clock);
        disk.free_space();
        if (made) break;
        ++refusals;
        EXPECT_EQ(made.error().failure, Failure::disk_full);
        EXPECT_EQ(made.error().what, "the disk is full; no copy was made");
        EXPECT_EQ(folder_bytes(folder.path()).at("bench.2027-05-14.ullage-copy"), earlier);
        EXPECT_EQ(names_in(folder.path()).size(), 2U);
    }
    EXPECT_GT(refusals, 2);
}

TEST(Backup, that_is_killed_leaves_the_earlier_copy_or_a_whole_new_one) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "bench.ullage", copies = folder / "copies";
    fs::create_directory(copies);
    const RunId run = write_logbook(path);
    const std::string before = folder_bytes(folder.path()).at("bench.ullage");
    int killed = 0;
    std::optional<std::string> last;
    for (long action = 1; action < 2000; action += 3) {
        ChildProcess child({ULLAGE_RECORDER, "backup", path.string(), copies.string(), std::to_string(action)});
        const auto said = child.line();
        while (child.line()) {}
        EXPECT_EQ(folder_bytes(folder.path()).at("bench.ullage"), before);
        for (const BackupCopy& copy : backup_copies(path, {copies, 30}))
            EXPECT_EQ(take(take(Logbook::open(copy.path, OpenMode::read_only, clock)).readings(run)).size(), 3U);
        last = said;
        if (said) break;
        ++killed;
    }
    EXPECT_GT(killed, 5);
    EXPECT_TRUE(last && last->ends_with(".ullage-copy")) << last.value_or("killed each time");
    const auto made = backup_copies(path, {copies, 30});
    ASSERT_EQ(made.size(), 1U) << "the one that was not killed";
    EXPECT_EQ(names_in(copies).size(), 1U) << "what the killed ones left is swept up";
}

TEST(Backup, without_a_folder_to_write_to_says_which_and_harms_nothing) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "bench.ullage";
    write_logbook(path);
    const auto missing = back_up(path, {folder / "none", 30}, clock);
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().sentence(), (folder / "none").string() + ": there is no such folder; make the folder first, or choose another");
    fs::create_directory(folder / "shut");
    fs::permissions(folder / "shut", fs::perms::owner_read | fs::perms::owner_exec);
    const auto shut = back_up(path, {folder / "shut", 30}, clock);
    ASSERT_FALSE(shut);
    EXPECT_EQ(shut.error().what, "no file can be made in this folder");
    write_bytes(path, "damaged");
    EXPECT_EQ(failure_of(back_up(path, {}, clock)), Failure::not_a_logbook);
    EXPECT_TRUE(backup_copies(path, {}).empty());
}

TEST(Backup, that_is_cancelled_is_absent) {
    const TempFolder folder;
    const FakeClock clock;
    write_logbook(folder / "bench.ullage");
    const std::atomic<bool> cancelled = true;
    EXPECT_EQ(failure_of(back_up(folder / "bench.ullage", {}, clock, &cancelled)), Failure::refused);
    EXPECT_EQ(names_in(folder.path()).size(), 1U);
}

} // namespace
} // namespace ullage
