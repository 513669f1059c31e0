// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/due_figures.h"
#include "services/reminders.h"
#include "services/settings.h"
#include "support/fake_clock.h"
#include "support/record_builder.h"
#include "support/temp_folder.h"
#include "support_qt/fake_desktop.h"

#include <gtest/gtest.h>

#include <QTest>

#include <memory>

namespace ullage::test {
namespace {

constexpr UtcMs a_minute_ms = 60'000;

/// A drain of a unit with an interval of 30 minutes, and one reading now.
class RemindersTest : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(document.create(QString::fromStdString((folder / "bench.ullage").string())));
        run = start("Osk 1200");
        reminders = std::make_unique<Reminders>(document, settings, &notifier);
        reminders->setRule(run, {30, std::nullopt, std::nullopt});
        read(run);
    }

    RunId start(const char* unit_name) {
        Unit unit;
        unit.name = unit_name;
        unit.rated_energy_wh = 1200;
        ullage::Run drain;
        drain.unit_uuid = document.addUnit(unit).value().uuid;
        drain.started_full = true;
        return document.addRun(drain).value().uuid;
    }
    Reading read(const RunId& of, double gauge_percent = 100) {
        ReadingValues values;
        values.time_ms = clock.now_ms();
        values.gauge_percent = gauge_percent;
        return document.record(of, values).value();
    }
    void pass(int minutes) {
        clock.advance_ms(minutes * a_minute_ms);
        reminders->tick();
    }
    [[nodiscard]] QString words() const { return due_words(reminders->state(run), clock.now_ms()); }

    TempFolder folder;
    FakeClock clock;
    Settings settings{QString::fromStdString((folder / "settings.ini").string())};
    FakeNotifier notifier;
    Document document{clock};
    RunId run;
    std::unique_ptr<Reminders> reminders;
};

} // namespace

TEST_F(RemindersTest, the_desktop_is_left_alone_where_that_is_set_and_the_window_still_calls) {
    settings.setReminderOnDesktop(false);
    int called = 0;
    QObject::connect(reminders.get(), &Reminders::fellDue, reminders.get(), [&called] { ++called; });
    pass(31);
    EXPECT_EQ(called, 1);
    EXPECT_TRUE(notifier.titles.isEmpty());
}

TEST_F(RemindersTest, counts_down_to_the_next_reading_and_then_says_how_long_it_is_overdue) {
    EXPECT_EQ(words(), "in 30 min");
    pass(18);
    EXPECT_EQ(words(), "in 12 min");
    pass(12);
    EXPECT_EQ(words(), "due now");
    EXPECT_TRUE(due_figure(reminders->state(run), clock.now_ms()).alarm);
    pass(3);
    EXPECT_EQ(words(), "overdue 3 min");
    EXPECT_TRUE(reminders->state(run).overdue());
    EXPECT_EQ(reminders->overdueCount(), 1);
    pass(120);
    EXPECT_EQ(words(), "overdue 2 h 03");
}

TEST_F(RemindersTest, a_due_reading_is_announced_once_however_often_the_clock_is_looked_at) {
    std::vector<RunId> due;
    QObject::connect(reminders.get(), &Reminders::fellDue, [&due](const RunId& uuid) { due.push_back(uuid); });
    pass(29);
    EXPECT_TRUE(notifier.titles.isEmpty());
    pass(2);
    for (int i = 0; i < 20; ++i) reminders->tick();
    pass(60);
    ASSERT_EQ(notifier.titles.size(), 1);
    EXPECT_TRUE(notifier.titles[0].contains("Osk 1200"));
    EXPECT_FALSE(notifier.texts[0].isEmpty());
    EXPECT_EQ(due, std::vector{run});
}

TEST_F(RemindersTest, the_next_reading_begins_a_new_count_and_a_new_announcement) {
    pass(31);
    read(run, 95);
    EXPECT_EQ(words(), "in 30 min");
    EXPECT_FALSE(reminders->state(run).overdue());
    pass(31);
    EXPECT_EQ(notifier.titles.size(), 2);
}

TEST_F(RemindersTest, a_snooze_puts_the_call_off_and_lapses_with_the_next_reading) {
    pass(33);
    reminders->snooze(run, 10);
    EXPECT_FALSE(reminders->state(run).overdue());
    EXPECT_TRUE(reminders->state(run).snoozed);
    EXPECT_EQ(words(), "in 10 min");
    pass(9);
    EXPECT_EQ(notifier.titles.size(), 1);
    pass(2);
    EXPECT_EQ(notifier.titles.size(), 2) << "called again at the end of the snooze";
    EXPECT_TRUE(notifier.texts[1].contains("call")) << notifier.texts[1].toStdString();
    read(run, 90);
    EXPECT_FALSE(reminders->state(run).snoozed);
    EXPECT_EQ(words(), "in 30 min");
}

TEST_F(RemindersTest, a_reading_that_is_not_due_until_then_cannot_be_put_off) {
    pass(15);
    EXPECT_FALSE(reminders->snooze(run, 10)) << "it is due in 15 minutes";
    EXPECT_EQ(words(), "in 15 min");
    EXPECT_TRUE(reminders->snooze(run, 20));
    EXPECT_EQ(words(), "in 20 min");
}

TEST_F(RemindersTest, rule_and_snooze_survive_a_restart) {
    pass(33);
    reminders->snooze(run, 20);
    reminders = std::make_unique<Reminders>(document, settings, &notifier);
    EXPECT_EQ(reminders->rule(run).every_min, 30.0);
    EXPECT_TRUE(reminders->state(run).snoozed);
    EXPECT_EQ(words(), "in 20 min");
}

TEST_F(RemindersTest, no_rule_no_reading_or_an_ended_run_is_not_due_and_says_why) {
    reminders->setRule(run, {});
    pass(500);
    EXPECT_FALSE(reminders->state(run).at_ms.has_value());
    EXPECT_EQ(due_figure(reminders->state(run), clock.now_ms()).value, QString(QChar(0x2013))) << "never an invented time";
    const auto fresh = start("Pelm 900");
    reminders->setRule(fresh, {30, std::nullopt, std::nullopt});
    pass(500);
    EXPECT_FALSE(reminders->state(fresh).at_ms.has_value());
    EXPECT_FALSE(due_words(reminders->state(fresh), clock.now_ms()).isEmpty());
    reminders->setRule(run, {30, std::nullopt, std::nullopt});
    auto ended = document.run(run)->run;
    ended.end = RunEnd::found_off;
    ASSERT_TRUE(document.updateRun(ended));
    EXPECT_FALSE(reminders->state(run).at_ms.has_value());
    EXPECT_EQ(reminders->openRuns().size(), 1U);
}

TEST_F(RemindersTest, each_run_has_its_own_time_and_the_longest_overdue_comes_first) {
    clock.advance_ms(10 * a_minute_ms);
    const auto other = start("Pelm 900");
    reminders->setRule(other, {30, std::nullopt, std::nullopt});
    read(other);
    pass(35);
    EXPECT_EQ(reminders->overdueCount(), 2);
    ASSERT_NE(reminders->mostOverdue(), nullptr);
    EXPECT_EQ(reminders->mostOverdue()->run.uuid, run);
    reminders->snooze(run, 5);
    EXPECT_EQ(reminders->mostOverdue()->run.uuid, other);
    EXPECT_EQ(reminders->overdueCount(), 1);
}

TEST_F(RemindersTest, open_runs_stand_in_the_order_of_their_first_reading) {
    const auto later_made_earlier_read = start("Aard 500");
    ReadingValues values;
    values.time_ms = clock.now_ms() - 60 * a_minute_ms;
    values.gauge_percent = 100;
    ASSERT_TRUE(document.record(later_made_earlier_read, values));
    const auto open = reminders->openRuns();
    ASSERT_EQ(open.size(), 2U);
    EXPECT_EQ(open[0]->run.uuid, later_made_earlier_read);
    EXPECT_EQ(open[1]->run.uuid, run);
}

TEST_F(RemindersTest, it_sounds_only_where_that_was_asked_for) {
    pass(31);
    EXPECT_EQ(notifier.sounds, 0);
    settings.setReminderSound(true);
    read(run, 95);
    pass(31);
    EXPECT_EQ(notifier.sounds, 1);
}

TEST_F(RemindersTest, a_gauge_that_should_have_dropped_makes_a_reading_due) {
    // 20 points in four hours: 5 points take an hour.
    for (int i = 1; i <= 4; ++i) {
        clock.advance_hours(1);
        read(run, 100 - 5 * i);
    }
    reminders->setRule(run, {std::nullopt, 5, std::nullopt});
    const auto state = reminders->state(run);
    ASSERT_TRUE(state.at_ms.has_value()) << state.due.why;
    EXPECT_EQ(state.due.because, DueBecause::gauge_drop);
    EXPECT_NEAR(static_cast<double>(*state.at_ms - clock.now_ms()) / a_minute_ms, 60, 15) << "the gauge steps by whole points";
}

TEST_F(RemindersTest, what_is_left_is_rounded_up_and_what_has_gone_down) {
    clock.advance_ms(29 * a_minute_ms + 1000);
    EXPECT_EQ(words(), "in 1 min");
    clock.advance_ms(59'000);
    EXPECT_EQ(words(), "due now");
    clock.advance_ms(119'000);
    EXPECT_EQ(words(), "overdue 1 min");
}

TEST(Awake, the_machine_is_held_awake_while_wanted_and_let_go_at_the_end) {
    FakeInhibitor desktop;
    {
        Awake awake(&desktop);
        EXPECT_TRUE(awake.words().isEmpty());
        awake.setWanted(true);
        awake.setWanted(true);
        EXPECT_TRUE(desktop.held);
        EXPECT_EQ(desktop.asked, 1);
        awake.setWanted(false);
        EXPECT_FALSE(desktop.held);
        awake.setWanted(true);
        EXPECT_TRUE(desktop.held);
    }
    EXPECT_FALSE(desktop.held);
}

TEST(Awake, a_desktop_that_does_not_offer_it_is_named_in_words) {
    FakeInhibitor desktop;
    desktop.offers = false;
    Awake awake(&desktop);
    awake.setWanted(true);
    EXPECT_EQ(awake.state(), Awake::State::not_offered);
    EXPECT_TRUE(awake.words().contains("does not offer to stay awake"));
    awake.setWanted(false);
    EXPECT_TRUE(awake.words().isEmpty());
}

TEST_F(RemindersTest, of_a_large_logbook_that_was_just_opened_the_forecast_comes_from_a_thread) {
    for (const int number : {1, 2}) ASSERT_TRUE(document.import(long_drain(number, 2500)));
    for (const double gauge_percent : {80.0, 60.0}) {
        clock.advance_hours(1);
        read(run, gauge_percent);
    }
    reminders->setRule(run, {std::nullopt, 10, std::nullopt});
    const auto due_ms = reminders->state(run).due.due_ms;
    ASSERT_TRUE(due_ms) << "asks for the forecast";
    const QString path = document.path();
    document.close();
    int looked = 0;
    QObject::connect(reminders.get(), &Reminders::looked, [&] { ++looked; });
    ASSERT_TRUE(document.open(path));
    EXPECT_FALSE(reminders->state(run).due.due_ms) << "the window waited for it";
    const int before = looked;
    ASSERT_TRUE(QTest::qWaitFor([&] { return looked > before; }, 60'000));
    EXPECT_EQ(reminders->state(run).due.due_ms, due_ms);
}

TEST_F(RemindersTest, a_change_of_other_runs_has_the_forecast_worked_out_once_and_not_again_and_again) {
    for (const int number : {1, 2}) ASSERT_TRUE(document.import(long_drain(number, 2500)));
    (void)reminders->state(run);
    int looked = 0;
    QObject::connect(reminders.get(), &Reminders::looked, [&] {
        ++looked;
        (void)reminders->state(run); // as the bar of reminders does
    });
    ReadingValues late = document.run(RunId("run 2"))->readings.back().values;
    late.time_ms += a_minute_ms;
    ASSERT_TRUE(document.record(RunId("run 2"), late));
    ASSERT_TRUE(QTest::qWaitFor([&] { return document.readingsToAnalyse({}, false) == 0; }, 60'000));
    QTest::qWait(300);
    EXPECT_LE(looked, 3) << "after the reading, and when the forecast has come";
}

} // namespace ullage::test
