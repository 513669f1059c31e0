// SPDX-License-Identifier: GPL-3.0-or-later
// Passwords of sources: kept by the desktop where that is wished, never in the logbook, asked for else.
#include "dialogs/password_form.h"
#include "dialogs/source_form.h"
#include "document/document.h"
#include "peers.h"
#include "services/live_reader.h"
#include "services/settings.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"
#include "support_qt/fake_desktop.h"
#include "support_qt/fake_prompts.h"
#include "window/main_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>
#include <string>

namespace ullage {
namespace {

using namespace test;

class Passwords : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(document.create(path()));
        Unit unit;
        unit.name = "Lantern 900";
        Meter meter;
        meter.name = "Bench plug";
        ullage::Run run;
        run.unit_uuid = document.addUnit(unit).value().uuid;
        meter_uuid = document.addMeter(meter).value().uuid;
        run.meter_uuid = meter_uuid;
        run_uuid = document.addRun(run).value().uuid;
        source.kind = SourceKind::http;
        source.address = "http://127.0.0.1:" + std::to_string(free_port()) + "/status";
        source.user = "bench";
        ASSERT_TRUE(take_fields(source, "power body"));
        ASSERT_TRUE(document.setMeterSource(meter_uuid, source_text(source)));
        show();
    }
    void show() {
        window = std::make_unique<MainWindow>(document, settings, prompts, Desktop{nullptr, nullptr, &secrets});
        window->makeAllPages();
        window->resize(1280, 800);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    [[nodiscard]] QString path() const { return QString::fromStdString((folder / "bench.ullage").string()); }
    template <class Widget>
    Widget* shown(const char* name) const {
        for (auto* widget : window->findChildren<Widget*>(QString::fromLatin1(name)))
            if (widget->isVisible()) return widget;
        return nullptr;
    }
    template <class Widget>
    Widget* awaited(const char* name) const {
        EXPECT_TRUE(QTest::qWaitFor([&] { return shown<Widget>(name) != nullptr; }, 5000)) << name;
        return shown<Widget>(name);
    }
    void askToRead() {
        window->showRun(run_uuid);
        auto* button = awaited<QPushButton>("readLiveButton");
        ASSERT_TRUE(button);
        button->click();
    }
    [[nodiscard]] bool reading() const { return window->liveReader().isReading(run_uuid); }
    void expectNowhereInTheFolder(const std::string& words) const {
        for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
            std::ifstream file(entry.path(), std::ios::binary);
            const std::string bytes{std::istreambuf_iterator<char>(file), {}};
            EXPECT_EQ(bytes.find(words), std::string::npos) << entry.path();
        }
    }

    TempFolder folder;
    FakeClock clock;
    Document document{clock};
    Settings settings{QString::fromStdString((folder / "settings.ini").string())};
    FakePrompts prompts;
    FakeSecretStore secrets;
    LiveSource source;
    MeterId meter_uuid;
    RunId run_uuid;
    std::unique_ptr<MainWindow> window;
};

TEST_F(Passwords, one_that_the_desktop_is_to_keep_is_asked_for_once_and_is_in_no_file_of_ours) {
    askToRead();
    auto* form = awaited<PasswordForm>("passwordForm");
    ASSERT_TRUE(form);
    shown<QLineEdit>("passwordEdit")->setText(QStringLiteral("very secret"));
    shown<QCheckBox>("keepPasswordCheck")->setChecked(true);
    form->findChild<QPushButton*>(QStringLiteral("submitButton"))->click();
    EXPECT_TRUE(QTest::qWaitFor([&] { return reading() && !secrets.kept.isEmpty(); }, 5000));
    EXPECT_EQ(secrets.kept, (QMap<QString, QString>{{secret_key(source), QStringLiteral("very secret")}}));
    expectNowhereInTheFolder("very secret");

    // Reading goes on by itself when the logbook is opened again, and when it is asked for again.
    document.close();
    ASSERT_TRUE(document.open(path()));
    EXPECT_TRUE(QTest::qWaitFor([&] { return reading(); }, 5000));
    window->liveReader().stop(run_uuid);
    askToRead();
    EXPECT_TRUE(QTest::qWaitFor([&] { return reading(); }, 5000));
    EXPECT_FALSE(shown<PasswordForm>("passwordForm"));
    // So when the program is started again.
    document.close();
    window.reset();
    ASSERT_TRUE(document.open(path()));
    show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return reading(); }, 5000));
}

TEST_F(Passwords, one_that_is_not_to_be_kept_is_asked_for_each_time) {
    for (int time = 0; time < 2; ++time) {
        askToRead();
        auto* form = awaited<PasswordForm>("passwordForm");
        ASSERT_TRUE(form);
        EXPECT_FALSE(shown<QCheckBox>("keepPasswordCheck")->isChecked());
        form->findChild<QPushButton*>(QStringLiteral("submitButton"))->click();
        EXPECT_TRUE(QTest::qWaitFor([&] { return reading(); }, 5000));
        window->liveReader().stop(run_uuid);
    }
    EXPECT_TRUE(secrets.kept.isEmpty());
}

TEST_F(Passwords, a_desktop_without_a_store_is_said_to_have_none_and_nothing_is_offered) {
    secrets.there = false;
    askToRead();
    ASSERT_TRUE(awaited<PasswordForm>("passwordForm"));
    EXPECT_FALSE(shown<QCheckBox>("keepPasswordCheck"));
    EXPECT_TRUE(shown<QLabel>("passwordHelpLabel")->text().contains(QStringLiteral("has no secret store")));
}

TEST_F(Passwords, one_is_forgotten_with_its_source_or_by_the_button_but_not_while_another_meter_needs_it) {
    secrets.kept[secret_key(source)] = QStringLiteral("very secret");
    window->showMeter(meter_uuid);
    const auto open_form = [this] {
        awaited<QPushButton>("meterSourceButton")->click();
        return awaited<SourceForm>("sourceForm");
    };
    auto* form = open_form();
    ASSERT_TRUE(form);
    awaited<QPushButton>("forgetPasswordButton")->click();
    EXPECT_TRUE(QTest::qWaitFor([&] { return secrets.kept.isEmpty() && !shown<QPushButton>("forgetPasswordButton"); }, 5000));
    form->reject();

    secrets.kept[secret_key(source)] = QStringLiteral("very secret");
    Meter second;
    second.name = "Second plug";
    const MeterId second_uuid = document.addMeter(second).value().uuid;
    ASSERT_TRUE(document.setMeterSource(second_uuid, source_text(source)));
    for (const MeterId& meter : {meter_uuid, second_uuid}) {
        EXPECT_FALSE(secrets.kept.isEmpty());
        window->showMeter(meter);
        form = open_form();
        ASSERT_TRUE(form);
        form->findChild<QComboBox*>(QStringLiteral("kindCombo"))->setCurrentIndex(0); // not read live
        form->findChild<QPushButton*>(QStringLiteral("submitButton"))->click();
        QTest::qWait(50);
    }
    EXPECT_TRUE(QTest::qWaitFor([&] { return secrets.kept.isEmpty(); }, 5000));
}

} // namespace
} // namespace ullage
