// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/record_builder.h"
#include "support/simulated_log.h"
#include "support/temp_folder.h"
#include "trace/clock_offset.h"
#include "trace/trace_import.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <functional>
#include <random>

namespace ullage::test {
namespace {

constexpr double log_hours = 10;

/// A log of 10 h as the meter writes it, a row each `step_s`; `watts(h)` is the load at h hours of true time. The log's clock is `behind_s` behind.
struct WrittenLog {
    std::function<double(double)> watts;
    double behind_s = 0, step_s = 5;
    bool with_register = true;
    double register_step_wh = 1;

    [[nodiscard]] std::string text() const {
        std::string rows = with_register ? "epoch,register (Wh),power (W)\n" : "epoch,power (W)\n";
        double wh = 0;
        for (double s = 0; s <= log_hours * 3600; s += step_s) {
            const double now_w = watts(s / 3600);
            const double epoch_s = RecordBuilder::start_ms / 1000.0 + s - behind_s;
            rows += with_register ? fmt::format("{:.3f},{:.3f},{:.1f}\n", epoch_s, std::floor(wh / register_step_wh) * register_step_wh, now_w)
                                  : fmt::format("{:.3f},{:.1f}\n", epoch_s, now_w);
            wh += now_w * step_s / 3600;
        }
        return rows;
    }
};

class ClockOffsetTest : public testing::Test {
protected:
    Result<ClockOffset> estimate(const WrittenLog& logged, const RunRecord& record) {
        const std::string path = folder_ / "log.csv";
        std::ofstream(path, std::ios::binary) << logged.text();
        const Result<TracePreview> preview = preview_trace(path, {}, {}, {});
        if (!preview) return preview.error();
        return estimate_clock_offset(path, preview.value().detection.layout, {}, record);
    }

    TempFolder folder_;
};

/// A little more, as the builder cuts off what is less than a ms.
double whole_minute(double hours) { return std::floor(hours * 60) / 60 + 1e-8; }

TEST_F(ClockOffsetTest, the_moments_at_which_the_register_passed_noted_values_give_the_offset) {
    RecordBuilder run;
    for (int h = 1; h < 10; ++h) run.at(h, 100 - 10 * h, 80 * h);
    const auto found = estimate({[](double) { return 80; }, 1234}, run.record());
    ASSERT_TRUE(found.ok()) << found.error().sentence();
    EXPECT_EQ(found.value().basis, OffsetBasis::register_crossings);
    // The register shows 80 h Wh for the 45 s after that moment: its middle is 22 s late.
    EXPECT_NEAR(static_cast<double>(found.value().offset_ms) / 1000, 1234, 35);
    EXPECT_EQ(found.value().matched, 9);
    EXPECT_NE(found.value().sentence.find("behind the hand readings"), std::string::npos);
}

TEST_F(ClockOffsetTest, the_times_at_which_the_gauge_showed_noted_values_give_the_offset_of_the_unit_s_clock) {
    constexpr double behind_s = 1234;
    std::string rows = "epoch,SoC (%)\n";
    for (long s = 0; s <= 36'000; s += 30)
        rows += fmt::format("{:.0f},{}\n", RecordBuilder::start_ms / 1000.0 + static_cast<double>(s) - behind_s, s % 990 == 0 ? 0 : 100 - s / 360);
    const std::string path = folder_ / "unit.csv";
    std::ofstream(path, std::ios::binary) << rows;
    RecordBuilder run;
    for (const double h : {0.0, 1.13, 2.42, 3.77, 4.31, 6.08, 7.53, 8.89})
        run.at(whole_minute(h), static_cast<int>(100 - std::floor(whole_minute(h) * 10)), {});
    const auto found = estimate_clock_offset(path, preview_trace(path, {}, {}, {}).value().detection.layout, {}, run.record());
    ASSERT_TRUE(found.ok()) << found.error().sentence();
    EXPECT_EQ(found.value().basis, OffsetBasis::gauge_values);
    EXPECT_EQ(found.value().matched, 7) << "what was shown from before the start tells nothing";
    EXPECT_LT(found.value().u_s, 60);
    EXPECT_NEAR(static_cast<double>(found.value().offset_ms) / 1000, behind_s, 2 * found.value().u_s);
    EXPECT_NE(found.value().sentence.find("its gauge showed 7 of the 7 values"), std::string::npos) << found.value().sentence;
}

TEST_F(ClockOffsetTest, steps_of_the_load_in_the_meter_s_log_give_the_offset_of_the_unit_s_to_some_seconds) {
    constexpr double behind_s = 412;
    const auto watts = [](double h) { return std::fmod(h, 0.5) < 0.2 ? 150.0 : 40.0; };
    std::string rows = "epoch,SoC (%),output (W)\n";
    for (long s = 0; s <= 36'000; s += 20)
        rows += fmt::format("{:.0f},{},{:.0f}\n", RecordBuilder::start_ms / 1000.0 + static_cast<double>(s) - behind_s, 100 - s / 360,
                            1.06 * watts(static_cast<double>(s) / 3600));
    const std::string path = folder_ / "unit.csv";
    std::ofstream(path, std::ios::binary) << rows;
    RecordBuilder run;
    for (const double h : {0.0, 1.13, 2.42, 3.77, 6.08, 8.89, 10.0})
        run.at(whole_minute(h), static_cast<int>(100 - std::floor(whole_minute(h) * 10)), {});
    std::vector<TraceSample> meter;
    for (long s = 0; s <= 36'000; s += 5) {
        TraceSample sample;
        sample.time_ms = RecordBuilder::start_ms + 1000 * s;
        sample.power_w = watts(static_cast<double>(s) / 3600);
        meter.push_back(sample);
    }
    give_log(run.record(), meter);
    const auto found = estimate_clock_offset(path, preview_trace(path, {}, {}, {}).value().detection.layout, {}, run.record());
    ASSERT_TRUE(found.ok()) << found.error().sentence();
    EXPECT_EQ(found.value().basis, OffsetBasis::log_steps) << found.value().sentence;
    EXPECT_LT(found.value().u_s, 8);
    EXPECT_NEAR(static_cast<double>(found.value().offset_ms) / 1000, behind_s, 2 * found.value().u_s);
    EXPECT_NE(found.value().sentence.find("that of the meter's log"), std::string::npos) << found.value().sentence;
}

TEST_F(ClockOffsetTest, a_typing_error_does_not_move_the_offset) {
    RecordBuilder run;
    for (int h = 1; h < 10; ++h) run.at(h, 100 - 10 * h, h == 4 ? 302 : 80 * h);
    const auto found = estimate({[](double) { return 80; }, -4000}, run.record());
    ASSERT_TRUE(found.ok()) << found.error().sentence();
    EXPECT_NEAR(static_cast<double>(found.value().offset_ms) / 1000, -4000, 35);
    EXPECT_EQ(found.value().matched, 8);
    EXPECT_EQ(found.value().tried, 9);
    EXPECT_NE(found.value().sentence.find("ahead of"), std::string::npos);
}

TEST_F(ClockOffsetTest, its_interval_covers_moments_cut_off_or_rounded_to_the_minute) {
    // Varying loads, steps and sampling; whoever notes cuts the seconds off in half of the runs and rounds in the others.
    std::mt19937 random(41);
    std::uniform_real_distribution<double> offset_s(-9000, 9000), load_w(30, 150);
    int covered = 0;
    constexpr int runs = 60;
    for (int trial = 0; trial < runs; ++trial) {
        const double low_w = load_w(random), high_w = load_w(random);
        WrittenLog logged{[=](double h) { return std::fmod(h, 1.0) < 0.4 ? high_w : low_w; }, offset_s(random), trial % 3 == 0 ? 30.0 : 7.0};
        RecordBuilder run;
        for (int i = 1; i < 12; ++i) {
            const double h = 0.8 * i + std::uniform_real_distribution<double>(0, 0.3)(random);
            double wh = 0;
            for (double s = 0; s < 3600 * h; s += logged.step_s) wh += logged.watts(s / 3600) * std::min(logged.step_s, 3600 * h - s) / 3600;
            run.at(trial % 2 == 0 ? whole_minute(h) : whole_minute(h + 0.5 / 60), 100 - 8 * i, std::floor(wh));
        }
        const auto found = estimate(logged, run.record());
        ASSERT_TRUE(found.ok()) << found.error().sentence();
        if (std::abs(static_cast<double>(found.value().offset_ms) / 1000 - logged.behind_s) <= 2 * found.value().u_s) ++covered;
        EXPECT_LT(found.value().u_s, 40);
    }
    EXPECT_GE(covered, 56); // 93 %
}

TEST_F(ClockOffsetTest, load_steps_give_it_where_there_is_no_register) {
    RecordBuilder run;
    run.at(0, 100, {}).at(2, 90, {}, MarkKind::load_changed).at(5.5, 70, {}, MarkKind::load_changed).at(7, 50, {}, MarkKind::load_changed);
    const auto found = estimate({[](double h) { return h < 2 ? 60 : h < 5.5 ? 140 : h < 7 ? 30 : 90; }, 600, 5, false}, run.record());
    ASSERT_TRUE(found.ok()) << found.error().sentence();
    EXPECT_EQ(found.value().basis, OffsetBasis::load_steps);
    EXPECT_NEAR(static_cast<double>(found.value().offset_ms) / 1000, 600, 5);
    EXPECT_EQ(found.value().matched, 3);
}

TEST_F(ClockOffsetTest, the_last_fall_of_the_power_is_the_cut_off_where_nothing_else_tells) {
    RecordBuilder run;
    run.at(0, 100, {}).at(9, 0, {}, MarkKind::cut_off);
    const auto found = estimate({[](double h) { return h >= 9 ? 0 : std::fmod(h, 0.2) < 0.1 ? 90 : 5; }, 300, 5, false}, run.record());
    ASSERT_TRUE(found.ok()) << found.error().sentence();
    EXPECT_EQ(found.value().basis, OffsetBasis::cut_off);
    EXPECT_NEAR(static_cast<double>(found.value().offset_ms) / 1000, 300, 5);
    EXPECT_GT(found.value().u_s, 30);
    // A meter that dies with the output: the log ends under load.
    WrittenLog dying{[](double) { return 80; }, 300, 5, false};
    RecordBuilder whole;
    whole.at(0, 100, {}).at(10, 0, {}, MarkKind::cut_off);
    EXPECT_NEAR(static_cast<double>(estimate(dying, whole.record()).value().offset_ms) / 1000, 300, 5);
}

TEST_F(ClockOffsetTest, a_log_that_tells_nothing_is_refused_with_what_to_do) {
    RecordBuilder bare;
    bare.at(0, 100, {}).at(5, 60, {});
    const auto nothing = estimate({[](double) { return 80; }, 0}, bare.record());
    ASSERT_FALSE(nothing.ok());
    EXPECT_NE(nothing.error().sentence().find("give the offset"), std::string::npos) << nothing.error().sentence();
    // Another meter's register: the values never fit at one offset.
    RecordBuilder other;
    for (int h = 1; h < 10; ++h) other.at(h, 100 - 10 * h, 10 + 8 * h * h);
    EXPECT_EQ(estimate({[](double) { return 80; }, 0}, other.record()).error().failure, Failure::refused);
    // A cycling load fits two marks at many offsets.
    RecordBuilder cycling;
    cycling.at(2, 90, {}, MarkKind::load_changed).at(3, 80, {}, MarkKind::load_changed);
    EXPECT_FALSE(estimate({[](double h) { return std::fmod(h, 0.5) < 0.25 ? 100 : 5; }, 0, 5, false}, cycling.record()).ok());
}

} // namespace
} // namespace ullage::test
