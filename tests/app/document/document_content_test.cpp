// SPDX-License-Identifier: GPL-3.0-or-later
#include "document_fixture.h"

#include "document/unit_comparer.h"
#include "formats/sheets/run_sheet.h"

#include <QFile>

namespace ullage {

using test::DocumentTest;

TEST_F(DocumentTest, what_was_recorded_is_there_after_closing_and_opening) {
    const auto unit = add_unit();
    const auto run = start_drain(unit);
    note(run, 100, 4312);
    document.close();
    EXPECT_FALSE(document.isOpen());
    EXPECT_TRUE(document.units().empty());
    ASSERT_TRUE(document.open(file()));
    ASSERT_NE(document.run(run.uuid), nullptr);
    ASSERT_EQ(document.run(run.uuid)->readings.size(), 1U);
    EXPECT_EQ(document.run(run.uuid)->readings[0].values.register_wh, 4312.0);
    EXPECT_FALSE(document.undoStack().canUndo());
}

TEST_F(DocumentTest, each_command_announces_what_it_changed_and_when_it_was_saved) {
    const auto unit = add_unit();
    EXPECT_EQ(events, QStringList{"units"});
    events.clear();
    const auto run = start_drain(unit);
    EXPECT_EQ(events, QStringList{"runs"});
    events.clear();
    clock.advance_hours(1);
    note(run, 100, 4312);
    EXPECT_TRUE(events.contains("readings"));
    EXPECT_EQ(last_readings_of, run.uuid);
    EXPECT_EQ(saved_ms, clock.now_ms());
    events.clear();
    clock.advance_hours(1);
    note(run, 95, 4383);
    EXPECT_EQ(events, QStringList{"readings"}) << "a later reading leaves the order of runs as it was";
}

TEST_F(DocumentTest, the_analysis_follows_each_reading) {
    const auto run = start_drain(add_unit());
    note(run, 100, 4312);
    clock.advance_hours(2);
    note(run, 90, 4412);
    ASSERT_TRUE(document.analysis(run.uuid).energy.delivered_wh.value.has_value());
    EXPECT_DOUBLE_EQ(*document.analysis(run.uuid).energy.delivered_wh.value, 100.0);
    clock.advance_hours(2);
    note(run, 80, 4520);
    EXPECT_DOUBLE_EQ(*document.analysis(run.uuid).energy.delivered_wh.value, 208.0);
}

TEST_F(DocumentTest, an_edited_claim_reaches_the_analysis_of_the_units_runs) {
    auto unit = add_unit();
    auto run = start_drain(unit);
    note(run, 100, 4312);
    clock.advance_hours(10);
    note(run, 0, 5272);
    run.end = RunEnd::cut_off_seen;
    ASSERT_TRUE(document.updateRun(run));
    ASSERT_TRUE(document.analysis(run.uuid).energy.usable_fraction.value.has_value());
    EXPECT_NEAR(*document.analysis(run.uuid).energy.usable_fraction.value, 960.0 / 1200.0, 1e-12);
    unit.rated_energy_wh = 1000;
    events.clear();
    ASSERT_TRUE(document.updateUnit(unit));
    EXPECT_NEAR(*document.analysis(run.uuid).energy.usable_fraction.value, 0.96, 1e-12);
    EXPECT_EQ(events, (QStringList{"units", "runs", "readings"}));
}

TEST_F(DocumentTest, runs_are_listed_by_unit_and_by_first_reading) {
    const auto pelm = add_unit("Pelm 900");
    const auto osk = add_unit("Osk 1200");
    const auto later = start_drain(osk);
    const auto earlier = start_drain(osk);
    const auto other = start_drain(pelm);
    clock.advance_hours(30);
    note(later, 100, 10);
    clock.advance_hours(-20);
    note(earlier, 100, 10);
    const auto all = document.runs();
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[0]->run.uuid, earlier.uuid);
    EXPECT_EQ(all[1]->run.uuid, later.uuid);
    EXPECT_EQ(all[2]->run.uuid, other.uuid);
    EXPECT_EQ(document.runs(pelm.uuid).size(), 1U);
    EXPECT_EQ(document.run(later.uuid)->number, 2);
}

TEST_F(DocumentTest, the_comparison_leaves_withdrawn_units_out) {
    for (const char* name : {"Osk 1200", "Pelm 900"}) {
        const auto run = start_drain(add_unit(name));
        note(run, 100, 0);
        clock.advance_hours(3);
        note(run, 40, 600);
    }
    EXPECT_EQ(UnitComparer(document).comparison(CompareRows::one_per_unit).rows.size(), 2U);
    ASSERT_TRUE(document.withdrawUnit(document.units()[0].uuid));
    EXPECT_EQ(UnitComparer(document).comparison(CompareRows::one_per_unit).rows.size(), 1U);
    EXPECT_EQ(document.runs().size(), 1U);
}

TEST_F(DocumentTest, a_saved_copy_opens_with_the_same_content) {
    const auto run = start_drain(add_unit());
    note(run, 100, 4312);
    ASSERT_TRUE(document.saveCopy(file("copy.ullage")));
    Document copy(clock);
    ASSERT_TRUE(copy.open(file("copy.ullage")));
    ASSERT_NE(copy.run(run.uuid), nullptr);
    EXPECT_EQ(copy.run(run.uuid)->readings.size(), 1U);
}

TEST_F(DocumentTest, a_draft_survives_closing_and_is_no_undoable_step) {
    const auto run = start_drain(add_unit());
    const auto steps = document.undoStack().count();
    ASSERT_TRUE(document.keepDraft(run.uuid, "71\t4774"));
    EXPECT_EQ(document.undoStack().count(), steps);
    document.close();
    ASSERT_TRUE(document.open(file()));
    EXPECT_EQ(document.draft(run.uuid), "71\t4774");
}

TEST_F(DocumentTest, an_imported_sheet_is_a_run_with_its_readings) {
    const auto sheet = read_run_sheet("# unit: Tarrow 2k\n# rated_energy_wh: 2000\n# run: drain\n# started_full: yes\n"
                                      "# ended: stopped by tester\n# time_zone: UTC\n"
                                      "time,gauge_percent,register_wh,meter_w,display_w,mark,remark\n"
                                      "2027-05-06T10:00Z,100,0,,,,\n2027-05-06T12:00Z,82,360,,,,\n",
                                      "tarrow.csv");
    ASSERT_TRUE(sheet) << sheet.error().sentence();
    const auto brought = document.import(sheet.value().record);
    ASSERT_TRUE(brought) << brought.error().sentence();
    ASSERT_EQ(document.units().size(), 1U);
    EXPECT_EQ(document.units()[0].name, "Tarrow 2k");
    ASSERT_EQ(document.runs().size(), 1U);
    EXPECT_EQ(document.runs()[0]->readings.size(), 2U);
    document.undoStack().undo();
    EXPECT_TRUE(document.runs().empty());
    document.undoStack().redo();
    EXPECT_EQ(document.runs().size(), 1U);
}

} // namespace ullage
