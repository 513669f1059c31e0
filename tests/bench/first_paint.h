// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QEvent>
#include <QMainWindow>
#include <QTimer>

#include <unistd.h>

namespace ullage::bench {

/// Ends the process as soon as its main window has been painted first; a dialog that says that something takes long does not count. A window paints
/// all that is in it in one go, so that the next turn of the event loop comes after it.
class FirstPaint final : public QObject {
public:
    explicit FirstPaint(QApplication& application) { application.installEventFilter(this); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        const auto* const widget = event->type() == QEvent::Paint && !painted_ ? qobject_cast<QWidget*>(watched) : nullptr;
        if (widget && qobject_cast<QMainWindow*>(widget->window())) {
            painted_ = true;
            QTimer::singleShot(0, [] { ::_exit(0); });
        }
        return QObject::eventFilter(watched, event);
    }

private:
    bool painted_ = false;
};

} // namespace ullage::bench
