// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QEvent>
#include <QTimer>

#include <unistd.h>

namespace ullage::bench {

/// Ends the process as soon as its first window has been painted. A window paints all that is in it in one go, so that the next turn of the event
/// loop comes after it.
class FirstPaint final : public QObject {
public:
    explicit FirstPaint(QApplication& application) { application.installEventFilter(this); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint && !painted_) {
            painted_ = true;
            QTimer::singleShot(0, [] { ::_exit(0); });
        }
        return QObject::eventFilter(watched, event);
    }

private:
    bool painted_ = false;
};

} // namespace ullage::bench
