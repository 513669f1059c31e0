// SPDX-License-Identifier: GPL-3.0-or-later
// What a full or failing disk does, shown with a disk that SQLite takes for the real one.
#include "faulty_disk.h"
#include "samples.h"

#include <set>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

std::set<ReadingId> uuids(const Logbook& logbook, const RunId& run) {
    std::set<ReadingId> found;
    for (const Reading& reading : take(logbook.readings(run))) found.insert(reading.uuid);
    return found;
}

TEST(Faults, on_a_full_disk_nothing_is_half_recorded_and_a_retry_succeeds_when_there_is_room) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    FaultyDisk disk;
    int refusals = 0, successes = 0;
    // From no room at all up to more than one reading needs, so that writing stops at each of its places.
    for (long room = 0; room <= 60'000; room += 1000) {
        std::set<ReadingId> expected;
        {
            Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
            expected = uuids(logbook, run);
            disk.leave_room(room);
            const auto reading = logbook.record(run, sample_values(clock.now_ms() + room));
            if (reading) {
                ++successes;
                expected.insert(reading.value().uuid);
            } else {
                ++refusals;
                EXPECT_EQ(reading.error().failure, Failure::disk_full);
                EXPECT_NE(reading.error().sentence().find("the disk is full; nothing was recorded"), std::string::npos);
            }
            EXPECT_EQ(uuids(logbook, run), expected);
            disk.free_space();
            if (!reading) expected.insert(take(logbook.record(run, sample_values(clock.now_ms() + room))).uuid);
        }
        EXPECT_EQ(uuids(take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock)), run), expected);
    }
    EXPECT_GT(refusals, 3);
    EXPECT_GT(successes, 3);
}

TEST(Faults, closing_on_a_full_disk_loses_nothing) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage", 0);
    std::set<ReadingId> expected;
    {
        FaultyDisk disk;
        Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
        for (int i = 0; i < 200; ++i) expected.insert(take(logbook.record(run, sample_values(i))).uuid);
        disk.leave_room(0);
        { const Logbook closed = std::move(logbook); }
    }
    EXPECT_EQ(uuids(take(Logbook::open(folder / "a.ullage", OpenMode::record, clock)), run), expected);
}

TEST(Faults, a_new_logbook_and_a_copy_that_do_not_fit_leave_nothing_behind) {
    const TempFolder folder;
    const FakeClock clock;
    FaultyDisk disk;
    const Logbook source = take(Logbook::in_memory(clock));
    for (const long room : {0L, 5000L, 20'000L}) {
        disk.leave_room(room);
        EXPECT_EQ(failure_of(Logbook::create(folder / "a.ullage", clock)), Failure::disk_full);
        disk.leave_room(room);
        const auto copied = source.save_copy(folder / "b.ullage");
        ASSERT_EQ(failure_of(copied), Failure::disk_full);
        EXPECT_NE(copied.error().what.text().find("no copy was made"), std::string::npos);
        EXPECT_TRUE(fs::is_empty(folder.path()));
    }
    disk.free_space();
    take(source.save_copy(folder / "b.ullage"));
}

TEST(Faults, an_import_that_does_not_fit_leaves_the_logbook_as_it_was) {
    const TempFolder folder;
    const FakeClock clock;
    write_logbook(folder / "a.ullage");
    FaultyDisk disk;
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    RunRecord record = take(logbook.run_records()).at(0);
    record.unit.name = "Another";
    record.unit.uuid = {};
    record.run.uuid = {};
    record.readings.assign(5000, Reading{});
    disk.leave_room(50'000);
    EXPECT_EQ(failure_of(logbook.import(record)), Failure::disk_full);
    EXPECT_EQ(take(logbook.units()).size(), 1u);
    EXPECT_EQ(take(logbook.runs()).size(), 1u);
    disk.free_space();
    EXPECT_EQ(take(logbook.import(record)).readings.size(), 5000u);
}

TEST(Faults, each_recorded_reading_has_been_made_safe_before_the_call_returns) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    const FaultyDisk disk;
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    for (int i = 0; i < 5; ++i) {
        const long before = disk.sync_count();
        take(logbook.record(run, sample_values(i)));
        EXPECT_GT(disk.sync_count(), before);
    }
}

TEST(Faults, a_reading_that_could_not_be_made_safe_is_reported_as_not_recorded) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage", 2);
    FaultyDisk disk;
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    disk.break_sync(true);
    const auto reading = logbook.record(run, sample_values());
    ASSERT_EQ(failure_of(reading), Failure::io);
    EXPECT_NE(reading.error().what.text().find("nothing was recorded"), std::string::npos);
    EXPECT_EQ(take(logbook.readings(run)).size(), 2u);
    disk.break_sync(false);
    take(logbook.record(run, sample_values()));
    EXPECT_EQ(take(logbook.readings(run)).size(), 3u);
}

} // namespace
} // namespace ullage
