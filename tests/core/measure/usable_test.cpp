// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/usable.h"

#include "measure/energy_analysis.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

using test::RecordBuilder;

RecordBuilder full_drain() {
    RecordBuilder run;
    run.at(0, 100, 5000).at(4, 75, 5210).at(8, 50, 5420).at(12, 25, 5630).at(16, 0, 5850);
    return run;
}

TEST(UsableFraction, a_drain_from_full_to_cut_off_is_measured) {
    const EnergyAnalysis analysis = analyse_energy(full_drain().record());
    EXPECT_EQ(analysis.usable_fraction.kind, Kind::measured);
    EXPECT_DOUBLE_EQ(analysis.usable_fraction.value.value(), 0.850);
    EXPECT_NEAR(analysis.usable_fraction.half_width().value(), 0.00810, 0.0001);
    EXPECT_DOUBLE_EQ(analysis.delivered_wh.value.value(), 850);
    EXPECT_DOUBLE_EQ(analysis.mean_load_w.value.value(), 850.0 / 16);
}

TEST(UsableFraction, the_constructed_example_of_the_test_methods_sheet_gives_086) {
    // Reference sheet 04, 4.5 (constructed): meter 1843.27 to 1844.13 kWh, rated 1000 Wh, 17.2 h: 860 Wh, 0.86, 50.0 W.
    RecordBuilder run;
    run.record().meter->step_wh = 10;
    run.at(0, 100, 1'843'270).at(8.6, 56, 1'843'700).at(17.2, 0, 1'844'130);
    const EnergyAnalysis analysis = analyse_energy(run.record());
    EXPECT_DOUBLE_EQ(analysis.delivered_wh.value.value(), 860);
    EXPECT_DOUBLE_EQ(analysis.usable_fraction.value.value(), 0.86);
    EXPECT_NEAR(analysis.mean_load_w.value.value(), 50.0, 1e-9);
}

TEST(UsableFraction, a_drain_stopped_by_the_tester_is_projected_and_names_its_assumption) {
    RecordBuilder run;
    run.record().run.end = RunEnd::stopped_by_tester;
    run.at(0, 100, 5000).at(4, 75, 5210).at(8, 50, 5420);
    const Quantity fraction = analyse_energy(run.record()).usable_fraction;
    EXPECT_EQ(fraction.kind, Kind::projected);
    EXPECT_DOUBLE_EQ(fraction.value.value(), 0.84);
    EXPECT_NE(fraction.reason.text().find("assumes an accurate gauge from 100 % to 50 %"), std::string::npos) << fraction.reason;
    // Both gauge steps are in the interval: 0.776 pt of 50 alone is 1.6 %.
    EXPECT_GT(fraction.half_width().value(), 0.84 * 0.0155);
}

TEST(UsableFraction, a_run_that_did_not_start_full_is_projected_even_to_the_cut_off) {
    RecordBuilder run = full_drain();
    run.record().run.started_full = false;
    EXPECT_EQ(analyse_energy(run.record()).usable_fraction.kind, Kind::projected);
    run.record().run.started_full.reset();
    EXPECT_NE(analyse_energy(run.record()).usable_fraction.reason.text().find("not stated"), std::string::npos);
}

TEST(UsableFraction, a_small_gauge_drop_is_refused_with_how_much_more_is_needed) {
    RecordBuilder run;
    run.record().run.end = RunEnd::stopped_by_tester;
    run.at(0, 100, 5000).at(1, 94, 5060);
    const Quantity fraction = analyse_energy(run.record()).usable_fraction;
    EXPECT_EQ(fraction.kind, Kind::not_known);
    EXPECT_FALSE(fraction.value.has_value());
    EXPECT_NE(fraction.reason.text().find("about 10 more would resolve ±5 %"), std::string::npos) << fraction.reason;
}

TEST(UsableFraction, energy_that_may_be_missing_makes_it_at_least_without_an_upper_end) {
    RecordBuilder run;
    run.at(0, 100, 5000).at(4, 75, 5210).at(8, 50, 30).at(12, 25, 240).at(16, 0, 450);
    const Quantity fraction = analyse_energy(run.record()).usable_fraction;
    EXPECT_EQ(fraction.kind, Kind::at_least);
    EXPECT_TRUE(fraction.lower.has_value());
    EXPECT_FALSE(fraction.upper.has_value());
}

TEST(UsableFraction, a_gauge_that_rose_on_the_way_lowers_a_projection_and_leaves_it_one) {
    // 520 of 1000 Wh; the gauge fell 100 -> 60, rose to 75, fell to 45. By its ends 520 / 0.55 = 945 Wh; by its falls, 40 + 30 points, 743 Wh;
    // at least the 520 Wh that were delivered, less 1 %.
    RecordBuilder run;
    run.record().run.end = RunEnd::stopped_by_tester;
    run.at(0, 100, 0).at(2, 80, 130).at(4, 60, 260).at(6, 75, 390).at(8, 45, 520);
    const Quantity fraction = analyse_energy(run.record()).usable_fraction;
    EXPECT_EQ(fraction.kind, Kind::projected);
    EXPECT_NEAR(*fraction.value, 0.52 / 0.70, 1e-9);
    EXPECT_NEAR(*fraction.lower, 0.52, 0.006);
    EXPECT_LT(*fraction.lower, 0.52);
    EXPECT_NEAR(*fraction.upper, 0.52 / 0.55, 0.04);
    EXPECT_NE(fraction.reason.text().find("rose by 15 points"), std::string::npos) << fraction.reason;
    // The same without the rise: the reading at 6 h shows 53 %.
    run.record().readings[3].values.gauge_percent = 53;
    EXPECT_NEAR(*analyse_energy(run.record()).usable_fraction.value, 0.52 / 0.55, 1e-9);
}

TEST(UsableFraction, a_projection_over_an_unbounded_loss_says_no_more_than_was_delivered) {
    // 210 + 240 Wh are in the register, of 1000 Wh; from 100 to 25 % that would be projected to 0.60.
    RecordBuilder run;
    run.record().run.end = RunEnd::stopped_by_tester;
    run.at(0, 100, 5000).at(4, 75, 5210).at(8, 50, 30).at(12, 25, 240);
    const Quantity fraction = analyse_energy(run.record()).usable_fraction;
    EXPECT_EQ(fraction.kind, Kind::at_least);
    EXPECT_NEAR(*fraction.lower, 0.45, 0.006);
    EXPECT_FALSE(fraction.upper);
    EXPECT_NE(fraction.reason.text().find("projected it would be 0.60"), std::string::npos) << fraction.reason;
}

TEST(UsableFraction, what_cannot_be_known_says_why) {
    RecordBuilder no_claim = full_drain();
    no_claim.record().unit.rated_energy_wh.reset();
    EXPECT_NE(analyse_energy(no_claim.record()).usable_fraction.reason.text().find("rated energy"), std::string::npos);
    RecordBuilder charge = full_drain();
    charge.record().run.kind = RunKind::charge;
    EXPECT_EQ(analyse_energy(charge.record()).usable_fraction.kind, Kind::not_known);
    RecordBuilder empty;
    const EnergyAnalysis analysis = analyse_energy(empty.record());
    for (const Quantity* quantity :
         {&analysis.delivered_wh, &analysis.duration_h, &analysis.mean_load_w, &analysis.usable_fraction, &analysis.wh_per_gauge_point}) {
        EXPECT_EQ(quantity->kind, Kind::not_known) << quantity->key;
        EXPECT_FALSE(quantity->reason.empty()) << quantity->key;
    }
}

TEST(UsableFraction, without_an_error_limit_the_value_stands_without_interval) {
    RecordBuilder run = full_drain();
    run.record().meter->limit_percent.reset();
    const Quantity fraction = analyse_energy(run.record()).usable_fraction;
    EXPECT_DOUBLE_EQ(fraction.value.value(), 0.85);
    EXPECT_FALSE(fraction.lower || fraction.upper);
    EXPECT_NE(fraction.reason.text().find("no interval"), std::string::npos);
}

TEST(UsableFraction, energy_missing_in_a_short_gap_is_bounded_from_both_sides) {
    RecordBuilder run; // 80 W; the register read 720 at 9 h and was zeroed unread 12 minutes later
    for (int i = 0; i < 10; ++i) run.at(i, 100 - 10 * i, 80 * i);
    run.at(9.2, {}, 0, MarkKind::meter_zeroed).at(10, 0, 64, MarkKind::cut_off);
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_EQ(energy.delivered_wh.kind, Kind::bracket) << energy.delivered_wh.reason;
    EXPECT_LT(*energy.delivered_wh.lower, 784);
    EXPECT_GT(*energy.delivered_wh.upper, 800) << "the 16 Wh of those minutes";
    EXPECT_LT(*energy.delivered_wh.upper, 784 + 1.3 * 16 + 10);
    EXPECT_EQ(energy.usable_fraction.kind, Kind::bracket);
    EXPECT_EQ(energy.wh_per_gauge_point.kind, Kind::bracket) << "no measured value rests on a register that lost energy";
}

TEST(RunDuration, a_seen_cut_off_is_known_to_the_minute) {
    const Quantity duration = analyse_energy(full_drain().record()).duration_h;
    EXPECT_EQ(duration.kind, Kind::measured);
    EXPECT_DOUBLE_EQ(duration.value.value(), 16);
    EXPECT_LT(duration.half_width().value(), 2.0 / 60);
}

TEST(RunDuration, a_run_found_off_is_a_bracket_narrowed_by_a_steady_load) {
    RecordBuilder run;
    run.record().run.end = RunEnd::found_off;
    run.record().run.end_noticed_within_min.reset();
    run.at(0, 100, 0).at(2, 88, 128).at(4, 76, 256).at(6, 64, 384).at(8, 52, 512).at(14, 0, 640);
    const Quantity steady = analyse_energy(run.record()).duration_h;
    EXPECT_EQ(steady.kind, Kind::bracket);
    // 128 Wh at 64 W after 8 h: cut off at about 10 h, not somewhere in 8 to 14 h.
    EXPECT_NEAR(steady.value.value(), 10, 0.05);
    EXPECT_LT(steady.half_width().value(), 0.1);

    // Over the time with the output on, not over the hours that it was off.
    EXPECT_NEAR(analyse_energy(run.record()).intervals.back().mean_w.value(), 64, 1);

    RecordBuilder varying;
    varying.record().run.end = RunEnd::found_off;
    varying.record().run.end_noticed_within_min.reset();
    varying.at(0, 100, 0).at(2, 88, 60).at(4, 76, 300).at(6, 64, 384).at(8, 52, 512).at(14, 0, 640);
    const Quantity wide = analyse_energy(varying.record()).duration_h;
    EXPECT_NEAR(wide.lower.value(), 8, 0.001);
    EXPECT_NEAR(wide.upper.value(), 14, 0.001);
    EXPECT_FALSE(analyse_energy(varying.record()).intervals.back().mean_w.has_value()) << "the output was off for a part of it";
}

} // namespace
} // namespace ullage
