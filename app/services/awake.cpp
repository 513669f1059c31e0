// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/awake.h"

#include <QCoreApplication>
#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusUnixFileDescriptor>

#include <optional>

namespace ullage {

namespace {

constexpr int answer_ms = 1000;
const QString program_name = QStringLiteral("Ullage");

struct Service {
    const char *name, *path, *interface;
};

constexpr Service login{"org.freedesktop.login1", "/org/freedesktop/login1", "org.freedesktop.login1.Manager"};
constexpr Service session_services[] = {
    {"org.freedesktop.PowerManagement", "/org/freedesktop/PowerManagement/Inhibit", "org.freedesktop.PowerManagement.Inhibit"},
    {"org.freedesktop.ScreenSaver", "/org/freedesktop/ScreenSaver", "org.freedesktop.ScreenSaver"},
};

QDBusMessage call_to(const Service& service, const char* method) {
    return QDBusMessage::createMethodCall(QLatin1String(service.name), QLatin1String(service.path), QLatin1String(service.interface),
                                          QLatin1String(method));
}

} // namespace

struct DesktopInhibitor::Held {
    QDBusUnixFileDescriptor login_lock; ///< the login manager's lock lasts as long as the descriptor is open
    const Service* service = nullptr;   ///< of the session, with its cookie
    uint cookie = 0;
};

DesktopInhibitor::DesktopInhibitor() = default;

DesktopInhibitor::~DesktopInhibitor() { release(); }

bool DesktopInhibitor::hold(const QString& why) {
    if (held_) return true;
    if (const auto bus = QDBusConnection::systemBus(); bus.isConnected()) {
        auto message = call_to(login, "Inhibit");
        message << QStringLiteral("sleep:idle") << program_name << why << QStringLiteral("block");
        const auto reply = bus.call(message, QDBus::Block, answer_ms);
        if (reply.type() == QDBusMessage::ReplyMessage && !reply.arguments().isEmpty()) {
            const auto lock = qvariant_cast<QDBusUnixFileDescriptor>(reply.arguments().constFirst());
            if (lock.isValid()) {
                held_ = std::make_unique<Held>();
                held_->login_lock = lock;
                return true;
            }
        }
    }
    const auto session = QDBusConnection::sessionBus();
    if (!session.isConnected()) return false;
    for (const auto& service : session_services) {
        auto message = call_to(service, "Inhibit");
        message << program_name << why;
        const auto reply = session.call(message, QDBus::Block, answer_ms);
        if (reply.type() != QDBusMessage::ReplyMessage || reply.arguments().isEmpty()) continue;
        held_ = std::make_unique<Held>();
        held_->service = &service;
        held_->cookie = reply.arguments().constFirst().toUInt();
        return true;
    }
    return false;
}

void DesktopInhibitor::release() {
    if (held_ && held_->service) {
        auto message = call_to(*held_->service, "UnInhibit");
        message << held_->cookie;
        QDBusConnection::sessionBus().call(message, QDBus::Block, answer_ms);
    }
    held_.reset();
}

void Awake::setWanted(bool wanted) {
    if (wanted == (state_ != State::not_wanted)) return;
    if (!wanted) {
        if (state_ == State::held) inhibitor_->release();
        state_ = State::not_wanted;
        return;
    }
    const auto why = QCoreApplication::translate("awake", "a test is running and its readings are due");
    state_ = inhibitor_ && inhibitor_->hold(why) ? State::held : State::not_offered;
}

QString Awake::words() const {
    switch (state_) {
    case State::not_wanted: return {};
    case State::held: return QCoreApplication::translate("awake", "kept awake");
    case State::not_offered: return QCoreApplication::translate("awake", "this desktop does not offer to stay awake: set it yourself");
    }
    return {};
}

} // namespace ullage
