// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/appearance.h"
#include "services/reminders.h"
#include "window_fixture.h"

#include <QStackedWidget>
#include <QTabWidget>

namespace ullage::test {
namespace {

/// The window at 200 % of the desktop's text, and back again.
class LargeTextTest : public WindowTest {
protected:
    void SetUp() override {
        // Before the window is made: to put large text on all of its parts takes seconds. That the text grows under it, WindowTest shows.
        settings.setTextStep(Settings::most_text_step);
        apply_appearance(*qApp, settings);
        WindowTest::SetUp();
        new_logbook();
        add_unit();
        add_meter();
        start_run();
    }
    void TearDown() override {
        settings.setTextStep(0);
        apply_appearance(*qApp, settings);
    }
};

} // namespace

TEST_F(LargeTextTest, text_grows_to_twice_the_desktops) {
    const auto large = QApplication::font().pointSizeF();
    trigger("usualTextAction");
    EXPECT_NEAR(large, 2 * QApplication::font().pointSizeF(), 0.05);
}

TEST_F(LargeTextTest, at_twice_the_text_the_window_still_fits_1280_by_800_while_a_reading_is_due) {
    const auto run = document.runs()[0]->run.uuid;
    window->reminders().setRule(run, {30, std::nullopt, std::nullopt});
    ReadingValues values;
    values.time_ms = clock.now_ms();
    values.gauge_percent = 100;
    ASSERT_TRUE(document.record(run, values));
    clock.advance_hours(1);
    window->reminders().tick();
    QApplication::processEvents();
    ASSERT_TRUE(find<QWidget>("reminderBar")->isVisible());
    const auto* pages = find<QStackedWidget>("pagesStack");
    for (int i = 0; i < pages->count(); ++i) {
        const auto* page = pages->widget(i);
        EXPECT_LE(page->minimumSizeHint().width(), 1280 - 145) << page->objectName().toStdString();
        EXPECT_LE(page->minimumSizeHint().height(), 700) << page->objectName().toStdString();
    }
    for (const char* name : {"reminderBar", "statusLine", "logbookTree"})
        EXPECT_LE(find<QWidget>(name)->minimumSizeHint().width(), 1280 - 145) << name;
    window->showRun(run);
    window->resize(1280, 800);
    EXPECT_TRUE(QTest::qWaitFor([this] { return window->size() == QSize(1280, 800); })) << window->height();
    EXPECT_LE(window->minimumSizeHint().width(), 1280);
    EXPECT_LE(window->minimumSizeHint().height(), 800);
    for (const char* name : {"statusLine", "entryRow"}) {
        const auto* part = find<QWidget>(name);
        EXPECT_LE(part->mapTo(window.get(), QPoint(0, part->height())).y(), 800) << name;
    }
}

TEST_F(LargeTextTest, a_window_opened_with_large_text_is_no_larger_than_a_small_screen) {
    const auto run = document.runs()[0]->run.uuid;
    window->close();
    settings.setLayout(window->objectName(), {});
    window = std::make_unique<MainWindow>(document, settings, prompts);
    window->showRun(run);
    window->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    QApplication::processEvents();
    EXPECT_EQ(window->size(), QSize(1280, 800));
}

TEST_F(LargeTextTest, a_page_too_low_for_a_table_over_a_chart_makes_the_readings_a_tab_and_keeps_the_entry_row) {
    window->resize(1280, 800);
    window->showRun(document.runs()[0]->run.uuid);
    auto* tabs = find<QTabWidget>("chartsTabs");
    EXPECT_TRUE(QTest::qWaitFor([&] { return tabs->currentWidget() == find<QWidget>("tableWidget"); }));
    EXPECT_TRUE(find<QWidget>("readingsView")->isVisible());
    tabs->setCurrentWidget(find<QWidget>("energyChart"));
    EXPECT_FALSE(find<QWidget>("readingsView")->isVisible());
    EXPECT_TRUE(find<QWidget>("entryRow")->isVisible());
    trigger("chartsAction"); // without charts nothing is in the way
    EXPECT_TRUE(find<QWidget>("readingsView")->isVisible());
    trigger("chartsAction");
    trigger("usualTextAction");
    for (int i = 0; i < -Settings::least_text_step; ++i) trigger("smallerTextAction");
    window->resize(1600, 1000);
    EXPECT_TRUE(QTest::qWaitFor([&] { return tabs->indexOf(find<QWidget>("tableWidget")) < 0; }));
    EXPECT_TRUE(find<QWidget>("readingsView")->isVisible());
}

} // namespace ullage::test
