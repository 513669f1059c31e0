// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/loss_split.h"

#include "base/number.h"
#include "core/unit/between_runs_samples.h"
#include "support/has_text.h"
#include "unit/unit_analysis.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

LossSplit split_of(const RunRecord& record, const UnitFit& fit) { return split_losses(record, analyse_run(record), fit); }

TEST(LossSplit, parts_add_up_to_the_rated_energy_and_cover_the_simulations_truth) {
    // Seen from the socket: p0/a = 12/1.12 W; the truth of the rest follows from the rated and the delivered energy.
    const double draw_w = specimen.no_load_draw_w();
    int covered = 0, tried = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const std::vector<RunRecord> records = simulate_loads({40, 300}, seed);
        const UnitFit fit = fit_unit(records);
        for (const RunRecord& record : records) {
            const RunAnalysis analysis = analyse_run(record);
            const LossSplit split = split_losses(record, analysis, fit);
            ASSERT_TRUE(split.rest_wh.value) << split.sentence;
            EXPECT_NEAR(*analysis.energy.delivered_wh.value + *split.no_load_taken_wh.value + *split.rest_wh.value, 1050, 1e-9);
            EXPECT_NEAR(*split.no_load_taken_wh.value, *fit.no_load_draw_w.value * *analysis.energy.duration_h.value, 1e-9);
            EXPECT_FALSE(split.draw_from_this_run);
            ++tried;
            if (covers(split.no_load_taken_wh, draw_w * *analysis.energy.duration_h.value)) ++covered;
        }
    }
    // 95 % intervals of 20 draws, each held against two runs: 16 of 20 would be reached by chance alone in all but 0.3 % of such sets.
    EXPECT_GE(covered, tried * 8 / 10);
}

TEST(LossSplit, an_output_that_had_tripped_takes_no_draw_and_the_sentence_counts_the_hours_with_it_on) {
    std::vector<RunRecord> records = simulate_loads({40, 300}, 2);
    auto& readings = records[0].readings;
    readings[4].values.mark = MarkKind::output_tripped;
    readings[5].values.mark = MarkKind::output_reset;
    const UnitFit fit = fit_unit(records);
    const LossSplit split = split_of(records[0], fit);
    ASSERT_TRUE(split.no_load_taken_wh.value) << split.sentence;
    EXPECT_NEAR(*split.no_load_taken_wh.value, *fit.no_load_draw_w.value * fit.drains[0].hours, 1e-3);
    EXPECT_TRUE(contains(split.sentence, "no-load draw over " + fixed_text(fit.drains[0].hours, 1) + " h")) << split.sentence;
    const double off_h = hours_between(readings[4].values.time_ms, readings[5].values.time_ms);
    EXPECT_GT(off_h, 1);
    EXPECT_NEAR(*analyse_run(records[0]).energy.duration_h.value, fit.drains[0].hours + off_h, 1e-3);
}

TEST(LossSplit, a_unit_with_one_steady_drain_says_that_the_draw_is_not_known_and_why) {
    const std::vector<RunRecord> records = simulate_loads({100}, 3);
    const UnitFit fit = fit_unit(records);
    const LossSplit split = split_of(records[0], fit);
    EXPECT_TRUE(split.undelivered_wh.value);
    EXPECT_FALSE(split.no_load_taken_wh.value);
    EXPECT_EQ(split.rest_wh.kind, Kind::not_known);
    EXPECT_TRUE(contains(split.sentence, "the no-load draw is not known (there is one drain only")) << split.sentence;
}

TEST(LossSplit, without_other_drains_the_runs_own_draw_serves_and_the_sentence_says_if) {
    const std::vector<RunRecord> records = simulate_loads({100}, 3);
    RunAnalysis analysis = analyse_run(records[0]);
    analysis.gauge.losses.no_load_draw_w = known("no_load_draw_w", "W", 10, 2.0, Kind::measured);
    const LossSplit split = split_losses(records[0], analysis, fit_unit(records));
    EXPECT_TRUE(split.draw_from_this_run);
    EXPECT_NEAR(split.no_load_taken_wh.value.value(), 10 * analysis.energy.duration_h.value.value(), 1e-9);
    EXPECT_NEAR(split.no_load_taken_wh.lower.value(), 8 * analysis.energy.duration_h.lower.value(), 1e-9);
    EXPECT_TRUE(contains(split.sentence, "if the gauge is linear")) << split.sentence;
}

TEST(LossSplit, the_interval_of_the_rest_is_as_wide_as_both_parts_together) {
    const std::vector<RunRecord> records = simulate_loads({40, 300}, 5);
    const LossSplit split = split_of(records[0], fit_unit(records));
    EXPECT_NEAR(split.rest_wh.half_width().value(), split.undelivered_wh.half_width().value() + split.no_load_taken_wh.half_width().value(), 1e-9);
}

TEST(LossSplit, a_unit_that_holds_more_than_its_label_is_not_given_a_negative_loss) {
    std::vector<RunRecord> records = simulate_loads({40, 300}, 7);
    for (RunRecord& record : records) record.unit.rated_energy_wh = 600;
    const LossSplit split = split_of(records[0], fit_unit(records));
    EXPECT_LT(split.rest_wh.value.value(), 0);
    EXPECT_TRUE(contains(split.sentence, "more than rated")) << split.sentence;
}

TEST(LossSplit, what_is_missing_is_named) {
    const std::vector<RunRecord> records = simulate_loads({40, 300}, 9);
    const UnitFit fit = fit_unit(records);
    RunRecord stopped = records[0], unrated = records[0], charge = records[0], unstated = records[0];
    stopped.run.end = RunEnd::stopped_by_tester;
    unrated.unit.rated_energy_wh.reset();
    charge.run.kind = RunKind::charge;
    unstated.run.started_full.reset();
    const std::pair<RunRecord, const char*> cases[] = {{stopped, "did not go to cut-off"},
                                                       {unrated, "rated energy of the unit is not stated"},
                                                       {charge, "a charge run does not tell it"},
                                                       {unstated, "started full"}};
    for (const auto& [record, words] : cases) {
        const LossSplit split = split_of(record, fit);
        EXPECT_EQ(split.rest_wh.kind, Kind::not_known);
        EXPECT_TRUE(contains(split.sentence, "is not known: ")) << split.sentence;
        EXPECT_TRUE(contains(split.sentence, words)) << split.sentence;
    }
}

TEST(UnitAnalysis, round_loads_are_up_to_five_within_the_rated_output) {
    Unit unit = specimen_claims();
    EXPECT_EQ(round_loads({}, unit), (std::vector<double>{10, 50, 100, 500, 1000}));
    unit.rated_output_w = 60;
    EXPECT_EQ(round_loads({}, unit), (std::vector<double>{10, 20, 50}));
    unit.rated_output_w = 5;
    EXPECT_TRUE(round_loads({}, unit).empty());
    unit.rated_output_w.reset();
    EXPECT_EQ(round_loads({}, unit).back(), 200);
}

TEST(UnitAnalysis, runs_of_several_units_become_one_analysis_each_in_their_order) {
    std::vector<RunRecord> records = simulate_loads({40, 300}, 11);
    RunRecord other = records[0];
    other.unit.uuid = other.run.unit_uuid = UnitId("other");
    records.insert(records.begin() + 1, other);
    const std::vector<UnitAnalysis> analyses = analyse_units(records);
    ASSERT_EQ(analyses.size(), 2u);
    EXPECT_EQ(analyses[0].fit.used_drains, 2u);
    EXPECT_EQ(analyses[1].unit.uuid, UnitId("other"));
    EXPECT_EQ(analyses[1].fit.used_drains, 1u);
    EXPECT_FALSE(analyses[1].predictions.empty());
    EXPECT_EQ(analyses[1].predictions[0].deliverable_wh.kind, Kind::not_known);
}

TEST(UnitAnalysis, the_next_run_is_said_with_load_time_and_gain) {
    UnitFit fit;
    fit.used_drains = 2;
    EXPECT_EQ(next_run_sentence(fit, NextRun{310, 3.1, 1.84}), "A drain near 310 W (about 3.1 h) would narrow this most, by a factor of 1.8.");
    EXPECT_EQ(next_run_sentence(fit, std::nullopt), "No single further drain would narrow this by much.");
    fit.used_drains = 0;
    EXPECT_TRUE(contains(next_run_sentence(fit, std::nullopt), "first"));
}

} // namespace
} // namespace ullage::test
