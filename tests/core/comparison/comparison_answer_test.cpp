// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/comparison_answer.h"

#include "base/number.h"
#include "support/has_text.h"
#include "support/scenario.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

std::vector<RunRecord> answered_records() {
    std::vector<RunRecord> records;
    for (const ScenarioRun& run : sample_scenario()) {
        records.push_back(run.simulated.record);
        records.back().unit.uuid = records.back().run.unit_uuid = UnitId(records.back().unit.name);
        records.back().run.uuid = RunId(run.file_name);
    }
    return records;
}

/// One row for each of so many units: all that an answer goes by.
Comparison made_rows(const std::vector<std::pair<std::string, double>>& fractions, double load_w = 100) {
    Comparison comparison;
    for (const auto& [name, fraction] : fractions) {
        ComparisonRow row;
        row.unit.name = name;
        row.unit.uuid = UnitId(row.unit.name);
        row.unit.rated_energy_wh = 1000;
        row.usable_fraction = known("usable_fraction", "1", fraction, 0.001, Kind::measured);
        row.delivered_wh = known("delivered_wh", "Wh", 1000 * fraction, 1.0, Kind::measured);
        row.mean_load_w = known("mean_load_w", "W", load_w, std::nullopt, Kind::measured);
        row.gauge_verdict = "no fault found, within 3 pt";
        row.fit = comparison.fits.size();
        comparison.fits.emplace_back();
        comparison.rows.push_back(std::move(row));
    }
    return comparison;
}

TEST(ComparisonAnswer, each_unit_has_a_sentence_with_its_share_its_load_and_its_gauge) {
    Comparison comparison = made_rows({{"Alder", 0.752}, {"Birch", 0.9}});
    comparison.rows[0].gauge_verdict = "sticks (17 pt)";
    comparison.rows[0].worst_gauge_error_pt = 14.2;
    comparison.rows[1].worst_gauge_error_pt = 2.1;
    const ComparisonAnswer answer = comparison_answer(comparison, compare_at(comparison, std::nullopt));
    ASSERT_EQ(answer.units.size(), 2u);
    EXPECT_EQ(answer.units[0], "Birch gives 90 % of its label at 100 W; its gauge stays within 3 points.") << "the largest share first";
    EXPECT_EQ(answer.units[1], "Alder gives 75 % of its label at 100 W; its gauge is up to 14 points off.");
}

TEST(ComparisonAnswer, limits_brackets_and_gaps_are_said_as_such) {
    Comparison comparison = made_rows({{"Alder", 0.7}, {"Birch", 0.6}, {"Cedar", 0.5}});
    comparison.rows[0].usable_fraction = Quantity{"usable_fraction", "1", {}, 0.62, {}, Kind::at_least, {}};
    comparison.rows[1].usable_fraction = Quantity{"usable_fraction", "1", {}, 0.6, 0.7, Kind::bracket, {}};
    comparison.rows[2].usable_fraction = not_known("usable_fraction", "1", "the register was not read");
    std::string all;
    for (const Message& sentence : comparison_answer(comparison, compare_at(comparison, std::nullopt)).units) all += sentence.text() + '\n';
    EXPECT_TRUE(contains(all, "Alder gives at least 62 % of its label")) << all;
    EXPECT_TRUE(contains(all, "Birch gives 60 to 70 % of its label")) << all;
    EXPECT_TRUE(contains(all, "How much of its label Cedar gives is not known: the register was not read;")) << all;
}

TEST(ComparisonAnswer, as_tested_at_unlike_loads_there_is_a_caution_and_a_load_to_compare_at) {
    const Comparison comparison = compare_as_tested(answered_records());
    const ComparisonAnswer answer = comparison_answer(comparison, compare_at(comparison, std::nullopt));
    EXPECT_FALSE(answer.has_order);
    EXPECT_TRUE(contains(answer.order, "As tested there is no order")) << answer.order;
    const auto load = suggested_load(comparison);
    ASSERT_TRUE(load);
    EXPECT_TRUE(contains(answer.order, "such as " + common_load_text(*load))) << answer.order;
}

TEST(ComparisonAnswer, at_one_load_the_order_goes_by_the_ranks_and_names_who_is_not_told_apart) {
    const Comparison comparison = compare_as_tested(answered_records());
    const FairComparison fair = compare_at(comparison, suggested_load(comparison));
    const ComparisonAnswer answer = comparison_answer(comparison, fair);
    EXPECT_TRUE(answer.has_order);
    const auto ranks = fair_ranks(comparison, fair);
    std::size_t tied = 0;
    for (std::size_t row = 0; row < ranks.size(); ++row) {
        if (!ranks[row].value) continue;
        EXPECT_TRUE(contains(answer.order, comparison.rows[row].unit.name)) << answer.order;
        tied += std::ranges::count(ranks, ranks[row].value, &Quantity::value) > 1;
    }
    EXPECT_EQ(contains(answer.order, "not tell"), tied > 0) << answer.order;
    EXPECT_EQ(answer.units.size(), comparison.rows.size());
}

TEST(ComparisonAnswer, units_that_nothing_tells_apart_are_not_ordered_and_clear_ones_are) {
    const auto order_of = [](const Comparison& comparison) {
        FairComparison fair = compare_at(comparison, std::nullopt);
        return comparison_answer(comparison, fair).order;
    };
    const std::vector<RunRecord> records = answered_records();
    Comparison sample = compare_as_tested(records);
    for (ComparisonRow& row : sample.rows) row.mean_load_w = sample.rows.front().mean_load_w; // as if alike
    Comparison equal = sample;
    equal.rows.resize(2);
    for (ComparisonRow& row : equal.rows) {
        row.usable_fraction = equal.rows.front().usable_fraction;
        row.delivered_wh = equal.rows.front().delivered_wh;
        row.mean = equal.rows.front().mean;
        row.unit.rated_energy_wh = equal.rows.front().unit.rated_energy_wh;
    }
    EXPECT_TRUE(contains(order_of(equal), "none of them may be called better")) << order_of(equal);
}

TEST(ComparisonAnswer, of_single_drains_there_is_neither_order_nor_a_sentence_for_each) {
    const Comparison comparison = compare_as_tested(answered_records(), CompareRows::every_drain);
    const ComparisonAnswer answer = comparison_answer(comparison, compare_at(comparison, std::nullopt));
    EXPECT_FALSE(answer.has_order);
    EXPECT_TRUE(answer.units.empty());
    EXPECT_TRUE(contains(answer.order, "Each drain stands for itself")) << answer.order;
}

TEST(ComparisonAnswer, a_fit_is_not_credited_to_one_run) {
    const Comparison comparison = compare_as_tested(answered_records());
    const FairComparison fair = compare_at(comparison, suggested_load(comparison));
    bool moved = false;
    for (std::size_t row = 0; row < fair.rows.size(); ++row) {
        const std::string basis = based_on_text(comparison, fair, row);
        if (fair.rows[row].standing != Standing::moved) continue;
        moved = true;
        EXPECT_EQ(basis, count_text(static_cast<long>(comparison.fits[comparison.rows[row].fit].used_drains), "drain", "drains together"));
    }
    EXPECT_TRUE(moved);
    EXPECT_EQ(based_on_text(comparison, compare_at(comparison, std::nullopt), 0), comparison.rows[0].run_title);
}

TEST(SuggestedLoad, lies_where_most_units_stand_and_is_absent_where_none_is_needed) {
    const Comparison comparison = compare_as_tested(answered_records());
    const auto load = suggested_load(comparison);
    ASSERT_TRUE(load);
    const auto standing = [&comparison](double load_w) {
        const FairComparison fair = compare_at(comparison, CommonLoad{load_w, 1, {}});
        return std::ranges::count_if(fair.rows, [](const FairRow& row) { return row.standing != Standing::as_tested && !row.far_beyond; });
    };
    for (const double other_w : {20.0, 64.0, 120.0, 240.0, 500.0}) EXPECT_GE(standing(load->power_w), standing(other_w)) << other_w;
    EXPECT_FALSE(suggested_load(made_rows({{"Alder", 0.7}, {"Birch", 0.6}}))) << "at like loads nothing need be moved";
}

} // namespace
} // namespace ullage::test
