// SPDX-License-Identifier: GPL-3.0-or-later
// What the program asks of a desktop, asked of services that stand in for it on a bus of the test's own (D-Bus Specification, Desktop Notifications
// Specification 1.2, and the login manager's inhibitor locks).
#include "base/clock.h"
#include "document/document.h"
#include "services/awake.h"
#include "services/installation_check.h"
#include "services/notifier.h"
#include "services/settings.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <QDeadlineTimer>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTest>

namespace ullage::test {
namespace {

constexpr int service_ms = 20'000; ///< that a process may take on a busy machine

/// The next line that a process writes; empty where none comes.
QString line_of(QProcess& process, int wait_ms = service_ms) {
    QDeadlineTimer until(wait_ms);
    while (!process.canReadLine() && !until.hasExpired()) QTest::qWait(20);
    return QString::fromUtf8(process.readLine()).trimmed();
}

class DesktopServices : public ::testing::Test {
protected:
    /// The bus is there once for all tests: the connections of this process to it are made once.
    static void SetUpTestSuite() {
        bus = new QProcess;
        bus->start(QStringLiteral("dbus-daemon"), {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
        const QString address = line_of(*bus);
        ASSERT_FALSE(address.isEmpty()) << "dbus-daemon: " << bus->errorString().toStdString();
        for (const char* name : {"DBUS_SESSION_BUS_ADDRESS", "DBUS_SYSTEM_BUS_ADDRESS"}) qputenv(name, address.toLocal8Bit());
    }
    static void TearDownTestSuite() {
        bus->terminate();
        bus->waitForFinished();
        delete bus;
    }

    void start(const QStringList& capabilities) {
        desktop.start(QStringLiteral(ULLAGE_STAND_IN), capabilities);
        ASSERT_EQ(line_of(desktop), "ready");
    }
    void TearDown() override {
        if (desktop.state() == QProcess::NotRunning) return;
        desktop.write("quit\n");
        if (!desktop.waitForFinished()) desktop.kill();
    }

    static inline QProcess* bus = nullptr;
    QProcess desktop;
};

} // namespace

TEST_F(DesktopServices, a_call_is_a_notification_that_stays_until_it_is_clicked) {
    start({QStringLiteral("actions"), QStringLiteral("body"), QStringLiteral("body-markup"), QStringLiteral("sound")});
    DesktopNotifier notifier;
    int clicked = 0;
    notifier.setClicked([&clicked] { ++clicked; });
    notifier.notify(QStringLiteral("Osk 1200: a reading is due"), QStringLiteral("30 min after the last <reading>."), Notifier::Sound::call);
    EXPECT_EQ(line_of(desktop), "notify | Ullage | Osk 1200: a reading is due | 30 min after the last &lt;reading&gt;. | default,Enter the reading | "
                                "message-new-instant | 0");
    QTest::qWait(200); // until the service's answer is here
    desktop.write("click\n");
    EXPECT_TRUE(QTest::qWaitFor([&clicked] { return clicked == 1; }, service_ms));
}

TEST_F(DesktopServices, a_service_that_can_do_little_is_asked_for_no_more) {
    start({QStringLiteral("body")});
    DesktopNotifier notifier;
    notifier.notify(QStringLiteral("A log is quiet"), QStringLiteral("a < b"), Notifier::Sound::call);
    EXPECT_EQ(line_of(desktop), "notify | Ullage | A log is quiet | a < b |  |  | 0");
}

TEST_F(DesktopServices, without_a_service_nothing_is_shown_and_nothing_breaks) {
    DesktopNotifier notifier;
    notifier.notify(QStringLiteral("title"), QStringLiteral("text"), Notifier::Sound::call);
    QTest::qWait(300);
    DesktopInhibitor inhibitor;
    EXPECT_FALSE(inhibitor.hold(QStringLiteral("a test runs")));
}

TEST_F(DesktopServices, the_check_of_the_installation_finds_those_that_are_there) {
    const TempFolder home;
    const Settings settings(QString::fromStdString((home / "settings.ini").string()));
    const auto state_of = [&settings](const char* subject) {
        for (const auto& row : check_installation(settings, {}))
            if (row.subject == QLatin1String(subject)) return row.state;
        return InstallationRow::State::fault;
    };
    EXPECT_EQ(state_of("notices of readings that are due"), InstallationRow::State::note);
    EXPECT_EQ(state_of("keeping the machine awake"), InstallationRow::State::note);
    start({});
    EXPECT_EQ(state_of("notices of readings that are due"), InstallationRow::State::good);
    EXPECT_EQ(state_of("keeping the machine awake"), InstallationRow::State::good);
}

TEST_F(DesktopServices, the_login_managers_lock_is_held_until_it_is_let_go) {
    start({});
    DesktopInhibitor inhibitor;
    Awake awake(&inhibitor);
    awake.setWanted(true);
    EXPECT_EQ(awake.state(), Awake::State::held);
    EXPECT_TRUE(line_of(desktop).startsWith("inhibit | sleep:idle | Ullage | "));
    awake.setWanted(true);
    EXPECT_EQ(line_of(desktop, 300), "") << "it is asked once";
    awake.setWanted(false);
    EXPECT_EQ(line_of(desktop), "released");
}

TEST_F(DesktopServices, the_program_itself_calls_to_an_overdue_reading_and_lets_go_of_the_machine_when_it_ends) {
    start({QStringLiteral("actions")});
    const TempFolder home;
    const auto in_home = [&home](const char* name) { return QString::fromStdString((home / name).string()); };
    RunId run_uuid;
    {
        const SystemClock clock;
        Document document(clock);
        ASSERT_TRUE(document.create(in_home("night.ullage")));
        Unit unit;
        unit.name = "Pelm 900";
        unit.rated_energy_wh = 900;
        ullage::Run run;
        run.unit_uuid = document.addUnit(unit).value().uuid;
        run_uuid = document.addRun(run).value().uuid;
        ReadingValues full; // an hour ago, so that the next is overdue by half an hour
        full.time_ms = clock.now_ms() - static_cast<UtcMs>(ms_per_hour);
        full.gauge_percent = 100;
        ASSERT_TRUE(document.record(run_uuid, full));
    }
    QProcess program;
    auto environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "XDG_RUNTIME_DIR"})
        environment.insert(QLatin1String(name), QString::fromStdString(home.path().string()));
    program.setProcessEnvironment(environment);
    Settings(in_home("ullage/ullage.ini")).remember(QStringLiteral("rule/") + QString::fromStdString(run_uuid.text()), QStringLiteral("30;;"));
    program.start(QStringLiteral(ULLAGE_PROGRAM), {in_home("night.ullage")});
    QStringList told{line_of(desktop), line_of(desktop)};
    told.sort();
    EXPECT_TRUE(told[0].startsWith("inhibit | sleep:idle | Ullage | ")) << told[0].toStdString();
    EXPECT_TRUE(told[1].startsWith("notify | Ullage | Pelm 900: a reading is due | ")) << told[1].toStdString();
    program.terminate();
    program.waitForFinished();
    EXPECT_EQ(line_of(desktop), "released");
}

} // namespace ullage::test
