// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"
#include "store/inside/trace_codec.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace ullage {
namespace {

using namespace test;

std::vector<TraceSample> random_samples(std::mt19937& random, std::size_t count) {
    std::vector<TraceSample> samples(count);
    UtcMs time_ms = 1'810'317'600'000;
    for (TraceSample& sample : samples) {
        time_ms += 1 + random() % 20'000;
        sample.time_ms = time_ms;
        if (random() % 3 != 0) sample.register_wh = static_cast<double>(random() % 100'000) / 10;
        sample.power_w = static_cast<double>(static_cast<int>(random() % 20'001) - 10'000) / 1000;
        if (random() % 2 == 0) sample.gauge_percent = static_cast<double>(random() % 1001) / 10;
        if (random() % 2 == 0) sample.output_w = static_cast<double>(random() % 3000);
        if (random() % 10 == 0) sample.voltage_v = std::ldexp(static_cast<double>(random()), static_cast<int>(random() % 60) - 50);
    }
    return samples;
}

TEST(TraceBlocks, come_back_to_the_last_bit) {
    std::mt19937 random(7);
    for (const std::size_t count : {std::size_t{1}, std::size_t{2}, std::size_t{9}, store::block_samples}) {
        std::vector<TraceSample> samples = random_samples(random, count);
        samples.front().current_a = -0.0;
        samples.back().register_wh = 1e15;
        std::vector<TraceSample> again;
        ASSERT_TRUE(store::decode(store::encoded(samples), again));
        EXPECT_EQ(again, samples);
        EXPECT_TRUE(std::signbit(*again.front().current_a));
    }
}

TEST(TraceBlocks, damaged_bytes_are_refused_or_give_samples_but_never_crash) {
    std::mt19937 random(8);
    const std::string bytes = store::encoded(random_samples(random, 200));
    for (int trial = 0; trial < 2000; ++trial) {
        std::string broken = bytes;
        broken[random() % broken.size()] = static_cast<char>(random());
        if (trial % 3 == 0) broken.resize(random() % broken.size());
        std::vector<TraceSample> samples;
        (void)store::decode(broken, samples);
        EXPECT_LE(samples.size(), store::block_samples);
    }
    std::vector<TraceSample> samples;
    EXPECT_FALSE(store::decode("", samples));
    EXPECT_FALSE(store::decode(bytes + "x", samples));
}

TEST(TraceBlocks, a_sample_of_four_decimal_columns_takes_less_than_10_bytes) {
    std::vector<TraceSample> samples(store::block_samples);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const auto n = static_cast<double>(i);
        samples[i] = {static_cast<UtcMs>(1'810'317'600'000 + 1000 * i), std::floor(n / 5) / 10, 60 + std::fmod(7 * n, 83) / 10,
                      230 + std::fmod(3 * n, 17) / 10, std::round(1000 * (0.26 + std::fmod(5 * n, 23) / 1000)) / 1000};
    }
    EXPECT_LT(store::encoded(samples).size(), 10 * samples.size());
}

/// A trace of `samples` for the run of a logbook.
Result<Trace> add(Logbook& logbook, const RunId& run_uuid, const std::vector<TraceSample>& samples, const std::string& fingerprint = "f") {
    Trace trace;
    trace.run_uuid = run_uuid;
    trace.file_name = "a.csv";
    return logbook.add_trace(trace, [&](Trace& about, const SampleTaker& take) {
        about.fingerprint = fingerprint;
        return take(samples);
    });
}

TEST(Traces, survive_closing_and_opening_and_are_shown_when_looking) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    std::mt19937 random(9);
    const std::vector<TraceSample> samples = random_samples(random, 10'000);
    {
        Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
        EXPECT_EQ(take(add(logbook, run, samples)).samples, 10'000);
    }
    const Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    const std::vector<Trace> traces = take(logbook.traces(run));
    ASSERT_EQ(traces.size(), 1u);
    EXPECT_EQ(traces[0].first_ms, samples.front().time_ms);
    EXPECT_EQ(traces[0].last_ms, samples.back().time_ms);
    std::vector<TraceSample> part;
    take(logbook.read_samples(traces[0].uuid, samples[4000].time_ms, samples[5000].time_ms, [&part](std::span<const TraceSample> some) {
        part.insert(part.end(), some.begin(), some.end());
        return true;
    }));
    EXPECT_EQ(part, std::vector<TraceSample>(samples.begin() + 4000, samples.begin() + 5001));
}

TEST(Traces, a_block_whose_times_are_out_of_order_is_damage_and_never_handed_over) {
    const TempFolder folder;
    const FakeClock clock;
    const std::filesystem::path path = folder / "a.ullage";
    const RunId run = write_logbook(path);
    std::vector<TraceSample> samples;
    for (int i = 0; i < 100; ++i) samples.push_back({1'810'000'000'000 + i * 1000, {}, 60.0, {}, {}});
    {
        Logbook logbook = take(Logbook::open(path, OpenMode::record, clock));
        take(add(logbook, run, samples));
    }
    std::swap(samples[40].time_ms, samples[41].time_ms);
    {
        SQLite::Database database(path, SQLite::OPEN_READWRITE);
        sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
        const std::string content = store::encoded(samples);
        SQLite::Statement update(database, "UPDATE trace_blocks SET content = ?");
        update.bind(1, content.data(), static_cast<int>(content.size()));
        ASSERT_EQ(update.exec(), 1);
    }
    const auto logbook = Logbook::open(path, OpenMode::read_only, clock);
    if (!logbook) { // seen at once
        EXPECT_EQ(logbook.error().failure, Failure::damaged);
        return;
    }
    const Trace trace = take(logbook.value().traces(run)).front();
    const auto read = logbook.value().read_samples(trace.uuid, trace.first_ms, trace.last_ms, [](std::span<const TraceSample> some) {
        EXPECT_TRUE(std::ranges::is_sorted(some, {}, &TraceSample::time_ms));
        return true;
    });
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().failure, Failure::damaged);
}

TEST(Traces, how_a_log_was_read_is_kept_in_the_step_that_adds_its_samples) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    Trace trace;
    trace.run_uuid = run;
    trace.signature = "time,power";
    trace.layout = "decimal=comma";
    const auto add_with = [&](const Result<void>& end) {
        return logbook.add_trace(trace, [&](Trace& about, const SampleTaker& taker) -> Result<void> {
            about.fingerprint = "f";
            if (auto taken = taker(std::vector<TraceSample>{{1000, 1, {}, {}, {}}}); !taken) return taken;
            return end;
        });
    };
    EXPECT_FALSE(add_with(Error{Failure::disk_full, "no room", {}, {}}).ok());
    EXPECT_TRUE(take(logbook.trace_answers()).empty());
    EXPECT_TRUE(add_with({}).ok());
    EXPECT_EQ(take(logbook.trace_answers()), (std::map<std::string, std::string>{{"time,power", "decimal=comma"}}));
}

TEST(Traces, a_source_that_fails_leaves_nothing) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    std::mt19937 random(10);
    const std::vector<TraceSample> samples = random_samples(random, 10'000);
    Trace trace;
    trace.run_uuid = run;
    const auto failed = logbook.add_trace(trace, [&](Trace&, const SampleTaker& taker) -> Result<void> {
        if (auto taken = taker(samples); !taken) return taken;
        return Error{Failure::io, "the card was pulled out", {}, {}};
    });
    ASSERT_FALSE(failed.ok());
    EXPECT_TRUE(take(logbook.traces()).empty());
    EXPECT_EQ(take(add(logbook, run, samples)).samples, 10'000);
}

TEST(Traces, samples_out_of_order_or_none_at_all_are_refused) {
    const FakeClock clock;
    const TempFolder folder;
    const RunId run = write_logbook(folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    EXPECT_EQ(failure_of(add(logbook, run, {})), Failure::bad_input);
    EXPECT_EQ(failure_of(add(logbook, run, {{2000, 1, {}, {}, {}}, {1000, 1, {}, {}, {}}})), Failure::bad_input);
    EXPECT_EQ(failure_of(add(logbook, RunId("none"), {{1000, 1, {}, {}, {}}})), Failure::not_found);
}

TEST(Traces, no_program_changes_or_deletes_a_sample) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    {
        Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
        take(add(logbook, run, {{1000, 1, {}, {}, {}}}));
    }
    SQLite::Database database((folder / "a.ullage"), SQLite::OPEN_READWRITE);
    for (const char* sql :
         {"UPDATE trace_blocks SET samples = 2", "UPDATE trace_blocks SET content = X'00'", "DELETE FROM trace_blocks", "DELETE FROM traces",
          "UPDATE traces SET offset_ms = 1", "UPDATE traces SET offset_u_s = 1", "UPDATE traces SET zone = 'UTC'", "UPDATE traces SET samples = 2",
          "UPDATE traces SET size_bytes = -1", "UPDATE traces SET last_ms = 999",
          "INSERT INTO trace_blocks (trace_id, first_ms, last_ms, samples, content) VALUES (1, 9, 9, 1, X'00')",
          "INSERT INTO trace_blocks (trace_id, first_ms, last_ms, samples, content) VALUES (1, 1000, 2000, 1, X'00')"})
        EXPECT_THROW(database.exec(sql), SQLite::Exception) << sql;
}

std::vector<TraceSample> all_samples(const Logbook& logbook, const Trace& trace) {
    std::vector<TraceSample> all;
    take(logbook.read_samples(trace.uuid, earliest_ms, latest_ms, [&all](std::span<const TraceSample> some) {
        all.insert(all.end(), some.begin(), some.end());
        return true;
    }));
    return all;
}

TEST(Traces, one_that_grew_in_many_steps_holds_every_sample_once) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    std::mt19937 random(11);
    const std::vector<TraceSample> samples = random_samples(random, 3 * store::block_samples + 17);
    {
        Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
        Trace trace = take(add(logbook, run, {samples.begin(), samples.begin() + 10}));
        for (std::size_t at = 10; at < samples.size();) {
            const std::size_t count = std::min<std::size_t>(random() % 1500, samples.size() - at); // sometimes none
            trace = take(logbook.extend_trace(trace, {std::span(samples).subspan(at, count), static_cast<std::int64_t>(at + count), "f", 1, false}));
            at += count;
            EXPECT_EQ(trace.last_ms, samples[at - 1].time_ms);
        }
    }
    const Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    const Trace trace = take(logbook.traces(run)).at(0);
    EXPECT_EQ(trace.samples, static_cast<std::int64_t>(samples.size()));
    EXPECT_EQ(all_samples(logbook, trace), samples);
    SQLite::Database database((folder / "a.ullage"), SQLite::OPEN_READONLY);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM trace_blocks").getInt(), 4); // whole blocks, as after an import of all at once
}

TEST(Traces, what_cannot_be_added_leaves_a_trace_as_it_was) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    const Trace first = take(add(logbook, run, {{1000, 1, {}, {}, {}}, {2000, 2, {}, {}, {}}}, "first"));
    const Trace second = take(add(logbook, run, {{9000, 9, {}, {}, {}}}, "second"));
    const auto failure = [&logbook](const Trace& trace, const std::vector<TraceSample>& samples) {
        return failure_of(logbook.extend_trace(trace, {samples, 100, "g", 0, false}));
    };
    EXPECT_EQ(failure(first, {{2000, 3, {}, {}, {}}}), Failure::bad_input);                      // not later
    EXPECT_EQ(failure(first, {{3000, 3, {}, {}, {}}, {9500, 4, {}, {}, {}}}), Failure::refused); // into the one after it
    EXPECT_EQ(failure(first, {{3000, std::nan(""), {}, {}, {}}}), Failure::bad_input);
    EXPECT_EQ(all_samples(logbook, first), (std::vector<TraceSample>{{1000, 1, {}, {}, {}}, {2000, 2, {}, {}, {}}}));
    const Trace grown = take(logbook.extend_trace(second, {std::vector<TraceSample>{{9100, 10, {}, {}, {}}}, 100, "g", 0, false}));
    EXPECT_EQ(failure(second, {{9200, 11, {}, {}, {}}}), Failure::refused); // it has grown meanwhile
    take(logbook.set_trace_withdrawn(grown.uuid, true));
    EXPECT_EQ(failure(grown, {{9200, 11, {}, {}, {}}}), Failure::refused);
}

TEST(Traces, a_run_is_analysed_with_what_its_trace_has_grown_by) {
    const TempFolder folder;
    const FakeClock clock;
    const RunId run = write_logbook(folder / "a.ullage");
    Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::record, clock));
    const RunRecord bare = take(logbook.run_record(run));
    const UtcMs start_ms = bare.readings.front().values.time_ms;
    const Trace trace = take(add(logbook, run, {{start_ms, 1, 60, {}, {}}, {start_ms + 1000, 2, 60, {}, {}}}));
    const RunRecord before = take(logbook.run_record(run));
    ASSERT_TRUE(before.trace.has_value());
    take(logbook.extend_trace(trace, {std::vector<TraceSample>{{start_ms + 2000, 3, 60, {}, {}}}, 100, "g", 0, false}));
    EXPECT_EQ(take(logbook.run_record(run)).trace->points.size(), before.trace->points.size() + 1);
}

} // namespace
} // namespace ullage
