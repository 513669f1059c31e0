// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/comparison.h"

#include "support/scenario.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

std::vector<RunRecord> sample_records() {
    std::vector<RunRecord> records;
    for (const ScenarioRun& run : sample_scenario()) {
        records.push_back(run.simulated.record);
        records.back().unit.uuid = UnitId(records.back().unit.name); // as a logbook would give one identity to one unit
    }
    return records;
}

TEST(SampleScenario, every_measured_usable_fraction_covers_the_simulations_truth) {
    int measured = 0;
    for (const ScenarioRun& run : sample_scenario()) {
        const RunAnalysis analysis = analyse_run(run.simulated.record);
        const Quantity& fraction = analysis.energy.usable_fraction;
        if (fraction.kind != Kind::measured) continue;
        ++measured;
        const double truth = run.simulated.truth.usable_fraction.value();
        EXPECT_LE(fraction.lower.value(), truth) << run.file_name;
        EXPECT_GE(fraction.upper.value(), truth) << run.file_name;
    }
    EXPECT_GE(measured, 5);
}

TEST(SampleScenario, delivered_energy_covers_the_simulations_truth_and_at_least_is_at_most_the_truth) {
    for (const ScenarioRun& run : sample_scenario()) {
        const Quantity delivered = analyse_run(run.simulated.record).energy.delivered_wh;
        const double truth = run.simulated.truth.delivered_wh;
        ASSERT_TRUE(delivered.lower.has_value()) << run.file_name;
        EXPECT_LE(*delivered.lower, truth) << run.file_name;
        EXPECT_GE(delivered.upper.value_or(truth), truth) << run.file_name;
    }
}

TEST(SampleScenario, the_planted_gauge_faults_and_no_others_are_found) {
    for (const ScenarioRun& run : sample_scenario()) {
        const GaugeAnalysis gauge = analyse_run(run.simulated.record).gauge;
        std::vector<std::string> found;
        for (const Finding& finding : gauge.findings) found.emplace_back(finding_key(finding.kind));
        std::string told;
        for (const Finding& finding : gauge.findings) told += finding.sentence + " [" + finding.evidence + "]\n";
        if (run.simulated.record.unit.name == "Tarrow 2k") {
            EXPECT_TRUE(found.empty()) << run.file_name << "\n" << told;
        }
        if (!run.simulated.truth.stuck.empty()) {
            EXPECT_TRUE(std::ranges::count(found, "stuck")) << run.file_name << "\n" << told;
        }
        if (run.simulated.truth.cut_off && run.simulated.truth.gauge_at_cut_off_percent > 5) {
            EXPECT_TRUE(std::ranges::count(found, "stopped_early")) << run.file_name << "\n" << told;
        }
    }
}

TEST(Comparison, one_row_a_unit_takes_the_run_that_says_most) {
    const Comparison comparison = compare_as_tested(sample_records());
    ASSERT_EQ(comparison.rows.size(), 3u);
    for (const ComparisonRow& row : comparison.rows) EXPECT_EQ(row.usable_fraction.kind, Kind::measured) << row.unit.name;
    EXPECT_TRUE(std::ranges::is_sorted(comparison.rows, {}, [](const ComparisonRow& row) { return row.unit.name; }));
    EXPECT_FALSE(comparison.remarks.empty()) << "the meters differ, which must be said";
}

TEST(Comparison, every_drain_can_stand_as_a_row_of_its_own) {
    const std::vector<RunRecord> records = sample_records();
    const auto drains = std::ranges::count_if(records, [](const RunRecord& r) { return r.run.kind == RunKind::drain; });
    EXPECT_EQ(static_cast<long>(compare_as_tested(records, CompareRows::every_drain).rows.size()), drains);
}

TEST(Comparison, prices_are_per_rated_and_per_delivered_kilowatt_hour) {
    for (const ComparisonRow& row : compare_as_tested(sample_records()).rows) {
        EXPECT_NEAR(row.price_per_rated_kwh.value.value(), *row.unit.price / *row.unit.rated_energy_wh * 1000, 1e-9);
        EXPECT_NEAR(row.price_per_delivered_kwh.value.value(), *row.unit.price / *row.delivered_wh.value * 1000, 1e-9);
        EXPECT_LT(row.price_per_delivered_kwh.lower.value(), row.price_per_delivered_kwh.value.value());
    }
}

TEST(Comparison, what_was_paid_is_told_beside_the_list_price_where_it_is_known) {
    int known_ones = 0;
    for (const ComparisonRow& row : compare_as_tested(sample_records()).rows) {
        if (!row.unit.paid_price) {
            EXPECT_EQ(row.paid_per_rated_kwh.reason, "the price paid is not stated");
            EXPECT_FALSE(row.paid_per_delivered_kwh.value);
            continue;
        }
        ++known_ones;
        EXPECT_NEAR(row.paid_per_rated_kwh.value.value(), *row.unit.paid_price / *row.unit.rated_energy_wh * 1000, 1e-9);
        EXPECT_NEAR(row.paid_per_delivered_kwh.value.value(), *row.unit.paid_price / *row.delivered_wh.value * 1000, 1e-9);
        EXPECT_NEAR(row.paid_per_delivered_kwh.upper.value(), *row.unit.paid_price / *row.delivered_wh.lower * 1000, 1e-9);
        EXPECT_EQ(row.paid_per_delivered_kwh.unit, "EUR/kWh");
    }
    EXPECT_EQ(known_ones, 2);
}

TEST(Comparison, a_unit_without_a_drain_is_named_not_dropped) {
    std::vector<RunRecord> records = sample_records();
    std::erase_if(records, [](const RunRecord& r) { return r.unit.name == "Tarrow 2k" && r.run.kind == RunKind::drain; });
    RunRecord charge = records.front();
    charge.unit.name = "Never drained";
    charge.unit.uuid = UnitId(charge.unit.name);
    charge.run.kind = RunKind::charge;
    records.push_back(charge);
    const Comparison comparison = compare_as_tested(records);
    EXPECT_TRUE(std::ranges::count(comparison.left_out, "Never drained: no drain in the logbook"));
}

TEST(Comparison, missing_claims_give_reasons_not_numbers) {
    std::vector<RunRecord> records = sample_records();
    for (RunRecord& record : records) {
        record.unit.price.reset();
        record.unit.mass_kg.reset();
    }
    for (const ComparisonRow& row : compare_as_tested(records).rows) {
        EXPECT_FALSE(row.price_per_delivered_kwh.value);
        EXPECT_EQ(row.price_per_delivered_kwh.reason, "the price is not stated");
        EXPECT_FALSE(row.wh_per_kg.value);
    }
}

} // namespace
} // namespace ullage::test
