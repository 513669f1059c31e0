// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/amend_dialog.h"
#include "pages/run/readings_view.h"
#include "run_page_fixture.h"

#include <QAction>
#include <QPushButton>
#include <QTest>

namespace ullage {

using test::FullDisk;
using test::RunPageTest;

namespace {

class AmendTest : public RunPageTest {
protected:
    void SetUp() override {
        RunPageTest::SetUp();
        recordSample(3);
        showPage();
        view = find<ReadingsView>("readingsView");
        ASSERT_NE(view, nullptr);
    }
    [[nodiscard]] ReadingId uuid(std::size_t at) const { return readings()[at].uuid; }
    [[nodiscard]] AmendDialog* dialog() const { return page->findChild<AmendDialog*>(); }
    /// Opens the dialog on a reading as a tester does: chooses it and presses F2.
    void open(std::size_t at) {
        view->selectReadings({uuid(at)});
        view->setFocus();
        QTest::keyClick(view, Qt::Key_F2);
        ASSERT_NE(dialog(), nullptr);
    }
    void set(const char* field, const char* text) {
        auto* edit = dialog()->findChild<QLineEdit*>(QLatin1String(field));
        ASSERT_NE(edit, nullptr) << field;
        edit->clear();
        QTest::keyClicks(edit, QString::fromUtf8(text));
    }
    void submit() { QTest::mouseClick(dialog()->findChild<QPushButton*>(QStringLiteral("amendButton")), Qt::LeftButton); }
    [[nodiscard]] QAction* action(const char* name) const {
        for (QAction* each : page->runActions())
            if (each->objectName() == QLatin1String(name)) return each;
        return nullptr;
    }

    ReadingsView* view = nullptr;
};

} // namespace

TEST_F(AmendTest, f2_amends_a_reading_and_its_history_keeps_the_old_value) {
    const ReadingId amended = uuid(1);
    open(1);
    set("amendRegisterEdit", "4,384 kWh");
    set("amendReasonEdit", "misread in the dark");
    submit();
    EXPECT_TRUE(QTest::qWaitFor([this] { return dialog() == nullptr; }));
    EXPECT_EQ(readings()[1].values.register_wh, 4384.0);
    EXPECT_EQ(readings()[1].values.gauge_percent, 95.0);
    const auto history = document.history(amended);
    ASSERT_TRUE(history);
    ASSERT_EQ(history.value().size(), 2U);
    EXPECT_EQ(history.value()[0].values.register_wh, 4383.0);
    EXPECT_EQ(history.value()[1].reason, "misread in the dark");

    const auto* model = static_cast<const ReadingsModel*>(view->model());
    const QModelIndex time = model->index(model->rowOf(amended), ReadingsRow::time);
    EXPECT_TRUE(time.data(ReadingsModel::AmendedRole).toBool());
    const QString tip = time.data(Qt::ToolTipRole).toString();
    EXPECT_TRUE(tip.contains(QStringLiteral("4383 Wh"))) << tip.toStdString();
    EXPECT_TRUE(tip.contains(QStringLiteral("4384 Wh (misread in the dark)"))) << tip.toStdString();
}

TEST_F(AmendTest, an_amendment_can_be_undone_and_redone) {
    open(1);
    set("amendGaugeEdit", "94");
    submit();
    ASSERT_EQ(readings()[1].values.gauge_percent, 94.0);
    document.undoStack().undo();
    EXPECT_EQ(readings()[1].values.gauge_percent, 95.0);
    const auto* model = view->model();
    EXPECT_EQ(model->index(2, ReadingsRow::gauge).data().toString(), QStringLiteral("95"));
    document.undoStack().redo();
    EXPECT_EQ(model->index(2, ReadingsRow::gauge).data().toString(), QStringLiteral("94"));
}

TEST_F(AmendTest, a_recorded_reading_can_be_undone_and_redone) {
    clock.advance_hours(1);
    type("gaugeEdit", "81");
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 4U);
    EXPECT_EQ(view->model()->rowCount(), 5);
    document.undoStack().undo();
    EXPECT_EQ(readings().size(), 3U);
    EXPECT_EQ(view->model()->rowCount(), 4); // a withdrawn reading is not shown
    document.undoStack().redo();
    EXPECT_EQ(view->model()->rowCount(), 5);
}

TEST_F(AmendTest, a_double_click_amends_too) {
    const auto* model = static_cast<const ReadingsModel*>(view->model());
    const QPoint place = view->visualRect(model->index(2, ReadingsRow::gauge)).center();
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, place);
    QTest::mouseDClick(view->viewport(), Qt::LeftButton, {}, place);
    ASSERT_NE(dialog(), nullptr);
    EXPECT_EQ(dialog()->findChild<QLineEdit*>(QStringLiteral("amendGaugeEdit"))->text(), QStringLiteral("95"));
}

TEST_F(AmendTest, the_dialog_shows_every_value_and_the_history) {
    open(0);
    EXPECT_EQ(dialog()->findChild<QLineEdit*>(QStringLiteral("amendTimeEdit"))->text(), QStringLiteral("14 May 2027 18:00"));
    EXPECT_EQ(dialog()->findChild<QLineEdit*>(QStringLiteral("amendRemarkEdit"))->text(), QStringLiteral("start, full"));
    EXPECT_TRUE(dialog()->findChild<QLabel*>(QStringLiteral("amendHistoryLabel"))->text().contains(QStringLiteral("4312 Wh")));
}

TEST_F(AmendTest, a_text_that_cannot_be_read_keeps_the_dialog_open) {
    open(1);
    set("amendGaugeEdit", "lots");
    submit();
    ASSERT_NE(dialog(), nullptr);
    EXPECT_TRUE(dialog()->isVisible());
    EXPECT_TRUE(dialog()->findChild<QLabel*>(QStringLiteral("amendMessageLabel"))->text().contains(QStringLiteral("lots")));
    EXPECT_EQ(readings()[1].version, 1);
}

TEST_F(AmendTest, what_the_store_refuses_keeps_the_dialog_open_with_its_words) {
    open(1);
    submit(); // nothing changed
    ASSERT_NE(dialog(), nullptr);
    EXPECT_TRUE(dialog()->isVisible());
    EXPECT_FALSE(dialog()->findChild<QLabel*>(QStringLiteral("amendMessageLabel"))->text().isEmpty());
    set("amendGaugeEdit", "94");
    {
        const FullDisk full;
        submit();
    }
    ASSERT_NE(dialog(), nullptr);
    EXPECT_EQ(readings()[1].values.gauge_percent, 95.0);
    EXPECT_EQ(dialog()->findChild<QLineEdit*>(QStringLiteral("amendGaugeEdit"))->text(), QStringLiteral("94"));
}

TEST_F(AmendTest, withdrawing_takes_the_chosen_readings_out_until_undone) {
    view->clearSelection();
    EXPECT_FALSE(action("withdrawAction")->isEnabled());
    const auto* model = static_cast<const ReadingsModel*>(view->model());
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->visualRect(model->index(2, ReadingsRow::gauge)).center());
    ASSERT_TRUE(action("withdrawAction")->isEnabled());
    action("withdrawAction")->trigger();
    EXPECT_EQ(readings().size(), 2U);
    EXPECT_EQ(model->rowCount(), 3);
    document.undoStack().undo();
    EXPECT_EQ(readings().size(), 3U);
}

TEST_F(AmendTest, amend_wants_exactly_one_reading) {
    const auto* model = static_cast<const ReadingsModel*>(view->model());
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->visualRect(model->index(1, 0)).center());
    EXPECT_TRUE(action("amendAction")->isEnabled());
    QTest::mouseClick(view->viewport(), Qt::LeftButton, Qt::ShiftModifier, view->visualRect(model->index(2, 0)).center());
    EXPECT_FALSE(action("amendAction")->isEnabled());
    EXPECT_TRUE(action("withdrawAction")->isEnabled());
}

TEST_F(AmendTest, a_failed_withdrawal_is_said_on_the_page) {
    const auto* model = static_cast<const ReadingsModel*>(view->model());
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->visualRect(model->index(1, 0)).center());
    {
        const FullDisk full;
        action("withdrawAction")->trigger();
    }
    EXPECT_EQ(readings().size(), 3U);
    ASSERT_EQ(errors.size(), 1);
    EXPECT_FALSE(errors.front().isEmpty());
}

TEST_F(AmendTest, the_form_that_ends_the_run_is_asked_of_the_window_and_an_ended_run_offers_no_end) {
    int asked = 0;
    QObject::connect(page, &RunPage::endRunAsked, page, [&asked] { ++asked; });
    action("endRunAction")->trigger();
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(record().run.end, RunEnd::still_running) << "nothing is done before it is said how";
    ullage::Run ended = record().run;
    ended.end = RunEnd::stopped_by_tester;
    ASSERT_TRUE(document.updateRun(ended));
    EXPECT_EQ(find<QLabel>("runStateLabel")->text(), QStringLiteral("stopped by tester"));
    EXPECT_FALSE(action("endRunAction")->isVisible());
    document.undoStack().undo();
    EXPECT_EQ(find<QLabel>("runStateLabel")->text(), QStringLiteral("running"));
}

TEST_F(AmendTest, editing_the_run_is_asked_of_the_window) {
    RunId asked;
    QObject::connect(page, &RunPage::editRunAsked, page, [&asked](const RunId& uuid_asked) { asked = uuid_asked; });
    action("editRunAction")->trigger();
    EXPECT_EQ(asked, run.uuid);
}

} // namespace ullage
