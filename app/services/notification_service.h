// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QSet>
#include <QString>
#include <QStringList>

namespace ullage {

/// The notification service of the session, org.freedesktop.Notifications, by D-Bus. Asks without waiting; signals tell what came of it.
class NotificationService final : public QObject {
    Q_OBJECT
public:
    NotificationService();

    /// Shows a message that stays until it is answered. Where a sound is wanted and the service has none, silent() is emitted; where there is no
    /// service, refused().
    void show(const QString& title, const QString& text, bool sounding);

signals:
    void clicked(); ///< a message of ours
    void refused(const QString& title, const QString& text);
    void silent();

private slots:
    void actionInvoked(uint id, const QString& action);

private:
    void send(const QString& title, const QString& text, bool sounding, const QStringList& capabilities);

    QSet<uint> shown_;
};

} // namespace ullage
