// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/wrapped_label.h"

#include <QEvent>

namespace ullage {

WrappedLabel::WrappedLabel(const QString& text, QWidget* parent) : QLabel(text, parent) { setWordWrap(true); }

void WrappedLabel::forget() const { known_.fill({}); }

int WrappedLabel::heightForWidth(int width) const {
    if (known_text_ != text()) {
        forget();
        known_text_ = text();
    }
    for (const Height& known : known_)
        if (known.at_width_px == width) return known.height_px;
    const int height = QLabel::heightForWidth(width);
    known_[next_] = {width, height};
    next_ = (next_ + 1) % known_.size();
    return height;
}

bool WrappedLabel::event(QEvent* event) {
    switch (event->type()) {
    case QEvent::Polish:
    case QEvent::StyleChange:
    case QEvent::FontChange:
    case QEvent::ContentsRectChange: forget(); break;
    default: break;
    }
    return QLabel::event(event);
}

} // namespace ullage
