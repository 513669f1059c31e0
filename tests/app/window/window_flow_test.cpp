// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "dialogs/cautions.h"
#include "models/logbook_tree_model.h"
#include "pages/run/run_page.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QTreeView>

namespace ullage {

using test::WindowTest;

TEST_F(WindowTest, a_newcomer_is_told_the_three_steps_and_can_begin) {
    EXPECT_EQ(page(), "welcomePage");
    QString all;
    for (const auto* label : window->findChildren<QLabel*>())
        if (label->isVisible()) all += label->text();
    EXPECT_TRUE(all.contains("Add the unit and the meter"));
    EXPECT_TRUE(all.contains("Start a run and note readings"));
    EXPECT_TRUE(all.contains("Read the usable fraction and compare"));
    prompts.to_save = file("first.ullage");
    click("newLogbookButton");
    EXPECT_TRUE(document.isOpen());
    EXPECT_TRUE(QFile::exists(file("first.ullage")));
    EXPECT_TRUE(find<QPushButton>("addUnitButton")->isVisible());
}

TEST_F(WindowTest, from_a_new_logbook_to_an_ended_run_by_the_forms) {
    new_logbook();
    add_unit();
    ASSERT_EQ(document.units().size(), 1U);
    EXPECT_EQ(document.units()[0].rated_energy_wh, 1200.0);
    EXPECT_EQ(page(), "unitPage");
    add_meter();
    ASSERT_EQ(document.meters().size(), 1U);
    EXPECT_EQ(page(), "metersPage");
    window->showUnit(document.units()[0].uuid);
    click("startRunButton");
    click("submitButton");
    ASSERT_EQ(document.runs().size(), 1U);
    EXPECT_EQ(document.runs()[0]->run.meter_uuid, document.meters()[0].uuid);
    EXPECT_EQ(find<QLabel>("cautionLabel")->text(), caution_line());
    EXPECT_TRUE(enabled("endFoundOffAction"));
    trigger("endFoundOffAction");
    click("submitButton");
    EXPECT_EQ(document.runs()[0]->run.end, RunEnd::found_off);
    EXPECT_NE(find<QLabel>("cautionLabel")->text(), caution_line());
    EXPECT_FALSE(enabled("endFoundOffAction"));
    trigger("reopenRunAction");
    EXPECT_EQ(document.runs()[0]->run.end, RunEnd::still_running);
}

TEST_F(WindowTest, what_goes_wrong_on_a_page_stands_in_the_one_message_bar_until_a_success) {
    new_logbook();
    add_unit();
    start_run();
    QApplication::clipboard()->clear();
    trigger("pastePhotoAction");
    EXPECT_TRUE(message().contains("holds no picture")) << message().toStdString();
    trigger("endStoppedAction");
    click("submitButton");
    EXPECT_EQ(document.runs().front()->run.end, RunEnd::stopped_by_tester);
    EXPECT_FALSE(message().contains("holds no picture")) << message().toStdString();
}

TEST_F(WindowTest, undo_takes_the_steps_back_and_the_page_follows) {
    new_logbook();
    add_unit();
    start_run();
    ASSERT_EQ(document.runs().size(), 1U);
    EXPECT_TRUE(window->action("undoAction")->text().contains("start drain"));
    trigger("undoAction");
    EXPECT_TRUE(document.runs().empty());
    EXPECT_EQ(page(), "unitPage");
    trigger("undoAction");
    EXPECT_TRUE(document.units().empty());
    EXPECT_EQ(page(), "welcomePage");
    EXPECT_FALSE(enabled("undoAction"));
    trigger("redoAction");
    EXPECT_EQ(document.units().size(), 1U);
    EXPECT_EQ(page(), "unitPage");
}

TEST_F(WindowTest, withdrawing_asks_nothing_and_can_be_undone) {
    new_logbook();
    add_unit();
    start_run();
    trigger("withdrawRunAction");
    EXPECT_TRUE(document.runs().empty());
    EXPECT_TRUE(message().contains("Undo"));
    trigger("undoAction");
    EXPECT_EQ(document.runs().size(), 1U);
    trigger("withdrawUnitAction");
    EXPECT_TRUE(document.units().empty());
    trigger("undoAction");
    EXPECT_EQ(document.runs().size(), 1U);
}

TEST_F(WindowTest, a_mark_from_the_menu_is_a_note_of_this_moment) {
    new_logbook();
    add_unit();
    start_run();
    clock.advance_hours(2);
    trigger("mark2Action");
    const auto& readings = document.runs()[0]->readings;
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_EQ(readings[0].values.mark, MarkKind::meter_zeroed);
    EXPECT_EQ(readings[0].values.time_ms, clock.now_ms());
    trigger("undoAction");
    EXPECT_TRUE(document.runs()[0]->readings[0].withdrawn);
}

TEST_F(WindowTest, the_last_saving_stands_at_the_bottom) {
    new_logbook();
    EXPECT_TRUE(find<QLabel>("savedLabel")->text().isEmpty());
    add_unit();
    EXPECT_EQ(find<QLabel>("savedLabel")->text(), "saved 16:00:00 ✓");
}

TEST_F(WindowTest, the_tree_chooses_the_page) {
    new_logbook();
    add_unit();
    add_unit("Pelm 900", "900");
    start_run();
    const auto run = document.runs()[0]->run.uuid;
    auto* tree = find<QTreeView>("logbookTree");
    const auto& model = *qobject_cast<LogbookTreeModel*>(tree->model());
    EXPECT_EQ(tree->currentIndex(), model.indexOf(LogbookTreeModel::Row::run, run.text()));
    const auto choose = [&](const QModelIndex& index) {
        ASSERT_TRUE(index.isValid());
        QTest::mouseClick(tree->viewport(), Qt::LeftButton, {}, tree->visualRect(index).center());
        QApplication::processEvents();
    };
    choose(model.indexOf(LogbookTreeModel::Row::comparison));
    EXPECT_EQ(page(), "comparisonPage");
    choose(model.indexOf(LogbookTreeModel::Row::unit, document.units()[0].uuid.text()));
    EXPECT_EQ(page(), "unitPage");
    EXPECT_EQ(find<QLabel>("unitAboutLabel")->text(), "0 runs");
    choose(model.indexOf(LogbookTreeModel::Row::run, run.text()));
    EXPECT_EQ(page(), "runPage");
}

TEST_F(WindowTest, a_unit_without_runs_says_what_to_do) {
    new_logbook();
    add_unit();
    EXPECT_TRUE(find<QLabel>("noRunsLabel")->isVisible());
    start_run();
    window->showUnit(document.units()[0].uuid);
    EXPECT_FALSE(find<QLabel>("noRunsLabel")->isVisible());
    EXPECT_TRUE(find<QWidget>("runsTable")->isVisible());
}

TEST_F(WindowTest, a_refused_withdrawal_of_a_meter_is_told_and_dismissed) {
    new_logbook();
    add_unit();
    add_meter();
    start_run();
    window->showMeter(document.meters()[0].uuid);
    click("withdrawMeterButton");
    EXPECT_EQ(document.meters().size(), 1U);
    EXPECT_TRUE(message().contains("run"));
    click("dismissButton");
    EXPECT_TRUE(message().isEmpty());
}

TEST_F(WindowTest, the_page_of_a_meter_tells_what_it_measured_and_what_an_edit_moved) {
    new_logbook();
    add_unit();
    add_meter();
    start_run();
    const RunId run = document.runs()[0]->run.uuid;
    ReadingValues values;
    values.time_ms = document.clock().now_ms();
    for (int i = 1; i <= 2; ++i) {
        values.time_ms += 3'600'000;
        values.register_wh = 100.0 * i;
        ASSERT_TRUE(document.record(run, values).ok());
    }
    Meter meter = document.meters()[0];
    window->showMeter(meter.uuid);
    EXPECT_TRUE(find<QLabel>("meterStoryLabel")->text().contains("Measured 1 run"));
    meter.correction = 1.004;
    ASSERT_TRUE(document.updateMeter(meter, "calibrated").ok());
    const QString story = find<QLabel>("meterStoryLabel")->text();
    EXPECT_TRUE(story.contains("1 run uses this meter; its delivered energy moved by +0.40 %")) << story.toStdString();
    EXPECT_TRUE(story.contains("correction 1.004")) << story.toStdString();
    EXPECT_TRUE(story.contains("(calibrated)")) << story.toStdString();
}

TEST_F(WindowTest, an_edited_claim_reaches_the_page) {
    new_logbook();
    add_unit();
    click("editUnitButton");
    type("nameEdit", "Osk 1200 Mk 2");
    type("massEdit", "1,5");
    click("submitButton");
    EXPECT_EQ(document.units()[0].mass_kg, 1.5);
    EXPECT_EQ(find<QWidget>("unitPage")->findChild<QLabel*>("unitNameLabel")->text(), "Osk 1200 Mk 2");
}

} // namespace ullage
