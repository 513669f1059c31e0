// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/pooled_deviation.h"

#include <gtest/gtest.h>

#include <cmath>
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
