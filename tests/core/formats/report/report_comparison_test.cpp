// SPDX-License-Identifier: GPL-3.0-or-later
// What the report of a comparison says of differences, and of units at one load.
#include "comparison/comparison_answer.h"
#include "formats/results/comparison_table.h"
#include "report_samples.h"
#include "support/has_text.h"
#include "support/scenario.h"
#include "unit/advice.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <deque>

namespace ullage::test {
namespace {

const ReportOptions report_options{'.', RecordBuilder::start_ms, "UTC"};

/// Records with the analyses that their report points at.
struct Compared {
    std::vector<RunRecord> records;
    Comparison comparison;
    std::deque<RunAnalysis> analyses;

    explicit Compared(std::vector<RunRecord> made) : records(std::move(made)), comparison(compare_as_tested(records)) {}

    Report report(const FairComparison& fair, const ReportOptions& options = report_options) {
        std::vector<ReportedRun> runs;
        for (const ComparisonRow& row : comparison.rows) {
            const auto at = std::ranges::find(records, row.run.uuid, [](const RunRecord& record) { return record.run.uuid; });
            analyses.push_back(analyse_run(*at));
            runs.push_back({&*at, &analyses.back(), std::nullopt});
        }
        return comparison_report(comparison, fair, runs, analyse_units(records), options);
    }
    Report at(double power_w, double duty = 1) { return report(compare_at(comparison, CommonLoad{power_w, duty, {}})); }
};

Compared sample() {
    std::vector<RunRecord> records;
    for (const ScenarioRun& run : sample_scenario()) {
        records.push_back(run.simulated.record);
        records.back().unit.uuid = records.back().run.unit_uuid = UnitId(records.back().unit.name); // one identity for one unit, as a logbook gives
        records.back().run.uuid = RunId(run.file_name);
    }
    return Compared(std::move(records));
}

const ReportTable* differences(const Report& report) {
    for (const ReportBlock& block : report.blocks)
        if (const auto* table = std::get_if<ReportTable>(&block); table && !table->table.heads.empty() && table->table.heads.front() == "first")
            return table;
    return nullptr;
}

std::string row_text(const ReportTable& table, const std::string& first, const std::string& second) {
    for (const auto& row : table.table.rows) {
        if (row.at(0).text() != first || row.at(1).text() != second) continue;
        std::string line;
        for (const PrintedCell& cell : row) line += cell.text() + '|';
        return line;
    }
    return {};
}

TEST(ComparisonReport, every_pair_stands_with_its_difference_and_whether_it_is_clear) {
    Compared compared = sample();
    const FairComparison fair = compare_at(compared.comparison, CommonLoad{120, 1, {}});
    const Report report = compared.report(fair);
    const ReportTable* table = differences(report);
    ASSERT_NE(table, nullptr);
    EXPECT_EQ(table->table.rows.size(), 3u); // three units make three pairs
    std::size_t resolved = 0;
    for (const PairVerdict& pair : compare_pairs(compared.comparison, fair)) {
        const std::string line = row_text(*table, compared.comparison.rows[pair.first].unit.name, compared.comparison.rows[pair.second].unit.name);
        if (pair.difference.kind == Kind::not_known) {
            EXPECT_TRUE(contains(line, "|not known|")) << line;
            continue;
        }
        EXPECT_TRUE(contains(line, pair.resolved ? "|clearly different|" : "|too close to call|")) << line;
        EXPECT_TRUE(contains(line, "±")) << line;
        resolved += pair.resolved ? 1 : 0;
    }
    EXPECT_GE(resolved, 1u);
}

TEST(ComparisonReport, units_that_cannot_be_told_apart_are_named_in_the_summary) {
    Compared compared({full_drain("Alder"), full_drain("Birch")});
    const std::string summary = chapter_text(compared.report(compare_at(compared.comparison, std::nullopt)), "Summary");
    EXPECT_TRUE(contains(summary, "Too close to call with these meters: Alder and Birch")) << summary;
    EXPECT_TRUE(contains(summary, "Neither of such a pair may be called better")) << summary;
}

TEST(ComparisonReport, one_meters_gain_is_said_to_cancel_and_two_meters_are_not) {
    RunRecord second = full_drain("Birch"), third = full_drain("Cedar");
    third.meter->name = "another";
    third.meter->uuid = MeterId(third.meter->name);
    third.run.meter_uuid = third.meter->uuid;
    Compared compared({full_drain("Alder"), second, third});
    const Report report = compared.report(compare_at(compared.comparison, std::nullopt));
    const ReportTable* table = differences(report);
    ASSERT_NE(table, nullptr);
    EXPECT_TRUE(contains(row_text(*table, "Alder", "Birch"), "|yes: its gain cancels|")) << row_text(*table, "Alder", "Birch");
    EXPECT_TRUE(contains(row_text(*table, "Alder", "Cedar"), "|no|")) << row_text(*table, "Alder", "Cedar");
}

TEST(ComparisonReport, at_one_load_it_says_where_and_shows_what_is_deliverable_there) {
    Compared compared = sample();
    const Report steady = compared.at(120), switched = compared.at(240, 0.5);
    EXPECT_TRUE(contains(steady.title, "at 120 W")) << steady.title;
    EXPECT_TRUE(contains(switched.title, "at 120 W on average (240 W for 50 % of the time)")) << switched.title;
    const std::string summary = chapter_text(steady, "Summary");
    EXPECT_TRUE(contains(summary, "based on")) << summary;
    EXPECT_TRUE(contains(summary, "drains together")) << "what is calculated from several drains is not credited to one: " << summary;
    EXPECT_TRUE(contains(chapter_text(steady, "Summary"), "the other way round")) << "two units of the sample change places there";
    EXPECT_FALSE(contains(compared.report(compare_at(compared.comparison, std::nullopt)).title, " W"));
}

TEST(ComparisonReport, a_unit_that_cannot_be_moved_stands_as_tested_with_the_reason) {
    Compared compared = sample();
    const FairComparison fair = compare_at(compared.comparison, CommonLoad{120, 1, {}});
    const auto tarrow = std::ranges::find(compared.comparison.rows, "Tarrow 2k", [](const ComparisonRow& row) { return row.unit.name; });
    ASSERT_NE(tarrow, compared.comparison.rows.end());
    const Message reason = fair.rows[static_cast<std::size_t>(tarrow - compared.comparison.rows.begin())].reason;
    ASSERT_FALSE(reason.empty());
    const Report report = compared.report(fair);
    const std::string summary = chapter_text(report, "Summary");
    EXPECT_TRUE(contains(summary, "the only load that it can be judged at")) << summary;
    EXPECT_TRUE(contains(summary, "Tarrow 2k is shown as tested")) << summary;
    EXPECT_TRUE(contains(summary, without_advice(reason))) << summary;
    EXPECT_FALSE(contains(summary, "make a drain")) << "advice is for the tester";
    EXPECT_TRUE(contains(summary, "Not comparable")) << summary;
}

TEST(ComparisonReport, opens_with_the_order_and_a_sentence_for_each_unit) {
    Compared compared = sample();
    for (const bool tested : {true, false}) {
        const FairComparison fair = compare_at(compared.comparison, tested ? std::nullopt : suggested_load(compared.comparison));
        const ComparisonAnswer answer = comparison_answer(compared.comparison, fair);
        const std::string summary = chapter_text(compared.report(fair), "Summary");
        EXPECT_EQ(summary.find(answer.order.text()), std::string(tested ? "Caution: " : ": ").size()) << summary;
        for (const Message& sentence : answer.units) EXPECT_TRUE(contains(summary, sentence)) << summary;
    }
}

TEST(ComparisonReport, what_is_the_testers_own_affair_stays_home_unless_asked_for) {
    std::vector<RunRecord> records{full_drain("Alder"), full_drain("Birch")};
    for (RunRecord& record : records) {
        record.unit.tags = {"lent"};
        record.unit.paid_price = 321.5;
        record.unit.remark = "scratched lid";
        record.readings.front().values.remark = "read in a hurry";
    }
    Compared compared(std::move(records));
    const FairComparison fair = compare_at(compared.comparison, std::nullopt);
    const auto told = [](const Report& report) {
        std::string all;
        for (const char* chapter : {"Summary", "What was measured, and with what", "Readings"}) all += chapter_text(report, chapter);
        return all;
    };
    const std::string plain = told(compared.report(fair));
    for (const char* own : {"lent", "321.5", "scratched lid", "read in a hurry"}) EXPECT_FALSE(contains(plain, own)) << own;
    ReportOptions with_all = report_options;
    with_all.own_affairs = true;
    const std::string whole = told(compared.report(fair, with_all));
    for (const char* own : {"lent", "321.5", "scratched lid", "read in a hurry"}) EXPECT_TRUE(contains(whole, own)) << own;
}

TEST(ComparisonReport, its_table_has_the_columns_that_were_chosen) {
    Compared compared({full_drain("Alder"), full_drain("Birch")});
    const FairComparison fair = compare_at(compared.comparison, std::nullopt);
    ReportOptions chosen = report_options;
    chosen.columns = {"unit", "meter", "rated_wh"};
    const std::string summary = chapter_text(compared.report(fair, chosen), "Summary");
    EXPECT_TRUE(contains(summary, "meter")) << summary;
    EXPECT_FALSE(contains(summary, "no-load draw")) << summary;
    EXPECT_TRUE(contains(chapter_text(compared.report(fair), "Summary"), "no-load draw")) << "for readers unless told";
}

TEST(ComparisonReport, a_unit_alone_has_no_pairs) {
    Compared compared({full_drain("Alder")});
    EXPECT_EQ(differences(compared.report(compare_at(compared.comparison, std::nullopt))), nullptr);
}

TEST(ComparisonReport, beyond_so_many_rows_the_pairs_are_left_out_and_it_says_where_they_are) {
    std::vector<RunRecord> records;
    for (std::size_t n = 0; n <= most_report_paired; ++n) records.push_back(full_drain("Unit " + std::to_string(n)));
    Compared compared(std::move(records));
    const Report report = compared.report(compare_at(compared.comparison, std::nullopt));
    EXPECT_EQ(differences(report), nullptr);
    EXPECT_TRUE(contains(chapter_text(report, "Differences between units"), "The 325 pairs of these 26 rows are left out")); // 26·25/2
}

TEST(PairsTable, of_some_rows_alone_has_the_same_pairs_and_says_that_there_are_others) {
    const Compared compared = sample();
    const FairComparison fair = compare_at(compared.comparison, std::nullopt);
    const Table all = pairs_table(compared.comparison, fair);
    const Table some = pairs_table(compared.comparison, fair, {0, 2}, PairFigure::usable_fraction);
    ASSERT_EQ(all.rows.size(), 3u);
    ASSERT_EQ(some.rows.size(), 1u);
    for (const std::size_t name : {0u, 1u, 3u, 4u}) EXPECT_EQ(std::get<Message>(some.rows[0][name]), std::get<Message>(all.rows[1][name]));
    EXPECT_EQ(std::get<Quantity>(some.rows[0][2]).value, std::get<Quantity>(all.rows[1][2]).value);
    EXPECT_EQ(all.remarks.size() + 1, some.remarks.size());
    EXPECT_TRUE(contains(some.remarks.back(), "2 of 3 rows")) << some.remarks.back();
}

} // namespace
} // namespace ullage::test
