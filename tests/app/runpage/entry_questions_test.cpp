// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_page_fixture.h"

#include <QPushButton>
#include <QTest>

namespace ullage {

using test::RunPageTest;

namespace {

class QuestionTest : public RunPageTest {
protected:
    void SetUp() override {
        RunPageTest::SetUp();
        recordSample(3);
        clock.advance_hours(1);
        showPage();
    }
};

} // namespace

TEST_F(QuestionTest, a_gauge_that_rose_is_questioned_and_kept_with_k) {
    type("gaugeEdit", "91");
    press(Qt::Key_Return);
    EXPECT_EQ(readings().size(), 3U);
    EXPECT_TRUE(questionText().contains(QStringLiteral("gauge rose from 87 %"))) << questionText().toStdString();
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("91"));
    press(Qt::Key_K);
    ASSERT_EQ(readings().size(), 4U);
    EXPECT_EQ(readings().back().values.gauge_percent, 91.0);
    EXPECT_EQ(questionText(), QString());
    EXPECT_TRUE(entry().texts().empty());
    EXPECT_EQ(focusName(), QStringLiteral("gaugeEdit"));
}

TEST_F(QuestionTest, c_goes_back_to_the_row_with_all_that_was_typed) {
    type("gaugeEdit", "91");
    type("registerEdit", "4540");
    press(Qt::Key_Return);
    ASSERT_FALSE(questionText().isEmpty());
    press(Qt::Key_C);
    EXPECT_EQ(readings().size(), 3U);
    EXPECT_EQ(questionText(), QString());
    EXPECT_EQ(focusName(), QStringLiteral("gaugeEdit"));
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("91"));
    EXPECT_EQ(text("registerEdit"), QStringLiteral("4540"));
    type("gaugeEdit", "81");
    press(Qt::Key_Return);
    EXPECT_EQ(readings().size(), 4U);
}

TEST_F(QuestionTest, correct_goes_to_the_field_that_is_doubted) {
    type("gaugeEdit", "80");
    type("registerEdit", "64");
    press(Qt::Key_Return);
    press(Qt::Key_C);
    EXPECT_EQ(focusName(), QStringLiteral("registerEdit"));
    EXPECT_EQ(find<QLineEdit>("registerEdit")->selectedText(), QStringLiteral("64"));
}

TEST_F(QuestionTest, a_digit_too_many_is_offered_mended_with_m) {
    // 4312, 4383, 4478 Wh so far, about 64 W.
    type("gaugeEdit", "82");
    type("registerEdit", "45420");
    press(Qt::Key_Return);
    EXPECT_TRUE(find<QPushButton>("mendedButton")->text().contains(QStringLiteral("4542 Wh?")));
    press(Qt::Key_M);
    ASSERT_EQ(readings().size(), 4U);
    EXPECT_EQ(readings().back().values.register_wh, 4542.0);
    EXPECT_EQ(readings().back().values.gauge_percent, 82.0);
}

TEST_F(QuestionTest, escape_answers_like_correct) {
    type("gaugeEdit", "91");
    press(Qt::Key_Return);
    press(Qt::Key_Escape);
    EXPECT_EQ(questionText(), QString());
    EXPECT_EQ(text("gaugeEdit"), QStringLiteral("91"));
    EXPECT_EQ(readings().size(), 3U);
}

TEST_F(QuestionTest, pressing_enter_twice_does_not_record_what_is_questioned) {
    type("gaugeEdit", "91");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_EQ(readings().size(), 3U);
    EXPECT_FALSE(questionText().isEmpty());
}

TEST_F(QuestionTest, a_register_that_fell_can_be_a_reset_of_which_it_is_not_known_what_stood_before) {
    type("gaugeEdit", "82");
    type("registerEdit", "64");
    press(Qt::Key_Return);
    EXPECT_TRUE(questionText().contains(QStringLiteral("register fell from 4478 Wh")));
    EXPECT_TRUE(find<QPushButton>("zeroedButton")->isVisible());
    press(Qt::Key_Z);
    EXPECT_EQ(readings().size(), 3U);
    EXPECT_TRUE(questionText().contains(QStringLiteral("What did the register show just before"))) << questionText().toStdString();
    EXPECT_EQ(focusName(), QStringLiteral("valueBeforeEdit"));
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 4U);
    EXPECT_EQ(readings().back().values.mark, MarkKind::meter_zeroed);
    EXPECT_EQ(readings().back().values.register_wh, 64.0);
    EXPECT_EQ(focusName(), QStringLiteral("gaugeEdit"));
}

TEST_F(QuestionTest, what_stood_before_a_reset_is_recorded_with_it_and_one_undo_takes_all_back) {
    type("gaugeEdit", "82");
    type("registerEdit", "40");
    press(Qt::Key_Return);
    press(Qt::Key_Z);
    type("valueBeforeEdit", "4470");
    press(Qt::Key_Return);
    EXPECT_EQ(readings().size(), 3U) << "less than was read before";
    EXPECT_TRUE(questionText().contains(QStringLiteral("4478 Wh"))) << questionText().toStdString();
    type("valueBeforeEdit", "4498");
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 6U);
    EXPECT_EQ(readings()[3].values.register_wh, 4498.0);
    EXPECT_EQ(readings()[4].values.mark, MarkKind::meter_zeroed);
    EXPECT_EQ(readings()[5].values.register_wh, 40.0);
    EXPECT_EQ(readings()[5].values.gauge_percent, 82.0);
    // 4498 - 4312 Wh before the reset, 40 Wh after it.
    EXPECT_NEAR(*document.analysis(run.uuid).energy.delivered_wh.value, 186 + 40, 1e-9);
    EXPECT_FALSE(document.analysis(run.uuid).energy.track.energy_may_be_missing);
    document.undoStack().undo();
    EXPECT_EQ(readings().size(), 3U);
    document.undoStack().redo();
    EXPECT_EQ(readings().size(), 6U);
}

TEST_F(QuestionTest, escape_while_asked_what_stood_before_goes_back_to_the_row) {
    type("registerEdit", "64");
    press(Qt::Key_Return);
    press(Qt::Key_Z);
    press(Qt::Key_Escape);
    EXPECT_EQ(readings().size(), 3U);
    EXPECT_EQ(questionText(), QString());
    EXPECT_EQ(text("registerEdit"), QStringLiteral("64"));
}

TEST_F(QuestionTest, a_register_that_fell_can_be_another_meter) {
    type("registerEdit", "64");
    press(Qt::Key_Return);
    press(Qt::Key_W);
    ASSERT_EQ(readings().size(), 4U);
    EXPECT_EQ(readings().back().values.mark, MarkKind::meter_swapped);
}

TEST_F(QuestionTest, a_register_that_fell_can_be_kept_unexplained) {
    type("registerEdit", "64");
    press(Qt::Key_Return);
    QTest::mouseClick(find<QPushButton>("keepButton"), Qt::LeftButton);
    ASSERT_EQ(readings().size(), 4U);
    EXPECT_FALSE(readings().back().values.mark.has_value());
}

TEST_F(QuestionTest, z_and_w_answer_only_a_register_that_fell) {
    type("gaugeEdit", "91");
    press(Qt::Key_Return);
    EXPECT_FALSE(find<QPushButton>("zeroedButton")->isVisible());
    EXPECT_FALSE(find<QPushButton>("swappedButton")->isVisible());
    press(Qt::Key_Z);
    press(Qt::Key_W);
    EXPECT_EQ(readings().size(), 3U);
    EXPECT_FALSE(questionText().isEmpty());
}

TEST_F(QuestionTest, more_power_than_the_unit_can_deliver_is_questioned) {
    type("registerEdit", "9999");
    press(Qt::Key_Return);
    EXPECT_TRUE(questionText().contains(QStringLiteral("would be about"))) << questionText().toStdString();
    EXPECT_EQ(readings().size(), 3U);
}

TEST_F(QuestionTest, a_time_before_the_last_reading_is_questioned) {
    type("timeEdit", "19:30");
    type("gaugeEdit", "93");
    press(Qt::Key_Return);
    EXPECT_TRUE(questionText().contains(QStringLiteral("before the last reading"))) << questionText().toStdString();
    press(Qt::Key_K);
    ASSERT_EQ(readings().size(), 4U);
    EXPECT_EQ(readings()[2].values.gauge_percent, 93.0); // takes its place by time
}

TEST_F(QuestionTest, a_time_ahead_of_now_is_questioned) {
    type("timeEdit", "21:42");
    type("gaugeEdit", "80");
    press(Qt::Key_Return);
    EXPECT_TRUE(questionText().contains(QStringLiteral("ahead of now"))) << questionText().toStdString();
}

TEST_F(QuestionTest, a_reading_for_a_run_that_has_ended_is_questioned) {
    ullage::Run ended = record().run;
    ended.end = RunEnd::cut_off_seen;
    ASSERT_TRUE(document.updateRun(ended));
    type("gaugeEdit", "80");
    press(Qt::Key_Return);
    EXPECT_TRUE(questionText().contains(QStringLiteral("run has ended (cut-off seen)"))) << questionText().toStdString();
    press(Qt::Key_K);
    EXPECT_EQ(readings().size(), 4U);
}

TEST_F(QuestionTest, editing_the_row_takes_the_question_back) {
    type("gaugeEdit", "91");
    press(Qt::Key_Return);
    ASSERT_FALSE(questionText().isEmpty());
    type("gaugeEdit", "81");
    EXPECT_EQ(questionText(), QString());
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 4U);
    EXPECT_EQ(readings().back().values.gauge_percent, 81.0);
}

} // namespace ullage
