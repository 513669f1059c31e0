// SPDX-License-Identifier: GPL-3.0-or-later
// Stands in for what a desktop offers by D-Bus, on the bus that the environment names: `ullage_stand_in [CAPABILITY...]`. It writes what it is asked
// for, and takes "click" and "quit" as lines.
#include "stand_in.h"

#include <QCoreApplication>
#include <QDBusConnection>
#include <QSocketNotifier>

#include <fcntl.h>
#include <unistd.h>

#include <iostream>
#include <string>

namespace ullage::test {

void tell(const QStringList& words) { std::cout << words.join(QStringLiteral(" | ")).toStdString() << std::endl; }

uint NotificationStandIn::Notify(const QString& program, uint replaces, const QString&, const QString& title, const QString& text,
                                 const QStringList& actions, const QVariantMap& hints, int stays_ms) {
    tell({QStringLiteral("notify"), program, title, text, actions.join(QLatin1Char(',')), hints.value(QStringLiteral("sound-name")).toString(),
          QString::number(stays_ms)});
    last_id_ = replaces != 0 ? replaces : last_id_ + 1;
    return last_id_;
}

QDBusUnixFileDescriptor LoginStandIn::Inhibit(const QString& what, const QString& who, const QString& why, const QString& mode) {
    int ends[2] = {};
    if (::pipe2(ends, O_CLOEXEC) != 0) return {};
    tell({QStringLiteral("inhibit"), what, who, why, mode});
    auto* closed = new QSocketNotifier(ends[0], QSocketNotifier::Read, this);
    connect(closed, &QSocketNotifier::activated, this, [closed, end = ends[0]] {
        tell({QStringLiteral("released")});
        closed->setEnabled(false);
        ::close(end);
        closed->deleteLater();
    });
    const QDBusUnixFileDescriptor lock(ends[1]); // a copy
    ::close(ends[1]);
    return lock;
}

} // namespace ullage::test

int main(int argc, char** argv) {
    using namespace ullage::test;
    const QCoreApplication application(argc, argv);
    NotificationStandIn notifications(QCoreApplication::arguments().mid(1));
    LoginStandIn login;
    auto session = QDBusConnection::sessionBus(), system = QDBusConnection::systemBus();
    const auto all = QDBusConnection::ExportAllContents;
    if (!session.registerObject(QStringLiteral("/org/freedesktop/Notifications"), &notifications, all) ||
        !session.registerService(QStringLiteral("org.freedesktop.Notifications")) ||
        !system.registerObject(QStringLiteral("/org/freedesktop/login1"), &login, all) ||
        !system.registerService(QStringLiteral("org.freedesktop.login1"))) {
        tell({QStringLiteral("no bus")});
        return 1;
    }
    tell({QStringLiteral("ready")});
    QSocketNotifier typed(STDIN_FILENO, QSocketNotifier::Read);
    QObject::connect(&typed, &QSocketNotifier::activated, &notifications, [&notifications, &typed] {
        std::string line;
        if (!std::getline(std::cin, line) || line == "quit") {
            typed.setEnabled(false);
            QCoreApplication::quit();
        } else if (line == "click") {
            notifications.click();
        }
    });
    return QCoreApplication::exec();
}
