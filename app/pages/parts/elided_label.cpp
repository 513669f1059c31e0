// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/elided_label.h"

#include <QPainter>

namespace ullage {

ElidedLabel::ElidedLabel(QWidget* parent, Qt::TextElideMode mode) : QLabel(parent), mode_(mode) { setTextFormat(Qt::PlainText); }

int ElidedLabel::wholeWidth() const { return fontMetrics().horizontalAdvance(text()); }

QSize ElidedLabel::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 3, QLabel::minimumSizeHint().height()}; }

void ElidedLabel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(foregroundRole()));
    painter.drawText(contentsRect(), Qt::AlignVCenter | Qt::AlignLeft | Qt::TextSingleLine,
                     fontMetrics().elidedText(text(), mode_, contentsRect().width()));
}

void ElidedLabel::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    setToolTip(wholeWidth() > width() ? text() : QString());
}

} // namespace ullage
