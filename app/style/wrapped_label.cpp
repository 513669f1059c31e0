// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/wrapped_label.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QMenu>

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
    case QEvent::Enter:
    case QEvent::MouseButtonPress:
        if (can_be_marked_) setTextInteractionFlags(Qt::TextSelectableByMouse);
        break;
    case QEvent::Leave:
        if (can_be_marked_ && !hasSelectedText()) setTextInteractionFlags(Qt::NoTextInteraction);
        break;
    default: break;
    }
    return QLabel::event(event);
}

void WrappedLabel::contextMenuEvent(QContextMenuEvent* event) {
    if (!can_be_marked_) return QLabel::contextMenuEvent(event);
    const QString words = hasSelectedText() ? selectedText() : text();
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    connect(menu->addAction(tr("&Copy")), &QAction::triggered, this, [words] { QApplication::clipboard()->setText(words); });
    menu->popup(event->globalPos());
}

} // namespace ullage
