// SPDX-License-Identifier: GPL-3.0-or-later
// A window that types readings into the entry row of a run for ever; after each that the row has recorded it prints the reading's uuid, and
// after each half-typed row that was kept, "half" with what stands in the gauge field. It kills itself in its N-th action on the disk, opening
// included, or finds the disk full from there on: so a failure can be repeated.
//   ullage_typist FILE RUN N [full]
// On a full disk it ends with the first row that was not recorded, and prints "refused" with what the row still holds and the page says.
#include "core/store/faulty_disk.h"
#include "document/document.h"
#include "pages/entry_row.h"
#include "pages/run_page.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include <string>
#include <unistd.h>

namespace {

// One write call a line, so that a kill leaves no half line.
bool say(const std::string& line) {
    const std::string text = line + "\n";
    return ::write(STDOUT_FILENO, text.data(), text.size()) == static_cast<ssize_t>(text.size());
}

} // namespace

int main(int count, char** words) {
    using namespace ullage;
    const QApplication application(count, words);
    if (count < 4) return 2;
    test::FaultyDisk disk;
    const bool full = count > 4 && std::string(words[4]) == "full";
    if (full) disk.fill_at(std::stol(words[3]));
    else disk.kill_at(std::stol(words[3]));
    const SystemClock clock;
    Document document(clock);
    const std::string run = words[2];
    if (const auto opened = document.open(QString::fromLocal8Bit(words[1])); !opened || document.run(run) == nullptr) return 1;
    RunPage page(document);
    page.resize(1000, 700);
    page.showRun(QString::fromStdString(run));
    page.show();
    auto* entry = page.findChild<EntryRow*>();
    auto* gauge = page.findChild<QLineEdit*>(QStringLiteral("gaugeEdit"));
    auto* reading = page.findChild<QLineEdit*>(QStringLiteral("registerEdit"));
    if (entry == nullptr || gauge == nullptr || reading == nullptr) return 1;
    int kept = 0;
    QObject::connect(entry, &EntryRow::recorded, [&kept](const QString& uuid) { kept += say("kept " + uuid.toStdString()); });

    const auto already = static_cast<int>(document.run(run)->readings.size());
    for (int i = already; i < already + 1000; ++i) {
        const int kept_before = kept;
        gauge->clear();
        QTest::keyClicks(gauge, QString::number(100 - i % 100));
        entry->keepDraft();
        if (!say("half " + gauge->text().toStdString())) return 1;
        reading->clear();
        QTest::keyClicks(reading, QString::number(1000 + i));
        QTest::keyClick(reading, Qt::Key_Return);
        // A gauge that begins again at 100 is questioned; it stands.
        if (auto* asked = QApplication::focusWidget(); asked != nullptr && !gauge->text().isEmpty()) QTest::keyClick(asked, Qt::Key_K);
        if (full && kept == kept_before) {
            const auto* error = page.findChild<QLabel*>(QStringLiteral("entryMessageLabel"));
            say("refused " + reading->text().toStdString() + ": " + (error != nullptr ? error->text().toStdString() : std::string()));
            return 0;
        }
    }
    return 0;
}
