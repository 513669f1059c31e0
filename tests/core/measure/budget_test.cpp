// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/budget.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>

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
    ASSERT_EQ(budget.lines.size(), 2u);
    EXPECT_NEAR(budget.lines[1].standard_wh, std::sqrt(2.0 / 6.0), 1e-9);
}

TEST(Budget, without_the_gain_limit_there_is_no_interval_and_the_reason_is_said) {
    RunRecord record = worked_example();
    record.meter->limit_percent.reset();
    const Budget budget = energy_budget(record, unwrap_register(record), 1000);
    EXPECT_FALSE(budget.half_width_wh.has_value());
    EXPECT_NE(budget.half_width_method.find("error limit"), std::string::npos);
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

} // namespace
} // namespace ullage
