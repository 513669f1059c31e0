// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/enter_presses.h"

#include <QApplication>
#include <QKeyEvent>
#include <QPushButton>
#include <QToolButton>

namespace ullage {

EnterPresses::EnterPresses(QObject* parent) : QObject(parent) { qApp->installEventFilter(this); }

bool EnterPresses::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (!enter || (key->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier || key->isAutoRepeat()) return false;
    if (auto* tool = qobject_cast<QToolButton*>(watched); tool != nullptr && tool->isEnabled()) {
        if (tool->menu() != nullptr && tool->popupMode() == QToolButton::InstantPopup) tool->showMenu();
        else tool->click();
        return true;
    }
    if (auto* push = qobject_cast<QPushButton*>(watched); push != nullptr && push->isEnabled()) {
        if (push->menu() != nullptr) push->showMenu();
        else push->click();
        return true;
    }
    return false;
}

} // namespace ullage
