// SPDX-License-Identifier: GPL-3.0-or-later
// A night of three tests driven by the keyboard alone: every key goes to whoever has the keyboard, no pointer, no action called by name. One is ended
// by a cut-off that was seen, one is found off, the third has its meter zeroed. What must come out was worked out by hand beside each.
#include "app/window/window_fixture.h"
#include "pages/bench/bench_display.h"
#include "services/reminders.h"

#include <QComboBox>
#include <QTreeView>

#include <cmath>

namespace ullage::test {
namespace {

constexpr UtcMs night_minute_ms = 60'000;
constexpr double seconds_a_key = 0.3; ///< of a person who knows what comes next

class KeyboardNight : public WindowTest {
protected:
    void SetUp() override {
        clock.set_ms(1'810'238'400'000); // 2027-05-13 20:00 UTC
        show();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }
    void TearDown() override { window.reset(); }

    /// Who has the keyboard. Where a form has closed and no window has it, the one on top gets it, as a desktop does.
    [[nodiscard]] QWidget* keyboard() const {
        QApplication::processEvents();
        if (QWidget* popup = QApplication::activePopupWidget()) return popup;
        if (QApplication::activeWindow() == nullptr) {
            QWidget* form = QApplication::activeModalWidget();
            (form ? form : window.get())->activateWindow();
            QApplication::processEvents();
        }
        if (QWidget* focus = QApplication::focusWidget()) return focus;
        return QApplication::activeWindow() ? QApplication::activeWindow() : window.get();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(keyboard(), key, modifiers);
        ++keys;
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void write(const char* text) {
        for (; *text != 0; ++text) {
            QTest::keyClick(keyboard(), *text);
            ++keys;
        }
        QApplication::processEvents();
    }
    /// Tab until this part has the keyboard.
    void tab_to(const char* name) {
        for (int i = 0; i < 40; ++i) {
            if (keyboard()->objectName() == QLatin1String(name)) return;
            key(Qt::Key_Tab);
        }
        FAIL() << name << " is not reached by Tab; the keyboard is at " << keyboard()->objectName().toStdString();
    }
    void unit(const char* name, const char* rated) {
        key(Qt::Key_U, Qt::ControlModifier);
        write(name);
        tab_to("ratedEnergyEdit");
        write(rated);
        key(Qt::Key_Return);
    }
    void meter(const char* name) {
        key(Qt::Key_G, Qt::ControlModifier);
        write(name);
        tab_to("stepEdit");
        write("1");
        tab_to("limitEdit");
        write("1");
        key(Qt::Key_Return);
    }
    /// Starts a drain of the unit in sight: its meter by its first letters, then the first reading.
    void start(const char* meter_letters, const char* gauge, const char* register_wh) {
        key(Qt::Key_R, Qt::ControlModifier);
        ASSERT_EQ(keyboard()->objectName(), "gaugeEdit") << "the form opens where the first reading is typed";
        write(gauge);
        key(Qt::Key_Tab);
        write(register_wh);
        for (int i = 0; i < 40 && keyboard()->objectName() != "meterCombo"; ++i) key(Qt::Key_Backtab, Qt::ShiftModifier);
        write(meter_letters);
        key(Qt::Key_Return);
        ASSERT_EQ(keyboard()->objectName(), "gaugeEdit") << "of the entry row";
        ASSERT_EQ(page(), "runPage");
    }
    /// The next reading of the test with this number.
    void read(int number, int gauge, int register_wh) {
        key(static_cast<Qt::Key>(Qt::Key_0 + number), Qt::ControlModifier);
        write(std::to_string(gauge).c_str());
        key(Qt::Key_Tab);
        write(std::to_string(register_wh).c_str());
        key(Qt::Key_Return);
    }
    [[nodiscard]] const RunRecord& run_of(const char* name) const {
        for (const RunRecord* record : document.runs())
            if (record->unit.name == name) return *record;
        throw std::runtime_error("no run");
    }
    [[nodiscard]] std::size_t noted(const char* name) const { return run_of(name).readings.size(); }
    void pass(int minutes) {
        clock.advance_ms(minutes * night_minute_ms);
        window->reminders().tick();
    }

    int keys = 0;
};

} // namespace

TEST_F(KeyboardNight, from_a_new_logbook_to_the_first_reading_takes_less_than_forty_seconds) {
    prompts.to_save = file("night.ullage");
    key(Qt::Key_N, Qt::ControlModifier);
    unit("Osk 1200", "1200");
    meter("Meter A");
    key(Qt::Key_Tab); // off the table of meters; the unit is chosen in the form
    start("M", "100", "1000");
    ASSERT_EQ(noted("Osk 1200"), 1U);
    EXPECT_LT(keys * seconds_a_key, 40) << keys << " keys";
    EXPECT_EQ(run_of("Osk 1200").meter->name, "Meter A");
    EXPECT_EQ(run_of("Osk 1200").readings[0].values.register_wh, 1000);
}

TEST_F(KeyboardNight, three_tests_run_through_a_night_by_keyboard_alone) {
    prompts.to_save = file("night.ullage");
    key(Qt::Key_N, Qt::ControlModifier);
    for (const char* name : {"A meter", "B meter", "C meter"}) meter(name);
    unit("Osk 1200", "1200");
    start("A", "100", "1000");
    pass(1);
    unit("Pelm 900", "900");
    start("B", "100", "0");
    pass(1);
    unit("Tarrow 1k", "1000");
    start("C", "100", "500");
    // 100, 80 and 60 W until midnight and one, two hours on, by the entry row and by the bench display in turns.
    for (int hour = 1; hour <= 5; ++hour) {
        pass(60);
        if (hour == 3) key(Qt::Key_F11);
        if (hour < 3) {
            read(1, 100 - 9 * hour, 1000 + 100 * hour);
            read(2, 100 - 8 * hour, 80 * hour);
            read(3, 100 - 5 * hour, 500 + 60 * hour);
        } else {
            ASSERT_EQ(keyboard()->objectName(), "benchDisplay");
            for (const int number : {1, 2, 3}) {
                const int gauge = 100 - (number == 1 ? 9 : number == 2 ? 8 : 5) * hour;
                const int register_wh = number == 1 ? 1000 + 100 * hour : number == 2 ? 80 * hour : 500 + 60 * hour;
                key(static_cast<Qt::Key>(Qt::Key_0 + number));
                write(std::to_string(gauge).c_str());
                key(Qt::Key_Tab);
                write(std::to_string(register_wh).c_str());
                key(Qt::Key_Return);
            }
        }
        for (const char* name : {"Osk 1200", "Pelm 900", "Tarrow 1k"}) ASSERT_EQ(noted(name), static_cast<std::size_t>(hour) + 1) << name;
    }
    // Two in the morning: somebody has zeroed the third meter. It shows 25 Wh now and showed 835 just before, which is 60 W all the time.
    pass(60);
    key(Qt::Key_3);
    write("70");
    key(Qt::Key_Tab);
    write("25");
    key(Qt::Key_Return);
    write("z");
    write("835");
    key(Qt::Key_Return);
    key(Qt::Key_1);
    write("46");
    key(Qt::Key_Tab);
    write("1600");
    key(Qt::Key_Return);
    key(Qt::Key_Escape);
    EXPECT_EQ(page(), "runPage") << "the page before the display";
    // Half past two: the first goes off before the tester's eyes, at 1650 Wh and 40 %.
    pass(30);
    key(Qt::Key_1, Qt::ControlModifier);
    key(Qt::Key_F8);
    tab_to("endGaugeEdit");
    write("40");
    key(Qt::Key_Tab);
    write("1650");
    key(Qt::Key_Return);
    if (run_of("Osk 1200").run.end == RunEnd::still_running) key(Qt::Key_Return); // what is unlikely is asked once
    EXPECT_EQ(run_of("Osk 1200").run.end, RunEnd::cut_off_seen);
    // A quarter past three: the second is found off, its register at 440 Wh. It was on at one o'clock, with 400.
    pass(45);
    key(Qt::Key_1, Qt::ControlModifier); // it has become the first of those that run
    key(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    tab_to("endRegisterEdit");
    write("440");
    key(Qt::Key_Return);
    if (run_of("Pelm 900").run.end == RunEnd::still_running) key(Qt::Key_Return);
    EXPECT_EQ(run_of("Pelm 900").run.end, RunEnd::found_off);
    pass(45);
    read(1, 60, 145); // four o'clock: 25 Wh at two and 60 W since

    // By hand. Osk: 1650 - 1000 = 650 Wh of 1200, a usable fraction of 0.542, measured.
    const EnergyAnalysis& first = document.analysis(run_of("Osk 1200").run.uuid).energy;
    EXPECT_NEAR(*first.delivered_wh.value, 650, 1e-9);
    EXPECT_EQ(first.usable_fraction.kind, Kind::measured) << first.usable_fraction.reason;
    EXPECT_NEAR(*first.usable_fraction.value, 650.0 / 1200, 1e-9);
    EXPECT_NEAR(*first.duration_h.value, 6.5, 0.05) << "20:00 to 02:30, and two minutes in which the others were started";
    // Pelm: 440 Wh of 900, 0.489. It went off between one and a quarter past three; 40 Wh at its 80 W are half an hour after one.
    const EnergyAnalysis& second = document.analysis(run_of("Pelm 900").run.uuid).energy;
    EXPECT_NEAR(*second.delivered_wh.value, 440, 1e-9);
    EXPECT_NEAR(*second.usable_fraction.value, 440.0 / 900, 1e-9);
    ASSERT_TRUE(second.duration_h.lower && second.duration_h.upper) << second.duration_h.reason;
    EXPECT_LT(*second.duration_h.lower, 5.55);
    EXPECT_GT(*second.duration_h.upper, 5.45);
    // Tarrow: 835 - 500 Wh before the reset and 145 since, 480 Wh in eight hours: nothing is missing.
    const EnergyAnalysis& third = document.analysis(run_of("Tarrow 1k").run.uuid).energy;
    EXPECT_NEAR(*third.delivered_wh.value, 480, 1e-9) << third.delivered_wh.reason;
    EXPECT_NE(third.delivered_wh.kind, Kind::at_least) << third.delivered_wh.reason;
    EXPECT_EQ(run_of("Tarrow 1k").run.end, RunEnd::still_running);
}

} // namespace ullage::test
