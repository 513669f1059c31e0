// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/wheel_scrolls.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QEvent>

namespace ullage {

WheelScrolls::WheelScrolls(QObject* parent) : QObject(parent) { qApp->installEventFilter(this); }

bool WheelScrolls::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel) return false;
    if (qobject_cast<QComboBox*>(watched) == nullptr && qobject_cast<QAbstractSpinBox*>(watched) == nullptr) return false;
    event->ignore(); // so that it goes on to what the field stands in
    return true;
}

} // namespace ullage
