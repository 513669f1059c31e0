// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/sample_batch.h"
#include "live/sample_gate.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

namespace ullage {
namespace {

constexpr UtcMs start_ms = 1'810'000'800'000;

Arrival arrival(std::int64_t steady_ms, TraceSample values, UtcMs clock_step_ms = 0) {
    return {values, start_ms + steady_ms + clock_step_ms, steady_ms, false};
}
TraceSample power(double watts) { return {0, {}, watts, {}, {}}; }
TraceSample at(UtcMs time_ms) { return {time_ms, {}, 1, {}, {}}; }
TraceSample wh(double register_wh) { return {0, register_wh, {}, {}, {}}; }

TEST(SampleGate, what_no_meter_can_say_is_left_out_and_counted) {
    SampleGate gate;
    EXPECT_FALSE(gate.take(arrival(0, power(std::nan("")))));
    EXPECT_FALSE(gate.take(arrival(100, power(std::numeric_limits<double>::infinity()))));
    EXPECT_FALSE(gate.take(arrival(200, power(5e6))));
    EXPECT_FALSE(gate.take(arrival(300, {})));
    const auto part = gate.take(arrival(400, {0, 12, std::nan(""), {}, {}}));
    ASSERT_TRUE(part);
    EXPECT_EQ(*part, (TraceSample{start_ms + 400, 12, {}, {}, {}})) << "what the sample says beside it stays";
    EXPECT_EQ(gate.tally().nonsense, 4);
    TraceSample shown{0, {}, 60, {}, {}};
    shown.gauge_percent = 255; // what some units say while they wake
    const auto woken = gate.take(arrival(500, shown));
    ASSERT_TRUE(woken);
    EXPECT_FALSE(woken->gauge_percent);
    EXPECT_EQ(woken->power_w, 60.0);
}

TEST(SampleGate, a_value_that_the_broker_had_kept_is_no_sample) {
    SampleGate gate;
    Arrival old = arrival(0, power(400));
    old.retained = true;
    EXPECT_FALSE(gate.take(old));
    EXPECT_TRUE(gate.take(arrival(10, power(410))));
    EXPECT_EQ(gate.tally().retained, 1);
}

TEST(SampleGate, duplicates_and_floods_are_thinned_but_another_quantity_is_not) {
    SampleGate gate;
    long kept = 0;
    for (int i = 0; i < 10'000; ++i) kept += gate.take(arrival(i / 10, power(400))) ? 1 : 0; // 10,000 in a second
    EXPECT_EQ(kept, 50);
    const auto other = gate.take(arrival(999, wh(5)));
    ASSERT_TRUE(other);
    const auto third = gate.take(arrival(999, {0, {}, {}, 230, {}}));
    ASSERT_TRUE(third);
    EXPECT_GT(third->time_ms, other->time_ms) << "each sample is later than the one before";
}

TEST(SampleGate, a_clock_that_is_set_in_the_night_moves_no_sample) {
    SampleGate gate;
    std::vector<UtcMs> times;
    const UtcMs steps[] = {0, 0, 3'600'000, 3'600'000, -86'400'000, 0};
    for (int i = 0; i < 6; ++i) times.push_back(gate.take(arrival(1000 * i, power(400), steps[i])).value().time_ms);
    for (int i = 0; i < 6; ++i) EXPECT_EQ(times[static_cast<std::size_t>(i)], start_ms + 1000 * i);
    EXPECT_EQ(gate.tally().clock_step_ms, 0);
    (void)gate.take(arrival(6000, power(400), 7000));
    EXPECT_EQ(gate.tally().clock_step_ms, 7000);
}

TEST(SampleGate, a_run_taken_up_again_under_a_clock_that_is_behind_waits_until_that_is_past) {
    SampleGate gate(TraceSample{start_ms + 5000, 100, 400, {}, {}});
    EXPECT_FALSE(gate.take(arrival(0, power(400))));
    EXPECT_FALSE(gate.take(arrival(5000, power(400))));
    const auto kept = gate.take(arrival(6000, power(400)));
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->time_ms, start_ms + 6000);
    EXPECT_EQ(gate.tally().behind, 2);
    SampleGate set_right(TraceSample{start_ms + 5000, 100, 400, {}, {}});
    EXPECT_FALSE(set_right.take(arrival(0, power(400))));
    EXPECT_EQ(set_right.take(arrival(1000, power(400), 60'000))->time_ms, start_ms + 61'000) << "the clock was set right";
}

TEST(SampleGate, a_register_that_jumps_away_and_back_is_left_out_and_one_that_goes_on_from_there_is_a_restart) {
    SampleGate gate;
    std::vector<double> kept;
    const double given[] = {100, 100.1, 9e9, 100.2, 100.3, 0, 0.1, 0.2};
    for (int i = 0; i < 8; ++i)
        if (const auto sample = gate.take(arrival(1000 * i, wh(given[i])))) kept.push_back(*sample->register_wh);
    EXPECT_EQ(kept, (std::vector<double>{100, 100.1, 100.2, 100.3, 0.1, 0.2}));
    EXPECT_EQ(gate.tally().nonsense, 2) << "the first after the restart was doubted too";
    // What the sample said beside the register is not lost.
    const auto beside = gate.take(arrival(9000, {0, 8e9, 400, {}, {}}));
    ASSERT_TRUE(beside);
    EXPECT_EQ(beside->power_w, 400);
    EXPECT_EQ(beside->register_wh, std::nullopt);
}

TEST(SampleGate, nonsense_that_lasts_is_taken_for_another_meter_only_after_a_minute) {
    SampleGate gate;
    std::vector<double> kept;
    for (int i = 0; i < 200; ++i) {
        const double shown = i >= 20 && i < 60 ? 9e6 : i >= 100 ? 5000 + i / 10.0 : 100 + i / 10.0;
        if (const auto sample = gate.take(arrival(1000 * i, wh(shown)))) kept.push_back(*sample->register_wh);
    }
    ASSERT_EQ(kept.size(), 200U - 40 - 60);
    EXPECT_EQ(kept[59], 100 + 99 / 10.0);
    EXPECT_EQ(kept[60], 5000 + 160 / 10.0);
}

TEST(SampleGate, a_register_that_rose_while_the_network_was_gone_is_taken) {
    SampleGate gate;
    EXPECT_TRUE(gate.take(arrival(0, wh(100))));
    EXPECT_TRUE(gate.take(arrival(3'600'000, wh(100 + 1500))));
}

TEST(SampleBatch, samples_are_due_after_three_seconds_or_a_thousand) {
    SampleBatch batch;
    EXPECT_FALSE(batch.due(1'000'000));
    batch.add(at(1), 1000);
    EXPECT_FALSE(batch.due(3999));
    EXPECT_TRUE(batch.due(4000));
    for (UtcMs i = 2; i <= 1000; ++i) batch.add(at(i), 1000);
    EXPECT_TRUE(batch.due(1001));
    batch.written(1000, 1001);
    EXPECT_FALSE(batch.due(3999));
}

TEST(SampleBatch, what_could_not_be_written_waits_and_of_too_much_the_oldest_go) {
    SampleBatch batch;
    for (UtcMs i = 1; i <= static_cast<UtcMs>(SampleBatch::most_samples) + 10; ++i) batch.add(at(i), 0);
    EXPECT_EQ(batch.samples().size(), SampleBatch::most_samples);
    EXPECT_EQ(batch.lost(), 10);
    EXPECT_EQ(batch.samples().front().time_ms, 11);
    batch.put_off(5000);
    EXPECT_FALSE(batch.due(7999)) << "a full disk is not asked at every sample";
    EXPECT_TRUE(batch.due(8000));
}

} // namespace
} // namespace ullage
