// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/fake_clock.h"
#include "support/temp_folder.h"
#include "trace/log_follow.h"
#include "trace/trace_import.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <random>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

constexpr UtcMs start_s = 1'810'317'600; // 2027-05-14T18:00Z

std::string row(long second) {
    return std::to_string(start_s + second) + "," + std::to_string(second) + ".5," + std::to_string(60 + second % 7) + "\n";
}

std::string rows(long from, long to) {
    std::string text;
    for (long second = from; second < to; ++second) text += row(second);
    return text;
}

class FollowedLog : public testing::Test {
protected:
    FollowedLog() : logbook_(Logbook::in_memory(clock_).value()) {
        Unit unit;
        unit.name = "Specimen";
        ullage::Run run;
        run.unit_uuid = logbook_.add(unit).value().uuid;
        run_uuid_ = logbook_.add(run).value().uuid;
    }

    void write(const std::string& text) { std::ofstream(path_, std::ios::binary | std::ios::trunc) << text; }
    void append(const std::string& text) { std::ofstream(path_, std::ios::binary | std::ios::app) << text; }

    Trace import(TraceReadOptions options = {}) {
        options.whole_lines = true;
        const auto preview = preview_trace(path_, {}, {}, options);
        EXPECT_TRUE(preview.ok());
        const auto done = import_trace(logbook_, path_, run_uuid_, std::nullopt, preview.value().detection, options);
        EXPECT_TRUE(done.ok()) << done.error().sentence();
        return done.value().trace;
    }
    LogFollow followed(const Trace& trace, bool maybe_anew = false) {
        auto follow = LogFollow::begin(logbook_, trace, path_, maybe_anew);
        EXPECT_TRUE(follow.ok()) << follow.error().sentence();
        return std::move(follow).value();
    }
    /// Looks until there is no more; how many samples came.
    std::int64_t look(LogFollow& follow) {
        std::int64_t samples = 0;
        for (bool more = true; more;) {
            const auto seen = follow.look(logbook_);
            EXPECT_TRUE(seen.ok()) << seen.error().sentence();
            if (!seen) return -1;
            samples += seen.value().samples;
            more = seen.value().more;
        }
        return samples;
    }
    /// Seconds since the start of all samples of the run's only trace.
    std::vector<long> seconds() {
        std::vector<long> all;
        const Trace trace = logbook_.traces(run_uuid_).value().at(0);
        (void)logbook_.read_samples(trace.uuid, earliest_ms, latest_ms, [&all](std::span<const TraceSample> some) {
            for (const TraceSample& sample : some) {
                const long second = static_cast<long>(sample.time_ms / 1000 - start_s);
                EXPECT_EQ(sample.register_wh, static_cast<double>(second) + 0.5);
                all.push_back(second);
            }
            return true;
        });
        return all;
    }
    static std::vector<long> counted(long from, long to) {
        std::vector<long> all;
        for (long second = from; second < to; ++second) all.push_back(second);
        return all;
    }

    static constexpr const char* header = "epoch,register (Wh),power (W)\n";
    FakeClock clock_;
    Logbook logbook_;
    RunId run_uuid_;
    TempFolder folder_;
    std::string path_ = folder_ / "log.csv";
};

TEST_F(FollowedLog, puts_what_it_gains_at_the_end_of_its_trace) {
    write(header + rows(0, 5) + "18103176"); // a row that is being written
    const Trace trace = import();
    EXPECT_EQ(trace.samples, 5);
    LogFollow follow = followed(trace);
    EXPECT_EQ(look(follow), 0);
    append("05,5.5,65\n" + rows(6, 10));
    EXPECT_EQ(look(follow), 5);
    EXPECT_EQ(seconds(), counted(0, 10));
    EXPECT_EQ(follow.trace(), logbook_.traces(run_uuid_).value().at(0));
    EXPECT_EQ(follow.trace().size_bytes, static_cast<std::int64_t>(fs::file_size(path_)));
}

TEST_F(FollowedLog, goes_on_after_a_pause_with_what_was_written_meanwhile) {
    write(header + rows(0, 5));
    (void)import();
    append(rows(5, 3000));
    LogFollow follow = followed(logbook_.traces(run_uuid_).value().at(0));
    EXPECT_EQ(look(follow), 2995);
    EXPECT_EQ(seconds(), counted(0, 3000));
    // And once more, from what is stored alone.
    append(rows(3000, 3001));
    LogFollow again = followed(logbook_.traces(run_uuid_).value().at(0));
    EXPECT_EQ(look(again), 1);
}

TEST_F(FollowedLog, counts_the_rows_that_cannot_be_taken) {
    write(header + rows(0, 5) + "rubbish\n");
    const Trace trace = import();
    LogFollow follow = followed(trace);
    append(row(5) + row(5) + row(3) + "what,is,this\n" + row(6));
    const auto seen = follow.look(logbook_);
    ASSERT_TRUE(seen.ok());
    EXPECT_EQ(seen.value().samples, 2);
    EXPECT_EQ(seen.value().rows_left_out, 3); // twice the same, too late, no row
    EXPECT_EQ(follow.trace().rows_left_out, 4);
}

TEST_F(FollowedLog, begun_anew_gives_only_what_is_later_than_its_trace) {
    write(header + rows(0, 10));
    LogFollow follow = followed(import());
    write(header + rows(7, 12)); // a window of the latest rows
    EXPECT_EQ(look(follow), 2);
    EXPECT_EQ(follow.trace().started_anew, 1);
    append(rows(12, 14));
    EXPECT_EQ(look(follow), 2);
    EXPECT_EQ(seconds(), counted(0, 14));
    // What is stored of it is enough to go on with the new file.
    append(row(14));
    LogFollow again = followed(follow.trace());
    EXPECT_EQ(look(again), 1);
}

TEST_F(FollowedLog, begun_anew_while_nobody_looked_is_taken_up_where_that_is_allowed) {
    write(header + rows(0, 10));
    const Trace trace = import();
    write(header + rows(10, 12));
    EXPECT_EQ(LogFollow::begin(logbook_, trace, path_, false).error().failure, Failure::refused);
    LogFollow follow = followed(trace, true);
    EXPECT_EQ(look(follow), 2);
    EXPECT_EQ(seconds(), counted(0, 12));
}

TEST_F(FollowedLog, keeps_reading_grouped_thousands_and_waits_through_a_preface) {
    write("epoch;register (Wh);power (W)\n1810317600;1,234.5;60.5\n1810317601;1,235.5;60.5\n");
    LogFollow follow = followed(import());
    append("1810317602;1,236.5;60.5\n");
    EXPECT_EQ(look(follow), 1);
    LogFollow again = followed(follow.trace());
    write("Start;2027-05-14 18:00:00\n");
    EXPECT_EQ(look(again), 0);
    append("epoch;register (Wh);power (W)\n");
    EXPECT_EQ(look(again), 0);
    append("1810317603;1,237.5;60.5\n");
    EXPECT_EQ(look(again), 0); // one row after a preface does not tell how many columns there are
    append("1810317604;1,238.5;60.5\n");
    EXPECT_EQ(look(again), 2);
    std::vector<double> wh;
    ASSERT_TRUE(logbook_.read_samples(follow.trace().uuid, earliest_ms, latest_ms, [&wh](std::span<const TraceSample> some) {
        for (const TraceSample& sample : some) wh.push_back(sample.register_wh.value_or(0));
        return true;
    }));
    EXPECT_EQ(wh, (std::vector<double>{1234.5, 1235.5, 1236.5, 1237.5, 1238.5}));
}

TEST_F(FollowedLog, begun_anew_with_other_columns_is_not_read) {
    write(header + rows(0, 10));
    LogFollow follow = followed(import());
    write("epoch,power (W),register (Wh)\n");
    EXPECT_EQ(look(follow), 0); // no row yet
    append("1810317700,60,100.5\n");
    const auto seen = follow.look(logbook_);
    ASSERT_FALSE(seen.ok());
    EXPECT_EQ(seen.error().failure, Failure::refused);
    EXPECT_NE(seen.error().sentence().find("other columns"), std::string::npos);
    EXPECT_EQ(seconds(), counted(0, 10));
}

TEST_F(FollowedLog, begun_anew_without_a_date_is_not_guessed_at) {
    write("time,register (Wh),power (W)\n23:59:58,0.5,60\n");
    TraceReadOptions options;
    options.start_ms = start_s * 1000;
    const auto preview = preview_trace(path_, {}, {}, options);
    LayoutAnswers answers;
    answers.time_form = TimeForm::clock;
    const auto told = preview_trace(path_, answers, {}, options);
    ASSERT_TRUE(told.ok());
    const auto done = import_trace(logbook_, path_, run_uuid_, std::nullopt, told.value().detection, options);
    ASSERT_TRUE(done.ok());
    LogFollow follow = followed(done.value().trace);
    append("00:00:01,1.5,60\n"); // midnight is passed
    EXPECT_EQ(look(follow), 1);
    EXPECT_EQ(follow.trace().last_ms - follow.trace().first_ms, 3000);
    write("time,register (Wh),power (W)\n00:00:02,2.5,60\n");
    EXPECT_EQ(follow.look(logbook_).error().failure, Failure::refused);
}

TEST_F(FollowedLog, whose_last_row_had_been_cut_off_is_not_built_on) {
    write(header + rows(0, 5) + "1810317605,5.5,6"); // of 65
    const auto preview = preview_trace(path_, {}, {}, {});
    ASSERT_TRUE(preview.ok());
    const auto done = import_trace(logbook_, path_, run_uuid_, std::nullopt, preview.value().detection, {});
    ASSERT_TRUE(done.ok());
    LogFollow follow = followed(done.value().trace);
    append("5\n" + row(6));
    const auto seen = follow.look(logbook_);
    ASSERT_FALSE(seen.ok());
    EXPECT_NE(seen.error().sentence().find("cut off"), std::string::npos);
}

TEST_F(FollowedLog, whose_last_row_only_lacked_its_line_end_goes_on) {
    write(header + rows(0, 5) + "1810317605,5.5,65");
    const auto preview = preview_trace(path_, {}, {}, {});
    const auto done = import_trace(logbook_, path_, run_uuid_, std::nullopt, preview.value().detection, {});
    ASSERT_EQ(done.value().trace.samples, 6);
    LogFollow follow = followed(done.value().trace);
    append("\n" + row(6));
    EXPECT_EQ(look(follow), 1);
    EXPECT_EQ(seconds(), counted(0, 7));
}

TEST_F(FollowedLog, loses_nothing_when_the_logbook_could_not_take_it_at_first) {
    write(header + rows(0, 5));
    const Trace trace = import();
    LogFollow follow = followed(trace);
    append(rows(5, 8));
    ASSERT_TRUE(logbook_.set_trace_withdrawn(trace.uuid, true).ok());
    EXPECT_FALSE(follow.look(logbook_).ok());
    ASSERT_TRUE(logbook_.set_trace_withdrawn(trace.uuid, false).ok());
    append(rows(8, 9));
    EXPECT_EQ(look(follow), 3);
    EXPECT_EQ(look(follow), 1);
    EXPECT_EQ(seconds(), counted(0, 9));
}

TEST_F(FollowedLog, is_known_by_the_file_that_continues_it) {
    write(header + rows(0, 5));
    const Trace trace = import();
    EXPECT_EQ(trace_continued_by(logbook_, run_uuid_, path_).value(), trace);
    append(rows(5, 8));
    EXPECT_EQ(trace_continued_by(logbook_, run_uuid_, path_).value(), trace);
    std::ofstream(folder_ / "other.csv") << header + rows(1, 9);
    EXPECT_EQ(trace_continued_by(logbook_, run_uuid_, folder_ / "other.csv").value(), std::nullopt);
    EXPECT_EQ(trace_continued_by(logbook_, run_uuid_, folder_ / "none.csv").error().failure, Failure::not_found);
}

TEST_F(FollowedLog, with_lines_that_end_with_cr_alone_is_refused) {
    write("epoch,register (Wh),power (W)\r1810317600,0.5,60\r");
    const auto preview = preview_trace(path_, {}, {}, {});
    ASSERT_TRUE(preview.ok());
    const auto done = import_trace(logbook_, path_, run_uuid_, std::nullopt, preview.value().detection, {});
    ASSERT_TRUE(done.ok());
    EXPECT_EQ(LogFollow::begin(logbook_, done.value().trace, path_, false).error().failure, Failure::refused);
}

/// A writer that writes pieces of lines, renames its file and begins another, or writes all of it anew.
TEST_F(FollowedLog, holds_every_row_once_whatever_the_writer_does_between_looks) {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        SCOPED_TRACE(seed);
        std::mt19937 random(seed);
        Unit unit;
        unit.name = "Specimen " + std::to_string(seed);
        ullage::Run run;
        run.unit_uuid = logbook_.add(unit).value().uuid;
        run_uuid_ = logbook_.add(run).value().uuid;
        long next = 3;
        std::string unwritten;
        write(header + rows(0, next));
        std::optional<LogFollow> follow = followed(import());
        for (int step = 0; step < 60; ++step) {
            switch (random() % 8) {
            case 0: // a new file; of two within one look the first would be missed
                look(*follow);
                append(unwritten);
                unwritten.clear();
                fs::rename(path_, folder_ / "rotated");
                if (random() % 2 == 0) look(*follow);
                write(header + row(next));
                ++next;
                break;
            case 1: // all of it written anew under the same name
                append(unwritten);
                unwritten.clear();
                fs::copy_file(path_, folder_ / "copy", fs::copy_options::overwrite_existing);
                fs::rename(folder_ / "copy", path_);
                break;
            case 2: // the program was closed and opened; what is written before a change of file meanwhile would be missed
                look(*follow);
                follow.emplace(followed(logbook_.traces(run_uuid_).value().at(0), true));
                break;
            case 3:
            case 4: look(*follow); break;
            default: {
                const long count = static_cast<long>(random() % 40);
                unwritten += rows(next, next + count);
                next += count;
                const std::size_t part = unwritten.empty() ? 0 : random() % (unwritten.size() + 1);
                append(unwritten.substr(0, part));
                unwritten.erase(0, part);
            }
            }
        }
        append(unwritten);
        for (int i = 0; i < 3; ++i) look(*follow);
        EXPECT_EQ(seconds(), counted(0, next));
    }
}

} // namespace
} // namespace ullage::test
