// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/pairing.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage {
namespace {

using test::RecordBuilder;

TEST(Pairing, a_gauge_noted_with_the_register_takes_its_energy_exactly) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376);
    const auto points = pair_gauge(run.record(), unwrap_register(run.record()));
    ASSERT_EQ(points.size(), 2u);
    EXPECT_DOUBLE_EQ(points[1].delivered_wh, 64);
    EXPECT_DOUBLE_EQ(points[1].u_pairing_wh, 0);
    EXPECT_DOUBLE_EQ(points[1].hours, 1);
}

TEST(Pairing, a_gauge_between_register_readings_is_interpolated_with_its_uncertainty) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 94, {}).at(4, 74, 4568);
    MeasureOptions exact_moments;
    exact_moments.moment_doubt_min = 0;
    const auto points = pair_gauge(run.record(), unwrap_register(run.record()), exact_moments);
    ASSERT_EQ(points.size(), 3u);
    EXPECT_DOUBLE_EQ(points[1].delivered_wh, 64);
    EXPECT_NEAR(points[1].u_pairing_wh, 256 * std::sqrt(0.25 * 0.75 / 3), 1e-9);
    // A noted minute more adds 64 W x 1/60 h / sqrt(3).
    const auto noted = pair_gauge(run.record(), unwrap_register(run.record()));
    EXPECT_NEAR(noted[1].u_pairing_wh, std::hypot(64.0, 64.0 / 60 / std::sqrt(3.0)), 1e-9);
}

TEST(Pairing, there_is_no_pair_outside_the_registers_readings) {
    RecordBuilder run;
    run.at(0, 100, {}).at(1, 93, 4376).at(2, 87, 4440).at(3, 80, {});
    const auto points = pair_gauge(run.record(), unwrap_register(run.record()));
    ASSERT_EQ(points.size(), 2u);
    EXPECT_DOUBLE_EQ(points.front().gauge_percent, 93);
    EXPECT_DOUBLE_EQ(points.back().gauge_percent, 87);
}

TEST(Pairing, the_gauge_of_a_mistyped_register_is_kept_and_interpolated) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376).at(2, 87, 44440).at(3, 80, 4504).at(4, 74, 4568);
    const auto points = pair_gauge(run.record(), unwrap_register(run.record()));
    ASSERT_EQ(points.size(), 5u);
    EXPECT_DOUBLE_EQ(points[2].delivered_wh, 128);
    EXPECT_GT(points[2].u_pairing_wh, 0);
}

TEST(IntervalTable, each_neighbouring_pair_has_its_derived_figures) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(2, 90, 4440).at(3, 90, 4504);
    const auto points = pair_gauge(run.record(), unwrap_register(run.record()));
    const auto rows = interval_table(points, 1200);
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_DOUBLE_EQ(rows[0].hours, 2);
    EXPECT_DOUBLE_EQ(rows[0].gauge_drop_pt, 10);
    EXPECT_DOUBLE_EQ(rows[0].gauge_implied_wh.value(), 120);
    EXPECT_DOUBLE_EQ(rows[0].delivered_wh, 128);
    EXPECT_DOUBLE_EQ(rows[0].ratio.value(), 128.0 / 120);
    EXPECT_DOUBLE_EQ(rows[0].mean_w.value(), 64);
    EXPECT_DOUBLE_EQ(rows[0].wh_per_point.value(), 12.8);
    // A gauge that stood still has neither a ratio nor Wh for each point.
    EXPECT_FALSE(rows[1].ratio.has_value());
    EXPECT_FALSE(rows[1].wh_per_point.has_value());
    EXPECT_FALSE(interval_table(points, std::nullopt)[0].gauge_implied_wh.has_value());
}

} // namespace
} // namespace ullage
