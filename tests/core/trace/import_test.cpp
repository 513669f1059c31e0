// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/fake_clock.h"
#include "support/temp_folder.h"
#include "trace/trace_import.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace ullage::test {
namespace {

class TraceImport : public testing::Test {
protected:
    TraceImport() : logbook_(Logbook::in_memory(clock_).value()) {
        Unit unit;
        unit.name = "Specimen";
        ullage::Run run;
        run.unit_uuid = logbook_.add(unit).value().uuid;
        run_uuid_ = logbook_.add(run).value().uuid;
    }

    std::string written(const std::string& name, const std::string& text) {
        std::ofstream(folder_ / name, std::ios::binary) << text;
        return folder_ / name;
    }

    Result<ImportedTrace> import(const std::string& path, TraceReadOptions options = {}) {
        const Result<TracePreview> preview = preview_trace(path, {}, logbook_.trace_answers().value(), options);
        if (!preview) return preview.error();
        return import_trace(logbook_, path, run_uuid_, std::nullopt, preview.value().detection, options);
    }

    std::vector<TraceSample> samples(const Trace& trace) {
        std::vector<TraceSample> all;
        const auto read = logbook_.read_samples(trace.uuid, earliest_ms, latest_ms, [&all](std::span<const TraceSample> some) {
            all.insert(all.end(), some.begin(), some.end());
            return true;
        });
        EXPECT_TRUE(read.ok());
        return all;
    }

    /// `rows` rows, one a second from 2027-05-14T18:00Z.
    static std::string long_log(long rows) {
        std::string text = "epoch,register (Wh),power (W)\n";
        for (long i = 0; i < rows; ++i)
            text += std::to_string(1'810'317'600 + i) + "," + std::to_string(i / 50) + "." + std::to_string(i % 50 / 5) + "," +
                    std::to_string(60 + i % 7) + "\n";
        return text;
    }

    FakeClock clock_;
    Logbook logbook_;
    RunId run_uuid_;
    TempFolder folder_;
};

TEST_F(TraceImport, what_comes_out_of_the_logbook_is_what_stood_in_the_log) {
    const Result<ImportedTrace> done = import(written("a.csv", long_log(10'000)));
    ASSERT_TRUE(done.ok()) << done.error().sentence();
    EXPECT_EQ(done.value().trace.samples, 10'000);
    const std::vector<TraceSample> all = samples(done.value().trace);
    ASSERT_EQ(all.size(), 10'000u);
    for (long i : {0L, 4095L, 4096L, 9999L}) {
        EXPECT_EQ(all[static_cast<std::size_t>(i)].time_ms, (1'810'317'600 + i) * 1000);
        EXPECT_EQ(all[static_cast<std::size_t>(i)].power_w, 60.0 + static_cast<double>(i % 7));
    }
}

TEST_F(TraceImport, the_offset_of_the_clock_is_added_to_every_time) {
    TraceReadOptions options;
    options.offset_ms = -12'000;
    options.offset_u_s = 2.5;
    const Result<ImportedTrace> done = import(written("a.csv", long_log(10)), options);
    ASSERT_TRUE(done.ok());
    EXPECT_EQ(done.value().trace.first_ms, (1'810'317'600 - 12) * 1000LL);
    EXPECT_EQ(done.value().trace.offset_ms, -12'000);
    EXPECT_EQ(logbook_.traces().value().at(0).offset_u_s, 2.5);
}

TEST_F(TraceImport, cancelling_leaves_nothing) {
    TraceReadOptions options;
    int calls = 0;
    options.progress = [&calls](std::int64_t) { return ++calls < 3; };
    const Result<ImportedTrace> done = import(written("a.csv", long_log(50'000)), options);
    ASSERT_FALSE(done.ok());
    EXPECT_EQ(done.error().failure, Failure::refused);
    EXPECT_EQ(calls, 3);
    EXPECT_TRUE(logbook_.traces().value().empty());
    EXPECT_TRUE(logbook_.trace_answers().value().empty());
}

TEST_F(TraceImport, the_same_file_is_noticed_under_another_name) {
    ASSERT_TRUE(import(written("a.csv", long_log(100))).ok());
    const Result<ImportedTrace> again = import(written("b.csv", long_log(100)));
    ASSERT_FALSE(again.ok());
    EXPECT_NE(again.error().sentence().find("already (as `a.csv`)"), std::string::npos) << again.error().sentence();
    EXPECT_EQ(logbook_.traces(run_uuid_).value().size(), 1u);
}

TEST_F(TraceImport, a_withdrawn_trace_makes_room_for_its_file) {
    const Result<ImportedTrace> first = import(written("a.csv", long_log(100)));
    ASSERT_TRUE(first.ok());
    ASSERT_TRUE(logbook_.set_trace_withdrawn(first.value().trace.uuid, true).ok());
    EXPECT_TRUE(import(written("b.csv", long_log(100))).ok());
    EXPECT_FALSE(logbook_.set_trace_withdrawn(first.value().trace.uuid, false).ok());
}

TEST_F(TraceImport, logs_that_overlap_are_refused) {
    ASSERT_TRUE(import(written("a.csv", long_log(100))).ok());
    const Result<ImportedTrace> longer = import(written("b.csv", long_log(120)));
    ASSERT_FALSE(longer.ok());
    EXPECT_NE(longer.error().sentence().find("overlap"), std::string::npos);
}

TEST_F(TraceImport, logs_of_two_meters_may_overlap_and_so_may_the_unit_s_own_which_has_no_meter) {
    Meter meter;
    meter.name = "Second";
    const MeterId second = logbook_.add(meter).value().uuid;
    ASSERT_TRUE(import(written("a.csv", long_log(100))).ok());
    const std::string other = written("b.csv", long_log(120));
    const TraceDetection detection = preview_trace(other, {}, {}, {}).value().detection;
    ASSERT_TRUE(import_trace(logbook_, other, run_uuid_, second, detection, {}).ok());
    const std::string own = written("c.csv", "epoch,SoC (%),output (W)\n1810317600,71,60\n1810317660,70,61\n");
    const TraceDetection of_unit = preview_trace(own, {}, {}, {}).value().detection;
    const Result<ImportedTrace> taken = import_trace(logbook_, own, run_uuid_, second, of_unit, {});
    ASSERT_TRUE(taken.ok()) << taken.error().sentence();
    EXPECT_EQ(taken.value().trace.holds, holds_gauge | holds_output);
    EXPECT_FALSE(taken.value().trace.meter_uuid);
    EXPECT_EQ(samples(taken.value().trace).at(1).gauge_percent, 70.0);
    EXPECT_FALSE(samples(taken.value().trace).at(1).power_w) << "the unit's output power is not a meter's";
    const std::string twice = written("d.csv", "epoch,SoC (%)\n1810317601,71\n1810317661,70\n");
    const Result<ImportedTrace> again = import(twice);
    ASSERT_FALSE(again.ok());
    EXPECT_NE(again.error().sentence().find("the unit's gauge for times at which `c.csv`"), std::string::npos) << again.error().sentence();
}

TEST_F(TraceImport, an_answer_is_remembered_for_logs_with_the_same_header) {
    const std::string day = "Date,Time,Power (W)\n05/06/2027,10:00:00,80\n", next = "Date,Time,Power (W)\n06/06/2027,10:00:00,80\n";
    const std::string first = written("1.csv", day), second = written("2.csv", next);
    LayoutAnswers answers;
    answers.date_order = DateOrder::day_first;
    const Result<TracePreview> told = preview_trace(first, answers, {}, {});
    ASSERT_TRUE(told.ok());
    ASSERT_TRUE(import_trace(logbook_, first, run_uuid_, std::nullopt, told.value().detection, {}).ok());
    const Result<ImportedTrace> remembered = import(second);
    ASSERT_TRUE(remembered.ok()) << remembered.error().sentence();
    EXPECT_EQ(format_iso8601(remembered.value().trace.first_ms, "UTC"), "2027-06-06T10:00Z");
}

TEST_F(TraceImport, an_open_question_is_not_imported_past) {
    const Result<ImportedTrace> done = import(written("a.csv", "Date,Time,Power (W)\n05/06/2027,10:00:00,80\n"));
    ASSERT_FALSE(done.ok());
    EXPECT_NE(done.error().sentence().find("day-first or month-first?"), std::string::npos) << done.error().sentence();
}

TEST_F(TraceImport, a_file_that_is_not_there_is_said) {
    EXPECT_EQ(import(folder_ / "none.csv").error().failure, Failure::not_found);
    EXPECT_EQ(import(folder_.path().string()).error().failure, Failure::refused);
}

TEST(TraceReader, rows_up_to_256_places_behind_find_their_place_and_later_ones_are_left_out) {
    std::string text = "epoch,power (W)\n";
    for (int i = 0; i < 10'000; ++i)
        if (i != 100 && i != 9000) text += std::to_string(1'810'317'600 + i) + ",1\n" + (i == 300 ? "1810317700,7\n" : "");
    text += "1810326600,8\n";
    const TraceDetection detection = detect_layout(text, {}).value();
    std::istringstream in(text);
    UtcMs before = 0;
    const Result<TraceTally> tally = read_trace(in, detection.layout, {}, [&before](std::span<const TraceSample> samples) -> Result<void> {
        for (const TraceSample& sample : samples) {
            EXPECT_GT(sample.time_ms, before);
            before = sample.time_ms;
        }
        return {};
    });
    ASSERT_TRUE(tally.ok());
    EXPECT_EQ(tally.value().rows, 10'000);
    EXPECT_EQ(tally.value().count(RowTrouble::swapped), 1);
    EXPECT_EQ(tally.value().count(RowTrouble::out_of_order), 1);
    EXPECT_EQ(tally.value().taken, 9'999);
}

TEST(TraceReader, a_number_is_read_as_exactly_as_its_decimals_say) {
    LogNumber number;
    ASSERT_TRUE(read_number("1.001", '.', 0, number));
    EXPECT_EQ(value_of(number, *unit_named("kWh")), 1001.0); // 1.001 * 1000 in doubles is 1000.9999999999999
    ASSERT_TRUE(read_number("0.1 mA", '.', 0, number));
    EXPECT_EQ(value_of(number, *unit_named("mA")), 0.0001);
    EXPECT_FALSE(read_number("inf", '.', 0, number));
    EXPECT_FALSE(read_number("1.2.3", '.', 0, number));
    EXPECT_FALSE(read_number("", '.', 0, number));
}

} // namespace
} // namespace ullage::test
