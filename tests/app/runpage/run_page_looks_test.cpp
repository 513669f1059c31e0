// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/amend_dialog.h"
#include "formats/sheets/run_sheet.h"
#include "pages/run/findings_view.h"
#include "pages/run/readings_view.h"
#include "run_page_fixture.h"
#include "style/theme.h"
#include "support/source_dir.h"

#include <QApplication>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QTest>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <vector>

namespace ullage {

using test::RunPageTest;
using test::TempFolder;

namespace {

class LooksTest : public RunPageTest {
protected:
    void SetUp() override {
        RunPageTest::SetUp();
        font_ = QApplication::font();
    }
    void TearDown() override {
        QApplication::setFont(font_);
        RunPageTest::TearDown();
    }
    void useText(double scale) {
        QFont font = font_;
        font.setPointSizeF(font_.pointSizeF() * scale);
        QApplication::setFont(font);
    }
    /// The page as a picture; kept in the folder that ULLAGE_SHOTS names, when it names one.
    QImage shoot(const char* name) {
        const QImage picture = window->grab().toImage();
        if (const QString where = qEnvironmentVariable("ULLAGE_SHOTS"); !where.isEmpty()) {
            EXPECT_TRUE(picture.save(where + QLatin1Char('/') + QLatin1String(name) + QStringLiteral(".png")));
        }
        return picture;
    }
    static std::set<QRgb> colours(const QImage& picture) {
        std::set<QRgb> found;
        for (int y = 0; y < picture.height(); y += 3)
            for (int x = 0; x < picture.width(); x += 3) found.insert(picture.pixel(x, y));
        return found;
    }
    void expectDrawn(const QImage& picture) {
        EXPECT_EQ(picture.size(), window->size() * window->devicePixelRatio());
        const auto found = colours(picture);
        for (const QColor& colour : {current_palette().panel, current_palette().doubt, current_palette().accent})
            EXPECT_TRUE(found.contains(colour.rgb())) << colour.name().toStdString();
    }

    static int neededHeight(const QLabel& label) { return label.wordWrap() ? label.heightForWidth(label.width()) : label.sizeHint().height(); }
    /// No label of `part` has less room than its words need, once the layouts, which follow in later turns, have settled.
    static void expectWhole(const QWidget& part, const QSize& size) {
        (void)QTest::qWaitFor([&] {
            return std::ranges::all_of(part.findChildren<QLabel*>(), [](const QLabel* label) {
                return !label->isVisible() || label->text().isEmpty() || label->height() >= neededHeight(*label);
            });
        });
        for (const QLabel* label : part.findChildren<QLabel*>()) {
            if (!label->isVisible() || label->text().isEmpty()) continue;
            const std::string which = label->text().toStdString() + " at " + std::to_string(size.width());
            EXPECT_GE(label->height(), neededHeight(*label)) << which;
            if (!label->wordWrap()) {
                EXPECT_GE(label->width(), label->sizeHint().width()) << which;
            }
            const QRect place(label->mapTo(&part, QPoint()), label->size());
            EXPECT_TRUE(part.rect().contains(place)) << which;
        }
    }

private:
    QFont font_;
};

} // namespace

TEST_F(LooksTest, the_page_is_drawn_in_both_themes_and_sizes) {
    recordSample();
    for (const Theme theme : {Theme::light, Theme::dark}) {
        apply_theme(*qApp, theme);
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
            showPage();
            window->resize(size);
            type("gaugeEdit", "16");
            QCoreApplication::processEvents();
            expectDrawn(shoot(QStringLiteral("run-%1-%2")
                                  .arg(theme == Theme::dark ? QStringLiteral("dark") : QStringLiteral("light"))
                                  .arg(size.width())
                                  .toLatin1()
                                  .constData()));
        }
    }
}

TEST_F(LooksTest, switching_the_theme_repaints_an_open_page) {
    recordSample();
    showPage();
    const QImage light = window->grab().toImage();
    apply_theme(*qApp, Theme::dark);
    QCoreApplication::processEvents();
    const QImage dark = window->grab().toImage();
    expectDrawn(dark);
    EXPECT_TRUE(colours(light).contains(light_palette().panel.rgb()));
    EXPECT_FALSE(colours(dark).contains(light_palette().panel.rgb()));
}

TEST_F(LooksTest, the_amend_dialog_is_drawn) {
    recordSample();
    showPage();
    auto* view = find<ReadingsView>("readingsView");
    view->selectReadings({readings()[2].uuid});
    QTest::keyClick(view, Qt::Key_F2);
    auto* dialog = page->findChild<AmendDialog*>();
    ASSERT_NE(dialog, nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog));
    const QImage picture = dialog->grab().toImage();
    if (const QString where = qEnvironmentVariable("ULLAGE_SHOTS"); !where.isEmpty()) {
        EXPECT_TRUE(picture.save(where + QStringLiteral("/amend.png")));
    }
    for (const QColor& colour : {current_palette().ground, current_palette().line, current_palette().accent})
        EXPECT_TRUE(colours(picture).contains(colour.rgb())) << colour.name().toStdString();
}

TEST_F(LooksTest, every_tab_shows_something_of_its_own) {
    recordSample();
    showPage();
    auto* tabs = find<QTabWidget>("chartsTabs");
    ASSERT_EQ(tabs->count(), 6);
    std::vector<QImage> before;
    for (int i = 0; i < tabs->count(); ++i) {
        tabs->setCurrentIndex(i);
        QCoreApplication::processEvents();
        const QImage picture = shoot(("run-tab-" + std::to_string(i)).c_str());
        const QImage content = picture.copy(QRect(tabs->currentWidget()->mapTo(window.get(), QPoint()), tabs->currentWidget()->size()));
        EXPECT_EQ(std::ranges::count(before, content), 0) << i;
        before.push_back(content);
    }
}

TEST_F(LooksTest, a_question_and_a_message_stand_below_the_fields) {
    recordSample();
    clock.advance_hours(0.3);
    showPage();
    type("gaugeEdit", "16");
    type("registerEdit", "12");
    press(Qt::Key_Return);
    ASSERT_FALSE(questionText().isEmpty());
    shoot("run-question");
    press(Qt::Key_C);
    type("registerEdit", "fifty");
    press(Qt::Key_Return);
    ASSERT_FALSE(entry().message().isEmpty());
    shoot("run-message");
}

TEST_F(LooksTest, an_empty_run_says_what_to_do) {
    showPage();
    const QImage picture = shoot("run-empty");
    EXPECT_EQ(picture.size(), window->size() * window->devicePixelRatio());
    EXPECT_TRUE(find<QWidget>("entryRow")->isVisible());
}

TEST_F(LooksTest, every_sample_run_is_shown_with_its_figures) {
    std::set<std::filesystem::path> sheets;
    for (const auto& entry : std::filesystem::directory_iterator(test::source_dir() / "sample-data"))
        if (entry.path().extension() == ".csv") sheets.insert(entry.path());
    ASSERT_FALSE(sheets.empty());
    for (const auto& sheet : sheets) {
        std::ostringstream text;
        text << std::ifstream(sheet).rdbuf();
        const auto read = read_run_sheet(text.str(), sheet.filename().string());
        ASSERT_TRUE(read) << read.error().sentence();
        TempFolder own;
        ASSERT_TRUE(document.create(QString::fromStdString((own / "sample.ullage").string())));
        const auto kept = document.import(read.value().record);
        ASSERT_TRUE(kept) << kept.error().sentence();
        run = kept.value().run;
        showPage();
        QCoreApplication::processEvents();
        shoot(("sample-" + sheet.stem().string()).c_str());
        EXPECT_NE(find<QLabel>("deliveredFigureLabel")->text(), QString(QChar(0x2013))) << sheet;
        EXPECT_GT(find<ReadingsView>("readingsView")->model()->rowCount(), 3) << sheet;
        EXPECT_FALSE(find<QLabel>("usableFractionLabel")->text().isEmpty()) << sheet;
        window.reset();
    }
}

TEST_F(LooksTest, the_last_reading_stays_in_sight_when_room_goes) {
    recordSample();
    showPage();
    window->resize(1280, 560);
    QCoreApplication::processEvents();
    const auto* view = find<ReadingsView>("readingsView");
    ASSERT_GT(view->verticalScrollBar()->maximum(), 0);
    EXPECT_EQ(view->verticalScrollBar()->value(), view->verticalScrollBar()->maximum());
    shoot("run-low");
}

TEST_F(LooksTest, a_table_beside_the_charts_needs_no_sideways_scrolling) {
    recordSample();
    showPage();
    QCoreApplication::processEvents();
    EXPECT_EQ(find<ReadingsView>("readingsView")->horizontalScrollBar()->maximum(), 0);
}

TEST_F(LooksTest, a_narrow_window_stacks_the_table_over_the_charts) {
    recordSample();
    showPage();
    auto* halves = find<QSplitter>("readingsSplitter");
    EXPECT_EQ(halves->orientation(), Qt::Horizontal);
    window->resize(1000, 900);
    EXPECT_TRUE(QTest::qWaitFor([&] { return halves->orientation() == Qt::Vertical; }));
    shoot("run-narrow");
    window->resize(1280, 800);
    EXPECT_TRUE(QTest::qWaitFor([&] { return halves->orientation() == Qt::Horizontal; }));
}

TEST_F(LooksTest, twice_the_text_size_cuts_nothing_of_the_figures_and_of_the_result_whether_chosen_before_or_on_the_page) {
    recordSample();
    ullage::Run ended = record().run;
    ended.end = RunEnd::stopped_by_tester; // the longest words in the strip
    ASSERT_TRUE(document.updateRun(ended));
    for (const bool on_the_page : {false, true})
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
            useText(on_the_page ? 1.0 : 2.0);
            apply_theme(*qApp, Theme::light);
            showPage();
            window->resize(size);
            QCoreApplication::processEvents();
            useText(2.0);
            apply_theme(*qApp, Theme::light);
            QTest::qWait(50);
            expectWhole(*find("resultStrip"), size);
            auto* tabs = find<QTabWidget>("chartsTabs");
            if (const int at = tabs->indexOf(find("resultsWidget")); at >= 0) tabs->setCurrentIndex(at);
            QTest::qWait(50);
            shoot(("run-large-result-" + std::to_string(size.width()) + (on_the_page ? "-late" : "")).c_str());
            expectWhole(*find("usableWidget"), size);
            EXPECT_EQ(find<QScrollArea>("usableScroll")->horizontalScrollBar()->maximum(), 0) << size.width();
        }
}

TEST_F(LooksTest, twice_the_text_size_leaves_the_entry_row_whole_and_in_sight) {
    recordSample();
    useText(2.0);
    apply_theme(*qApp, Theme::light);
    for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
        showPage();
        window->resize(size);
        QCoreApplication::processEvents();
        shoot(("run-large-" + std::to_string(size.width())).c_str());
        EXPECT_EQ(window->size(), size) << "the page must not force the window larger";
        const QWidget* row = find<QWidget>("entryRow");
        const QRect place(row->mapTo(window.get(), QPoint()), row->size());
        EXPECT_TRUE(window->rect().contains(place));
        const QWidget* record_button = find<QWidget>("recordButton");
        EXPECT_TRUE(row->rect().contains(record_button->geometry()));
        EXPECT_GT(find<ReadingsView>("readingsView")->viewport()->height(), 60);
    }
}

} // namespace ullage
