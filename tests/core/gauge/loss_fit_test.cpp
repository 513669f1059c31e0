// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/loss_fit.h"

#include "core/gauge/simulated_drains.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace ullage::test {
namespace {

constexpr double draw_w = 10, energy_wh = 900;
constexpr double c_per_w = MeasureOptions().most_quadratic_loss / 2 / 1500; ///< the middle of what the fit allows for the builder's 1500 W

/// 120 W and 20 W by turns of an hour, readings each half hour, a gauge of 0.1 steps that follows s = 100 - (P* t + D + c Q)/E* but for
/// what `extra` adds at each reading; register 1000 + D.
RecordBuilder varied(const std::function<double(double hours)>& extra = [](double) { return 0.0; }) {
    RecordBuilder run;
    run.record().unit.gauge_step_percent = 0.1;
    run.record().meter->step_wh = 0.001;
    double wh = 0, squared = 0;
    for (int i = 0; i <= 20; ++i) {
        const double hours = 0.5 * i;
        run.at(hours, 100 - 100 * (draw_w * hours + wh + c_per_w * squared) / energy_wh + extra(hours), 1000 + wh);
        const double watts = (i / 2) % 2 == 0 ? 120 : 20;
        wh += watts / 2;
        squared += watts * watts / 2;
    }
    return run;
}

LossFit fit_of(RecordBuilder& run) { return fit_losses(run.record(), analyse_energy(run.record())); }

/// Expects a refusal of both with `words` in the reason and in the sentence.
void expect_refused(const LossFit& fit, const std::string& words) {
    EXPECT_FALSE(fit.known());
    EXPECT_FALSE(fit.no_load_draw_w.value.has_value());
    EXPECT_EQ(fit.zero_time_energy_wh.kind, Kind::not_known);
    EXPECT_NE(fit.no_load_draw_w.reason.text().find(words), std::string::npos) << fit.no_load_draw_w.reason;
    EXPECT_NE(fit.sentence.text().find(words), std::string::npos) << fit.sentence;
    EXPECT_EQ(fit.sentence.text().find("If the gauge is linear in stored energy"), 0u);
}

TEST(LossFit, an_exact_gauge_gives_back_draw_and_energy) {
    RecordBuilder run = varied();
    const LossFit fit = fit_of(run);
    ASSERT_TRUE(fit.known()) << fit.sentence;
    EXPECT_NEAR(*fit.no_load_draw_w.value, draw_w, 1e-6);
    EXPECT_NEAR(*fit.zero_time_energy_wh.value, energy_wh, 1e-5);
    EXPECT_NEAR(fit.start_percent, 100, 1e-7);
    EXPECT_EQ(fit.no_load_draw_w.kind, Kind::projected);
    EXPECT_EQ(fit.sentence.text().find("If the gauge is linear in stored energy, the unit itself draws 10"), 0u) << fit.sentence;
    EXPECT_EQ(fit.points, 21u);
}

TEST(LossFit, the_gain_limit_of_the_meter_is_in_both_intervals) {
    RecordBuilder narrow = varied(), wide = varied();
    narrow.record().meter->limit_percent = 0.0;
    wide.record().meter->limit_percent = 5.0;
    const LossFit without = fit_of(narrow), with = fit_of(wide);
    // A rectangular limit of 5 % alone has half-widths of 0.95 x 5 % (JCGM 101:2008, clause 9.2.4 in the limit).
    EXPECT_GT(*with.zero_time_energy_wh.half_width(), 0.95 * 0.05 * energy_wh);
    EXPECT_GT(*with.no_load_draw_w.half_width(), 0.95 * 0.05 * draw_w);
    EXPECT_LT(*without.zero_time_energy_wh.half_width(), 0.02 * energy_wh);
    // One common factor: it adds a^2/3 P* E* to the covariance.
    EXPECT_NEAR(with.covariance_w_wh - without.covariance_w_wh, 0.05 * 0.05 / 3 * draw_w * energy_wh, 1e-4);
}

TEST(LossFit, an_output_that_had_tripped_draws_nothing) {
    RecordBuilder run = varied();
    RecordBuilder with_pause;
    with_pause.record().unit.gauge_step_percent = 0.1;
    with_pause.record().meter->step_wh = 0.001;
    for (const Reading& reading : run.record().readings) {
        const double hours = hours_between(RecordBuilder::start_ms, reading.values.time_ms);
        if (hours == 5) {
            with_pause.at(hours, reading.values.gauge_percent, reading.values.register_wh, MarkKind::output_tripped);
            with_pause.at(hours + 7, reading.values.gauge_percent, reading.values.register_wh, MarkKind::output_reset);
        } else {
            with_pause.at(hours + (hours > 5 ? 7 : 0), reading.values.gauge_percent, reading.values.register_wh);
        }
    }
    const LossFit fit = fit_of(with_pause);
    ASSERT_TRUE(fit.known()) << fit.sentence;
    EXPECT_NEAR(*fit.no_load_draw_w.value, draw_w, 1e-6);
}

TEST(LossFit, without_a_gain_limit_there_are_values_and_no_interval) {
    RecordBuilder run = varied();
    run.record().meter->limit_percent.reset();
    const LossFit fit = fit_of(run);
    ASSERT_TRUE(fit.known());
    EXPECT_FALSE(fit.no_load_draw_w.lower.has_value());
    EXPECT_NE(fit.no_load_draw_w.reason.text().find("the error limit of the meter is not stated"), std::string::npos);
}

TEST(LossFit, what_cannot_carry_it_is_refused_with_the_reason) {
    RecordBuilder steady;
    for (int i = 0; i <= 20; ++i) steady.at(i * 0.5, 100 - 5 * i, 4000 + i * 40);
    expect_refused(fit_of(steady), "so steady that time and energy cannot be told apart");

    RecordBuilder no_meter = varied();
    no_meter.record().meter.reset();
    expect_refused(fit_of(no_meter), "no meter is stated");

    RecordBuilder rises = varied([](double h) { return h == 3 ? -30.0 : 0.0; });
    expect_refused(fit_of(rises), "the gauge rose from");

    RecordBuilder charge = varied();
    charge.record().run.kind = RunKind::charge;
    expect_refused(fit_of(charge), "make a drain");

    RecordBuilder few;
    few.at(0, 100, 1000).at(1, 80, 1100).at(3, 70, 1110).at(4, 50, 1210).at(6, 40, 1220);
    expect_refused(fit_of(few), "only 5 gauge readings");

    RecordBuilder shallow = varied();
    shallow.record().unit.gauge_step_percent = 8;
    expect_refused(fit_of(shallow), "120 are needed");

    RecordBuilder jagged = varied([](double h) { return std::fmod(h, 2) == 1 ? 2.0 : 0.0; });
    expect_refused(fit_of(jagged), "the gauge is not linear: its readings scatter");

    // 0.8 points at half, which the scatter of a gauge of 1-point steps would let pass.
    RecordBuilder bulging = varied([](double h) { return 4 * 0.8 * (h / 10) * (1 - h / 10); });
    bulging.record().unit.gauge_step_percent = 1;
    expect_refused(fit_of(bulging), "bulges by about");
}

TEST(LossFit, energy_lost_in_a_reset_without_a_mark_is_no_base_for_a_fit) {
    RecordBuilder run;
    for (int i = 0; i <= 20; ++i) run.at(i * 0.5, 100 - 5 * i, i < 10 ? 4000 + i * 40 : (i - 10) * 40 + 5);
    expect_refused(fit_of(run), analyse_energy(run.record()).track.missing_reason);
}

TEST(LossFit, intervals_cover_the_truth_of_honest_gauges_under_varying_loads) {
    constexpr int seeds = 400;
    for (const auto& [name, load] : varying_loads()) {
        int known = 0, draw_covered = 0, energy_covered = 0;
        double bias_w = 0;
        for (int seed = 1; seed <= seeds; ++seed) {
            const SimulatedRun run = simulate_run(drain_under(load, seed), static_cast<std::uint64_t>(seed));
            const LossFit fit = fit_losses(run.record, analyse_energy(run.record));
            if (!fit.known()) continue;
            ++known;
            const auto holds = [](const Quantity& q, double truth) { return *q.lower <= truth && truth <= *q.upper; };
            draw_covered += holds(fit.no_load_draw_w, run.truth.no_load_draw_w);
            energy_covered += holds(fit.zero_time_energy_wh, run.truth.deliverable_wh);
            bias_w += *fit.no_load_draw_w.value - run.truth.no_load_draw_w;
        }
        EXPECT_GT(known, seeds * 98 / 100) << name;
        for (const auto& [what, covered] : {std::pair{"P*", draw_covered}, std::pair{"E*", energy_covered}}) {
            EXPECT_GE(covered, 0.93 * known) << name << ", " << what;
            EXPECT_LE(covered, 0.995 * known) << name << ", " << what;
        }
        EXPECT_LT(std::abs(bias_w / known), 0.25) << name << ": the draw is 5 to 15 W";
    }
}

TEST(LossFit, steady_loads_and_charge_counting_gauges_are_refused) {
    for (const auto& [name, load] : steady_loads())
        for (int seed = 1; seed <= 300; ++seed) {
            const SimulatedRun run = simulate_run(drain_under(load, seed), static_cast<std::uint64_t>(seed));
            ASSERT_FALSE(fit_losses(run.record, analyse_energy(run.record)).known()) << name << ", seed " << seed;
        }
    for (const auto& [name, load] : varying_loads()) {
        int known = 0;
        for (int seed = 1; seed <= 300; ++seed) {
            RunSetup setup = drain_under(load, seed);
            setup.gauge.counts = GaugeCounts::charge;
            const SimulatedRun run = simulate_run(setup, static_cast<std::uint64_t>(seed));
            known += fit_losses(run.record, analyse_energy(run.record)).known();
        }
        EXPECT_LT(known, 300 * 5 / 100) << name;
    }
}

} // namespace
} // namespace ullage::test
