// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/notifier.h"

#include "services/notification_service.h"
#include "style/icons.h"

#include <QApplication>
#include <QSystemTrayIcon>
#include <QWidget>

namespace ullage {

struct DesktopNotifier::Tray {
    QSystemTrayIcon icon{glyph_icon(Glyph::unit)};
};

DesktopNotifier::DesktopNotifier() = default;
DesktopNotifier::~DesktopNotifier() = default;

void DesktopNotifier::answered() const {
    if (clicked_) clicked_();
}

void DesktopNotifier::notify(const QString& title, const QString& text, Sound sound) {
    for (auto* window : QApplication::topLevelWidgets())
        if (window->isVisible() && window->isWindow() && window->parentWidget() == nullptr) QApplication::alert(window);
    if (!service_) {
        service_ = std::make_unique<NotificationService>();
        QObject::connect(service_.get(), &NotificationService::clicked, [this] { answered(); });
        QObject::connect(service_.get(), &NotificationService::refused, [this](const QString& of, const QString& what) { showAtTray(of, what); });
        QObject::connect(service_.get(), &NotificationService::silent, [] { QApplication::beep(); });
    }
    service_->show(title, text, sound == Sound::call);
}

void DesktopNotifier::showAtTray(const QString& title, const QString& text) {
    if (!QSystemTrayIcon::isSystemTrayAvailable() || !QSystemTrayIcon::supportsMessages()) return;
    if (!tray_) {
        tray_ = std::make_unique<Tray>();
        QObject::connect(&tray_->icon, &QSystemTrayIcon::messageClicked, [this] { answered(); });
        QObject::connect(&tray_->icon, &QSystemTrayIcon::activated, [this] { answered(); });
        tray_->icon.show();
    }
    tray_->icon.setToolTip(title);
    tray_->icon.showMessage(title, text, glyph_icon(Glyph::clock));
}

} // namespace ullage
