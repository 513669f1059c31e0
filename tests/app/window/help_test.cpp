// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of help that stand in resources/help, in the program and as the repository shows them.
#include "window_fixture.h"

#include "dialogs/help_pages.h"
#include "style/theme.h"
#include "support/source_dir.h"

#include <QDir>
#include <QFile>
#include <QLabel>
#include <QRegularExpression>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTextCursor>
#include <QTextTable>

namespace ullage::test {
namespace {

QString text_of_file(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

QString in_source(const QString& path) { return QString::fromStdString((source_dir() / path.toStdString()).string()); }

/// Tables of the page that is shown.
QList<const QTextTable*> tables_of(const QTextBrowser& browser) {
    QList<const QTextTable*> tables;
    for (const QTextFrame* frame : browser.document()->rootFrame()->childFrames())
        if (const auto* table = qobject_cast<const QTextTable*>(frame)) tables << table;
    return tables;
}

TEST_F(WindowTest, every_page_of_help_opens_with_its_title_and_all_its_words) {
    for (const HelpPage& page : help_pages()) {
        const QString source = text_of_file(in_source(QStringLiteral("resources/help/%1").arg(QString::fromLatin1(page.file))));
        trigger(page.action);
        auto* dialog = find<QDialog>("helpDialog");
        const QString title = QString(page.entry).remove(QLatin1Char('&'));
        EXPECT_TRUE(dialog->isVisible()) << page.file;
        EXPECT_EQ(dialog->windowTitle(), title);
        EXPECT_TRUE(source.startsWith(QStringLiteral("# %1\n").arg(title))) << page.file;
        const QString shown = find<QTextBrowser>("helpBrowser")->toPlainText();
        static const QRegularExpression heading(QStringLiteral("^##+ (.+)$"), QRegularExpression::MultilineOption);
        int headings = 0;
        for (auto each = heading.globalMatch(source); each.hasNext(); ++headings)
            EXPECT_TRUE(shown.contains(each.next().captured(1))) << page.file << ": " << shown.left(200).toStdString();
        EXPECT_GE(headings, 4) << page.file;
        // The last words of the file are there: nothing stopped the reading on the way.
        const QString end = source.simplified().section(QLatin1Char(' '), -2).remove(QLatin1Char('`'));
        EXPECT_TRUE(shown.simplified().endsWith(end)) << page.file << ": " << end.toStdString();
    }
}

TEST_F(WindowTest, tables_of_help_pages_have_lines_in_the_colours_of_the_theme) {
    trigger("formatsAction");
    const auto* browser = find<QTextBrowser>("helpBrowser");
    for (const char* theme : {"lightThemeAction", "darkThemeAction"}) {
        trigger(theme);
        const auto tables = tables_of(*browser);
        ASSERT_GE(tables.size(), 5);
        for (const auto* table : tables) {
            EXPECT_EQ(table->format().borderBrush().color(), current_palette().line) << theme;
            EXPECT_EQ(table->cellAt(0, 0).format().background().color(), current_palette().selection) << theme;
        }
    }
    trigger("lightThemeAction");
}

TEST_F(WindowTest, every_row_of_a_table_of_help_has_a_cell_in_each_column) {
    // Qt joins empty cells that stand side by side to the cell before them, so that words stand below the wrong head.
    for (const HelpPage& page : help_pages()) {
        trigger(page.action);
        for (const auto* table : tables_of(*find<QTextBrowser>("helpBrowser")))
            for (int row = 0; row < table->rows(); ++row)
                for (int column = 0; column < table->columns(); ++column)
                    EXPECT_EQ(table->cellAt(row, column).columnSpan(), 1)
                        << page.file << ", row of " << table->cellAt(row, 0).firstCursorPosition().block().text().toStdString();
    }
}

TEST_F(WindowTest, pages_of_help_need_no_sideways_scrolling_in_a_window_of_1280_by_800) {
    for (const HelpPage& page : help_pages()) {
        trigger(page.action);
        const auto* browser = find<QTextBrowser>("helpBrowser");
        EXPECT_LE(browser->window()->width(), 1280) << page.file;
        EXPECT_LE(browser->window()->height(), 800) << page.file;
        EXPECT_LE(browser->document()->idealWidth(), browser->viewport()->width()) << page.file;
    }
}

TEST(HelpPages, every_file_of_the_folder_is_shown_by_the_program_and_linked_by_the_readme) {
    const QString readme = text_of_file(in_source(QStringLiteral("README.md")));
    QStringList shown{QStringLiteral("example.md")}; // the program works that one out anew
    for (const HelpPage& page : help_pages()) shown << QString::fromLatin1(page.file);
    shown.sort();
    EXPECT_EQ(QDir(in_source(QStringLiteral("resources/help"))).entryList(QDir::Files, QDir::Name), shown);
    for (const QString& file : shown) EXPECT_TRUE(readme.contains(QStringLiteral("(resources/help/%1)").arg(file))) << file.toStdString();
}

TEST(HelpPages, links_and_paths_of_the_documentation_lead_to_files) {
    static const QRegularExpression link(QStringLiteral("\\]\\(([^):]+)\\)"));
    static const QRegularExpression path(QStringLiteral("`((?:core|app|tests|resources|sample-data)/[a-z0-9_./-]+\\.[a-z]+)`"));
    int held = 0;
    for (const QString& file : {QStringLiteral("README.md"), QStringLiteral("DEVELOPERS.md"), QStringLiteral("tests/README.md"),
                                QStringLiteral("resources/help/example.md"), QStringLiteral("resources/help/method.md"),
                                QStringLiteral("resources/help/json.md"), QStringLiteral("resources/help/formats.md")}) {
        const QString text = text_of_file(in_source(file));
        const QDir folder(QFileInfo(in_source(file)).path());
        for (auto each = link.globalMatch(text); each.hasNext(); ++held) {
            const QString leads = each.next().captured(1);
            EXPECT_TRUE(QFileInfo::exists(folder.filePath(leads))) << file.toStdString() << ": " << leads.toStdString();
        }
        for (auto each = path.globalMatch(text); each.hasNext(); ++held) {
            const QString named = each.next().captured(1);
            EXPECT_TRUE(QFileInfo::exists(in_source(named))) << file.toStdString() << ": " << named.toStdString();
        }
    }
    EXPECT_GE(held, 30);
}

} // namespace
} // namespace ullage::test
