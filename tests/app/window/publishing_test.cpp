// SPDX-License-Identifier: GPL-3.0-or-later
// What a tester publishes, in few actions.
#include "window_fixture.h"

#include <QCheckBox>
#include <QDir>
#include <QFile>

namespace ullage {

using test::WindowTest;

namespace {

QByteArray all_of(const QString& path) {
    QFile file(path);
    return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
}

/// The report, a table and three pictures.
void expect_published(const QString& report, const QString& folder) {
    EXPECT_TRUE(all_of(report).startsWith("%PDF-")) << report.toStdString();
    const QDir files(folder);
    EXPECT_GE(files.entryList({QStringLiteral("*.html")}).size(), 1) << folder.toStdString();
    EXPECT_GE(files.entryList({QStringLiteral("*.png")}).size(), 3) << folder.toStdString();
}

} // namespace

TEST_F(WindowTest, a_comparison_and_a_unit_are_published_as_report_table_and_pictures_in_four_actions_each) {
    trigger("sampleLogbookAction");
    window->showRun(document.runs().front()->run.uuid);
    for (const char* action : {"comparisonReportAction", "unitReportAction"}) {
        const QString stem = QString::fromLatin1(action);
        prompts.to_save = file("") + stem + QStringLiteral(".pdf"); // 4, in the file dialog
        trigger(action);                                            // 1
        find<QCheckBox>("filesCheck")->click();                     // 2
        click("submitButton");                                      // 3
        expect_published(prompts.to_save, file("") + stem + QStringLiteral("-files"));
        EXPECT_TRUE(message().contains(stem + QStringLiteral("-files"))) << message().toStdString();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        window->showRun(document.runs().front()->run.uuid);
    }
}

} // namespace ullage
