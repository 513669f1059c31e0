// SPDX-License-Identifier: GPL-3.0-or-later
#include "claims/decision_rule.h"

#include "numerics/distributions.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

Quantity interval(double value, double half) { return known("x", "Wh", value, half, Kind::measured); }

double share_below(double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); }

TEST(DecisionRule, holds_only_where_the_whole_interval_lies_on_the_good_side) {
    EXPECT_EQ(decide_at_least(interval(1010, 9), 1000), Decision::holds);
    EXPECT_EQ(decide_at_least(interval(1010, 12), 1000), Decision::not_decided) << "a worse meter never makes it easier";
    EXPECT_EQ(decide_at_least(interval(990, 9), 1000), Decision::does_not_hold);
    EXPECT_EQ(decide_at_most(interval(2.0, 0.1), 2.2), Decision::holds);
    EXPECT_EQ(decide_at_most(interval(2.15, 0.1), 2.2), Decision::not_decided);
    EXPECT_EQ(decide_at_most(interval(2.4, 0.1), 2.2), Decision::does_not_hold);
}

TEST(DecisionRule, without_an_interval_nothing_is_decided_and_at_least_can_only_hold) {
    EXPECT_EQ(decide_at_least(known("x", "Wh", 2000, std::nullopt, Kind::measured), 1000), Decision::not_decided);
    Quantity at_least = known("x", "Wh", 900, std::nullopt, Kind::at_least);
    at_least.lower = 890;
    EXPECT_EQ(decide_at_least(at_least, 880), Decision::holds);
    EXPECT_EQ(decide_at_least(at_least, 1000), Decision::not_decided);
}

// JCGM 106:2012, 7.2.2, example (from memory): a Zener diode of -5.47 V, u = 0.05 V, against an upper limit of -5.40 V conforms with probability
// Phi(1.40) = 0.92. Not enough for guarded acceptance at 95 %.
TEST(DecisionRule, the_zener_diode_of_jcgm_106_conforms_with_092_and_is_not_decided) {
    const double value_v = -5.47, u_v = 0.05, limit_v = -5.40;
    EXPECT_NEAR(share_below((limit_v - value_v) / u_v), 0.92, 0.005);
    EXPECT_EQ(decide_at_most(interval(value_v, normal_quantile(0.975) * u_v), limit_v), Decision::not_decided);
}

// JCGM 106:2012, 8.3.2 (from memory): a guard band of w = U = 2u leaves a probability of conformity of at least 97.7 % at the acceptance limit; with
// the 95 % interval of 1.96 u it is 97.5 %.
TEST(DecisionRule, what_it_accepts_conforms_with_at_least_975_permille) {
    const double u = 3, limit = 100;
    const double barely = limit + normal_quantile(0.975) * u;
    EXPECT_EQ(decide_at_least(interval(barely + 1e-9, normal_quantile(0.975) * u), limit), Decision::holds);
    EXPECT_NEAR(share_below((barely - limit) / u), 0.975, 1e-9);
    EXPECT_NEAR(share_below(2.0), 0.977, 0.0005);
}

// JCGM 106:2012, 8.2: the value alone decides; what has no upper end, or nothing said between two limits, still needs its ends.
TEST(DecisionRule, simple_acceptance_lets_the_value_decide_where_a_logbook_asks_for_it) {
    MeasureOptions simple;
    simple.simple_acceptance = true;
    EXPECT_EQ(decide_at_least(interval(1010, 12), 1000, simple), Decision::holds);
    EXPECT_EQ(decide_at_least(interval(990, 12), 1000, simple), Decision::does_not_hold);
    EXPECT_EQ(decide_at_most(interval(2.15, 0.1), 2.2, simple), Decision::holds);
    Quantity bracket = interval(1010, 50);
    bracket.kind = Kind::bracket;
    EXPECT_EQ(decide_at_least(bracket, 1000, simple), Decision::not_decided);
    EXPECT_NE(decision_rule_text(simple), decision_rule_text());
}

} // namespace
} // namespace ullage::test
