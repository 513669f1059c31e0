// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/live_events.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <string>
#include <vector>

namespace ullage {
namespace {

constexpr UtcMs begin_ms = 1'810'000'800'000;

/// A meter read once a second: power by the second, and the register that follows from it, in steps.
class Bench {
public:
    explicit Bench(double step_wh = 0.1) : detector_(step_wh), step_wh_(step_wh) {}

    void run(int seconds, const std::function<double(int)>& power_w) {
        for (int i = 0; i < seconds; ++i) {
            const double watts = power_w(i);
            energy_wh_ += watts / 3600;
            ++second_;
            detector_.take({begin_ms + 1000 * second_, std::floor(energy_wh_ / step_wh_) * step_wh_, watts, {}, {}});
        }
    }
    void run(int seconds, double power_w) {
        run(seconds, [power_w](int) { return power_w; });
    }
    void silence(int seconds) { second_ += seconds; }
    void set_register(double wh) { energy_wh_ = wh; }
    EventDetector& detector() { return detector_; }
    [[nodiscard]] UtcMs now_ms() const { return begin_ms + 1000 * second_; }
    std::vector<LiveEvent> events() { return detector_.take_events(); }

private:
    EventDetector detector_;
    double step_wh_, energy_wh_ = 800;
    long second_ = 0;
};

std::string told(const std::vector<LiveEvent>& events) {
    std::string text;
    for (const LiveEvent& event : events) text += say_event(event.kind).text() + ": " + event.evidence.text() + '\n';
    return text;
}

TEST(LiveEvents, cut_off_is_noted_to_the_last_sample_with_power) {
    Bench bench;
    bench.run(3600, 400);
    const UtcMs last_on_ms = bench.now_ms();
    bench.run(110, 0.0);
    EXPECT_TRUE(bench.events().empty()) << "a load may pause";
    bench.run(30, 0.0);
    const auto events = bench.events();
    ASSERT_EQ(events.size(), 1U) << told(events);
    EXPECT_EQ(events[0].kind, LiveEventKind::output_off);
    EXPECT_EQ(events[0].moment_ms, last_on_ms);
    EXPECT_EQ(events[0].by_ms, last_on_ms + 1000);
    EXPECT_NEAR(*events[0].register_wh, 1199.9, 0.11);
    EXPECT_NE(events[0].evidence.text().find("register still"), std::string::npos) << events[0].evidence;
    bench.run(7200, 0.0);
    EXPECT_TRUE(bench.events().empty()) << "it is told once";
}

TEST(LiveEvents, the_pauses_of_a_load_are_no_cut_off_once_they_are_known) {
    Bench bench;
    // A cooler: 5 minutes at 120 W, 100 s pause.
    const auto cooler = [](int second) { return second % 400 < 300 ? 120.0 : 0.0; };
    bench.run(4000, cooler);
    bench.run(300, 120);
    EXPECT_TRUE(bench.events().empty());
    const UtcMs last_on_ms = bench.now_ms();
    bench.run(140, 0.0);
    EXPECT_TRUE(bench.events().empty()) << "one and a half of the longest pause";
    bench.run(60, 0.0);
    const auto events = bench.events();
    ASSERT_EQ(events.size(), 1U) << told(events);
    EXPECT_EQ(events[0].moment_ms, last_on_ms);
}

TEST(LiveEvents, no_power_while_the_register_goes_on_is_no_cut_off) {
    EventDetector detector(0.1);
    for (int i = 0; i < 1200; ++i) detector.take({begin_ms + 1000 * i, 800 + i * 400.0 / 3600, i < 600 ? 400.0 : 0.0, {}, {}});
    const auto events = detector.take_events();
    EXPECT_TRUE(events.empty()) << told(events) << "the power is wrong, not the output";
}

TEST(LiveEvents, output_that_comes_back_is_told_with_its_moment) {
    Bench bench;
    bench.run(600, 400);
    bench.run(600, 0.0);
    bench.run(5, 400);
    const auto events = bench.events();
    ASSERT_EQ(events.size(), 2U) << told(events);
    EXPECT_EQ(events[1].kind, LiveEventKind::output_back);
    EXPECT_EQ(events[1].moment_ms, bench.now_ms() - 4000);
}

TEST(LiveEvents, a_load_that_changes_is_told_once_to_its_first_sample_and_a_load_that_wanders_is_not) {
    Bench bench;
    bench.run(900, 400);
    const UtcMs changed_ms = bench.now_ms() + 1000;
    bench.run(900, 610);
    const auto events = bench.events();
    ASSERT_EQ(events.size(), 1U) << told(events);
    EXPECT_EQ(events[0].kind, LiveEventKind::load_changed);
    EXPECT_EQ(events[0].moment_ms, changed_ms);
    EXPECT_NE(events[0].evidence.text().find("400 W to 610 W"), std::string::npos);
    bench.run(3600, [](int second) { return 500 + 200 * std::sin(second / 7.0); });
    EXPECT_TRUE(bench.events().empty());
}

TEST(LiveEvents, a_load_that_steps_by_itself_is_not_told_for_ever) {
    Bench bench;
    bench.run(20'000, [](int second) { return second / 300 % 2 == 0 ? 200.0 : 500.0; });
    EXPECT_LE(bench.events().size(), 3U);
}

TEST(LiveEvents, a_register_that_falls_is_at_0_or_restarted) {
    Bench bench;
    bench.run(60, 400);
    bench.set_register(0);
    bench.run(60, 400);
    auto events = bench.events();
    ASSERT_EQ(events.size(), 1U) << told(events);
    EXPECT_EQ(events[0].kind, LiveEventKind::register_zero);
    EXPECT_EQ(mark_of(events[0].kind), MarkKind::meter_zeroed);
    bench.set_register(500);
    bench.run(60, 400);
    (void)bench.events();
    bench.set_register(450); // what it had kept at the last full hour
    bench.run(60, 400);
    events = bench.events();
    ASSERT_EQ(events.size(), 1U) << told(events);
    EXPECT_EQ(events[0].kind, LiveEventKind::meter_restarted);
}

TEST(LiveEvents, silence_is_told_while_it_lasts_and_when_it_is_found_later) {
    Bench bench;
    bench.run(60, 400);
    bench.detector().look(bench.now_ms() + 50'000);
    EXPECT_TRUE(bench.events().empty());
    bench.detector().look(bench.now_ms() + 61'000);
    bench.detector().look(bench.now_ms() + 90'000);
    auto events = bench.events();
    ASSERT_EQ(events.size(), 1U);
    EXPECT_EQ(events[0].kind, LiveEventKind::no_answer);
    EXPECT_EQ(mark_of(events[0].kind), std::nullopt);
    EXPECT_EQ(events[0].moment_ms, bench.now_ms());
    bench.silence(1800);
    bench.run(60, 400);
    EXPECT_TRUE(bench.events().empty()) << "it was told";
    bench.silence(1800);
    bench.run(60, 400);
    events = bench.events();
    ASSERT_EQ(events.size(), 1U);
    EXPECT_EQ(events[0].by_ms - events[0].moment_ms, 1'801'000);
}

TEST(LiveEvents, a_cut_off_within_a_silence_is_a_bracket_between_the_samples_about_it) {
    Bench bench;
    bench.run(600, 400);
    const UtcMs last_ms = bench.now_ms();
    bench.silence(1800);
    bench.run(200, 0.0);
    const auto events = bench.events();
    ASSERT_EQ(events.size(), 2U) << told(events);
    EXPECT_EQ(events[1].kind, LiveEventKind::output_off);
    EXPECT_EQ(events[1].moment_ms, last_ms);
    EXPECT_EQ(events[1].by_ms, last_ms + 1'801'000);
    EXPECT_NE(events[1].evidence.text().find("nothing came for 30 min"), std::string::npos) << events[1].evidence;
}

TEST(LiveEvents, a_register_alone_tells_the_end_by_standing_still) {
    EventDetector detector(1);
    UtcMs last_rise_ms = 0;
    double before_wh = -1;
    for (int i = 0; i < 7200; ++i) { // 60 W: a step of 1 Wh a minute
        const double register_wh = std::floor(std::min(i, 3600) * 60.0 / 3600);
        if (register_wh > before_wh) last_rise_ms = begin_ms + 1000 * i;
        before_wh = register_wh;
        detector.take({begin_ms + 1000 * i, register_wh, {}, {}, {}});
    }
    const auto events = detector.take_events();
    ASSERT_EQ(events.size(), 1U) << told(events);
    EXPECT_EQ(events[0].kind, LiveEventKind::output_off);
    EXPECT_EQ(events[0].moment_ms, last_rise_ms);
    EXPECT_EQ(events[0].by_ms, last_rise_ms + 60'000) << "known to one step";
}

} // namespace
} // namespace ullage
