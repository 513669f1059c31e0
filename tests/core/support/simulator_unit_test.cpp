// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_unit.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

const SimulatedUnit drained_unit{.battery_wh = 1100, .p0_w = 15, .a = 1.09, .b_per_w = 4e-5};

/// What the battery gave less what the losses and the load took; the loss polynomial summed over the whole drain.
double imbalance_wh(const Discharge& drain) {
    const DischargeState end = drain.at(drain.end_hours());
    return drained_unit.battery_wh - (drained_unit.p0_w * end.hours + drained_unit.a * end.delivered_wh + drained_unit.b_per_w * end.squared_w2h);
}

TEST(SimulatedUnit, a_constant_drain_ends_where_the_loss_polynomial_says) {
    const Discharge drain(drained_unit, LoadProfile::constant(310));
    ASSERT_TRUE(drain.reaches_cut_off());
    // By hand: 1100 / (15 + 1.09·310 + 4e-5·310²) = 1100 / 356.744 h.
    EXPECT_NEAR(drain.end_hours(), 3.083443590, 1e-8);
    EXPECT_NEAR(drain.at(99).delivered_wh, 310 * 3.083443590, 1e-6);
    EXPECT_DOUBLE_EQ(drained_unit.delivered_wh(310), drain.at(99).delivered_wh);
}

TEST(SimulatedUnit, delivered_energy_falls_by_the_no_load_draw_and_the_quadratic_part) {
    // D = E* − P*·T − c·Q over a drain, whatever the load does (measurement design, between runs).
    const Discharge drain(drained_unit, LoadProfile::stepped({{2, 64}, {0.5, 400}, {1.3, 120}}, true));
    const DischargeState end = drain.at(drain.end_hours());
    EXPECT_NEAR(end.delivered_wh,
                drained_unit.deliverable_wh() - drained_unit.no_load_draw_w() * end.hours - drained_unit.curvature_per_w() * end.squared_w2h, 1e-9);
}

TEST(SimulatedUnit, no_energy_is_lost_under_any_load) {
    const LoadProfile loads[] = {LoadProfile::constant(64), LoadProfile::idle(), LoadProfile::cycling(60, 2, 0.5, 0.4),
                                 LoadProfile::stepped({{1, 20}, {3, 90}, {0.25, 600}}),
                                 LoadProfile::mixed(LoadProfile::cycling(60, 0, 0.7, 0.3), LoadProfile::stepped({{4, 25}, {2, 140}}, true))};
    for (const LoadProfile& load : loads) {
        const Discharge drain(drained_unit, load);
        ASSERT_TRUE(drain.reaches_cut_off());
        EXPECT_NEAR(imbalance_wh(drain), 0, 1e-9 * drained_unit.battery_wh);
    }
}

TEST(SimulatedUnit, a_cycling_load_is_on_for_its_duty) {
    const Discharge drain(drained_unit, LoadProfile::cycling(60, 10, 0.5, 0.4));
    EXPECT_NEAR(drain.at(5).delivered_wh, 10 * (0.2 * 60 + 0.3 * 10), 1e-9);
    EXPECT_NEAR(drain.at(5).squared_w2h, 10 * (0.2 * 3600 + 0.3 * 100), 1e-6);
    EXPECT_DOUBLE_EQ(drain.at(5.1).load_w, 60);
    EXPECT_DOUBLE_EQ(drain.at(5.3).load_w, 10);
}

TEST(SimulatedUnit, mixed_loads_add_up) {
    const Discharge drain(drained_unit, LoadProfile::mixed(LoadProfile::constant(30), LoadProfile::cycling(60, 0, 1, 0.5)));
    EXPECT_DOUBLE_EQ(drain.at(0.1).load_w, 90);
    EXPECT_DOUBLE_EQ(drain.at(0.7).load_w, 30);
    EXPECT_NEAR(drain.at(4).delivered_wh, 4 * 60, 1e-9);
}

TEST(SimulatedUnit, the_last_step_goes_on_unless_the_steps_repeat) {
    EXPECT_DOUBLE_EQ(Discharge(drained_unit, LoadProfile::stepped({{1, 50}, {1, 80}})).at(3.5).load_w, 80);
    EXPECT_DOUBLE_EQ(Discharge(drained_unit, LoadProfile::stepped({{1, 50}, {1, 80}}, true)).at(2.5).load_w, 50);
}

TEST(SimulatedUnit, nothing_taken_means_no_cut_off) {
    const SimulatedUnit lossless{.battery_wh = 500, .p0_w = 0, .a = 1, .b_per_w = 0};
    const Discharge drain(lossless, LoadProfile::idle(), 0, 24);
    EXPECT_FALSE(drain.reaches_cut_off());
    EXPECT_DOUBLE_EQ(drain.end_hours(), 24);
    EXPECT_DOUBLE_EQ(drain.at(24).drawn_wh, 0);
}

TEST(SimulatedUnit, a_half_drawn_battery_lasts_half_as_long) {
    const Discharge drain(drained_unit, LoadProfile::constant(100), 550);
    EXPECT_NEAR(drain.end_hours(), drained_unit.run_time_h(100) / 2, 1e-12);
}

TEST(SimulatedUnit, the_time_of_a_delivered_energy_is_the_inverse_of_the_energy_at_a_time) {
    const Discharge drain(drained_unit, LoadProfile::stepped({{1, 50}, {2, 0}, {1, 80}}, true));
    for (const double hours : {0.5, 3.5, 4.25, 9.0}) EXPECT_NEAR(drain.hours_at_delivered(drain.at(hours).delivered_wh), hours, 1e-9);
    EXPECT_DOUBLE_EQ(drain.hours_at_delivered(5000), drain.end_hours());
}

} // namespace
} // namespace ullage::test
