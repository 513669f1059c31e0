// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "dialogs/export_dialog.h"

#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QListWidget>
#include <QMimeData>
#include <QTableView>

namespace ullage {

using test::WindowTest;

namespace {

QByteArray text_of(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QFile::ReadOnly)) << path.toStdString();
    return file.readAll();
}

} // namespace

TEST_F(WindowTest, the_readings_of_the_run_shown_are_exported_in_every_format) {
    new_logbook();
    drop({write("tarrow.csv", sheet())});
    trigger("exportReadingsAction");
    auto* forms = find<QListWidget>("formsList");
    EXPECT_EQ(find<QComboBox>("subjectCombo")->currentText(), QStringLiteral("Readings of this run"));
    const char* names[] = {"r.csv", "r.md", "r.html", "r.xlsx", "r.json", "r.tex"};
    for (int form = 0; form < 6; ++form) {
        forms->setCurrentRow(form);
        prompts.to_save = file(names[form]);
        click("saveButton");
        EXPECT_FALSE(text_of(file(names[form])).isEmpty()) << names[form];
    }
    EXPECT_TRUE(prompts.suggested.endsWith("tarrow-2k-drain-1-readings.tex")) << prompts.suggested.toStdString();
    EXPECT_TRUE(text_of(file("r.csv")).contains("2027-05-06T12:00:00Z,82,360,360,180,"));
    EXPECT_TRUE(QFile::exists(file("r.csv-metadata.json")));
    EXPECT_EQ(forms->count(), 6 + 2 * 3) << "three charts, each as PNG and SVG";
}

TEST_F(WindowTest, readings_and_intervals_of_all_runs_are_exported_with_their_unit) {
    new_logbook();
    drop({write("tarrow.csv", sheet()), write("osk.csv", sheet().replace("Tarrow 2k", "Osk 1200"))});
    trigger("exportReadingsAction");
    auto* subjects = find<QComboBox>("subjectCombo");
    ASSERT_EQ(subjects->count(), 4);
    find<QListWidget>("formsList")->setCurrentRow(0);
    subjects->setCurrentIndex(2);
    prompts.to_save = file("all.csv");
    click("saveButton");
    const QByteArray all = text_of(file("all.csv"));
    EXPECT_EQ(all.count('\n'), 5);
    EXPECT_TRUE(all.contains("Osk 1200,,1,2027-05-06T10:00:00Z,100,0,"));
    EXPECT_TRUE(prompts.suggested.endsWith("readings.csv"));
    subjects->setCurrentIndex(3);
    click("saveButton");
    EXPECT_TRUE(text_of(file("all.csv")).startsWith("unit,maker,run,from,to,hours,"));
}

TEST_F(WindowTest, ctrl_c_among_the_readings_copies_those_chosen_or_else_all) {
    new_logbook();
    drop({write("tarrow.csv", sheet())});
    auto* view = find<QTableView>("readingsView");
    view->setFocus();
    view->clearSelection();
    QTest::keyClick(view, Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QApplication::clipboard()->text().trimmed().split('\n').size(), 3);
    view->selectRow(2); // row 0 heads the day
    QTest::keyClick(view, Qt::Key_C, Qt::ControlModifier);
    const auto rows = QApplication::clipboard()->text().trimmed().split('\n');
    ASSERT_EQ(rows.size(), 2);
    EXPECT_TRUE(rows[1].startsWith("2027-05-06T12:00:00Z\t82\t360\t")) << rows[1].toStdString();
    EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasHtml());
}

TEST_F(WindowTest, copy_table_in_the_menu_shows_the_comparison_and_says_that_it_is_copied) {
    click("sampleLogbookButton");
    trigger("copyComparisonAction");
    EXPECT_EQ(page(), "comparisonPage");
    EXPECT_TRUE(message().contains("clipboard")) << message().toStdString();
    EXPECT_TRUE(QApplication::clipboard()->text().contains("Osk 1200\t"));
}

TEST_F(WindowTest, without_runs_nothing_can_be_exported) {
    new_logbook();
    EXPECT_FALSE(enabled("exportReadingsAction"));
    EXPECT_FALSE(enabled("copyComparisonAction"));
}

} // namespace ullage
