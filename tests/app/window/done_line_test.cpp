// SPDX-License-Identifier: GPL-3.0-or-later
// What was done is said with a way back; no key takes away what nobody looks at.
#include "window_fixture.h"

#include "pages/run/readings_view.h"
#include "window/done_line.h"

#include <QAbstractItemModel>
#include <QAction>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTableView>

#include <algorithm>

namespace ullage {

namespace {

class DoneLines : public test::WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        add_unit();
    }
    void run_with_readings() {
        start_run();
        for (const auto& [gauge, wh] : {std::pair("100", "0"), std::pair("95", "60")}) {
            clock.advance_hours(1);
            record(gauge, wh);
        }
    }
    void record(const char* gauge, const char* wh) {
        type("gaugeEdit", gauge);
        type("registerEdit", wh);
        QTest::keyClick(find<QLineEdit>("registerEdit"), Qt::Key_Return);
    }
    [[nodiscard]] long standing() const {
        return std::ranges::count_if(document.runs()[0]->readings, [](const Reading& reading) { return !reading.withdrawn; });
    }
    [[nodiscard]] std::string said() const { return find<DoneLine>("doneLine")->words().toStdString(); }
};

} // namespace

TEST_F(DoneLines, every_step_is_said_and_its_undo_stands_beside_it) {
    run_with_readings();
    EXPECT_EQ(said(), "Recorded 95 %, 60 Wh");
    click("undoDoneButton");
    EXPECT_EQ(standing(), 1);
    EXPECT_EQ(said(), "");
    record("94", "61");
    EXPECT_EQ(said(), "Recorded 94 %, 61 Wh");
    auto* view = find<ReadingsView>("readingsView");
    view->selectReadings({document.runs()[0]->readings.back().uuid});
    trigger("withdrawReadingsAction");
    EXPECT_EQ(said(), "Withdrawn: 94 %, 61 Wh");
    trigger("undoAction");
    EXPECT_EQ(standing(), 2);
}

TEST_F(DoneLines, undo_works_from_the_empty_entry_row_and_takes_back_letters_where_there_are_some) {
    run_with_readings();
    auto* gauge = find<QLineEdit>("gaugeEdit");
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    gauge->setFocus();
    QTest::keyClicks(gauge, "9");
    QTest::keyClick(gauge, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(standing(), 2) << "the letter went";
    EXPECT_TRUE(gauge->text().isEmpty());
    QTest::keyClick(gauge, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(standing(), 1);
}

TEST_F(DoneLines, delete_in_the_table_withdraws_the_current_reading_in_sight_and_says_so) {
    run_with_readings();
    auto* view = find<ReadingsView>("readingsView");
    view->setFocus();
    view->clearSelection();
    view->setCurrentIndex(view->model()->index(view->model()->rowCount() - 1, 0));
    view->clearSelection();
    QTest::keyClick(view, Qt::Key_Delete);
    EXPECT_EQ(standing(), 1);
    EXPECT_EQ(said(), "Withdrawn: 95 %, 60 Wh");
}

TEST_F(DoneLines, withdrawn_readings_can_be_shown_in_their_places) {
    run_with_readings();
    auto* view = find<ReadingsView>("readingsView");
    const int rows = view->model()->rowCount();
    view->selectReadings({document.runs()[0]->readings.back().uuid});
    trigger("withdrawReadingsAction");
    EXPECT_EQ(view->model()->rowCount(), rows - 1);
    trigger("withdrawnReadingsAction");
    ASSERT_EQ(view->model()->rowCount(), rows);
    EXPECT_TRUE(view->model()->index(rows - 1, 6).data().toString().startsWith("withdrawn"));
    view->selectAll();
    trigger("withdrawReadingsAction");
    EXPECT_EQ(standing(), 0) << "only those that stand are withdrawn";
}

TEST_F(DoneLines, no_letter_of_an_open_menu_withdraws_or_removes) {
    QList<QMenu*> menus = window->findChildren<QMenu*>();
    ASSERT_FALSE(menus.isEmpty());
    for (const QMenu* menu : menus)
        for (const QAction* action : menu->actions()) {
            const QString text = QString(action->text()).remove('&');
            const bool takes_away = text.startsWith("Withdraw") || text.startsWith("Remove");
            EXPECT_FALSE(takes_away && action->text().contains('&')) << text.toStdString();
        }
}

TEST_F(DoneLines, enter_presses_the_button_that_has_the_keyboard_and_the_keyboard_is_not_on_withdraw) {
    add_meter();
    EXPECT_EQ(window->focusWidget(), find<QTableView>("metersTable"));
    auto* edit = find<QPushButton>("editMeterButton");
    edit->setFocus();
    QTest::keyClick(edit, Qt::Key_Return);
    auto* form = window->findChild<QDialog*>();
    ASSERT_NE(form, nullptr);
    auto* cancel = form->findChild<QPushButton*>("cancelButton");
    cancel->setFocus();
    QTest::keyClick(cancel, Qt::Key_Return);
    EXPECT_FALSE(form->isVisible()) << "cancelled, not saved";
}

TEST_F(DoneLines, a_second_run_of_a_running_unit_and_a_meter_in_two_running_tests_are_asked_about) {
    add_meter();
    start_run();
    trigger("startRunAction");
    click("submitButton");
    EXPECT_EQ(document.runs().size(), 1U);
    EXPECT_TRUE(find<QLabel>("formQuestionLabel")->text().contains("still running"));
    click("cancelButton");
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    add_unit("Pelm 900", "900");
    trigger("startRunAction");
    click("submitButton");
    EXPECT_EQ(document.runs().size(), 1U);
    const auto labels = window->findChild<QDialog*>("startForm")->findChildren<QLabel*>("formQuestionLabel");
    ASSERT_EQ(labels.size(), 1);
    EXPECT_TRUE(labels[0]->text().contains("Socket meter A is in the running test of Osk 1200")) << labels[0]->text().toStdString();
    click("submitButton");
    EXPECT_EQ(document.runs().size(), 2U) << "asked once and answered";
}

} // namespace ullage
