// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_page_fixture.h"

#include <QComboBox>
#include <QPushButton>
#include <QTest>

namespace ullage {

using test::RunPageTest;

TEST_F(RunPageTest, a_reading_is_recorded_by_keyboard_alone) {
    showPage();
    EXPECT_EQ(focusName(), QStringLiteral("gaugeEdit"));
    QTest::keyClicks(find<QLineEdit>("gaugeEdit"), QStringLiteral("100"));
    press(Qt::Key_Tab);
    EXPECT_EQ(focusName(), QStringLiteral("registerEdit"));
    QTest::keyClicks(find<QLineEdit>("registerEdit"), QStringLiteral("4312"));
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_EQ(readings()[0].values.gauge_percent, 100.0);
    EXPECT_EQ(readings()[0].values.register_wh, 4312.0);
    EXPECT_EQ(readings()[0].values.time_ms, clock.now_ms());
    EXPECT_TRUE(entry().texts().empty());
    EXPECT_EQ(focusName(), QStringLiteral("gaugeEdit"));
}

TEST_F(RunPageTest, what_the_row_has_cleared_is_on_the_disk) {
    showPage();
    type("gaugeEdit", "100");
    type("registerEdit", "4312");
    press(Qt::Key_Return);
    EXPECT_TRUE(entry().texts().empty());
    const QString path = document.path();
    const RunId run_uuid = run.uuid;
    document.close();
    const auto again = Logbook::open(path.toStdString(), OpenMode::read_only, clock);
    ASSERT_TRUE(again) << again.error().sentence();
    const auto kept = again.value().readings(run_uuid);
    ASSERT_TRUE(kept);
    ASSERT_EQ(kept.value().size(), 1U);
    EXPECT_EQ(kept.value()[0].values.register_wh, 4312.0);
}

TEST_F(RunPageTest, units_and_the_decimal_comma_are_understood) {
    showPage();
    type("gaugeEdit", "69 %");
    type("registerEdit", "0,431 kWh");
    type("wattsEdit", "0.064 kW");
    type("remarkEdit", "film on");
    press(Qt::Key_Enter);
    ASSERT_EQ(readings().size(), 1U) << entry().message().toStdString();
    const ReadingValues values = readings()[0].values;
    EXPECT_EQ(values.gauge_percent, 69.0);
    EXPECT_DOUBLE_EQ(values.register_wh.value(), 431.0);
    EXPECT_DOUBLE_EQ(values.meter_w.value(), 64.0);
    EXPECT_EQ(values.remark, "film on");
    EXPECT_FALSE(values.display_w.has_value());
    EXPECT_FALSE(values.mark.has_value());
}

TEST_F(RunPageTest, tab_goes_through_the_row_in_the_order_of_reading) {
    showPage();
    find<QLineEdit>("timeEdit")->setFocus();
    QStringList order{focusName()};
    for (int i = 0; i < 5; ++i) {
        press(Qt::Key_Tab);
        order << focusName();
    }
    EXPECT_EQ(order.join(QLatin1Char(' ')), QStringLiteral("timeEdit gaugeEdit registerEdit wattsEdit remarkEdit recordButton"));
    find<QLineEdit>("wattsEdit")->setFocus();
    page->runActions().front()->trigger(); // Mark unfolds the chooser
    find<QComboBox>("markCombo")->hidePopup();
    find<QLineEdit>("wattsEdit")->setFocus();
    order = {focusName()};
    for (int i = 0; i < 3; ++i) {
        press(Qt::Key_Tab);
        order << focusName();
    }
    EXPECT_EQ(order.join(QLatin1Char(' ')), QStringLiteral("wattsEdit markCombo displayWattsEdit remarkEdit"));
}

TEST_F(RunPageTest, enter_records_from_every_field) {
    showPage();
    const char* const fields[] = {"timeEdit", "gaugeEdit", "registerEdit", "wattsEdit", "remarkEdit"};
    std::size_t recorded = 0;
    for (const char* field : fields) {
        clock.advance_hours(1);
        type("gaugeEdit", std::to_string(90 - recorded).c_str());
        find<QLineEdit>(field)->setFocus();
        press(Qt::Key_Return);
        EXPECT_EQ(readings().size(), ++recorded) << field << ": " << entry().message().toStdString();
        EXPECT_EQ(focusName(), QStringLiteral("gaugeEdit"));
    }
    type("gaugeEdit", "12");
    find<QPushButton>("recordButton")->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(readings().size(), ++recorded);
}

TEST_F(RunPageTest, the_record_button_records_too) {
    showPage();
    type("gaugeEdit", "88");
    QTest::mouseClick(find<QPushButton>("recordButton"), Qt::LeftButton);
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_EQ(readings()[0].values.gauge_percent, 88.0);
}

TEST_F(RunPageTest, escape_clears_the_row) {
    showPage();
    type("gaugeEdit", "88");
    type("remarkEdit", "film on");
    press(Qt::Key_Escape);
    EXPECT_TRUE(entry().texts().empty());
    EXPECT_EQ(document.draft(run.uuid), QString());
    EXPECT_TRUE(readings().empty());
}

TEST_F(RunPageTest, a_text_that_cannot_be_read_stays_and_is_explained_below) {
    showPage();
    type("gaugeEdit", "70");
    type("registerEdit", "forty");
    press(Qt::Key_Return);
    EXPECT_TRUE(readings().empty());
    EXPECT_EQ(text("registerEdit"), QStringLiteral("forty"));
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("70"));
    EXPECT_TRUE(entry().message().startsWith(QStringLiteral("register: "))) << entry().message().toStdString();
    EXPECT_TRUE(entry().message().contains(QStringLiteral("forty")));
    EXPECT_TRUE(find<QLabel>("entryMessageLabel")->isVisible());
    EXPECT_EQ(focusName(), QStringLiteral("registerEdit"));
    type("registerEdit", "4312");
    EXPECT_EQ(entry().message(), QString());
    press(Qt::Key_Return);
    EXPECT_EQ(readings().size(), 1U);
}

TEST_F(RunPageTest, a_gauge_over_a_hundred_is_refused) {
    showPage();
    type("gaugeEdit", "170");
    press(Qt::Key_Return);
    EXPECT_TRUE(readings().empty());
    EXPECT_TRUE(entry().message().startsWith(QStringLiteral("gauge: ")));
}

TEST_F(RunPageTest, an_empty_row_says_what_to_type) {
    showPage();
    press(Qt::Key_Return);
    EXPECT_TRUE(readings().empty());
    EXPECT_FALSE(entry().message().isEmpty());
}

TEST_F(RunPageTest, the_time_is_now_unless_it_is_typed) {
    showPage();
    EXPECT_EQ(find<QLineEdit>("timeEdit")->placeholderText(), QStringLiteral("18:00")); // 16:00 UTC in Paris in May
    clock.advance_hours(0.5);
    entry().showNow();
    EXPECT_EQ(find<QLineEdit>("timeEdit")->placeholderText(), QStringLiteral("18:30"));
    type("timeEdit", "18:10");
    type("gaugeEdit", "99");
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 1U) << entry().message().toStdString();
    EXPECT_EQ(readings()[0].values.time_ms, clock.now_ms() - 20 * 60'000);
    clock.advance_hours(1);
    type("timeEdit", "-10m");
    type("gaugeEdit", "95");
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 2U);
    EXPECT_EQ(readings()[1].values.time_ms, clock.now_ms() - 10 * 60'000);
}

TEST_F(RunPageTest, a_mark_and_the_display_watts_are_recorded_once_unfolded) {
    showPage();
    EXPECT_FALSE(find<QComboBox>("markCombo")->isVisible());
    page->runActions().front()->trigger();
    auto* combo = find<QComboBox>("markCombo");
    combo->hidePopup();
    EXPECT_TRUE(combo->isVisible());
    EXPECT_EQ(focusName(), QStringLiteral("markCombo"));
    combo->setCurrentText(QStringLiteral("load changed"));
    type("displayWattsEdit", "70");
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 1U) << entry().message().toStdString();
    EXPECT_EQ(readings()[0].values.mark, MarkKind::load_changed);
    EXPECT_EQ(readings()[0].values.display_w, 70.0);
    EXPECT_FALSE(combo->isVisible()); // folds again
    EXPECT_EQ(combo->currentIndex(), 0);
}

TEST_F(RunPageTest, a_wide_page_shows_the_mark_chooser_in_the_row) {
    showPage();
    window->resize(1920, 1080);
    EXPECT_TRUE(QTest::qWaitFor([this] { return find<QComboBox>("markCombo")->isVisible(); }));
    EXPECT_EQ(find<QComboBox>("markCombo")->mapTo(window.get(), QPoint()).y(), find<QPushButton>("recordButton")->mapTo(window.get(), QPoint()).y());
}

} // namespace ullage
