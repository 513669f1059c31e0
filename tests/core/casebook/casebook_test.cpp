// SPDX-License-Identifier: GPL-3.0-or-later
// The promises of the casebook: the same answers as working each out by hand, kept as long as what they rest on, from any thread.
#include "casebook/casebook.h"

#include "support/scenario.h"
#include "unit/curve_projection.h"

#include <gtest/gtest.h>

#include <thread>

namespace ullage::test {
namespace {

SharedRuns shared_scenario() {
    SharedRuns runs;
    for (const ScenarioRun& run : sample_scenario()) {
        RunRecord record = run.simulated.record;
        record.run.uuid = RunId(run.file_name);
        record.unit.uuid = record.run.unit_uuid = UnitId(record.unit.name);
        runs.push_back(std::make_shared<const RunRecord>(std::move(record)));
    }
    return runs;
}

std::vector<RunRecord> of_unit(const SharedRuns& runs, const UnitId& uuid) {
    std::vector<RunRecord> records;
    for (const auto& run : runs)
        if (run->unit.uuid == uuid) records.push_back(*run);
    return records;
}

void expect_same(const Quantity& a, const Quantity& b) {
    EXPECT_EQ(a.value, b.value) << a.key;
    EXPECT_EQ(a.lower, b.lower) << a.key;
    EXPECT_EQ(a.upper, b.upper) << a.key;
    EXPECT_EQ(a.kind, b.kind) << a.key;
    EXPECT_EQ(a.reason, b.reason) << a.key;
}

/// The same run with one more reading at its end.
std::shared_ptr<const RunRecord> with_a_reading(const RunRecord& record) {
    RunRecord longer = record;
    longer.readings.push_back(longer.readings.back());
    longer.readings.back().uuid = ReadingId(longer.readings.back().uuid.text() + "+");
    longer.readings.back().values.time_ms += 60'000;
    return std::make_shared<const RunRecord>(std::move(longer));
}

TEST(Casebook, takes_over_the_answers_of_another_with_its_runs) {
    const SharedRuns runs = shared_scenario();
    Casebook other({}, MeasureOptions{});
    other.set_runs(runs);
    const auto fit = other.fit(runs.front()->unit.uuid);
    const auto analysis = other.analysis(runs.front()->run.uuid);
    Casebook casebook;
    casebook.take_over(other);
    EXPECT_TRUE(other.runs().empty());
    casebook.set_runs(runs);
    EXPECT_EQ(casebook.fit(runs.front()->unit.uuid), fit) << "worked out again";
    EXPECT_EQ(casebook.analysis(runs.front()->run.uuid), analysis) << "worked out again";
}

TEST(Casebook, gives_what_analysis_projection_fit_and_claims_give_by_hand) {
    const SharedRuns runs = shared_scenario();
    Casebook casebook;
    casebook.set_runs(runs);
    int projected = 0;
    for (const auto& run : runs) {
        const std::vector<RunRecord> records = of_unit(runs, run->unit.uuid);
        const UnitFit fit = fit_unit(records);
        RunAnalysis by_hand = analyse_run(*run);
        project_through_curve(*run, fit, by_hand);
        const auto analysis = casebook.analysis(run->run.uuid);
        ASSERT_TRUE(analysis);
        ASSERT_EQ(analysis->quantities.size(), by_hand.quantities.size());
        for (std::size_t q = 0; q < by_hand.quantities.size(); ++q) expect_same(analysis->quantities[q], by_hand.quantities[q]);
        EXPECT_EQ(analysis->curve_run_uuid, by_hand.curve_run_uuid);
        Casebook unasked; // where nothing has been analysed yet
        unasked.set_runs(runs);
        for (const Casebook* each : {&casebook, &unasked}) {
            const auto energy = each->energy(run->run.uuid);
            ASSERT_TRUE(energy);
            expect_same(energy->delivered_wh, analysis->energy.delivered_wh);
            expect_same(energy->mean_load_w, analysis->energy.mean_load_w);
            EXPECT_EQ(energy->usable_fraction.kind, analysis->energy.usable_fraction.kind);
            EXPECT_EQ(energy->start_ms, analysis->energy.start_ms);
        }
        if (!by_hand.curve_run_uuid.empty()) ++projected;
        expect_same(casebook.fit(run->unit.uuid)->no_load_draw_w, fit.no_load_draw_w);
        EXPECT_EQ(casebook.unit_analysis(run->unit.uuid)->predictions.size(), analyse_unit(run->unit, fit).predictions.size());
        const auto claims = casebook.claims(run->unit.uuid);
        ASSERT_TRUE(claims);
        const UnitClaims expected = check_claims(run->unit, addresses_of(records), fit);
        ASSERT_EQ(claims->checks.size(), expected.checks.size());
        for (std::size_t c = 0; c < expected.checks.size(); ++c) EXPECT_EQ(claims->checks[c].verdict, expected.checks[c].verdict);
    }
    EXPECT_GT(projected, 0) << "the scenario has a partial drain after a full one";
    EXPECT_FALSE(casebook.analysis(RunId("no such run")));
    EXPECT_FALSE(casebook.energy(RunId("no such run")));
    EXPECT_FALSE(casebook.fit(UnitId("no such unit")));
    EXPECT_FALSE(casebook.claims(UnitId("no such unit")));
}

TEST(Casebook, forgets_what_rests_on_a_changed_run_and_nothing_else) {
    SharedRuns runs = shared_scenario();
    Casebook casebook;
    casebook.set_runs(runs);
    const auto changed = runs[1];
    std::shared_ptr<const RunRecord> sibling, stranger;
    for (const auto& run : runs) {
        if (run != changed && run->unit.uuid == changed->unit.uuid && casebook.analysis(run->run.uuid)->curve_run_uuid.empty()) sibling = run;
        if (run->unit.uuid != changed->unit.uuid) stranger = run;
    }
    ASSERT_TRUE(sibling && stranger);
    const auto of_changed = casebook.analysis(changed->run.uuid), of_sibling = casebook.analysis(sibling->run.uuid),
               of_stranger = casebook.analysis(stranger->run.uuid);
    const auto fit = casebook.fit(changed->unit.uuid), other_fit = casebook.fit(stranger->unit.uuid);
    const std::size_t readings_before = changed->readings.size();
    EXPECT_EQ(casebook.readings_to_analyse({changed->unit.uuid}, false), 0U);

    runs[1] = with_a_reading(*changed);
    casebook.set_runs(runs);
    EXPECT_EQ(casebook.analysis(sibling->run.uuid), of_sibling);
    EXPECT_EQ(casebook.analysis(stranger->run.uuid), of_stranger);
    EXPECT_EQ(casebook.fit(stranger->unit.uuid), other_fit);
    EXPECT_GT(casebook.readings_to_analyse({changed->unit.uuid}, true), readings_before);
    EXPECT_NE(casebook.analysis(changed->run.uuid), of_changed);
    EXPECT_NE(casebook.fit(changed->unit.uuid), fit);
    EXPECT_EQ(casebook.run(changed->run.uuid)->readings.size(), readings_before + 1);
    EXPECT_EQ(of_changed->quantities.front().key, "delivered_wh") << "what was answered stays with its asker";
}

TEST(Casebook, forecasts_are_kept_for_a_minute_and_are_those_of_the_forecast_itself) {
    SharedRuns runs;
    RunRecord running = sample_scenario().front().simulated.record;
    running.run.uuid = RunId("running");
    running.run.end = RunEnd::still_running;
    running.readings.resize(running.readings.size() / 2);
    runs.push_back(std::make_shared<const RunRecord>(running));
    Casebook casebook;
    casebook.set_runs(runs);
    const UtcMs last_ms = running.readings.back().values.time_ms / 60'000 * 60'000 + 60'000;
    const auto first = casebook.forecast(RunId("running"), last_ms + 1'000);
    EXPECT_EQ(casebook.forecast(RunId("running"), last_ms + 59'000), first);
    EXPECT_NE(casebook.forecast(RunId("running"), last_ms + 61'000), first);
    const RunForecast expected = forecast_run(running, analyse_energy(running), fit_unit(std::vector<RunRecord>{running}), last_ms + 1'000);
    ASSERT_TRUE(first->cut_off && expected.cut_off);
    EXPECT_EQ(first->cut_off->upper_ms, expected.cut_off->upper_ms);
    EXPECT_EQ(casebook.forecast_at_last_reading(RunId("running"))->as_of_ms, running.readings.back().values.time_ms);
}

TEST(Casebook, answers_any_thread_also_while_the_runs_are_set_anew) {
    const SharedRuns runs = shared_scenario();
    SharedRuns changed = runs;
    changed.back() = with_a_reading(*changed.back());
    Casebook casebook;
    casebook.set_runs(runs);
    const auto expected = analyse_run(*runs.front()).energy.delivered_wh.value;
    std::vector<std::jthread> threads;
    for (int t = 0; t < 3; ++t)
        threads.emplace_back([&] {
            for (int round = 0; round < 3; ++round)
                for (const auto& run : runs) {
                    EXPECT_TRUE(casebook.analysis(run->run.uuid));
                    EXPECT_TRUE(casebook.fit(run->unit.uuid));
                }
            EXPECT_EQ(casebook.analysis(runs.front()->run.uuid)->energy.delivered_wh.value, expected);
        });
    for (int round = 0; round < 50; ++round) casebook.set_runs(round % 2 == 0 ? changed : runs);
}

TEST(Casebook, histories_come_from_the_source_where_it_keeps_some) {
    RunRecord record = sample_scenario().front().simulated.record;
    record.readings[1].version = 2;
    record.readings[1].uuid = ReadingId("amended");
    const SharedRuns runs{std::make_shared<const RunRecord>(record)};
    Casebook of_sheets;
    of_sheets.set_runs(runs);
    EXPECT_FALSE(of_sheets.histories(record.run.uuid).value());
    Casebook of_logbook([](const ReadingId& reading) -> Result<std::vector<ReadingVersion>> {
        if (reading != ReadingId("amended")) return Error{Failure::not_found, "unchanged readings are not asked for", reading.text(), {}};
        return std::vector<ReadingVersion>(2);
    });
    of_logbook.set_runs(runs);
    const auto histories = of_logbook.histories(record.run.uuid);
    ASSERT_TRUE(histories) << histories.error().sentence();
    ASSERT_EQ(histories.value()->size(), 1U);
    EXPECT_EQ(histories.value()->front().versions.size(), 2U);
}

} // namespace
} // namespace ullage::test
