// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace ullage {
namespace {

using namespace test;

struct Readings : testing::Test {
    TempFolder folder;
    FakeClock clock;
    Logbook logbook = take(Logbook::create(folder / "a.ullage", clock));
    ullage::Run run = take(logbook.add(sample_run(take(logbook.add(sample_unit())).uuid)));
};

TEST_F(Readings, every_part_of_a_reading_survives_closing_the_file) {
    const Reading reading = take(logbook.record(run.uuid, sample_values()));
    EXPECT_EQ(reading.uuid.text().size(), 36u);
    EXPECT_EQ(reading.sequence, 1);
    EXPECT_EQ(reading.version, 1);
    EXPECT_EQ(reading.values, sample_values());
    { const Logbook closed = std::move(logbook); }
    const Logbook again = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    EXPECT_EQ(take(again.readings(run.uuid)), std::vector{reading});
}

TEST_F(Readings, sequence_counts_the_order_of_entry_within_each_run) {
    const ullage::Run other = take(logbook.add(sample_run(run.unit_uuid)));
    EXPECT_EQ(take(logbook.record(run.uuid, sample_values(5))).sequence, 1);
    EXPECT_EQ(take(logbook.record(other.uuid, sample_values(5))).sequence, 1);
    EXPECT_EQ(take(logbook.record(run.uuid, sample_values(4))).sequence, 2);
}

TEST_F(Readings, all_runs_at_once_hold_the_same_readings_as_each_run_alone) {
    const ullage::Run other = take(logbook.add(sample_run(run.unit_uuid)));
    std::vector<Reading> entered;
    for (int i = 0; i < 6; ++i) // by turns, and not in order of time; two of one moment
        entered.push_back(take(logbook.record(i % 2 == 0 ? run.uuid : other.uuid, sample_values(1000 + 3'600'000 * (i / 2 == 1 ? 0 : 3 - i / 4)))));
    ReadingValues later = entered[1].values;
    later.time_ms += 50'000'000;
    take(logbook.amend(entered[1].uuid, later, "wrong day"));
    later.remark = "second thought";
    take(logbook.amend(entered[1].uuid, later, ""));
    take(logbook.set_withdrawn(entered[2].uuid, true, "a slip"));
    const std::vector<RunRecord> records = take(logbook.run_records());
    ASSERT_EQ(records.size(), 2u);
    for (const RunRecord& record : records) {
        EXPECT_EQ(record.readings.size(), 3u);
        EXPECT_EQ(record.readings, take(logbook.readings(record.run.uuid)));
        EXPECT_EQ(record.readings, take(logbook.run_record(record.run.uuid)).readings);
    }
    EXPECT_EQ(take(logbook.readings(other.uuid)).back().values, later);
}

TEST_F(Readings, an_amendment_keeps_what_it_replaced_with_time_and_reason) {
    const Reading reading = take(logbook.record(run.uuid, sample_values()));
    const UtcMs entered_ms = clock.now_ms();
    clock.advance_hours(2);
    ReadingValues better = sample_values();
    better.register_wh = 431;
    better.gauge_percent.reset();
    better.mark.reset();
    const Reading amended = take(logbook.amend(reading.uuid, better, "misread the display"));
    EXPECT_EQ(amended.version, 2);
    EXPECT_EQ(amended.values, better);
    EXPECT_EQ(take(logbook.readings(run.uuid)), std::vector{amended});

    const auto history = take(logbook.history(reading.uuid));
    ASSERT_EQ(history.size(), 2u);
    EXPECT_EQ(history[0].values, sample_values());
    EXPECT_EQ(history[0].written_ms, entered_ms);
    EXPECT_EQ(history[0].reason, "");
    EXPECT_EQ(history[1].version, 2);
    EXPECT_EQ(history[1].values, better);
    EXPECT_EQ(history[1].written_ms, clock.now_ms());
    EXPECT_EQ(history[1].reason, "misread the display");
}

TEST_F(Readings, an_amendment_that_changes_nothing_is_refused_and_adds_no_version) {
    const Reading reading = take(logbook.record(run.uuid, sample_values()));
    EXPECT_EQ(failure_of(logbook.amend(reading.uuid, sample_values(), "why not")), Failure::refused);
    EXPECT_EQ(failure_of(logbook.set_withdrawn(reading.uuid, false, "")), Failure::refused);
    EXPECT_EQ(take(logbook.history(reading.uuid)).size(), 1u);
}

TEST_F(Readings, withdrawing_and_restoring_are_versions_that_keep_the_values) {
    const Reading reading = take(logbook.record(run.uuid, sample_values()));
    EXPECT_TRUE(take(logbook.set_withdrawn(reading.uuid, true, "wrong run")).withdrawn);
    ASSERT_EQ(take(logbook.readings(run.uuid)).size(), 1u);
    EXPECT_TRUE(take(logbook.readings(run.uuid))[0].withdrawn);
    const Reading restored = take(logbook.set_withdrawn(reading.uuid, false, "it was right"));
    EXPECT_FALSE(restored.withdrawn);
    EXPECT_EQ(restored.version, 3);
    EXPECT_EQ(restored.values, sample_values());
    const auto history = take(logbook.history(reading.uuid));
    ASSERT_EQ(history.size(), 3u);
    EXPECT_EQ(history[1].withdrawn, true);
    EXPECT_EQ(history[1].reason, "wrong run");
    EXPECT_EQ(history[2].withdrawn, false);
}

// Another program that opens the file is held to the same rule.
TEST_F(Readings, a_record_with_one_reading_read_again_is_what_reading_all_of_it_gives) {
    RunRecord known = take(logbook.run_record(run.uuid));
    const auto expect_same = [&](const ReadingId& reading_uuid) {
        known = take(logbook.with_reading(std::move(known), reading_uuid));
        EXPECT_EQ(known.readings, take(logbook.run_record(run.uuid)).readings);
    };
    std::vector<ReadingId> uuids;
    for (const UtcMs minute : {10, 30, 20, 20, 0, 30}) {
        uuids.push_back(take(logbook.record(run.uuid, sample_values(60'000 * minute))).uuid);
        expect_same(uuids.back());
    }
    take(logbook.amend(uuids[0], sample_values(60'000 * 25), "later"));
    expect_same(uuids[0]);
    take(logbook.set_withdrawn(uuids[1], true, "wrong run"));
    expect_same(uuids[1]);
    const ullage::Run other = take(logbook.add(sample_run(run.unit_uuid)));
    const Reading elsewhere = take(logbook.record(other.uuid, sample_values()));
    EXPECT_EQ(failure_of(logbook.with_reading(known, elsewhere.uuid)), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.with_reading(known, ReadingId("none"))), Failure::not_found);
}

TEST(AppendOnly, no_sql_changes_deletes_or_replaces_a_reading) {
    const TempFolder folder;
    write_logbook(folder / "a.ullage");
    SQLite::Database database((folder / "a.ullage").string(), SQLite::OPEN_READWRITE);
    const auto rows = [&](const char* table) {
        std::string text;
        SQLite::Statement query(database, std::string("SELECT * FROM ") + table);
        while (query.executeStep())
            for (int i = 0; i < query.getColumnCount(); ++i) text += query.getColumn(i).getString() + "|";
        return text;
    };
    const std::string readings = rows("readings"), versions = rows("reading_versions");
    ASSERT_FALSE(versions.empty());
    for (const char* sql :
         {"UPDATE readings SET uuid = 'x' WHERE id = 1", "UPDATE readings SET sequence = 9", "DELETE FROM readings WHERE id = 3",
          "UPDATE reading_versions SET register_wh = 1", "UPDATE reading_versions SET withdrawn = 1",
          "DELETE FROM reading_versions WHERE reading_id = 3", "INSERT OR REPLACE INTO readings SELECT * FROM readings WHERE id = 1",
          "INSERT OR REPLACE INTO readings SELECT NULL, uuid, run_id, 4 FROM readings WHERE id = 1",
          "INSERT OR REPLACE INTO readings SELECT NULL, 'new', run_id, 1 FROM readings WHERE id = 1",
          "INSERT OR REPLACE INTO reading_versions SELECT * FROM reading_versions WHERE reading_id = 1",
          "INSERT INTO reading_versions SELECT reading_id, 5, time_ms, 0, 0, 0, 0, 1, '', 0, 0, '', NULL FROM "
          "reading_versions"}) {
        EXPECT_THROW(database.exec(sql), SQLite::Exception) << sql;
        EXPECT_EQ(rows("readings"), readings) << sql;
        EXPECT_EQ(rows("reading_versions"), versions) << sql;
    }
}

TEST(AppendOnly, a_value_of_the_wrong_type_is_refused_by_the_tables) {
    const TempFolder folder;
    write_logbook(folder / "a.ullage");
    SQLite::Database database((folder / "a.ullage").string(), SQLite::OPEN_READWRITE);
    EXPECT_THROW(database.exec("UPDATE units SET rated_energy_wh = 'plenty'"), SQLite::Exception);
    EXPECT_THROW(database.exec("UPDATE runs SET created_ms = 'today'"), SQLite::Exception);
    EXPECT_EQ(database
                  .execAndGet("SELECT count(*) FROM pragma_table_list WHERE type = 'table' AND strict = 0 "
                              "AND name NOT LIKE 'sqlite_%'")
                  .getInt(),
              0);
}

} // namespace
} // namespace ullage
