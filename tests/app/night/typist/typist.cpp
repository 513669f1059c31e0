// SPDX-License-Identifier: GPL-3.0-or-later
// An evening at the window, by its keys and menus, on a disk that fails: a logbook is opened, readings are typed and recorded, one is amended, one
// withdrawn, the run ended, the window closed. No timer runs, so that each action on the disk has the same number every time.
//   ullage_typist FAULT N LOGBOOK RUN SETTINGS
// FAULT and N are those of FaultyDisk::set_fault(). Said is what the person at the window would know: "half GAUGE" when a half-typed row is kept,
// "kept UUID GAUGE", "amended UUID GAUGE", "withdrawn UUID" and "run ended". Where the window does not do what it is asked, "refused STEP FIELD:
// WORDS" with what still stands in the gauge field and all that the window says, which ends the evening.
#include "core/store/faulty_disk.h"
#include "document/document.h"
#include "pages/run/entry_row.h"
#include "pages/run/readings_view.h"
#include "services/settings.h"
#include "support/fake_clock.h"
#include "support_qt/fake_prompts.h"
#include "window/main_window.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <algorithm>
#include <optional>
#include <string>

namespace {

using namespace ullage;

class Evening {
public:
    Evening(test::FaultyDisk& disk, const QString& settings) : disk_(disk), settings_(settings) { window_.resize(1280, 800); }

    /// All of it; the code with which the process ends.
    int spend(const QString& logbook, const RunId& run) {
        run_ = run;
        const bool done =
            open(logbook) && record(98, 4010) && record(97, 4020) && amend(96) && record(95, 4040) && withdraw() && record(94, 4050) && end();
        step("close");
        window_.close();
        document_.close();
        return done ? 0 : 1;
    }

private:
    void step(const char* name) {
        step_ = name;
        disk_.begin_step(name);
    }

    bool refused() {
        QString words;
        for (const QLabel* label : window_.findChildren<QLabel*>())
            if (label->isVisible()) words += label->text().simplified() + QLatin1Char(' ');
        const auto* field = window_.findChild<QLineEdit*>(step_ == "amend" ? QStringLiteral("amendGaugeEdit") : QStringLiteral("gaugeEdit"));
        test::say_line("refused " + step_ + ' ' + (field ? field->text().toStdString() : std::string()) + ": " + words.toStdString());
        return false;
    }

    bool open(const QString& logbook) {
        step("open");
        window_.show();
        window_.openLogbook(logbook);
        if (!document_.run(run_)) return refused();
        window_.enterReading(run_);
        auto* entry = window_.findChild<EntryRow*>();
        QObject::connect(entry, &EntryRow::recorded, [this](const ReadingId& uuid) { recorded_ = uuid; });
        return true;
    }

    static void type(QLineEdit& field, int number) {
        field.selectAll();
        QTest::keyClicks(&field, QString::number(number));
    }

    bool record(int gauge, int register_wh) {
        clock_.advance_hours(1);
        auto* gauge_edit = window_.findChild<QLineEdit*>(QStringLiteral("gaugeEdit"));
        auto* register_edit = window_.findChild<QLineEdit*>(QStringLiteral("registerEdit"));
        step("type");
        type(*gauge_edit, gauge);
        window_.findChild<EntryRow*>()->keepDraft(); // as its timer does
        test::say_line("half " + gauge_edit->text().toStdString());
        step("record");
        recorded_.reset();
        type(*register_edit, register_wh);
        QTest::keyClick(register_edit, Qt::Key_Return);
        if (!recorded_) return refused();
        test::say_line("kept " + recorded_->text() + ' ' + std::to_string(gauge));
        return true;
    }

    /// The reading that was entered last and still stands.
    [[nodiscard]] const Reading& last() const {
        const auto& readings = document_.run(run_)->readings;
        return *std::find_if(readings.rbegin(), readings.rend(), [](const Reading& reading) { return !reading.withdrawn; });
    }

    bool amend(int gauge) {
        step("amend");
        const ReadingId uuid = last().uuid;
        window_.action(QStringLiteral("amendReadingAction"))->trigger();
        auto* dialog = window_.findChild<QDialog*>(QStringLiteral("amendDialog"));
        auto* field = dialog->findChild<QLineEdit*>(QStringLiteral("amendGaugeEdit"));
        type(*field, gauge);
        QTest::keyClick(field, Qt::Key_Return);
        if (dialog->isVisible()) return refused();
        test::say_line("amended " + uuid.text() + ' ' + std::to_string(gauge));
        QApplication::sendPostedEvents();
        return true;
    }

    bool withdraw() {
        step("withdraw");
        const ReadingId uuid = last().uuid;
        auto* readings = window_.findChild<ReadingsView*>();
        readings->selectReadings({uuid});
        window_.action(QStringLiteral("withdrawReadingsAction"))->trigger();
        if (last().uuid == uuid) return refused();
        test::say_line("withdrawn " + uuid.text());
        return true;
    }

    bool end() {
        step("end");
        window_.action(QStringLiteral("endStoppedAction"))->trigger();
        for (const char* button : {"takeLastButton", "submitButton"})
            QTest::mouseClick(window_.findChild<QPushButton*>(QLatin1String(button)), Qt::LeftButton);
        if (document_.run(run_)->run.end == RunEnd::still_running) return refused();
        test::say_line("run ended");
        return true;
    }

    test::FaultyDisk& disk_;
    test::FakeClock clock_;
    Settings settings_;
    test::FakePrompts prompts_;
    Document document_{clock_};
    MainWindow window_{document_, settings_, prompts_};
    RunId run_;
    std::string step_;
    std::optional<ReadingId> recorded_;
};

} // namespace

int main(int count, char** words) {
    const QApplication application(count, words);
    if (count < 6) return 2;
    test::FaultyDisk disk;
    disk.set_fault(words[1], std::stol(words[2]));
    int code = 0;
    {
        Evening evening(disk, QString::fromLocal8Bit(words[5]));
        code = evening.spend(QString::fromLocal8Bit(words[3]), RunId(words[4]));
    }
    disk.say_end(code);
    return code;
}
