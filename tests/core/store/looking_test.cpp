// SPDX-License-Identifier: GPL-3.0-or-later
// Looking at a logbook that somebody records into.
#include "samples.h"
#include "store/inside/descriptor_locks.h"
#include "store/recorder_of.h"
#include "support/child_process.h"

#include <atomic>
#include <fcntl.h>
#include <mutex>
#include <set>
#include <thread>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

TEST(Looking, a_logbook_that_another_process_holds_shows_what_it_says_and_stays_as_it_is) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    EXPECT_FALSE(take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock)).recorded_elsewhere());
    EXPECT_EQ(recorder_of(folder / "a.ullage"), std::nullopt);
    ChildProcess other({ULLAGE_RECORDER, "hold", (folder / "a.ullage").string()});
    ASSERT_EQ(other.line(), "open");
    const auto before = folder_bytes(folder.path());
    Logbook look = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    EXPECT_TRUE(look.recorded_elsewhere());
    EXPECT_EQ(take(look.units()).at(0).name, sample_unit().name);
    EXPECT_EQ(failure_of(look.record(run, sample_values())), Failure::read_only);
    EXPECT_EQ(folder_bytes(folder.path()), before);
    // The other's hold is untouched by it.
    EXPECT_EQ(failure_of(Logbook::open(folder / "a.ullage", OpenMode::record, clock)), Failure::in_use);
    const auto recorder = recorder_of(folder / "a.ullage");
    ASSERT_TRUE(recorder);
    EXPECT_EQ(recorder->command, "hold");
    EXPECT_GT(recorder->process, 0);
    other.finish();
    EXPECT_FALSE(is_recorded_into(folder / "a.ullage"));
    EXPECT_EQ(failure_of(Logbook::open(folder / "a.ullage", OpenMode::record, clock)), std::nullopt);
}

TEST(Looking, what_is_seen_can_be_saved_as_a_copy_and_still_not_be_changed) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    Logbook look = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    take(look.save_copy(folder / "b.ullage"));
    EXPECT_EQ(failure_of(look.save_copy(folder / "b.ullage")), Failure::refused);
    EXPECT_EQ(failure_of(look.record(run, sample_values())), Failure::read_only);
    EXPECT_EQ(take(take(Logbook::open(folder / "b.ullage", OpenMode::record, clock)).readings(run)).size(), 3U);
}

TEST(Looking, tells_whether_the_file_has_gone_on_since) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage", 0);
    Logbook recording = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    const Logbook look = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    EXPECT_TRUE(look.recorded_elsewhere());
    EXPECT_EQ(look.copy_age(), CopyAge::present);
    take(recording.keep_draft(run, "431"));
    EXPECT_EQ(look.copy_age(), CopyAge::waiting);
    EXPECT_EQ(take(look.draft(run)), "");
    // What is not in the file yet is seen all the same.
    const Logbook second = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    EXPECT_EQ(take(second.draft(run)), "431");
    EXPECT_EQ(second.copy_age(), CopyAge::present);
    EXPECT_TRUE(take(recording.settle()));
    EXPECT_EQ(look.copy_age(), CopyAge::outdated);
    EXPECT_EQ(second.copy_age(), CopyAge::outdated);
    fs::rename(folder / "a.ullage", folder / "b.ullage");
    EXPECT_EQ(take(Logbook::open(folder / "b.ullage", OpenMode::read_only, clock)).copy_age(), CopyAge::present);
    EXPECT_EQ(look.copy_age(), CopyAge::outdated);
}

TEST(Looking, who_copies_keeps_the_recorder_from_changing_the_file_and_loses_it_nothing) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage", 0);
    Logbook recording = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    const int descriptor = ::open((folder / "a.ullage").c_str(), O_RDONLY | O_CLOEXEC);
    {
        const store::SettlingPause pause(descriptor, 0);
        ASSERT_TRUE(pause.held());
        const std::string before = folder_bytes(folder.path()).at("a.ullage");
        take(recording.record(run, sample_values()));
        EXPECT_FALSE(recording.settled());
        EXPECT_EQ(folder_bytes(folder.path()).at("a.ullage"), before);
        EXPECT_EQ(take(take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock)).readings(run)).size(), 1u);
    }
    ::close(descriptor);
    EXPECT_TRUE(take(recording.settle()));
    EXPECT_TRUE(recording.settled());
}

/// What a process records, as it confirms it.
class Confirmed {
public:
    explicit Confirmed(ChildProcess& child)
        : child_(child), listener_([this] {
              while (const auto line = child_.line()) {
                  const std::lock_guard held(door_);
                  uuids_.insert(ReadingId(*line));
              }
              ended_ = true;
          }) {}
    ~Confirmed() { kill(); }
    Confirmed(const Confirmed&) = delete;
    Confirmed& operator=(const Confirmed&) = delete;

    /// Kills the process and hears it out.
    void kill() {
        child_.kill();
        if (listener_.joinable()) listener_.join();
    }
    [[nodiscard]] std::set<ReadingId> now() const {
        const std::lock_guard held(door_);
        return uuids_;
    }
    [[nodiscard]] bool ended() const { return ended_; }

private:
    ChildProcess& child_;
    mutable std::mutex door_;
    std::set<ReadingId> uuids_;
    std::atomic<bool> ended_ = false;
    std::thread listener_;
};

/// Opening for looking checks the copy from end to end, as the file was not closed; so a state that never was is noticed.
TEST(Looking, two_hundred_looks_while_a_process_records_find_every_confirmed_reading_and_a_kill_leaves_all_of_them) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";
    const RunId run = write_logbook(path, 0);
    ChildProcess child({ULLAGE_RECORDER, "record", path.string(), run.text(), "0"});
    std::set<ReadingId> last;
    {
        Confirmed confirmed(child);
        int looks = 0;
        std::size_t first = 0;
        for (; looks < 200 && !confirmed.ended(); ++looks) {
            const std::set<ReadingId> expected = confirmed.now();
            const auto look = Logbook::open(path, OpenMode::read_only, clock);
            ASSERT_TRUE(look.ok()) << "look " << looks << ": " << look.error().sentence();
            ASSERT_TRUE(look.value().opening_check().full || !look.value().recorded_elsewhere());
            std::set<ReadingId> found;
            for (const Reading& reading : take(look.value().readings(run))) found.insert(reading.uuid);
            for (const ReadingId& uuid : expected) ASSERT_TRUE(found.contains(uuid)) << "look " << looks;
            if (looks == 0) first = found.size();
        }
        EXPECT_EQ(looks, 200);
        confirmed.kill();
        last = confirmed.now();
        EXPECT_GT(last.size(), first + 20) << "too little was recorded meanwhile to show anything";
    }
    for (const OpenMode mode : {OpenMode::read_only, OpenMode::record}) {
        const Logbook after = take(Logbook::open(path, mode, clock));
        EXPECT_FALSE(after.recorded_elsewhere());
        std::set<ReadingId> found;
        for (const Reading& reading : take(after.readings(run))) found.insert(reading.uuid);
        for (const ReadingId& uuid : last) EXPECT_TRUE(found.contains(uuid));
    }
}

} // namespace
} // namespace ullage
