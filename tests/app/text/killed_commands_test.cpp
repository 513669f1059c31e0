// SPDX-License-Identifier: GPL-3.0-or-later
// Commands that bring something in are killed in, or find the disk full from, each of their numbered actions on it: what they have said is there
// is there, nothing is there by half, the file is sound, and the same command called again does the rest.
#include "command_fixture.h"
#include "store/logbook.h"
#include "support/fake_clock.h"
#include "support/watched_process.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <functional>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

class FailingDisk : public Commands {
protected:
    /// Empties the folder but for the files named, and puts the logbook there as it was.
    void lay_out(const std::map<std::string, std::string>& files) const {
        for (const auto& entry : fs::directory_iterator(folder_.path())) fs::remove_all(entry.path());
        for (const auto& [name, bytes] : files) std::ofstream(folder_ / name, std::ios::binary) << bytes;
    }

    static constexpr std::size_t most_faults = 24; ///< of a kind

    /// Runs the task undisturbed, then with each fault in each of its actions.
    void with_every_fault(const std::map<std::string, std::string>& files, const std::vector<std::string>& task,
                          const std::function<void(const WatchedProcess& watched)>& check) {
        const auto run_with = [&](const std::string& fault, long action) {
            lay_out(files);
            std::vector<std::string> words{ULLAGE_COMMANDER, fault, std::to_string(action)};
            words.insert(words.end(), task.begin(), task.end());
            return watch(words);
        };
        const FaultsTried tried =
            try_numbered_faults({"killed", "full"}, most_faults, run_with, [&](const std::string& name, const WatchedProcess& watched) {
                SCOPED_TRACE(name);
                if (name == "undisturbed") {
                    EXPECT_EQ(watched.code, exit_good) << (watched.lines.empty() ? std::string() : watched.lines.back());
                    EXPECT_GT(watched.actions.size(), 3U);
                } else if (name.starts_with("killed")) {
                    EXPECT_EQ(watched.code, -1);
                } else {
                    EXPECT_GE(watched.code, 0) << "a full disk ended the process";
                }
                check(watched);
                return !HasFatalFailure();
            });
        EXPECT_EQ(tried.died_in, tried.kinds) << "a kind of action in which no process was killed";
    }

    [[nodiscard]] std::string path() const { return folder_ / "bench.ullage"; }

    /// The file as it stands, without the program.
    void expect_sound() const {
        SQLite::Database database(path(), SQLite::OPEN_READWRITE);
        EXPECT_EQ(database.execAndGet("PRAGMA integrity_check").getString(), "ok");
    }

    FakeClock clock_;
};

/// Names of files with their bytes.
std::map<std::string, std::string> bytes_in(const fs::path& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::directory_iterator(folder)) {
        std::ifstream in(entry.path(), std::ios::binary);
        files[entry.path().filename().string()] = {std::istreambuf_iterator<char>(in), {}};
    }
    return files;
}

TEST_F(FailingDisk, import_keeps_each_sheet_that_it_named_and_each_whole_or_not_at_all) {
    (void)logbook(); // with three runs
    const std::string four = written("4.csv", drain_sheet("Fourth", 14)), five = written("5.csv", drain_sheet("Specimen", 15, 700));
    const std::vector<std::string> import{"run", "import", path(), four, five};
    const auto files = bytes_in(folder_.path());
    with_every_fault(files, import, [&](const WatchedProcess& watched) {
        {
            Result<Logbook> opened = Logbook::open(path(), OpenMode::record, clock_);
            ASSERT_TRUE(opened) << opened.error().sentence();
            const auto records = opened.value().run_records();
            ASSERT_TRUE(records);
            const bool fourth = records.value().size() > 3, fifth = records.value().size() > 4;
            for (const RunRecord& record : records.value()) EXPECT_EQ(record.readings.size(), 11U);
            if (watched.said("4.csv: run")) {
                EXPECT_TRUE(fourth);
            }
            if (watched.said("5.csv: run")) {
                EXPECT_TRUE(fifth);
            }
        }
        expect_sound();
        EXPECT_EQ(run({"import", path(), four, five}).code, exit_good);
        Result<Logbook> opened = Logbook::open(path(), OpenMode::read_only, clock_);
        ASSERT_TRUE(opened);
        EXPECT_EQ(opened.value().run_records().value().size(), 5U);
    });
}

TEST_F(FailingDisk, import_into_a_new_logbook_leaves_a_sound_one_or_none) {
    const std::string sheet = written("1.csv", drain_sheet());
    const auto files = bytes_in(folder_.path());
    with_every_fault(files, {"run", "import", path(), sheet}, [&](const WatchedProcess& watched) {
        if (watched.said("1.csv: run")) {
            EXPECT_TRUE(fs::exists(path()));
        }
        EXPECT_EQ(run({"import", path(), sheet}).code, exit_good) << "the same call does not do the rest";
        Result<Logbook> opened = Logbook::open(path(), OpenMode::read_only, clock_);
        ASSERT_TRUE(opened) << opened.error().sentence();
        EXPECT_EQ(opened.value().run_records().value().size(), 1U);
        expect_sound();
    });
}

TEST_F(FailingDisk, join_brings_all_of_another_logbook_or_nothing) {
    const std::string other = folder_ / "other.ullage", one = written("1.csv", drain_sheet()), two = written("2.csv", drain_sheet("Second", 12));
    ASSERT_EQ(run({"import", path(), one}).code, exit_good);
    fs::copy_file(path(), other);
    ASSERT_EQ(run({"import", other, two, written("3.csv", drain_sheet("Specimen", 13))}).code, exit_good);
    const auto files = bytes_in(folder_.path());
    with_every_fault(files, {"run", "join", path(), other}, [&](const WatchedProcess& watched) {
        {
            Result<Logbook> opened = Logbook::open(path(), OpenMode::record, clock_);
            ASSERT_TRUE(opened) << opened.error().sentence();
            const std::size_t runs = opened.value().run_records().value().size(), units = opened.value().units().value().size();
            EXPECT_TRUE((runs == 1 && units == 1) || (runs == 3 && units == 2)) << runs << " runs, " << units << " units";
            if (watched.said("Joined:")) {
                EXPECT_EQ(runs, 3U);
            }
        }
        expect_sound();
        EXPECT_EQ(bytes_in(folder_.path()).at("other.ullage"), files.at("other.ullage"));
        EXPECT_EQ(run({"join", path(), other}).code, exit_good);
        EXPECT_EQ(Logbook::open(path(), OpenMode::read_only, clock_).value().run_records().value().size(), 3U);
    });
}

TEST_F(FailingDisk, import_trace_keeps_all_samples_of_a_log_or_none) {
    (void)logbook();
    std::string rows = "time,Wh,W\n";
    for (int i = 0; i < 6000; ++i)
        rows += format_iso8601(1'810'000'800'000 + i * 5000LL, "UTC") + ',' + std::to_string(i / 10) + ',' + std::to_string(60 + i % 7) + '\n';
    const std::string log = written("meter.log", rows);
    const std::vector<std::string> command{"import-trace", log, "--logbook", path(), "--unit", "Specimen", "--run", "1"};
    std::vector<std::string> task{"run"};
    task.insert(task.end(), command.begin(), command.end());
    const auto files = bytes_in(folder_.path());
    with_every_fault(files, task, [&](const WatchedProcess& watched) {
        const auto traces = [&] {
            Result<Logbook> opened = Logbook::open(path(), OpenMode::record, clock_);
            EXPECT_TRUE(opened);
            return opened ? opened.value().traces().value() : std::vector<Trace>();
        };
        const std::vector<Trace> kept = traces();
        ASSERT_LE(kept.size(), 1U);
        if (!kept.empty()) {
            EXPECT_EQ(kept[0].samples, 6000);
        }
        if (watched.code == exit_good) {
            EXPECT_EQ(kept.size(), 1U);
        }
        if (watched.said("nothing was recorded")) {
            EXPECT_TRUE(kept.empty()) << "said to be lost, and there";
        }
        expect_sound();
        if (kept.empty()) {
            EXPECT_EQ(run(command).code, exit_good);
        }
        EXPECT_EQ(traces().size(), 1U);
    });
}

TEST_F(FailingDisk, following_keeps_every_sample_that_it_has_told_of) {
    (void)logbook();
    RunId run_uuid;
    {
        Result<Logbook> opened = Logbook::open(path(), OpenMode::read_only, clock_);
        ASSERT_TRUE(opened);
        run_uuid = opened.value().run_records().value().front().run.uuid;
    }
    const auto files = bytes_in(folder_.path());
    with_every_fault(files, {"follow", path(), run_uuid.text(), folder_ / "growing.log"}, [&](const WatchedProcess& watched) {
        std::int64_t told = 0;
        for (const std::string& line : watched.lines)
            if (line.starts_with("kept ")) told = std::stol(line.substr(5));
        {
            Result<Logbook> opened = Logbook::open(path(), OpenMode::record, clock_);
            ASSERT_TRUE(opened) << opened.error().sentence();
            const std::vector<Trace> traces = opened.value().traces().value();
            const std::int64_t kept = traces.empty() ? 0 : traces[0].samples;
            EXPECT_GE(kept, told);
            EXPECT_LE(kept, told + 25) << "more than the look that was on its way";
            std::int64_t read = 0;
            const auto count = [&read](std::span<const TraceSample> some) {
                read += static_cast<std::int64_t>(some.size());
                return true;
            };
            for (const Trace& trace : traces) {
                EXPECT_TRUE(opened.value().read_samples(trace.uuid, trace.first_ms, trace.last_ms, count));
            }
            EXPECT_EQ(read, kept);
        }
        expect_sound();
    });
}

} // namespace
} // namespace ullage::test
