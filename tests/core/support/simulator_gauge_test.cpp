// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_gauge.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage::test {
namespace {

const SimulatedUnit gauge_unit{.battery_wh = 1000, .p0_w = 20, .a = 1.1, .b_per_w = 0};

/// A drain under 100 W with its gauge: 130 W from the battery, 1000/130 h.
struct Drain {
    explicit Drain(GaugeLaw law, const LoadProfile& load = LoadProfile::constant(100))
        : discharge(gauge_unit, load), gauge(std::move(law), gauge_unit, discharge) {}
    [[nodiscard]] double at_share(double of_time) const { return gauge.exact_percent(of_time * discharge.end_hours()); }

    Discharge discharge;
    SimulatedGauge gauge;
};

TEST(SimulatedGauge, an_honest_one_is_linear_in_stored_energy) {
    const Drain drain({});
    for (const double share : {0.0, 0.25, 0.5, 0.9, 1.0}) EXPECT_NEAR(drain.at_share(share), 100 * (1 - share), 1e-9);
}

TEST(SimulatedGauge, one_that_counts_charge_sits_up_to_two_points_above_the_energy_left) {
    // NASA Ames Prognostics Center, Battery Data Set, cell B0005: at an energy share of 0.56607 the charge share is
    // 0.54436, which is 2.17 points less, and nowhere is the difference larger than 2.2.
    const Drain drain({.counts = GaugeCounts::charge});
    EXPECT_NEAR(drain.at_share(0.56607), 100 * (1 - 0.54436), 1e-6);
    double largest = 0;
    double least = 0;
    for (double share = 0; share <= 1; share += 0.001) {
        largest = std::max(largest, drain.at_share(share) - 100 * (1 - share));
        least = std::min(least, drain.at_share(share) - 100 * (1 - share));
    }
    EXPECT_GT(largest, 2.1);
    EXPECT_LT(largest, 2.2);
    EXPECT_GE(least, -1e-9);
}

TEST(SimulatedGauge, one_blind_to_own_consumption_still_shows_what_the_unit_took_for_itself) {
    const Drain drain({.counts = GaugeCounts::delivered_energy});
    // Of 1000 Wh the losses at no load took 20 W for 1000/130 h = 153.846 Wh, 15.3846 %.
    EXPECT_NEAR(drain.at_share(1), 15.3846, 1e-4);
}

TEST(SimulatedGauge, a_bent_one_is_off_by_its_bend_at_half) {
    const Drain drain({.bend_pt = -8});
    EXPECT_NEAR(drain.at_share(0.5), 42, 1e-9);
    EXPECT_NEAR(drain.at_share(0), 100, 1e-9);
    EXPECT_NEAR(drain.at_share(1), 0, 1e-9);
}

TEST(SimulatedGauge, one_that_ends_early_still_shows_points_at_cut_off) {
    const Drain drain({.ends_at_percent = 12});
    EXPECT_NEAR(drain.at_share(1), 12, 1e-9);
    EXPECT_NEAR(drain.at_share(0), 100, 1e-9);
}

TEST(SimulatedGauge, a_lingering_one_hides_just_its_reserve) {
    const Drain drain({.reserve_wh = 60});
    const double from_hours = drain.gauge.lingers_from_hours().value();
    const double total_wh = drain.discharge.at(99).delivered_wh;
    EXPECT_NEAR(total_wh - drain.discharge.at(from_hours).delivered_wh, 60, 1e-9);
    EXPECT_NEAR(drain.gauge.exact_percent(from_hours), 1, 1e-9);
    EXPECT_GT(drain.gauge.exact_percent(from_hours - 0.1), 1.5);
    EXPECT_NEAR(drain.at_share(1), 1, 1e-9);
    EXPECT_FALSE(Drain({}).gauge.lingers_from_hours().has_value());
}

TEST(SimulatedGauge, a_sticking_one_holds_its_value_and_then_catches_up) {
    const Drain drain({.sticks = {{.at_percent = 71, .hold_pt = 17, .catch_up_pt = 36}}});
    EXPECT_NEAR(drain.at_share(0.20), 80, 1e-9);
    EXPECT_DOUBLE_EQ(drain.at_share(0.30), 71);
    EXPECT_DOUBLE_EQ(drain.at_share(0.45), 71);
    EXPECT_NEAR(drain.at_share(0.46), 71, 1e-6);            // continuous where it comes free
    EXPECT_NEAR(drain.at_share(0.64), 71 - 53.0 / 2, 1e-9); // half way of its catching up
    EXPECT_NEAR(drain.at_share(0.82), 18, 1e-6);
    EXPECT_NEAR(drain.at_share(0.90), 10, 1e-9);
    const auto spans = drain.gauge.stuck_spans();
    ASSERT_EQ(spans.size(), 1U);
    EXPECT_NEAR(spans[0].from_hours, 0.29 * drain.discharge.end_hours(), 1e-6);
    EXPECT_NEAR(spans[0].to_hours, 0.46 * drain.discharge.end_hours(), 1e-6);
}

TEST(SimulatedGauge, without_catching_up_it_jumps) {
    const Drain drain({.sticks = {{.at_percent = 60, .hold_pt = 20, .catch_up_pt = 0}}});
    EXPECT_DOUBLE_EQ(drain.at_share(0.5999), 60);
    EXPECT_NEAR(drain.at_share(0.6001), 39.99, 1e-6);
}

TEST(SimulatedGauge, one_that_sticks_at_full_shows_full) {
    const Drain drain({.sticks = {{.at_percent = 100, .hold_pt = 9, .catch_up_pt = 10}}});
    EXPECT_DOUBLE_EQ(drain.at_share(0.08), 100);
    EXPECT_LT(drain.at_share(0.12), 100);
}

TEST(SimulatedGauge, an_offset_never_leaves_the_scale) {
    const Drain drain({.offset_pt = 6});
    EXPECT_DOUBLE_EQ(drain.at_share(0.03), 100);
    EXPECT_NEAR(drain.at_share(0.5), 56, 1e-9);
}

TEST(SimulatedGauge, it_recovers_after_the_load_falls_and_the_recovery_fades) {
    const Drain drain({.rebound_pt = 4, .rebound_drop_w = 150, .rebound_fades_h = 0.5}, LoadProfile::stepped({{1, 300}, {2, 40}}));
    const double before = drain.gauge.exact_percent(0.999);
    const double after = drain.gauge.exact_percent(1.001);
    EXPECT_NEAR(after - before, 4, 0.1);
    const Drain without({}, LoadProfile::stepped({{1, 300}, {2, 40}}));
    EXPECT_NEAR(drain.gauge.exact_percent(1.5) - without.gauge.exact_percent(1.5), 4 * std::exp(-1.0), 1e-9);
}

TEST(SimulatedGauge, a_coarse_one_shows_whole_steps_only) {
    for (const double step : {1.0, 5.0, 20.0}) {
        for (const Steps steps : {Steps::rounded, Steps::truncated}) {
            const Drain drain({.step_percent = step, .steps = steps});
            Random random(1);
            EXPECT_DOUBLE_EQ(drain.gauge.shown_percent(0, random), 100);
            for (double hours = 0; hours < drain.discharge.end_hours(); hours += 0.05) {
                const double shown = drain.gauge.shown_percent(hours, random);
                const double behind = drain.gauge.exact_percent(hours) - shown;
                EXPECT_NEAR(std::remainder(shown, step), 0, 1e-9);
                EXPECT_GE(behind, (steps == Steps::rounded ? -step / 2 : 0) - 1e-6);
                EXPECT_LE(behind, (steps == Steps::rounded ? step / 2 : step) + 1e-6);
            }
        }
    }
}

TEST(SimulatedGauge, noise_scatters_by_its_standard_deviation) {
    const Drain drain({.noise_pt = 1.5, .step_percent = 0.001});
    Random random(7);
    const double hours = 0.5 * drain.discharge.end_hours();
    constexpr int looks = 4000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < looks; ++i) {
        const double error = drain.gauge.shown_percent(hours, random) - 50;
        sum += error;
        squares += error * error;
    }
    // Four standard errors of mean and of standard deviation.
    EXPECT_NEAR(sum / looks, 0, 4 * 1.5 / std::sqrt(looks));
    EXPECT_NEAR(std::sqrt(squares / looks), 1.5, 4 * 1.5 / std::sqrt(2.0 * looks));
}

} // namespace
} // namespace ullage::test
