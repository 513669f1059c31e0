// SPDX-License-Identifier: GPL-3.0-or-later
// The window in each language, on the sample logbook at 1280x800.
#include "app/window/window_fixture.h"
#include "style/languages.h"

#include <QAbstractButton>
#include <QLabel>
#include <QMenuBar>
#include <QRegularExpression>
#include <QStackedWidget>
#include <QTabBar>
#include <QTranslator>

#include <set>

namespace ullage::test {
namespace {

/// Notes what is asked for of the program's own texts and not found.
class Missing : public QTranslator {
public:
    explicit Missing(const QString& code) { EXPECT_TRUE(known_.load(QStringLiteral(":/ullage/languages/ullage_%1.qm").arg(code))); }
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char* disambiguation, int count) const override {
        const QByteArray where(context);
        const bool ours = where.startsWith("ullage") || where == "report" || where == "awake";
        if (ours && known_.translate(context, source, disambiguation, count).isNull()) texts.insert(std::string(context) + ": " + source);
        return {};
    }

    mutable std::set<std::string> texts;

private:
    QTranslator known_;
};

class WindowSpeaks : public WindowTest, public testing::WithParamInterface<const char*> {
protected:
    void SetUp() override {
        speak(QString::fromLatin1(GetParam()));
        missing_ = std::make_unique<Missing>(QString::fromLatin1(GetParam()));
        QCoreApplication::installTranslator(missing_.get());
        WindowTest::SetUp();
        trigger("sampleLogbookAction");
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

    std::unique_ptr<Missing> missing_;
};

} // namespace

TEST_P(WindowSpeaks, every_text_it_asks_for_is_there) {
    on_each_page([](const QString&) {});
    for (const std::string& text : missing_->texts) ADD_FAILURE() << text;
}

TEST_P(WindowSpeaks, no_label_or_button_is_cut_off) {
    const QRegularExpression tester_words(QStringLiteral("(Socket|Bench|Logging) meter")); // of the sample
    std::set<std::string> cut;
    on_each_page([&](const QString& page) {
        for (const auto* button : window->findChildren<QAbstractButton*>())
            if (button->isVisible() && !button->text().isEmpty() && button->width() < button->minimumSizeHint().width())
                cut.insert(page.toStdString() + ": " + button->text().toStdString());
        for (const auto* label : window->findChildren<QLabel*>()) {
            if (!label->isVisible() || label->wordWrap() || label->text().isEmpty() || label->visibleRegion().isEmpty()) continue;
            if (label->text().contains(tester_words)) continue; // cut in the middle where there is no room for all of them
            if (label->contentsRect().width() < label->fontMetrics().horizontalAdvance(QString(label->text()).remove(QLatin1Char('&'))))
                cut.insert(page.toStdString() + ": " + label->objectName().toStdString() + ": " + label->text().toStdString());
        }
        for (const auto* tabs : window->findChildren<QTabBar*>())
            if (tabs->isVisible() && tabs->width() < tabs->sizeHint().width() && !tabs->usesScrollButtons())
                cut.insert(page.toStdString() + ": tabs");
    });
    EXPECT_LE(window->menuBar()->sizeHint().width(), 1280);
    for (const std::string& text : cut) ADD_FAILURE() << text;
}

INSTANTIATE_TEST_SUITE_P(Each, WindowSpeaks, testing::Values("de", "fr", "es"), [](const auto& each) { return std::string(each.param); });

} // namespace ullage::test
