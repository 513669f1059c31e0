// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/appearance.h"
#include "services/reminders.h"
#include "window_fixture.h"

#include <QStackedWidget>

namespace ullage::test {
namespace {

/// The window at 200 % of the desktop's text, and back again.
class LargeTextTest : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        add_unit();
        add_meter();
        start_run();
        for (int i = 0; i < 12; ++i) trigger("largerTextAction");
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
    EXPECT_LE(window->minimumSizeHint().width(), 1280);
    EXPECT_LE(window->minimumSizeHint().height(), 800);
    window->resize(1280, 800);
    window->showRun(run);
    EXPECT_TRUE(QTest::qWaitFor([this] { return window->size() == QSize(1280, 800); })) << window->height();
    for (const char* name : {"statusLine", "entryRow"}) {
        const auto* part = find<QWidget>(name);
        EXPECT_LE(part->mapTo(window.get(), QPoint(0, part->height())).y(), 800) << name;
    }
}

} // namespace ullage::test
