// SPDX-License-Identifier: GPL-3.0-or-later
#include "faulty_disk.h"
#include "samples.h"
#include "support/photo_bytes.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace ullage {
namespace {

using namespace test;

NewPhoto sample_photo(std::size_t filler = 5000) {
    return {"display at 18 h ≈.jpg", bare_jpeg(4000, 3000, filler), PhotoMoment{1'810'310'412'000, true}};
}

struct Photos : testing::Test {
    TempFolder folder;
    FakeClock clock;
    Logbook logbook = take(Logbook::create(folder / "a.ullage", clock));
    ullage::Run run = take(logbook.add(sample_run(take(logbook.add(sample_unit())).uuid)));
    Reading reading = take(logbook.record(run.uuid, sample_values()));

    Photo only() const { return take(logbook.photos(run.uuid)).at(0); }
};

TEST_F(Photos, every_part_of_a_photo_survives_closing_the_file) {
    const Photo photo = take(logbook.add_photo(run.uuid, reading.uuid, sample_photo()));
    EXPECT_EQ(photo.uuid.text().size(), 36u);
    EXPECT_EQ(photo.run_uuid, run.uuid);
    EXPECT_EQ(photo.reading_uuid, reading.uuid);
    EXPECT_EQ(photo.format, PhotoFormat::jpeg);
    EXPECT_EQ(photo.file_name, sample_photo().file_name);
    EXPECT_EQ(photo.size_bytes, static_cast<std::int64_t>(sample_photo().bytes.size()));
    EXPECT_EQ(photo.taken, sample_photo().taken);
    EXPECT_EQ(photo.added_ms, clock.now_ms());
    { const Logbook closed = std::move(logbook); }
    const Logbook again = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    EXPECT_EQ(take(again.photos(run.uuid)), std::vector{photo});
    EXPECT_EQ(take(again.photo_bytes(photo.uuid)), sample_photo().bytes);
}

TEST_F(Photos, a_waiting_photo_is_tied_to_the_reading_that_is_recorded_with_it) {
    const Photo waiting = take(logbook.add_photo(run.uuid, {}, sample_photo()));
    EXPECT_EQ(waiting.reading_uuid, std::nullopt);
    const Reading next = take(logbook.record(run.uuid, sample_values(), {waiting.uuid}));
    EXPECT_EQ(only().reading_uuid, next.uuid);
    EXPECT_EQ(only().version, 2);
}

TEST_F(Photos, a_reading_whose_photo_no_longer_waits_is_not_recorded) {
    const Photo tied = take(logbook.add_photo(run.uuid, reading.uuid, sample_photo()));
    const Photo withdrawn = take(logbook.add_photo(run.uuid, {}, sample_photo()));
    take(logbook.set_photo_withdrawn(withdrawn.uuid, true));
    const ullage::Run other = take(logbook.add(sample_run(run.unit_uuid)));
    const Photo elsewhere = take(logbook.add_photo(other.uuid, {}, sample_photo()));
    const Photo waiting = take(logbook.add_photo(run.uuid, {}, sample_photo()));
    for (const PhotoId& uuid : {tied.uuid, withdrawn.uuid, elsewhere.uuid, PhotoId("unknown")}) {
        EXPECT_EQ(failure_of(logbook.record(run.uuid, sample_values(), {waiting.uuid, uuid})), Failure::refused);
        EXPECT_EQ(take(logbook.readings(run.uuid)).size(), 1u);
    }
    EXPECT_EQ(take(logbook.photos(run.uuid)).back().reading_uuid, std::nullopt);
}

TEST_F(Photos, a_withdrawal_keeps_the_photo_and_can_be_taken_back) {
    const Photo photo = take(logbook.add_photo(run.uuid, reading.uuid, sample_photo()));
    EXPECT_TRUE(take(logbook.set_photo_withdrawn(photo.uuid, true)).withdrawn);
    EXPECT_TRUE(only().withdrawn);
    EXPECT_EQ(take(logbook.photo_bytes(photo.uuid)), sample_photo().bytes);
    EXPECT_EQ(failure_of(logbook.set_photo_withdrawn(photo.uuid, true)), Failure::refused);
    const Photo restored = take(logbook.set_photo_withdrawn(photo.uuid, false));
    EXPECT_EQ(restored.version, 3);
    EXPECT_EQ(restored.reading_uuid, reading.uuid);
    EXPECT_EQ(only(), restored);
}

TEST_F(Photos, a_withdrawn_reading_keeps_its_photos) {
    take(logbook.add_photo(run.uuid, reading.uuid, sample_photo()));
    take(logbook.set_withdrawn(reading.uuid, true, "misread"));
    EXPECT_EQ(only().reading_uuid, reading.uuid);
    EXPECT_FALSE(only().withdrawn);
}

TEST_F(Photos, a_copy_of_the_logbook_holds_them) {
    const Photo photo = take(logbook.add_photo(run.uuid, reading.uuid, sample_photo()));
    take(logbook.save_copy(folder / "b.ullage"));
    const Logbook copy = take(Logbook::open(folder / "b.ullage", OpenMode::read_only, clock));
    EXPECT_EQ(take(copy.photos(run.uuid)), std::vector{photo});
    EXPECT_EQ(take(copy.photo_bytes(photo.uuid)), sample_photo().bytes);
}

TEST_F(Photos, the_content_tells_the_format_and_the_name_nothing) {
    EXPECT_EQ(take(logbook.add_photo(run.uuid, {}, {"a.jpg", bare_png(), {}})).format, PhotoFormat::png);
    EXPECT_EQ(take(logbook.add_photo(run.uuid, {}, {"", bare_jpeg(), {}})).format, PhotoFormat::jpeg);
    // Segments before the frame header, fill bytes among them (ITU-T T.81, B.1.1.2), are passed over.
    using namespace std::string_literals;
    const std::string plain = bare_jpeg();
    take(logbook.add_photo(run.uuid, {},
                           {"b.jpg",
                            plain.substr(0, 2) +
                                "\xff\xff\xfe\x00\x05"
                                "abc"s +
                                plain.substr(2),
                            {}}));
}

TEST_F(Photos, what_is_no_sound_jpeg_or_png_is_refused_with_its_name_and_keeps_nothing) {
    using namespace std::string_literals;
    std::string wrong_crc = bare_png();
    wrong_crc[20] ^= 1;
    const std::string scan_first = "\xff\xd8\xff\xda\x00\x08\x01\x01\x00\x00\x3f\x00"s;
    for (const std::string& bytes : {""s, "GIF89a"s,
                                     "\0\0\0\x18"
                                     "ftypheic"s,
                                     "\xff\xd8"s, "\xff\xd8\xff"s, bare_jpeg().substr(0, 10), scan_first, bare_jpeg(0, 8), bare_jpeg(8, 0),
                                     bare_png().substr(0, 8), bare_png().substr(0, 32), wrong_crc, bare_png(0, 4)}) {
        const auto added = logbook.add_photo(run.uuid, {}, {"a.jpg", bytes, {}});
        ASSERT_EQ(failure_of(added), Failure::bad_input) << testing::PrintToString(bytes);
        EXPECT_EQ(added.error().where, "a.jpg");
        EXPECT_FALSE(added.error().remedy.empty());
    }
    EXPECT_TRUE(take(logbook.photos(run.uuid)).empty());
}

TEST_F(Photos, the_limits_of_one_photo_are_said_with_its_size) {
    const auto room = static_cast<std::size_t>(photo_limit_bytes) - bare_jpeg().size();
    take(logbook.add_photo(run.uuid, {}, {"a.jpg", bare_jpeg(8, 8, room), {}}));
    const auto heavy = logbook.add_photo(run.uuid, {}, {"a.jpg", bare_jpeg(8, 8, room + 1), {}});
    ASSERT_EQ(failure_of(heavy), Failure::bad_input);
    EXPECT_NE(heavy.error().what.text().find("20.1 MB"), std::string::npos) << heavy.error().what;
    EXPECT_NE(heavy.error().what.text().find("at most 20.0 MB"), std::string::npos) << heavy.error().what;
    take(logbook.add_photo(run.uuid, {}, {"a.jpg", bare_jpeg(10'000, 10'000), {}}));
    const auto wide = logbook.add_photo(run.uuid, {}, {"a.png", bare_png(10'001, 10'000), {}});
    ASSERT_EQ(failure_of(wide), Failure::bad_input);
    EXPECT_NE(wide.error().what.text().find("10001 x 10000 pixels"), std::string::npos) << wide.error().what;
    EXPECT_EQ(failure_of(logbook.add_photo(run.uuid, {}, {"a.png", bare_png(0xffffffff, 0xffffffff), {}})), Failure::bad_input);
}

TEST_F(Photos, all_photos_of_a_logbook_have_a_limit_together) {
    { const Logbook closed = std::move(logbook); }
    {
        // A row that states a size without its bytes stands for the many photos that the limit would take.
        SQLite::Database database((folder / "a.ullage").string(), SQLite::OPEN_READWRITE);
        database.exec("INSERT INTO photos (uuid, run_id, format, file_name, size_bytes, zone_assumed, added_ms) VALUES ('x', 1, 1, '', " +
                      std::to_string(photos_limit_bytes - 1000) + ", 0, 0)");
        database.exec("INSERT INTO photo_versions VALUES (1, 1, NULL, 0, 0)");
    }
    logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    take(logbook.add_photo(run.uuid, {}, {"a.jpg", bare_jpeg(), {}}));
    const auto over = logbook.add_photo(run.uuid, {}, sample_photo());
    ASSERT_EQ(failure_of(over), Failure::refused);
    EXPECT_NE(over.error().what.text().find("1000 MB"), std::string::npos) << over.error().what;
}

TEST_F(Photos, an_unknown_run_reading_or_photo_is_said_and_another_runs_reading_refused) {
    const ullage::Run other = take(logbook.add(sample_run(run.unit_uuid)));
    EXPECT_EQ(failure_of(logbook.add_photo(RunId("unknown"), {}, sample_photo())), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.add_photo(run.uuid, ReadingId("unknown"), sample_photo())), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.add_photo(other.uuid, reading.uuid, sample_photo())), Failure::refused);
    EXPECT_EQ(failure_of(logbook.photos(RunId("unknown"))), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.photo_bytes(PhotoId("unknown"))), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.set_photo_withdrawn(PhotoId("unknown"), true)), Failure::not_found);
    const Logbook look = [&] {
        { const Logbook closed = std::move(logbook); }
        return take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    }();
    EXPECT_EQ(failure_of(const_cast<Logbook&>(look).add_photo(run.uuid, {}, sample_photo())), Failure::read_only);
}

TEST_F(Photos, listing_does_not_read_their_bytes) {
    take(logbook.add_photo(run.uuid, reading.uuid, sample_photo()));
    { const Logbook closed = std::move(logbook); }
    SQLite::Database database((folder / "a.ullage").string(), SQLite::OPEN_READWRITE);
    SQLite::Statement plan(database, "EXPLAIN QUERY PLAN SELECT * FROM current_photos WHERE run_id = 1");
    while (plan.executeStep()) EXPECT_EQ(plan.getColumn(3).getString().find("photo_bytes"), std::string::npos) << plan.getColumn(3).getString();
}

// Another program that opens the file is held to the same rules.
TEST_F(Photos, no_sql_changes_deletes_replaces_or_moves_a_photo) {
    const Photo photo = take(logbook.add_photo(run.uuid, reading.uuid, sample_photo()));
    const ullage::Run other = take(logbook.add(sample_run(run.unit_uuid)));
    take(logbook.record(run.uuid, sample_values()));
    take(logbook.record(other.uuid, sample_values()));
    const Photo waiting = take(logbook.add_photo(run.uuid, {}, sample_photo()));
    { const Logbook closed = std::move(logbook); }
    SQLite::Database database((folder / "a.ullage").string(), SQLite::OPEN_READWRITE);
    const auto content = [&] {
        std::string text;
        for (const char* table : {"photos", "photo_bytes", "photo_versions"}) {
            SQLite::Statement query(database, std::string("SELECT * FROM ") + table);
            while (query.executeStep())
                for (int i = 0; i < query.getColumnCount(); ++i) text += query.getColumn(i).getString() + "|";
        }
        return text;
    };
    const std::string before = content();
    ASSERT_NE(before.find(photo.uuid.text()), std::string::npos);
    for (const char* sql :
         {"UPDATE photos SET taken_ms = 1", "DELETE FROM photos", "UPDATE photo_bytes SET bytes = x'00'", "DELETE FROM photo_bytes",
          "UPDATE photo_versions SET withdrawn = 1", "DELETE FROM photo_versions", "INSERT OR REPLACE INTO photos SELECT * FROM photos WHERE id = 1",
          "INSERT OR REPLACE INTO photos SELECT 9, uuid, run_id, format, file_name, 1, NULL, 0, 0 FROM photos WHERE id = 1",
          "INSERT OR REPLACE INTO photo_bytes VALUES (1, x'00')", "INSERT OR REPLACE INTO photo_versions VALUES (1, 1, 1, 1, 0)",
          "INSERT INTO photo_versions VALUES (1, 5, 1, 1, 0)", "INSERT INTO photo_versions VALUES (1, 2, 2, 0, 0)",
          "INSERT INTO photo_versions VALUES (1, 2, NULL, 0, 0)", "INSERT INTO photo_versions VALUES (2, 2, 3, 0, 0)"}) {
        EXPECT_THROW(database.exec(sql), SQLite::Exception) << sql;
        EXPECT_EQ(content(), before) << sql;
    }
    database.exec("INSERT INTO photo_versions VALUES (2, 2, 2, 0, 0)"); // a waiting one may be tied
}

TEST_F(Photos, a_file_with_a_photo_of_an_unknown_kind_is_called_damaged) {
    { const Logbook closed = std::move(logbook); }
    {
        SQLite::Database database((folder / "a.ullage").string(), SQLite::OPEN_READWRITE);
        database.exec("INSERT INTO photos (uuid, run_id, format, file_name, size_bytes, zone_assumed, added_ms) "
                      "VALUES ('x', 1, 3, '', 1, 0, 0)");
    }
    EXPECT_EQ(failure_of(Logbook::open(folder / "a.ullage", OpenMode::record, clock)), Failure::damaged);
}

TEST_F(Photos, on_a_full_disk_a_photo_is_kept_whole_or_not_at_all) {
    { const Logbook closed = std::move(logbook); }
    FaultyDisk disk;
    logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    int refusals = 0;
    std::size_t kept = 0;
    for (long room = 0; room <= 400'000; room += 40'000) {
        disk.leave_room(room);
        const auto added = logbook.add_photo(run.uuid, {}, sample_photo(200'000));
        disk.free_space();
        if (added) {
            ++kept;
        } else {
            ++refusals;
            EXPECT_EQ(added.error().failure, Failure::disk_full);
        }
        const auto photos = take(logbook.photos(run.uuid));
        ASSERT_EQ(photos.size(), kept);
        for (const Photo& photo : photos) EXPECT_EQ(take(logbook.photo_bytes(photo.uuid)), sample_photo(200'000).bytes);
    }
    EXPECT_GT(refusals, 2);
    EXPECT_GT(kept, 0u);
}

} // namespace
} // namespace ullage
