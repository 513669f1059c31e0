// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

#include "base/instant.h"

#include <fstream>

namespace ullage {

using test::DocumentTest;

TEST_F(DocumentTest, undoing_and_redoing_a_unit_takes_it_away_and_brings_the_same_one_back) {
    const auto unit = add_unit();
    EXPECT_TRUE(document.undoStack().undoText().contains("Osk 1200"));
    document.undoStack().undo();
    EXPECT_TRUE(document.units().empty());
    document.undoStack().redo();
    ASSERT_EQ(document.units().size(), 1U);
    EXPECT_EQ(document.units()[0], unit);
}

TEST_F(DocumentTest, undoing_an_edit_restores_every_claim) {
    const auto before = add_unit();
    auto after = before;
    after.name = "Osk 1200 Mk 2";
    after.price = 799;
    after.currency = "EUR";
    ASSERT_TRUE(document.updateUnit(after));
    EXPECT_EQ(document.units()[0], after);
    document.undoStack().undo();
    EXPECT_EQ(document.units()[0], before);
    document.undoStack().redo();
    EXPECT_EQ(document.units()[0], after);
}

TEST_F(DocumentTest, a_withdrawn_unit_comes_back_with_its_runs) {
    const auto unit = add_unit();
    const auto run = start_drain(unit);
    ASSERT_TRUE(document.withdrawUnit(unit.uuid));
    EXPECT_EQ(document.run(run.uuid), nullptr);
    document.undoStack().undo();
    EXPECT_NE(document.run(run.uuid), nullptr);
    EXPECT_NE(document.unit(unit.uuid), nullptr);
}

TEST_F(DocumentTest, meters_are_added_edited_and_withdrawn_with_undo) {
    Meter meter;
    meter.name = "Socket meter A";
    meter.limit_percent = 1;
    meter = document.addMeter(meter).value();
    auto edited = meter;
    edited.limit_percent = 2;
    ASSERT_TRUE(document.updateMeter(edited));
    ASSERT_TRUE(document.withdrawMeter(meter.uuid));
    EXPECT_TRUE(document.meters().empty());
    document.undoStack().undo();
    ASSERT_EQ(document.meters().size(), 1U);
    EXPECT_EQ(document.meters()[0].limit_percent, 2.0);
    document.undoStack().undo();
    EXPECT_EQ(document.meters()[0].limit_percent, 1.0);
    document.undoStack().undo();
    EXPECT_TRUE(document.meters().empty());
}

TEST_F(DocumentTest, what_is_known_of_a_meter_reaches_each_run_and_log_that_rests_on_it_and_no_other) {
    Meter own, second, third;
    own.name = "Own";
    second.name = "Second";
    third.name = "Third";
    own = document.addMeter(own).value();
    second = document.addMeter(second).value();
    third = document.addMeter(third).value();
    const Unit unit = add_unit();
    ullage::Run run;
    run.unit_uuid = unit.uuid;
    run.meter_uuid = own.uuid;
    run.second_meter_uuid = second.uuid;
    run = document.addRun(run).value();
    note(run, 100, 0);
    std::ofstream log(file("third.csv").toStdString());
    log << "time,power W,energy Wh\n";
    for (int minute = 0; minute < 60; ++minute) log << format_iso8601(clock.now_ms() + 60'000 * minute, "UTC") << ",60," << minute << '\n';
    log.close();
    const auto preview = preview_trace(file("third.csv").toStdString(), {}, {}, {});
    ASSERT_TRUE(preview) << preview.error().sentence();
    const auto imported = document.importTrace(run.uuid, third.uuid, file("third.csv"), preview.value().detection, {});
    ASSERT_TRUE(imported) << imported.error().sentence();
    clock.advance_hours(1);
    note(run, 95, 60);
    const ullage::Run elsewhere = start_drain(unit);
    const auto before = document.sharedRun(elsewhere.uuid);

    for (Meter* meter : {&own, &second, &third}) {
        meter->limit_percent = 3;
        ASSERT_TRUE(document.updateMeter(*meter)) << meter->name;
    }
    const RunRecord* record = document.run(run.uuid);
    EXPECT_EQ(record->meter->limit_percent, 3.0);
    EXPECT_EQ(record->second_meter->limit_percent, 3.0);
    ASSERT_EQ(record->other_logs.size(), 1U);
    EXPECT_EQ(record->other_logs[0].meter->limit_percent, 3.0);
    EXPECT_EQ(document.sharedRun(elsewhere.uuid), before) << "and what is known of it need not be worked out again";
    for (int step = 0; step < 3; ++step) document.undoStack().undo();
    EXPECT_EQ(document.run(run.uuid)->meter->limit_percent, std::nullopt);
    EXPECT_EQ(document.run(run.uuid)->second_meter->limit_percent, std::nullopt);
    EXPECT_EQ(document.run(run.uuid)->other_logs[0].meter->limit_percent, std::nullopt);
}

TEST_F(DocumentTest, ending_a_run_is_one_step_that_says_what_it_did) {
    auto run = start_drain(add_unit());
    run.end = RunEnd::found_off;
    ASSERT_TRUE(document.updateRun(run));
    EXPECT_EQ(document.undoStack().undoText(), "end run");
    document.undoStack().undo();
    EXPECT_EQ(document.run(run.uuid)->run.end, RunEnd::still_running);
}

TEST_F(DocumentTest, an_undone_reading_is_withdrawn_but_stays_in_its_history) {
    const auto run = start_drain(add_unit());
    const auto reading = note(run, 71, 4774);
    document.undoStack().undo();
    ASSERT_EQ(document.run(run.uuid)->readings.size(), 1U);
    EXPECT_TRUE(document.run(run.uuid)->readings[0].withdrawn);
    document.undoStack().redo();
    EXPECT_FALSE(document.run(run.uuid)->readings[0].withdrawn);
    EXPECT_EQ(document.run(run.uuid)->readings[0].values, reading.values);
    const auto history = document.history(reading.uuid);
    ASSERT_TRUE(history);
    EXPECT_EQ(history.value().size(), 3U);
}

TEST_F(DocumentTest, an_amendment_keeps_the_old_value_and_its_reason_and_can_be_undone) {
    const auto run = start_drain(add_unit());
    const auto reading = note(run, 71, 4774);
    auto values = reading.values;
    values.register_wh = 4747;
    ASSERT_TRUE(document.amend(reading.uuid, values, "digits swapped"));
    EXPECT_EQ(document.run(run.uuid)->readings[0].values.register_wh, 4747.0);
    auto history = document.history(reading.uuid);
    ASSERT_TRUE(history);
    ASSERT_EQ(history.value().size(), 2U);
    EXPECT_EQ(history.value()[0].values.register_wh, 4774.0);
    EXPECT_EQ(history.value()[1].reason, "digits swapped");
    document.undoStack().undo();
    EXPECT_EQ(document.run(run.uuid)->readings[0].values.register_wh, 4774.0);
    document.undoStack().redo();
    EXPECT_EQ(document.run(run.uuid)->readings[0].values.register_wh, 4747.0);
}

TEST_F(DocumentTest, a_withdrawn_reading_comes_back_on_undo) {
    const auto run = start_drain(add_unit());
    const auto reading = note(run, 71, 4774);
    ASSERT_TRUE(document.withdrawReading(reading.uuid, "wrong bench"));
    EXPECT_TRUE(document.run(run.uuid)->readings[0].withdrawn);
    document.undoStack().undo();
    EXPECT_FALSE(document.run(run.uuid)->readings[0].withdrawn);
}

TEST_F(DocumentTest, a_long_history_undoes_to_nothing_and_redoes_to_everything) {
    const auto unit = add_unit();
    const auto run = start_drain(unit);
    for (int i = 0; i < 5; ++i) {
        clock.advance_hours(1);
        note(run, 100.0 - i, 10.0 * i);
    }
    auto& stack = document.undoStack();
    while (stack.canUndo()) stack.undo();
    EXPECT_TRUE(document.units().empty());
    EXPECT_TRUE(document.runs().empty());
    while (stack.canRedo()) stack.redo();
    ASSERT_NE(document.run(run.uuid), nullptr);
    for (const auto& reading : document.run(run.uuid)->readings) EXPECT_FALSE(reading.withdrawn);
    EXPECT_EQ(document.run(run.uuid)->readings.size(), 5U);
    EXPECT_TRUE(failures.isEmpty()) << failures.join("; ").toStdString();
}

TEST_F(DocumentTest, an_update_that_changes_nothing_is_no_step) {
    const auto unit = add_unit();
    const auto steps = document.undoStack().count();
    ASSERT_TRUE(document.updateUnit(unit));
    EXPECT_EQ(document.undoStack().count(), steps);
}

} // namespace ullage
