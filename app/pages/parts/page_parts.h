// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "style/roles.h"

#include <QFrame>
#include <QScrollArea>

class QLabel;
class QPushButton;

namespace ullage {

/// A bordered card.
[[nodiscard]] inline QFrame* new_panel(QWidget* parent) {
    auto* frame = new QFrame(parent);
    make_panel(*frame);
    return frame;
}

/// Text of several lines that can be chosen with the mouse.
[[nodiscard]] QLabel* new_paragraph(const char* name, Tone tone, TextSize size = TextSize::body);

[[nodiscard]] QPushButton* new_button(const char* name, const QString& text);

/// `content` in an area that scrolls where there is no room for it, so that it never holds a window large. The ground behind shows through.
[[nodiscard]] QScrollArea* scrolling(QWidget& content, QWidget* parent);

/// Keeps `part` at least so many lines of its text high, also after the size of text changes.
void keep_lines(QWidget& part, int lines);

/// Milliseconds from `now_ms` to the next full minute, 1 to 60 000: when a clock on the screen moves on.
[[nodiscard]] inline int ms_to_next_minute(UtcMs now_ms) {
    constexpr UtcMs minute_ms = 60'000;
    return static_cast<int>(minute_ms - ((now_ms % minute_ms) + minute_ms) % minute_ms);
}

} // namespace ullage
