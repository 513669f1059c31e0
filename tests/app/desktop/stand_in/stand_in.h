// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDBusUnixFileDescriptor>
#include <QObject>
#include <QStringList>
#include <QVariantMap>

namespace ullage::test {

/// Writes a line for whoever reads the process: words between bars.
void tell(const QStringList& words);

/// A service of Desktop Notifications 1.2 that tells what it is asked to show.
class NotificationStandIn final : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.Notifications")
public:
    explicit NotificationStandIn(QStringList capabilities) : capabilities_(std::move(capabilities)) {}
    void click() { emit ActionInvoked(last_id_, QStringLiteral("default")); } ///< on the last message

public slots:
    QStringList GetCapabilities() const { return capabilities_; }
    // NOLINTNEXTLINE(readability-function-size): the specification's arguments
    uint Notify(const QString& program, uint replaces, const QString& icon, const QString& title, const QString& text, const QStringList& actions,
                const QVariantMap& hints, int stays_ms);

signals:
    void ActionInvoked(uint id, const QString& action);

private:
    QStringList capabilities_;
    uint last_id_ = 0;
};

/// A login manager whose lock is a pipe: it tells when who holds the lock lets it go.
class LoginStandIn final : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.login1.Manager")
public slots:
    QDBusUnixFileDescriptor Inhibit(const QString& what, const QString& who, const QString& why, const QString& mode);
};

} // namespace ullage::test
