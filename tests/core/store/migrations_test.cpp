// SPDX-License-Identifier: GPL-3.0-or-later
// Files of earlier versions are kept as SQL under versions/, since the files that people have do not change
// with us.
#include "samples.h"
#include "store/migrations/migrations.h"
#include "store/migrations/newest_schema.h"
#include "support/photo_bytes.h"
#include "support/source_dir.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {
namespace {

using namespace test;
namespace fs = std::filesystem;

void make_file_of_version(int version, const fs::path& path) {
    std::ostringstream name;
    name << test::source_dir().string() << "/tests/core/store/versions/" << std::string(version < 10 ? 3 : 2, '0') << version << ".sql";
    std::ifstream in(name.str());
    const std::string sql{std::istreambuf_iterator<char>(in), {}};
    if (sql.empty()) throw std::runtime_error("cannot read " + name.str());
    SQLite::Database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE).exec(sql);
}

std::string schema_of(const fs::path& path) {
    SQLite::Database database(path.string(), SQLite::OPEN_READONLY);
    SQLite::Statement query(database, "SELECT type, name, tbl_name, coalesce(sql, '') FROM sqlite_master ORDER BY type, name");
    std::string text;
    while (query.executeStep())
        for (int i = 0; i < 4; ++i) text += query.getColumn(i).getString() + "\n";
    text += "version " + database.execAndGet("PRAGMA user_version").getString();
    text += " application " + database.execAndGet("PRAGMA application_id").getString();
    return text;
}

TEST(Migrations, the_steps_are_counted_without_gaps_and_described) {
    int version = 0;
    for (const auto& step : store::migrations()) {
        EXPECT_EQ(step.version, ++version);
        EXPECT_FALSE(step.purpose.empty());
    }
    EXPECT_EQ(store::newest_version(), version);
    EXPECT_GE(version, 4);
}

TEST(Migrations, a_file_of_any_earlier_version_gets_the_schema_of_a_fresh_one) {
    const TempFolder folder;
    const FakeClock clock;
    { const Logbook fresh = take(Logbook::create(folder / "fresh.ullage", clock)); }
    for (int version = 1; version < store::newest_version(); ++version) {
        const fs::path old = folder / (std::to_string(version) + ".ullage");
        make_file_of_version(version, old);
        { const Logbook migrated = take(Logbook::open(old, OpenMode::record, clock)); }
        EXPECT_EQ(schema_of(old), schema_of(folder / "fresh.ullage")) << "from version " << version;
    }
}

/// As newest_schema.cpp holds them.
std::string source_of(const store::SchemaEntry& entry) {
    std::string source = "{";
    for (const std::string_view part : {entry.type, entry.name, entry.table}) source += '"' + std::string(part) + "\", ";
    return source + (entry.sql.empty() ? std::string("\"\"") : "R\"sql(" + std::string(entry.sql) + ")sql\"") + "},";
}

TEST(Migrations, what_they_make_is_what_the_program_keeps_of_it) {
    SQLite::Database made(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    store::migrate(made, store::newest_version());
    SQLite::Statement query(made, "SELECT type, name, tbl_name, coalesce(sql, '') FROM sqlite_schema ORDER BY type, name, tbl_name, sql");
    std::vector<std::string> wanted, kept;
    while (query.executeStep()) {
        const auto part = [&query](int column) { return query.getColumn(column).getString(); };
        const std::string type = part(0), name = part(1), table = part(2), sql = part(3);
        wanted.push_back(source_of({type, name, table, sql}));
    }
    for (const store::SchemaEntry& entry : store::newest_schema()) kept.push_back(source_of(entry));
    EXPECT_EQ(kept.size(), wanted.size());
    for (const std::string& entry : wanted) EXPECT_EQ(std::ranges::count(kept, entry), 1) << "newest_schema.cpp lacks:\n" << entry;
    EXPECT_TRUE(kept == wanted) << "the order of the entries is another";
}

TEST(Migrations, a_file_of_version_1_keeps_all_that_it_held_and_takes_drafts) {
    const TempFolder folder;
    const FakeClock clock;
    make_file_of_version(1, folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    const RunRecord record = take(logbook.run_records()).at(0);
    EXPECT_EQ(record.unit.name, "Lantern 900");
    EXPECT_EQ(record.unit.price, 799.0);
    EXPECT_EQ(record.unit.peak_output_w, std::nullopt);
    EXPECT_EQ(record.meter->correction, 1.01);
    EXPECT_EQ(record.run.end, RunEnd::found_off);
    EXPECT_EQ(record.run.extra, (std::vector<std::pair<std::string, std::string>>{{"vessel", "b"}, {"a key", "1"}}));
    ASSERT_EQ(record.readings.size(), 1u);
    EXPECT_EQ(record.readings[0].values.register_wh, 2.0);
    EXPECT_EQ(take(logbook.history(record.readings[0].uuid)).at(1).reason, "misread");
    take(logbook.keep_draft(record.run.uuid, "43"));
    EXPECT_EQ(take(logbook.draft(record.run.uuid)), "43");
}

TEST(Migrations, a_file_of_version_2_keeps_its_readings_and_drafts_and_takes_photos) {
    const TempFolder folder;
    const FakeClock clock;
    make_file_of_version(2, folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    const RunRecord record = take(logbook.run_records()).at(0);
    ASSERT_EQ(record.readings.size(), 1u);
    EXPECT_EQ(record.readings[0].version, 2);
    EXPECT_EQ(take(logbook.draft(record.run.uuid)), "{\"gauge\":\"43\"}");
    EXPECT_TRUE(take(logbook.photos(record.run.uuid)).empty());
    take(logbook.add_photo(record.run.uuid, record.readings[0].uuid, {"a.jpg", bare_jpeg(), {}}));
    EXPECT_EQ(take(logbook.photos(record.run.uuid)).size(), 1u);
}

TEST(Migrations, a_file_of_version_3_keeps_its_units_and_takes_tags_and_what_was_paid) {
    const TempFolder folder;
    const FakeClock clock;
    make_file_of_version(3, folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    Unit unit = take(logbook.units()).at(0);
    EXPECT_EQ(unit.name, "Lantern 900");
    EXPECT_EQ(unit.price, 799.0);
    EXPECT_EQ(unit.paid_price, std::nullopt);
    EXPECT_TRUE(unit.tags.empty());
    unit.paid_price = 640.5;
    unit.tags = {"lent", "tent"};
    take(logbook.update(unit));
    EXPECT_EQ(take(logbook.units()).at(0), unit);
    EXPECT_TRUE(take(logbook.load_lists()).empty());
    LoadList list;
    list.name = "show night";
    list = take(logbook.add(list));
    EXPECT_EQ(take(logbook.load_lists()), std::vector{list});
}

TEST(Migrations, a_file_of_version_6_keeps_its_traces_whose_clocks_were_given) {
    const TempFolder folder;
    const FakeClock clock;
    make_file_of_version(6, folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    const Trace trace = take(logbook.traces()).at(0);
    EXPECT_EQ(trace.file_name, "log.csv");
    EXPECT_EQ(trace.offset_u_s, std::nullopt);
    std::vector<TraceSample> samples;
    take(logbook.read_samples(trace.uuid, earliest_ms, latest_ms, [&samples](std::span<const TraceSample> some) {
        samples.assign(some.begin(), some.end());
        return true;
    }));
    EXPECT_EQ(samples, (std::vector<TraceSample>{{1'810'310'400'000, 5.0, 62.5, {}, {}}}));
}

TEST(Migrations, a_trace_of_version_7_keeps_what_is_known_of_its_clock_and_may_grow) {
    const TempFolder folder;
    const FakeClock clock;
    make_file_of_version(7, folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    const Trace trace = take(logbook.traces()).at(0);
    EXPECT_EQ(trace.offset_u_s, 2.5);
    EXPECT_EQ(trace.zone, "");
    EXPECT_EQ(trace.start_ms, std::nullopt);
    const std::vector<TraceSample> added = {{1'810'310'410'000, 6.0, 62.5, {}, {}}};
    EXPECT_EQ(take(logbook.extend_trace(trace, {added, 60, "01ff", 0, false})).samples, 2);
}

TEST(Migrations, a_meter_of_version_9_becomes_the_first_version_of_itself) {
    const TempFolder folder;
    const FakeClock clock;
    make_file_of_version(9, folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    Meter meter = take(logbook.meters()).at(0);
    EXPECT_EQ(meter.name, "bench meter");
    EXPECT_EQ(meter.correction, 1.01);
    EXPECT_EQ(meter.load_part_percent, 0.25);
    EXPECT_TRUE(meter.points.empty());
    const RunRecord record = take(logbook.run_records()).at(0);
    EXPECT_EQ(record.meter, meter);
    EXPECT_EQ(record.run.end_noticed_within_min, 12.5);
    EXPECT_EQ(record.run.second_meter_uuid, std::nullopt);
    EXPECT_EQ(record.readings.at(0).values.second_register_wh, std::nullopt);
    meter.points = {{100, 0.998, 0.3, 2.0}};
    take(logbook.update(meter, "certificate found"));
    const auto history = take(logbook.meter_history(meter.uuid));
    ASSERT_EQ(history.size(), 2u);
    EXPECT_EQ(history[0].written_ms, 1'810'300'000'001) << "as old as the meter";
}

TEST(Migrations, a_file_of_version_10_keeps_its_meters_models_and_method_and_takes_data_of_specimens) {
    const TempFolder folder;
    const FakeClock clock;
    make_file_of_version(10, folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    EXPECT_EQ(take(logbook.meters()).at(0).points, (std::vector<MeterPoint>{{100, 1.002, 0.25, 2.0}}));
    EXPECT_EQ(take(logbook.method_settings()).at("repeatability_percent"), 0.7);
    Unit unit = take(logbook.units()).at(0);
    EXPECT_EQ(unit.model, "Lantern");
    EXPECT_EQ(unit.serial_number, "");
    EXPECT_EQ(unit.cycles_before, std::nullopt);
    unit.serial_number = "L-1";
    unit.pv_short_circuit_a = 15;
    take(logbook.update(unit));
    EXPECT_EQ(take(logbook.units()).at(0), unit);
    EXPECT_EQ(take(logbook.publisher()), Publisher());
    PvSheet sheet = take(logbook.pv_sheets()).at(0);
    EXPECT_EQ(sheet.voc_tolerance_percent, std::nullopt);
    EXPECT_TRUE(take(logbook.column_sets()).empty());
    take(logbook.set_column_set("bench", "unit,meter"));
    EXPECT_EQ(take(logbook.column_sets()).at("bench"), "unit,meter");
}

TEST(Migrations, a_meter_of_an_older_file_can_be_given_a_live_source) {
    const TempFolder folder;
    const FakeClock clock;
    make_file_of_version(11, folder / "a.ullage");
    {
        Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
        const MeterId meter = take(logbook.meters()).at(0).uuid;
        EXPECT_TRUE(take(logbook.meter_sources()).empty());
        take(logbook.set_meter_source(meter, "one"));
        take(logbook.set_meter_source(meter, "two"));
        EXPECT_FALSE(logbook.set_meter_source(MeterId("no such meter"), "two"));
    }
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    const MeterId meter = take(logbook.meters()).at(0).uuid;
    EXPECT_EQ(take(logbook.meter_sources()), (std::map<MeterId, std::string>{{meter, "two"}}));
    take(logbook.set_meter_source(meter, ""));
    EXPECT_TRUE(take(logbook.meter_sources()).empty());
}

TEST(Migrations, looking_at_an_older_file_shows_it_and_leaves_it_as_old_as_it_was) {
    const TempFolder folder;
    const FakeClock clock;
    make_file_of_version(1, folder / "a.ullage");
    const auto before = folder_bytes(folder.path());
    {
        const Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
        const ullage::Run run = take(logbook.runs()).at(0);
        EXPECT_EQ(take(logbook.draft(run.uuid)), "");
    }
    EXPECT_EQ(folder_bytes(folder.path()), before);
}

} // namespace
} // namespace ullage
