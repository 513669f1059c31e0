// SPDX-License-Identifier: GPL-3.0-or-later
// The desktop's secret store asked in earnest: the keyring of a desktop on a bus of the test's own. In a program of its own, as the connection of a
// process to its bus is made once.
#include "services/secret_store.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <QDeadlineTimer>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTest>

#include <csignal>
#include <fstream>
#include <optional>
#include <sys/prctl.h>

namespace ullage::test {
namespace {

constexpr int service_ms = 20'000; ///< that a process may take on a busy machine

/// A process that ends with this one, whose bus it may be: who is connected to a bus that ends, ends with it.
QProcess* companion(const QString& program, const QStringList& words, const QProcessEnvironment& environment) {
    auto* process = new QProcess;
    process->setChildProcessModifier([] { ::prctl(PR_SET_PDEATHSIG, SIGKILL); });
    process->setProcessEnvironment(environment);
    process->setProcessChannelMode(QProcess::MergedChannels);
    process->start(program, words);
    EXPECT_TRUE(process->waitForStarted()) << program.toStdString();
    return process;
}

LiveSource broker() {
    LiveSource source;
    source.kind = SourceKind::mqtt;
    source.address = "broker.example.org";
    source.user = "bench";
    return source;
}

class Keyring : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        home = new TempFolder;
        auto environment = QProcessEnvironment::systemEnvironment();
        for (const char* name : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_RUNTIME_DIR"})
            environment.insert(QLatin1String(name), QString::fromStdString(home->path().string()));
        // A bus that starts no service by itself.
        std::ofstream(*home / "bus.conf") << "<!DOCTYPE busconfig PUBLIC \"-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN\" "
                                             "\"http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd\"><busconfig><type>session</type>"
                                             "<listen>unix:tmpdir=/tmp</listen><policy context=\"default\"><allow send_destination=\"*\"/>"
                                             "<allow receive_sender=\"*\"/><allow own=\"*\"/></policy></busconfig>";
        auto* bus = companion(QStringLiteral("dbus-daemon"),
                              {QStringLiteral("--config-file=") + QString::fromStdString((*home / "bus.conf").string()), QStringLiteral("--nofork"),
                               QStringLiteral("--print-address")},
                              environment);
        QString address;
        for (const QDeadlineTimer until(service_ms); !address.startsWith(QStringLiteral("unix:")) && !until.hasExpired(); QTest::qWait(20))
            if (bus->canReadLine()) address = QString::fromUtf8(bus->readLine()).trimmed();
        ASSERT_FALSE(address.isEmpty());
        environment.insert(QStringLiteral("DBUS_SESSION_BUS_ADDRESS"), address);
        qputenv("DBUS_SESSION_BUS_ADDRESS", address.toLocal8Bit());
        bus_environment = new QProcessEnvironment(environment);
    }
    static void startKeyring() {
        auto* keyring = companion(QStringLiteral("gnome-keyring-daemon"),
                                  {QStringLiteral("--foreground"), QStringLiteral("--unlock"), QStringLiteral("--components=secrets"),
                                   QStringLiteral("--control-directory=") + QString::fromStdString(home->path().string())},
                                  *bus_environment);
        keyring->write("the keyring's own"); // with which it is unlocked
        keyring->closeWriteChannel();
    }
    Result<std::optional<QString>> found(const LiveSource& source) {
        std::optional<Result<std::optional<QString>>> answer;
        store.find(secret_key(source), [&answer](const Result<std::optional<QString>>& now) { answer = now; });
        EXPECT_TRUE(QTest::qWaitFor([&answer] { return answer.has_value(); }, service_ms));
        return answer.value_or(Error{Failure::io, "no answer", {}, {}});
    }
    static Result<void> done(const std::function<void(SecretStore::Done)>& ask) {
        std::optional<Result<void>> answer;
        ask([&answer](const Result<void>& now) { answer = now; });
        EXPECT_TRUE(QTest::qWaitFor([&answer] { return answer.has_value(); }, service_ms));
        return answer.value_or(Error{Failure::io, "no answer", {}, {}});
    }

    static inline TempFolder* home = nullptr;
    static inline QProcessEnvironment* bus_environment = nullptr;
    DesktopSecretStore store;
};

TEST_F(Keyring, without_a_store_nothing_is_kept_and_that_is_said_then_a_store_keeps_finds_and_forgets) {
    const auto none = found(broker());
    ASSERT_FALSE(none);
    EXPECT_NE(none.error().sentence().find("no secret store"), std::string::npos) << none.error().sentence();
    EXPECT_FALSE(done([this](SecretStore::Done told) { store.keep(secret_key(broker()), QStringLiteral("very secret"), std::move(told)); }));

    startKeyring();
    EXPECT_TRUE(QTest::qWaitFor([this] { return found(broker()).ok(); }, service_ms));
    EXPECT_EQ(found(broker()).value(), std::nullopt);
    const QString password = QStringLiteral("very secret, ≈ with letters of all kinds");
    ASSERT_TRUE(done([&](SecretStore::Done told) { store.keep(secret_key(broker()), password, std::move(told)); }));
    EXPECT_EQ(found(broker()).value(), password);
    LiveSource other = broker();
    other.user = "somebody else";
    EXPECT_EQ(found(other).value(), std::nullopt) << "a password goes to nobody but whose it is";
    ASSERT_TRUE(done([&](SecretStore::Done told) { store.keep(secret_key(broker()), QStringLiteral("new"), std::move(told)); }));
    EXPECT_EQ(found(broker()).value(), QStringLiteral("new"));
    for (int time = 0; time < 2; ++time)
        EXPECT_TRUE(done([this](SecretStore::Done told) { store.forget(secret_key(broker()), std::move(told)); })) << "time " << time;
    EXPECT_EQ(found(broker()).value(), std::nullopt);
}

} // namespace
} // namespace ullage::test
