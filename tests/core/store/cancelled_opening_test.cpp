// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"
#include "store/inside/interruption.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <atomic>
#include <chrono>
#include <sqlite3.h>
#include <thread>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

TEST(CancelledOpening, what_goes_on_in_a_database_ends_once_it_is_cancelled) {
    SQLite::Database database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    std::atomic<bool> cancelled = false;
    const store::Interruption interruption(database, &cancelled);
    const std::jthread person([&cancelled] {
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
        cancelled = true;
    });
    // Would take days.
    SQLite::Statement endless(database, "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT max(i) FROM n WHERE i > 0 LIMIT 1");
    try {
        endless.executeStep();
        ADD_FAILURE() << "it has an end";
    } catch (const SQLite::Exception& exception) {
        EXPECT_EQ(exception.getErrorCode(), SQLITE_INTERRUPT);
    }
}

TEST(CancelledOpening, leaves_the_file_as_it_was_and_the_check_yet_to_be_done) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";
    write_logbook(path);
    const auto before = folder_bytes(path.parent_path());
    const std::atomic<bool> cancelled = true;
    for (const OpenMode mode : {OpenMode::read_only, OpenMode::record}) {
        const auto opened = Logbook::open(path, mode, clock, &cancelled);
        ASSERT_FALSE(opened.ok());
        EXPECT_EQ(opened.error().failure, Failure::refused) << opened.error().sentence();
    }
    EXPECT_EQ(folder_bytes(path.parent_path()), before);
    const std::atomic<bool> goes_on = false;
    const Logbook logbook = take(Logbook::open(path, OpenMode::record, clock, &goes_on));
    EXPECT_TRUE(logbook.opening_check().full);
}

} // namespace
} // namespace ullage
