// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/notifier.h"

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

void DesktopNotifier::notify(const QString& title, const QString& text) {
    for (auto* window : QApplication::topLevelWidgets())
        if (window->isVisible() && window->isWindow() && window->parentWidget() == nullptr) QApplication::alert(window);
    if (!QSystemTrayIcon::isSystemTrayAvailable() || !QSystemTrayIcon::supportsMessages()) return;
    if (!tray_) {
        tray_ = std::make_unique<Tray>();
        QObject::connect(&tray_->icon, &QSystemTrayIcon::messageClicked, [this] {
            if (clicked_) clicked_();
        });
        QObject::connect(&tray_->icon, &QSystemTrayIcon::activated, [this] {
            if (clicked_) clicked_();
        });
        tray_->icon.show();
    }
    tray_->icon.setToolTip(title);
    tray_->icon.showMessage(title, text, glyph_icon(Glyph::clock));
}

void DesktopNotifier::sound() { QApplication::beep(); }

} // namespace ullage
