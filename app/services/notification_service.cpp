// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/notification_service.h"

#include "style/words.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QVariantMap>

namespace ullage {

namespace {

constexpr const char* service_name = "org.freedesktop.Notifications";
constexpr const char* service_path = "/org/freedesktop/Notifications";
constexpr int service_answer_ms = 5000, stays = 0;
const QString default_action = QStringLiteral("default");

QDBusMessage notification_call(const char* method) {
    return QDBusMessage::createMethodCall(QLatin1String(service_name), QLatin1String(service_path), QLatin1String(service_name),
                                          QLatin1String(method));
}

} // namespace

NotificationService::NotificationService() {
    QDBusConnection::sessionBus().connect(QLatin1String(service_name), QLatin1String(service_path), QLatin1String(service_name),
                                          QStringLiteral("ActionInvoked"), this, SLOT(actionInvoked(uint, QString)));
}

void NotificationService::show(const QString& title, const QString& text, bool sounding) {
    const auto bus = QDBusConnection::sessionBus();
    if (!bus.isConnected()) {
        emit refused(title, text);
        if (sounding) emit silent();
        return;
    }
    // What the service can do decides what is asked of it.
    auto* asking = new QDBusPendingCallWatcher(bus.asyncCall(notification_call("GetCapabilities"), service_answer_ms), this);
    connect(asking, &QDBusPendingCallWatcher::finished, this, [this, title, text, sounding](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<QStringList> reply = *done;
        done->deleteLater();
        const QStringList capabilities = reply.isError() ? QStringList() : reply.value();
        if (sounding && !capabilities.contains(QLatin1String("sound"))) emit silent();
        if (reply.isError()) emit refused(title, text);
        else send(title, text, sounding, capabilities);
    });
}

void NotificationService::send(const QString& title, const QString& text, bool sounding, const QStringList& capabilities) {
    QVariantMap hints{{QStringLiteral("desktop-entry"), QStringLiteral("ullage")}, {QStringLiteral("urgency"), QVariant::fromValue<uchar>(1)}};
    if (sounding && capabilities.contains(QLatin1String("sound"))) hints.insert(QStringLiteral("sound-name"), QStringLiteral("message-new-instant"));
    QStringList actions;
    if (capabilities.contains(QLatin1String("actions"))) actions << default_action << tr("Enter the reading");
    auto message = notification_call("Notify");
    message << QStringLiteral("Ullage") << 0U << QString() << title
            << (capabilities.contains(QLatin1String("body-markup")) ? text.toHtmlEscaped() : text) << actions << hints << stays;
    auto* sending = new QDBusPendingCallWatcher(QDBusConnection::sessionBus().asyncCall(message, service_answer_ms), this);
    connect(sending, &QDBusPendingCallWatcher::finished, this, [this, title, text](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<uint> reply = *done;
        done->deleteLater();
        if (reply.isError()) emit refused(title, text);
        else shown_.insert(reply.value());
    });
}

void NotificationService::actionInvoked(uint id, const QString& action) {
    if (action == default_action && shown_.contains(id)) emit clicked();
}

} // namespace ullage
