// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"
#include "support/child_process.h"

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

TEST(InUse, a_second_logbook_of_the_same_process_is_refused_by_any_name_of_the_file) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    fs::create_symlink(folder / "a.ullage", folder / "link.ullage");
    fs::create_hard_link(folder / "a.ullage", folder / "hard.ullage");
    Logbook first = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    for (const char* name : {"a.ullage", "link.ullage", "hard.ullage"})
        EXPECT_EQ(failure_of(Logbook::open(folder / name, OpenMode::record, clock)), Failure::in_use) << name;
    // The refused attempts have not taken the first one's hold away.
    ChildProcess other({ULLAGE_RECORDER, "hold", (folder / "a.ullage").string()});
    EXPECT_NE(other.line().value_or("ended"), "open");
    take(first.record(run, sample_values()));
}

TEST(InUse, a_logbook_that_another_process_records_into_is_refused_and_left_alone_until_it_ends) {
    const TempFolder folder;
    const FakeClock clock;
    write_logbook(folder / "a.ullage");
    ChildProcess other({ULLAGE_RECORDER, "hold", (folder / "a.ullage").string()});
    ASSERT_EQ(other.line(), "open");
    const auto before = folder_bytes(folder.path());
    const auto refused = Logbook::open(folder / "a.ullage", OpenMode::record, clock);
    ASSERT_EQ(failure_of(refused), Failure::in_use);
    EXPECT_NE(refused.error().sentence().find("open elsewhere"), std::string::npos);
    EXPECT_EQ(folder_bytes(folder.path()), before);
    other.finish();
    EXPECT_EQ(failure_of(Logbook::open(folder / "a.ullage", OpenMode::record, clock)), std::nullopt);
}

TEST(InUse, reading_the_open_file_by_other_means_and_closing_it_leaves_it_held) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    const Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    // As a file dialog does that looks into files, and a reader of all files of a folder. Locks of the process would end with it.
    folder_bytes(folder.path());
    ChildProcess other({ULLAGE_RECORDER, "hold", (folder / "a.ullage").string()});
    EXPECT_NE(other.line().value_or("ended"), "open");
    ChildProcess plain({"/usr/bin/sqlite3", (folder / "a.ullage").string(), ".bail on", "UPDATE units SET name = 'x'", "SELECT 'done'"});
    EXPECT_EQ(plain.line(), std::nullopt) << "another program could write";
    EXPECT_EQ(take(logbook.units()).at(0).name, sample_unit().name);
}

TEST(InUse, closing_a_logbook_frees_it_at_once) {
    const TempFolder folder;
    const FakeClock clock;
    write_logbook(folder / "a.ullage");
    for (int i = 0; i < 3; ++i) EXPECT_EQ(failure_of(Logbook::open(folder / "a.ullage", OpenMode::record, clock)), std::nullopt);
}

TEST(InUse, two_can_look_at_once_and_one_can_record_after_them) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    const Logbook one = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    const Logbook two = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    Logbook recording = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    take(recording.record(run, sample_values()));
    EXPECT_EQ(take(one.readings(run)), take(two.readings(run)));
    EXPECT_EQ(take(recording.readings(run)).size(), take(one.readings(run)).size() + 1);
}

} // namespace
} // namespace ullage
