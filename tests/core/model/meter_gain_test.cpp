// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/meter_gain.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage {
namespace {

Meter calibrated() {
    Meter meter;
    meter.name = "bench meter";
    meter.limit_percent = 1;
    meter.correction = 1.05; // of the time before the certificate
    meter.points = {{100, 0.990, 0.4, 2.0}, {500, 1.002, 0.2, 2.0}, {2000, 1.004, 0.5, {}}};
    return meter;
}

TEST(MeterGain, without_points_the_one_correction_and_limit_hold_at_every_load) {
    Meter meter = calibrated();
    meter.points.clear();
    for (const double load_w : {0.0, 60.0, 5000.0}) {
        const MeterGain gain = gain_at(meter, load_w);
        EXPECT_EQ(gain.correction, 1.05);
        EXPECT_EQ(gain.limit_percent, 1.0);
        EXPECT_EQ(gain.u_percent, std::nullopt);
        EXPECT_FALSE(gain.beyond_points);
    }
    EXPECT_EQ(error_limit_percent(meter), 1.0);
}

TEST(MeterGain, between_two_points_correction_and_standard_uncertainty_are_interpolated_by_load) {
    const MeterGain gain = gain_at(calibrated(), 200); // a quarter of the way from 100 to 500 W
    EXPECT_NEAR(gain.correction, 0.993, 1e-12);
    EXPECT_NEAR(gain.u_percent.value(), 0.175, 1e-12); // U/k 0.2 % and 0.1 %
    EXPECT_EQ(gain.limit_percent, std::nullopt);
    EXPECT_NEAR(gain.standard_percent(), 0.175, 1e-12);
}

TEST(MeterGain, beyond_the_points_the_nearest_one_holds_and_that_is_said) {
    const MeterGain below = gain_at(calibrated(), 20), above = gain_at(calibrated(), 3000);
    EXPECT_EQ(below.correction, 0.990);
    EXPECT_NEAR(below.u_percent.value(), 0.2, 1e-12);
    EXPECT_TRUE(below.beyond_points);
    EXPECT_EQ(above.correction, 1.004);
    EXPECT_EQ(above.limit_percent, 0.5) << "U without k is no more than a limit";
    EXPECT_TRUE(above.beyond_points);
    EXPECT_FALSE(gain_at(calibrated(), 100).beyond_points);
    EXPECT_FALSE(gain_at(calibrated(), 2000).beyond_points);
}

TEST(MeterGain, between_a_limit_and_an_uncertainty_with_k_the_wider_of_the_two_is_a_limit) {
    const MeterGain gain = gain_at(calibrated(), 1000);
    EXPECT_EQ(gain.u_percent, std::nullopt);
    EXPECT_EQ(gain.limit_percent, 0.5); // 1.96 × 0.1 % / 0.95 = 0.21 % is less
}

TEST(MeterGain, a_point_without_uncertainty_has_the_meters_own_limit) {
    Meter meter = calibrated();
    meter.points = {{100, 0.99, {}, {}}};
    EXPECT_EQ(gain_at(meter, 100).limit_percent, 1.0);
    meter.limit_percent.reset();
    EXPECT_FALSE(gain_at(meter, 100).is_stated());
    EXPECT_EQ(error_limit_percent(meter), std::nullopt);
}

TEST(MeterGain, what_bounds_the_error_at_every_load_is_the_widest_point) {
    Meter meter = calibrated();
    EXPECT_EQ(error_limit_percent(meter), 0.5);
    meter.points.pop_back();
    // A rectangle of this half-width holds 95 % within ±1.96 × 0.2 %, as the normal one does.
    EXPECT_NEAR(0.95 * error_limit_percent(meter).value(), 1.959964 * 0.2, 1e-6);
    EXPECT_NEAR(typical_correction(meter), 0.996, 1e-12);
    EXPECT_EQ(typical_correction(std::nullopt), 1.0);
}

} // namespace
} // namespace ullage
