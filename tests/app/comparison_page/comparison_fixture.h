// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/comparison/comparison_page.h"
#include "support/source_dir.h"

#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/picture.h"
#include "charts/vessel_row.h"
#include "cli/drawing/drawing_commands.h"
#include "dialogs/export_dialog.h"
#include "dialogs/picture_dialog.h"
#include "formats/sheets/run_sheet.h"
#include "models/table_model.h"
#include "support/fake_clock.h"
#include "support/scenario.h"
#include "support/temp_folder.h"
#include "support_qt/fake_prompts.h"
#include "support_qt/front_tab.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QFile>
#include <QHeaderView>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QXmlStreamReader>

#include <algorithm>
#include <memory>
#include <set>
#include <sstream>

namespace ullage::test {

/// The comparison page over the sample scenario in a logbook of its own.
class ComparisonPageTest : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(document.create(file("bench.ullage")));
        for (const ScenarioRun& run : sample_scenario()) {
            // Through the text of the sheet, as a tester would bring it in.
            const auto sheet = read_run_sheet(write_run_sheet(run.simulated.record), run.file_name);
            ASSERT_TRUE(sheet.ok());
            const auto imported = document.import(sheet.value().record);
            ASSERT_TRUE(imported.ok()) << imported.error().sentence();
        }
        page = std::make_unique<ComparisonPage>(document, prompts);
        page->resize(1064, 760);
        page->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page.get()));
        // The page opens where most of its units meet; most tests look at what was tested.
        opened_at = page->fair().load;
        page->findChild<QPushButton*>(QStringLiteral("asTestedButton"))->click();
    }

    /// A second page, on which the columns that the logbook keeps are these.
    std::unique_ptr<ComparisonPage> page_with_columns(const std::string& keys) {
        EXPECT_TRUE(document.setColumnSet({}, keys));
        auto made = std::make_unique<ComparisonPage>(document, prompts);
        made->resize(1064, 760);
        made->show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(made.get()));
        return made;
    }

    /// A unit of which 80 % came out, in one drain to its cut-off.
    static void add_drained_unit(Document& into, const std::string& name, double rated_wh) {
        Unit unit;
        unit.name = name;
        unit.rated_energy_wh = rated_wh;
        unit = into.addUnit(unit).value();
        ullage::Run run;
        run.unit_uuid = unit.uuid;
        run.started_full = true;
        run = into.addRun(run).value();
        for (int part = 0; part <= 4; ++part) {
            ReadingValues values;
            values.time_ms = 1'810'310'400'000 + 3'600'000 * part;
            values.gauge_percent = 100 - 25 * part;
            values.register_wh = 0.8 * rated_wh * part / 4;
            EXPECT_TRUE(into.record(run.uuid, values));
        }
        run.end = RunEnd::cut_off_seen;
        EXPECT_TRUE(into.updateRun(run));
    }

    [[nodiscard]] QString file(const char* name) const { return QString::fromStdString((folder / name).string()); }
    [[nodiscard]] QTableView* view() const { return page->findChild<QTableView*>(QStringLiteral("comparisonView")); }
    [[nodiscard]] QString cell(int row, const char* head) const {
        const auto* model = view()->model();
        for (int column = 0; column < model->columnCount(); ++column)
            if (model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace(QLatin1Char('\n'), QLatin1Char(' ')) ==
                QLatin1String(head))
                return model->index(row, column).data().toString();
        ADD_FAILURE() << "no column " << head;
        return {};
    }

    ExportDialog* open_export(int form) {
        page->exportComparison();
        auto* dialog = page->findChild<ExportDialog*>(QStringLiteral("exportDialog"));
        EXPECT_NE(dialog, nullptr);
        dialog->findChild<QListWidget*>(QStringLiteral("formsList"))->setCurrentRow(form);
        QApplication::processEvents();
        return dialog;
    }

    QByteArray save(int form, const char* name) {
        prompts.to_save = file(name);
        ExportDialog* dialog = open_export(form);
        QTest::mouseClick(dialog->findChild<QPushButton*>(QStringLiteral("saveButton")), Qt::LeftButton);
        QFile written(file(name));
        EXPECT_TRUE(written.open(QIODevice::ReadOnly)) << name;
        dialog->close();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return written.readAll();
    }

    TempFolder folder;
    FakeClock clock;
    Document document{clock};
    FakePrompts prompts;
    std::unique_ptr<ComparisonPage> page;
    std::optional<CommonLoad> opened_at;
};

} // namespace ullage::test
