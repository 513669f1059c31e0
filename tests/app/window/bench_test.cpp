// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logbook_tree_model.h"
#include "pages/bench/bench_panel.h"
#include "services/reminders.h"
#include "support_qt/fake_desktop.h"
#include "window/reminder_bar.h"
#include "window_fixture.h"

#include <QAction>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QMenu>
#include <QTableView>
#include <QTreeView>

#include <algorithm>

namespace ullage::test {
namespace {

constexpr UtcMs minute_ms = 60'000;

/// Two running drains, an hour apart, each with a reading and an interval of 30 minutes; the clock stands at the second reading.
class BenchTest : public WindowTest {
protected:
    void SetUp() override {
        show_again();
        new_logbook();
        osk = start("Osk 1200");
        clock.advance_hours(1);
        pelm = start("Pelm 900");
    }
    void TearDown() override { window.reset(); } // before what it asks of the desktop
    void show_again() {
        window = std::make_unique<MainWindow>(document, settings, prompts, Desktop{&notifier, &inhibitor});
        window->makeAllPages();
        window->resize(1280, 800);
        window->show();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }
    RunId start(const char* name) {
        Unit unit;
        unit.name = name;
        unit.rated_energy_wh = 1000;
        ullage::Run run;
        run.unit_uuid = document.addUnit(unit).value().uuid;
        run.started_full = true;
        const auto uuid = document.addRun(run).value().uuid;
        window->reminders().setRule(uuid, {30, std::nullopt, std::nullopt});
        note(uuid, 100, 0);
        return uuid;
    }
    void note(const RunId& run, double gauge_percent, double register_wh) {
        ReadingValues values;
        values.time_ms = clock.now_ms();
        values.gauge_percent = gauge_percent;
        values.register_wh = register_wh;
        ASSERT_TRUE(document.record(run, values));
    }
    void pass(int minutes) {
        clock.advance_ms(minutes * minute_ms);
        window->reminders().tick();
        QApplication::processEvents();
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* at = QApplication::focusWidget() ? QApplication::focusWidget() : window.get();
        QTest::keyClick(at, key, modifiers);
        QApplication::processEvents();
    }
    [[nodiscard]] std::vector<BenchPanel*> panels() const {
        std::vector<BenchPanel*> shown;
        for (auto* panel : window->findChildren<BenchPanel*>())
            if (panel->isVisible()) shown.push_back(panel);
        std::ranges::sort(shown, {}, [](const BenchPanel* panel) { return std::pair(panel->y(), panel->x()); });
        return shown;
    }
    [[nodiscard]] QString label(const QWidget* in, const char* name) const {
        const auto* found = in->findChild<QLabel*>(QString::fromLatin1(name));
        return found && found->isVisible() ? found->text() : QString();
    }
    [[nodiscard]] QString strip(const char* name) const { return label(find<QWidget>("runPage"), name); }
    [[nodiscard]] QString focus() const { return QApplication::focusWidget() ? QApplication::focusWidget()->objectName() : QString(); }
    [[nodiscard]] QString shown_unit() const { return label(find<QWidget>("runHead"), "unitNameLabel"); }
    [[nodiscard]] std::vector<Reading> standing(const RunId& run) const {
        std::vector<Reading> found;
        for (const auto& reading : document.run(run)->readings)
            if (!reading.withdrawn) found.push_back(reading);
        return found;
    }

    FakeNotifier notifier;
    FakeInhibitor inhibitor;
    RunId osk, pelm;
};

} // namespace

TEST_F(BenchTest, ctrl_and_a_number_switch_between_running_tests_ready_to_type) {
    window->showRun(osk);
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(page(), "runPage");
    EXPECT_EQ(shown_unit(), "Pelm 900");
    EXPECT_EQ(focus(), "gaugeEdit");
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(shown_unit(), "Osk 1200");
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(shown_unit(), "Osk 1200") << "there is no third";
}

TEST_F(BenchTest, what_is_half_typed_waits_with_its_run) {
    press(Qt::Key_1, Qt::ControlModifier);
    QTest::keyClicks(find<QLineEdit>("gaugeEdit"), "87");
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text(), "");
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text(), "87");
}

TEST_F(BenchTest, the_menu_of_running_tests_names_unit_gauge_and_due_time) {
    pass(10);
    const auto text = window->action("running2Action")->text();
    for (const char* part : {"Pelm 900", "100 %", "in 20 min"}) EXPECT_TRUE(text.contains(part)) << text.toStdString();
    EXPECT_FALSE(window->action("running3Action")->isVisible());
    pass(25);
    EXPECT_TRUE(window->action("running1Action")->text().contains("overdue")) << window->action("running1Action")->text().toStdString();
    auto run = document.run(osk)->run;
    run.end = RunEnd::found_off;
    ASSERT_TRUE(document.updateRun(run));
    EXPECT_TRUE(window->action("running1Action")->text().contains("Pelm 900")) << "an ended test leaves its number";
    EXPECT_FALSE(window->action("running2Action")->isVisible());
}

TEST_F(BenchTest, the_bench_page_shows_all_running_tests_with_countdown_and_the_overdue_by_word) {
    note(osk, 95, 50);
    trigger("benchAction");
    EXPECT_EQ(page(), "benchPage");
    auto shown = panels();
    ASSERT_EQ(shown.size(), 2U);
    EXPECT_EQ(label(shown[0], "benchUnitLabel"), "Osk 1200");
    EXPECT_EQ(label(shown[1], "benchUnitLabel"), "Pelm 900");
    EXPECT_EQ(label(shown[0], "gaugeFigureLabel"), "95");
    EXPECT_EQ(label(shown[0], "elapsedFigureLabel"), "1 h 00");
    EXPECT_EQ(label(shown[0], "deliveredFigureLabel"), "50");
    EXPECT_EQ(label(shown[0], "benchKeysLabel"), "Ctrl+1");
    EXPECT_FALSE(label(shown[0], "cutOffFigureLabel").isEmpty());
    EXPECT_TRUE(label(shown[0], "benchDueLabel").contains("in 30 min"));
    pass(20);
    EXPECT_TRUE(label(shown[1], "benchDueLabel").contains("in 10 min"));
    EXPECT_EQ(label(shown[1], "ageFigureLabel"), "20");
    note(osk, 93, 60);
    pass(13);
    EXPECT_TRUE(label(shown[1], "benchDueLabel").contains("overdue 3 min")) << label(shown[1], "benchDueLabel").toStdString();
    EXPECT_NE(label(shown[1], "benchDueLabel").at(0), label(shown[0], "benchDueLabel").at(0)) << "told by shape too";
    EXPECT_TRUE(label(find<QWidget>("benchPage"), "benchPageAboutLabel").contains("2 tests, 1 with a reading due"));
}

TEST_F(BenchTest, enter_reading_on_the_bench_page_leads_to_the_entry_row_of_that_run) {
    trigger("benchAction");
    QTest::mouseClick(panels()[1]->findChild<QPushButton*>("benchReadButton"), Qt::LeftButton);
    QApplication::processEvents();
    EXPECT_EQ(shown_unit(), "Pelm 900");
    EXPECT_EQ(focus(), "gaugeEdit");
}

TEST_F(BenchTest, an_empty_bench_says_what_to_do) {
    for (const auto& uuid : {osk, pelm}) {
        auto run = document.run(uuid)->run;
        run.end = RunEnd::stopped_by_tester;
        ASSERT_TRUE(document.updateRun(run));
    }
    trigger("benchAction");
    EXPECT_TRUE(panels().empty());
    EXPECT_TRUE(find<QLabel>("noRunningTestsLabel")->isVisible());
    click("benchStartButton");
    EXPECT_NE(window->findChild<QWidget*>("startForm"), nullptr);
}

TEST_F(BenchTest, the_strip_counts_down_and_a_due_reading_calls_from_every_page) {
    window->showRun(pelm);
    pass(18);
    EXPECT_EQ(strip("dueFigureLabel"), "in 12");
    EXPECT_EQ(strip("dueRestLabel"), "min");
    window->showComparison();
    const auto* bar = find<ReminderBar>("reminderBar");
    note(osk, 97, 10);
    pass(13);
    EXPECT_TRUE(bar->isVisible());
    EXPECT_TRUE(bar->words().contains("Pelm 900")) << bar->words().toStdString();
    EXPECT_TRUE(bar->words().contains("overdue 1 min") || bar->words().contains("due now"));
    EXPECT_EQ(notifier.titles.filter("Pelm 900").size(), 1);
    click("reminderReadButton");
    EXPECT_EQ(shown_unit(), "Pelm 900");
    EXPECT_EQ(focus(), "gaugeEdit");
    EXPECT_EQ(strip("dueFigureLabel"), "overdue");
    QTest::keyClicks(find<QLineEdit>("gaugeEdit"), "96");
    press(Qt::Key_Return);
    EXPECT_FALSE(bar->isVisible());
    EXPECT_EQ(strip("dueFigureLabel"), "in 30");
}

TEST_F(BenchTest, snoozing_by_key_and_by_button_puts_the_call_off) {
    note(osk, 97, 10);
    window->showRun(pelm);
    pass(31);
    const auto* bar = find<ReminderBar>("reminderBar");
    ASSERT_TRUE(bar->isVisible());
    press(Qt::Key_5, Qt::AltModifier); // of the two the one that calls longest
    click("snooze10Button");
    EXPECT_FALSE(bar->isVisible());
    pass(6);
    EXPECT_TRUE(bar->isVisible());
    pass(5);
    EXPECT_TRUE(bar->words().contains("one more test")) << bar->words().toStdString();
}

TEST_F(BenchTest, snoozing_what_is_not_due_says_so) {
    note(osk, 97, 10);
    window->showRun(pelm);
    press(Qt::Key_5, Qt::AltModifier);
    EXPECT_TRUE(message().contains(QStringLiteral("Nothing to snooze"))) << message().toStdString();
    EXPECT_TRUE(message().contains(QStringLiteral("only in"))) << message().toStdString();
}

TEST_F(BenchTest, the_tree_marks_an_overdue_run) {
    const auto* tree = find<QTreeView>("logbookTree");
    const auto& model = *qobject_cast<LogbookTreeModel*>(tree->model());
    pass(31);
    EXPECT_TRUE(model.indexOf(LogbookTreeModel::Row::run, pelm.text()).data(LogbookTreeModel::OverdueRole).toBool());
    note(pelm, 97, 10);
    EXPECT_FALSE(model.indexOf(LogbookTreeModel::Row::run, pelm.text()).data(LogbookTreeModel::OverdueRole).toBool());
}

TEST_F(BenchTest, a_click_on_the_notification_leads_to_the_due_reading) {
    window->showComparison();
    note(pelm, 99, 5);
    pass(1);
    notifier.click();
    EXPECT_EQ(shown_unit(), "Osk 1200");
    EXPECT_EQ(focus(), "gaugeEdit");
}

TEST_F(BenchTest, the_rule_is_edited_in_a_form_of_its_own) {
    window->showRun(pelm);
    trigger("reminderRuleAction");
    EXPECT_EQ(find<QLineEdit>("everyEdit")->text(), "30 min");
    type("everyEdit", "1 h");
    type("dropEdit", "10 points");
    click("submitButton");
    EXPECT_EQ(window->reminders().rule(pelm), (ReadingRule{60, 10, std::nullopt}));
    EXPECT_EQ(window->reminders().rule(osk).every_min, 30.0);
}

TEST_F(BenchTest, the_machine_stays_awake_while_a_test_runs_and_no_longer) {
    EXPECT_TRUE(inhibitor.held);
    EXPECT_EQ(find<QLabel>("awakeLabel")->text(), "kept awake");
    for (const auto& uuid : {osk, pelm}) {
        auto run = document.run(uuid)->run;
        run.end = RunEnd::found_off;
        ASSERT_TRUE(document.updateRun(run));
    }
    EXPECT_FALSE(inhibitor.held);
    document.undoStack().undo();
    EXPECT_TRUE(inhibitor.held);
    window.reset();
    EXPECT_FALSE(inhibitor.held) << "the program ends";
}

TEST_F(BenchTest, a_desktop_that_cannot_stay_awake_is_told_in_the_status_line) {
    window.reset();
    inhibitor.offers = false;
    show_again();
    EXPECT_TRUE(find<QLabel>("awakeLabel")->text().contains("set it yourself"));
}

TEST_F(BenchTest, a_mark_by_one_key_is_noted_at_once_and_undone_in_one_step) {
    window->showRun(pelm);
    window->activateWindow();
    press(Qt::Key_Return, Qt::ControlModifier);
    clock.advance_ms(5 * minute_ms);
    press(Qt::Key_F3);
    ASSERT_EQ(standing(pelm).size(), 2U);
    EXPECT_EQ(standing(pelm)[1].values.mark, MarkKind::load_changed);
    EXPECT_EQ(standing(pelm)[1].values.time_ms, clock.now_ms());
    EXPECT_EQ(focus(), "gaugeEdit");
    trigger("undoAction");
    EXPECT_EQ(standing(pelm).size(), 1U);
}

TEST_F(BenchTest, a_mark_joins_what_is_half_typed) {
    press(Qt::Key_2, Qt::ControlModifier);
    clock.advance_ms(5 * minute_ms);
    QTest::keyClicks(find<QLineEdit>("gaugeEdit"), "98");
    QTest::keyClicks(find<QLineEdit>("timeEdit"), "-2m");
    press(Qt::Key_F6);
    ASSERT_EQ(standing(pelm).size(), 2U);
    EXPECT_EQ(standing(pelm)[1].values.mark, MarkKind::output_tripped);
    EXPECT_EQ(standing(pelm)[1].values.gauge_percent, 98.0);
    EXPECT_EQ(standing(pelm)[1].values.time_ms, clock.now_ms() - 2 * minute_ms);
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text(), "");
    EXPECT_EQ(focus(), "gaugeEdit");
}

TEST_F(BenchTest, the_last_reading_is_amended_by_f2_and_the_keyboard_comes_back) {
    clock.advance_ms(5 * minute_ms);
    note(pelm, 89, 20);
    press(Qt::Key_2, Qt::ControlModifier);
    press(Qt::Key_F2);
    auto* gauge = find<QLineEdit>("amendGaugeEdit");
    ASSERT_NE(gauge, nullptr);
    EXPECT_EQ(gauge->text(), "89");
    gauge->setText("98");
    QTest::keyClick(gauge, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([this] { return focus() == "gaugeEdit"; })) << focus().toStdString();
    EXPECT_EQ(standing(pelm)[1].values.gauge_percent, 98.0);
}

TEST_F(BenchTest, delete_in_the_table_withdraws_the_chosen_reading_and_undo_brings_it_back) {
    press(Qt::Key_2, Qt::ControlModifier);
    auto* table = find<QTableView>("readingsView");
    table->setFocus();
    table->selectRow(table->model()->rowCount() - 1);
    press(Qt::Key_Delete);
    EXPECT_TRUE(standing(pelm).empty());
    trigger("undoAction");
    EXPECT_EQ(standing(pelm).size(), 1U);
    // In a text field the same key deletes a letter and nothing else.
    find<QLineEdit>("gaugeEdit")->setFocus();
    QTest::keyClicks(find<QLineEdit>("gaugeEdit"), "12");
    find<QLineEdit>("gaugeEdit")->setCursorPosition(0);
    press(Qt::Key_Delete);
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text(), "2");
    EXPECT_EQ(standing(pelm).size(), 1U);
}

TEST_F(BenchTest, quitting_while_tests_run_says_what_stops_and_what_remains_and_can_be_thought_better_of) {
    window->reminders().setRule(pelm, {});
    pass(10);
    trigger("quitAction");
    ASSERT_TRUE(window->isVisible());
    EXPECT_EQ(find<QDialog>("leaveForm")->windowTitle(), "Quit while 2 tests are running?");
    const QString tests = find<QLabel>("leaveTestsLabel")->text();
    EXPECT_TRUE(tests.contains("Osk 1200, drain: next reading overdue 40 min")) << tests.toStdString();
    EXPECT_TRUE(tests.contains("Pelm 900, drain: no reminder")) << tests.toStdString();
    EXPECT_TRUE(find<QLabel>("leaveStopsLabel")->text().contains("no longer kept awake"));
    EXPECT_TRUE(find<QLabel>("leaveRemainsLabel")->text().contains("half typed"));
    click("cancelButton");
    EXPECT_TRUE(window->isVisible());
    EXPECT_TRUE(inhibitor.held);
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    trigger("quitAction");
    click("submitButton");
    EXPECT_FALSE(window->isVisible());
}

TEST_F(BenchTest, the_program_opens_where_it_stood) {
    const auto path = document.path();
    for (const char* where : {"benchPage", "runPage", "comparisonPage"}) {
        if (QLatin1String(where) == QLatin1String("benchPage")) window->showBench();
        if (QLatin1String(where) == QLatin1String("runPage")) window->showRun(pelm);
        if (QLatin1String(where) == QLatin1String("comparisonPage")) window->showComparison();
        window->close();
        window.reset();
        document.close();
        show_again();
        open_last_logbook();
        EXPECT_EQ(document.path(), path);
        EXPECT_EQ(page(), where);
        if (page() == "runPage") {
            EXPECT_EQ(shown_unit(), "Pelm 900");
        }
    }
}

TEST_F(BenchTest, a_start_is_one_step_and_its_kind_and_reminders_are_proposed_next_time) {
    window->showUnit(document.units()[0].uuid);
    clock.advance_ms(minute_ms); // later than the others, so that it is the last of the open runs
    trigger("startRunAction");
    click("sustainedPresetButton");
    type("loadEdit", "two heaters");
    type("everyEdit", "7 min");
    type("gaugeStepEdit", "5 %");
    auto* form = window->findChild<QWidget*>("startForm");
    ASSERT_NE(form, nullptr);
    form->findChild<QLineEdit*>("gaugeEdit")->setText("100");
    const int steps = document.undoStack().count();
    click("submitButton");
    EXPECT_EQ(document.undoStack().count(), steps) << "another test of this unit runs: asked";
    click("submitButton");
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(document.undoStack().count(), steps + 1);
    EXPECT_EQ(window->reminders().openRuns().size(), 3U);
    EXPECT_EQ(document.units()[0].gauge_step_percent, 5.0);
    EXPECT_EQ(page(), "runPage");
    const auto started = window->reminders().openRuns().back()->run;
    EXPECT_EQ(started.kind, RunKind::sustained_output);
    EXPECT_EQ(window->reminders().rule(started.uuid).every_min, 7.0);
    trigger("undoAction");
    EXPECT_EQ(window->reminders().openRuns().size(), 2U);
    EXPECT_EQ(document.units()[0].gauge_step_percent, 1.0);

    window->showUnit(document.units()[0].uuid);
    trigger("startRunAction");
    EXPECT_TRUE(find<QPushButton>("sustainedPresetButton")->isChecked());
    EXPECT_EQ(find<QLineEdit>("everyEdit")->text(), "7 min");
}

} // namespace ullage::test
