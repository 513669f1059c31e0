// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gauge/cell_b0005.h"
#include "measure/load_statistics.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <vector>

namespace ullage::test {
namespace {

TraceSample sample(double seconds, double watts) {
    TraceSample at;
    at.time_ms = std::llround(1000 * seconds);
    at.power_w = watts;
    return at;
}

std::optional<LoadStatistics> statistics_of(const std::vector<TraceSample>& samples, double gap_limit_s = 60) {
    LoadMeter meter(gap_limit_s);
    // In two pieces, as a stream comes.
    const std::span<const TraceSample> all(samples);
    const std::size_t half = samples.size() / 2;
    meter.take(all.first(half));
    meter.take(all.subspan(half));
    if (meter.needs_second_pass()) {
        meter.take_again(all.first(half));
        meter.take_again(all.subspan(half));
    }
    return meter.statistics();
}

TEST(LoadStatisticsTest, energy_of_the_published_discharge_is_that_of_its_source) {
    // B. Saha and K. Goebel (2007), Battery Data Set, NASA Ames Prognostics Data Repository, cell B0005, first discharge, four decimals: trapezoid
    // from the first sample to the first below 2.7 V gives 6.5937529911 Wh.
    std::vector<TraceSample> samples;
    for (const CellSample& each : cell_b0005) {
        samples.push_back(sample(each.seconds, each.volts * each.amperes));
        if (each.volts < 2.7) break;
    }
    const auto statistics = statistics_of(samples);
    ASSERT_TRUE(statistics);
    EXPECT_NEAR(statistics->energy_wh, 6.5937529911, 1e-10);
    EXPECT_NEAR(statistics->covered_h, 3346.937 / 3600, 1e-9);
    EXPECT_EQ(statistics->gaps, 0);
}

TEST(LoadStatisticsTest, integrated_power_agrees_with_the_register_of_a_cycler_as_published) {
    // TRI-AMDD/beep (Apache-2.0), beep/tests/test_files/2017-05-09_test-TC-contact_CH33.csv: a charge at 1.1 A with the tester's own counter. Seven
    // of its rows integrate to 0.84934320 Wh, its register says 0.84828818 Wh; times to the ms leave 1e-6.
    struct Row {
        double s, a, v, wh;
    };
    constexpr Row rows[] = {{191.8657, 1.100030, 3.464289, 1.2536608}, {294.4021, 1.099923, 3.379820, 1.3599422},
                            {434.4867, 1.100158, 3.384995, 1.5047086}, {574.5750, 1.100200, 3.391093, 1.6497314},
                            {724.6592, 1.100071, 3.397194, 1.8053783}, {854.7289, 1.100242, 3.403139, 1.9405036},
                            {1009.8129, 1.099961, 3.411330, 2.1019490}};
    std::vector<TraceSample> samples;
    for (const Row& row : rows) {
        samples.push_back(sample(row.s, row.a * row.v));
        samples.back().register_wh = row.wh;
    }
    const auto statistics = statistics_of(samples, 200);
    ASSERT_TRUE(statistics && statistics->register_wh);
    EXPECT_NEAR(statistics->energy_wh, 0.84934320, 1e-6);
    EXPECT_NEAR(*statistics->register_wh, 0.84828818, 1e-7);
    EXPECT_NEAR(100 * (statistics->energy_wh / *statistics->register_wh - 1), 0.124, 0.001);
}

TEST(LoadStatisticsTest, a_cycling_load_has_two_levels_a_duty_and_starts) {
    // 12 min on at 90 W, 48 min off at 2 W, for 10 h, a sample each 5 s; common practice, no source.
    std::vector<TraceSample> samples;
    for (int s = 0; s <= 36'000; s += 5) samples.push_back(sample(s, s % 3600 < 720 ? 90 : 2));
    const auto statistics = statistics_of(samples);
    ASSERT_TRUE(statistics && statistics->cycle);
    EXPECT_NEAR(statistics->cycle->on_w, 90, 0.1);
    EXPECT_NEAR(statistics->cycle->off_w, 2, 0.1);
    EXPECT_NEAR(statistics->cycle->duty, 0.2, 0.001);
    EXPECT_NEAR(statistics->cycle->starts_per_hour, 1.0, 0.01); // nine starts after the first level, and one at the last sample
    EXPECT_NEAR(statistics->mean_w, 0.2 * 90 + 0.8 * 2, 0.05);
    EXPECT_NEAR(statistics->daily_wh, 24 * 19.6, 1.2);
    // In each of the 20 changes the power falls or rises straight for 5 s: a third of a² + ab + b² instead of half of a² + b².
    EXPECT_NEAR(statistics->square_w2h, 10 * (0.2 * 8100 + 0.8 * 4) - 20 * 5.0 / 3600 * (8104 / 2.0 - 8284 / 3.0), 0.1);
    EXPECT_EQ(statistics->peak_w, 90);
}

TEST(LoadStatisticsTest, a_steady_load_with_noise_does_not_cycle) {
    std::vector<TraceSample> samples;
    for (int s = 0; s < 20'000; ++s) samples.push_back(sample(s, 64 + (s * 7 % 11) * 0.3));
    const auto statistics = statistics_of(samples);
    ASSERT_TRUE(statistics);
    EXPECT_FALSE(statistics->cycle);
}

TEST(LoadStatisticsTest, noise_about_the_threshold_is_no_start) {
    std::vector<TraceSample> samples;
    for (int s = 0; s < 7200; ++s) {
        const double level = s % 3600 < 1800 ? 100 : 0;
        samples.push_back(sample(s, s % 3600 == 1800 ? 52 : s % 3600 == 1801 ? 48 : s % 3600 == 1802 ? 52 : level));
    }
    const auto statistics = statistics_of(samples);
    ASSERT_TRUE(statistics && statistics->cycle);
    EXPECT_NEAR(statistics->cycle->starts_per_hour, 0.5, 0.01);
}

TEST(LoadStatisticsTest, a_gap_is_left_out_and_bounded_never_bridged) {
    const auto statistics = statistics_of({sample(0, 100), sample(10, 100), sample(3610, 100), sample(3620, 100)});
    ASSERT_TRUE(statistics);
    EXPECT_NEAR(statistics->energy_wh, 100 * 20 / 3600.0, 1e-12);
    EXPECT_EQ(statistics->gaps, 1);
    EXPECT_NEAR(statistics->gap_h, 1, 1e-12);
    EXPECT_NEAR(statistics->gap_most_wh, 100, 1e-9);
}

TEST(LoadStatisticsTest, without_power_there_is_nothing_to_say) {
    EXPECT_FALSE(statistics_of({}));
    EXPECT_FALSE(statistics_of({sample(0, 1)}));
    EXPECT_FALSE(statistics_of({sample(0, 1), sample(1000, 1)}));
}

} // namespace
} // namespace ullage::test
