// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/unit/between_runs_samples.h"

#include "comparison/fair_comparison.h"
#include "comparison/joined_records.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <utility>

namespace ullage::test {
namespace {

/// Two drains of one unit as the logbook `source` holds them; the meter is known there by `meter`.
RecordSource logbook_of(const std::string& unit, const std::string& meter, const std::string& source, std::uint64_t seed) {
    std::vector<RunRecord> records = simulate_loads({60, 300}, seed);
    for (std::size_t i = 0; i < records.size(); ++i) {
        RunRecord& record = records[i];
        record.unit.uuid = record.run.unit_uuid = UnitId(unit);
        record.unit.name = "Unit " + unit;
        record.meter->uuid = MeterId(meter);
        record.run.meter_uuid = MeterId(meter);
        record.run.uuid = RunId(source + " run " + std::to_string(i));
    }
    return {source, std::move(records)};
}

std::size_t runs_of(const JoinedRecords& joined, const std::string& source) {
    return static_cast<std::size_t>(std::ranges::count_if(joined.source_of, [&](const auto& entry) { return entry.second == source; }));
}

Comparison comparison_of(const JoinedRecords& joined, CompareRows rows) {
    Comparison comparison = compare_as_tested(joined.runs, rows);
    name_sources(comparison, rows, joined.source_of);
    return comparison;
}

PairVerdict pair_of(const RecordSource& a, const RecordSource& b) {
    const JoinedRecords joined = join_records({&a, &b});
    const Comparison comparison = comparison_of(joined, CompareRows::one_per_unit);
    EXPECT_EQ(comparison.rows.size(), 2U);
    return compare_pair(comparison, compare_at(comparison, CommonLoad{120, 1, {}}), 0, 1, PairFigure::deliverable_wh);
}

TEST(JoinedRecords, one_unit_in_two_logbooks_is_compared_as_one_from_all_its_runs) {
    const auto a = logbook_of("u", "m", "A.ullage", 1), b = logbook_of("u", "m", "B.ullage", 2);
    const JoinedRecords joined = join_records({&a, &b});
    const Comparison comparison = comparison_of(joined, CompareRows::one_per_unit);
    ASSERT_EQ(comparison.rows.size(), 1U);
    EXPECT_EQ(comparison.rows[0].drains, 4);
    EXPECT_EQ(comparison.fits[0].used_drains, 4U);
    EXPECT_EQ(comparison.rows[0].source, "A.ullage, B.ullage");
}

TEST(JoinedRecords, every_row_says_from_which_logbook_it_comes) {
    const auto a = logbook_of("u", "m", "A.ullage", 1), b = logbook_of("v", "n", "B.ullage", 2);
    const JoinedRecords joined = join_records({&a, &b});
    const Comparison comparison = comparison_of(joined, CompareRows::every_drain);
    ASSERT_EQ(comparison.rows.size(), 4U);
    EXPECT_TRUE(comparison.several_sources);
    for (const ComparisonRow& row : comparison.rows) EXPECT_EQ(row.source, row.unit.uuid == UnitId("u") ? "A.ullage" : "B.ullage");
    EXPECT_FALSE(comparison_of(join_records({&a}), CompareRows::one_per_unit).several_sources);
}

TEST(JoinedRecords, of_two_copies_of_a_run_the_one_with_more_entries_counts_whichever_is_named_first) {
    const auto older = logbook_of("u", "m", "old.ullage", 1);
    auto newer = older;
    newer.name = "new.ullage";
    newer.records[1].readings.back().version = 2; // amended there since the copy was made
    newer.records[1].readings.back().values.remark = "amended";
    for (const bool newer_first : {false, true}) {
        const JoinedRecords joined = newer_first ? join_records({&newer, &older}) : join_records({&older, &newer});
        ASSERT_EQ(joined.runs.size(), 2U);
        EXPECT_EQ(joined.runs[1]->readings.back().values.remark, "amended");
        ASSERT_EQ(joined.notices.size(), 1U);
        EXPECT_NE(joined.notices[0].text().find("2 runs are both in"), std::string::npos);
    }
}

TEST(JoinedRecords, a_run_without_a_common_uuid_counts_once_where_all_its_readings_are_the_same) {
    const auto logbook = logbook_of("u", "m", "A.ullage", 1);
    auto sheets = logbook;
    sheets.name = "sheets";
    for (RunRecord& record : sheets.records) record.run.uuid = RunId(record.run.uuid.text() + " as a sheet");
    EXPECT_EQ(join_records({&logbook, &sheets}).runs.size(), 2U);
    sheets.records[1].readings[2].values.register_wh = sheets.records[1].readings[2].values.register_wh.value() + 1;
    EXPECT_EQ(runs_of(join_records({&logbook, &sheets}), "sheets"), 1U) << "a reading that differs makes it another run";
}

TEST(JoinedRecords, claims_that_differ_are_those_of_the_first_logbook_and_that_is_said) {
    const auto a = logbook_of("u", "m", "A.ullage", 1);
    auto b = logbook_of("u", "m", "B.ullage", 2);
    for (RunRecord& record : b.records) record.unit.rated_energy_wh = 900;
    const JoinedRecords joined = join_records({&a, &b});
    ASSERT_EQ(joined.runs.size(), 4U);
    for (const RunRecord* run : joined.runs) EXPECT_EQ(run->unit.rated_energy_wh, 1050);
    EXPECT_EQ(b.records[0].unit.rated_energy_wh, 900) << "the source itself stays as it is";
    ASSERT_EQ(joined.notices.size(), 1U);
    EXPECT_NE(joined.notices[0].text().find("claims of Unit u"), std::string::npos);
}

TEST(JoinedRecords, the_gain_of_a_meter_cancels_between_logbooks_only_where_it_is_that_very_meter) {
    const auto a = logbook_of("u", "m", "A.ullage", 1);
    const PairVerdict one = pair_of(a, logbook_of("v", "m", "B.ullage", 2));
    const PairVerdict two = pair_of(a, logbook_of("v", "n", "B.ullage", 2)); // of the same name, but another
    EXPECT_TRUE(one.shared_meter);
    EXPECT_FALSE(two.shared_meter);
    EXPECT_LT(one.difference.half_width().value(), two.difference.half_width().value());
}

TEST(JoinedRecords, meters_of_one_name_in_two_logbooks_are_remarked_on_as_different) {
    const auto a = logbook_of("u", "m", "A.ullage", 1), b = logbook_of("v", "n", "B.ullage", 2), c = logbook_of("v", "m", "B.ullage", 2);
    const auto remarked = [&a](const RecordSource& other) {
        const JoinedRecords joined = join_records({&a, &other});
        const Comparison comparison = compare_as_tested(joined.runs, CompareRows::one_per_unit);
        return std::ranges::any_of(comparison.remarks, [](const std::string& remark) { return remark.rfind("Different meters", 0) == 0; });
    };
    EXPECT_TRUE(remarked(b));
    EXPECT_FALSE(remarked(c));
}

} // namespace
} // namespace ullage::test
