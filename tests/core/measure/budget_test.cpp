// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/budget.h"

#include "numerics/monte_carlo.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <span>
#include <vector>

namespace ullage {
namespace {

using test::RecordBuilder;

/// 1000 Wh by a ±1 % meter with a register step of 10 Wh: the worked budget of the reference sheet 02, 2.8 (constructed
/// there from JCGM 100:2008, 4.3.7 and F.2.2.1; the arithmetic is exact).
RunRecord worked_example() {
    RecordBuilder run;
    run.record().meter->step_wh = 10;
    run.at(0, 100, 5000).at(4, 50, 5500).at(8, 0, 6000);
    return run.record();
}

TEST(Budget, the_worked_register_budget_is_met_to_nine_digits) {
    const RunRecord record = worked_example();
    const Budget budget = energy_budget(record, unwrap_register(record), 1000);
    ASSERT_EQ(budget.lines.size(), 2u);
    EXPECT_NEAR(budget.lines[0].standard_wh, 5.773502692, 1e-9);
    EXPECT_NEAR(budget.lines[1].standard_wh, 4.082482905, 1e-9);
    EXPECT_NEAR(budget.combined_standard_wh, 7.071067812, 1e-9);
    EXPECT_NEAR(budget.lines[0].share + budget.lines[1].share, 1, 1e-12);
}

TEST(Budget, a_dominant_gain_limit_gives_095_of_the_limit_not_two_standard_uncertainties) {
    RecordBuilder run;
    run.record().meter->step_wh = 0.01;
    run.at(0, 100, 5000).at(8, 0, 6000);
    const Budget budget = energy_budget(run.record(), unwrap_register(run.record()), 1000);
    EXPECT_NEAR(budget.half_width_wh.value(), 9.5, 0.01);
}

TEST(Budget, a_register_zeroed_at_the_start_counts_truncation_in) {
    RecordBuilder run;
    run.record().meter->step_wh = 10;
    run.at(0, 100, 0).at(8, 0, 1000);
    const Budget budget = energy_budget(run.record(), unwrap_register(run.record()), 1000);
    ASSERT_EQ(budget.lines.size(), 2u);
    EXPECT_NEAR(budget.lines[1].standard_wh, 10 / std::sqrt(3.0), 1e-9);
}

TEST(Budget, each_further_stretch_adds_its_two_readings) {
    RecordBuilder run;
    run.at(0, 100, 500).at(1, 93, 564).at(1.01, {}, 91234, MarkKind::meter_swapped).at(2, 87, 91297);
    const Budget budget = energy_budget(run.record(), unwrap_register(run.record()), 127);
    ASSERT_EQ(budget.lines.size(), 3u) << "gain, steps, and the gap before the new meter";
    EXPECT_NEAR(budget.lines[1].standard_wh, std::sqrt(2.0 / 6.0), 1e-9);
}

TEST(Budget, a_meter_zeroed_a_minute_after_its_last_reading_pays_for_that_minute) {
    RecordBuilder run;
    for (int i = 0; i <= 4; ++i) run.at(i, 100 - 7 * i, 500 + 60 * i);
    run.at(4 + 1.0 / 60, {}, 0, MarkKind::meter_zeroed);
    for (int i = 5; i <= 8; ++i) run.at(i, 100 - 7 * i, 60 * (i - 4) - 1);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_FALSE(track.energy_may_be_missing);
    ASSERT_EQ(track.short_gaps.size(), 1u);
    // 60 W for the minute and the doubt of a minute: 0 to 2 Wh; root mean square about 0 2/sqrt(3).
    EXPECT_NEAR(track.short_gaps[0].most_wh, 2, 1e-6);
    const Budget budget = energy_budget(run.record(), track, track.total_wh());
    ASSERT_EQ(budget.lines.size(), 4u);
    EXPECT_EQ(budget.lines[3].shape, "rectangular, one-sided");
    EXPECT_NEAR(budget.lines[3].standard_wh, 2 / std::sqrt(3.0), 1e-6);
    const double steps_wh = std::sqrt(1.0 / 6 + 1.0 / 3), gain_wh = 0.01 * track.total_wh();
    EXPECT_NEAR(*budget.half_width_wh, 1 + half_width_of_sum(gain_wh, std::hypot(steps_wh, 2 / std::sqrt(12.0))), 1e-9);
}

TEST(Budget, a_minute_between_the_last_register_reading_and_the_end_is_paid_for_and_a_register_read_at_the_end_costs_nothing) {
    RecordBuilder read;
    for (int i = 0; i <= 8; ++i) read.at(i, 100 - 12 * i, 500 + 90 * i);
    const Budget whole = energy_budget(read.record(), unwrap_register(read.record()), 720);
    EXPECT_EQ(whole.unread_mean_wh, 0);
    RecordBuilder not_read = read;
    not_read.at(8 + 1.0 / 60, 3, {}, MarkKind::cut_off);
    const RegisterTrack track = unwrap_register(not_read.record());
    const Budget gap = energy_budget(not_read.record(), track, 720);
    EXPECT_FALSE(track.energy_may_be_missing);
    EXPECT_NEAR(gap.unread_mean_wh, 1.5, 1e-6); // half of 90 W for two minutes
    EXPECT_GT(*gap.half_width_wh, *whole.half_width_wh + 1.5);
    EXPECT_NE(gap.half_width_method.text().find("1.5 Wh for what may have flowed"), std::string::npos) << gap.half_width_method;
}

TEST(Budget, of_several_short_gaps_the_means_add_up_and_the_scatter_adds_in_squares) {
    RecordBuilder run;
    run.at(0, 100, {}, MarkKind::load_changed).at(0, 100, 500);
    for (int i = 1; i <= 8; ++i) run.at(i, 100 - 7 * i, 500 + 60 * i);
    run.at(8, {}, {}, MarkKind::cut_off);
    const Budget budget = energy_budget(run.record(), unwrap_register(run.record()), 480);
    // Two rows noted in the minute of a register reading: a minute of 60 W each.
    EXPECT_NEAR(budget.unread_mean_wh, 1, 1e-6);
    EXPECT_NEAR(budget.lines.back().standard_wh, std::sqrt(1 + 2.0 / 12), 1e-6);
    EXPECT_EQ(budget.lines.back().source, "2 short gaps without register (0 min), up to 2.0 Wh");
}

TEST(Budget, a_run_without_load_loses_nothing_in_a_gap) {
    RecordBuilder run;
    run.at(0, 100, 500).at(4, 80, 500).at(4.01, 80, 0, MarkKind::meter_zeroed).at(8, 60, 0);
    EXPECT_EQ(energy_budget(run.record(), unwrap_register(run.record()), 0).unread_mean_wh, 0);
}

TEST(Budget, without_the_gain_limit_there_is_no_interval_and_the_reason_is_said) {
    RunRecord record = worked_example();
    record.meter->limit_percent.reset();
    const Budget budget = energy_budget(record, unwrap_register(record), 1000);
    EXPECT_FALSE(budget.half_width_wh.has_value());
    EXPECT_NE(budget.half_width_method.text().find("error limit"), std::string::npos);
    record.meter.reset();
    EXPECT_FALSE(energy_budget(record, unwrap_register(record), 1000).half_width_wh.has_value());
}

TEST(Budget, an_unstated_step_is_taken_from_the_finest_decimal_noted) {
    RecordBuilder run;
    run.record().meter->step_wh.reset();
    run.at(0, 100, 5000.25).at(8, 0, 6000.5);
    EXPECT_DOUBLE_EQ(register_step_wh(run.record()), 0.01);
    RecordBuilder whole;
    whole.record().meter->step_wh.reset();
    whole.at(0, 100, 5000).at(8, 0, 6000);
    EXPECT_DOUBLE_EQ(register_step_wh(whole.record()), 1);
}

// JCGM 101:2008, 8 (from memory): a closed form is validated where both ends of its interval differ from those of the adaptive Monte Carlo
// procedure by no more than the procedure's numerical tolerance delta, half a unit of the second digit of u (7.9.2).
struct DrawnBudget {
    const char* name;
    double gain_half_width_wh;
    double step_wh;    ///< two readings of the register, each within half of it
    double pairing_wh; ///< normal
};

constexpr DrawnBudget drawn_budgets[] = {
    {"gain dominates", 10, 1, 0}, {"register dominates", 0.5, 10, 0}, {"mixed", 10, 10, 0},
    {"with pairing", 8, 5, 2},    {"pairing dominates", 1, 1, 6},     {"gain alone", 9, 0, 0},
};

double independent_wh(const DrawnBudget& budget) { return std::hypot(budget.step_wh / std::sqrt(6.0), budget.pairing_wh); }

double sum_of(std::span<const double> values) { return std::accumulate(values.begin(), values.end(), 0.0); }

double tolerance_of(double u) { return std::pow(10.0, std::floor(std::log10(u)) - 1) / 2; }

TEST(Budget, the_closed_form_agrees_with_the_adaptive_monte_carlo_procedure_within_its_tolerance) {
    for (const DrawnBudget& budget : drawn_budgets) {
        const double closed = half_width_of_sum(budget.gain_half_width_wh, independent_wh(budget));
        const std::vector<Input> inputs{{Shape::rectangular, budget.gain_half_width_wh}, {Shape::normal, independent_wh(budget)}};
        const Propagation drawn = propagate(inputs, sum_of, 20271);
        ASSERT_TRUE(drawn.stable) << budget.name;
        const double delta = tolerance_of(drawn.standard_deviation);
        EXPECT_NEAR(drawn.upper, closed, delta) << budget.name;
        EXPECT_NEAR(drawn.lower, -closed, delta) << budget.name;
        EXPECT_NEAR(drawn.standard_deviation, std::hypot(budget.gain_half_width_wh / std::sqrt(3.0), independent_wh(budget)), delta) << budget.name;
    }
}

TEST(Budget, taking_two_rounded_register_readings_as_normal_widens_by_at_most_three_percent_and_narrows_by_at_most_half_a_percent) {
    // Two rectangular readings make a triangle, whose 95 % half-width is q (1 - sqrt(0.05)) = 0.776 q; taken as normal 1.96 q/sqrt(6) = 0.800 q.
    const double too_wide = 1.959964 / std::sqrt(6.0) / (1 - std::sqrt(0.05));
    EXPECT_NEAR(too_wide, 1.0306, 0.0001);
    for (const DrawnBudget& budget : drawn_budgets) {
        const double closed = half_width_of_sum(budget.gain_half_width_wh, independent_wh(budget));
        const std::vector<Input> inputs{{Shape::rectangular, budget.gain_half_width_wh},
                                        {Shape::rectangular, budget.step_wh / 2},
                                        {Shape::rectangular, budget.step_wh / 2},
                                        {Shape::normal, budget.pairing_wh}};
        const Propagation drawn = propagate(inputs, sum_of, 20271);
        ASSERT_TRUE(drawn.stable) << budget.name;
        const double delta = tolerance_of(drawn.standard_deviation);
        for (const double end : {drawn.upper, -drawn.lower}) {
            EXPECT_GE(closed, 0.995 * end - delta) << budget.name; // "mixed": 13.22 of 13.27 Wh
            EXPECT_LE(closed, too_wide * end + delta) << budget.name;
        }
    }
}

} // namespace
} // namespace ullage
