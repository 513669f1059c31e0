// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/inside/installation_parts.h"

#include "base/instant.h"
#include "services/settings.h"
#include "style/clauses.h"
#include "style/theme.h"
#include "style/words.h"

#include <QDBusConnection>
#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QDBusReply>
#include <QGuiApplication>
#include <QScreen>
#include <QStringList>
#include <QSystemTrayIcon>

#include <initializer_list>

namespace ullage {

namespace {

constexpr int bus_answer_ms = 1000;

/// The first of these services that runs on the bus or would be started when asked; empty: none.
QString service_on(const QDBusConnection& bus, std::initializer_list<const char*> names) {
    if (!bus.isConnected() || !bus.interface()) return {};
    const QStringList running = bus.interface()->registeredServiceNames().value(), startable = bus.interface()->activatableServiceNames().value();
    for (const char* name : names)
        if (running.contains(QLatin1String(name)) || startable.contains(QLatin1String(name))) return QString::fromLatin1(name);
    return {};
}

/// "dunst 1.9" as the service of notices calls itself; empty where it does not answer.
QString notice_server(const QDBusConnection& bus) {
    const QString name = QStringLiteral("org.freedesktop.Notifications");
    const auto ask =
        QDBusMessage::createMethodCall(name, QStringLiteral("/org/freedesktop/Notifications"), name, QStringLiteral("GetServerInformation"));
    const QDBusMessage answer = bus.call(ask, QDBus::Block, bus_answer_ms);
    const auto words = answer.arguments();
    if (answer.type() != QDBusMessage::ReplyMessage || words.size() < 3) return {};
    return QStringLiteral("%1 %2").arg(text_of(utf8_of(words[0].toString())), text_of(utf8_of(words[2].toString())));
}

InstallationRow offered(const QString& subject, const QString& service, const QString& without) {
    if (!service.isEmpty()) return {tr("Desktop"), subject, InstallationRow::State::good, service, {}};
    return {tr("Desktop"), subject, InstallationRow::State::note, tr("no service offers it"), without};
}

InstallationRow display_row() {
    InstallationRow row{tr("Desktop"), tr("display"), InstallationRow::State::good, {}, {}};
    const QString platform = QGuiApplication::platformName();
    if (platform == QLatin1String("offscreen") || platform == QLatin1String("minimal")) {
        row.state = InstallationRow::State::note;
        row.found = tr("none");
        row.follows = tr("The window cannot be shown here; all commands work.");
        return row;
    }
    QStringList screens;
    for (const QScreen* screen : QGuiApplication::screens())
        screens << tr("%1 × %2 at scale %3").arg(screen->size().width()).arg(screen->size().height()).arg(screen->devicePixelRatio(), 0, 'g', 3);
    row.found = QStringLiteral("%1, %2").arg(platform, joined_clauses(screens));
    return row;
}

} // namespace

void check_desktop(QList<InstallationRow>& rows, const Settings& settings) {
    const QString group = tr("Desktop");
    rows << display_row();
    const QString theme = settings.theme() == Theme::dark    ? tr("dark, as chosen")
                          : settings.theme() == Theme::light ? tr("light, as chosen")
                          : desktop_is_dark()                ? tr("dark, as the desktop")
                                                             : tr("light, as the desktop");
    rows << InstallationRow{group, tr("theme and text size"), {}, tr("%1; %2 %").arg(theme).arg(100 + 10 * settings.textStep()), {}};
    const auto session = QDBusConnection::sessionBus(), system = QDBusConnection::systemBus();
    const QString notices = service_on(session, {"org.freedesktop.Notifications"});
    const QString server = notices.isEmpty() ? QString() : notice_server(session);
    const bool tray = QSystemTrayIcon::isSystemTrayAvailable();
    if (!notices.isEmpty() || !tray)
        rows << offered(tr("notices of readings that are due"), server.isEmpty() ? notices : server, tr("Reminders stand in the window alone."));
    else rows << InstallationRow{group, tr("notices of readings that are due"), {}, tr("at the tray"), {}};
    QString awake = service_on(system, {"org.freedesktop.login1"});
    if (awake.isEmpty()) awake = service_on(session, {"org.freedesktop.PowerManagement", "org.freedesktop.ScreenSaver"});
    rows << offered(tr("keeping the machine awake"), awake, tr("Set the machine not to sleep while a test runs."));
    rows << offered(tr("passwords of meters"), service_on(session, {"org.freedesktop.secrets", "org.kde.kwalletd6", "org.kde.kwalletd5"}),
                    tr("A meter's password is asked for at each start."));
}

} // namespace ullage
