// SPDX-License-Identifier: GPL-3.0-or-later
// Which files are opened, which are refused, and that refusing leaves no trace.
#include "samples.h"
#include "store/inside/file_header.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <functional>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

void edit(const fs::path& path, const char* sql) { SQLite::Database(path.string(), SQLite::OPEN_READWRITE).exec(sql); }

void overwrite(const fs::path& path, std::streamoff at, const std::string& bytes) {
    std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
    file.seekp(at);
    file << bytes;
}

/// Puts an object into the schema that no statement could make, its name being kept for SQLite.
void hide_in_schema(const fs::path& path, const char* type, const char* name, const char* table, const char* sql) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
    database.exec("PRAGMA writable_schema = ON");
    SQLite::Statement insert(database, "INSERT INTO sqlite_schema VALUES (?1, ?2, ?3, 0, ?4)");
    insert.bind(1, type);
    insert.bind(2, name);
    insert.bind(3, table);
    insert.bind(4, sql);
    insert.exec();
    database.exec("PRAGMA schema_version = 900");
}

struct Refusal {
    const char* name;
    Failure failure;
    std::function<void(const fs::path&)> make;
};

std::ostream& operator<<(std::ostream& out, const Refusal& refusal) { return out << refusal.name; }

const Refusal refusals[] = {
    {"empty", Failure::not_a_logbook, [](const fs::path& path) { write_bytes(path, ""); }},
    {"text", Failure::not_a_logbook, [](const fs::path& path) { write_bytes(path, "# unit: Lantern 900\n"); }},
    {"another_database", Failure::not_a_logbook,
     [](const fs::path& path) {
         SQLite::Database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE).exec("CREATE TABLE t (a); PRAGMA user_version = 1");
     }},
    {"folder", Failure::not_a_logbook, [](const fs::path& path) { fs::create_directory(path); }},
    {"newer", Failure::newer_version,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "PRAGMA user_version = 900");
     }},
    {"newer_by_the_log_of_a_crashed_writer", Failure::newer_version,
     [](const fs::path& path) {
         write_logbook(path);
         const TempFolder aside;
         {
             SQLite::Database writer(path.string(), SQLite::OPEN_READWRITE);
             writer.exec("PRAGMA user_version = 900");
             fs::copy_file(path, aside / "main");
             fs::copy_file(path.string() + "-wal", aside / "wal");
         }
         fs::copy_file(aside / "main", path, fs::copy_options::overwrite_existing);
         fs::copy_file(aside / "wal", path.string() + "-wal");
     }},
    {"cut_within_the_header", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         fs::resize_file(path, 60);
     }},
    {"cut_after_the_header", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         fs::resize_file(path, 100);
     }},
    {"cut_in_the_middle", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path, 200);
         fs::resize_file(path, fs::file_size(path) / 2 + 17);
     }},
    {"last_byte_missing", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         fs::resize_file(path, fs::file_size(path) - 1);
     }},
    {"overwritten_page", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path, 200);
         overwrite(path, static_cast<std::streamoff>(fs::file_size(path)) - 4096, std::string(4096, '\xA5'));
     }},
    {"overwritten_schema", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         overwrite(path, 100, std::string(300, '\xA5'));
     }},
    {"a_table_missing", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "DROP TABLE run_drafts");
     }},
    {"a_trigger_missing", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "DROP TRIGGER readings_are_not_deleted");
     }},
    {"a_trigger_of_the_right_name_that_does_nothing", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "DROP TRIGGER readings_are_not_deleted; CREATE TRIGGER readings_are_not_deleted BEFORE DELETE ON readings BEGIN SELECT 1; END");
     }},
    {"no_version", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "PRAGMA user_version = 0");
     }},
    {"a_run_without_its_unit", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "PRAGMA foreign_keys = OFF; DELETE FROM units");
     }},
    {"a_run_of_an_unknown_kind", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "UPDATE runs SET kind = 77");
     }},
    {"a_hidden_trigger_that_swallows_readings", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         hide_in_schema(path, "trigger", "sqlite_x", "readings", "CREATE TRIGGER sqlite_x BEFORE INSERT ON readings BEGIN SELECT RAISE(IGNORE); END");
     }},
    {"a_hidden_trigger_that_renames_units", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         hide_in_schema(path, "trigger", "sqlite_autoindex_units_9", "readings",
                        "CREATE TRIGGER sqlite_autoindex_units_9 AFTER INSERT ON readings BEGIN UPDATE units SET name = 'x'; END");
     }},
    {"a_hidden_view", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         hide_in_schema(path, "view", "sqlite_v", "sqlite_v", "CREATE VIEW sqlite_v AS SELECT 1");
     }},
    {"a_table_more", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "CREATE TABLE sheets (a)");
     }},
    {"a_row_missing_from_an_index", Failure::damaged,
     [](const fs::path& path) { // which quick_check passes over
         write_logbook(path);
         const std::string row = "WHERE name = 'runs_by_unit'";
         edit(path, ("PRAGMA writable_schema = ON; CREATE TABLE aside AS SELECT * FROM sqlite_schema " + row + "; DELETE FROM sqlite_schema " + row)
                        .c_str());
         edit(
             path,
             "UPDATE runs SET unit_id = unit_id + 0; INSERT INTO units SELECT id + 1, uuid || 'b', name, maker, rated_energy_wh, "
             "rated_output_w, peak_output_w, pv_max_v, pv_max_a, pv_max_w, price, currency, mass_kg, warranty_years, "
             "gauge_step_percent, remark, withdrawn, created_ms, paid_price, tags, pv_start_v, charge_time_h, model, pv_short_circuit_a, serial_number, "
             "chemistry, purchased, cycles_before FROM units; "
             "UPDATE runs SET unit_id = unit_id + 1");
         edit(path, "PRAGMA writable_schema = ON; INSERT INTO sqlite_schema SELECT * FROM aside; DROP TABLE aside");
         SQLite::Database file(path.string(), SQLite::OPEN_READONLY);
         ASSERT_EQ(file.execAndGet("PRAGMA quick_check").getString(), "ok");
     }},
    {"an_infinite_rated_output", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "UPDATE units SET rated_output_w = 9e999");
     }},
    {"a_negative_rated_energy", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "UPDATE units SET rated_energy_wh = -5");
     }},
    {"an_infinite_register", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "INSERT INTO reading_versions SELECT reading_id, 2, time_ms, gauge_percent, 9e999, meter_w, display_w, mark, remark, "
                    "withdrawn, written_ms, reason, NULL FROM reading_versions WHERE reading_id = 1");
     }},
    {"a_name_that_is_no_text", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "UPDATE units SET name = CAST(x'ff41' AS TEXT)");
     }},
    {"a_reason_that_is_no_text", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "INSERT INTO reading_versions SELECT reading_id, 2, time_ms, gauge_percent, register_wh, meter_w, display_w, mark, remark, "
                    "withdrawn, written_ms, CAST(x'ff41' AS TEXT), NULL FROM reading_versions WHERE reading_id = 1");
     }},
    {"a_remark_beyond_all_bounds", Failure::damaged,
     [](const fs::path& path) {
         write_logbook(path);
         edit(path, "UPDATE units SET remark = printf('%.2000000c', 'x')");
     }},
};

struct RefusedFile : testing::TestWithParam<Refusal> {};

TEST_P(RefusedFile, it_is_named_for_what_it_is_and_left_byte_for_byte_without_side_files) {
    const TempFolder folder;
    const FakeClock clock;
    const fs::path path = folder / "a.ullage";
    GetParam().make(path);
    const auto before = folder_bytes(folder.path());
    for (const OpenMode mode : {OpenMode::record, OpenMode::read_only}) {
        const auto opened = Logbook::open(path, mode, clock);
        ASSERT_EQ(failure_of(opened), GetParam().failure) << (opened ? "opened" : opened.error().sentence());
        EXPECT_NE(opened.error().where.text().find("a.ullage"), std::string::npos);
        EXPECT_FALSE(opened.error().what.empty());
        EXPECT_FALSE(opened.error().remedy.empty());
        EXPECT_EQ(folder_bytes(folder.path()), before);
    }
}

INSTANTIATE_TEST_SUITE_P(Kinds, RefusedFile, testing::ValuesIn(refusals), [](const auto& kind) { return std::string(kind.param.name); });

TEST(OpenLogbook, a_file_that_does_not_exist_is_not_found_and_not_made) {
    const TempFolder folder;
    const FakeClock clock;
    for (const OpenMode mode : {OpenMode::record, OpenMode::read_only})
        EXPECT_EQ(failure_of(Logbook::open(folder / "a.ullage", mode, clock)), Failure::not_found);
    EXPECT_TRUE(fs::is_empty(folder.path()));
}

TEST(OpenLogbook, a_closed_logbook_is_one_file_marked_as_ours) {
    const TempFolder folder;
    write_logbook(folder / "a.ullage");
    const auto files = folder_bytes(folder.path());
    ASSERT_EQ(files.size(), 1u);
    // SQLite, "Database File Format", 1.3: the application id is big-endian at offset 68; ours is ASCII.
    EXPECT_EQ(files.at("a.ullage").substr(68, 4), "ULLG");
    EXPECT_EQ(store::application_id, 0x554C4C47);
}

TEST(OpenLogbook, creating_refuses_to_touch_a_file_of_that_name) {
    const TempFolder folder;
    const FakeClock clock;
    write_bytes(folder / "a.ullage", "precious");
    EXPECT_EQ(failure_of(Logbook::create(folder / "a.ullage", clock)), Failure::refused);
    EXPECT_EQ(folder_bytes(folder.path()), (std::map<std::string, std::string>{{"a.ullage", "precious"}}));
}

TEST(OpenLogbook, creating_refuses_beside_the_log_that_a_lost_logbook_left) {
    const TempFolder folder;
    const FakeClock clock;
    write_bytes(folder / "a.ullage-wal", "readings of a crashed writer");
    EXPECT_EQ(failure_of(Logbook::create(folder / "a.ullage", clock)), Failure::refused);
    EXPECT_EQ(folder_bytes(folder.path()).size(), 1u);
}

TEST(OpenLogbook, creating_needs_a_folder_that_exists_and_can_be_written) {
    const TempFolder folder;
    const FakeClock clock;
    EXPECT_EQ(failure_of(Logbook::create(folder / "none/a.ullage", clock)), Failure::io);
    fs::permissions(folder.path(), fs::perms::owner_read | fs::perms::owner_exec);
    EXPECT_EQ(failure_of(Logbook::create(folder / "a.ullage", clock)), Failure::io);
    EXPECT_TRUE(fs::is_empty(folder.path()));
}

void expect_only_to_be_looked_at(const TempFolder& folder, const RunId& run_uuid, std::size_t readings) {
    const FakeClock clock;
    const auto before = folder_bytes(folder.path());
    EXPECT_EQ(failure_of(Logbook::open(folder / "a.ullage", OpenMode::record, clock)), Failure::read_only);
    {
        Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
        EXPECT_EQ(take(logbook.readings(run_uuid)).size(), readings);
        EXPECT_EQ(failure_of(logbook.record(run_uuid, sample_values())), Failure::read_only);
        EXPECT_EQ(failure_of(logbook.add(sample_unit())), Failure::read_only);
        EXPECT_EQ(failure_of(logbook.keep_draft(run_uuid, "x")), Failure::read_only);
        EXPECT_EQ(folder_bytes(folder.path()), before);
    }
    EXPECT_EQ(folder_bytes(folder.path()), before);
}

TEST(OpenLogbook, a_file_without_write_permission_can_be_looked_at_only) {
    const TempFolder folder;
    const RunId run = write_logbook(folder / "a.ullage", 4);
    fs::permissions(folder / "a.ullage", fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read);
    expect_only_to_be_looked_at(folder, run, 4);
}

TEST(OpenLogbook, a_file_in_a_folder_without_write_permission_can_be_looked_at_only) {
    const TempFolder folder;
    const RunId run = write_logbook(folder / "a.ullage", 4);
    fs::permissions(folder.path(), fs::perms::owner_read | fs::perms::owner_exec);
    expect_only_to_be_looked_at(folder, run, 4);
}

TEST(OpenLogbook, looking_at_a_writable_file_changes_nothing_either) {
    const TempFolder folder;
    const FakeClock clock;
    write_logbook(folder / "a.ullage");
    const auto before = folder_bytes(folder.path());
    {
        const Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
        EXPECT_EQ(take(logbook.units()).size(), 1u);
        EXPECT_EQ(logbook.mode(), OpenMode::read_only);
    }
    EXPECT_EQ(folder_bytes(folder.path()), before);
}

TEST(OpenLogbook, recording_clears_away_what_a_crash_left_of_copies_beside_it_and_looking_leaves_it) {
    const TempFolder folder;
    const FakeClock clock;
    write_logbook(folder / "a.ullage");
    const fs::path left = folder / ".ullage-12345678-1234-4234-8234-123456789012.part";
    fs::create_directory(left);
    write_bytes(left / "logbook", "half a copy");
    take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    EXPECT_TRUE(fs::exists(left));
    take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    EXPECT_FALSE(fs::exists(left));
}

TEST(OpenLogbook, a_saved_copy_holds_everything_and_an_existing_file_is_never_replaced) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage", 4);
    const Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    take(logbook.save_copy(folder / "b.ullage"));
    {
        Logbook copy = take(Logbook::open(folder / "b.ullage", OpenMode::record, clock));
        EXPECT_EQ(take(copy.run_record(run)).readings, take(logbook.run_record(run)).readings);
        EXPECT_EQ(take(copy.units()), take(logbook.units()));
        take(copy.record(run, sample_values()));
    }
    EXPECT_EQ(take(logbook.readings(run)).size(), 4u);
    const auto copy_before = fs::last_write_time(folder / "b.ullage");
    EXPECT_EQ(failure_of(logbook.save_copy(folder / "b.ullage")), Failure::refused);
    EXPECT_EQ(failure_of(logbook.save_copy(folder / "a.ullage")), Failure::refused);
    EXPECT_EQ(failure_of(logbook.save_copy(folder / "none/b.ullage")), Failure::io);
    EXPECT_EQ(fs::last_write_time(folder / "b.ullage"), copy_before);
}

TEST(OpenLogbook, a_name_that_reads_like_an_address_is_taken_as_a_name) {
    const TempFolder folder;
    const FakeClock clock;
    for (const char* name : {"file:a?mode=memory", ":memory:", "ünï côde.ullage", "it's.ullage", "a 100%41#b.ullage"}) {
        write_logbook(folder / name);
        EXPECT_TRUE(fs::exists(folder / name)) << name;
        EXPECT_EQ(take(take(Logbook::open(folder / name, OpenMode::record, clock)).units()).size(), 1u) << name;
    }
}

} // namespace
} // namespace ullage
