// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/specimens.h"

#include "core/unit/repeated_drains.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

/// A comparison as tested of specimens that gave these energies of 1000 Wh.
Comparison specimens(const std::vector<double>& wh) {
    Comparison comparison;
    for (std::size_t i = 0; i < wh.size(); ++i) {
        ComparisonRow row;
        row.unit.name = "Specimen " + std::to_string(i);
        row.unit.uuid = UnitId(row.unit.name);
        row.unit.maker = "Ostrelle Works";
        row.unit.model = "Osk 1200";
        row.fit = i;
        row.mean_load_w = known("mean_load_w", "W", 100, 1.0, Kind::measured);
        row.usable_fraction = known("usable_fraction", "1", wh[i] / 1000, 0.01, Kind::measured);
        comparison.fits.emplace_back().drains = drains({wh[i]});
        comparison.rows.push_back(row);
    }
    return comparison;
}

ModelSample sample_of(const Comparison& comparison) { return model_samples(comparison, compare_at(comparison, {})).at(0); }

// By hand: mean 0.87, s = 0.02, t(2) = 4.303: the next within 4.303 · 0.02 · sqrt(1 + 1/3) = 0.0994 of the mean.
TEST(Specimens, of_one_model_are_a_sample_with_a_prediction_for_the_next) {
    const ModelSample sample = sample_of(specimens({850, 870, 890}));
    EXPECT_EQ(sample.specimens, 3U);
    EXPECT_NEAR(*sample.usable_fraction.value, 0.87, 1e-12);
    EXPECT_NEAR(*sample.spread_percent.value, 100 * 0.02 / 0.87, 1e-9);
    EXPECT_NEAR(*sample.next_fraction.upper - 0.87, 4.302653 * 0.02 * std::sqrt(4.0 / 3), 1e-6);
    EXPECT_GT(*sample.usable_fraction.half_width(), 4.302653 * 0.02 / std::sqrt(3.0)) << "the meter's gain is common to all";
    EXPECT_NE(sample.sentence.text().find("3 specimens give 87.0"), std::string::npos) << sample.sentence;
}

TEST(Specimens, one_says_nothing_of_others_and_unlike_loads_are_not_mixed) {
    const ModelSample alone = sample_of(specimens({850}));
    EXPECT_EQ(alone.next_fraction.kind, Kind::not_known);
    EXPECT_EQ(alone.sentence, "Osk 1200: one specimen, which says nothing of others.");
    Comparison unlike = specimens({850, 870});
    unlike.rows[1].mean_load_w.value = 300;
    EXPECT_EQ(sample_of(unlike).spread_percent.kind, Kind::not_known);
    Comparison unnamed = specimens({850, 870});
    unnamed.rows[0].unit.model.clear();
    EXPECT_EQ(sample_of(unnamed).specimens, 1U);
}

} // namespace
} // namespace ullage::test
