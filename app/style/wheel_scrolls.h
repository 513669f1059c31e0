// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace ullage {

/// While it lives, the wheel scrolls what a choice or a number field stands in and never changes its value, which nobody would notice. The open list
/// of a choice scrolls as ever.
class WheelScrolls final : public QObject {
public:
    explicit WheelScrolls(QObject* parent);

    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace ullage
