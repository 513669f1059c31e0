// SPDX-License-Identifier: GPL-3.0-or-later
// Foreign tables through the window: by file, drop and paste, with what they leave open answered in the form.
#include "window_fixture.h"

#include "charts/line_chart.h"
#include "dialogs/table_form.h"
#include "foreign_tables/table_book.h"
#include "formats/sheets/run_sheet.h"
#include "support/source_dir.h"

#include <QClipboard>
#include <QComboBox>
#include <QDateTime>
#include <QFile>
#include <QLabel>
#include <QMimeData>
#include <QTableWidget>
#include <QUndoStack>
#include <QWheelEvent>

#include <algorithm>

namespace ullage {

using test::WindowTest;

namespace {

class TablesTest : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
    }

    [[nodiscard]] static QString corpus(const char* name) {
        return QString::fromStdString((test::source_dir() / "tests/corpus/tables" / name).string());
    }

    void open_file(const char* name) {
        prompts.to_open = {corpus(name)};
        trigger("importTableAction");
    }
    [[nodiscard]] TableForm* form() const { return window->findChild<TableForm*>(); }

    void choose_in(const char* combo_name, const QString& text) {
        auto* combo = find<QComboBox>(combo_name);
        const int place = combo->findText(text);
        ASSERT_GE(place, 0) << text.toStdString();
        combo->setCurrentIndex(place);
        emit combo->activated(place);
        QApplication::processEvents();
        QApplication::processEvents();
    }
    void type_unit(const QString& name) {
        auto* unit = find<QComboBox>("tableUnitCombo");
        unit->lineEdit()->clear();
        QTest::keyClicks(unit->lineEdit(), name);
        QApplication::processEvents();
    }
    void submit() {
        auto* open = form();
        ASSERT_NE(open, nullptr);
        QTest::mouseClick(open->findChild<QPushButton*>(QStringLiteral("submitButton")), Qt::LeftButton);
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    [[nodiscard]] QString words(const char* label) const { return form()->findChild<QLabel*>(QString::fromLatin1(label))->text(); }
};

TEST_F(TablesTest, a_file_comes_in_as_one_step_and_is_shown) {
    open_file("kitchen.csv");
    ASSERT_NE(form(), nullptr);
    EXPECT_TRUE(words("foundLabel").contains("Windows-1252")) << words("foundLabel").toStdString();
    EXPECT_TRUE(words("leftRowsLabel").contains("1 row is left out"));
    EXPECT_EQ(find<QComboBox>("tableUnitCombo")->currentText(), "Osk 1200"); // as a line above the table says
    EXPECT_FALSE(form()->findChild<LineChart*>(QStringLiteral("tableChart"))->content().series.empty());
    choose_in("tableMeterCombo", "not known");
    submit();
    EXPECT_EQ(form(), nullptr);
    ASSERT_EQ(document.runs().size(), 1u);
    const RunRecord& record = *document.runs().front();
    EXPECT_EQ(record.unit.rated_energy_wh, 1200.0);
    EXPECT_EQ(record.run.end, RunEnd::cut_off_seen);
    EXPECT_EQ(record.readings.size(), 6u);
    EXPECT_EQ(record.readings.back().values.register_wh, 13365.0);
    EXPECT_EQ(page(), "runPage");
    document.undoStack().undo();
    EXPECT_TRUE(document.runs().empty());
    document.undoStack().redo();
    EXPECT_EQ(document.runs().size(), 1u);
}

TEST_F(TablesTest, rows_that_were_left_out_are_told_with_the_name_of_the_file_whole) {
    const QString path = QString::fromStdString((folder / "50%2.csv").string());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("time,gauge %,register Wh\n2026-05-14T08:00,100,0\n2026-05-14T09:00,80,180\nlater,70,270\nlater still,60,360\n"
               "2026-05-14T12:00,40,540\n");
    file.close();
    prompts.to_open = {path};
    trigger("importTableAction");
    ASSERT_NE(form(), nullptr);
    type_unit("Tarn 600");
    find<QLineEdit>("tableRated1Edit")->setText("1100");
    choose_in("tableMeterCombo", "not known");
    choose_in("tableEndedCombo", "not known: taken as a part of the drain");
    submit();
    ASSERT_EQ(form(), nullptr);
    EXPECT_EQ(message(), QStringLiteral("50%2.csv: 2 rows were left out."));
}

TEST_F(TablesTest, both_runs_of_a_sheet_are_one_step) {
    open_file("side-by-side.xlsx");
    ASSERT_NE(form(), nullptr);
    EXPECT_EQ(find<QComboBox>("sheetCombo")->currentText(), "Runs");
    type_unit("Tarn 600");
    find<QLineEdit>("tableRated1Edit")->setText("600");
    choose_in("tableMeterCombo", "not known");
    choose_in("tableEndedCombo", "not known: taken as a part of the drain");
    submit();
    ASSERT_EQ(document.runs().size(), 2u);
    EXPECT_EQ(document.runs()[0]->run.end, RunEnd::cut_off_seen);
    EXPECT_EQ(document.runs()[1]->run.end, RunEnd::stopped_by_tester);
    document.undoStack().undo();
    EXPECT_TRUE(document.runs().empty());
}

TEST_F(TablesTest, a_thousand_rows_come_in_as_a_log_or_as_readings_where_the_user_says_so) {
    QByteArray table = "time,gauge %,register Wh\n";
    for (int i = 0; i < 1000; ++i)
        table += QDateTime(QDate(2026, 5, 14), QTime(8, 0)).addSecs(30 * i).toString(Qt::ISODate).toUtf8() + ',' + QByteArray::number(100 - i / 10) +
                 ',' + QByteArray::number(i) + '\n';
    const QString path = QString::fromStdString((folder / "many.csv").string());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(table);
    file.close();
    for (const bool as_log : {true, false}) {
        prompts.to_open = {path};
        trigger("importTableAction");
        ASSERT_NE(form(), nullptr);
        ASSERT_TRUE(find<QComboBox>("rowsAsCombo")->isVisible());
        if (!as_log) choose_in("rowsAsCombo", "readings noted by hand");
        type_unit("Tarn 600");
        if (as_log) find<QLineEdit>("tableRated1Edit")->setText("1100");
        choose_in("tableMeterCombo", "not known");
        choose_in("tableEndedCombo", "not known: taken as a part of the drain");
        submit();
        ASSERT_EQ(form(), nullptr);
        const RunRecord& record = *document.runs().back();
        EXPECT_EQ(record.readings.size(), as_log ? 2u : 1000u);
        EXPECT_EQ(record.trace.has_value(), as_log);
        EXPECT_EQ(record.gauge_log.has_value(), as_log);
    }
    document.undoStack().undo();
    document.undoStack().undo();
    EXPECT_TRUE(document.runs().empty());
}

TEST_F(TablesTest, what_is_missing_is_explained_in_place_and_nothing_comes_in) {
    open_file("open-unit.csv");
    submit();
    ASSERT_NE(form(), nullptr);
    EXPECT_TRUE(words("registerUnitErrorLabel").contains("has no unit"));
    EXPECT_FALSE(words("tableUnitErrorLabel").isEmpty());
    EXPECT_FALSE(words("tableMeterErrorLabel").isEmpty());
    EXPECT_FALSE(words("tableEndedErrorLabel").isEmpty());
    EXPECT_TRUE(document.runs().empty());
    choose_in("registerUnitCombo", "kWh");
    type_unit("Osk 1200");
    find<QLineEdit>("tableRated1Edit")->setText("Not known");
    choose_in("tableMeterCombo", "a new meter");
    type("tableMeterNameEdit", "Plug");
    type("tableMeterLimitEdit", "2");
    choose_in("tableEndedCombo", "stopped by tester");
    submit();
    ASSERT_EQ(document.runs().size(), 1u);
    const RunRecord& record = *document.runs().front();
    EXPECT_EQ(record.unit.rated_energy_wh, std::nullopt);
    ASSERT_TRUE(record.meter.has_value());
    EXPECT_EQ(record.meter->limit_percent, 2.0);
    EXPECT_EQ(record.readings.back().values.register_wh, 12620.0);
}

TEST_F(TablesTest, a_second_register_asks_for_its_meter) {
    drop({write("two.csv", "time,gauge %,meter Wh,second meter kWh\n2025-05-14 18:00,100,500,0.1\n2025-05-14 20:00,80,700,0.302\n")});
    ASSERT_NE(form(), nullptr) << message().toStdString();
    type_unit("Osk 1200");
    find<QLineEdit>("tableRated1Edit")->setText("1200");
    choose_in("tableMeterCombo", "not known");
    choose_in("tableEndedCombo", "stopped by tester");
    submit();
    ASSERT_NE(form(), nullptr);
    EXPECT_FALSE(words("tableSecondMeterErrorLabel").isEmpty());
    choose_in("tableSecondMeterCombo", "a new meter");
    type("tableSecondMeterNameEdit", "Bench meter");
    type("tableSecondMeterLimitEdit", "0.2");
    submit();
    ASSERT_EQ(document.runs().size(), 1u);
    const RunRecord& record = *document.runs().front();
    ASSERT_TRUE(record.second_meter.has_value());
    EXPECT_EQ(record.second_meter->limit_percent, 0.2);
    EXPECT_EQ(record.readings.back().values.second_register_wh, 302.0);
    EXPECT_FALSE(record.meter.has_value());
}

TEST_F(TablesTest, the_wheel_changes_no_choice_of_a_form_and_goes_on_to_what_scrolls) {
    open_file("kitchen.csv");
    ASSERT_NE(form(), nullptr);
    auto* meter = find<QComboBox>("tableMeterCombo");
    meter->setFocus();
    const QPointF at = meter->rect().center();
    QWheelEvent wheel(at, meter->mapToGlobal(at), {}, {0, -240}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(meter, &wheel);
    EXPECT_EQ(meter->currentIndex(), 0);
    EXPECT_FALSE(wheel.isAccepted());
}

TEST_F(TablesTest, answers_are_remembered_for_a_table_with_the_same_head) {
    open_file("twice.csv");
    ASSERT_NE(form(), nullptr);
    EXPECT_TRUE(words("questionsLabel").contains("could both be the register"));
    auto* role = find<QComboBox>("role3Combo");
    emit role->activated(0); // not used
    QApplication::processEvents();
    EXPECT_FALSE(form()->findChild<QLabel*>(QStringLiteral("questionsLabel"))->isVisible());
    type_unit("Osk 1200");
    find<QLineEdit>("tableRated1Edit")->setText("1200");
    choose_in("tableMeterCombo", "not known");
    choose_in("tableEndedCombo", "stopped by tester");
    submit();
    ASSERT_EQ(document.runs().size(), 1u);
    EXPECT_EQ(document.runs().front()->readings.front().values.register_wh, 5000.0);
    open_file("twice.csv");
    ASSERT_NE(form(), nullptr);
    EXPECT_TRUE(words("foundLabel").contains("Answered as before"));
    EXPECT_TRUE(form()->reading().questions.empty());
    type_unit("Osk 1200");
    choose_in("tableMeterCombo", "not known");
    choose_in("tableEndedCombo", "stopped by tester");
    submit(); // the same readings again are questioned first
    EXPECT_NE(form(), nullptr);
    EXPECT_TRUE(words("formQuestionLabel").contains("has the same readings already"));
    EXPECT_EQ(document.runs().size(), 1u);
}

TEST_F(TablesTest, cells_of_the_clipboard_are_pasted) {
    auto* held = new QMimeData;
    QFile page_file(corpus("shared-page.html"));
    ASSERT_TRUE(page_file.open(QFile::ReadOnly));
    held->setHtml(QString::fromUtf8(page_file.readAll()));
    held->setText(QStringLiteral("Day\tTime"));
    QApplication::clipboard()->setMimeData(held);
    QTest::keyClick(window.get(), Qt::Key_V, Qt::ControlModifier);
    QApplication::processEvents();
    ASSERT_NE(form(), nullptr);
    ASSERT_EQ(form()->reading().runs.size(), 1u);
    EXPECT_EQ(form()->reading().runs[0].readings.size(), 5u);
    form()->reject();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QApplication::clipboard()->setText(QStringLiteral("time\tgauge %\tWh\n2025-05-14 18:00\t100\t0\n2025-05-14 20:00\t70\t310\n"));
    trigger("pasteTableAction");
    ASSERT_NE(form(), nullptr);
    EXPECT_EQ(form()->reading().runs.at(0).readings.size(), 2u);
    form()->reject();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QApplication::clipboard()->setText(QStringLiteral("word"));
    trigger("pasteTableAction");
    EXPECT_EQ(form(), nullptr);
    EXPECT_TRUE(message().contains("The clipboard holds no table"));
}

/// A table as a spreadsheet hands it over: cells with tabs between, rows with line ends.
QString cells_of(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QFile::ReadOnly));
    const QByteArray bytes = file.readAll();
    const auto book = read_table_book({bytes.constData(), static_cast<std::size_t>(bytes.size())}, "table");
    QString text;
    for (const auto& row : book.value().sheets.front().rows) {
        QStringList cells;
        for (const GridCell& cell : row) cells << QString::fromStdString(cell.text);
        text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    }
    return text;
}

TEST_F(TablesTest, five_tables_of_five_people_come_in_by_file_and_by_paste_with_the_figures_worked_out_by_hand) {
    // Readings of each run, and what came out of it between the first and the last of them: read off the tables.
    struct People {
        const char* file;
        std::vector<std::pair<std::size_t, double>> runs;
    };
    const std::vector<People> tables{{"kitchen.csv", {{6, 13365 - 12310}}},
                                     {"side-by-side.xlsx", {{5, 514}, {4, 985 - 514}}},
                                     {"weekend.ods", {{3, 905}, {3, 2131 - 905}}},
                                     {"shared-page.html", {{5, 1120}}},
                                     {"garage.txt", {{2, 371}, {2, 505 - 402}, {5, 632 - 118 + 1224}}}};
    for (const auto& [name, runs] : tables)
        for (const bool pasted : {false, true}) {
            SCOPED_TRACE(std::string(name) + (pasted ? " pasted" : " from its file"));
            new_logbook((std::string(name) + (pasted ? "-p.ullage" : "-f.ullage")).c_str());
            if (pasted) {
                QApplication::clipboard()->setText(cells_of(corpus(name)));
                trigger("pasteTableAction");
            } else {
                open_file(name);
            }
            ASSERT_NE(form(), nullptr) << message().toStdString();
            if (auto* unit = find<QComboBox>("tableUnitCombo"); unit->isVisible() && unit->currentText().isEmpty()) type_unit("Lark 300");
            for (QLineEdit* rated : form()->findChildren<QLineEdit*>())
                if (rated->objectName().startsWith(QLatin1String("tableRated")) && rated->text().isEmpty()) rated->setText("not known");
            choose_in("tableMeterCombo", "not known");
            if (find<QComboBox>("tableEndedCombo")->isVisible()) choose_in("tableEndedCombo", "stopped by tester");
            submit();
            ASSERT_EQ(form(), nullptr) << words("questionsLabel").toStdString() << words("foundLabel").toStdString();
            ASSERT_EQ(document.runs().size(), runs.size());
            std::vector<std::pair<std::size_t, double>> found;
            for (const RunRecord* record : document.runs()) {
                const auto delivered = document.analysis(record->run.uuid).energy.delivered_wh;
                found.emplace_back(record->readings.size(), delivered.value.value_or(0));
            }
            auto wanted = runs;
            std::ranges::sort(found);
            std::ranges::sort(wanted);
            for (std::size_t i = 0; i < wanted.size(); ++i) {
                EXPECT_EQ(found[i].first, wanted[i].first);
                // Of the meter that was reset what the register held: more may have come before the reset.
                EXPECT_NEAR(found[i].second, wanted[i].second, 1e-6) << "run " << i;
            }
        }
}

TEST_F(TablesTest, a_dropped_table_opens_its_form_also_over_a_run_while_a_log_does_not) {
    drop({corpus("weekend.ods")});
    ASSERT_NE(form(), nullptr);
    form()->reject();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    drop({write("tarrow.csv", sheet())});
    ASSERT_EQ(page(), "runPage");
    drop({corpus("two-heads.csv")});
    ASSERT_NE(form(), nullptr);
    form()->reject();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    drop({write("log.csv", "time,power W,energy Wh\n2027-05-06 18:00:00,120,4310\n2027-05-06 18:00:10,120,4310.3\n")});
    EXPECT_EQ(form(), nullptr);
    EXPECT_NE(window->findChild<QDialog*>(QStringLiteral("logForm")), nullptr);
}

TEST_F(TablesTest, files_that_cannot_come_in_are_told_in_the_window) {
    const std::pair<const char*, const char*> files[] = {
        {"password.ods", "has a password"}, {"cut-short.xlsx", "is damaged"}, {"no-workbook.xlsx", "is no workbook"}};
    for (const auto& [name, words] : files) {
        open_file(name);
        EXPECT_EQ(form(), nullptr) << name;
        EXPECT_TRUE(message().contains(words)) << message().toStdString();
    }
    open_file("future.csv");
    ASSERT_NE(form(), nullptr);
    submit();
    ASSERT_NE(form(), nullptr);
    EXPECT_TRUE(words("questionsLabel").contains("lies in the future"));
    EXPECT_TRUE(document.runs().empty());
}

} // namespace
} // namespace ullage
