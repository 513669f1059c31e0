// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/comparison_columns.h"

#include "formats/results/comparison_table.h"
#include "support/scenario.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

using Keys = std::vector<std::string>;

Comparison columns_sample(CompareRows rows = CompareRows::one_per_unit) {
    std::vector<RunRecord> records;
    for (const ScenarioRun& run : sample_scenario()) {
        records.push_back(run.simulated.record);
        records.back().unit.uuid = records.back().run.unit_uuid = UnitId(records.back().unit.name);
    }
    return compare_as_tested(records, rows);
}

TEST(ComparisonColumns, those_for_readers_are_nine_and_none_is_the_testers_own_affair) {
    const Keys readers = ready_columns(readers_set).value();
    EXPECT_EQ(readers.size(), 9u);
    for (const ColumnName& column : comparison_columns()) EXPECT_FALSE(column.own && std::ranges::count(readers, column.key) > 0) << column.key;
    EXPECT_FALSE(ready_columns("no such set"));
}

TEST(ComparisonColumns, the_spreadsheet_has_all_but_those_in_which_nothing_stands) {
    const Table table = comparison_table(columns_sample());
    const Keys all = columns_for(table, *ready_columns(spreadsheet_set));
    for (std::size_t c = 0; c < table.columns.size(); ++c)
        EXPECT_NE(std::ranges::count(all, table.columns[c].key) > 0, is_unused(table, c)) << table.columns[c].key;
}

TEST(ComparisonColumns, at_one_load_the_figures_there_stand_for_those_as_tested_and_back) {
    const Comparison comparison = columns_sample();
    const Table tested = comparison_table(comparison), at_load = comparison_table(comparison, compare_at(comparison, CommonLoad{120, 1, {}}));
    const Keys wanted{"unit", "usable_fraction", "duration_h", "gauge_verdict"};
    EXPECT_EQ(columns_for(tested, wanted), wanted);
    const Keys there{"unit", "usable_fraction_at_load", "run_time_h", "gauge_verdict"};
    EXPECT_EQ(columns_for(at_load, wanted), there);
    EXPECT_EQ(columns_for(tested, there), wanted);
    EXPECT_EQ(columns_for(at_load, {"usable_fraction", "usable_fraction_at_load"}), (Keys{"usable_fraction", "usable_fraction_at_load"}));
}

TEST(ComparisonColumns, rows_that_a_name_does_not_tell_apart_bring_their_run) {
    const Table drains = comparison_table(columns_sample(CompareRows::every_drain));
    EXPECT_EQ(columns_for(drains, {"unit", "rated_wh"}), (Keys{"unit", "run", "rated_wh"}));
    EXPECT_EQ(columns_for(comparison_table(columns_sample()), {"unit", "rated_wh", "gone"}), (Keys{"unit", "rated_wh"}));
}

TEST(ComparisonColumns, keys_are_kept_as_text_and_what_is_none_is_left_out) {
    EXPECT_EQ(column_keys_text({"unit", "rated_wh"}), "unit,rated_wh");
    EXPECT_EQ(column_keys_from("unit,,Rated,rated_wh,unit,x y,c_1"), (Keys{"unit", "rated_wh", "c_1"}));
    EXPECT_EQ(column_keys_from(""), Keys{});
}

TEST(ComparisonTable, advice_to_the_tester_is_in_no_cell_note_or_remark) {
    const Comparison comparison = columns_sample();
    for (const auto& load : {std::optional<CommonLoad>(), std::optional(CommonLoad{120, 1, {}})}) {
        const std::string text = table_text(comparison_table(comparison, compare_at(comparison, load)), TableFormat::json);
        EXPECT_EQ(text.find("make a drain"), std::string::npos) << text.substr(text.find("make a drain"), 100);
    }
}

TEST(ComparisonTable, opens_with_its_answer) {
    const Table table = comparison_table(columns_sample());
    ASSERT_GE(table.answer.size(), 4u);
    EXPECT_EQ(table_text(table, TableFormat::markdown).find(table.answer.front()), table_text(table, TableFormat::markdown).find("As tested there"));
    for (const TableFormat format : {TableFormat::text, TableFormat::html, TableFormat::json, TableFormat::latex})
        EXPECT_NE(table_text(table, format).find("there is no order"), std::string::npos);
}

} // namespace
} // namespace ullage::test
