// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/folder/logbook_folder.h"

#include "base/clock.h"
#include "formats/sheets/run_sheet.h"
#include "support/photo_bytes.h"
#include "support/scenario.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace ullage {
namespace {

namespace fs = std::filesystem;

std::string folder_bytes_of(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::stringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

void folder_write(const fs::path& path, const std::string& bytes) { std::ofstream(path, std::ios::binary) << bytes; }

void replace_in(const fs::path& path, const std::string& from, const std::string& to) {
    std::string text = folder_bytes_of(path);
    const auto at = text.find(from);
    ASSERT_NE(at, std::string::npos) << from;
    folder_write(path, text.replace(at, from.size(), to));
}

/// Every file below a folder and its bytes.
std::map<std::string, std::string> files_of(const fs::path& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder))
        if (entry.is_regular_file()) files[fs::relative(entry.path(), folder).string()] = folder_bytes_of(entry.path());
    return files;
}

std::vector<TraceSample> samples_of(const Logbook& logbook, const Trace& trace) {
    std::vector<TraceSample> all;
    EXPECT_TRUE(logbook.read_samples(trace.uuid, trace.first_ms, trace.last_ms, [&](std::span<const TraceSample> some) {
        all.insert(all.end(), some.begin(), some.end());
        return true;
    }));
    return all;
}

/// A logbook with all that a folder carries: three runs of the scenario, a log with a clock 37.25 s late, photos of a reading and of none, a load
/// list, a PV sheet, a unit and a meter without a run, a figure of the method.
class LogbookFolder : public testing::Test {
protected:
    void SetUp() override {
        const auto scenario = test::sample_scenario();
        for (std::size_t i = 0; i < 3; ++i) {
            const Result<RunRecord> run = book_.import(scenario[i].simulated.record);
            ASSERT_TRUE(run) << run.error().sentence();
            if (i == 0) run_ = run.value();
        }
        ASSERT_TRUE(book_.add_photo(run_.run.uuid, run_.readings[2].uuid,
                                    {"IMG 0042.JPG", test::bare_jpeg(), PhotoMoment{run_.readings[2].values.time_ms + 4000, true}}));
        ASSERT_TRUE(book_.add_photo(run_.run.uuid, {}, {"waiting.jpg", test::bare_jpeg(9), std::nullopt}));
        Trace trace;
        trace.run_uuid = run_.run.uuid;
        trace.meter_uuid = run_.meter->uuid;
        trace.file_name = "meter night.csv";
        trace.fingerprint = "f";
        trace.size_bytes = 5;
        trace.offset_ms = 37'250;
        trace.offset_u_s = 1.5;
        const Result<Trace> added = book_.add_trace(trace, [&](Trace&, const SampleTaker& take) {
            for (int i = 0; i < 500; ++i) {
                TraceSample sample;
                sample.time_ms = run_.readings.front().values.time_ms + i * 10'000 + (i % 3) * 250;
                sample.power_w = 180.1 + i % 7;
                if (i % 2 == 0) sample.register_wh = 100000.25 + i * 0.5;
                if (const auto taken = take({&sample, 1}); !taken) return taken;
            }
            return Result<void>();
        });
        ASSERT_TRUE(added) << added.error().sentence();
        Trace own = trace;
        own.file_name = "unit.csv";
        own.fingerprint = "g";
        own.meter_uuid.reset();
        own.offset_ms = -90'000;
        own.offset_u_s.reset();
        own.holds = holds_gauge | holds_output;
        const Result<Trace> second = book_.add_trace(own, [&](Trace&, const SampleTaker& take) {
            for (int i = 0; i < 100; ++i) {
                TraceSample sample;
                sample.time_ms = run_.readings.front().values.time_ms + i * 60'000;
                sample.gauge_percent = 100 - i;
                if (i % 2 == 0) sample.output_w = 181.5;
                if (const auto taken = take({&sample, 1}); !taken) return taken;
            }
            return Result<void>();
        });
        ASSERT_TRUE(second) << second.error().sentence();
        LoadList list = test::sample_load_list().second;
        ASSERT_TRUE(book_.add(list));
        PvSheet sheet;
        sheet.name = "Roof, May";
        sheet.unit_uuid = run_.unit.uuid;
        sheet.voc_v = 41.3;
        ASSERT_TRUE(book_.add(sheet));
        Unit unit;
        unit.name = "Lark 300";
        unit.rated_energy_wh = 288;
        ASSERT_TRUE(book_.add(unit));
        Meter meter;
        meter.name = "Meter in the drawer";
        ASSERT_TRUE(book_.add(meter));
        ASSERT_TRUE(book_.set_method_setting("moment_doubt_min", 2));
    }

    Result<FolderTally> write(const std::string& name = "out") const { return write_logbook_folder(book_, temp_ / name); }

    SystemClock clock_;
    test::TempFolder temp_;
    Logbook book_ = Logbook::in_memory(clock_).value();
    Logbook other_ = Logbook::in_memory(clock_).value();
    RunRecord run_;
};

TEST_F(LogbookFolder, what_was_written_comes_back_and_is_written_the_same_again) {
    const auto written = write();
    ASSERT_TRUE(written) << written.error().sentence();
    EXPECT_EQ(say_folder_tally(written.value()), "3 runs, 2 photos, 2 logs, 1 load list, 1 PV sheet");
    EXPECT_TRUE(is_logbook_folder(temp_ / "out"));

    const auto read = import_logbook_folder(other_, temp_ / "out");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(say_folder_tally(read.value()), say_folder_tally(written.value()));
    EXPECT_TRUE(read.value().notices.empty()) << read.value().notices.front();
    ASSERT_TRUE(write_logbook_folder(other_, temp_ / "again"));
    const auto before = files_of(temp_ / "out"), after = files_of(temp_ / "again");
    EXPECT_EQ(after.size(), before.size());
    for (const auto& [name, bytes] : before) {
        ASSERT_TRUE(after.contains(name)) << name;
        EXPECT_TRUE(after.at(name) == bytes) << name;
    }
}

TEST_F(LogbookFolder, photos_come_back_to_their_reading_and_logs_with_each_sample_and_the_offset_of_their_clock) {
    ASSERT_TRUE(write());
    const auto read = import_logbook_folder(other_, temp_ / "out");
    ASSERT_TRUE(read) << read.error().sentence();
    const auto records = other_.run_records().value();
    const auto run = std::ranges::find_if(records, [&](const RunRecord& r) { return write_run_sheet(r) == write_run_sheet(run_); });
    ASSERT_NE(run, records.end());
    const auto photos = other_.photos(run->run.uuid).value();
    ASSERT_EQ(photos.size(), 2U);
    EXPECT_EQ(photos[0].file_name, "IMG 0042.JPG");
    EXPECT_EQ(photos[0].reading_uuid, run->readings[2].uuid);
    EXPECT_EQ(photos[0].taken, (PhotoMoment{run_.readings[2].values.time_ms + 4000, true}));
    EXPECT_EQ(other_.photo_bytes(photos[0].uuid).value(), test::bare_jpeg());
    EXPECT_FALSE(photos[1].reading_uuid);

    const auto here = book_.traces(run_.run.uuid).value(), there = other_.traces(run->run.uuid).value();
    ASSERT_EQ(there.size(), 2U);
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(samples_of(other_, there[i]), samples_of(book_, here[i]));
        EXPECT_EQ(there[i].holds, here[i].holds);
        EXPECT_EQ(there[i].file_name, here[i].file_name);
        EXPECT_EQ(there[i].offset_ms, here[i].offset_ms);
        EXPECT_EQ(there[i].offset_u_s, here[i].offset_u_s);
        EXPECT_EQ(there[i].meter_uuid.has_value(), here[i].meter_uuid.has_value());
    }
    EXPECT_EQ(other_.method_settings().value(), book_.method_settings().value());
    const auto units = other_.units().value();
    EXPECT_TRUE(std::ranges::any_of(units, [](const Unit& unit) { return unit.name == "Lark 300" && unit.rated_energy_wh == 288; }));
}

TEST_F(LogbookFolder, a_log_that_holds_register_and_gauge_comes_back_without_a_question) {
    // As a long table of readings is kept. Of a log of somebody else it would be asked whose the register beside the gauge is.
    const auto run = other_.import_run(run_);
    ASSERT_TRUE(run) << run.error().sentence();
    Trace trace;
    trace.run_uuid = run.value().run_uuid;
    trace.holds = holds_meter | holds_gauge | holds_output;
    trace.file_name = "night.csv";
    trace.fingerprint = "table";
    const auto added = other_.add_trace(trace, [&](Trace&, const SampleTaker& take) {
        std::vector<TraceSample> samples;
        for (int i = 0; i < 50; ++i) {
            TraceSample sample;
            sample.time_ms = run_.readings.front().values.time_ms + 30'000 * i;
            sample.register_wh = i;
            sample.power_w = 120;
            sample.gauge_percent = 100 - i;
            sample.output_w = 115;
            samples.push_back(sample);
        }
        return take(samples);
    });
    ASSERT_TRUE(added) << added.error().sentence();
    ASSERT_TRUE(write_logbook_folder(other_, temp_ / "out"));
    Logbook third = Logbook::in_memory(clock_).value();
    const auto read = import_logbook_folder(third, temp_ / "out");
    ASSERT_TRUE(read) << read.error().sentence();
    const auto there = third.traces(third.run_records().value().front().run.uuid).value();
    ASSERT_EQ(there.size(), 1U);
    EXPECT_EQ(there.front().holds, trace.holds);
    EXPECT_EQ(samples_of(third, there.front()), samples_of(other_, added.value()));
}

TEST_F(LogbookFolder, a_second_import_leaves_out_what_is_there_and_says_so) {
    ASSERT_TRUE(write());
    ASSERT_TRUE(import_logbook_folder(other_, temp_ / "out"));
    const auto again = import_logbook_folder(other_, temp_ / "out");
    ASSERT_TRUE(again) << again.error().sentence();
    EXPECT_EQ(say_folder_tally(again.value()), "nothing");
    EXPECT_EQ(again.value().known_runs, 3U);
    EXPECT_EQ(other_.run_records().value().size(), 3U);
    EXPECT_EQ(other_.pv_sheets().value().size(), 1U);
}

TEST_F(LogbookFolder, nothing_comes_in_where_anything_of_it_is_wrong) {
    struct Fault {
        std::string from, to, says;
    };
    for (const Fault& fault : std::vector<Fault>{{"photos/03-img-0042.jpg", "photos/none.jpg", "none.jpg"},
                                                 {"photos/03-img-0042.jpg", "../secret.jpg", "is no file"},
                                                 {",3,2027-", ",4,2027-", "reading 4 of"},
                                                 {"photo,photos/03-img", "picture,photos/03-img", "`picture` is no what"},
                                                 {"# logbook_folder: 1", "# logbook_folder: 2", "newer"},
                                                 {"moment_doubt_min,,,,,,2", "moment_doubt_min,,,,,,nan", "`nan` is no value"},
                                                 {",clock_offset_s,", ",clock_is_late_s,", "no column `clock_is_late_s`"}}) {
        SCOPED_TRACE(fault.to);
        fs::remove_all(temp_ / "out");
        ASSERT_TRUE(write());
        replace_in(temp_ / "out" / "contents.csv", fault.from, fault.to);
        const auto read = import_logbook_folder(other_, temp_ / "out");
        ASSERT_FALSE(read);
        EXPECT_NE(read.error().sentence().find(fault.says), std::string::npos) << read.error().sentence();
        EXPECT_TRUE(other_.run_records().value().empty()) << "all or nothing";
        EXPECT_TRUE(other_.units().value().empty());
        EXPECT_TRUE(other_.method_settings().value().empty());
    }
    // What a failed import left in memory must not stand in the way of a good one.
    fs::remove_all(temp_ / "out");
    ASSERT_TRUE(write());
    const auto good = import_logbook_folder(other_, temp_ / "out");
    ASSERT_TRUE(good) << good.error().sentence();
    EXPECT_EQ(good.value().runs, 3U);
}

TEST_F(LogbookFolder, a_link_out_of_the_folder_is_refused) {
    ASSERT_TRUE(write());
    const fs::path photo = temp_ / "out" / "photos" / "03-img-0042.jpg";
    fs::rename(photo, temp_ / "elsewhere.jpg");
    fs::create_symlink(temp_ / "elsewhere.jpg", photo);
    const auto read = import_logbook_folder(other_, temp_ / "out");
    ASSERT_FALSE(read);
    EXPECT_NE(read.error().sentence().find("`photos/03-img-0042.jpg` is a link out of the folder"), std::string::npos) << read.error().sentence();
    EXPECT_TRUE(other_.run_records().value().empty());

    fs::remove(photo);
    fs::rename(temp_ / "elsewhere.jpg", photo);
    fs::create_directory_symlink(temp_ / "out", temp_ / "way");
    EXPECT_TRUE(import_logbook_folder(other_, temp_ / "way")) << "the folder itself may be reached by a link";
}

TEST_F(LogbookFolder, what_a_killed_export_left_goes_with_the_next) {
    const fs::path left = temp_ / ".ullage-00000000-0000-4000-8000-000000000001.part";
    fs::create_directories(left / "folder" / "runs");
    folder_write(left / "folder" / "runs" / "half.csv", "x");
    ASSERT_TRUE(write());
    EXPECT_FALSE(fs::exists(left));
}

TEST_F(LogbookFolder, a_folder_with_something_in_it_is_not_written_into) {
    fs::create_directory(temp_ / "out");
    ASSERT_TRUE(write()) << "an empty one is good";
    const auto second = write();
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().failure, Failure::refused);
    folder_write(temp_ / "file", "x");
    EXPECT_FALSE(write("file"));
    EXPECT_EQ(folder_bytes_of(temp_ / "file"), "x");
}

TEST_F(LogbookFolder, stopping_leaves_nothing_behind) {
    const auto stopped = write_logbook_folder(book_, temp_ / "out", [](double share) { return share < 0.5; });
    ASSERT_FALSE(stopped);
    EXPECT_TRUE(fs::is_empty(temp_ / "")) << "neither the folder nor one in the making";
    ASSERT_TRUE(write());
    EXPECT_FALSE(import_logbook_folder(other_, temp_ / "out", [](double share) { return share < 0.5; }));
    EXPECT_TRUE(other_.run_records().value().empty());
}

} // namespace
} // namespace ullage
