// SPDX-License-Identifier: GPL-3.0-or-later
// The window in each language, on the sample logbook at 1280x800.
#include "app/window/window_fixture.h"
#include "fitting.h"
#include "missing_texts.h"
#include "services/appearance.h"
#include "style/languages.h"

#include <QMenuBar>
#include <QTabBar>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTextCursor>
#include <QTextLayout>
#include <QTextTable>

#include <set>

namespace ullage::test {
namespace {

class WindowSpeaks : public WindowTest, public testing::WithParamInterface<const char*> {
protected:
    void SetUp() override {
        speak(QString::fromLatin1(GetParam()));
        missing_ = std::make_unique<MissingTexts>(QString::fromLatin1(GetParam()));
        QCoreApplication::installTranslator(missing_.get());
        WindowTest::SetUp();
        trigger("sampleLogbookAction");
        apply_appearance(*qApp, settings);
    }
    void TearDown() override {
        window.reset();
        QCoreApplication::removeTranslator(missing_.get());
        speak(QStringLiteral("en"));
    }

    /// Lets all layouts settle: one may follow from another.
    static void settle() {
        for (int turn = 0; turn < 3; ++turn) QApplication::processEvents();
    }

    /// Does it on every page, and for each on every tab.
    template <class Look>
    void on_each_page(const Look& look) {
        const auto on_tabs = [&](const QString& page) {
            look(page);
            for (auto* tabs : window->findChildren<QTabBar*>())
                for (int tab = 0; tabs->isVisible() && tab < tabs->count(); ++tab) {
                    tabs->setCurrentIndex(tab);
                    settle();
                    look(page + QStringLiteral(", ") + tabs->tabText(tab));
                }
        };
        for (const auto& unit : document.units()) {
            window->showUnit(unit.uuid);
            settle();
            on_tabs(page());
        }
        for (const auto* record : document.runs()) {
            window->showRun(record->run.uuid);
            settle();
            on_tabs(page() + QLatin1Char(' ') + QString::number(record->number));
        }
        for (const char* action : {"comparisonAction", "metersAction", "benchAction", "loadListsAction", "pvPageAction"}) {
            if (!window->findChild<QAction*>(QString::fromLatin1(action))) continue;
            trigger(action);
            settle();
            on_tabs(page());
        }
    }

    std::unique_ptr<MissingTexts> missing_;
};

} // namespace

TEST_P(WindowSpeaks, every_text_it_asks_for_is_there) {
    on_each_page([](const QString&) {});
    for (const std::string& text : missing_->texts) ADD_FAILURE() << text;
}

TEST_P(WindowSpeaks, no_label_or_button_is_cut_off) {
    std::set<std::string> cut;
    on_each_page([&](const QString& page) {
        for (const QString& text : cut_off_on_page(*window)) cut.insert((page + QStringLiteral(": ") + text).toStdString());
    });
    EXPECT_LE(window->menuBar()->sizeHint().width(), 1280);
    for (const std::string& text : cut) ADD_FAILURE() << text;
}

TEST_P(WindowSpeaks, large_text_leaves_the_name_of_every_key_whole) {
    settings.setTextStep(Settings::most_text_step);
    apply_appearance(*qApp, settings);
    trigger("keysAndWordsAction");
    settle();
    int keys = 0;
    const auto* document = find<QTextBrowser>("helpBrowser")->document();
    for (QTextBlock block = document->begin(); block.isValid(); block = block.next()) {
        const QTextCursor at(block);
        if (!block.text().contains(QLatin1Char('+')) || !at.currentTable() || at.currentTable()->cellAt(at).column() != 0) continue;
        ++keys;
        EXPECT_EQ(block.layout()->lineCount(), 1) << block.text().toStdString();
    }
    EXPECT_GT(keys, 50);
    settings.setTextStep(0);
    apply_appearance(*qApp, settings);
}

INSTANTIATE_TEST_SUITE_P(Each, WindowSpeaks, testing::Values("de", "fr", "es"), [](const auto& each) { return std::string(each.param); });

} // namespace ullage::test
