// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/comparison.h"
#include "unit/curve_projection.h"

#include "support/scenario.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>

namespace ullage::test {
namespace {

std::vector<RunRecord> scenario_records() {
    std::vector<RunRecord> records;
    for (const ScenarioRun& run : sample_scenario()) {
        records.push_back(run.simulated.record);
        // As a logbook would give one identity to one unit and to one meter.
        records.back().unit.uuid = records.back().run.unit_uuid = UnitId(records.back().unit.name);
        if (records.back().meter) records.back().meter->uuid = MeterId(records.back().meter->name);
    }
    return records;
}

void expect_same(const Quantity& a, const Quantity& b, const std::string& whose) {
    EXPECT_EQ(a.value, b.value) << whose << ", " << a.key;
    EXPECT_EQ(a.lower, b.lower) << whose << ", " << a.key;
    EXPECT_EQ(a.upper, b.upper) << whose << ", " << a.key;
    EXPECT_EQ(a.kind, b.kind) << whose << ", " << a.key;
    EXPECT_EQ(a.reason, b.reason) << whose << ", " << a.key;
}

TEST(CompareUnits, a_row_says_what_the_whole_analysis_of_its_run_says) {
    const std::vector<RunRecord> records = scenario_records();
    const Comparison comparison = compare_as_tested(records, CompareRows::every_drain);
    ASSERT_GT(comparison.rows.size(), 5U);
    bool projected = false;
    for (const ComparisonRow& row : comparison.rows) {
        const auto record = std::ranges::find_if(records, [&](const RunRecord& each) { return each.run.uuid == row.run.uuid; });
        ASSERT_NE(record, records.end());
        std::vector<RunRecord> of_unit;
        for (const RunRecord& each : records)
            if (each.unit.uuid == row.unit.uuid) of_unit.push_back(each);
        RunAnalysis whole = analyse_run(*record);
        project_through_curve(*record, fit_unit(of_unit), whole);
        expect_same(row.usable_fraction, whole.energy.usable_fraction, row.run_title);
        expect_same(row.mean_load_w, whole.energy.mean_load_w, row.run_title);
        expect_same(row.no_load_draw_w, fit_unit(of_unit).no_load_draw_w, row.run_title);
        EXPECT_EQ(row.gauge_verdict, whole.gauge.verdict);
        EXPECT_EQ(row.through_curve, !whole.curve_run_uuid.empty());
        projected = projected || row.through_curve;
    }
    EXPECT_TRUE(projected) << "the scenario has half a drain beside a full one";
}

TEST(CompareUnits, workers_side_by_side_give_what_one_gives_in_the_order_asked_for) {
    const std::vector<RunRecord> records = scenario_records();
    std::vector<UnitRuns> units;
    for (int turn = 0; turn < 8; ++turn)
        for (const UnitRuns& unit : runs_by_unit(records)) units.push_back(unit);
    std::atomic<std::size_t> done{0};
    const auto together = compare_units(units, CompareRows::one_per_unit, {}, {}, &done);
    ASSERT_EQ(together.size(), units.size());
    EXPECT_EQ(done.load(), units.size());
    for (std::size_t i = 0; i < units.size(); ++i) {
        const ComparedUnit alone = compare_unit(units[i], CompareRows::one_per_unit);
        ASSERT_TRUE(together[i]);
        EXPECT_EQ(together[i]->unit, alone.unit);
        ASSERT_EQ(together[i]->rows.size(), alone.rows.size());
        for (std::size_t r = 0; r < alone.rows.size(); ++r) {
            EXPECT_EQ(together[i]->rows[r].run.uuid, alone.rows[r].run.uuid);
            expect_same(together[i]->rows[r].delivered_wh, alone.rows[r].delivered_wh, alone.unit.name);
            EXPECT_EQ(together[i]->rows[r].gauge_verdict, alone.rows[r].gauge_verdict);
        }
    }
}

TEST(CompareUnits, what_was_not_begun_before_a_stop_is_absent) {
    const std::vector<RunRecord> records = scenario_records();
    const std::vector<UnitRuns> units = runs_by_unit(records);
    std::stop_source stop;
    stop.request_stop();
    const auto compared = compare_units(units, CompareRows::one_per_unit, {}, stop.get_token());
    ASSERT_EQ(compared.size(), units.size());
    EXPECT_TRUE(std::ranges::none_of(compared, [](const auto& unit) { return unit.has_value(); }));
}

TEST(CompareUnits, remarks_speak_of_the_units_that_stay) {
    Comparison comparison = compare_as_tested(scenario_records());
    const auto speaks_of_meters = [&] {
        return std::ranges::any_of(comparison.remarks,
                                   [](const std::string& remark) { return remark.find("Different meters") != std::string::npos; });
    };
    ASSERT_TRUE(speaks_of_meters());
    keep_units(comparison, [](const Unit& unit) { return unit.name != "Tarrow 2k"; });
    EXPECT_EQ(comparison.rows.size(), 2u);
    EXPECT_FALSE(speaks_of_meters());
}

} // namespace
} // namespace ullage::test
