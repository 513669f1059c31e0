// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "base/version.h"
#include "formats/text/safety_words.h"
#include "services/appearance.h"
#include "style/theme.h"
#include "window/message_bar.h"

#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QFile>
#include <QHeaderView>
#include <QImage>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QSet>
#include <QSplitter>
#include <QTextBrowser>
#include <QTreeView>

#include <functional>

namespace ullage {

using test::WindowTest;

TEST_F(WindowTest, dark_and_light_repaint_the_window_and_are_remembered) {
    trigger("lightThemeAction");
    const auto light = window->grab().toImage().pixelColor(640, 780);
    trigger("darkThemeAction");
    EXPECT_TRUE(current_palette().dark);
    EXPECT_EQ(settings.theme(), Theme::dark);
    const auto dark = window->grab().toImage().pixelColor(640, 780);
    EXPECT_GT(light.lightnessF(), 0.8);
    EXPECT_LT(dark.lightnessF(), 0.3);
    trigger("systemThemeAction");
    EXPECT_EQ(settings.theme(), Theme::system);
}

TEST_F(WindowTest, text_grows_and_shrinks_within_limits_and_returns) {
    apply_appearance(*qApp, settings);
    const auto usual = QApplication::font().pointSizeF();
    trigger("largerTextAction");
    EXPECT_GT(QApplication::font().pointSizeF(), usual);
    for (int i = 0; i < 20; ++i) trigger("smallerTextAction");
    EXPECT_EQ(settings.textStep(), Settings::least_text_step);
    EXPECT_LT(QApplication::font().pointSizeF(), usual);
    trigger("usualTextAction");
    EXPECT_DOUBLE_EQ(QApplication::font().pointSizeF(), usual);
}

TEST_F(WindowTest, every_action_has_a_name_and_a_key_of_its_own) {
    QSet<QString> keys, names;
    int count = 0;
    const std::function<void(const QList<QAction*>&)> check = [&](const QList<QAction*>& actions) {
        for (const auto* entry : actions) {
            if (entry->menu()) {
                if (entry->menu()->objectName() != "recentMenu") check(entry->menu()->actions());
                continue;
            }
            if (entry->isSeparator()) continue;
            ++count;
            EXPECT_FALSE(entry->objectName().isEmpty()) << entry->text().toStdString();
            EXPECT_FALSE(names.contains(entry->objectName())) << entry->objectName().toStdString();
            const auto key = entry->shortcut().toString();
            EXPECT_FALSE(key.isEmpty()) << entry->text().toStdString();
            EXPECT_FALSE(keys.contains(key)) << key.toStdString();
            names << entry->objectName();
            keys << key;
        }
    };
    check(window->menuBar()->actions());
    EXPECT_GT(count, 30);
    for (const auto* other : window->findChildren<QAction*>()) {
        if (other->shortcut().isEmpty() || names.contains(other->objectName())) continue;
        EXPECT_FALSE(keys.contains(other->shortcut().toString()))
            << other->objectName().toStdString() << " shares " << other->shortcut().toString().toStdString();
    }
}

TEST_F(WindowTest, the_menus_are_those_of_the_job) {
    QStringList titles;
    for (const auto* entry : window->menuBar()->actions()) titles << QString(entry->text()).remove('&');
    EXPECT_EQ(titles, (QStringList{"Logbook", "Edit", "Run", "Compare", "Sizing", "View", "Help"}));
}

TEST_F(WindowTest, without_a_logbook_only_what_can_be_done_is_offered) {
    for (const char* name : {"addUnitAction", "startRunAction", "saveCopyAction", "importSheetAction", "comparisonAction", "endFoundOffAction",
                             "mark1Action", "undoAction"})
        EXPECT_FALSE(enabled(name)) << name;
    for (const char* name : {"newLogbookAction", "openLogbookAction", "sampleLogbookAction"}) EXPECT_TRUE(enabled(name)) << name;
}

TEST_F(WindowTest, help_explains_keys_words_method_cautions_and_version) {
    const auto help = [this](const char* name) {
        trigger(name);
        const auto* text = window->findChild<QTextBrowser*>("helpBrowser");
        return text ? text->toPlainText() : QString();
    };
    const auto keys = help("keysAndWordsAction");
    EXPECT_TRUE(keys.contains("Ctrl+R"));
    EXPECT_TRUE(keys.contains("usable fraction"));
    EXPECT_TRUE(help("methodAction").contains("JCGM 100:2008"));
    EXPECT_TRUE(help("cautionsAction").contains("smell"));
    const auto about = help("aboutAction");
    EXPECT_TRUE(about.contains(QString::fromStdString(std::string(program_version()))));
    EXPECT_TRUE(about.contains("GPL-3.0-or-later"));
}

TEST_F(WindowTest, keys_and_words_open_with_the_page_in_sight_and_on_the_bench_with_its_keys) {
    new_logbook();
    add_unit();
    const auto first_lines = [this] {
        trigger("keysAndWordsAction");
        return find<QTextBrowser>("helpBrowser")->toPlainText().left(700);
    };
    EXPECT_TRUE(first_lines().startsWith("The page of a unit")) << first_lines().toStdString();
    start_run();
    const QString bench = first_lines();
    EXPECT_TRUE(bench.startsWith("The page of a run")) << bench.toStdString();
    EXPECT_LT(bench.indexOf("store the reading in the entry row"), bench.indexOf("Amend the last")) << bench.toStdString();
    EXPECT_TRUE(bench.contains("F2"));
}

TEST_F(WindowTest, a_card_of_the_keys_of_the_bench_can_be_printed) {
    prompts.to_save = file("keys.html");
    trigger("keyCardAction");
    find<QComboBox>("formCombo")->setCurrentIndex(1);
    click("submitButton");
    QFile card(file("keys.html"));
    ASSERT_TRUE(card.open(QIODevice::ReadOnly)) << message().toStdString();
    const QString text = QString::fromUtf8(card.readAll()).replace(QChar(QChar::Nbsp), QLatin1Char(' '));
    for (const char* word : {"Keys at the bench", "F11", "Bench display, full screen", "Ctrl+1", "take the reading of that card", "1 to 9", "F8"})
        EXPECT_TRUE(text.contains(QLatin1String(word))) << word;
}

TEST_F(WindowTest, none_yet_is_a_link_to_what_would_be_the_first) {
    new_logbook();
    auto* tree = find<QTreeView>("logbookTree");
    const auto hint = tree->model()->match(tree->model()->index(0, 0), Qt::DisplayRole, "None yet: add a meter", 1, Qt::MatchRecursive);
    ASSERT_EQ(hint.size(), 1);
    QTest::mouseClick(tree->viewport(), Qt::LeftButton, {}, tree->visualRect(hint[0]).center());
    EXPECT_TRUE(find<QWidget>("meterForm")->isVisible());
}

TEST_F(WindowTest, splitters_and_size_come_back_at_the_next_start) {
    new_logbook();
    window->resize(1100, 700);
    find<QSplitter>("mainSplitter")->setSizes({300, 800});
    const auto sizes = find<QSplitter>("mainSplitter")->sizes();
    window->close();
    window = std::make_unique<MainWindow>(document, settings, prompts);
    window->show();
    QApplication::processEvents();
    EXPECT_EQ(window->size(), QSize(1100, 700));
    EXPECT_EQ(find<QSplitter>("mainSplitter")->sizes(), sizes);
}

TEST_F(WindowTest, the_run_pages_splitters_stay_where_they_were_left) {
    new_logbook();
    add_unit();
    start_run();
    window->resize(1600, 900);
    QApplication::processEvents();
    auto* splitter = find<QSplitter>("resultsSplitter");
    const auto before = splitter->sizes();
    splitter->setSizes({before[0] - 80, before[1] + 80});
    const auto left = splitter->sizes();
    ASSERT_NE(left, before);
    window->close();
    window = std::make_unique<MainWindow>(document, settings, prompts);
    window->resize(1600, 900);
    window->show();
    window->showRun(document.runs()[0]->run.uuid);
    EXPECT_TRUE(QTest::qWaitFor([&] { return find<QSplitter>("resultsSplitter")->sizes() == left; }));
    EXPECT_EQ(find<QSplitter>("resultsSplitter")->sizes(), left);
}

TEST_F(WindowTest, charts_can_leave_and_the_entry_row_cannot) {
    new_logbook();
    add_unit();
    start_run();
    auto* charts = find<QSplitter>("readingsSplitter")->widget(1);
    EXPECT_TRUE(charts->isVisible());
    trigger("chartsAction");
    EXPECT_FALSE(charts->isVisible());
    EXPECT_FALSE(settings.chartsShown());
    EXPECT_TRUE(find<QWidget>("entryRow")->isVisible());
    trigger("chartsAction");
    EXPECT_TRUE(charts->isVisible());
}

TEST_F(WindowTest, every_field_and_list_has_an_accessible_name) {
    new_logbook();
    add_unit();
    start_run();
    trigger("addUnitAction");
    click("moreFieldsButton");
    int checked = 0;
    for (const auto* widget : window->findChildren<QWidget*>()) {
        if (!widget->isVisible()) continue;
        const bool field = qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QComboBox*>(widget);
        const bool list = qobject_cast<const QAbstractItemView*>(widget) && !qobject_cast<const QHeaderView*>(widget);
        if (!field && !list) continue;
        ++checked;
        EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className() << " " << widget->objectName().toStdString() << " in "
                                                         << widget->parentWidget()->objectName().toStdString();
    }
    EXPECT_GT(checked, 12);
}

TEST_F(WindowTest, a_small_window_keeps_its_pages_whole) {
    apply_theme(*qApp, Theme::light);
    new_logbook();
    add_unit();
    start_run();
    window->resize(900, 620);
    QApplication::processEvents();
    EXPECT_LE(window->minimumSizeHint().width(), 1000);
    for (const char* name : {"comparisonAction", "enterReadingAction"})
        if (enabled(name)) trigger(name);
    const auto image = window->grab().toImage();
    QSet<QRgb> colours;
    for (int x = 0; x < image.width(); ++x)
        for (int y = 0; y < image.height(); ++y) colours << image.pixel(x, y);
    for (const QColor& colour : {current_palette().ground, current_palette().panel, current_palette().line})
        EXPECT_TRUE(colours.contains(colour.rgb())) << colour.name().toStdString();
}

TEST_F(WindowTest, the_vessels_in_sight_are_saved_in_the_size_and_sharpness_chosen) {
    trigger("sampleLogbookAction");
    trigger("comparisonAction");
    prompts.to_save = file("vessels.png");
    trigger("savePictureAction");
    type("widthEdit", QStringLiteral("5 in"));
    type("heightEdit", QStringLiteral("3 in"));
    find<QComboBox>("scaleCombo")->setCurrentIndex(2); // 300 dots an inch
    click("submitButton");
    EXPECT_EQ(QImage(file("vessels.png")).size(), QSize(1500, 900));
    EXPECT_TRUE(prompts.suggested.endsWith(QStringLiteral("picture.png"))) << prompts.suggested.toStdString();
    EXPECT_TRUE(message().contains(QStringLiteral("vessels.png"))) << message().toStdString();
}

TEST_F(WindowTest, the_chart_in_sight_is_saved_as_svg_of_the_size_chosen) {
    trigger("sampleLogbookAction");
    window->showRun(document.runs().front()->run.uuid);
    QApplication::processEvents();
    prompts.to_save = file("chart.svg");
    trigger("savePictureAction");
    type("widthEdit", QStringLiteral("640 px"));
    type("heightEdit", QStringLiteral("480 px"));
    find<QComboBox>("formCombo")->setCurrentIndex(1);
    click("submitButton");
    EXPECT_TRUE(prompts.suggested.endsWith(QStringLiteral("picture.svg"))) << prompts.suggested.toStdString();
    QFile svg(file("chart.svg"));
    ASSERT_TRUE(svg.open(QFile::ReadOnly));
    EXPECT_TRUE(svg.readAll().contains("viewBox=\"0 0 640 480\""));
}

TEST_F(WindowTest, a_picture_that_cannot_be_written_says_so_in_its_form_which_stays) {
    trigger("sampleLogbookAction");
    trigger("comparisonAction");
    prompts.to_save = file("no-such-folder/shown.png");
    trigger("savePictureAction");
    click("submitButton");
    auto* form = find<QWidget>("pictureDialog");
    EXPECT_TRUE(form->isVisible());
    EXPECT_FALSE(form->findChild<QLabel*>(QStringLiteral("refusalLabel"))->text().isEmpty());
    prompts.to_save.clear();
    click("submitButton");
    EXPECT_TRUE(form->isVisible()) << "thinking better of the file name is no end";
}

TEST_F(WindowTest, the_cautions_on_screen_are_those_of_every_report) {
    trigger("cautionsAction");
    const QString shown = find<QTextBrowser>("helpBrowser")->toPlainText();
    for (const Message& words : safety_words()) EXPECT_TRUE(shown.contains(QString::fromStdString(words))) << words;
    EXPECT_TRUE(shown.contains(QString::fromStdString(say(specimen_words))));
}

TEST_F(WindowTest, where_no_picture_is_in_sight_the_window_says_so) {
    trigger("copyPictureAction");
    EXPECT_TRUE(find<MessageBar>("messageBar")->message().contains(QStringLiteral("No picture")));
}

} // namespace ullage
