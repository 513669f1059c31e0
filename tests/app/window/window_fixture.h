// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "services/settings.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"
#include "support_qt/fake_prompts.h"
#include "window/main_window.h"
#include "window/remembered_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <memory>

namespace ullage::test {

/// The main window on a fresh folder with settings of its own.
class WindowTest : public ::testing::Test {
protected:
    void SetUp() override { show(); }

    void show() {
        window = std::make_unique<MainWindow>(document, settings, prompts);
        window->makeAllPages(); // as it does by itself once it has been painted
        window->resize(1280, 800);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }

    /// As the program does at its start.
    void open_last_logbook() {
        if (const auto last = logbook_of_start(settings, clock)) window->openAhead(*last);
    }

    [[nodiscard]] QString file(const char* name) const { return QString::fromStdString((folder / name).string()); }

    /// A widget of the window or of the form above it.
    template <class Widget>
    Widget* find(const char* name) const {
        auto* found = window->findChild<Widget*>(QString::fromLatin1(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }

    void click(const char* name) {
        for (auto* button : window->findChildren<QAbstractButton*>(QString::fromLatin1(name))) {
            if (!button->isVisible()) continue;
            ASSERT_TRUE(button->isEnabled()) << name;
            QTest::mouseClick(button, Qt::LeftButton);
            QApplication::processEvents();
            return;
        }
        FAIL() << "no visible button " << name;
    }

    void type(const char* name, const QString& text) {
        auto* edit = find<QLineEdit>(name);
        ASSERT_NE(edit, nullptr);
        ASSERT_TRUE(edit->isVisible()) << name;
        edit->selectAll();
        if (text.isEmpty()) QTest::keyClick(edit, Qt::Key_Delete);
        else QTest::keyClicks(edit, text);
    }

    void trigger(const char* name) {
        auto* action = window->action(QString::fromLatin1(name));
        ASSERT_NE(action, nullptr) << name;
        ASSERT_TRUE(action->isEnabled()) << name;
        action->trigger();
        QApplication::processEvents();
    }

    [[nodiscard]] bool enabled(const char* name) const {
        const auto* action = window->action(QString::fromLatin1(name));
        return action && action->isEnabled();
    }

    /// What the message bar says; empty when it is hidden.
    [[nodiscard]] QString message() const;
    /// Object name of the page that is shown.
    [[nodiscard]] QString page() const;
    void drop(const QStringList& files);
    void new_logbook(const char* name = "bench.ullage");
    void add_unit(const QString& name = "Osk 1200", const QString& rated = "1,2 kWh");
    void add_meter(const QString& name = "Socket meter A");
    void start_run();
    [[nodiscard]] static QByteArray sheet();
    QString write(const char* name, const QByteArray& text) const;

    TempFolder folder;
    FakeClock clock;
    Settings settings{QString::fromStdString((folder / "settings.ini").string())};
    FakePrompts prompts;
    Document document{clock};
    std::unique_ptr<MainWindow> window;
};

} // namespace ullage::test
