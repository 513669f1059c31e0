// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/budget.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage {
namespace {

using test::RecordBuilder;

RegisterStep step_of(std::initializer_list<double> registers) {
    RecordBuilder run;
    run.record().meter->step_wh.reset();
    double hours = 0;
    for (const double wh : registers) run.at(hours++, {}, wh);
    return register_step(run.record());
}

TEST(RegisterStep, all_readings_being_multiples_shows_a_coarse_register) {
    EXPECT_EQ(step_of({0, 30, 70, 110, 160, 230}).wh, 10);
    EXPECT_TRUE(step_of({0, 30, 70, 110, 160, 230}).found);
    EXPECT_EQ(step_of({0, 40, 60, 120, 180, 260, 300, 340}).wh, 20);
    EXPECT_EQ(step_of({0, 15, 40, 65, 85}).wh, 5);
    EXPECT_NEAR(step_of({0, 1.5, 4, 6.5, 8.5, 11, 13.5}).wh, 0.5, 1e-12);
    EXPECT_EQ(step_of({0, 300, 700, 1100, 1600}).wh, 100);
}

TEST(RegisterStep, what_may_be_chance_shows_nothing) {
    EXPECT_EQ(step_of({5000, 6000}).wh, 1) << "two readings are too few";
    EXPECT_FALSE(step_of({5000, 6000}).found);
    EXPECT_EQ(step_of({0, 100, 300, 700}).wh, 10) << "three readings: the hundred may be chance or choice";
    EXPECT_EQ(step_of({0, 12, 24, 38, 46, 58}).wh, 1) << "five even numbers in a row come about in one of 32 runs";
    EXPECT_EQ(step_of({0, 12, 24, 38, 46, 58, 64, 82}).wh, 2);
    EXPECT_EQ(step_of({0, 30, 70, 110, 160, 233}).wh, 1);
    EXPECT_EQ(step_of({0, 20, 20, 20, 20}).wh, 1) << "one value says one thing, however often it is read";
}

TEST(RegisterStep, a_stated_step_is_taken_as_stated) {
    RecordBuilder run;
    run.record().meter->step_wh = 1;
    for (int i = 0; i < 9; ++i) run.at(i, {}, 10 * i);
    EXPECT_EQ(register_step(run.record()).wh, 1);
    EXPECT_TRUE(register_step(run.record()).stated);
}

TEST(RegisterStep, every_step_of_a_meter_is_found) {
    for (const double true_wh : {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0}) {
        RecordBuilder run;
        run.record().meter->step_wh.reset();
        for (int i = 0; i < 16; ++i) run.at(i, {}, true_wh * std::floor(83.7 * i / true_wh));
        EXPECT_NEAR(register_step(run.record()).wh, true_wh, 1e-9);
    }
}

TEST(RegisterStep, the_budget_takes_the_step_that_was_found_and_says_so) {
    RecordBuilder run;
    run.record().meter->step_wh.reset();
    run.at(0, 100, 10).at(1, 80, 60).at(2, 60, 110).at(3, 40, 170).at(4, 20, 230);
    const Budget budget = energy_budget(run.record(), unwrap_register(run.record()), 220);
    ASSERT_EQ(budget.lines.size(), 2u);
    EXPECT_EQ(budget.lines[1].source, "register step 10 Wh (found from the readings), two readings");
    EXPECT_NEAR(budget.lines[1].standard_wh, 10 / std::sqrt(6.0), 1e-9);
}

} // namespace
} // namespace ullage
