// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/repeats.h"

#include "core/unit/repeated_drains.h"
#include "numerics/monte_carlo.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage::test {
namespace {

RepeatMean mean_of(const std::vector<DrainSummary>& all, const MeasureOptions& options = {}) { return repeat_means(all, options).front(); }

TEST(Repeats, the_order_of_the_drains_does_not_matter) {
    std::vector<double> wh{850, 860, 880, 900, 905};
    const RepeatMean first = mean_of(drains(wh));
    while (std::ranges::next_permutation(wh).found) {
        const RepeatMean other = mean_of(drains(wh));
        ASSERT_DOUBLE_EQ(other.mean_wh, first.mean_wh);
        ASSERT_NEAR(*other.delivered_wh.half_width(), *first.delivered_wh.half_width(), 1e-9);
    }
}

// JCGM 100:2008, 4.2. By hand: mean 879; deviations −29, −19, 1, 21, 26; squares 841 + 361 + 1 + 441 + 676 = 2320; s = 24.083;
// s/√5 = 10.770; t(4) = 2.776.
TEST(Repeats, a_type_a_evaluation_gives_mean_scatter_and_students_interval) {
    const RepeatMean mean = mean_of(drains({850, 860, 880, 900, 905}));
    EXPECT_DOUBLE_EQ(mean.mean_wh, 879);
    EXPECT_NEAR(mean.scatter_wh, std::sqrt(2320.0 / 4), 1e-9);
    EXPECT_NEAR(mean.independent_wh, 10.770, 0.001);
    EXPECT_EQ(mean.degrees_of_freedom, 4);
    EXPECT_TRUE(mean.by_own_scatter);
    EXPECT_NEAR(*mean.delivered_wh.half_width(), half_width_of_sum(8.79, 2.776445 * 10.770 / 1.959964, 0.95), 0.01);
}

TEST(Repeats, the_usual_figure_counts_where_it_says_more_and_a_stated_one_unless_the_drains_refute_it) {
    EXPECT_FALSE(mean_of(drains({880, 880.2, 880.1})).by_own_scatter);
    EXPECT_TRUE(mean_of(drains({870, 880})).by_own_scatter) << "of the usual figure nobody knows whether it holds here";
    MeasureOptions stated;
    stated.repeatability_source = RepeatabilitySource::stated;
    EXPECT_FALSE(mean_of(drains({876, 880}), stated).by_own_scatter);
    EXPECT_TRUE(mean_of(drains({800, 880}), stated).by_own_scatter) << "9 % apart is not 0.5 %";
}

TEST(Repeats, drains_at_loads_beyond_a_factor_of_one_and_a_quarter_or_at_other_temperatures_are_no_repeats) {
    const std::vector<DrainSummary> loads{drain(850, 80), drain(860, 99), drain(870, 101), drain(880, 140)};
    const auto by_load = like_load_groups(loads);
    ASSERT_EQ(by_load.size(), 3U);
    EXPECT_EQ(by_load[0], (std::vector<std::size_t>{0, 1})) << "80 and 99 W; of as many those at the lower loads";
    const std::vector<DrainSummary> cold{drain(900, 100, 22), drain(902, 100, 21), drain(840, 100, 4), drain(901, 100)};
    const auto by_temperature = like_load_groups(cold);
    ASSERT_EQ(by_temperature.size(), 2U);
    EXPECT_EQ(by_temperature[0], (std::vector<std::size_t>{0, 1, 3})) << "one without a temperature goes with the most";
}

TEST(Repeats, the_scatter_of_repeats_is_pooled_over_units_from_five_degrees_of_freedom_on) {
    const std::vector<DrainSummary> a = drains({990, 1000, 1010}), b = drains({495, 500, 505}), c = drains({700, 707});
    EXPECT_EQ(with_pooled_repeatability({}, {a, b}).repeatability_source, RepeatabilitySource::usual);
    const MeasureOptions pooled = with_pooled_repeatability({}, {a, b, c});
    EXPECT_EQ(pooled.repeatability_source, RepeatabilitySource::pooled);
    EXPECT_EQ(pooled.repeatability_degrees, 5U);
    // Relative: 1 % with two degrees of freedom twice, and (7/703.5)²/2 with one.
    EXPECT_NEAR(pooled.repeatability_percent, 100 * std::sqrt((2 * 2 * 1e-4 + std::pow(7 / 703.5, 2) / 2) / 5), 1e-9);
    MeasureOptions stated;
    stated.repeatability_source = RepeatabilitySource::stated;
    EXPECT_EQ(with_pooled_repeatability(stated, {a, b, c}).repeatability_percent, 0.5);
}

TEST(Repeats, a_gain_counts_once_for_all_drains_of_one_meter_and_apart_for_two) {
    std::vector<DrainSummary> all = drains({900, 900, 900, 900});
    EXPECT_NEAR(mean_of(all).gains.at("meter").half_width_wh, 9, 1e-9);
    all[2].meter_key = all[3].meter_key = "other";
    EXPECT_NEAR(mean_of(all).gains.at("meter").half_width_wh, 4.5, 1e-9);
    all[0].gain_limit_percent.reset();
    EXPECT_FALSE(mean_of(all).delivered_wh.half_width());
}

} // namespace
} // namespace ullage::test
