// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/source_dir.h"
#include "pages/comparison_page.h"

#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/picture.h"
#include "charts/vessel_row.h"
#include "dialogs/export_dialog.h"
#include "dialogs/picture_dialog.h"
#include "exchange/run_sheet.h"
#include "models/table_model.h"
#include "pictures/pictures_command.h"
#include "services/prompts.h"
#include "support/fake_clock.h"
#include "support/scenario.h"
#include "support/temp_folder.h"

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
namespace {

class SavePrompt final : public Prompts {
public:
    QStringList filesToOpen(QWidget*, const QString&, const QString&, const QString&, bool) override { return {}; }
    QString fileToSave(QWidget*, const QString&, const QString& suggestion, const QString&, const QString&, bool) override {
        suggested = suggestion;
        return to_save;
    }
    QString to_save, suggested;
};

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
    }

    [[nodiscard]] QString file(const char* name) const { return QString::fromStdString((folder / name).string()); }
    [[nodiscard]] QTableView* view() const { return page->findChild<QTableView*>(QStringLiteral("comparisonView")); }
    [[nodiscard]] QString cell(int row, const char* head) const {
        const auto* model = view()->model();
        for (int column = 0; column < model->columnCount(); ++column)
            if (model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace(QLatin1Char('\n'), QLatin1Char(' ')) == QLatin1String(head))
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
    SavePrompt prompts;
    std::unique_ptr<ComparisonPage> page;
};

TEST_F(ComparisonPageTest, units_are_rows_with_value_and_unit_in_sight) {
    QAbstractItemModelTester tester(view()->model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(view()->model()->rowCount(), 3);
    EXPECT_EQ(cell(0, "unit"), QStringLiteral("Osk 1200"));
    EXPECT_EQ(cell(0, "rated energy Wh"), QStringLiteral("1200"));
    EXPECT_EQ(cell(2, "usable fraction"), QStringLiteral("0.797"));
    EXPECT_FALSE(cell(0, "price per delivered kWh EUR/kWh").isEmpty());
    EXPECT_EQ(page->findChild<VesselRow*>()->content().columns.size(), 3u);
    EXPECT_EQ(page->findChild<BarChart*>()->content().bars.size(), 3u);
    EXPECT_FALSE(page->findChild<QLabel*>(QStringLiteral("comparisonRemarksLabel"))->text().isEmpty());
}

TEST_F(ComparisonPageTest, every_drain_gives_each_its_row_and_shows_which_run_it_is) {
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("everyDrainButton")), Qt::LeftButton);
    EXPECT_EQ(view()->model()->rowCount(), 7);
    EXPECT_EQ(cell(0, "run"), QStringLiteral("drain 12 May, 311 W"));
    EXPECT_FALSE(view()->isColumnHidden(2));
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("onePerUnitButton")), Qt::LeftButton);
    EXPECT_EQ(view()->model()->rowCount(), 3);
}

TEST_F(ComparisonPageTest, sorting_is_by_number_not_by_text) {
    const auto* model = view()->model();
    int rated = -1;
    for (int column = 0; column < model->columnCount(); ++column)
        if (model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().startsWith(QLatin1String("rated"))) rated = column;
    ASSERT_GE(rated, 0);
    view()->sortByColumn(rated, Qt::AscendingOrder);
    EXPECT_EQ(cell(0, "unit"), QStringLiteral("Pelm 900"));
    EXPECT_EQ(cell(2, "unit"), QStringLiteral("Tarrow 2k"));
}

TEST_F(ComparisonPageTest, a_new_reading_of_a_unit_changes_its_row_at_once) {
    const QString before = cell(0, "delivered energy Wh");
    const auto runs = document.runs();
    const RunRecord* osk = nullptr;
    for (const RunRecord* run : runs)
        if (run->unit.name == "Osk 1200" && run->number == 2) osk = run;
    ASSERT_NE(osk, nullptr);
    ReadingValues last = osk->readings.back().values;
    last.register_wh = *last.register_wh + 20;
    ASSERT_TRUE(document.amend(osk->readings.back().uuid, last, QStringLiteral("misread")));
    EXPECT_NE(cell(0, "delivered energy Wh"), before);
}

TEST_F(ComparisonPageTest, opening_a_row_asks_for_its_run) {
    QString asked;
    QObject::connect(page.get(), &ComparisonPage::runRequested, [&](const QString& uuid) { asked = uuid; });
    emit view()->activated(view()->model()->index(2, 0));
    const RunRecord* run = document.run(asked.toStdString());
    ASSERT_NE(run, nullptr);
    EXPECT_EQ(run->unit.name, "Tarrow 2k");
}

TEST_F(ComparisonPageTest, a_logbook_without_drains_says_what_to_do_and_offers_no_export) {
    document.close();
    EXPECT_EQ(view()->model()->rowCount(), 0);
    EXPECT_FALSE(page->findChild<QPushButton*>(QStringLiteral("exportButton"))->isEnabled());
    EXPECT_TRUE(page->findChild<VesselRow*>()->content().empty_text.contains(QLatin1String("Record a drain")));
}

TEST_F(ComparisonPageTest, every_form_is_saved_with_the_numbers_of_the_table) {
    const QByteArray csv = save(0, "c.csv");
    EXPECT_EQ(prompts.suggested, QStringLiteral("comparison.csv"));
    EXPECT_TRUE(csv.contains("Osk 1200")) << csv.constData();
    EXPECT_TRUE(csv.contains(",828,")) << csv.constData();
    EXPECT_TRUE(save(1, "c.md").contains("828.0 ± 7.9"));
    EXPECT_TRUE(save(2, "c.html").contains("828.0"));
    EXPECT_TRUE(save(3, "c.xlsx").startsWith("PK"));
    EXPECT_TRUE(save(4, "c.json").contains("\"value\": 828.0"));
    EXPECT_TRUE(save(5, "c.tex").contains("828.0~$\\pm$~7.9"));
    EXPECT_TRUE(QFile::exists(file("c.csv-metadata.json")));
    const QImage png = QImage::fromData(save(8, "bars.png"));
    EXPECT_EQ(png.size(), QSize(1920, 1080));
    QXmlStreamReader svg(save(9, "bars.svg"));
    while (!svg.atEnd()) svg.readNext();
    EXPECT_FALSE(svg.hasError()) << svg.errorString().toStdString();
}

TEST_F(ComparisonPageTest, the_preview_shows_what_copy_puts_on_the_clipboard) {
    ExportDialog* dialog = open_export(1);
    const QString shown = dialog->findChild<QPlainTextEdit*>(QStringLiteral("previewEdit"))->toPlainText();
    EXPECT_TRUE(shown.contains(QLatin1String("Tarrow 2k")));
    QTest::mouseClick(dialog->findChild<QPushButton*>(QStringLiteral("copyButton")), Qt::LeftButton);
    EXPECT_EQ(QApplication::clipboard()->text().trimmed(), shown.trimmed());
}

TEST_F(ComparisonPageTest, a_workbook_is_copied_as_cells) {
    ExportDialog* dialog = open_export(3);
    QTest::mouseClick(dialog->findChild<QPushButton*>(QStringLiteral("copyButton")), Qt::LeftButton);
    EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasHtml());
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith(QLatin1String("unit\tmaker\trun\trank\trated energy (Wh)")));
}

TEST_F(ComparisonPageTest, copy_table_gives_every_column_in_the_order_shown_as_text_and_html) {
    QString told;
    QObject::connect(page.get(), &ComparisonPage::told, [&](const QString& sentence) { told = sentence; });
    view()->sortByColumn(0, Qt::DescendingOrder);
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("copyTableButton")), Qt::LeftButton);
    EXPECT_TRUE(told.contains(QLatin1String("clipboard")));
    const QMimeData* data = QApplication::clipboard()->mimeData();
    const QStringList rows = data->text().trimmed().split(QLatin1Char('\n'));
    ASSERT_EQ(rows.size(), 4);
    EXPECT_TRUE(rows[0].contains(QLatin1String("delivered energy (Wh)\tdelivered energy, lower\tdelivered energy, upper\tdelivered energy, kind")));
    EXPECT_TRUE(rows[1].startsWith(QLatin1String("Tarrow 2k\t")));
    EXPECT_TRUE(rows[3].startsWith(QLatin1String("Osk 1200\t")));
    EXPECT_EQ(data->html().count(QLatin1String("<tr>")), 4);
    EXPECT_TRUE(data->html().contains(QLatin1String("<td>Tarrow 2k</td>")));
}

TEST_F(ComparisonPageTest, ctrl_c_in_the_table_copies_the_chosen_rows_or_else_all) {
    view()->setFocus();
    ASSERT_TRUE(view()->hasFocus());
    QTest::keyClick(view(), Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QApplication::clipboard()->text().trimmed().split(QLatin1Char('\n')).size(), 4);
    view()->selectRow(1);
    QTest::keyClick(view(), Qt::Key_C, Qt::ControlModifier);
    const QStringList rows = QApplication::clipboard()->text().trimmed().split(QLatin1Char('\n'));
    ASSERT_EQ(rows.size(), 2);
    EXPECT_TRUE(rows[1].startsWith(cell(1, "unit") + QLatin1Char('\t')));
}

TEST_F(ComparisonPageTest, a_picture_is_saved_in_the_size_and_colours_chosen) {
    prompts.to_save = file("v.png");
    ExportDialog* dialog = open_export(6);
    auto* button = dialog->findChild<QPushButton*>(QStringLiteral("pictureSizeButton"));
    ASSERT_TRUE(button->isVisible());
    QTest::mouseClick(button, Qt::LeftButton);
    auto* form = dialog->findChild<PictureDialog*>();
    ASSERT_NE(form, nullptr);
    form->findChild<QLineEdit*>(QStringLiteral("widthEdit"))->setText(QStringLiteral("6 in"));
    form->findChild<QLineEdit*>(QStringLiteral("heightEdit"))->setText(QStringLiteral("101,6 mm"));
    form->findChild<QComboBox*>(QStringLiteral("scaleCombo"))->setCurrentIndex(2);
    form->findChild<QComboBox*>(QStringLiteral("coloursCombo"))->setCurrentIndex(2);
    QTest::mouseClick(form->findChild<QPushButton*>(QStringLiteral("submitButton")), Qt::LeftButton);
    QTest::mouseClick(dialog->findChild<QPushButton*>(QStringLiteral("saveButton")), Qt::LeftButton);
    const QImage image(file("v.png"));
    EXPECT_EQ(image.size(), QSize(1800, 1200)); // 6 by 4 inches at 300 dots an inch
    EXPECT_NEAR(image.dotsPerMeterX() * 0.0254, 300, 0.02);
    EXPECT_EQ(image.pixelColor(2, 2), QColor(Qt::white));
}

TEST_F(ComparisonPageTest, an_export_that_cannot_be_written_says_so_and_keeps_the_dialog) {
    prompts.to_save = file("no-such-folder/c.csv");
    ExportDialog* dialog = open_export(0);
    QTest::mouseClick(dialog->findChild<QPushButton*>(QStringLiteral("saveButton")), Qt::LeftButton);
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(dialog->findChild<QLabel*>(QStringLiteral("exportMessageLabel"))->text().contains(QLatin1String("no-such-folder")));
}

TEST_F(ComparisonPageTest, a_tag_leaves_only_its_units_and_stays_chosen) {
    auto* tags = page->findChild<QComboBox*>(QStringLiteral("tagCombo"));
    ASSERT_TRUE(tags->isVisible());
    EXPECT_EQ(tags->count(), 4) << "any, lent, projector, tent";
    tags->setCurrentIndex(tags->findText(QStringLiteral("lent")));
    ASSERT_EQ(view()->model()->rowCount(), 1);
    EXPECT_EQ(cell(0, "unit"), QStringLiteral("Pelm 900"));
    page->refresh();
    EXPECT_EQ(tags->currentText(), QStringLiteral("lent"));
    EXPECT_EQ(view()->model()->rowCount(), 1);
    for (Unit unit : std::vector<Unit>(document.units())) {
        unit.tags.clear();
        ASSERT_TRUE(document.updateUnit(unit));
    }
    EXPECT_FALSE(tags->isVisible()) << "without tags there is nothing to choose";
    EXPECT_EQ(view()->model()->rowCount(), 3);
}

TEST_F(ComparisonPageTest, what_was_paid_has_columns_while_any_unit_has_a_price_paid) {
    const auto shown = [this](const char* key) {
        const auto& columns = page->findChild<TableModel*>()->table().columns;
        const auto found = std::ranges::find(columns, key, &TableColumn::key);
        return found != columns.end() && !view()->isColumnHidden(static_cast<int>(found - columns.begin()));
    };
    EXPECT_TRUE(shown("paid_per_rated_kwh") && shown("paid_per_delivered_kwh"));
    for (Unit unit : std::vector<Unit>(document.units())) {
        unit.paid_price.reset();
        ASSERT_TRUE(document.updateUnit(unit));
    }
    EXPECT_FALSE(shown("paid_per_rated_kwh") || shown("paid_per_delivered_kwh"));
}

TEST_F(ComparisonPageTest, a_load_list_gives_the_load_and_its_name_until_it_is_withdrawn) {
    auto* at_list = page->findChild<QPushButton*>(QStringLiteral("atListButton"));
    auto* lists = page->findChild<QComboBox*>(QStringLiteral("loadListCombo"));
    EXPECT_FALSE(at_list->isVisible()) << "there is no list yet";
    const LoadList added = document.addLoadList(sample_load_list().second).value();
    ASSERT_TRUE(at_list->isVisible());
    EXPECT_FALSE(lists->isVisible());
    QTest::mouseClick(at_list, Qt::LeftButton);
    ASSERT_TRUE(lists->isVisible());
    EXPECT_FALSE(page->findChild<QDoubleSpinBox*>(QStringLiteral("loadSpin"))->isVisible()) << "the list says how much";
    EXPECT_TRUE(lists->currentText().startsWith(QLatin1String("Show night, ")) && lists->currentText().endsWith(QLatin1String(" W")));
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonAboutLabel"))->text().contains(QLatin1String("Show night")));
    const TableModel* table = page->findChild<TableModel*>();
    EXPECT_GE(table->columnOf("run_time_h"), 0);
    LoadList heavier = added;
    heavier.appliances[0].count = 3;
    const QString before = lists->currentText();
    ASSERT_TRUE(document.updateLoadList(heavier));
    EXPECT_NE(lists->currentText(), before) << "the comparison follows the list";
    ASSERT_TRUE(document.withdrawLoadList(added.uuid));
    EXPECT_LT(table->columnOf("run_time_h"), 0);
    EXPECT_TRUE(page->findChild<QPushButton*>(QStringLiteral("asTestedButton"))->isChecked());
}

TEST_F(ComparisonPageTest, moved_and_chosen_columns_come_back_in_another_page_and_in_exports) {
    QString kept;
    QObject::connect(page.get(), &ComparisonPage::columnsChosen, page.get(), [&kept](const QString& choice) { kept = choice; });
    const auto shown = [](const QTableView& table, const TableModel& model) {
        QStringList keys;
        for (int place = 0; place < table.horizontalHeader()->count(); ++place) {
            const int column = table.horizontalHeader()->logicalIndex(place);
            if (!table.isColumnHidden(column)) keys << QString::fromStdString(model.table().columns[static_cast<std::size_t>(column)].key);
        }
        return keys;
    };
    auto* heads = view()->horizontalHeader();
    ASSERT_TRUE(heads->sectionsMovable());
    auto* model = page->findChild<TableModel*>();
    heads->moveSection(heads->visualIndex(model->columnOf("mean_load_w")), 0);
    ASSERT_FALSE(kept.isEmpty());
    const QStringList before = shown(*view(), *model);
    EXPECT_EQ(before.first(), QStringLiteral("mean_load_w"));
    EXPECT_TRUE(save(0, "c.csv").startsWith("mean_load_w,"));

    // At one load there are more columns; those that were moved stay, and the new ones come in beside their neighbours.
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("atLoadButton")), Qt::LeftButton);
    EXPECT_EQ(shown(*view(), *model).first(), QStringLiteral("mean_load_w"));
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("asTestedButton")), Qt::LeftButton);
    EXPECT_EQ(shown(*view(), *model), before);

    ComparisonPage other(document, prompts);
    other.setColumns(kept);
    EXPECT_EQ(shown(*other.findChild<QTableView*>(QStringLiteral("comparisonView")), *other.findChild<TableModel*>()), before);
    other.setColumns(QStringLiteral("nonsense,,unit-+,meter+,") + kept);
    EXPECT_TRUE(shown(*other.findChild<QTableView*>(QStringLiteral("comparisonView")), *other.findChild<TableModel*>()).contains(QStringLiteral("meter")));
}

TEST(ColumnChoice, text_of_a_choice_reads_back_and_new_columns_stand_beside_their_neighbours) {
    const ColumnChoice choice{{"b", "a", "c_1"}, {{"a", false}, {"c_1", true}}};
    EXPECT_EQ(column_choice_text(choice), "b,a-,c_1+");
    EXPECT_EQ(column_choice_from("b,a-,c_1+"), choice);
    const ColumnChoice unordered{{}, {{"a", false}, {"b", true}}};
    EXPECT_EQ(column_choice_from(column_choice_text(unordered)), unordered);
    EXPECT_EQ(column_choice_from(column_choice_text({})), ColumnChoice{});
    EXPECT_EQ(arranged({"a", "b", "c", "d"}, {"d", "gone", "b"}), (std::vector<std::string>{"a", "d", "b", "c"}));
    EXPECT_EQ(arranged({"a", "b"}, {}), (std::vector<std::string>{"a", "b"}));
}

TEST_F(ComparisonPageTest, units_that_are_not_told_apart_show_one_rank) {
    const TableModel* table = page->findChild<TableModel*>();
    const int rank = table->columnOf("rank");
    ASSERT_GE(rank, 0);
    EXPECT_FALSE(view()->isColumnHidden(rank));
    std::set<QString> ranks;
    for (int row = 0; row < 3; ++row) ranks.insert(table->index(row, rank).data().toString());
    EXPECT_EQ(ranks.size(), 2u) << "of three units two share a place";
    EXPECT_TRUE(ranks.contains(QStringLiteral("1")));
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("everyDrainButton")), Qt::LeftButton);
    EXPECT_TRUE(view()->isColumnHidden(rank)) << "drains of one unit have no rank";
}

TEST_F(ComparisonPageTest, prices_in_several_currencies_name_theirs_in_each_cell) {
    Unit unit = document.units().front();
    unit.currency = "CHF";
    ASSERT_TRUE(document.updateUnit(unit));
    EXPECT_TRUE(cell(0, "price per rated kWh").endsWith(QLatin1String("CHF/kWh"))) << cell(0, "price per rated kWh").toStdString();
    EXPECT_TRUE(cell(1, "price per rated kWh").endsWith(QLatin1String("EUR/kWh")));
}

TEST(PictureScale, a_sharper_picture_has_its_text_in_the_same_proportion) {
    VesselRowContent words;
    words.empty_text = QStringLiteral("Record a drain first");
    const auto ink_share = [&](double scale) {
        PictureSpec spec;
        spec.scale = scale;
        const QImage image = render_picture(words, spec).value();
        int first = image.width(), last = 0;
        for (int x = 0; x < image.width(); ++x)
            for (int y = 0; y < image.height(); ++y)
                if (image.pixelColor(x, y).lightness() < 180) {
                    first = std::min(first, x);
                    last = std::max(last, x);
                }
        return double(last - first) / image.width();
    };
    const double share = ink_share(1);
    EXPECT_GT(share, 0.05);
    EXPECT_NEAR(ink_share(3.125), share, 0.05 * share); // glyphs are hinted to pixels, so widths differ by a few per cent
}

TEST(PicturesCommand, writes_the_charts_of_every_run_and_of_the_comparison) {
    TempFolder folder;
    const std::string into = (folder / "pictures").string();
    std::ostringstream out, err;
    const std::vector<std::string> args{"pictures", (test::source_dir() / "sample-data").string(), "--into", into};
    ASSERT_EQ(run_pictures_command(args, out, err), 0) << err.str();
    const QStringList files = QDir(QString::fromStdString(into)).entryList(QDir::Files);
    EXPECT_EQ(files.size(), 2 * (3 * 11 + 3));
    EXPECT_TRUE(files.contains(QStringLiteral("osk-1200-run-2-gauge-error.svg")));
}

TEST(PicturesCommand, the_comparison_alone_can_be_drawn_at_one_load_too) {
    TempFolder folder;
    std::ostringstream out, err;
    const std::vector<std::string> args{"pictures", (source_dir() / "sample-data").string(), "--into", folder / "p", "--comparison-only", "--at-load", "120"};
    ASSERT_EQ(run_pictures_command(args, out, err), 0) << err.str();
    const QDir made(QString::fromStdString(folder / "p"));
    EXPECT_EQ(made.entryList({QStringLiteral("*.svg")}, QDir::Files), (QStringList{"comparison-against-load.svg", "comparison-at-load-usable-fraction.svg",
                                                                                  "comparison-at-load-vessels.svg", "comparison-usable-fraction.svg", "comparison-vessels.svg"}));
    const auto bytes = [&made](const char* name) {
        QFile file(made.filePath(QLatin1String(name)));
        return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
    };
    EXPECT_NE(bytes("comparison-at-load-usable-fraction.png"), bytes("comparison-usable-fraction.png"));
    EXPECT_TRUE(bytes("comparison-at-load-usable-fraction.svg").contains("0.7517")) << "the fraction at 120 W; it was 0.6900 as tested";
}

TEST(PicturesCommand, pictures_have_the_size_and_ground_asked_for) {
    TempFolder folder;
    const std::string sheet = (source_dir() / "sample-data/01-tarrow-2k-drain-180-w.csv").string();
    std::ostringstream out, err;
    const std::vector<std::string> args{"pictures", sheet, "--into", folder / "p", "--width-mm", "101.6", "--height-mm", "50.8", "--dots-per-inch", "300", "--print"};
    ASSERT_EQ(run_pictures_command(args, out, err), 0) << err.str();
    const QImage image(QString::fromStdString(folder / "p/comparison-vessels.png"));
    EXPECT_EQ(image.size(), QSize(1200, 600)); // 4 by 2 inches
    EXPECT_EQ(image.pixelColor(1, 1), QColor(Qt::white));
    std::ostringstream refused;
    EXPECT_EQ(run_pictures_command(std::vector<std::string>{"pictures", sheet, "--into", folder / "q", "--width-mm", "1e9"}, out, refused), 1);
    EXPECT_FALSE(QDir(QString::fromStdString(folder / "q")).exists());
}

TEST(PicturesCommand, refuses_bad_input_and_wrong_usage_in_one_line) {
    std::ostringstream out, err;
    EXPECT_EQ(run_pictures_command(std::vector<std::string>{"pictures", "/no/such/logbook.ullage", "--into", "/tmp"}, out, err), 1);
    EXPECT_EQ(std::ranges::count(err.str(), '\n'), 1);
    EXPECT_EQ(run_pictures_command(std::vector<std::string>{"pictures"}, out, err), 2);
}

TEST_F(ComparisonPageTest, at_one_load_units_are_moved_and_the_page_says_where_each_stands) {
    page->findChild<QDoubleSpinBox*>(QStringLiteral("loadSpin"))->setValue(120);
    page->findChild<QPushButton*>(QStringLiteral("atLoadButton"))->click();
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonAboutLabel"))->text().contains(QStringLiteral("at 120 W")));
    EXPECT_EQ(cell(0, "at this load"), QStringLiteral("moved to this load"));
    EXPECT_TRUE(cell(2, "at this load").startsWith(QStringLiteral("as tested: ")));
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonRemarksLabel"))->text().contains(QStringLiteral("other way round")));
    page->findChild<QPushButton*>(QStringLiteral("asTestedButton"))->click();
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("comparisonAboutLabel"))->text().contains(QStringLiteral("as tested")));
}

TEST_F(ComparisonPageTest, the_matrix_of_differences_is_turned_round_below_its_diagonal) {
    const auto* pairs = page->findChild<QTableView*>(QStringLiteral("pairsView"))->model();
    QAbstractItemModelTester tester(const_cast<QAbstractItemModel*>(pairs), QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(pairs->rowCount(), 3);
    const QString above = pairs->index(0, 2).data().toString(), below = pairs->index(2, 0).data().toString();
    EXPECT_TRUE(above.contains(QStringLiteral("resolved"))) << above.toStdString();
    EXPECT_NE(above.startsWith(QLatin1Char('+')), below.startsWith(QLatin1Char('+')));
    EXPECT_EQ(pairs->index(1, 1).data().toString(), QString());
}

TEST_F(ComparisonPageTest, a_filter_and_a_size_leave_out_units) {
    page->findChild<QLineEdit*>(QStringLiteral("filterEdit"))->setText(QStringLiteral("OSK"));
    EXPECT_EQ(view()->model()->rowCount(), 1);
    page->findChild<QLineEdit*>(QStringLiteral("filterEdit"))->clear();
    page->findChild<QDoubleSpinBox*>(QStringLiteral("mostSpin"))->setValue(1300);
    EXPECT_EQ(view()->model()->rowCount(), 2);
}

TEST_F(ComparisonPageTest, the_expected_band_is_the_testers) {
    page->findChild<QDoubleSpinBox*>(QStringLiteral("lowerBandSpin"))->setValue(70);
    const auto& band = page->findChild<BarChart*>()->content().bands.at(0);
    EXPECT_DOUBLE_EQ(band.lower, 0.70);
    EXPECT_DOUBLE_EQ(band.upper, 0.80);
}

TEST_F(ComparisonPageTest, several_units_share_one_picture_of_gauge_errors_and_one_of_fractions) {
    EXPECT_EQ(page->findChild<LineChart*>(QStringLiteral("errorsChart"))->content().series.size(), 3u);
    std::set<QString> groups;
    for (const ChartSeries& series : page->findChild<LineChart*>(QStringLiteral("fractionsChart"))->content().series) groups.insert(series.group);
    EXPECT_EQ(groups.size(), 3u);
}

} // namespace
} // namespace ullage::test
