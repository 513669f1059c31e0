// SPDX-License-Identifier: GPL-3.0-or-later
// Ending a run by the form, from its keys to what the logbook then holds.
#include "window_fixture.h"

#include "pages/run/run_page.h"

#include <QAction>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QPointer>

#include <algorithm>

namespace ullage {

namespace {

/// A 1000 Wh unit at 90 W, read each hour from 100 % and 0 Wh on; the clock stands at the last reading.
class EndFormTest : public test::WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        add_unit("Osk 1000", "1000");
        add_meter();
        start_run();
        run = document.runs()[0]->run.uuid;
        ullage::Run full = record().run;
        full.started_full = true;
        full.time_zone = "UTC";
        ASSERT_TRUE(document.updateRun(full));
    }

    void read_hours(int hours) {
        for (int h = 0; h <= hours; ++h) {
            if (h > 0) clock.advance_hours(1);
            ReadingValues values;
            values.time_ms = clock.now_ms();
            values.gauge_percent = 100 - 9 * h;
            values.register_wh = 90 * h;
            ASSERT_TRUE(document.record(run, values));
        }
    }

    [[nodiscard]] const RunRecord& record() const { return *document.run(run); }
    [[nodiscard]] long standing() const {
        return std::ranges::count_if(record().readings, [](const Reading& reading) { return !reading.withdrawn; });
    }
    [[nodiscard]] const ReadingValues& last() const {
        return std::find_if(record().readings.rbegin(), record().readings.rend(), [](const Reading& reading) { return !reading.withdrawn; })->values;
    }
    [[nodiscard]] bool ended() const { return record().run.end != RunEnd::still_running; }
    [[nodiscard]] QString question() const {
        const auto* label = find<QLabel>("formQuestionLabel");
        return label->isVisible() ? label->text() : QString();
    }
    void choose(RunEnd end) {
        auto* combo = find<QComboBox>("howCombo");
        combo->setCurrentIndex(combo->findData(static_cast<int>(end)));
    }

    RunId run;
};

} // namespace

TEST_F(EndFormTest, the_key_of_the_cut_off_asks_what_was_shown_and_fills_nothing_in_but_the_time) {
    read_hours(10);
    clock.advance_hours(0.5);
    const long before = standing();
    trigger("mark6Action");
    EXPECT_EQ(find<QComboBox>("howCombo")->currentData().toInt(), static_cast<int>(RunEnd::cut_off_seen));
    EXPECT_EQ(find<QLineEdit>("endTimeEdit")->text().toStdString(), clock_text(clock.now_ms(), "UTC"));
    for (const char* field : {"endGaugeEdit", "endRegisterEdit", "endWattsEdit", "endNoticedEdit"})
        EXPECT_TRUE(find<QLineEdit>(field)->text().isEmpty()) << field;
    EXPECT_EQ(standing(), before) << "nothing is done before it is accepted";
    type("endGaugeEdit", "5");
    type("endRegisterEdit", "945");
    type("endNoticedEdit", "2 min");
    click("submitButton");
    ASSERT_TRUE(ended()) << question().toStdString();
    EXPECT_EQ(record().run.end, RunEnd::cut_off_seen);
    EXPECT_EQ(record().run.end_noticed_within_min, 2.0);
    EXPECT_EQ(last().time_ms, clock.now_ms());
    EXPECT_EQ(last().gauge_percent, 5.0);
    EXPECT_EQ(last().register_wh, 945.0);
    EXPECT_EQ(last().mark, MarkKind::cut_off);
    // Full, and off after 945 of 1000 Wh.
    EXPECT_NEAR(*document.analysis(run).energy.usable_fraction.value, 0.945, 1e-9);
}

TEST_F(EndFormTest, one_undo_lets_the_run_go_on_without_the_reading_of_its_end) {
    read_hours(10);
    clock.advance_hours(0.5);
    const auto readings = standing();
    trigger("endCutOffSeenAction");
    type("endGaugeEdit", "5");
    type("endRegisterEdit", "945");
    click("submitButton");
    ASSERT_TRUE(ended());
    EXPECT_EQ(standing(), readings + 1);
    EXPECT_TRUE(message().contains("Undo")) << message().toStdString();
    trigger("undoAction");
    EXPECT_FALSE(ended());
    EXPECT_EQ(standing(), readings);
    trigger("redoAction");
    EXPECT_TRUE(ended());
    EXPECT_EQ(standing(), readings + 1);
}

TEST_F(EndFormTest, what_is_half_typed_is_offered_and_leaves_the_row_only_where_it_is_taken) {
    read_hours(10);
    clock.advance_hours(0.5);
    type("gaugeEdit", "5");
    type("registerEdit", "945");
    trigger("endFoundOffAction");
    EXPECT_TRUE(find<QLineEdit>("endGaugeEdit")->text().isEmpty());
    EXPECT_TRUE(find<QPushButton>("takeRowButton")->text().contains("5 %, 945 Wh")) << find<QPushButton>("takeRowButton")->text().toStdString();
    click("takeRowButton");
    EXPECT_EQ(find<QLineEdit>("endGaugeEdit")->text(), "5");
    click("submitButton");
    ASSERT_TRUE(ended());
    EXPECT_EQ(last().register_wh, 945.0);
    EXPECT_FALSE(last().mark) << "nobody saw it go off";
    EXPECT_TRUE(find<QLineEdit>("gaugeEdit")->text().isEmpty());
}

TEST_F(EndFormTest, a_half_typed_row_that_is_not_taken_stays) {
    read_hours(10);
    clock.advance_hours(0.5);
    type("gaugeEdit", "5");
    trigger("endStoppedAction");
    type("endRegisterEdit", "945");
    click("submitButton");
    ASSERT_TRUE(ended());
    EXPECT_FALSE(last().gauge_percent);
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text(), "5");
}

TEST_F(EndFormTest, the_last_reading_is_the_end_only_where_the_tester_says_so) {
    read_hours(11);
    const auto readings = standing();
    trigger("endCutOffSeenAction");
    click("takeLastButton");
    click("submitButton");
    ASSERT_TRUE(ended()) << question().toStdString();
    EXPECT_EQ(standing(), readings) << "it stands already";
    EXPECT_EQ(last().register_wh, 990.0);
}

TEST_F(EndFormTest, an_end_far_from_what_the_readings_say_is_questioned_not_refused) {
    read_hours(4); // 64 %, 360 Wh
    clock.advance_hours(0.5);
    trigger("mark6Action");
    type("endGaugeEdit", "64");
    type("endRegisterEdit", "405");
    click("submitButton");
    EXPECT_FALSE(ended());
    EXPECT_TRUE(question().contains("before the readings let the cut-off be expected")) << question().toStdString();
    type("endRegisterEdit", "404");
    EXPECT_TRUE(question().isEmpty()) << "another value, another question";
    click("submitButton");
    EXPECT_FALSE(ended());
    click("submitButton");
    EXPECT_TRUE(ended()) << "asked once and answered";
    EXPECT_EQ(last().register_wh, 404.0);
}

TEST_F(EndFormTest, the_head_of_the_page_asks_how_it_ended_and_the_form_waits_for_the_answer) {
    read_hours(2);
    click("endRunButton");
    click("submitButton");
    EXPECT_FALSE(ended());
    EXPECT_TRUE(find<QLabel>("howErrorLabel")->isVisible());
    choose(RunEnd::stopped_by_tester);
    EXPECT_FALSE(find<QLineEdit>("endNoticedEdit")->isEnabled()) << "whoever stops it knows when";
    click("submitButton");
    ASSERT_TRUE(ended());
    EXPECT_EQ(last().remark, "stopped by tester") << "a time alone says when it ended";
}

TEST_F(EndFormTest, what_the_run_will_say_stands_below_before_it_is_accepted) {
    read_hours(10);
    clock.advance_hours(0.5);
    trigger("endCutOffSeenAction");
    type("endGaugeEdit", "5");
    type("endRegisterEdit", "945");
    ASSERT_TRUE(QTest::qWaitFor([this] { return find<QLabel>("previewLabel")->text().contains("945"); }));
    EXPECT_TRUE(find<QLabel>("previewLabel")->text().contains("from full to cut-off")) << find<QLabel>("previewLabel")->text().toStdString();
    EXPECT_FALSE(ended());
}

} // namespace ullage
