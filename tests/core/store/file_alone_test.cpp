// SPDX-License-Identifier: GPL-3.0-or-later
// The file alone is the logbook: what was recorded is in it, whoever copies it and whenever.
#include "samples.h"
#include "support/child_process.h"
#include "support/photo_bytes.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <atomic>
#include <chrono>
#include <mutex>
#include <set>
#include <thread>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

/// A copy of the one file, as a file manager makes it.
fs::path copy_of_file(const fs::path& path, const fs::path& target) {
    const auto bytes = [&] {
        std::ifstream in(path, std::ios::binary);
        return std::string(std::istreambuf_iterator<char>(in), {});
    }();
    write_bytes(target, bytes);
    return target;
}

std::set<ReadingId> readings_of(const fs::path& path, const RunId& run) {
    const FakeClock clock;
    std::set<ReadingId> found;
    for (const Reading& reading : take(take(Logbook::open(path, OpenMode::read_only, clock)).readings(run))) found.insert(reading.uuid);
    return found;
}

TEST(FileAlone, each_reading_is_in_the_file_itself_when_its_call_returns) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage", 0);
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    std::set<ReadingId> recorded;
    for (int i = 0; i < 20; ++i) {
        recorded.insert(take(logbook.record(run, sample_values(clock.now_ms() + i))).uuid);
        EXPECT_TRUE(logbook.settled());
        const fs::path copy = copy_of_file(folder / "a.ullage", folder / ("copy-" + std::to_string(i)));
        EXPECT_EQ(readings_of(copy, run), recorded);
    }
    const Reading amended = take(logbook.amend(*recorded.begin(), sample_values(clock.now_ms() + 500), "typing error"));
    const fs::path copy = copy_of_file(folder / "a.ullage", folder / "copy");
    EXPECT_EQ(take(take(Logbook::open(copy, OpenMode::read_only, clock)).history(amended.uuid)).size(), 2u);
}

TEST(FileAlone, half_typed_entries_reach_the_file_by_settling) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage", 0);
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    take(logbook.keep_draft(run, "431"));
    EXPECT_FALSE(logbook.settled());
    EXPECT_TRUE(take(logbook.settle()));
    EXPECT_TRUE(logbook.settled());
    const fs::path copy = copy_of_file(folder / "a.ullage", folder / "copy");
    EXPECT_EQ(take(take(Logbook::open(copy, OpenMode::read_only, clock)).draft(run)), "431");
}

TEST(FileAlone, small_changes_without_end_reach_the_file_by_themselves_after_some_seconds) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage", 0);
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    take(logbook.keep_draft(run, "4"));
    std::this_thread::sleep_for(std::chrono::milliseconds(3100));
    EXPECT_FALSE(logbook.settled());
    take(logbook.keep_draft(run, "43"));
    EXPECT_TRUE(logbook.settled());
}

TEST(FileAlone, a_copy_that_is_under_way_is_not_spoilt_and_what_is_recorded_meanwhile_follows_it) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage", 0);
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    take(logbook.record(run, sample_values()));
    std::ifstream copier(folder / "a.ullage", std::ios::binary);
    const std::string before = folder_bytes(folder.path()).at("a.ullage");
    const ReadingId uuid = take(logbook.record(run, sample_values())).uuid;
    // Where the file system offers no leases the reading goes into the file in spite of the copier.
    if (!logbook.settled()) {
        EXPECT_EQ(folder_bytes(folder.path()).at("a.ullage"), before);
    }
    copier.close();
    EXPECT_TRUE(take(logbook.settle()));
    EXPECT_TRUE(readings_of(copy_of_file(folder / "a.ullage", folder / "copy"), run).contains(uuid));
}

TEST(FileAlone, copies_taken_at_random_moments_while_a_process_records_open_with_every_confirmed_reading) {
    const TempFolder folder;
    const RunId run = write_logbook(folder / "a.ullage", 0);
    ChildProcess child({ULLAGE_RECORDER, "settled", (folder / "a.ullage").string(), run.text(), "0"});
    std::set<ReadingId> confirmed;
    std::atomic<bool> ended = false;
    std::mutex door;
    std::thread listener([&] {
        while (const auto line = child.line()) {
            const std::lock_guard held(door);
            confirmed.insert(ReadingId(*line));
        }
        ended = true;
    });
    const FakeClock clock;
    std::size_t last = 0;
    int copies = 0;
    // The moments lie anywhere among the writes of the recorder, which does nothing else.
    for (; copies < 60 && !ended; ++copies) {
        std::set<ReadingId> expected;
        {
            const std::lock_guard held(door);
            expected = confirmed;
        }
        const fs::path copy = copy_of_file(folder / "a.ullage", folder / "copy");
        const auto opened = Logbook::open(copy, OpenMode::read_only, clock);
        if (!opened) {
            ADD_FAILURE() << "copy " << copies << ": " << opened.error().sentence();
            break;
        }
        std::set<ReadingId> found;
        for (const Reading& reading : take(opened.value().readings(run))) found.insert(reading.uuid);
        for (const ReadingId& uuid : expected) EXPECT_TRUE(found.contains(uuid)) << "copy " << copies;
        last = expected.size();
        fs::remove(copy);
        std::this_thread::sleep_for(std::chrono::microseconds(copies * 137 % 5000));
    }
    child.kill();
    listener.join();
    EXPECT_EQ(copies, 60);
    EXPECT_GT(last, 20u) << "too little was recorded meanwhile to show anything";
}

// What others do to the file of an open logbook.

struct Mishap {
    const char* name;
    const char* words;
    void (*happen)(const fs::path& path);
};
std::ostream& operator<<(std::ostream& out, const Mishap& mishap) { return out << mishap.name; }

const Mishap mishaps[] = {
    {"removed", "was removed", [](const fs::path& path) { fs::remove(path); }},
    {"renamed", "was renamed or moved", [](const fs::path& path) { fs::rename(path, path.string() + ".old"); }},
    {"replaced", "has taken the place",
     [](const fs::path& path) {
         fs::copy_file(path, path.string() + ".new");
         fs::rename(path.string() + ".new", path);
     }},
    {"cut_short", "cut the open logbook short", [](const fs::path& path) { fs::resize_file(path, 4096); }},
    {"emptied", "cut the open logbook short", [](const fs::path& path) { fs::resize_file(path, 0); }},
    {"written_to", "has written to the open logbook",
     [](const fs::path& path) {
         std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
         file.seekp(5000);
         file << "something else";
     }},
};

class Displaced : public testing::TestWithParam<Mishap> {};

TEST_P(Displaced, a_file_that_others_take_away_or_change_takes_no_more_readings_and_its_content_can_be_saved_elsewhere) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";
    const RunId run = write_logbook(path);
    Logbook logbook = take(Logbook::open(path, OpenMode::record, clock));
    const ReadingId uuid = take(logbook.record(run, sample_values())).uuid;
    std::this_thread::sleep_for(std::chrono::milliseconds(30)); // the clock of file times is coarse
    GetParam().happen(path);
    const auto after = folder_bytes(folder.path());
    for (int attempt = 0; attempt < 2; ++attempt) {
        const auto refused = logbook.record(run, sample_values());
        ASSERT_EQ(failure_of(refused), Failure::displaced);
        EXPECT_NE(refused.error().what.text().find(GetParam().words), std::string::npos) << refused.error().what;
    }
    EXPECT_EQ(folder_bytes(folder.path()), after);
    take(logbook.save_copy(folder / "saved.ullage"));
    const auto saved = readings_of(folder / "saved.ullage", run);
    EXPECT_EQ(saved.size(), 4u);
    EXPECT_TRUE(saved.contains(uuid));
    { const Logbook closed = std::move(logbook); }
    // Closing has not touched what now lies under the name.
    auto closed = folder_bytes(folder.path());
    closed.erase("saved.ullage");
    EXPECT_EQ(closed, after);
}

INSTANTIATE_TEST_SUITE_P(Files, Displaced, testing::ValuesIn(mishaps), [](const auto& mishap) { return std::string(mishap.param.name); });

TEST(DisplacedLogbook, what_is_left_where_it_was_moved_away_does_not_keep_a_new_one_from_that_name) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";
    write_logbook(path);
    {
        const Logbook logbook = take(Logbook::open(path, OpenMode::record, clock));
        fs::rename(path, folder / "moved.ullage");
    }
    EXPECT_EQ(failure_of(Logbook::create(path, clock)), std::nullopt);
    EXPECT_EQ(failure_of(Logbook::open(folder / "moved.ullage", OpenMode::record, clock)), std::nullopt);
}

TEST(DisplacedLogbook, what_others_have_spoilt_is_not_saved_as_if_it_were_sound) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";
    const RunId run = write_logbook(path);
    // Of a small logbook all is in memory.
    take(take(Logbook::open(path, OpenMode::record, clock)).add_photo(run, {}, {"display.jpg", bare_jpeg(8, 8, 9'000'000), {}}));
    const std::size_t at = folder_bytes(folder.path()).at("a.ullage").find(sample_values().remark);
    ASSERT_NE(at, std::string::npos);
    const Logbook logbook = take(Logbook::open(path, OpenMode::record, clock));
    {
        std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
        file.seekp(static_cast<std::streamoff>(at));
        file << '\xFF';
    }
    EXPECT_EQ(failure_of(logbook.save_copy(folder / "saved.ullage")), Failure::damaged);
    EXPECT_FALSE(fs::exists(folder / "saved.ullage"));
}

TEST(DisplacedLogbook, a_link_that_was_turned_to_another_file_is_noticed) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    write_logbook(folder / "b.ullage");
    fs::create_symlink(folder / "a.ullage", folder / "link.ullage");
    Logbook logbook = take(Logbook::open(folder / "link.ullage", OpenMode::record, clock));
    take(logbook.record(run, sample_values()));
    fs::remove(folder / "link.ullage");
    fs::create_symlink(folder / "b.ullage", folder / "link.ullage");
    EXPECT_EQ(failure_of(logbook.record(run, sample_values())), Failure::displaced);
}

} // namespace
} // namespace ullage
