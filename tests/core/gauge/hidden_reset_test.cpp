// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/gauge_analysis.h"

#include "judged_run.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

using test::find;
using test::judge;
using test::RecordBuilder;

/// 800 Wh at 80 W in 10 h under a linear gauge, read each half hour but not between 2 h and 4.5 h. `register_at` gives the register.
template <typename Register>
RecordBuilder drain_with_gap(Register register_at) {
    RecordBuilder run;
    for (int i = 0; i <= 20; ++i)
        if (i <= 4 || i >= 9) run.at(i * 0.5, 100 - 5 * i, register_at(i * 0.5));
    return run;
}

TEST(HiddenReset, a_register_zeroed_unseen_that_passed_its_old_value_again_is_doubted_and_the_gauge_is_not_accused) {
    RecordBuilder run = drain_with_gap([](double h) { return h <= 2 ? 80 * h : 80 * (h - 2); });
    const GaugeAnalysis analysis = judge(run);
    const Finding* reset = find(analysis, FindingKind::hidden_reset);
    ASSERT_NE(reset, nullptr);
    EXPECT_EQ(reset->weight, Weight::doubt);
    EXPECT_EQ(reset->readings, (std::vector<ReadingId>{ReadingId("r5"), ReadingId("r6")}));
    EXPECT_DOUBLE_EQ(reset->size, 160);
    EXPECT_EQ(reset->sentence, "Between 04:00 and 06:30 the register rose by only 40 Wh while the gauge fell by 25 points, as after some 200 Wh: the "
                               "register may have been zeroed unseen and have passed its old value again, so that 160 Wh or more are missing, or "
                               "the gauge jumped; this run cannot tell which.");
    EXPECT_EQ(analysis.findings.size(), 1u);
    EXPECT_EQ(analysis.verdict, "register perhaps reset (160 Wh)");
}

TEST(HiddenReset, an_honest_register_with_the_same_gap_is_left_in_peace) {
    RecordBuilder run = drain_with_gap([](double h) { return 80 * h; });
    EXPECT_EQ(find(judge(run), FindingKind::hidden_reset), nullptr);
}

TEST(HiddenReset, a_pause_in_the_load_is_explained_by_the_units_own_draw) {
    // 2.5 hours idle: the unit takes 20 W of its own, so that the gauge falls by 5 points where no energy is delivered.
    RecordBuilder run;
    const auto gauge = [](double wh, double h) { return std::round(100 - (wh + 20 * h) / 10); };
    for (int i = 0; i <= 4; ++i) run.at(i * 0.5, gauge(40 * i, i * 0.5), 40 * i);
    for (int i = 0; i <= 11; ++i) run.at(4.5 + i * 0.5, gauge(160 + 40 * i, 4.5 + i * 0.5), 160 + 40 * i);
    EXPECT_EQ(find(judge(run), FindingKind::hidden_reset), nullptr);
}

TEST(HiddenReset, a_gauge_that_jumps_where_the_register_stands_too_high_to_have_been_zeroed_is_accused_itself) {
    // 4000 Wh cannot have flowed in two and a half hours at 1950 W or less.
    RecordBuilder high = drain_with_gap([](double h) { return 5000 + (h <= 2 ? 80 * h : 80 * (h - 2)); });
    EXPECT_EQ(find(judge(high), FindingKind::hidden_reset), nullptr);
    // 300 Wh could have, but the 25 points do not imply that much.
    RecordBuilder low = drain_with_gap([](double h) { return 300 + (h <= 2 ? 80 * h : 80 * (h - 2)); });
    EXPECT_EQ(find(judge(low), FindingKind::hidden_reset), nullptr);
}

TEST(HiddenReset, a_gauge_that_only_catches_up_after_standing_still_speaks_for_no_reset) {
    RecordBuilder run;
    for (int i = 0; i <= 20; ++i) {
        const double h = i * 0.5;
        run.at(h, h > 0 && h < 2.5 ? 100 : 100 - 10 * h, 80 * h);
    }
    const GaugeAnalysis analysis = judge(run);
    EXPECT_EQ(find(analysis, FindingKind::hidden_reset), nullptr);
    EXPECT_NE(find(analysis, FindingKind::held_at_full), nullptr);
    EXPECT_NE(find(analysis, FindingKind::jump), nullptr);
}

TEST(HiddenReset, a_marked_or_a_visible_reset_is_no_hidden_one) {
    RecordBuilder visible = drain_with_gap([](double h) { return h <= 2 ? 80 * h : 80 * (h - 4); });
    EXPECT_EQ(find(judge(visible), FindingKind::hidden_reset), nullptr);
    RecordBuilder marked = drain_with_gap([](double h) { return h <= 2 ? 80 * h : 80 * (h - 2); });
    marked.record().readings[5].values.mark = MarkKind::meter_zeroed;
    EXPECT_EQ(find(judge(marked), FindingKind::hidden_reset), nullptr);
}

} // namespace
} // namespace ullage
