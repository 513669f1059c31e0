// SPDX-License-Identifier: GPL-3.0-or-later
// A whole night at the bench, through the widgets: two units at once, 30 readings each, a meter zeroed in the middle, a typing error, a reading
// amended later, a photo, and the program closed and opened again at four in the morning. The readings follow an invented drain that is linear
// in time, so that the delivered energy at the end is known to the watt-hour.
#include "app/window/window_fixture.h"
#include "pages/run/entry_row.h"

#include <QAction>
#include <QBuffer>
#include <QDialog>
#include <QFile>
#include <QImage>
#include <QLabel>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace ullage::test {
namespace {

constexpr int readings = 30, minutes_between = 20, zeroed_at = 15, typing_error_at = 8, reopened_at = 20;

/// What the bench shows of a unit after `n` steps of 20 minutes.
struct Bench {
    int first_register_wh;
    double wh_a_step, gauge_a_step;
    [[nodiscard]] int delivered_wh(int n) const { return static_cast<int>(std::lround(wh_a_step * n)); }
    [[nodiscard]] int gauge(int n) const { return 100 - static_cast<int>(std::lround(gauge_a_step * n)); }
};

constexpr Bench osk{4312, 30.0, 3.2}, pelm{870, 21.0, 3.0};

class NightTest : public WindowTest {
protected:
    void SetUp() override {
        open_window();
        new_logbook();
        add_meter("Socket meter A");
        add_unit("Osk 1200", "1.2 kWh");
        add_unit("Pelm 900", "900");
        clock.set_ms(1'810'231'200'000);
    }
    void TearDown() override { window.reset(); }

    void open_window() {
        show();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }
    void start(const char* unit) {
        for (const Unit& each : document.units())
            if (each.name == unit) window->showUnit(each.uuid);
        start_run();
        // One meter in both tests is asked about.
        const auto* form = window->findChild<QWidget*>(QStringLiteral("startForm"));
        if (form != nullptr && form->isVisible()) click("submitButton");
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    /// Types a reading of the run in sight and presses Enter.
    void enter(int gauge, int register_wh, const char* remark = "") {
        type("gaugeEdit", QString::number(gauge));
        type("registerEdit", QString::number(register_wh));
        if (*remark) type("remarkEdit", QString::fromLatin1(remark));
        QTest::keyClick(find<QLineEdit>("gaugeEdit"), Qt::Key_Return);
        QApplication::processEvents();
    }
    /// By the action of Ctrl+1, Ctrl+2; the keys themselves are pressed in the tests of the bench.
    void go_to(int number) {
        trigger(QStringLiteral("running%1Action").arg(number).toLatin1().constData());
        ASSERT_EQ(page(), QStringLiteral("runPage"));
    }
    [[nodiscard]] bool asked() const {
        const auto* bar = window->findChild<QWidget*>(QStringLiteral("questionBar"));
        return bar && bar->isVisible();
    }
    [[nodiscard]] const RunRecord& run_of(const char* unit) const {
        for (const RunRecord* record : document.runs())
            if (record->unit.name == unit) return *record;
        throw std::runtime_error("no run");
    }
    [[nodiscard]] static int standing(const RunRecord& record) {
        return static_cast<int>(std::ranges::count_if(record.readings, [](const Reading& r) { return !r.withdrawn && r.values.register_wh; }));
    }
    QString photo_file() const {
        QImage image(64, 48, QImage::Format_RGB32);
        image.fill(Qt::darkGray);
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        image.save(&buffer, "PNG");
        return write("display.png", bytes);
    }
};

} // namespace

TEST_F(NightTest, two_units_thirty_readings_a_zeroed_meter_a_typo_an_amendment_a_photo_and_a_restart) {
    start("Osk 1200");
    start("Pelm 900");
    for (int n = 0; n < readings; ++n) {
        go_to(1);
        if (n == zeroed_at) {
            // The register is read before it is zeroed; the mark notes the moment, and counting goes on from 0.
            enter(osk.gauge(n), osk.first_register_wh + osk.delivered_wh(n));
            trigger("mark2Action");
        } else if (n == typing_error_at) {
            // 4552 becomes 9552: more power than the unit can deliver, questioned, and corrected.
            enter(osk.gauge(n), osk.first_register_wh + osk.delivered_wh(n) + 5000);
            ASSERT_TRUE(asked());
            QTest::keyClick(find<QWidget>("questionBar"), Qt::Key_C);
            type("registerEdit", QString::number(osk.first_register_wh + osk.delivered_wh(n)));
            QTest::keyClick(find<QLineEdit>("registerEdit"), Qt::Key_Return);
        } else if (n > zeroed_at) {
            enter(osk.gauge(n), osk.delivered_wh(n) - osk.delivered_wh(zeroed_at));
        } else {
            enter(osk.gauge(n), osk.first_register_wh + osk.delivered_wh(n));
        }
        ASSERT_FALSE(asked()) << "reading " << n << ": " << find<QLabel>("questionLabel")->text().toStdString();
        ASSERT_EQ(standing(run_of("Osk 1200")), n + 1) << find<EntryRow>("entryRow")->message().toStdString();
        go_to(2);
        enter(pelm.gauge(n), pelm.first_register_wh + pelm.delivered_wh(n));
        ASSERT_EQ(standing(run_of("Pelm 900")), n + 1) << find<EntryRow>("entryRow")->message().toStdString();
        if (n == reopened_at) {
            // Half typed when the light goes out.
            go_to(1);
            type("remarkEdit", "second reel");
            const QString path = document.path();
            window.reset();
            document.close();
            open_window();
            window->openLogbook(path);
            QApplication::processEvents();
            go_to(1);
            EXPECT_EQ(find<QLineEdit>("remarkEdit")->text(), QStringLiteral("second reel"));
            find<QLineEdit>("remarkEdit")->clear();
        }
        clock.advance_ms(minutes_between * 60'000);
    }

    // A photo for the next reading, which closes the run.
    go_to(1);
    prompts.to_open = {photo_file()};
    trigger("attachPhotoAction");
    enter(osk.gauge(readings), osk.delivered_wh(readings) - osk.delivered_wh(zeroed_at), "found with its output off");

    // In the morning the last reading of the second unit turns out to be misread by one.
    go_to(2);
    trigger("amendReadingAction");
    auto* dialog = window->findChild<QDialog*>(QStringLiteral("amendDialog"));
    ASSERT_NE(dialog, nullptr);
    auto* gauge = dialog->findChild<QLineEdit*>(QStringLiteral("amendGaugeEdit"));
    ASSERT_NE(gauge, nullptr);
    gauge->setText(QString::number(pelm.gauge(readings - 1) + 1));
    dialog->findChild<QLineEdit*>(QStringLiteral("amendReasonEdit"))->setText(QStringLiteral("misread in the dark"));
    QTest::mouseClick(dialog->findChild<QPushButton*>(QStringLiteral("amendButton")), Qt::LeftButton);
    QApplication::processEvents();

    const RunRecord &first = run_of("Osk 1200"), &second = run_of("Pelm 900");
    EXPECT_EQ(standing(first), readings + 1);
    EXPECT_EQ(standing(second), readings);
    const EnergyAnalysis& energy = document.analysis(first.run.uuid).energy;
    EXPECT_NEAR(*energy.delivered_wh.value, osk.delivered_wh(readings), 1e-9) << energy.delivered_wh.reason;
    EXPECT_NEAR(*document.analysis(second.run.uuid).energy.delivered_wh.value, pelm.delivered_wh(readings - 1), 1e-9);
    EXPECT_EQ(std::ranges::count_if(first.readings, [](const Reading& r) { return r.values.mark == MarkKind::meter_zeroed; }), 1);
    const auto amended = document.history(second.readings.back().uuid);
    ASSERT_TRUE(amended);
    ASSERT_EQ(amended.value().size(), 2u);
    EXPECT_EQ(amended.value().back().reason, "misread in the dark");
    EXPECT_EQ(*second.readings.back().values.gauge_percent, pelm.gauge(readings - 1) + 1);
    const auto photos = document.photos(first.run.uuid);
    ASSERT_TRUE(photos);
    ASSERT_EQ(photos.value().size(), 1u);
    EXPECT_EQ(photos.value().front().reading_uuid, first.readings.back().uuid);
}

} // namespace ullage::test
