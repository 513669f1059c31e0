// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/live_trace.h"

#include "measure/energy_analysis.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <string>
#include <utility>
#include <vector>

namespace ullage {
namespace {

template <class T>
T given(Result<T> result) {
    EXPECT_TRUE(result) << (result ? "" : result.error().sentence());
    return std::move(result).value();
}

class LiveTraceTest : public testing::Test {
protected:
    LiveTraceTest() : book(given(Logbook::create(folder / "a.ullage", clock))) {
        Unit unit;
        unit.name = "Specimen";
        Meter meter;
        meter.name = "Meter";
        unit_uuid = given(book.add(unit)).uuid;
        meter_uuid = given(book.add(meter)).uuid;
        ullage::Run run;
        run.unit_uuid = unit_uuid;
        run.meter_uuid = meter_uuid;
        run_uuid = given(book.add(run)).uuid;
        source.address = "192.0.2.10";
        source.sunspec = EnergyDirection::imported;
    }

    std::vector<TraceSample> seconds(int from, int to, double power_w = 400) const {
        std::vector<TraceSample> samples;
        for (int i = from; i < to; ++i) samples.push_back({clock.now_ms() + 1000 * i, 100 + i / 9.0, power_w, {}, {}});
        return samples;
    }

    test::TempFolder folder;
    test::FakeClock clock;
    Logbook book;
    UnitId unit_uuid;
    MeterId meter_uuid;
    RunId run_uuid;
    LiveSource source;
};

TEST_F(LiveTraceTest, samples_go_to_the_end_of_one_trace_also_after_the_program_was_ended) {
    LiveTrace live = given(LiveTrace::begin(book, run_uuid, meter_uuid, source));
    EXPECT_FALSE(live.last_before());
    ASSERT_TRUE(live.write(book, seconds(0, 10), 1));
    ASSERT_TRUE(live.write(book, seconds(10, 20), 2));
    LiveTrace again = given(LiveTrace::begin(book, run_uuid, meter_uuid, source));
    ASSERT_TRUE(again.last_before());
    EXPECT_EQ(again.last_before()->time_ms, clock.now_ms() + 19'000);
    ASSERT_TRUE(again.write(book, seconds(3600, 3610), 0));
    const auto traces = given(book.traces(run_uuid));
    ASSERT_EQ(traces.size(), 1U);
    EXPECT_TRUE(is_live(traces[0]));
    EXPECT_EQ(traces[0].samples, 30);
    EXPECT_EQ(traces[0].rows_left_out, 3);
    EXPECT_EQ(traces[0].file_name, "modbus-tcp 192.0.2.10");
    EXPECT_NE(traces[0].layout.find("sunspec imported"), std::string::npos) << "how it was read stays with what was read";
}

TEST_F(LiveTraceTest, a_source_that_is_read_otherwise_begins_a_trace_of_its_own_behind_the_first) {
    LiveTrace live = given(LiveTrace::begin(book, run_uuid, meter_uuid, source));
    ASSERT_TRUE(live.write(book, seconds(0, 10), 0));
    source.station = 2;
    LiveTrace other = given(LiveTrace::begin(book, run_uuid, meter_uuid, source));
    EXPECT_EQ(other.last_before()->time_ms, clock.now_ms() + 9'000) << "later than what the run has";
    ASSERT_TRUE(other.write(book, seconds(10, 20), 0));
    EXPECT_EQ(given(book.traces(run_uuid)).size(), 2U);
}

TEST_F(LiveTraceTest, another_meter_is_read_into_a_trace_of_its_own_beside_the_first) {
    LiveTrace live = given(LiveTrace::begin(book, run_uuid, meter_uuid, source));
    ASSERT_TRUE(live.write(book, seconds(0, 10), 0));
    Meter other;
    other.name = "Other";
    LiveSource second = source;
    second.address = "192.0.2.11";
    LiveTrace beside = given(LiveTrace::begin(book, run_uuid, given(book.add(other)).uuid, second));
    EXPECT_FALSE(beside.last_before());
    ASSERT_TRUE(beside.write(book, seconds(0, 10, 402), 0));
    EXPECT_EQ(given(book.traces(run_uuid)).size(), 2U);
}

TEST_F(LiveTraceTest, what_the_unit_says_of_itself_is_kept_apart_from_the_meter) {
    LiveSource broker;
    broker.kind = SourceKind::mqtt;
    broker.address = "broker.example.org";
    ASSERT_TRUE(
        take_fields(broker, "power bench/plug/power\nregister bench/plug/energy in kWh\ngauge bench/box#/gauge in share\noutput bench/box#/out"));
    EXPECT_NEAR(*broker.fields[2].value_of(0.69), 69, 1e-9);
    EXPECT_EQ(broker.fields[3].value_of(410), 410.0);
    std::vector<TraceSample> samples = seconds(0, 100);
    // The unit claims twice the power that the meter sees.
    for (std::size_t i = 1; i < samples.size(); i += 10) samples[i].gauge_percent = 100 - static_cast<double>(i) / 10, samples[i].output_w = 800;
    LiveTrace live = given(LiveTrace::begin(book, run_uuid, meter_uuid, broker));
    ASSERT_TRUE(live.write(book, std::span(samples).first(1), 0)) << "before the unit has said anything";
    ASSERT_TRUE(live.write(book, std::span(samples).subspan(1), 0));
    const Trace both = given(book.traces(run_uuid)).at(0);
    EXPECT_EQ(both.holds, holds_meter | holds_gauge | holds_output);
    EXPECT_EQ(both.meter_uuid, meter_uuid);
    ReadingValues note;
    note.time_ms = samples.front().time_ms;
    ASSERT_TRUE(book.record(run_uuid, note));
    note.time_ms = samples.back().time_ms;
    ASSERT_TRUE(book.record(run_uuid, note));
    EXPECT_NEAR(*analyse_energy(given(book.run_record(run_uuid))).delivered_wh.value, 11, 1e-6) << "99 s of a register that rises by 1/9 Wh each";

    LiveSource alone = broker;
    ASSERT_TRUE(take_fields(alone, "gauge bench/box#/gauge"));
    ullage::Run run;
    run.unit_uuid = unit_uuid;
    const RunId other = given(book.add(run)).uuid;
    LiveTrace gauge = given(LiveTrace::begin(book, other, std::nullopt, alone));
    std::vector<TraceSample> shown(2);
    for (int i = 0; i < 2; ++i) shown[static_cast<std::size_t>(i)].time_ms = clock.now_ms() + i * 1000;
    for (TraceSample& sample : shown) sample.gauge_percent = 71;
    ASSERT_TRUE(gauge.write(book, shown, 0));
    EXPECT_EQ(given(book.traces(other)).at(0).holds, holds_gauge);
    EXPECT_FALSE(given(book.traces(other)).at(0).meter_uuid);
}

TEST_F(LiveTraceTest, a_run_that_has_ended_is_refused) {
    ullage::Run run = given(book.run_record(run_uuid)).run;
    run.end = RunEnd::stopped_by_tester;
    ASSERT_TRUE(book.update(run));
    const auto ended = LiveTrace::begin(book, run_uuid, meter_uuid, source);
    ASSERT_FALSE(ended);
    EXPECT_NE(ended.error().sentence().find("has ended"), std::string::npos);
}

TEST_F(LiveTraceTest, a_trace_that_was_withdrawn_takes_no_more) {
    LiveTrace live = given(LiveTrace::begin(book, run_uuid, meter_uuid, source));
    ASSERT_TRUE(live.write(book, seconds(0, 10), 0));
    ASSERT_TRUE(book.set_trace_withdrawn(live.trace()->uuid, true));
    const auto refused = live.write(book, seconds(10, 20), 0);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().failure, Failure::refused);
}

TEST_F(LiveTraceTest, events_are_found_again_in_the_samples_until_their_mark_is_set) {
    LiveTrace live = given(LiveTrace::begin(book, run_uuid, meter_uuid, source));
    auto samples = seconds(0, 600);
    for (TraceSample off : seconds(600, 800, 0)) {
        off.register_wh = samples[599].register_wh;
        samples.push_back(off);
    }
    ASSERT_TRUE(live.write(book, samples, 0));
    const auto read = [this](const Trace& trace, const SampleVisitor& visit) {
        return book.read_samples(trace.uuid, trace.first_ms, trace.last_ms, visit);
    };
    const auto proposed = given(proposed_events(given(book.traces(run_uuid)), read, given(book.run_record(run_uuid))));
    ASSERT_EQ(proposed.size(), 1U);
    EXPECT_EQ(proposed[0].kind, LiveEventKind::output_off);
    EXPECT_EQ(proposed[0].moment_ms, clock.now_ms() + 599'000);
    const ReadingValues values = reading_of(proposed[0]);
    EXPECT_EQ(values.mark, MarkKind::cut_off);
    EXPECT_EQ(values.time_ms, proposed[0].moment_ms);
    EXPECT_NE(values.remark.find("live source"), std::string::npos);
    ASSERT_TRUE(book.record(run_uuid, values));
    EXPECT_TRUE(given(proposed_events(given(book.traces(run_uuid)), read, given(book.run_record(run_uuid)))).empty());
}

} // namespace
} // namespace ullage
