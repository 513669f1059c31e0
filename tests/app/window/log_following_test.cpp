// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "charts/line_chart.h"
#include "pages/bench/bench_display.h"
#include "pages/bench/bench_panel.h"
#include "pages/bench/display_card.h"
#include "services/log_follower.h"

#include <QCheckBox>
#include <QFile>
#include <QLabel>
#include <QTabWidget>
#include <QUndoStack>

namespace ullage {

using test::WindowTest;

namespace {

/// A running test whose meter's log is still being written: 62 W, a row every second.
class LogFollowingTest : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        add_unit();
        add_meter();
        start_run();
        write("meter.csv", QByteArray("epoch,power W,energy Wh\n") + rows(0, 100));
    }

    [[nodiscard]] static QByteArray rows(int from, int to) {
        QByteArray text;
        for (int second = from; second < to; ++second)
            text += QByteArray::number(qint64{1'810'317'600} + second) + ",62," + QByteArray::number(4310 + second * 62.0 / 3600, 'f', 2) + '\n';
        return text;
    }
    void append(const QByteArray& text) const {
        QFile log(file("meter.csv"));
        ASSERT_TRUE(log.open(QIODevice::Append));
        log.write(text);
    }
    void import(bool follow) {
        prompts.to_open = {file("meter.csv")};
        trigger("importLogAction");
        find<QCheckBox>("followCheck")->setChecked(follow);
        click("submitButton");
    }
    void tick() {
        window->logFollower().tick();
        QApplication::processEvents();
    }
    [[nodiscard]] std::vector<Trace> traces() const { return document.traces(document.runs().front()->run.uuid).value(); }
    [[nodiscard]] qint64 samples() const { return traces().empty() ? 0 : traces().front().samples; }
    void show_log_tab() {
        find<QTabWidget>("chartsTabs")->setCurrentWidget(find<QWidget>("logView"));
        QApplication::processEvents();
    }
    /// What stands beside the log; empty where it is not followed.
    [[nodiscard]] QString state() const {
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        const auto* label = window->findChild<QLabel*>(QStringLiteral("logStateLabel"));
        return label ? label->text() : QString();
    }
};

} // namespace

TEST_F(LogFollowingTest, the_run_and_its_tab_show_what_the_log_gains_without_anybodys_doing) {
    ReadingValues full;
    full.time_ms = 1'810'317'600'000;
    full.gauge_percent = 100;
    ASSERT_TRUE(document.record(document.runs().front()->run.uuid, full).ok());
    append("1810317700,6"); // a row that is being written
    import(true);
    EXPECT_EQ(samples(), 100);
    EXPECT_TRUE(message().contains(QLatin1String("followed from now on"))) << message().toStdString();
    show_log_tab();
    EXPECT_TRUE(state().startsWith(QLatin1String("Followed"))) << state().toStdString();
    append("2,4311.72\n" + rows(101, 200));
    ASSERT_TRUE(QTest::qWaitFor([this] { return samples() == 200; }, 5000)) << "its own timer looks";
    QTest::qWait(1100);
    tick();
    EXPECT_NEAR(find<LineChart>("logChart")->visibleSpan().second, 199.0 / 3600, 1e-6);
    EXPECT_EQ(document.run(document.runs().front()->run.uuid)->trace->points.back().time_ms, 1'810'317'799'000);
}

TEST_F(LogFollowingTest, delivered_energy_follows_the_log_on_its_page_among_running_tests_and_on_the_bench_display) {
    const RunId run = document.runs().front()->run.uuid;
    ReadingValues full;
    full.time_ms = 1'810'317'600'000;
    full.gauge_percent = 100;
    ASSERT_TRUE(document.record(run, full).ok());
    import(true);
    const auto delivered = [this](QWidget* page) {
        const auto* label = page->findChild<QLabel*>(QStringLiteral("deliveredFigureLabel"));
        return label ? label->text().section(QLatin1Char(' '), -1).toDouble() : -1;
    };
    append(rows(100, 3600));
    const auto first_hour = [&] {
        tick();
        return document.analysis(run).energy.delivered_wh.value.value_or(0) > 50;
    };
    EXPECT_TRUE(QTest::qWaitFor(first_hour, 20'000));
    // 62 W for an hour but a second, in the log's hundredths of a watt hour.
    EXPECT_NEAR(*document.analysis(run).energy.delivered_wh.value, 62.0 * 3599 / 3600, 0.02);
    EXPECT_NEAR(delivered(find<QWidget>("runPage")), 62, 0.5);
    trigger("benchAction");
    trigger("benchDisplayAction");
    const auto* display = window->findChild<BenchDisplay*>();
    ASSERT_EQ(display->cards().size(), 1U);
    const auto shown = [display] { return display->cards()[0]->entry().figure("delivered").value.section(QLatin1Char(' '), -1).toDouble(); };
    EXPECT_NEAR(shown(), 62, 0.5);
    append(rows(3600, 7200));
    // Growth is announced once a second at most, rarer on a busy machine.
    const auto grown = [&] {
        tick();
        return shown() > 100;
    };
    EXPECT_TRUE(QTest::qWaitFor(grown, 20'000)) << shown();
    EXPECT_NEAR(shown(), 124, 1) << "another hour of it";
    const auto* panel = find<QWidget>("benchPage")->findChild<BenchPanel*>();
    EXPECT_EQ(panel->entry().figure("delivered").value, display->cards()[0]->entry().figure("delivered").value);
}

TEST_F(LogFollowingTest, what_is_half_typed_and_zoomed_to_stays_while_rows_come_in) {
    import(true);
    show_log_tab();
    find<QLineEdit>("gaugeEdit")->setFocus();
    type("gaugeEdit", QStringLiteral("87"));
    auto* chart = find<LineChart>("logChart");
    chart->zoomTo(0.005, 0.01);
    append(rows(100, 200));
    tick();
    EXPECT_EQ(samples(), 200);
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text().toStdString(), "87");
    EXPECT_EQ(window->focusWidget(), find<QLineEdit>("gaugeEdit"));
    EXPECT_NEAR(chart->visibleSpan().first, 0.005, 1e-9);
    EXPECT_NEAR(chart->visibleSpan().second, 0.01, 1e-9);
}

TEST_F(LogFollowingTest, following_goes_on_when_the_logbook_is_opened_again) {
    import(true);
    const QString path = document.path();
    document.close();
    append(rows(100, 150));
    tick();
    window->openLogbook(path);
    tick();
    EXPECT_EQ(samples(), 150);
    append(rows(150, 151));
    tick();
    EXPECT_EQ(samples(), 151);
}

TEST_F(LogFollowingTest, it_ends_by_its_button_and_with_the_withdrawal_of_its_log) {
    import(true);
    show_log_tab();
    click("stopFollowingButton");
    EXPECT_EQ(state(), QString());
    append(rows(100, 110));
    tick();
    EXPECT_EQ(samples(), 100);
    prompts.to_open = {file("meter.csv")};
    click("followLogButton");
    EXPECT_EQ(samples(), 110);
    document.undoStack().undo(); // the import
    append(rows(110, 120));
    tick();
    EXPECT_TRUE(traces().empty());
    document.undoStack().redo();
    EXPECT_EQ(samples(), 110);
    EXPECT_EQ(state(), QString());
}

TEST_F(LogFollowingTest, a_log_that_is_gone_is_waited_for_and_one_begun_anew_is_taken_up) {
    import(true);
    show_log_tab();
    QFile::rename(file("meter.csv"), file("meter.1"));
    tick();
    EXPECT_TRUE(state().contains(QLatin1String("waiting for the file"))) << state().toStdString();
    write("meter.csv", QByteArray("epoch,power W,energy Wh\n") + rows(100, 120));
    tick();
    EXPECT_EQ(samples(), 120);
    EXPECT_FALSE(state().contains(QLatin1String("waiting for the file"))) << state().toStdString();
    EXPECT_EQ(traces().front().started_anew, 1);
}

TEST_F(LogFollowingTest, a_log_that_cannot_be_read_on_says_so_and_is_left) {
    import(true);
    write("meter.csv", "epoch,amount kWh\n1810317900,5\n");
    tick();
    EXPECT_TRUE(message().contains(QLatin1String("no longer followed"))) << message().toStdString();
    EXPECT_EQ(samples(), 100);
    EXPECT_FALSE(window->logFollower().state(traces().front().uuid).has_value());
}

TEST_F(LogFollowingTest, a_log_without_new_rows_is_called_quiet_once_until_rows_come) {
    import(true);
    show_log_tab();
    clock.advance_ms(59'000);
    tick();
    EXPECT_FALSE(message().contains(QLatin1String("still logging")));
    clock.advance_ms(120'000);
    tick();
    EXPECT_TRUE(message().contains(QLatin1String("no new row for 2 min. Is the meter still logging?"))) << message().toStdString();
    EXPECT_TRUE(state().contains(QLatin1String("nothing new since"))) << state().toStdString();
    append(rows(100, 101));
    tick();
    EXPECT_FALSE(state().contains(QLatin1String("nothing new since"))) << state().toStdString();
}

TEST_F(LogFollowingTest, a_log_imported_again_gives_what_it_has_more) {
    import(false);
    append(rows(100, 130));
    import(false);
    EXPECT_EQ(samples(), 130);
    EXPECT_TRUE(message().contains(QLatin1String("has this log already"))) << message().toStdString();
    EXPECT_FALSE(window->logFollower().state(traces().front().uuid).has_value());
}

TEST_F(LogFollowingTest, another_file_is_not_followed_in_its_place) {
    import(false);
    show_log_tab();
    prompts.to_open = {write("other.csv", QByteArray("epoch,power W,energy Wh\n") + rows(50, 300))};
    click("followLogButton");
    EXPECT_TRUE(message().contains(QLatin1String("does not begin"))) << message().toStdString();
    EXPECT_EQ(samples(), 100);
}

} // namespace ullage
