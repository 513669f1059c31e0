// SPDX-License-Identifier: GPL-3.0-or-later
// A killed process shows that nothing waits in its memory; that the disk has it too is shown in
// faults_test.cpp. The child dies in an action on the disk whose number the test gives, so a round that fails fails again.
#include "samples.h"
#include "support/child_process.h"
#include "support/photo_bytes.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <random>
#include <set>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

std::set<std::string> stored(const Logbook& logbook, const RunId& run) {
    std::set<std::string> found;
    for (const Reading& reading : take(logbook.readings(run))) found.insert(reading.uuid.text());
    return found;
}

/// Lets a child record until it dies in its `action`-th action on the disk; returns all that it reported.
std::vector<std::string> record_and_kill(const fs::path& path, const RunId& run, long action, const char* task = "record") {
    ChildProcess child({ULLAGE_RECORDER, task, path.string(), run.text(), std::to_string(action)});
    std::vector<std::string> reported;
    while (auto line = child.line()) reported.push_back(*line);
    return reported;
}

TEST(KilledRecorder, no_reading_that_was_reported_as_recorded_is_lost_in_100_rounds) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";
    const RunId run = write_logbook(path, 0);
    std::mt19937 random(20270514);
    std::set<std::string> reported;
    int logs_left = 0;
    for (int round = 0; round < 100; ++round) {
        const auto lines = record_and_kill(path, run, 1 + static_cast<long>(random() % 360));
        reported.insert(lines.begin(), lines.end());
        std::error_code none;
        if (fs::file_size(path.string() + "-wal", none) > 0 && !none) ++logs_left;

        const Logbook logbook = take(Logbook::open(path, OpenMode::record, clock));
        const auto kept = stored(logbook, run);
        for (const std::string& uuid : reported) EXPECT_TRUE(kept.contains(uuid)) << "round " << round;
        // At most the one reading of each round that was on its way when the kill came.
        EXPECT_LE(kept.size(), reported.size() + static_cast<std::size_t>(round) + 1);
    }
    EXPECT_GT(reported.size(), 400u);
    EXPECT_GT(logs_left, 40) << "the kills came too late to leave anything to recover";
    SQLite::Database database(path.string(), SQLite::OPEN_READONLY);
    EXPECT_EQ(database.execAndGet("PRAGMA quick_check").getString(), "ok");
}

TEST(KilledRecorder, a_photo_that_was_reported_as_kept_is_whole_in_10_rounds) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";
    const RunId run = write_logbook(path, 0);
    std::mt19937 random(20270514);
    std::set<std::string> reported;
    for (int round = 0; round < 10; ++round) {
        const auto lines = record_and_kill(path, run, 1 + static_cast<long>(random() % 1500), "attach");
        reported.insert(lines.begin(), lines.end());
        const Logbook logbook = take(Logbook::open(path, OpenMode::record, clock));
        std::set<std::string> kept;
        for (const Photo& photo : take(logbook.photos(run))) {
            kept.insert(photo.uuid.text());
            EXPECT_EQ(take(logbook.photo_bytes(photo.uuid)), bare_jpeg(8, 8, 100'000)) << "round " << round;
        }
        for (const std::string& uuid : reported) EXPECT_TRUE(kept.contains(uuid)) << "round " << round;
    }
    EXPECT_GE(reported.size(), 15u);
}

TEST(KilledRecorder, looking_shows_what_its_log_holds_and_leaves_the_recovery_to_a_recorder) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";
    const RunId run = write_logbook(path, 0);
    const auto reported = record_and_kill(path, run, 300);
    ASSERT_TRUE(fs::exists(path.string() + "-wal"));
    const auto before = folder_bytes(folder.path());
    for (const bool writable : {true, false}) {
        if (!writable) fs::permissions(path, fs::perms::owner_read);
        const Logbook logbook = take(Logbook::open(path, OpenMode::read_only, clock));
        const auto kept = stored(logbook, run);
        for (const std::string& uuid : reported) EXPECT_TRUE(kept.contains(uuid));
        EXPECT_EQ(folder_bytes(folder.path()), before);
    }
}

} // namespace
} // namespace ullage
