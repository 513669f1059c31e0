// SPDX-License-Identifier: GPL-3.0-or-later
// The bench display: running tests over the whole screen.
#include "pages/bench/bench_display.h"
#include "pages/bench/display_card.h"
#include "services/reminders.h"
#include "window_fixture.h"

#include <QLabel>

#include <algorithm>

namespace ullage::test {
namespace {

constexpr UtcMs display_minute_ms = 60'000;

class BenchDisplayTest : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        osk = start("Osk 1200", 1200);
        pelm = start("Pelm 900", 900);
    }
    void TearDown() override { window.reset(); }

    RunId start(const char* name, double rated_wh, RunKind kind = RunKind::drain) {
        Unit unit;
        unit.name = name;
        unit.rated_energy_wh = rated_wh;
        ullage::Run run;
        run.unit_uuid = document.addUnit(unit).value().uuid;
        run.kind = kind;
        run.started_full = kind == RunKind::drain;
        const auto uuid = document.addRun(run).value().uuid;
        window->reminders().setRule(uuid, {30, std::nullopt, std::nullopt});
        note(uuid, 100, 0);
        clock.advance_ms(display_minute_ms);
        return uuid;
    }
    void note(const RunId& run, double gauge_percent, double register_wh) {
        ReadingValues values;
        values.time_ms = clock.now_ms();
        values.gauge_percent = gauge_percent;
        values.register_wh = register_wh;
        ASSERT_TRUE(document.record(run, values));
    }
    void open() {
        trigger("benchDisplayAction");
        ASSERT_NE(display(), nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowActive(display()));
    }
    [[nodiscard]] BenchDisplay* display() const { return window->findChild<BenchDisplay*>(); }
    /// A key to whoever has the keyboard, as a person presses it.
    void press(int key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* at = QApplication::focusWidget() ? QApplication::focusWidget() : display();
        QTest::keyClick(at, static_cast<Qt::Key>(key), modifiers);
        QApplication::processEvents();
    }
    void press(const char* keys) {
        for (const char* key = keys; *key != 0; ++key) {
            QTest::keyClick(QApplication::focusWidget(), *key);
            QApplication::processEvents();
        }
    }
    [[nodiscard]] QWidget* entry() const { return display()->findChild<QWidget*>(QStringLiteral("displayEntry")); }
    [[nodiscard]] QString question() const {
        const auto* bar = entry()->findChild<QWidget*>(QStringLiteral("questionBar"));
        return bar->isVisible() ? entry()->findChild<QLabel*>(QStringLiteral("questionLabel"))->text() : QString();
    }
    [[nodiscard]] std::vector<Reading> standing(const RunId& run) const {
        std::vector<Reading> found;
        for (const auto& reading : document.run(run)->readings)
            if (!reading.withdrawn) found.push_back(reading);
        return found;
    }
    [[nodiscard]] const BenchEntry& told(std::size_t card) const { return display()->cards().at(card)->entry(); }

    RunId osk, pelm;
};

} // namespace

TEST_F(BenchDisplayTest, one_key_fills_the_screen_and_esc_returns_to_the_page_before) {
    window->showUnit(document.run(pelm)->unit.uuid);
    open();
    EXPECT_EQ(display()->geometry(), window->screen()->geometry());
    ASSERT_EQ(display()->cards().size(), 2U);
    EXPECT_EQ(told(0).unit, "Osk 1200");
    EXPECT_EQ(told(1).unit, "Pelm 900");
    press(Qt::Key_Escape);
    EXPECT_FALSE(display()->isVisible());
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    EXPECT_EQ(page(), "unitPage");
}

TEST_F(BenchDisplayTest, the_grid_follows_the_count_and_the_shape_of_the_screen) {
    const QSize wide(1280, 800), high(1080, 1920);
    EXPECT_EQ(BenchDisplay::gridOf(1, wide), QSize(1, 1));
    EXPECT_EQ(BenchDisplay::gridOf(2, wide), QSize(2, 1));
    EXPECT_EQ(BenchDisplay::gridOf(2, high), QSize(1, 2));
    EXPECT_EQ(BenchDisplay::gridOf(4, wide), QSize(2, 2));
    EXPECT_EQ(BenchDisplay::gridOf(5, wide), QSize(3, 2));
    EXPECT_EQ(BenchDisplay::gridOf(8, wide), QSize(3, 3));
}

TEST_F(BenchDisplayTest, the_digits_of_up_to_four_cards_are_a_tenth_of_the_screen_high_and_within_the_card) {
    clock.advance_ms(60 * display_minute_ms);
    note(osk, 100, 1234); // as wide as they come
    open();
    for (const char* name : {"", "Tarrow 2k", "a unit whose name is longer than any card of any screen is wide, with its maker and its year 2027"}) {
        if (*name != 0) start(name, 2000);
        QApplication::processEvents();
        for (const QSize screen : {QSize(1280, 800), QSize(1920, 1080)}) {
            display()->resize(screen);
            for (const DisplayCard* card : display()->cards()) {
                const BigFigureLayout layout = card->figureLayout();
                EXPECT_GE(layout.digit_px, screen.height() / 10.0) << card->entry().unit.toStdString() << " of " << display()->cards().size();
                EXPECT_TRUE(display()->rect().contains(card->geometry()));
                for (const QRectF& cell : layout.cells) EXPECT_TRUE(QRectF(card->rect()).contains(cell));
                EXPECT_FALSE(layout.cells[0].intersects(layout.cells[1]));
            }
        }
    }
    EXPECT_EQ(display()->cards().size(), 4U);
}

TEST_F(BenchDisplayTest, a_card_tells_gauge_energy_cut_off_from_now_and_the_next_reading) {
    for (int hour = 1; hour <= 4; ++hour) {
        clock.advance_ms(60 * display_minute_ms);
        note(osk, 100 - 8 * hour, 90 * hour);
    }
    clock.advance_ms(10 * display_minute_ms);
    open();
    EXPECT_EQ(told(0).figure("gauge").value, "68");
    EXPECT_EQ(told(0).figure("delivered").value, "360");
    EXPECT_TRUE(told(0).cut_off_in.startsWith("in ")) << told(0).cut_off_in.toStdString();
    EXPECT_EQ(told(0).due, "in 20 min");
    EXPECT_NEAR(*told(0).due_share, 20.0 / 30, 1e-9);
    EXPECT_EQ(told(0).age, "read 10 min ago");
    EXPECT_TRUE(told(0).since.endsWith("4 h 12")) << told(0).since.toStdString();
    const QString before = told(0).cut_off_in;
    clock.advance_ms(25 * display_minute_ms);
    window->reminders().tick();
    EXPECT_TRUE(told(0).overdue);
    EXPECT_NE(told(0).cut_off_in, before) << "it counts from now";
}

TEST_F(BenchDisplayTest, a_number_takes_the_reading_of_its_card_and_ctrl_z_takes_it_back) {
    clock.advance_ms(30 * display_minute_ms);
    open();
    press("2");
    EXPECT_TRUE(entry()->isVisible());
    press("95");
    press(Qt::Key_Tab);
    press("42");
    press(Qt::Key_Return);
    EXPECT_FALSE(entry()->isVisible());
    ASSERT_EQ(standing(pelm).size(), 2U);
    EXPECT_EQ(standing(pelm).back().values.gauge_percent, 95);
    EXPECT_EQ(standing(pelm).back().values.register_wh, 42);
    EXPECT_TRUE(display()->footWords().startsWith("Recorded 95 %, 42 Wh")) << display()->footWords().toStdString();
    EXPECT_EQ(told(1).figure("gauge").value, "95");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(standing(pelm).size(), 1U);
    press("7");
    EXPECT_FALSE(entry()->isVisible()) << "there is no seventh";
}

TEST_F(BenchDisplayTest, a_doubtful_value_is_asked_over_the_card_and_recorded_only_when_answered) {
    clock.advance_ms(30 * display_minute_ms);
    note(osk, 95, 60);
    clock.advance_ms(30 * display_minute_ms);
    open();
    press("1");
    press("90");
    press(Qt::Key_Tab);
    press("12"); // the register fell
    press(Qt::Key_Return);
    EXPECT_FALSE(question().isEmpty());
    EXPECT_EQ(standing(osk).size(), 2U);
    press("2"); // a hasty key is no answer, and opens no other card
    EXPECT_FALSE(question().isEmpty());
    press("z");
    press("85"); // what it showed just before the reset
    press(Qt::Key_Return);
    EXPECT_FALSE(entry()->isVisible());
    EXPECT_NEAR(*document.analysis(osk).energy.delivered_wh.value, 97, 1e-9) << "85 Wh before the reset and 12 since";
}

TEST_F(BenchDisplayTest, a_text_that_cannot_be_read_stays_and_says_why) {
    open();
    press("1");
    press("9x");
    press(Qt::Key_Return);
    const auto* message = entry()->findChild<QLabel*>(QStringLiteral("displayEntryMessage"));
    EXPECT_TRUE(message->isVisible());
    EXPECT_EQ(entry()->findChild<QLineEdit*>(QStringLiteral("displayGaugeEdit"))->text(), "9x");
    EXPECT_EQ(standing(osk).size(), 1U);
}

TEST_F(BenchDisplayTest, what_is_half_typed_goes_with_the_run_between_its_page_and_the_display) {
    window->enterReading(osk);
    type("gaugeEdit", "9");
    type("remarkEdit", "fan on");
    open();
    press("1");
    auto* gauge = entry()->findChild<QLineEdit*>(QStringLiteral("displayGaugeEdit"));
    EXPECT_EQ(gauge->text(), "9");
    EXPECT_TRUE(entry()->findChild<QLabel*>(QStringLiteral("displayEntryRest"))->text().contains("fan on"));
    press(Qt::Key_End);
    press("4");
    press(Qt::Key_Escape);
    EXPECT_TRUE(display()->isVisible()) << "Esc leaves the entry first";
    press(Qt::Key_Escape);
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text(), "94");
    EXPECT_EQ(find<QLineEdit>("remarkEdit")->text(), "fan on");
    open();
    press("1");
    press(Qt::Key_Return);
    EXPECT_EQ(standing(osk).back().values.remark, "fan on");
    press(Qt::Key_Escape);
    EXPECT_EQ(find<QLineEdit>("gaugeEdit")->text(), "") << "recorded, so no longer half typed";
}

TEST_F(BenchDisplayTest, it_is_dimmed_at_night_or_by_its_key_and_keeps_what_was_chosen) {
    const auto local = to_local(clock.now_ms(), machine_zone());
    clock.advance_ms(((27 - local.hour) % 24) * 60 * display_minute_ms); // three in the morning
    open();
    EXPECT_TRUE(display()->dim());
    EXPECT_TRUE(display()->footWords().contains("N dimmed 22:00 to 06:00")) << display()->footWords().toStdString();
    clock.advance_ms(9 * 60 * display_minute_ms);
    EXPECT_FALSE(display()->dim()) << "at noon";
    press("n");
    EXPECT_TRUE(display()->dim()) << "by the key";
    press("n");
    EXPECT_TRUE(display()->footWords().contains("N not dimmed"));
    press(Qt::Key_Escape);
    clock.advance_ms(15 * 60 * display_minute_ms);
    window.reset();
    show();
    window->openLogbook(document.path());
    open();
    EXPECT_FALSE(display()->dim()) << "three in the morning again, and not wanted";
}

TEST_F(BenchDisplayTest, without_running_tests_it_says_so_and_a_run_that_ends_leaves_its_card) {
    open();
    for (const auto& uuid : {osk, pelm}) {
        auto run = document.run(uuid)->run;
        run.end = RunEnd::stopped_by_tester;
        ASSERT_TRUE(document.updateRun(run));
    }
    QApplication::processEvents();
    EXPECT_TRUE(display()->cards().empty());
    EXPECT_FALSE(display()->footWords().contains("reading"));
    display()->grab();
    press("1");
    press(Qt::Key_Escape);
    EXPECT_FALSE(display()->isVisible());
}

TEST_F(BenchDisplayTest, a_running_charge_has_its_peak_where_a_drain_has_its_cut_off) {
    const auto charge = start("Tarrow 2k", 2000, RunKind::charge);
    trigger("benchAction");
    open();
    ASSERT_EQ(display()->cards().size(), 3U);
    EXPECT_TRUE(told(2).cut_off_in.isEmpty());
    EXPECT_EQ(told(2).figures[4].key, "peak");
    EXPECT_EQ(told(2).kind, "charge");
    display()->grab();
}

} // namespace ullage::test
