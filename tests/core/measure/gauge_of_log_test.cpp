// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/energy_analysis.h"
#include "model/trace.h"
#include "support/record_builder.h"
#include "support/simulated_log.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace ullage::test {
namespace {

constexpr double load_w = 80, lasts_h = 10;

/// A drain of 10 h at 80 W by a logged register, whose gauge is noted at start and end alone; `shown(h)` is what its log shows every 10 s.
RunRecord drain_with(const std::function<double(double)>& shown, bool own_clock = false) {
    RecordBuilder run;
    run.at(0, 100, {}).at(lasts_h, 0, {}, MarkKind::cut_off);
    std::vector<TraceSample> meter, gauge;
    for (double s = -60; s <= lasts_h * 3600 + 60; s += 10) {
        const double hours = std::clamp(s / 3600, 0.0, lasts_h);
        TraceSample sample;
        sample.time_ms = RecordBuilder::moment_ms(0) + std::llround(1000 * s);
        sample.register_wh = std::floor(500 + load_w * hours + 1e-6);
        sample.power_w = s < 0 || s >= lasts_h * 3600 ? 0 : load_w;
        meter.push_back(sample);
        TraceSample own;
        own.time_ms = sample.time_ms;
        own.gauge_percent = shown(hours);
        gauge.push_back(own);
    }
    give_log(run.record(), meter);
    give_gauge_log(run.record(), gauge);
    run.record().gauge_log->own_clock = own_clock;
    return run.record();
}

/// The points of the log.
std::vector<PairedPoint> logged_points(const EnergyAnalysis& energy) {
    std::vector<PairedPoint> points;
    for (const PairedPoint& point : energy.points)
        if (point.reading == no_reading) points.push_back(point);
    return points;
}

/// The level between two codes of a converter is where its output passes from one to the other (code transition level, IEEE Std 1241, from memory):
/// for one that rounds at the halves, for one that truncates at whole steps.
TEST(GaugeOfLog, finds_the_transition_levels_of_a_gauge_to_the_sample) {
    const auto points = logged_points(analyse_energy(drain_with([](double h) { return std::floor(100 - 10 * h + 0.5); })));
    ASSERT_EQ(points.size(), 100U);
    for (std::size_t k = 0; k < points.size(); ++k) {
        const double level = 99.5 - static_cast<double>(k);
        EXPECT_EQ(points[k].gauge_percent, level);
        EXPECT_NEAR(points[k].hours, (100 - level) / 10, 10.0 / 3600);
        EXPECT_NEAR(points[k].delivered_wh, load_w * (100 - level) / 10, 1.2) << "a register of 1 Wh";
        EXPECT_EQ(points[k].gauge_half_pt, 0.0);
        EXPECT_LT(points[k].u_pairing_wh, 0.3);
    }
}

TEST(GaugeOfLog, a_gauge_that_truncates_reads_half_a_step_low_and_is_taken_as_it_shows) {
    for (const PairedPoint& point : logged_points(analyse_energy(drain_with([](double h) { return std::floor(100 - 10 * h + 1e-9); })))) {
        if (point.gauge_percent < 1 || point.gauge_percent > 99) continue;
        EXPECT_NEAR(point.gauge_percent - (100 - 100 * point.delivered_wh / (load_w * lasts_h)), -0.5, 0.2);
    }
}

TEST(GaugeOfLog, a_leap_is_no_step_both_its_ends_are_readings) {
    const auto points = logged_points(analyse_energy(drain_with([](double h) { return std::floor((h < 4 ? 100 - 5 * h : 120 - 12 * h) + 0.5); })));
    long ends = 0;
    for (const PairedPoint& point : points) ends += !point.gauge_half_pt && point.gauge_percent > 70 && point.gauge_percent < 81;
    EXPECT_EQ(ends, 2) << "80 % before, 72 % after";
}

TEST(GaugeOfLog, a_last_leap_to_nothing_as_the_output_goes_is_no_reading_of_the_gauge) {
    const auto shown = [](double h) { return h >= lasts_h - 0.003 ? 0.0 : std::floor(100 - 8.8 * h + 0.5); };
    for (const PairedPoint& point : logged_points(analyse_energy(drain_with(shown)))) EXPECT_GT(point.gauge_percent, 11);
}

TEST(GaugeOfLog, its_own_clock_is_good_to_a_minute_where_nobody_set_it) {
    const auto shown = [](double h) { return std::floor(100 - 10 * h + 0.5); };
    const double own = logged_points(analyse_energy(drain_with(shown, true))).at(50).u_pairing_wh;
    EXPECT_NEAR(own, load_w / 60 / std::sqrt(3.0), 0.15);
}

TEST(GaugeOfLog, a_run_whose_gauge_nobody_noted_begins_and_ends_with_what_the_log_showed) {
    RunRecord record = drain_with([](double h) { return std::floor(100 - 10 * h + 0.5); });
    for (Reading& reading : record.readings) reading.values.gauge_percent.reset();
    const EnergyAnalysis energy = analyse_energy(record);
    ASSERT_GE(energy.points.size(), 100U);
    EXPECT_EQ(energy.points.front().gauge_percent, 100);
    EXPECT_EQ(energy.points.back().gauge_percent, 0);
    EXPECT_LE(energy.intervals.size(), 26U) << "a table for people";
    EXPECT_NEAR(*energy.usable_fraction.value, 0.8, 0.01);
}

} // namespace
} // namespace ullage::test
