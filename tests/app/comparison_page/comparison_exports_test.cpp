// SPDX-License-Identifier: GPL-3.0-or-later
// What the comparison page and the command for pictures give to other programs.
#include "comparison_fixture.h"

#include <filesystem>
#include <fstream>

namespace ullage::test {

TEST_F(ComparisonPageTest, every_form_is_saved_with_the_numbers_of_the_table) {
    const QByteArray csv = save(0, "c.csv");
    EXPECT_EQ(prompts.suggested, QStringLiteral("comparison.csv"));
    EXPECT_TRUE(csv.contains("Osk 1200")) << csv.constData();
    EXPECT_TRUE(csv.contains(",828,")) << csv.constData();
    EXPECT_TRUE(save(1, "c.md").contains("828 ± 12"));
    EXPECT_TRUE(save(2, "c.html").contains("828"));
    EXPECT_TRUE(save(3, "c.xlsx").startsWith("PK"));
    EXPECT_TRUE(save(4, "c.json").contains("\"value\": 828.0"));
    EXPECT_TRUE(save(5, "c.tex").contains("828~$\\pm$~12"));
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
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith(QLatin1String("unit\trated energy (Wh)\tdelivered energy (Wh)")));
}

TEST_F(ComparisonPageTest, copy_table_gives_the_columns_in_sight_in_their_order_as_text_and_html) {
    QString told;
    QObject::connect(page.get(), &ComparisonPage::notice, [&](const QString& sentence) { told = sentence; });
    view()->sortByColumn(0, Qt::DescendingOrder);
    QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("copyTableButton")), Qt::LeftButton);
    EXPECT_TRUE(told.contains(QLatin1String("clipboard")));
    const QMimeData* data = QApplication::clipboard()->mimeData();
    const QStringList rows = data->text().trimmed().split(QLatin1Char('\n'));
    ASSERT_EQ(rows.size(), 4);
    EXPECT_TRUE(rows[0].contains(QLatin1String("delivered energy (Wh)\tdelivered energy, lower\tdelivered energy, upper\tdelivered energy, kind")));
    EXPECT_FALSE(rows[0].contains(QLatin1String("meter"))) << "what is not in sight does not go out";
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

TEST_F(ComparisonPageTest, prices_in_several_currencies_name_theirs_in_each_cell) {
    Unit unit = document.units().front();
    unit.currency = "CHF";
    ASSERT_TRUE(document.updateUnit(unit));
    EXPECT_TRUE(cell(0, "price per usable kWh").endsWith(QLatin1String("CHF/kWh"))) << cell(0, "price per usable kWh").toStdString();
    EXPECT_TRUE(cell(1, "price per usable kWh").endsWith(QLatin1String("EUR/kWh")));
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
    ASSERT_EQ(run_command(args, drawing_commands(), out, err), 0) << err.str();
    const QStringList files = QDir(QString::fromStdString(into)).entryList(QDir::Files);
    for (const char* name : {"osk-1200-run-2-gauge-error", "osk-1200-run-2-energy", "osk-1200-run-2-load", "osk-1200-usable-fraction",
                             "osk-1200-run-time", "osk-1200-gauge-errors", "tarrow-2k-b-usable-fraction", "comparison-vessels"})
        for (const char* ending : {".png", ".svg"}) EXPECT_TRUE(files.contains(QLatin1String(name) + QLatin1String(ending))) << name << ending;
    for (int run = 1; run <= 6; ++run) EXPECT_TRUE(files.contains(QStringLiteral("osk-1200-run-%1-energy.png").arg(run))) << run;
    EXPECT_FALSE(files.contains(QStringLiteral("osk-1200-run-4-gauge-error.svg"))) << "a charge has no gauge error to show";
    QFile whole(QDir(QString::fromStdString(into)).filePath(QStringLiteral("osk-1200-run-2-energy.svg")));
    ASSERT_TRUE(whole.open(QFile::ReadOnly));
    const QByteArray words = whole.readAll();
    for (const char* part : {"Osk 1200, drain 14 May", "Socket meter A", "Squares: what the gauge implies", "made with Ullage"})
        EXPECT_TRUE(words.contains(part)) << part;
}

TEST(PicturesCommand, units_whose_names_would_give_one_file_have_pictures_of_their_own) {
    TempFolder folder;
    std::ostringstream out, err;
    std::vector<std::string> names{"A/B", "A B", "a-b", "..", std::string(400, 'n'), "50%00 %1", "CON"};
    std::filesystem::create_directory(folder / "sheets");
    for (const std::string& name : names)
        std::ofstream(folder / ("sheets/" + std::to_string(&name - names.data()) + ".csv"))
            << "# unit: " << name << "\n# rated_energy_wh: 1000\n# run: drain\n# time_zone: UTC\ntime,gauge_percent,register_wh\n"
            << "2027-05-14T08:00Z,100,0\n2027-05-14T12:00Z,50,400\n2027-05-14T16:00Z,0,800\n";
    const std::vector<std::string> args{"pictures", folder / "sheets", "--into", folder / "p"};
    ASSERT_EQ(run_command(args, drawing_commands(), out, err), 0) << err.str();
    const QStringList made = QDir(QString::fromStdString(folder / "p")).entryList({QStringLiteral("*-run-1-energy.svg")}, QDir::Files | QDir::Hidden);
    EXPECT_EQ(made.size(), static_cast<qsizetype>(names.size())) << made.join(' ').toStdString();
    EXPECT_EQ(run_command(args, drawing_commands(), out, err), 0) << "they are known again: " << err.str();
    std::ofstream(folder / "p/a-b-run-1-load.svg") << "a drawing of somebody";
    EXPECT_EQ(run_command(args, drawing_commands(), out, err), 1);
    EXPECT_EQ(run_command(std::vector<std::string>{"pictures", folder / "sheets", "--into", folder / "p", "--force"}, drawing_commands(), out, err),
              0);
}

TEST(PicturesCommand, the_comparison_alone_can_be_drawn_at_one_load_too) {
    TempFolder folder;
    std::ostringstream out, err;
    const std::vector<std::string> args{
        "pictures", (source_dir() / "sample-data").string(), "--into", folder / "p", "--comparison-only", "--bare", "--at-load", "120"};
    ASSERT_EQ(run_command(args, drawing_commands(), out, err), 0) << err.str();
    const QDir made(QString::fromStdString(folder / "p"));
    EXPECT_EQ(made.entryList({QStringLiteral("*.svg")}, QDir::Files),
              (QStringList{"comparison-against-load.svg", "comparison-at-load-usable-fraction.svg", "comparison-at-load-vessels.svg",
                           "comparison-gauge-errors.svg", "comparison-usable-fraction.svg", "comparison-vessels.svg"}));
    const auto bytes = [&made](const char* name) {
        QFile file(made.filePath(QLatin1String(name)));
        return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
    };
    EXPECT_NE(bytes("comparison-at-load-usable-fraction.png"), bytes("comparison-usable-fraction.png"));
    EXPECT_FALSE(bytes("comparison-usable-fraction.svg").contains("made with Ullage")) << "bare";
    EXPECT_TRUE(bytes("comparison-at-load-usable-fraction.svg").contains("75.27")) << "the share at 120 W; it was 69.00 % as tested";
}

TEST(PicturesCommand, pictures_have_the_size_and_ground_asked_for) {
    TempFolder folder;
    const std::string sheet = (source_dir() / "sample-data/01-tarrow-2k-drain-180-w.csv").string();
    std::ostringstream out, err;
    const std::vector<std::string> args{"pictures",    sheet,  "--into",          folder / "p", "--width-mm", "101.6",
                                        "--height-mm", "50.8", "--dots-per-inch", "300",        "--print"};
    ASSERT_EQ(run_command(args, drawing_commands(), out, err), 0) << err.str();
    const QImage image(QString::fromStdString(folder / "p/comparison-vessels.png"));
    EXPECT_EQ(image.size(), QSize(1200, 600)); // 4 by 2 inches
    EXPECT_EQ(image.pixelColor(1, 1), QColor(Qt::white));
    std::ostringstream refused;
    EXPECT_EQ(run_command(std::vector<std::string>{"pictures", sheet, "--into", folder / "q", "--width-mm", "1e9"}, drawing_commands(), out, refused),
              2);
    EXPECT_EQ(refused.str(), "ullage: --width-mm: `1e9` is no number from 20 to 5000; see ullage pictures --help\n");
    EXPECT_FALSE(QDir(QString::fromStdString(folder / "q")).exists());
}

TEST(PicturesCommand, refuses_bad_input_and_wrong_usage_in_one_line) {
    std::ostringstream out, err;
    EXPECT_EQ(run_command(std::vector<std::string>{"pictures", "/no/such/logbook.ullage", "--into", "/tmp"}, drawing_commands(), out, err), 1);
    EXPECT_EQ(std::ranges::count(err.str(), '\n'), 1);
    EXPECT_EQ(run_command(std::vector<std::string>{"pictures"}, drawing_commands(), out, err), 2);
}

TEST_F(ComparisonPageTest, an_export_whose_table_was_cancelled_closes_or_keeps_the_table_before) {
    const auto cancelled = [](QWidget*) -> std::optional<StreamedTable> { return std::nullopt; };
    ExportDialog nothing({{QStringLiteral("all"), QStringLiteral("all"), cancelled, {}}}, prompts);
    nothing.open();
    QTest::mouseClick(nothing.findChild<QPushButton*>(QStringLiteral("saveButton")), Qt::LeftButton);
    QTest::mouseClick(nothing.findChild<QPushButton*>(QStringLiteral("copyButton")), Qt::LeftButton);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !nothing.isVisible(); }));

    const auto one = [](QWidget*) -> std::optional<StreamedTable> { return Table{{"one", {{"key", "key", ""}}, {}, {}}, {{std::string("kept")}}}; };
    ExportDialog kept({{QStringLiteral("one"), QStringLiteral("one"), one, {}}, {QStringLiteral("all"), QStringLiteral("all"), cancelled, {}}},
                      prompts);
    auto* subjects = kept.findChild<QComboBox*>(QStringLiteral("subjectCombo"));
    subjects->setCurrentIndex(1);
    EXPECT_EQ(subjects->currentIndex(), 0);
    EXPECT_TRUE(kept.findChild<QPlainTextEdit*>(QStringLiteral("previewEdit"))->toPlainText().contains(QLatin1String("kept")));
}

} // namespace ullage::test
