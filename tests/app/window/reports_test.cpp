// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>

#include <string>

namespace ullage {

using test::WindowTest;

namespace {

/// With plain spaces, wherever a line may not end.
QByteArray content(const QString& path) {
    QFile file(path);
    return file.open(QFile::ReadOnly) ? file.readAll().replace("\u00A0", " ") : QByteArray();
}

} // namespace

TEST_F(WindowTest, a_report_of_the_run_shown_is_written_where_the_tester_says) {
    trigger("sampleLogbookAction");
    window->showRun(document.runs().front()->run.uuid);
    prompts.to_save = file("run.pdf");
    trigger("runReportAction");
    click("submitButton");
    EXPECT_TRUE(prompts.suggested.endsWith(QStringLiteral("osk-1200-run-1-report.pdf"))) << prompts.suggested.toStdString();
    EXPECT_TRUE(content(file("run.pdf")).startsWith("%PDF-"));
    EXPECT_TRUE(message().contains(QStringLiteral("run.pdf"))) << message().toStdString();
    EXPECT_TRUE(find<QPushButton>("openSavedButton")->isVisible() && find<QPushButton>("showFolderButton")->isVisible());
    click("dismissButton");
    EXPECT_FALSE(find<QPushButton>("openSavedButton")->isVisible());
}

TEST_F(WindowTest, a_report_of_the_unit_holds_the_sections_chosen_and_the_publisher_stays_in_the_logbook) {
    trigger("sampleLogbookAction");
    window->showRun(document.runs().front()->run.uuid);
    const QByteArray unit = QByteArray::fromStdString(document.runs().front()->unit.name);
    prompts.to_save = file("unit.html");
    trigger("unitReportAction");
    find<QComboBox>("formCombo")->setCurrentIndex(1);
    find<QCheckBox>("budgetPartCheck")->setChecked(false);
    type("publisherNameEdit", QStringLiteral("The Lantern"));
    find<QPlainTextEdit>("publisherIntroductionEdit")->setPlainText(QStringLiteral("Drained for 0.5 nights."));
    click("submitButton");
    const QByteArray html = content(file("unit.html"));
    EXPECT_TRUE(html.contains(unit + ": test report"));
    EXPECT_TRUE(html.contains("Claims against results"));
    EXPECT_FALSE(html.contains("Uncertainty budgets"));
    EXPECT_TRUE(html.contains("The Lantern") && html.contains("Drained for 0.5 nights."));
    EXPECT_EQ(document.publisher().name, "The Lantern");
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);

    trigger("unitReportAction");
    EXPECT_EQ(find<QLineEdit>("publisherNameEdit")->text(), QStringLiteral("The Lantern"));
    find<QComboBox>("lengthCombo")->setCurrentIndex(1);
    EXPECT_FALSE(find<QCheckBox>("budgetPartCheck")->isEnabled());
    prompts.to_save = file("short.pdf");
    find<QComboBox>("formCombo")->setCurrentIndex(0);
    click("submitButton");
    EXPECT_TRUE(content(file("short.pdf")).startsWith("%PDF-"));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    trigger("undoAction");
    EXPECT_EQ(document.publisher().name, "");
}

TEST_F(WindowTest, a_report_of_the_comparison_can_be_html_on_letter_paper) {
    trigger("sampleLogbookAction");
    prompts.to_save = file("all.html");
    trigger("comparisonReportAction");
    find<QComboBox>("formCombo")->setCurrentIndex(1);
    find<QComboBox>("paperCombo")->setCurrentIndex(1);
    click("submitButton");
    const QByteArray html = content(file("all.html"));
    EXPECT_TRUE(html.contains("size: letter"));
    for (const Unit& unit : document.units()) EXPECT_TRUE(html.contains(unit.name.c_str())) << unit.name;
}

TEST_F(WindowTest, the_report_of_the_comparison_stands_at_the_load_that_the_page_shows_or_as_tested) {
    trigger("sampleLogbookAction");
    trigger("comparisonAction");
    find<QDoubleSpinBox>("dutySpin")->setValue(50);
    find<QDoubleSpinBox>("loadSpin")->setValue(240);
    for (const auto& [way, title] : {std::pair{0, "Comparison of storage units at 120 W on average (240 W for 50 % of the time)"},
                                     std::pair{1, "Comparison of storage units as tested"}}) {
        prompts.to_save = file(way == 0 ? "load.html" : "tested.html");
        trigger("comparisonReportAction");
        find<QComboBox>("formCombo")->setCurrentIndex(1);
        auto* ways = find<QComboBox>("wayCombo");
        ASSERT_EQ(ways->count(), 2);
        ways->setCurrentIndex(way);
        click("submitButton");
        EXPECT_TRUE(content(prompts.to_save).contains(title)) << title;
        EXPECT_TRUE(content(prompts.to_save).contains("Differences between units"));
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the next form is another
    }
}

TEST_F(WindowTest, a_report_that_cannot_be_written_says_so_in_its_form_which_stays) {
    trigger("sampleLogbookAction");
    prompts.to_save = file("no-such-folder/all.pdf");
    trigger("comparisonReportAction");
    click("submitButton");
    EXPECT_TRUE(find<QWidget>("reportForm")->isVisible());
    prompts.to_save.clear();
    click("submitButton");
    EXPECT_TRUE(find<QWidget>("reportForm")->isVisible()) << "thinking better of the file name is no end";
}

TEST_F(WindowTest, reports_are_offered_only_where_there_is_something_to_report) {
    EXPECT_FALSE(enabled("runReportAction"));
    EXPECT_FALSE(enabled("comparisonReportAction"));
    trigger("sampleLogbookAction");
    EXPECT_TRUE(enabled("comparisonReportAction"));
    trigger("comparisonAction");
    EXPECT_FALSE(enabled("runReportAction"));
}

TEST_F(WindowTest, units_of_another_logbook_stand_in_the_report_and_are_remembered_with_the_logbook) {
    new_logbook("shed.ullage");
    window->importSheets({write("tarrow.csv", sheet())});
    new_logbook();
    window->importSheets({write("again.csv", QByteArray(sheet()).replace("Tarrow 2k", "Wennet 2k").replace("82,360", "82,370"))});
    prompts.to_open = {file("shed.ullage")};
    trigger("addComparedLogbooksAction");
    EXPECT_EQ(page(), QStringLiteral("comparisonPage"));
    EXPECT_TRUE(message().isEmpty()) << message().toStdString();
    prompts.to_save = file("both.html");
    trigger("comparisonReportAction");
    find<QComboBox>("formCombo")->setCurrentIndex(1);
    click("submitButton");
    const QByteArray html = content(file("both.html"));
    EXPECT_TRUE(html.contains("Tarrow 2k") && html.contains("Wennet 2k"));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);

    window.reset();
    document.close();
    show();
    open_last_logbook();
    ASSERT_EQ(page(), QStringLiteral("comparisonPage"));
    EXPECT_TRUE(QTest::qWaitFor([this] { return find<QTableView>("comparisonView")->model()->rowCount() == 2; }));
    prompts.to_open = {file("bench.ullage")};
    trigger("addComparedLogbooksAction");
    EXPECT_TRUE(message().contains(QStringLiteral("the one that is open"))) << message().toStdString();
    window->openLogbook(file("shed.ullage"));
    trigger("comparisonAction");
    EXPECT_EQ(find<QTableView>("comparisonView")->model()->rowCount(), 1) << "the other logbook was compared alone";
}

TEST_F(WindowTest, a_report_that_would_have_thousands_of_pages_is_not_begun_and_says_what_to_do) {
    new_logbook();
    QStringList sheets;
    for (int i = 0; i < 101; ++i)
        sheets << write(("unit" + std::to_string(i) + ".csv").c_str(),
                        QByteArray(sheet()).replace("Tarrow 2k", "Unit " + QByteArray::number(100 + i)));
    window->importSheets(sheets);
    trigger("comparisonAction");
    ASSERT_TRUE(QTest::qWaitFor([this] { return find<QTableView>("comparisonView")->model()->rowCount() == 101; }, 60'000));
    trigger("comparisonReportAction");
    EXPECT_TRUE(message().contains(QStringLiteral("101 rows")) && message().contains(QStringLiteral("Filter"))) << message().toStdString();
    EXPECT_EQ(window->findChild<QWidget*>(QStringLiteral("reportForm")), nullptr);
    type("filterEdit", QStringLiteral("Unit 150"));
    trigger("comparisonReportAction");
    EXPECT_NE(window->findChild<QWidget*>(QStringLiteral("reportForm")), nullptr);
}

} // namespace ullage
