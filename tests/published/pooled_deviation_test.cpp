// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/pooled_deviation.h"
#include "unit/repeats.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iterator>
#include <numeric>
#include <vector>

using namespace ullage;

// Source: NIST Statistical Reference Datasets, one-way analysis of variance, AtmWtAg (public domain, US Government; L. J. Powell, T. J. Murphy and
// J. W. Gramlich, NBS Journal of Research 87, 1982, 9): atomic weight of silver by two instruments, 24 replicates each, seven constant leading
// digits. Certified: residual standard deviation 1.51048314446410E-05 with 46 degrees of freedom.
TEST(PublishedPooledDeviation, nist_atmwtag_gives_the_certified_residual_deviation) {
    const std::vector<std::vector<double>> instruments{
        {107.8681568, 107.8681465, 107.8681572, 107.8681785, 107.8681446, 107.8681903, 107.8681526, 107.8681494,
         107.8681616, 107.8681587, 107.8681519, 107.8681486, 107.8681419, 107.8681569, 107.8681508, 107.8681672,
         107.8681385, 107.8681518, 107.8681662, 107.8681424, 107.8681360, 107.8681333, 107.8681610, 107.8681477},
        {107.8681079, 107.8681344, 107.8681513, 107.8681197, 107.8681604, 107.8681385, 107.8681642, 107.8681365,
         107.8681151, 107.8681082, 107.8681517, 107.8681448, 107.8681198, 107.8681482, 107.8681334, 107.8681609,
         107.8681101, 107.8681512, 107.8681469, 107.8681360, 107.8681254, 107.8681261, 107.8681450, 107.8681368}};
    const PooledDeviation pooled = pooled_deviation(instruments);
    EXPECT_EQ(pooled.degrees_of_freedom, 46U);
    EXPECT_EQ(pooled.groups, 2U);
    // The data carry ten digits of which seven are constant: doubles hold the deviation to some nine digits.
    EXPECT_NEAR(pooled.deviation / 1.51048314446410e-05, 1, 1e-8);
}

// Source: JCGM 100:2008, H.5, Table H.9: a voltage standard on ten days, five observations each, as daily means and experimental standard
// deviations. Published: grand mean 10.000 097 V, scatter of the daily means 57 µV (9 degrees of freedom), pooled scatter within days 85 µV (40), F
// 2.25; so the grand mean has 57 µV/√10 = 18 µV. Drains of one unit on ten days stand for the days, as Wh/100 for V.
TEST(PublishedPooledDeviation, jcgm_100_h_5_gives_the_scatter_within_and_between_days_and_of_their_mean) {
    const double means_v[] = {10.000172, 10.000116, 10.000013, 10.000144, 10.000106, 10.000031, 10.000060, 10.000125, 10.000163, 10.000041};
    const double within_uv[] = {60, 77, 111, 101, 67, 93, 80, 73, 88, 86};
    std::vector<std::vector<double>> days;
    std::vector<DrainSummary> drains;
    for (std::size_t day = 0; day < std::size(means_v); ++day) {
        // Five values with that mean and that experimental standard deviation: −2, −1, 0, 1, 2 have √2.5.
        auto& values = days.emplace_back();
        for (int k = -2; k <= 2; ++k) values.push_back(means_v[day] + k * within_uv[day] * 1e-6 / std::sqrt(2.5));
        DrainSummary& drain = drains.emplace_back();
        drain.used = true;
        drain.hours = 10;
        drain.delivered_wh = 100 * means_v[day];
        drain.mean_load_w = drain.delivered_wh / drain.hours;
    }
    const PooledDeviation within = pooled_deviation(days);
    EXPECT_EQ(within.degrees_of_freedom, 40U);
    EXPECT_NEAR(within.deviation, 85e-6, 0.5e-6);
    MeasureOptions options;
    options.repeatability_percent = 1e-4; // the scatter of the drains themselves decides
    std::vector<std::size_t> all(drains.size());
    std::iota(all.begin(), all.end(), 0U);
    const RepeatMean mean = mean_of_drains(drains, all, options);
    EXPECT_NEAR(mean.mean_wh, 1000.0097, 0.00005);
    EXPECT_NEAR(mean.scatter_wh, 0.0057, 0.00005);
    EXPECT_TRUE(mean.by_own_scatter);
    EXPECT_EQ(mean.degrees_of_freedom, 9);
    EXPECT_NEAR(mean.independent_wh, 0.0018, 0.00005);
    const double f = 5 * std::pow(mean.scatter_wh / 100 / within.deviation, 2);
    EXPECT_NEAR(f, 2.25, 0.02);
}

// The same sum with so many leading digits that a sum of squares about 0 would lose everything.
TEST(PublishedPooledDeviation, constant_leading_digits_do_no_harm) {
    std::vector<std::vector<double>> groups(3);
    for (int g = 0; g < 3; ++g)
        for (int k = 0; k < 21; ++k) groups[static_cast<std::size_t>(g)].push_back(1e12 + g + (k % 2 == 0 ? 0.25 : 0.5));
    // Of 21 values 11 lie at 0.25 and 10 at 0.5: squares 21 · 110/441 · 0.0625 a group.
    const double squares = 3 * 110.0 / 21 * 0.0625;
    EXPECT_NEAR(pooled_deviation(groups).deviation, std::sqrt(squares / 60), 1e-5);
}

TEST(PooledDeviation, groups_of_one_say_nothing) {
    const std::vector<std::vector<double>> groups{{5}, {7}, {}};
    EXPECT_EQ(pooled_deviation(groups).degrees_of_freedom, 0U);
    EXPECT_EQ(pooled_deviation(groups).deviation, 0);
}
