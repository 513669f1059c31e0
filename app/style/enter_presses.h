// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace ullage {

/// While it lives, Enter presses whichever button has the keyboard, as Space does: in a window as in a form, whose default button it would press
/// else.
class EnterPresses final : public QObject {
public:
    explicit EnterPresses(QObject* parent);

    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace ullage
